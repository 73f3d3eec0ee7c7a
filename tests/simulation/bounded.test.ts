import { beforeAll, describe, expect, it } from "vitest";
import { FIBRE_IDS } from "../../lib/trade/fibres";
import { generateCases, type Case } from "./generate";
import { findingsOf, judge, verdictsOf, type Judged } from "./judge";

// 600 cases by a generator that is not the model. Bounds as wide as 600 cases need; the full 10,000 run with `npm run long`.
const SEED = 20261128;
let cases: Case[] = [];
let judged: Judged[] = [];
beforeAll(() => {
  cases = generateCases({ cases: 600, worlds: 10, seed: SEED });
  judged = cases.map((one, i) => judge(one, i));
});

describe("the simulated cases", () => {
  it("are the same for the same seed, and others for another", () => {
    expect(generateCases({ cases: 40, worlds: 2, seed: 1 })).toEqual(generateCases({ cases: 40, worlds: 2, seed: 1 }));
    expect(generateCases({ cases: 40, worlds: 2, seed: 1 })).not.toEqual(generateCases({ cases: 40, worlds: 2, seed: 2 }));
  });

  it("hold the unkindness that was asked for: fibres outside the classes, unsure answers, labels gone where they say viscose", () => {
    const many = generateCases({ cases: 6000, worlds: 10, seed: SEED });
    const share = (holds: (c: Case) => boolean, of: readonly Case[] = many) => of.filter(holds).length / of.length;
    expect(share((c) => c.truth === "other")).toBeCloseTo(0.05, 1);
    expect(share((c) => c.rug.shine === "unsure")).toBeGreaterThan(0.03);
    expect(share((c) => c.label !== null, many.filter((c) => c.truth === "viscose"))).toBeLessThan(0.7 * share((c) => c.label !== null, many.filter((c) => c.truth === "polyester")));
    expect(share((c) => c.tests.length > 0)).toBeGreaterThan(0.13);
    expect(share((c) => c.tests.length > 0)).toBeLessThan(0.19);
  });

  it("reach the door as findings, a photographed label stronger than a typed one", () => {
    const strengths = new Set(cases.flatMap((c) => findingsOf(c).map((f) => f.strength)));
    for (const s of ["told", "label-typed", "label-photo", "bench"] as const) expect(strengths).toContain(s);
  });
});

describe("assessments of cases the model has never seen", () => {
  it("state every class, summing to 1", () => {
    for (const j of judged) {
      expect(Object.keys(j.stated)).toHaveLength(FIBRE_IDS.length);
      expect(Object.values(j.stated).reduce((s, p) => s + p, 0)).toBeCloseTo(1, 9);
    }
  });

  it("are at least .2 nat better than the base rates of these cases", () => {
    expect(verdictsOf(judged, { seed: SEED, times: 200 }).betterThanBaseRates).toBeGreaterThan(0.2);
  });

  it("where they state .8 or more, do not promise more than 5 points too much by the lower bootstrap bound, nor 12 by the estimate", () => {
    const { sure } = verdictsOf(judged, { seed: SEED, times: 400 });
    expect(sure.low).toBeLessThan(0.05);
    expect(sure.gap).toBeLessThan(0.12);
  });

  it("dare to state .8 in a fifth of the cases", () => {
    expect(verdictsOf(judged, { seed: SEED, times: 50 }).sure.share).toBeGreaterThan(0.2);
  });

  it("give ranges of improvement and of life that hold 70 to 95 % of the truths", () => {
    const { improvement, life } = verdictsOf(judged, { seed: SEED, times: 50 });
    for (const range of [improvement, life]) {
      expect(range.cases).toBeGreaterThan(200);
      expect(range.held).toBeGreaterThan(0.7);
      expect(range.held).toBeLessThan(0.95);
    }
  });
});
