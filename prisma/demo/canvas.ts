/**
 * Small tools for drawing pictures pixel by pixel, in linear light. Everything random comes from a seed, so the same
 * request draws the same picture on every machine.
 */
export type Rgb = [number, number, number];
/** Colour at a place (centimetres on the floor), written to `out` as linear light, 0 to about 1. */
export type Surface = (x: number, y: number, out: Float32Array) => void;

const SIDE = 512;
const MASK = SIDE - 1;

/** Seeded generator: mulberry32 by Tommy Ettinger (public domain), 0 up to 1. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A number from 0 up to 1 that belongs to a pair of whole numbers. */
export function hash(x: number, y: number): number {
  let h = Math.imul(x | 0, 0x27d4eb2d) ^ Math.imul(y | 0, 0x165667b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

export const clamp = (v: number, low = 0, high = 1): number => (v < low ? low : v > high ? high : v);
export const mix = (a: number, b: number, t: number): number => a + (b - a) * t;
/** 0 below `from`, 1 above `to`, smooth between; also where `from` is the larger. */
export const smooth = (from: number, to: number, v: number): number => {
  const t = clamp((v - from) / (to - from));
  return t * t * (3 - 2 * t);
};

export function linear(hex: string): Rgb {
  const n = parseInt(hex.slice(1), 16);
  const one = (v: number) => ((v / 255 + 0.055) / 1.055) ** 2.4;
  return [one(n >> 16), one((n >> 8) & 255), one(n & 255)];
}

/** White noise, each value -1 to 1. */
const WHITE = Float32Array.from({ length: SIDE * SIDE }, (_, i) => 2 * hash(i, 77) - 1);
/** Clouds: four octaves of value noise that repeat after 512 steps, about -1 to 1. */
const CLOUDS = cloudTile();

function cloudTile(): Float32Array {
  const tile = new Float32Array(SIDE * SIDE);
  for (let octave = 0, cell = 64, weight = 0.6; octave < 4; octave++, cell /= 2, weight /= 2) {
    const count = SIDE / cell;
    const corners = Float32Array.from({ length: count * count }, (_, i) => 2 * hash((i % count) + 1000 * octave, Math.floor(i / count)) - 1);
    for (let y = 0; y < SIDE; y++) {
      const gy = Math.floor(y / cell), ty = smooth(0, 1, y / cell - gy), here = gy * count, below = ((gy + 1) % count) * count;
      for (let x = 0; x < SIDE; x++) {
        const gx = Math.floor(x / cell), tx = smooth(0, 1, x / cell - gx), right = (gx + 1) % count;
        tile[y * SIDE + x]! += weight * mix(mix(corners[here + gx]!, corners[here + right]!, tx), mix(corners[below + gx]!, corners[below + right]!, tx), ty);
      }
    }
  }
  return tile;
}

/** White noise at the whole step below. */
export const speck = (x: number, y: number): number => WHITE[((Math.floor(y) & MASK) << 9) | (Math.floor(x) & MASK)]!;

/** White noise, interpolated: grains one step wide. */
export const grain = (x: number, y: number): number => between(WHITE, x, y);
/** Clouds with features of about 64 steps and their detail. */
export const cloud = (x: number, y: number): number => between(CLOUDS, x, y);

/** Clouds along one line: cheaper, for edges that waver. */
export function waver(x: number, line: number): number {
  const fx = Math.floor(x), row = (line & MASK) << 9, here = CLOUDS[row | (fx & MASK)]!;
  return here + (CLOUDS[row | ((fx + 1) & MASK)]! - here) * (x - fx);
}

function between(tile: Float32Array, x: number, y: number): number {
  const fx = Math.floor(x), fy = Math.floor(y);
  const x0 = fx & MASK, x1 = (fx + 1) & MASK, y0 = (fy & MASK) << 9, y1 = ((fy + 1) & MASK) << 9;
  const tx = x - fx, ty = y - fy;
  const top = tile[y0 | x0]! + (tile[y0 | x1]! - tile[y0 | x0]!) * tx;
  const low = tile[y1 | x0]! + (tile[y1 | x1]! - tile[y1 | x0]!) * tx;
  return top + (low - top) * ty;
}

/** Linear light to an sRGB level, with a soft shoulder so that highlights do not break off. */
const LEVELS = Uint8Array.from({ length: 4097 }, (_, i) => {
  const light = i / 2048; // 0 to 2
  const v = light < 0.7 ? light : 0.7 + 0.3 * (1 - Math.exp(-(light - 0.7) / 0.3));
  return Math.round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055));
});
export const level = (light: number): number => LEVELS[light <= 0 ? 0 : light >= 2 ? 4096 : (light * 2048) | 0]!;
