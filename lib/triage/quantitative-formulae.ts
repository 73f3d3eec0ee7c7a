/**
 * The arithmetic of Regulation (EU) No 1007/2011, Annex VIII: masses in, shares of clean dry mass out, in per cent.
 * All masses in grams, dry; `d…` are correction factors (no unit) for what a fibre loses in a reagent it does not dissolve in.
 */

/** Shares of the first, second and third fibre, per cent of clean dry mass. */
export type Shares3 = readonly [first: number, second: number, third: number];

/** Chapter 2, I.8.1 (formula from memory): the fibre that stays, 100·r·d/m; the dissolved one by difference. */
export function binaryShares(x: { m: number; r: number; d: number }): readonly [dissolved: number, stays: number] {
  const stays = (100 * x.r * x.d) / x.m;
  return [100 - stays, stays];
}

/** Chapter 3, variant 1. d1, d2: second and third fibre in the first reagent; d3, d4: first and third in the second. Drops products of (d − 1). */
export function ternary1Shares(x: { m1: number; r1: number; m2: number; r2: number; d1: number; d2: number; d3: number; d4: number }): Shares3 {
  const [left1, left2] = [x.r1 / x.m1, x.r2 / x.m2];
  const first = 100 * (x.d2 / x.d1 - x.d2 * left1 + left2 * (1 - x.d2 / x.d1));
  const second = 100 * (x.d4 / x.d3 - x.d4 * left2 + left1 * (1 - x.d4 / x.d3));
  return [first, second, 100 - first - second];
}

/** Chapter 3, variants 2 and 4. d1, d2: second and third fibre in the first reagent; d3: third fibre through all that reached it. */
export function ternaryStepShares(x: { m1: number; r1: number; m2: number; r2: number; d1: number; d2: number; d3: number }): Shares3 {
  const third = (100 * x.d3 * x.r2) / x.m2;
  const second = (100 * x.d1 * x.r1) / x.m1 - (x.d1 / x.d2) * third;
  return [100 - second - third, second, third];
}

/** Chapter 3, variant 3. d2: third fibre in the first reagent; d3: first fibre in the second. */
export function ternary3Shares(x: { m1: number; r1: number; m2: number; r2: number; d2: number; d3: number }): Shares3 {
  const [first, third] = [(100 * x.d3 * x.r2) / x.m2, (100 * x.d2 * x.r1) / x.m1];
  return [first, 100 - first - third, third];
}

/**
 * Shares with the agreed allowances and the losses of pre-treatment added, per cent, adding up to 100:
 * 100·Pi·(1 + (ai + bi)/100) / Σ. Chapter 3, worked examples. `a` allowance, `b` loss, both per cent.
 */
export function withAllowances(parts: readonly { dry: number; a: number; b: number }[]): number[] {
  const weighted = parts.map((p) => p.dry * (1 + (p.a + p.b) / 100));
  const sum = weighted.reduce((s, w) => s + w, 0);
  return weighted.map((w) => (100 * w) / sum);
}

/** Shares to one decimal (chapter 2, III), adding up to 100.0: what is left over goes to the largest remainders, as the Regulation's own examples do. */
export function roundedToHundred(shares: readonly number[]): number[] {
  const tenths = shares.map((s) => Math.floor(s * 10 + 1e-9));
  const byRemainder = shares.map((s, i) => ({ i, rest: s * 10 - (tenths[i] as number) })).sort((p, q) => q.rest - p.rest || p.i - q.i);
  const missing = 1000 - tenths.reduce((sum, t) => sum + t, 0);
  for (const { i } of byRemainder.slice(0, Math.max(missing, 0))) tenths[i] = (tenths[i] as number) + 1;
  return tenths.map((t) => t / 10);
}
