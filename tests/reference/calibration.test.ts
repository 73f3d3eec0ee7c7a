import { describe, expect, it } from "vitest";
import { baseRateLogScore, brierScore, coverage, expectedCalibrationError, meanLogScore, murphyParts, netBenefit, netBenefitOfAll, netBenefitOfCounts, noiseFloor, quantile, statedMinusObserved, type Stated } from "../../lib/triage/calibration";
import { corpParts, nullBand, observedAt, reliabilitySteps } from "../../lib/triage/reliability";
import { seeded } from "./seeded";

const cases = (stated: readonly number[], outcomes: readonly number[]): Stated[] => stated.map((p, i) => ({ stated: p, cameTrue: outcomes[i] === 1 }));
const repeated = (value: number, times: number) => Array.from({ length: times }, () => value);

describe("Murphy's parts of the Brier score", () => {
  // Computed by hand from the formula of Murphy 1973, "A new vector partition of the probability score".
  const ten = cases([...repeated(0.2, 5), ...repeated(0.6, 5)], [0, 0, 0, 1, 0, 1, 1, 0, 1, 1]);

  it("are .02 reliability, .09 resolution, .25 uncertainty, .18 in all", () => {
    const parts = murphyParts(ten);
    expect(parts.score).toBeCloseTo(0.18, 12);
    expect(parts.reliability).toBeCloseTo(0.02, 12);
    expect(parts.resolution).toBeCloseTo(0.09, 12);
    expect(parts.uncertainty).toBeCloseTo(0.25, 12);
  });
});

describe("reliability by pooling adjacent violators (CORP: Dimitriadis, Gneiting & Jordan 2021)", () => {
  // A vector computed apart from this code with an isotonic regression.
  const eight = cases([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8], [0, 1, 0, 0, 1, 0, 1, 1]);

  it("recalibrates to 0, 1/3, 1/3, 1/3, 1/2, 1/2, 1, 1", () => {
    const steps = reliabilitySteps(eight);
    [0, 0.333333, 0.333333, 0.333333, 0.5, 0.5, 1, 1].forEach((value, i) => expect(observedAt(steps, (eight[i] as Stated).stated)).toBeCloseTo(value, 6));
  });

  it("parts the score .205 into MCB .0591667, DSC .1041667, UNC .25, and its mean log score is .596444", () => {
    const parts = corpParts(eight);
    expect(parts.score).toBeCloseTo(0.205, 9);
    expect(parts.miscalibration).toBeCloseTo(0.0591667, 7);
    expect(parts.discrimination).toBeCloseTo(0.1041667, 7);
    expect(parts.uncertainty).toBeCloseTo(0.25, 12);
    expect(meanLogScore(eight.map((c) => (c.cameTrue ? c.stated : 1 - c.stated)))).toBeCloseTo(0.596444, 6);
  });

  // Published beside the R package reliabilitydiag, forecasts of rain in Niamey 2016: EMOS printed there, the others computed
  // from its data. The data are not here, so what is checked on them is the identity and the uncertainty of the base rate.
  it.each([["Logistic", 0.2057, 0.0171, 0.0555], ["EMOS", 0.232, 0.0183, 0.0305], ["ENS", 0.2662, 0.0661, 0.0441], ["EPC", 0.2343, 0.0223, 0.0323]])("%s: score = MCB − DSC + UNC to the digits printed, UNC from 53 of 92", (_, score, mcb, dsc) => {
    const uncertainty = corpParts(cases(repeated(53 / 92, 92), [...repeated(1, 53), ...repeated(0, 39)])).uncertainty;
    expect(uncertainty).toBeCloseTo(0.2442, 4);
    expect(Math.abs(score - (mcb - dsc + uncertainty))).toBeLessThanOrEqual(0.0002);
  });

  it("keeps that identity, and no part below zero, on any cases", () => {
    const random = seeded(2021);
    for (let i = 0; i < 100; i += 1) {
      const any = Array.from({ length: 1 + Math.floor(random() * 60) }, () => ({ stated: Math.round(random() * 20) / 20, cameTrue: random() < 0.4 }));
      const { score, miscalibration, discrimination, uncertainty } = corpParts(any);
      expect(miscalibration - discrimination + uncertainty).toBeCloseTo(score, 12);
      expect(Math.min(miscalibration, discrimination)).toBeGreaterThanOrEqual(-1e-12);
    }
  });

  it("is the best rising function: no other rising one on a grid has a lower score", () => {
    const random = seeded(7);
    const grid = [0, 0.25, 0.5, 0.75, 1];
    const rising = grid.flatMap((a) => grid.flatMap((b) => grid.flatMap((c) => (a <= b && b <= c ? [[a, b, c] as const] : []))));
    for (let i = 0; i < 50; i += 1) {
      const some = Array.from({ length: 30 }, () => ({ stated: [0.1, 0.5, 0.9][Math.floor(random() * 3)] as number, cameTrue: random() < 0.5 }));
      const steps = reliabilitySteps(some);
      const ours = brierScore(some.map((c) => ({ ...c, stated: observedAt(steps, c.stated) })));
      for (const [low, middle, high] of rising) {
        expect(ours).toBeLessThanOrEqual(brierScore(some.map((c) => ({ ...c, stated: c.stated === 0.1 ? low : c.stated === 0.5 ? middle : high }))) + 1e-12);
      }
    }
  });
});

