import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { improvementCell, ROW_IDS, type RowId } from "../../../lib/trade/improvement";
import type { Finding } from "../../../lib/triage/finding";
import { chanceAtMost, quantileAt, quantilePoints, STEPS_PER_CENT } from "../../../lib/triage/improvement-quantiles";
import { chanceOfFailing, chanceOfRepairOnly, improvementRange, rulingRows, type RulingRows } from "../../../lib/triage/prospects";
import { seededRandom } from "../../../lib/triage/random";
import { whatHappened } from "../../../lib/triage/what-happened";
import { belief, told } from "./told";

const only = (row: RowId): RulingRows =>
  Object.fromEntries(FIBRE_IDS.map((f) => [f, Object.fromEntries(ROW_IDS.map((r) => [r, r === row ? 1 : 0]))])) as unknown as RulingRows;
const prospects = (answers: Record<string, Finding["value"]>, fibres: Partial<Record<FibreId, number>>) => {
  const t = told(answers);
  const rows = rulingRows(whatHappened(t), t);
  return { rows, range: improvementRange(belief(fibres), rows), fails: chanceOfFailing(belief(fibres), rows) };
};

describe("quantilePoints", () => {
  it("goes on at both ends with the slope of the neighbouring piece", () => expect(quantilePoints({ low: 40, median: 60, high: 80 })).toEqual([35, 40, 60, 80, 85]));
  it("stays within 0 and 100", () => expect(quantilePoints({ low: 2, median: 50, high: 99 })).toEqual([0, 2, 50, 99, 100]));
});

describe("STEPS_PER_CENT", () => {
  it("puts every bend of every row on a step, so that the mixture is exact", () => {
    for (const f of FIBRE_IDS) for (const r of ROW_IDS) for (const p of quantilePoints(improvementCell(r, f))) expect(Number.isInteger(p * STEPS_PER_CENT), `${f} ${r}`).toBe(true);
  });
});

describe("chanceAtMost", () => {
  it("has an atom at zero where the 10th percentile is 0", () => {
    const points = quantilePoints({ low: 0, median: 10, high: 30 });
    expect(chanceAtMost(points, -0.01)).toBe(0);
    expect(chanceAtMost(points, 0)).toBe(0.1);
    expect(chanceAtMost(points, 5)).toBeCloseTo(0.3, 12);
  });
  it("has an atom of one half where the median is 0 too", () => expect(chanceAtMost(quantilePoints({ low: 0, median: 0, high: 3 }), 0)).toBe(0.5));
  it("undoes the quantile function of every row that has no atom", () => {
    fc.assert(fc.property(fc.constantFrom(...ROW_IDS), fc.constantFrom(...FIBRE_IDS), fc.double({ min: 0.001, max: 0.999, noNaN: true }), (row, fibre, u) => {
      const points = quantilePoints(improvementCell(row, fibre));
      const x = quantileAt(points, u);
      if (x > 0) expect(chanceAtMost(points, x)).toBeCloseTo(u, 9);
    }));
  });
});

