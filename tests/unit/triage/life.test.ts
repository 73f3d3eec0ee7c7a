import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import type { Finding } from "../../../lib/triage/finding";
import { constructionShares } from "../../../lib/triage/construction";
import { agesOf, lifeLeft, survival } from "../../../lib/triage/life";
import { belief, told } from "./told";

const YEAR = 2026;
/** Bought new this year. */
const NEW = { boughtWhere: "specialist", boughtYear: YEAR, room: "ordinary" };
const left = (answers: Record<string, Finding["value"]>, fibres: Parameters<typeof belief>[0]) => lifeLeft(told(answers), belief(fibres), YEAR);

describe("survival", () => {
  it("is one half at the median, whatever the shape", () => {
    for (const shape of [1, 1.8, 2.5]) expect(survival({ medianYears: 7, shape }, 7)).toBeCloseTo(0.5, 12);
  });
  it("of shape 2 at twice the median is one half to the fourth power", () => expect(survival({ medianYears: 5, shape: 2 }, 10)).toBeCloseTo(0.0625, 12));
});

describe("lifeLeft", () => {
  it("a new viscose in ordinary use: a median of 4 to 6 years", () => {
    const life = left(NEW, { viscose: 1 });
    expect(life?.median).toBeGreaterThanOrEqual(4);
    expect(life?.median).toBeLessThanOrEqual(6);
  });
  it("of one fibre from new has the Weibull's own quantiles", () => {
    const life = left(NEW, { viscose: 1 });
    const quantile = (p: number) => 5 * (-Math.log2(1 - p)) ** (1 / 2.5);
    expect(life?.low).toBeCloseTo(quantile(0.1), 1);
    expect(life?.high).toBeCloseTo(quantile(0.9), 1);
  });
  it("a new hand-knotted wool lasts tens of years, a tufted one about eleven", () => {
    expect(left({ ...NEW, back: "knots" }, { wool: 1 })?.median).toBeGreaterThan(30);
    const tufted = left({ ...NEW, back: "cloth" }, { wool: 1 })?.median;
    expect(tufted).toBeGreaterThan(9);
    expect(tufted).toBeLessThan(13);
  });
  it("counts busy rooms .55, pets .8 and a heated floor under viscose .85", () => {
    const plain = left(NEW, { viscose: 1 })?.median ?? NaN;
    expect((left({ ...NEW, room: "busy" }, { viscose: 1 })?.median ?? NaN) / plain).toBeCloseTo(0.55, 2);
    expect((left({ ...NEW, household: ["pets", "floor-heating"] }, { viscose: 1 })?.median ?? NaN) / plain).toBeCloseTo(0.68, 2);
    expect(left({ ...NEW, household: ["floor-heating"] }, { wool: 1 })).toEqual(left(NEW, { wool: 1 }));
  });
  it("a tufted wool of 2020 has seven years left, 1 to 15", () => {
    // Weibull, median 11, shape 1.8, alive at 6: 11·((6/11)^1.8 − log2(1 − p))^(1/1.8) − 6 at p = .1, .5, .9.
    const life = left({ ...NEW, boughtYear: 2020, back: "cloth" }, { wool: 1 });
    const quantile = (p: number) => 11 * ((6 / 11) ** 1.8 - Math.log2(1 - p)) ** (1 / 1.8) - 6;
    expect(life?.low).toBeGreaterThan(quantile(0.1) - 0.3);
    expect(Math.abs((life?.median ?? NaN) - quantile(0.5))).toBeLessThan(1.2);
    expect(life?.high).toBeGreaterThan(quantile(0.9) - 0.3);
  });
  it("has less left the older it is, for every fibre", () => {
    for (const f of FIBRE_IDS) {
      const at = (age: string) => left({ age, back: "knots" }, { [f]: 1 })?.median ?? NaN;
      expect(at("under-2"), f).toBeGreaterThan(at("5-10"));
      expect(at("5-10"), f).toBeGreaterThan(at("25-80"));
    }
  });
  it("takes a rug alive past 25 for one of a fibre that lives", () => {
    const both = left({ age: "25-80", back: "knots" }, { viscose: 0.5, wool: 0.5 });
    expect(both?.median).toBeGreaterThan((left({ age: "25-80", back: "knots" }, { wool: 1 })?.median ?? 0) * 0.8);
  });
  it("lets wear seen now outweigh age: worn flat, then bare, leave less", () => {
    const at = (changes: string[]) => left({ ...NEW, back: "knots", changes }, { wool: 1 })?.median ?? NaN;
    expect(at(["flat"])).toBeLessThan(at(["none"]) * 0.5);
    expect(at(["bare", "flat"])).toBeLessThan(at(["flat"]) * 0.5);
  });
  it("never gives more than an unworn rug of the same age", () => {
    const at = (changes: string[]) => left({ age: "25-80", back: "knots", changes }, { viscose: 1 })?.high ?? NaN;
    expect(at(["flat"])).toBeLessThanOrEqual(at(["none"]) + 1e-9);
  });
  it("gives antiques no figure", () => expect(left({ age: "antique" }, { wool: 1 })).toBeNull());
  it("keeps its order for any mixture", () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }), fc.constantFrom("under-2", "2-5", "10-25", "25-80"), (w, age) => {
      const [a = 1, b = 1, c = 1] = w;
      const life = left({ age }, { wool: a / (a + b + c), viscose: b / (a + b + c), polyester: c / (a + b + c) });
      expect(life && 0 < life.low && life.low <= life.median && life.median <= life.high).toBe(true);
    }), { numRuns: 40 });
  });
});

describe("agesOf", () => {
  it("takes the year only where it was bought new", () => {
    expect(agesOf(told({ boughtWhere: "online", boughtYear: 2020 }), YEAR)).toEqual([[6, 1]]);
    expect(agesOf(told({ boughtWhere: "secondhand", boughtYear: 2020 }), YEAR).length).toBeGreaterThan(1);
  });
  it("knows nothing from a year to come, and counts this one as new", () => {
    expect(agesOf(told({ boughtWhere: "online", boughtYear: YEAR + 1 }), YEAR)).toEqual(agesOf(told({}), YEAR));
    expect(agesOf(told({ boughtWhere: "online", boughtYear: YEAR }), YEAR)).toEqual([[0, 1]]);
  });
});

describe("constructionShares", () => {
  it("reads the back, and leaves it open where nobody looked", () => {
    expect(constructionShares(told({ back: "cloth" })).tufted).toBeGreaterThan(0.9);
    expect(constructionShares(told({})).tufted).toBeLessThan(0.5);
  });
});
