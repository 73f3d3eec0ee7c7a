import { drawGamma, type Random } from "./random";

/**
 * Draws that stand for not knowing a table's row well: a row counts as much as `strength` cases seen.
 * Means are those of the row; a stronger row varies less.
 */

/** A row of probabilities (summing to 1) drawn from Dirichlet(strength × row). Sums to 1. */
export function drawDirichlet(random: Random, row: readonly number[], strength: number): number[] {
  const draws = row.map((p) => drawGamma(random, strength * p));
  const sum = draws.reduce((a, b) => a + b, 0);
  return sum > 0 ? draws.map((x) => x / sum) : [...row];
}

/** One cell of such a row, whose probability is `p` (0–1): the Dirichlet's marginal, Beta(strength·p, strength·(1−p)). */
export function drawCell(random: Random, p: number, strength: number): number {
  if (p <= 0 || p >= 1) return p;
  const x = drawGamma(random, strength * p);
  const y = drawGamma(random, strength * (1 - p));
  return x + y > 0 ? x / (x + y) : p;
}
