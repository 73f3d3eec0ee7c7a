import { deltaE00, hexOf, labOf, type Lab } from "./colour";

/**
 * The strip of a rug's own colours, for show: few, told apart by eye, with the share each takes. Never evidence of a
 * change of colour; that is measured within one photo, place against place.
 */
export interface ColourShare { hex: string; share: number }
export interface Rgb { data: Uint8Array; width: number; height: number }

interface Cluster extends Lab { weight: number }

/** Of each side; what lies outside is mostly floor. *elicited* */
const MARGIN = 0.14;
/** Colours the strip begins with, before near ones are joined. *elicited* */
const SEEDS = 10;
/** Two colours nearer than this look like one beside each other in a strip 20 pixels high. *elicited* */
const ONE_COLOUR = 9;
/** A colour with less of the picture than this is left out. *elicited* */
const LEAST_SHARE = 0.02;
const MOST_COLOURS = 6;
const ROUNDS = 8;

/**
 * At most six colours of the middle of a picture, the largest first; shares are of what is shown and add up to 1.
 * Pixels are RGB, 8 bits each. The same pixels give the same strip.
 */
export function stripOf(picture: Rgb): ColourShare[] {
  const bins = binsOf(picture);
  let centres = seeds(bins);
  for (let round = 0; round < ROUNDS; round++) centres = settle(bins, centres);
  const clusters = Array.from({ length: centres.length / 4 }, (_, n): Cluster => ({ L: centres[4 * n]!, a: centres[4 * n + 1]!, b: centres[4 * n + 2]!, weight: centres[4 * n + 3]! }));
  const shown = joinNear(clusters).slice(0, MOST_COLOURS);
  const all = shown.reduce((sum, c) => sum + c.weight, 0);
  const kept = shown.filter((c) => c.weight / all >= LEAST_SHARE);
  const total = kept.reduce((sum, c) => sum + c.weight, 0);
  return kept.map((c) => ({ hex: hexOf(c), share: c.weight / total }));
}

/** Cells of 8 levels a side. */
const CELLS = 32 ** 3;
/** Weighted colours, four numbers in a row for each: L, a, b and weight. A colourful picture has ten thousand. */
type Colours = Float64Array;

/** Pixels gathered in cells instead of one by one, in the order in which they come up. */
function binsOf({ data, width, height }: Rgb): Colours {
  const sums = new Float64Array(4 * CELLS), seen: number[] = [];
  const left = Math.floor(width * MARGIN), top = Math.floor(height * MARGIN);
  for (let y = top; y < height - top; y += 2) {
    for (let x = left; x < width - left; x += 2) {
      const at = 3 * (y * width + x);
      const r = data[at]!, g = data[at + 1]!, b = data[at + 2]!;
      const cell = 4 * (((r >> 3) << 10) | ((g >> 3) << 5) | (b >> 3));
      if (sums[cell + 3] === 0) seen.push(cell);
      sums[cell]! += r;
      sums[cell + 1]! += g;
      sums[cell + 2]! += b;
      sums[cell + 3]!++;
    }
  }
  const bins = new Float64Array(4 * seen.length);
  seen.forEach((cell, n) => {
    const weight = sums[cell + 3]!, mean = (channel: number) => Math.round(sums[cell + channel]! / weight);
    const { L, a, b } = labOf(mean(0), mean(1), mean(2));
    bins.set([L, a, b, weight], 4 * n);
  });
  return bins;
}

/** Squared distance of the colour at `i` of one list and that at `j` of another. */
function squared(one: Colours, i: number, other: Colours, j: number): number {
  const L = one[i]! - other[j]!, a = one[i + 1]! - other[j + 1]!, b = one[i + 2]! - other[j + 2]!;
  return L * L + a * a + b * b;
}

/** The commonest colour, then again and again the one that is far from all chosen and common too. */
function seeds(bins: Colours): Colours {
  const count = bins.length / 4, chosen = new Float64Array(4 * Math.min(SEEDS, count));
  const far = new Float64Array(count).fill(Infinity), common = Float64Array.from({ length: count }, (_, n) => Math.sqrt(bins[4 * n + 3]!));
  for (let at = 0; at < chosen.length; at += 4) {
    let best = 0, bestScore = -1;
    for (let n = 0; n < count; n++) {
      if (at > 0) far[n] = Math.min(far[n]!, squared(bins, 4 * n, chosen, at - 4));
      const score = at === 0 ? common[n]! : far[n]! * common[n]!;
      if (score > bestScore) [best, bestScore] = [n, score];
    }
    chosen.set(bins.subarray(4 * best, 4 * best + 4), at);
  }
  return chosen;
}

/** One round of k-means: every bin to its nearest centre, every centre to the mean of its bins. */
function settle(bins: Colours, centres: Colours): Colours {
  const sums = new Float64Array(centres.length);
  for (let i = 0; i < bins.length; i += 4) {
    let nearest = 0, least = Infinity;
    for (let c = 0; c < centres.length; c += 4) {
      const apart = squared(bins, i, centres, c);
      if (apart >= least) continue;
      nearest = c;
      least = apart;
    }
    const weight = bins[i + 3]!;
    for (let k = 0; k < 3; k++) sums[nearest + k]! += bins[i + k]! * weight;
    sums[nearest + 3]! += weight;
  }
  const kept = Array.from({ length: sums.length / 4 }, (_, n) => sums.subarray(4 * n, 4 * n + 4)).filter((sum) => sum[3]! > 0);
  return Float64Array.from(kept.flatMap(([L = 0, a = 0, b = 0, weight = 0]) => [L / weight, a / weight, b / weight, weight]));
}

/** Joins the nearest pair until all can be told apart; largest first. */
function joinNear(clusters: Cluster[]): Cluster[] {
  const left = [...clusters].sort((p, q) => q.weight - p.weight);
  for (;;) {
    let pair: [number, number] | null = null, least = ONE_COLOUR;
    for (let i = 0; i < left.length; i++)
      for (let j = i + 1; j < left.length; j++) {
        const apart = deltaE00(left[i]!, left[j]!);
        if (apart < least) [pair, least] = [[i, j], apart];
      }
    if (!pair) return left.sort((p, q) => q.weight - p.weight);
    const [p, q] = [left[pair[0]]!, left[pair[1]]!];
    const weight = p.weight + q.weight;
    const mix = (x: number, y: number) => (x * p.weight + y * q.weight) / weight;
    left[pair[0]] = { L: mix(p.L, q.L), a: mix(p.a, q.a), b: mix(p.b, q.b), weight };
    left.splice(pair[1], 1);
  }
}
