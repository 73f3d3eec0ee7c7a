import { describe, expect, it } from "vitest";
import { baseRateLogScore, brierScore, coverage, expectedCalibrationError, meanLogScore, netBenefit, quantile, statedMinusObserved } from "../../../lib/triage/calibration";
import { nullBand, observedAt, reliabilitySteps } from "../../../lib/triage/reliability";

const yes = (stated: number) => ({ stated, cameTrue: true });
const no = (stated: number) => ({ stated, cameTrue: false });

describe("measures of calibration", () => {
  it("refuse an empty list and what is no probability, in a sentence", () => {
    for (const measure of [brierScore, expectedCalibrationError, reliabilitySteps]) {
      expect(() => measure([])).toThrow(new RangeError("Expected at least one case but received none."));
      for (const bad of [-0.01, 1.01, Number.NaN]) expect(() => measure([yes(bad)])).toThrow(RangeError);
    }
    expect(() => meanLogScore([])).toThrow(RangeError);
    expect(() => baseRateLogScore([])).toThrow(RangeError);
    expect(() => coverage([])).toThrow(RangeError);
    expect(() => quantile([], 0.5)).toThrow(RangeError);
  });

  it("take 0 and 1, sure and right, as perfect", () => {
    expect(brierScore([yes(1), no(0)])).toBe(0);
    expect(expectedCalibrationError([yes(1), no(0)])).toBe(0);
    expect(meanLogScore([1, 1])).toBeCloseTo(0, 12);
  });

  it("give an infinite log score where the truth was ruled out", () => {
    expect(meanLogScore([0, 1])).toBe(Number.POSITIVE_INFINITY);
  });

  it("do not depend on the order of the cases", () => {
    const some = [yes(0.2), no(0.7), yes(0.7), no(0.2), yes(0.9), no(0.4)];
    expect(reliabilitySteps([...some].reverse())).toEqual(reliabilitySteps(some));
  });
});

describe("reliabilitySteps", () => {
  it("takes equal chances as one value", () => {
    expect(reliabilitySteps([no(0.3), yes(0.3)])).toEqual([{ from: 0.3, to: 0.3, observed: 0.5, cases: 2 }]);
  });

  it("pools back over several steps where a late low value breaks the order", () => {
    expect(reliabilitySteps([no(0.1), yes(0.2), yes(0.3), no(0.4), no(0.5)]).map((s) => [s.from, s.to, s.observed])).toEqual([[0.1, 0.1, 0], [0.2, 0.5, 0.5]]);
  });
});

describe("observedAt", () => {
  const steps = [{ from: 0.1, to: 0.3, observed: 0.2, cases: 5 }, { from: 0.5, to: 0.5, observed: 0.6, cases: 5 }];
  it("holds before the first step and after the last", () => {
    expect(observedAt(steps, 0)).toBe(0.2);
    expect(observedAt(steps, 1)).toBe(0.6);
  });
  it("is linear between steps", () => expect(observedAt(steps, 0.4)).toBeCloseTo(0.4, 12));
});

describe("coverage and net benefit", () => {
  it("count the ends of a range and the threshold itself as inside", () => {
    expect(coverage([{ low: 1, high: 2, truth: 1 }, { low: 1, high: 2, truth: 2 }, { low: 1, high: 2, truth: 2.01 }])).toBeCloseTo(2 / 3, 12);
    expect(netBenefit([yes(0.5)], 0.5)).toBe(1);
    expect(netBenefit([yes(0.49)], 0.5)).toBe(0);
  });
  it("refuse a threshold of 0 or 1", () => {
    for (const t of [0, 1]) expect(() => netBenefit([yes(0.5)], t)).toThrow(RangeError);
  });
});

describe("seeded draws", () => {
  it("are the same for the same seed and others for another", () => {
    const some = [yes(0.8), no(0.8), yes(0.8), yes(0.6), no(0.3), yes(0.7), no(0.45)];
    const draw = (seed: number) => [statedMinusObserved(some, { seed, times: 50 }), nullBand(some, [0.5], { seed, times: 50 })];
    expect(draw(1)).toEqual(draw(1));
    expect(draw(1)).not.toEqual(draw(2));
  });
});