describe("improvementRange", () => {
  it("of one fibre and one row is that row's cell", () => {
    const r = improvementRange(belief({ wool: 1 }), only("soil"));
    expect([r.low, r.median, r.high].map((x) => Math.round(x))).toEqual([80, 92, 98]);
  });

  it("agrees with 200,000 draws of the mixture, within 1 per cent", () => {
    const fibres = { wool: 0.45, viscose: 0.35, polyester: 0.2 };
    const { rows, range, fails } = prospects({ incidents: ["spill"], liquid: "wine", since: "week", treatments: ["household-cleaner"], changes: ["browner", "ring"] }, fibres);
    const random = seededRandom(7, "brute force");
    const drawn: number[] = [];
    for (let i = 0; i < 200_000; i += 1) {
      const f = pick(Object.entries(fibres), random()) as FibreId;
      const row = pick(Object.entries(rows[f]), random()) as RowId;
      drawn.push(quantileAt(quantilePoints(improvementCell(row, f)), random()));
    }
    drawn.sort((a, b) => a - b);
    const at = (p: number) => drawn[Math.floor(p * drawn.length)] as number;
    expect(Math.abs(range.low - at(0.1))).toBeLessThan(1);
    expect(Math.abs(range.median - at(0.5))).toBeLessThan(1);
    expect(Math.abs(range.high - at(0.9))).toBeLessThan(1);
    expect(Math.abs(fails - drawn.filter((x) => x <= 40).length / drawn.length)).toBeLessThan(0.01);
  });

  it("keeps its order and its bounds for any belief", () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: FIBRE_IDS.length, maxLength: FIBRE_IDS.length }), fc.constantFrom(...ROW_IDS), (w, row) => {
      const total = w.reduce((a, b) => a + b, 0);
      const { low, median, high } = improvementRange(Object.fromEntries(FIBRE_IDS.map((f, i) => [f, (w[i] as number) / total])) as Record<FibreId, number>, only(row));
      expect(0 <= low && low <= median && median <= high && high <= 100).toBe(true);
    }), { numRuns: 60 });
  });

  it("wool and viscose browned in use, cleaned nearly dry: a median of 65 to 90", () => {
    const { range } = prospects({ incidents: ["damp"], household: ["pots"], changes: ["browner"] }, { "wool-viscose": 1 });
    expect(range.median).toBeGreaterThanOrEqual(65);
    expect(range.median).toBeLessThanOrEqual(90);
  });

  it("dusty silk: a median of 85 or more", () => {
    expect(prospects({ incidents: ["nothing"], changes: ["dirty"] }, { silk: 1 }).range.median).toBeGreaterThanOrEqual(85);
  });

  it("bleach does not come back on any pile", () => {
    for (const f of ["wool", "viscose", "silk"] as const) {
      expect(prospects({ treatments: ["bleach"], changes: ["paler"] }, { [f]: 1 }).range.median, f).toBeLessThan(25);
    }
  });

  it("a fresh spill comes back better than an old one, on every pile", () => {
    for (const f of FIBRE_IDS) {
      const at = (since: string) => prospects({ incidents: ["spill"], liquid: "coffee-tea", since }, { [f]: 1 }).range.median;
      expect(at("day"), f).toBeGreaterThanOrEqual(at("longer"));
    }
  });
});

const pick = (shares: [string, number][], u: number): string => {
  let left = u;
  for (const [id, share] of shares) if ((left -= share) <= 0) return id;
  return (shares.findLast(([, s]) => s > 0) as [string, number])[0];
};

describe("rulingRows", () => {
  it("lets the worst row rule where several hold: bleach over a fresh drink", () => {
    const { rows } = prospects({ incidents: ["spill"], liquid: "wine", since: "hour", treatments: ["bleach"], changes: ["paler", "ring"] }, { wool: 1 });
    expect(rows.wool.bleaching).toBeGreaterThan(0.8);
    expect(rows.wool["food-fresh"]).toBeLessThan(0.2);
  });
  it("sums to one for every fibre", () => {
    const { rows } = prospects({ incidents: ["pet-urine", "flood"], since: "week", changes: ["ran", "browner"] }, { wool: 1 });
    for (const f of FIBRE_IDS) expect(Object.values(rows[f]).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
  });
  it("judges repairs as soil: moths alone leave the row of plain soil", () => {
    const { rows } = prospects({ incidents: ["insects"], changes: ["bare"] }, { wool: 1 });
    expect(rows.wool.soil).toBeGreaterThan(0.8);
  });
});

describe("chanceOfFailing", () => {
  it("a viscose with an accident, treated with a kitchen cleaner: .7 or more", () => {
    expect(prospects({ incidents: ["pet-urine", "spotted"], since: "week", treatments: ["household-cleaner"], changes: ["browner", "stiff"] }, { viscose: 1 }).fails).toBeGreaterThanOrEqual(0.7);
  });
  it("never falls by moving belief from wool to viscose", () => {
    const answers = { incidents: ["spill"], liquid: "juice", since: "month", changes: ["ring"] };
    const at = (v: number) => prospects(answers, { wool: 1 - v, viscose: v }).fails;
    for (let v = 0; v < 1; v += 0.25) expect(at(v + 0.25)).toBeGreaterThan(at(v));
  });
});

describe("chanceOfRepairOnly", () => {
  it("is high for moths alone and low for a spill", () => {
    const at = (answers: Record<string, Finding["value"]>) => chanceOfRepairOnly(whatHappened(told(answers)), belief({ wool: 1 }));
    expect(at({ incidents: ["insects"], changes: ["bare"] })).toBeGreaterThan(0.8);
    expect(at({ incidents: ["spill"], changes: ["ring"] })).toBeLessThan(0.05);
  });
});
