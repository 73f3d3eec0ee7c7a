import { cloud, grain, mix, speck } from "../../prisma/demo/canvas";
import { fill, type Ink } from "./ink";
import { lineOf, type Typeface } from "./typefaces";
import type { LabelWords } from "./words";

/** How a label was photographed. Lengths in pixels of the finished photo unless said otherwise. */
export interface Conditions {
  /** Height of a capital letter. */
  readonly capital: number;
  /** Degrees the label lies turned, clockwise; any. */
  readonly turned: number;
  /** How much nearer one side is, 0 none to about .3. */
  readonly leaning: number;
  /** Width of the blur (standard deviation). */
  readonly blur: number;
  /** Standard deviation of the noise, in levels of 255. */
  readonly noise: number;
  /** Light of the ink beside that of the cloth, 0 to 1: near 1 is faint. */
  readonly faint: number;
  /** How strongly the weave of the cloth shows, 0 to 1, and how it is folded. */
  readonly woven: number;
  readonly folded: number;
  /** Null: the label fills the photo. Otherwise the photo's size, with the label somewhere on a rug. */
  readonly scene: { readonly width: number; readonly height: number } | null;
}
export interface Drawn { readonly data: Uint8Array; readonly width: number; readonly height: number }

/** Of an em, about a capital's height in all the typefaces. */
const CAPITAL = 0.68;
const LEADING = 1.5;

/** The printed lines as ink on a flat label, at the finished size; `margin` pixels free all round. */
function printed(words: LabelWords, face: Typeface, { capital, centred }: { capital: number; centred: boolean }): Ink {
  const size = capital / CAPITAL, margin = 1.6 * capital;
  const lines = words.lines.map((text) => lineOf(text, face, size));
  const width = Math.ceil(Math.max(...lines.map((l) => l.length)) + 2 * margin);
  const height = Math.ceil((lines.length - 1) * LEADING * size + 1.35 * size + 2 * margin);
  const ink: Ink = { data: new Float32Array(width * height), width, height };
  lines.forEach(({ outlines, length }, n) => {
    const left = centred ? (width - length) / 2 : margin, base = margin + size + n * LEADING * size;
    fill(ink, outlines.map((o) => o.map(([x, y]) => [x + left, y + base] as const)));
  });
  return ink;
}

const between = ({ data, width, height }: Ink, x: number, y: number): number => {
  const x0 = Math.floor(x), y0 = Math.floor(y), tx = x - x0, first = y0 * width + x0;
  const isLeft = x0 >= 0 && x0 < width, isRight = x0 + 1 >= 0 && x0 + 1 < width, isTop = y0 >= 0 && y0 < height, isLow = y0 + 1 >= 0 && y0 + 1 < height;
  const top = mix(isTop && isLeft ? data[first]! : 0, isTop && isRight ? data[first + 1]! : 0, tx);
  return mix(top, mix(isLow && isLeft ? data[first + width]! : 0, isLow && isRight ? data[first + width + 1]! : 0, tx), y - y0);
};

const CLOTHS = [[238, 236, 228], [226, 214, 188], [245, 245, 245], [214, 220, 226]] as const;
const INKS = [[30, 30, 34], [24, 34, 84], [96, 26, 30], [52, 44, 40]] as const;
const PILES = [[122, 44, 40], [58, 70, 98], [150, 128, 96], [92, 96, 92], [176, 164, 146], [206, 198, 180], [188, 190, 196]] as const;

