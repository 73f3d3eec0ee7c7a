import { seededRandom } from "./random";

/**
 * How far stated chances may be trusted, measured on cases whose truth is known. Pure; every draw is seeded.
 * A case: a stated probability 0–1 and whether it came true. Every measure throws a RangeError on an empty list or a
 * probability outside 0–1.
 */
export interface Stated { readonly stated: number; readonly cameTrue: boolean }

const mean = (xs: readonly number[]): number => xs.reduce((s, x) => s + x, 0) / xs.length;
export const outcome = (c: Stated): number => (c.cameTrue ? 1 : 0);

/** @throws RangeError unless there is a case and every probability is within 0–1. */
export function assertCases(cases: readonly Stated[]): void {
  if (cases.length === 0) throw new RangeError("Expected at least one case but received none.");
  const bad = cases.find((c) => !(c.stated >= 0 && c.stated <= 1));
  if (bad) throw new RangeError(`Expected a probability from 0 to 1 but received ${bad.stated}.`);
}

/** Mean of −ln(probability given to what was true), in nats; 0 is perfect. Good 1952. Infinite where the truth was given 0. */
export function meanLogScore(chancesOfTruth: readonly number[]): number {
  assertCases(chancesOfTruth.map((stated) => ({ stated, cameTrue: true })));
  return -mean(chancesOfTruth.map(Math.log));
}

/** Mean log score, in nats, of always stating the base rates of the cases themselves: the entropy of the truths. */
export function baseRateLogScore(truths: readonly string[]): number {
  if (truths.length === 0) throw new RangeError("Expected at least one case but received none.");
  const counts = new Map<string, number>();
  for (const t of truths) counts.set(t, (counts.get(t) ?? 0) + 1);
  return -[...counts.values()].reduce((sum, n) => sum + (n / truths.length) * Math.log(n / truths.length), 0);
}

/** Mean squared distance of the stated chance from 0 or 1 (Brier 1950, one class); 0 is perfect, 1 the worst. */
export function brierScore(cases: readonly Stated[]): number {
  assertCases(cases);
  return mean(cases.map((c) => (c.stated - outcome(c)) ** 2));
}

/** Brier score = reliability − resolution + uncertainty. */
export interface MurphyParts { readonly score: number; readonly reliability: number; readonly resolution: number; readonly uncertainty: number }

/** Murphy 1973: cases grouped by the probability stated, so it fits forecasts of few distinct values. */
export function murphyParts(cases: readonly Stated[]): MurphyParts {
  assertCases(cases);
  const base = mean(cases.map(outcome));
  const groups = new Map<number, number[]>();
  for (const c of cases) groups.set(c.stated, [...(groups.get(c.stated) ?? []), outcome(c)]);
  const weighted = (of: (stated: number, rate: number) => number) => [...groups].reduce((sum, [stated, ys]) => sum + (ys.length / cases.length) * of(stated, mean(ys)), 0);
  return { score: brierScore(cases), reliability: weighted((p, rate) => (p - rate) ** 2), resolution: weighted((_, rate) => (rate - base) ** 2), uncertainty: base * (1 - base) };
}

/** Expected calibration error: mean |stated − observed| over `bins` equal bins of 0–1, weighted by cases. 0 is perfect, but never reached by chance alone: see `noiseFloor`. */
export function expectedCalibrationError(cases: readonly Stated[], bins = 10): number {
  assertCases(cases);
  const sums = Array.from({ length: bins }, () => 0);
  for (const c of cases) {
    const bin = Math.min(bins - 1, Math.floor(c.stated * bins));
    sums[bin] = (sums[bin] as number) + c.stated - outcome(c);
  }
  return sums.reduce((total, s) => total + Math.abs(s), 0) / cases.length;
}

/** What a measure comes to where the stated chances are exactly right: mean and 95th percentile over seeded redrawn outcomes. */
export function noiseFloor(cases: readonly Stated[], measure: (cases: readonly Stated[]) => number, draws: { seed: number; times: number }): { mean: number; p95: number } {
  assertCases(cases);
  const random = seededRandom(draws.seed, "noise-floor");
  const values = Array.from({ length: draws.times }, () => measure(cases.map(({ stated }) => ({ stated, cameTrue: random() < stated }))));
  return { mean: mean(values), p95: quantile(values, 0.95) };
}

/** The `p` quantile (0–1) of a sample, linear between order statistics (type 7 of Hyndman & Fan 1996). */
export function quantile(sample: readonly number[], p: number): number {
  if (sample.length === 0) throw new RangeError("Expected at least one value but received none.");
  const sorted = [...sample].sort((a, b) => a - b);
  const at = (sorted.length - 1) * p;
  const [low, high] = [sorted[Math.floor(at)] as number, sorted[Math.ceil(at)] as number];
  return low + (high - low) * (at - Math.floor(at));
}

/** Stated minus observed, in probability: positive promises too much. `low`, `high`: 95 % percentile bootstrap bounds (Efron 1979), seeded. */
export function statedMinusObserved(cases: readonly Stated[], draws: { seed: number; times: number }): { gap: number; low: number; high: number } {
  assertCases(cases);
  const gaps = cases.map((c) => c.stated - outcome(c));
  const random = seededRandom(draws.seed, "stated-minus-observed");
  const resampled = Array.from({ length: draws.times }, () => {
    let sum = 0;
    for (let i = 0; i < gaps.length; i += 1) sum += gaps[Math.floor(random() * gaps.length)] as number;
    return sum / gaps.length;
  });
  return { gap: mean(gaps), low: quantile(resampled, 0.025), high: quantile(resampled, 0.975) };
}

/** Share of the truths within their range, ends included, 0–1. A range from the 10th to the 90th percentile should hold 0.8. */
export function coverage(cases: readonly { low: number; high: number; truth: number }[]): number {
  if (cases.length === 0) throw new RangeError("Expected at least one case but received none.");
  return cases.filter((c) => c.low <= c.truth && c.truth <= c.high).length / cases.length;
}

/**
 * Net benefit of acting from the threshold on, per case (Vickers & Elkin 2006): true positives less false positives at the
 * odds of the threshold. `threshold` 0 < t < 1.
 */
export function netBenefit(cases: readonly Stated[], threshold: number): number {
  assertCases(cases);
  const acted = cases.filter((c) => c.stated >= threshold);
  return netBenefitOfCounts({ truePositives: acted.filter((c) => c.cameTrue).length, falsePositives: acted.filter((c) => !c.cameTrue).length, cases: cases.length }, threshold);
}

/** The same, from counts. @throws RangeError unless 0 < threshold < 1 and there is a case. */
export function netBenefitOfCounts(n: { truePositives: number; falsePositives: number; cases: number }, threshold: number): number {
  if (!(threshold > 0 && threshold < 1)) throw new RangeError(`Expected a threshold between 0 and 1 but received ${threshold}.`);
  if (!(n.cases > 0)) throw new RangeError(`Expected at least one case but received ${n.cases}.`);
  return (n.truePositives - n.falsePositives * (threshold / (1 - threshold))) / n.cases;
}

/** Net benefit of acting on every case. `prevalence` 0–1. */
export const netBenefitOfAll = (prevalence: number, threshold: number): number =>
  netBenefitOfCounts({ truePositives: prevalence, falsePositives: 1 - prevalence, cases: 1 }, threshold);
