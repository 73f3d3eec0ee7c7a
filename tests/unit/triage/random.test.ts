import { describe, expect, it } from "vitest";
import { drawCell, drawDirichlet } from "../../../lib/triage/dirichlet";
import { drawGamma, drawNormal, seededRandom } from "../../../lib/triage/random";

const N = 40_000;
function moments(draw: () => number): { mean: number; variance: number } {
  const xs = Array.from({ length: N }, draw);
  const mean = xs.reduce((a, b) => a + b, 0) / N;
  return { mean, variance: xs.reduce((a, x) => a + (x - mean) ** 2, 0) / (N - 1) };
}

describe("seededRandom", () => {
  it("gives the same numbers for the same seed and stream, others for another seed or stream", () => {
    const first = (seed: number, stream: string) => Array.from({ length: 5 }, seededRandom(seed, stream));
    expect(first(7, "prior")).toEqual(first(7, "prior"));
    expect(first(8, "prior")).not.toEqual(first(7, "prior"));
    expect(first(7, "shine")).not.toEqual(first(7, "prior"));
  });
  it("is uniform on [0, 1): mean 1/2, variance 1/12, every tenth equally full", () => {
    const random = seededRandom(1, "uniform");
    const { mean, variance } = moments(random);
    expect(Math.abs(mean - 0.5)).toBeLessThan(5 * Math.sqrt(1 / 12 / N));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.002);
    const tenths = new Array<number>(10).fill(0);
    for (let i = 0; i < N; i += 1) {
      const x = random();
      expect(x >= 0 && x < 1).toBe(true);
      tenths[Math.floor(x * 10)] = (tenths[Math.floor(x * 10)] as number) + 1;
    }
    const chi2 = tenths.reduce((sum, n) => sum + (n - N / 10) ** 2 / (N / 10), 0);
    expect(chi2).toBeLessThan(27.88); // chi-squared, 9 degrees of freedom, upper .001
  });
});

describe("drawNormal", () => {
  it("has mean 0 and variance 1", () => {
    const random = seededRandom(2, "normal");
    const { mean, variance } = moments(() => drawNormal(random));
    expect(Math.abs(mean)).toBeLessThan(5 / Math.sqrt(N));
    expect(Math.abs(variance - 1)).toBeLessThan(5 * Math.sqrt(2 / N));
  });
});

describe("drawGamma", () => {
  it.each([0.05, 0.5, 1, 2.5, 30])("has mean and variance equal to its shape %d", (shape) => {
    const random = seededRandom(3, `gamma ${shape}`);
    const { mean, variance } = moments(() => drawGamma(random, shape));
    expect(Math.abs(mean - shape)).toBeLessThan(5 * Math.sqrt(shape / N));
    expect(Math.abs(variance - shape)).toBeLessThan(5 * Math.sqrt((2 * shape ** 2 + 6 * shape) / N));
  });
  it.each([0, -1, Number.NaN])("refuses the shape %d", (shape) => {
    expect(() => drawGamma(seededRandom(1, "x"), shape)).toThrow("Expected a shape above 0");
  });
});

describe("drawDirichlet", () => {
  it("sums to 1, keeps the row's mean, and varies as p(1−p)/(strength+1)", () => {
    const row = [0.7, 0.2, 0.1];
    const random = seededRandom(4, "dirichlet");
    const draws = Array.from({ length: 8_000 }, () => drawDirichlet(random, row, 8));
    for (const d of draws.slice(0, 100)) expect(d.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    row.forEach((p, i) => {
      const cell = draws.map((d) => d[i] as number);
      const mean = cell.reduce((a, b) => a + b, 0) / cell.length;
      const variance = cell.reduce((a, x) => a + (x - mean) ** 2, 0) / cell.length;
      expect(Math.abs(mean - p)).toBeLessThan(0.01);
      expect(variance / ((p * (1 - p)) / 9)).toBeCloseTo(1, 0);
    });
  });
  it("never gives what is no number, even for shares next to nothing", () => {
    const random = seededRandom(5, "thin");
    for (let i = 0; i < 500; i += 1) expect(drawDirichlet(random, [1e-9, 1 - 1e-9], 8).every(Number.isFinite)).toBe(true);
  });
});

describe("drawCell", () => {
  it("is the Dirichlet's marginal: same mean and variance", () => {
    const random = seededRandom(6, "cell");
    const { mean, variance } = moments(() => drawCell(random, 0.15, 8));
    expect(mean).toBeCloseTo(0.15, 2);
    expect(variance).toBeCloseTo((0.15 * 0.85) / 9, 3);
  });
  it("leaves certainty alone", () => {
    expect([drawCell(seededRandom(1, "a"), 0, 8), drawCell(seededRandom(1, "a"), 1, 8)]).toEqual([0, 1]);
  });
});