describe("decision curve (Vickers & Elkin 2006)", () => {
  // From the data of the package dcurves (df_binary, 750 cases, 105 of them true): counts and net benefits computed there.
  it("gives .08741 for 87 true and 193 false positives of 750 at .10", () => {
    expect(netBenefitOfCounts({ truePositives: 87, falsePositives: 193, cases: 750 }, 0.1)).toBeCloseTo(0.08741, 5);
    const same = [...cases(repeated(0.1, 280), [...repeated(1, 87), ...repeated(0, 193)]), ...cases(repeated(0.09, 470), [...repeated(1, 18), ...repeated(0, 452)])];
    expect(netBenefit(same, 0.1)).toBeCloseTo(0.08741, 5);
  });

  it.each([[0.05, 0.09474], [0.1, 0.04444], [0.15, -0.01176], [0.2, -0.075], [0.3, -0.22857]])("of treating all at %s and a prevalence of .14 is %s", (threshold, benefit) => {
    expect(netBenefitOfAll(0.14, threshold)).toBeCloseTo(benefit, 5);
  });
});

/** Stated chances of Beta(2,2), by the middle of three uniforms. */
const betaTwoTwo = (random: () => number) => [random(), random(), random()].sort((a, b) => a - b)[1] as number;

describe("noise floor of a perfect forecaster whose chances follow Beta(2,2)", () => {
  // Computed apart from this code by 1,000 simulations each: mean and 95th percentile. Bounds: those of 150–400 simulations here and 1,000 there.
  it.each([[100, 0.103, 0.151, 0.006, 0.012], [200, 0.074, 0.109, 0.005, 0.009], [500, 0.046, 0.068, 0.003, 0.006], [1000, 0.033, 0.047, 0.003, 0.005], [5000, 0.015, 0.021, 0.0015, 0.0025]])("of %s cases: calibration error about %s, 95th percentile about %s", (n, meanOf, p95, nearMean, nearP95) => {
    const floor = simulated(n, n > 1000 ? 150 : 400, expectedCalibrationError);
    expect(Math.abs(floor.mean - meanOf)).toBeLessThan(nearMean);
    expect(Math.abs(floor.p95 - p95)).toBeLessThan(nearP95);
  });

  it.each([[100, 0.0246, 0.0354, 0.0015, 0.003], [200, 0.0155, 0.0216, 0.001, 0.002], [500, 0.0087, 0.0113, 0.0006, 0.001], [1000, 0.0058, 0.0074, 0.0005, 0.0008]])("of %s cases: miscalibration about %s, 95th percentile about %s", (n, meanOf, p95, nearMean, nearP95) => {
    const floor = simulated(n, 300, (some) => corpParts(some).miscalibration);
    expect(Math.abs(floor.mean - meanOf)).toBeLessThan(nearMean);
    expect(Math.abs(floor.p95 - p95)).toBeLessThan(nearP95);
  });

  it("is found by redrawing the outcomes of one list of cases too", () => {
    const random = seeded(3);
    const some = Array.from({ length: 500 }, () => ({ stated: betaTwoTwo(random), cameTrue: true }));
    const floor = noiseFloor(some, expectedCalibrationError, { seed: 1, times: 300 });
    expect(Math.abs(floor.mean - 0.046)).toBeLessThan(0.006);
  });
});

