import type { Quantiles } from "../trade/improvement";

/** A piecewise-linear quantile function: improvement in per cent at chances 0, .1, .5, .9 and 1. */
const AT = [0, 0.1, 0.5, 0.9, 1] as const;

/**
 * The ends go on with the slope of the neighbouring piece, held within 0 and 100 per cent. A row whose 10th (or 50th)
 * percentile is 0 has an atom of that chance at zero.
 */
export function quantilePoints(q: Quantiles): number[] {
  return [Math.max(0, q.low - (q.median - q.low) / 4), q.low, q.median, q.high, Math.min(100, q.high + (q.high - q.median) / 4)];
}

/** The quantile function of one row at chance u, 0–1. */
export function quantileAt(points: readonly number[], u: number): number {
  for (let i = 1; i < AT.length; i += 1) {
    const [from, to] = [AT[i - 1] as number, AT[i] as number];
    if (u <= to) return (points[i - 1] as number) + (((points[i] as number) - (points[i - 1] as number)) * (u - from)) / (to - from);
  }
  return points[points.length - 1] as number;
}

/** P(improvement ≤ x) of one row; the atom at zero is included from x = 0 on. */
export function chanceAtMost(points: readonly number[], x: number): number {
  if (x < (points[0] as number)) return 0;
  for (let i = AT.length - 1; i > 0; i -= 1) {
    const [low, high] = [points[i - 1] as number, points[i] as number];
    if (x >= high) return AT[i] as number;
    if (x >= low) return (AT[i - 1] as number) + (((AT[i] as number) - (AT[i - 1] as number)) * (x - low)) / (high - low);
  }
  return 0;
}

/** Steps of a quarter of a per cent: every bend of a row of whole per cents lies on one, so that the mixture is straight between them. */
export const STEPS_PER_CENT = 4;
const STEPS = 100 * STEPS_PER_CENT;

/** P(improvement ≤ x) of many rows at once, `table[step·width + row]`. */
export interface Ladder { readonly width: number; readonly table: Float64Array }
export function ladderOf(rows: readonly (readonly number[])[]): Ladder {
  const table = new Float64Array((STEPS + 1) * rows.length);
  for (let s = 0; s <= STEPS; s += 1) rows.forEach((points, r) => { table[s * rows.length + r] = chanceAtMost(points, s / STEPS_PER_CENT); });
  return { width: rows.length, table };
}

/** P(improvement ≤ step) of the mixture with these weights. */
export function mixtureAtStep({ width, table }: Ladder, weights: Float64Array, step: number): number {
  let sum = 0;
  for (let r = 0, at = step * width; r < width; r += 1, at += 1) sum += (weights[r] as number) * (table[at] as number);
  return sum;
}

/** The smallest x in 0–100 with P(improvement ≤ x) ≥ chance, of a mixture whose weights sum to 1. */
export function mixtureQuantile(ladder: Ladder, weights: Float64Array, chance: number): number {
  let [low, below] = [0, mixtureAtStep(ladder, weights, 0)];
  if (below >= chance) return 0;
  let [high, above] = [STEPS, 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const at = mixtureAtStep(ladder, weights, middle);
    if (at >= chance) [high, above] = [middle, at];
    else [low, below] = [middle, at];
  }
  return (low + (above > below ? (chance - below) / (above - below) : 1)) / STEPS_PER_CENT;
}
