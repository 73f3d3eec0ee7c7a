import { SINGLE_FIBRES, type SingleFibre } from "../../lib/trade/single-fibres";
import { product, readSamples, yarnEvidence } from "../../lib/triage/bench-evidence";
import { NAMED } from "../../lib/triage/classes";
import type { Finding } from "../../lib/triage/finding";

export type TestReading = readonly [test: string, readings: Readonly<Record<string, string>>];

export const bench = ([test, value]: TestReading, row = "1"): Finding =>
  ({ what: `test:${test}`, value, strength: "bench", from: `bench:${row}`, of: { part: "pile", yarn: "field" } });

/** P(single fibre | tests of one yarn) from a flat prior over the single fibres. */
export function flatPosterior(...tests: readonly TestReading[]): Record<SingleFibre, number> {
  const likelihood = product(yarnEvidence(readSamples(tests.map((t, i) => bench(t, String(i)))), "pile:field"));
  const of = SINGLE_FIBRES.map((f) => likelihood[NAMED.indexOf(f)] as number);
  const sum = of.reduce((a, b) => a + b, 0);
  return Object.fromEntries(SINGLE_FIBRES.map((f, i) => [f, (of[i] as number) / sum])) as Record<SingleFibre, number>;
}

export const topOf = (posterior: Readonly<Record<SingleFibre, number>>): SingleFibre =>
  SINGLE_FIBRES.reduce((best, f) => (posterior[f] > posterior[best] ? f : best));

/** Weight of evidence for one fibre against another, from a flat prior. */
export const decibans = (posterior: Readonly<Record<SingleFibre, number>>, one: SingleFibre, other: SingleFibre): number => 10 * Math.log10(posterior[one] / posterior[other]);
