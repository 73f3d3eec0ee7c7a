import { labOf, type Lab } from "./colour";
import type { Rgb } from "./strip";

/** A place in a picture, in shares of its width and height (0 to 1); `radius` in shares of the longer side. */
export type Spot =
  | { readonly shape: "circle"; readonly x: number; readonly y: number; readonly radius: number }
  | { readonly shape: "rectangle"; readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** The robust mean colour of a spot. */
export interface SpotColour {
  readonly mean: Lab;
  /** Standard error of the mean, from how blocks of the spot differ: pixels beside each other are no independent witnesses. */
  readonly error: Lab;
  readonly pixels: number;
  /** Share of pixels as good as black or white, 0 to 1: their colour is lost. */
  readonly clipped: number;
}

/** A spot with fewer pixels says nothing of a pile. *elicited* */
export const LEAST_PIXELS = 64;
/** Blocks a side for the error. *elicited* */
const BLOCKS = 4;
/** Tuning constant of Tukey's biweight (95 % efficient for normal errors; Beaton & Tukey 1974, from memory). */
const BIWEIGHT = 4.685;
/** Median absolute deviation to standard deviation of a normal distribution: 1 / Φ⁻¹(¾). */
const MAD_TO_SD = 1.4826;
/** Least spread in Lab units: levels of 8 bits. *elicited* */
const LEAST_SPREAD = 0.3;
const ROUNDS = 5;

interface Pixels { readonly lab: Lab[]; readonly block: number[]; readonly clipped: number }

/** The spot's colour, or null where fewer than LEAST_PIXELS of the picture lie in it. Outliers (lint, glints, a dark line) hardly count. */
export function spotColour(picture: Rgb, spot: Spot): SpotColour | null {
  const pixels = pixelsIn(picture, spot);
  if (pixels.lab.length < LEAST_PIXELS) return null;
  const mean = robustMean(pixels.lab);
  const blocks = Array.from({ length: BLOCKS ** 2 }, (_, b) => pixels.lab.filter((_, i) => pixels.block[i] === b))
    .filter((lab) => lab.length >= LEAST_PIXELS / BLOCKS ** 2).map(robustMean);
  const spread = (of: keyof Lab) => Math.sqrt(blocks.reduce((sum, b) => sum + (b[of] - mean[of]) ** 2, 0) / Math.max(1, blocks.length - 1) / Math.max(1, blocks.length));
  return { mean, error: { L: spread("L"), a: spread("a"), b: spread("b") }, pixels: pixels.lab.length, clipped: pixels.clipped / pixels.lab.length };
}

/** Bounds of a spot in pixels, cut at the picture's edge. */
function boundsOf(spot: Spot, { width, height }: Rgb): { left: number; top: number; right: number; bottom: number } {
  const long = Math.max(width, height);
  const [left, top, right, bottom] = spot.shape === "circle"
    ? [spot.x * width - spot.radius * long, spot.y * height - spot.radius * long, spot.x * width + spot.radius * long, spot.y * height + spot.radius * long]
    : [spot.x * width, spot.y * height, (spot.x + spot.width) * width, (spot.y + spot.height) * height];
  return { left: Math.max(0, Math.floor(left)), top: Math.max(0, Math.floor(top)), right: Math.min(width, Math.ceil(right)), bottom: Math.min(height, Math.ceil(bottom)) };
}

function pixelsIn(picture: Rgb, spot: Spot): Pixels {
  const { left, top, right, bottom } = boundsOf(spot, picture);
  const inside = insideOf(spot, picture);
  const lab: Lab[] = [], block: number[] = [];
  let clipped = 0;
  for (let y = top; y < bottom; y++)
    for (let x = left; x < right; x++) {
      if (!inside(x + 0.5, y + 0.5)) continue;
      const at = 3 * (y * picture.width + x);
      const [r, g, b] = [picture.data[at]!, picture.data[at + 1]!, picture.data[at + 2]!];
      if (Math.max(r, g, b) <= 8 || Math.min(r, g, b) >= 250) clipped++;
      lab.push(labOf(r, g, b));
      block.push(Math.floor((BLOCKS * (y - top)) / (bottom - top)) * BLOCKS + Math.floor((BLOCKS * (x - left)) / (right - left)));
    }
  return { lab, block, clipped };
}

function insideOf(spot: Spot, { width, height }: Rgb): (x: number, y: number) => boolean {
  if (spot.shape === "rectangle") return () => true;
  const radius = spot.radius * Math.max(width, height);
  return (x, y) => (x - spot.x * width) ** 2 + (y - spot.y * height) ** 2 <= radius ** 2;
}

function median(values: readonly number[]): number {
  const sorted = Float64Array.from(values).sort();
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] as number) + (sorted[Math.floor(half)] as number)) / 2;
}

/** Mean by Tukey's biweight on the distance from the middle, begun at the medians. At least one colour. */
function robustMean(colours: readonly Lab[]): Lab {
  const middle = (of: keyof Lab) => median(colours.map((c) => c[of]));
  const spread = (of: keyof Lab, at: number) => Math.max(LEAST_SPREAD, MAD_TO_SD * median(colours.map((c) => Math.abs(c[of] - at))));
  let centre: Lab = { L: middle("L"), a: middle("a"), b: middle("b") };
  const scale: Lab = { L: spread("L", centre.L), a: spread("a", centre.a), b: spread("b", centre.b) };
  for (let round = 0; round < ROUNDS; round++) {
    let weights = 0;
    const sum: Lab = { L: 0, a: 0, b: 0 };
    for (const c of colours) {
      const far = (((c.L - centre.L) / scale.L) ** 2 + ((c.a - centre.a) / scale.a) ** 2 + ((c.b - centre.b) / scale.b) ** 2) / BIWEIGHT ** 2;
      if (far >= 1) continue;
      const w = (1 - far) ** 2;
      weights += w; sum.L += w * c.L; sum.a += w * c.a; sum.b += w * c.b;
    }
    if (weights === 0) return centre;
    centre = { L: sum.L / weights, a: sum.a / weights, b: sum.b / weights };
  }
  return centre;
}
