import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import logNormal from "@stdlib/stats-base-dists-lognormal-quantile";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS } from "../../lib/trade/fibres";
import { improvementCell, ROW_IDS } from "../../lib/trade/improvement";
import { chanceAtMost, ladderOf, mixtureAtStep, mixtureQuantile, quantileAt, quantilePoints, STEPS_PER_CENT } from "../../lib/triage/improvement-quantiles";
import { logNormalQuantile } from "../../lib/triage/value-today";
import { seeded } from "./seeded";

/** Forty mixtures of table rows with random weights. */
const random = seeded(3);
const MIXTURES = Array.from({ length: 40 }, () => {
  const rows = Array.from({ length: 6 }, () => quantilePoints(improvementCell(ROW_IDS[Math.floor(random() * ROW_IDS.length)]!, FIBRE_IDS[Math.floor(random() * FIBRE_IDS.length)]!)));
  const raw = rows.map(() => random());
  const total = raw.reduce((a, b) => a + b, 0);
  return { rows, weights: Float64Array.from(raw, (w) => w / total) };
});

describe("mixtureQuantile", () => {
  it("inverts the distribution of the mixture to 1e-9, counted row by row without the ladder; at an atom it stays at zero", () => {
    for (const { rows, weights } of MIXTURES) {
      const below = (x: number) => rows.reduce((sum, points, i) => sum + weights[i]! * chanceAtMost(points, x), 0);
      for (const p of [0.1, 0.25, 0.5, 0.9]) {
        const x = mixtureQuantile(ladderOf(rows), weights, p);
        if (x === 0) expect(below(0)).toBeGreaterThanOrEqual(p);
        else if (below(x) - below(x - 1e-6) < 1e-3) expect(below(x)).toBeCloseTo(p, 9);
        else expect(below(x)).toBeGreaterThanOrEqual(p - 1e-9);
      }
    }
  });

  it("agrees with 100,000 draws of the mixture within 1 per cent of improvement, or .01 of chance where the mixture is thin", () => {
    for (const { rows, weights } of MIXTURES.slice(0, 6)) {
      const draws = Array.from({ length: 100_000 }, () => {
        let u = random();
        let i = 0;
        while (i < rows.length - 1 && (u -= weights[i]!) > 0) i += 1;
        return quantileAt(rows[i]!, random());
      }).sort((a, b) => a - b);
      for (const p of [0.1, 0.5, 0.9]) {
        const x = mixtureQuantile(ladderOf(rows), weights, p);
        const drawn = draws[Math.floor(p * draws.length)]!;
        const share = draws.filter((d) => d <= x).length / draws.length;
        expect(Math.abs(x - drawn) < 1 || Math.abs(share - p) < 0.01).toBe(true);
      }
    }
  });

  it("gives the chance at 40 per cent as the rows do", () => {
    for (const { rows, weights } of MIXTURES) {
      expect(mixtureAtStep(ladderOf(rows), weights, 40 * STEPS_PER_CENT)).toBeCloseTo(rows.reduce((sum, points, i) => sum + weights[i]! * chanceAtMost(points, 40), 0), 12);
    }
  });
});

describe("a row of improvement beside a beta distribution of the same median", () => {
  it("spreads as a distribution on 0 to 1 can: the straight pieces of 25–55–80 stay within .08 of the beta through its 10th and 90th percentile", () => {
    // Beta(a, b) matched by search to the 10th and 90th percentile of viscose's plain soil.
    const target = { low: 0.25, high: 0.8 };
    let best = { a: 1, b: 1, miss: Infinity };
    for (let a = 0.5; a < 6; a += 0.05) for (let b = 0.5; b < 6; b += 0.05) {
      const miss = Math.abs(betaQuantile(0.1, a, b) - target.low) + Math.abs(betaQuantile(0.9, a, b) - target.high);
      if (miss < best.miss) best = { a, b, miss };
    }
    const points = quantilePoints(improvementCell("soil", "viscose"));
    for (let p = 0.1; p <= 0.9; p += 0.1) expect(Math.abs(quantileAt(points, p) / 100 - betaQuantile(p, best.a, best.b))).toBeLessThan(0.08);
  });
});

describe("logNormalQuantile against @stdlib", () => {
  it("of one part is the log-normal's own quantile, within .03 %", () => {
    for (const p of [0.1, 0.5, 0.9]) for (const [mu, sd] of [[5, 0.25], [3, 0.95]] as const) expect(logNormalQuantile([{ weight: 0.4, logMedian: mu, logSd: sd }], p) / logNormal(p, mu, sd)).toBeCloseTo(1, 3);
  });
  it("of two parts agrees with 200,000 draws within 2 %", () => {
    const parts = [{ weight: 0.3, logMedian: 4, logSd: 0.5 }, { weight: 0.7, logMedian: 6, logSd: 0.9 }];
    const draws = Array.from({ length: 200_000 }, () => { const part = random() < 0.3 ? parts[0]! : parts[1]!; return logNormal(random(), part.logMedian, part.logSd); }).sort((a, b) => a - b);
    for (const p of [0.1, 0.5, 0.9]) expect(Math.abs(logNormalQuantile(parts, p) / draws[Math.floor(p * draws.length)]! - 1)).toBeLessThan(0.02);
  });
});