function simulated(n: number, times: number, measure: (some: readonly Stated[]) => number): { mean: number; p95: number } {
  const random = seeded(n);
  const values = Array.from({ length: times }, () => measure(Array.from({ length: n }, () => { const stated = betaTwoTwo(random); return { stated, cameTrue: random() < stated }; })));
  return { mean: values.reduce((s, v) => s + v, 0) / times, p95: quantile(values, 0.95) };
}

describe("null band", () => {
  it("holds a perfect forecaster nine times in ten and shows one who overstates", () => {
    const random = seeded(11);
    const at = [0.2, 0.5, 0.8];
    let held = 0;
    for (let i = 0; i < 120; i += 1) {
      const some = Array.from({ length: 200 }, () => { const stated = random(); return { stated, cameTrue: random() < stated }; });
      const steps = reliabilitySteps(some);
      held += nullBand(some, at, { seed: i, times: 100 }).filter((b) => { const o = observedAt(steps, b.stated); return b.low <= o && o <= b.high; }).length;
    }
    // 360 draws of a chance of .9, three to a forecaster: .9 ± four standard errors of 120 independent ones, at worst.
    expect(Math.abs(held / 360 - 0.9)).toBeLessThan(4 * Math.sqrt(0.09 / 120));
    const overstated = Array.from({ length: 2000 }, () => { const stated = random(); return { stated, cameTrue: random() < stated * 0.7 }; });
    const [band] = nullBand(overstated, [0.8], { seed: 1, times: 200 });
    expect(observedAt(reliabilitySteps(overstated), 0.8)).toBeLessThan(band?.low as number);
  });
});

describe("bootstrap bounds of stated minus observed", () => {
  it("agree with the normal ones of the binomial (stated .8, 700 of 1,000 true: .10 ± 1.96·√(.7·.3/1000))", () => {
    const { gap, low, high } = statedMinusObserved(cases(repeated(0.8, 1000), [...repeated(1, 700), ...repeated(0, 300)]), { seed: 1, times: 2000 });
    const half = 1.96 * Math.sqrt((0.7 * 0.3) / 1000);
    expect(gap).toBeCloseTo(0.1, 12);
    expect(Math.abs(low - (0.1 - half))).toBeLessThan(0.004);
    expect(Math.abs(high - (0.1 + half))).toBeLessThan(0.004);
  });
});

describe("base rates and coverage against closed form", () => {
  it("the base rate's log score is the entropy: ln 2 for two equal classes, 0 for one", () => {
    expect(baseRateLogScore(["a", "b", "a", "b"])).toBeCloseTo(Math.LN2, 12);
    expect(baseRateLogScore(["a", "a"])).toBeCloseTo(0, 12);
  });

  it("a range from 0.1 to 0.9 holds .8 of uniform truths", () => {
    const truths = Array.from({ length: 1000 }, (_, i) => (i + 0.5) / 1000);
    expect(coverage(truths.map((truth) => ({ low: 0.1, high: 0.9, truth })))).toBeCloseTo(0.8, 12);
  });
});
