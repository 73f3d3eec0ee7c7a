import { assess, defaultSettings } from "../../lib/triage/assess";
import { baseRateLogScore, coverage, expectedCalibrationError, meanLogScore, noiseFloor, statedMinusObserved, type Stated } from "../../lib/triage/calibration";
import type { Finding } from "../../lib/triage/finding";
import { findingsFromAnswers } from "../../lib/triage/findings-from-answers";
import { corpParts, nullBand, observedAt, reliabilitySteps, type CorpParts } from "../../lib/triage/reliability";
import { WRITTEN, type Case } from "./generate";

/** A case as the one door judged it. */
export interface Judged {
  readonly case: Case;
  readonly stated: Readonly<Record<string, number>>;
  readonly leading: string;
  readonly leadingChance: number;
  readonly improvement: { low: number; high: number } | null;
  readonly lifeYears: { low: number; high: number } | null;
}

/** What the desk would have: the answers, the label as typed or as confirmed in a photo, the tests. */
export function findingsOf(one: Case): Finding[] {
  const told = findingsFromAnswers(one.rug, one.enquiry);
  const seen = one.label?.as !== "photo" ? told : told.map((f): Finding => (f.strength === "label-typed" ? { ...f, strength: "label-photo", from: "photo:label" } : f));
  return [...seen, ...one.tests];
}

/** @throws what the door throws: a case that cannot be judged is a failure, not a gap. */
export function judge(one: Case, seed: number): Judged {
  const { wetNow, reason } = one.enquiry;
  const settings = defaultSettings({ currency: one.rug.currency ?? "GBP", channel: "web", reason: reason ?? null, wetNow: wetNow ?? null, seed });
  const { fibres, improvement, lifeYears } = assess(findingsOf(one), settings, WRITTEN.asOf);
  const [first] = fibres;
  if (!first) throw new Error("Expected a belief over the fibres but received none.");
  return { case: one, stated: Object.fromEntries(fibres.map((f) => [f.fibre, f.probability])), leading: first.fibre, leadingChance: first.probability, improvement, lifeYears };
}

export interface Verdicts {
  /** Nats better than always stating the simulated population's own base rates. */
  readonly betterThanBaseRates: number;
  /** Of the leading fibre, over all cases. */
  readonly reliability: CorpParts & { ece: number; eceNoise: { mean: number; p95: number } };
  readonly band: readonly { stated: number; low: number; high: number; observed: number }[];
  /** Where the leading fibre is stated .8 or more: their share, and stated minus observed with its bootstrap bounds. */
  readonly sure: { share: number; cases: number; gap: number; low: number; high: number };
  /** Share of truths within the 10–90 range, and of how many cases. */
  readonly improvement: { held: number; cases: number };
  readonly life: { held: number; cases: number };
}

export const SURE_FROM = 0.8;
export const leadingOf = (judged: readonly Judged[]): Stated[] => judged.map((j) => ({ stated: j.leadingChance, cameTrue: j.leading === j.case.truth }));

const held = (ranges: readonly { range: { low: number; high: number } | null; truth: number }[]) => {
  const known = ranges.flatMap(({ range, truth }) => (range ? [{ low: range.low, high: range.high, truth }] : []));
  return { held: coverage(known), cases: known.length };
};

export function verdictsOf(judged: readonly Judged[], draws: { seed: number; times: number }): Verdicts {
  const leading = leadingOf(judged);
  const sure = leading.filter((c) => c.stated >= SURE_FROM);
  const steps = reliabilitySteps(leading);
  return {
    betterThanBaseRates: baseRateLogScore(judged.map((j) => j.case.truth)) - meanLogScore(judged.map((j) => j.stated[j.case.truth] ?? 0)),
    reliability: { ...corpParts(leading), ece: expectedCalibrationError(leading), eceNoise: noiseFloor(leading, expectedCalibrationError, draws) },
    band: nullBand(leading, [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95], draws).map((b) => ({ ...b, observed: observedAt(steps, b.stated) })),
    sure: { share: sure.length / leading.length, cases: sure.length, ...statedMinusObserved(sure, draws) },
    improvement: held(judged.map((j) => ({ range: j.improvement, truth: j.case.improvementPercent }))),
    life: held(judged.map((j) => ({ range: j.lifeYears, truth: j.case.leftYears }))),
  };
}
