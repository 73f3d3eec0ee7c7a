import { assertCases, brierScore, outcome, quantile, type Stated } from "./calibration";
import { seededRandom } from "./random";

/**
 * Reliability without bins: observed frequency as the best rising function of the stated chance, by pooling adjacent
 * violators. CORP: Dimitriadis, Gneiting & Jordan 2021, "Stable reliability diagrams for probabilistic classifiers".
 */

/** A stretch of stated chances that share one observed frequency. All 0–1; `cases` counts them. */
export interface ReliabilityStep { readonly from: number; readonly to: number; readonly observed: number; readonly cases: number }

/** The steps in order of the stated chance. Equal chances are one value; every violation of the order is pooled. */
export function reliabilitySteps(cases: readonly Stated[]): ReliabilityStep[] {
  assertCases(cases);
  const blocks: { from: number; to: number; trues: number; cases: number }[] = [];
  for (const c of [...cases].sort((a, b) => a.stated - b.stated)) {
    const last = blocks.at(-1);
    if (last && last.from === c.stated && last.to === c.stated) { last.trues += outcome(c); last.cases += 1; }
    else blocks.push({ from: c.stated, to: c.stated, trues: outcome(c), cases: 1 });
  }
  const pooled: typeof blocks = [];
  for (const block of blocks) {
    pooled.push({ ...block });
    for (let above = pooled.at(-1), below = pooled.at(-2); above && below && below.trues * above.cases >= above.trues * below.cases; above = pooled.at(-1), below = pooled.at(-2)) {
      pooled.splice(-2, 2, { from: below.from, to: above.to, trues: below.trues + above.trues, cases: below.cases + above.cases });
    }
  }
  return pooled.map((b) => ({ from: b.from, to: b.to, observed: b.trues / b.cases, cases: b.cases }));
}

/** The observed frequency at a stated chance; between two steps, linear from the end of one to the start of the next. */
export function observedAt(steps: readonly ReliabilityStep[], stated: number): number {
  const next = steps.find((s) => stated <= s.to);
  if (!next) return steps.at(-1)?.observed ?? Number.NaN;
  const before = steps[steps.indexOf(next) - 1];
  if (stated >= next.from || !before) return next.observed;
  return before.observed + ((stated - before.to) / (next.from - before.to)) * (next.observed - before.observed);
}

/** Brier score = miscalibration − discrimination + uncertainty. */
export interface CorpParts { readonly score: number; readonly miscalibration: number; readonly discrimination: number; readonly uncertainty: number }

/** The three parts of the Brier score, each 0 or more, in the unit of the score. */
export function corpParts(cases: readonly Stated[]): CorpParts {
  const score = brierScore(cases);
  const steps = reliabilitySteps(cases);
  const base = cases.reduce((sum, c) => sum + outcome(c), 0) / cases.length;
  const recalibrated = steps.reduce((sum, s) => sum + s.cases * s.observed * (1 - s.observed), 0) / cases.length;
  const uncertainty = base * (1 - base);
  return { score, miscalibration: score - recalibrated, discrimination: uncertainty - recalibrated, uncertainty };
}

/**
 * The null band: where the observed frequency at each of `at` lies with 90 % chance if the stated chances are exactly
 * right, by seeded redrawing of the outcomes.
 */
export function nullBand(cases: readonly Stated[], at: readonly number[], draws: { seed: number; times: number }): { stated: number; low: number; high: number }[] {
  assertCases(cases);
  const random = seededRandom(draws.seed, "null-band");
  const redrawn = Array.from({ length: draws.times }, () => reliabilitySteps(cases.map(({ stated }) => ({ stated, cameTrue: random() < stated }))));
  return at.map((stated) => {
    const values = redrawn.map((steps) => observedAt(steps, stated));
    return { stated, low: quantile(values, 0.05), high: quantile(values, 0.95) };
  });
}