/** A photo of a label, from a seed: words, cloth, weave, rug, light, lens and sensor. */
export function drawLabel(random: () => number, words: LabelWords, face: Typeface, c: Conditions): Drawn {
  const ink = printed(words, face, { capital: c.capital, centred: random() < 0.5 });
  const cloth = CLOTHS[Math.floor(random() * CLOTHS.length)]!, colour = INKS[Math.floor(random() * INKS.length)]!, pile = PILES[Math.floor(random() * PILES.length)]!;
  const [seed, warp, weft] = [Math.floor(random() * 400), 0.9 + random() * 1.3, 0.9 + random() * 1.3];
  const angle = (c.turned * Math.PI) / 180, cos = Math.cos(angle), sin = Math.sin(angle);
  const [w, h] = [ink.width, ink.height];
  const width = c.scene?.width ?? Math.ceil(Math.abs(w * cos) + Math.abs(h * sin)), height = c.scene?.height ?? Math.ceil(Math.abs(w * sin) + Math.abs(h * cos));
  const room = (all: number, taken: number) => (c.scene ? (random() - 0.5) * Math.max(0, all - taken) * 0.7 : 0);
  const mid = { x: width / 2 + room(width, Math.abs(w * cos) + Math.abs(h * sin)), y: height / 2 + room(height, Math.abs(w * sin) + Math.abs(h * cos)) };
  const light = { x: (random() - 0.5) * 0.4, y: (random() - 0.5) * 0.4 };
  const shades = new Float32Array(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const dx = x - mid.x, dy = y - mid.y;
      const far = 1 + (c.leaning * (dx * cos + dy * sin)) / w;
      const lx = (dx * cos + dy * sin) / far + w / 2, ly = (dy * cos - dx * sin) / far + h / 2;
      const lit = 1 + (light.x * (x - width / 2)) / width + (light.y * (y - height / 2)) / height;
      const at = 3 * (y * width + x);
      if (lx < 0 || ly < 0 || lx >= w || ly >= h) {
        const knots = 0.62 + 0.3 * speck(x / 5 + seed, y / 5) * 0.5 + 0.22 * Math.sin(y * 0.9) + 0.16 * cloud(x * 0.2, y * 0.2 + seed) + (Math.floor(x / 160) + Math.floor(y / 220)) % 2 * 0.18;
        for (let k = 0; k < 3; k++) shades[at + k] = lit * (pile[k]! * knots);
        continue;
      }
      const fold = c.folded * 0.06 * c.capital * cloud(lx * 0.4 + seed, ly * 0.4);
      const threads = 1 + c.woven * (0.07 * Math.sin(ly * warp) + 0.06 * Math.sin(lx * weft) + 0.06 * grain(lx * 0.7, ly * 0.7)) + c.folded * 0.14 * cloud(lx * 0.35 + seed, ly * 0.25);
      const covered = between(ink, lx, ly + fold) * (1 - c.faint);
      for (let k = 0; k < 3; k++) shades[at + k] = lit * (threads * mix(cloth[k]!, colour[k]!, covered));
    }
  return sensed(blurred(shades, { width, height, sigma: c.blur }), { width, height, noise: c.noise, random });
}

/** A lens out of focus, as three box filters (Kovesi 2010, from memory). */
function blurred(shades: Float32Array, { width, height, sigma }: { width: number; height: number; sigma: number }): Float32Array {
  if (sigma < 0.3) return shades;
  const reach = Math.max(1, Math.round((Math.sqrt(4 * sigma * sigma + 1) - 1) / 2));
  let from = shades;
  for (let round = 0; round < 3; round++) from = box(box(from, { step: 3, count: width, lines: height, across: 3 * width, reach }), { step: 3 * width, count: height, lines: width, across: 3, reach });
  return from;
}

function box(from: Float32Array, { step, count, lines, across, reach }: { step: number; count: number; lines: number; across: number; reach: number }): Float32Array {
  const to = new Float32Array(from.length);
  for (let line = 0; line < lines; line++)
    for (let k = 0; k < 3; k++) {
      const start = line * across + k, last = start + step * (count - 1);
      let sum = 0;
      for (let i = -reach; i <= reach; i++) sum += from[Math.min(last, Math.max(start, start + step * i))]!;
      for (let at = start; at <= last; at += step) {
        to[at] = sum / (2 * reach + 1);
        sum += from[Math.min(last, at + step * (reach + 1))]! - from[Math.max(start, at - step * reach)]!;
      }
    }
  return to;
}

function sensed(shades: Float32Array, { width, height, noise, random }: { width: number; height: number; noise: number; random: () => number }): Drawn {
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const data = new Uint8Array(shades.length);
  for (let i = 0; i < data.length; i++) data[i] = Math.min(255, Math.max(0, Math.round(shades[i]! + noise * normal())));
  return { data, width, height };
}
