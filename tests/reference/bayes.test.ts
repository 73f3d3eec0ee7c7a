import { describe, expect, it } from "vitest";
import { CLASSES, OTHER } from "../../lib/triage/classes";
import type { EvidenceItem } from "../../lib/triage/evidence";
import { decibansOf, weighInto } from "../../lib/triage/weigh";

/**
 * Two classes and one cue, worked out by Bayes's rule: prior .3, found in 9 of 10 of the first class and in 2 of 10 of the
 * second. Weight of evidence in decibans after Good (1950), Probability and the Weighing of Evidence; expected information
 * after Lindley (1956), Ann. Math. Statist. 27, 986–1005. Figures computed from those definitions.
 */
const PRIOR = 0.3;
const [FIRST, SECOND] = [CLASSES.indexOf("silk"), CLASSES.indexOf("wool")];
const prior = CLASSES.map((_, i) => (i === FIRST ? PRIOR : i === SECOND ? 1 - PRIOR : 0));
const item = (first: number, second: number, power = 1): EvidenceItem => {
  const likelihood = CLASSES.slice(0, OTHER).map((_, i) => (i === FIRST ? first : i === SECOND ? second : 0.5));
  return { what: "cue", strength: "bench", group: null, likelihood, logs: Float64Array.from(likelihood, Math.log), drawn: () => new Float64Array(), other: null, power, findings: [] };
};
function posterior(items: readonly EvidenceItem[]): number {
  const out = new Float64Array(CLASSES.length);
  weighInto(out, items, { prior, priorAt: 0, logs: items.map((i) => i.logs), at: 0, misleading: 0 });
  return out[FIRST] as number;
}
const entropyBits = (p: number) => (p <= 0 || p >= 1 ? 0 : -p * Math.log2(p) - (1 - p) * Math.log2(1 - p));

describe("the belief on two classes and one cue", () => {
  it("agrees with Bayes where the cue is there and where it is not", () => {
    expect(posterior([item(0.9, 0.2)])).toBeCloseTo(0.6585, 4);
    expect(posterior([item(0.1, 0.8)])).toBeCloseTo(0.0508, 4);
  });
  it("adds up in decibans: −3.68 and 6.53 make 2.85", () => {
    const weight = decibansOf(item(0.9, 0.2), { leading: FIRST, rival: SECOND }, prior);
    const db = (p: number) => 10 * Math.log10(p / (1 - p));
    expect(db(PRIOR)).toBeCloseTo(-3.68, 2);
    expect(weight).toBeCloseTo(6.53, 2);
    expect(db(posterior([item(0.9, 0.2)]))).toBeCloseTo(2.85, 2);
    expect(db(PRIOR) + weight).toBeCloseTo(db(posterior([item(0.9, 0.2)])), 9);
  });
  it("expects .3305 bits from asking", () => {
    const there = PRIOR * 0.9 + (1 - PRIOR) * 0.2;
    const gain = entropyBits(PRIOR) - there * entropyBits(posterior([item(0.9, 0.2)])) - (1 - there) * entropyBits(posterior([item(0.1, 0.8)]));
    expect(gain).toBeCloseTo(0.3305, 4);
  });
  it.each([[1, 0.6585], [2, 0.8967], [3, 0.975], [5, 0.9987]])("counted %d times would come to %d; tempered by as much it stays .6585", (times, expected) => {
    expect(posterior(Array.from({ length: times }, () => item(0.9, 0.2)))).toBeCloseTo(expected, 3);
    expect(posterior(Array.from({ length: times }, () => item(0.9, 0.2, 1 / times)))).toBeCloseTo(0.6585, 4);
  });
});
