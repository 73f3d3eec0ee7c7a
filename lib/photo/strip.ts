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
  let clusters = seeds(bins);
  for (let round = 0; round < ROUNDS; round++) clusters = settle(bins, clusters);
  const shown = joinNear(clusters).slice(0, MOST_COLOURS);
  const all = shown.reduce((sum, c) => sum + c.weight, 0);
  const kept = shown.filter((c) => c.weight / all >= LEAST_SHARE);
  const total = kept.reduce((sum, c) => sum + c.weight, 0);
  return kept.map((c) => ({ hex: hexOf(c), share: c.weight / total }));
}

/** Pixels gathered in cells of 8 levels a side: a few hundred weighted colours instead of a million pixels. */
function binsOf({ data, width, height }: Rgb): Cluster[] {
  const sums = new Map<number, [number, number, number, number]>();
  const left = Math.floor(width * MARGIN), top = Math.floor(height * MARGIN);
  for (let y = top; y < height - top; y += 2) {
    for (let x = left; x < width - left; x += 2) {
      const at = 3 * (y * width + x);
      const r = data[at]!, g = data[at + 1]!, b = data[at + 2]!;
      const cell = ((r >> 3) << 10) | ((g >> 3) << 5) | (b >> 3);
      const sum = sums.get(cell);
      if (sum) { sum[0] += r; sum[1] += g; sum[2] += b; sum[3]++; } else sums.set(cell, [r, g, b, 1]);
    }
  }
  return [...sums.values()].map(([r, g, b, n]) => ({ ...labOf(Math.round(r / n), Math.round(g / n), Math.round(b / n)), weight: n }));
}

const squared = (p: Lab, q: Lab): number => (p.L - q.L) ** 2 + (p.a - q.a) ** 2 + (p.b - q.b) ** 2;

/** The commonest colour, then again and again the one that is far from all chosen and common too. */
function seeds(bins: Cluster[]): Cluster[] {
  const heaviest = bins.reduce<Cluster | null>((best, bin) => (best && best.weight >= bin.weight ? best : bin), null);
  const chosen = heaviest ? [heaviest] : [];
  const far = bins.map(() => Infinity);
  while (chosen.length < Math.min(SEEDS, bins.length)) {
    const last = chosen[chosen.length - 1]!;
    let best = 0, bestScore = -1;
    bins.forEach((bin, i) => {
      far[i] = Math.min(far[i]!, squared(bin, last));
      const score = far[i]! * Math.sqrt(bin.weight);
      if (score > bestScore) [best, bestScore] = [i, score];
    });
    chosen.push(bins[best]!);
  }
  return chosen;
}

/** One round of k-means: every bin to its nearest centre, every centre to the mean of its bins. */
function settle(bins: Cluster[], centres: Cluster[]): Cluster[] {
  const next = centres.map(() => ({ L: 0, a: 0, b: 0, weight: 0 }));
  for (const bin of bins) {
    let nearest = 0;
    centres.forEach((centre, i) => { if (squared(bin, centre) < squared(bin, centres[nearest]!)) nearest = i; });
    const sum = next[nearest]!;
    sum.L += bin.L * bin.weight; sum.a += bin.a * bin.weight; sum.b += bin.b * bin.weight; sum.weight += bin.weight;
  }
  return next.filter((c) => c.weight > 0).map((c) => ({ L: c.L / c.weight, a: c.a / c.weight, b: c.b / c.weight, weight: c.weight }));
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
