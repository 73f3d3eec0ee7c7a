import { describe, expect, it } from "vitest";
import { edgesCost, edgesRange, measurePlan, type MeasuredPlan } from "../../../lib/enquiry/measured-plan";
import type { PlanMarks } from "../../../lib/enquiry/mark-schema";

const box = (left: number, top: number, right: number, bottom: number) => [{ x: left, y: top }, { x: right, y: top }, { x: right, y: bottom }, { x: left, y: bottom }];
/** A rug of 2 by 3 metres that fills its photo. */
const MARKS: PlanMarks = { corners: box(0, 0, 1, 1) as PlanMarks["corners"], widthCm: 200, lengthCm: 300, damaged: [], borderCm: 0, isSymmetric: false, chosen: null };
const measured = (more: Partial<PlanMarks>): MeasuredPlan => {
  const made = measurePlan({ ...MARKS, ...more });
  if (typeof made === "string") throw new Error(made);
  return made;
};

describe("measurePlan", () => {
  it("counts a centimetre that two outlines cover once", () => {
    const both = measured({ damaged: [box(0, 0, 1, 0.1), box(0, 0.05, 1, 0.15)] });
    // 200 cm by 45 cm.
    expect(both.damagedCm2).toBeCloseTo(9000, 3);
    expect(both.share).toBeCloseTo(0.15, 6);
    expect(both.places.map((p) => Math.round(p.areaCm2))).toEqual([6000, 6000]);
  });
  it("makes of places apart, slanting too, what the places are, one of them alone to the last figure", () => {
    const [slant, far] = [[{ x: 0.1, y: 0.1 }, { x: 0.43, y: 0.17 }, { x: 0.21, y: 0.377 }], box(0.6, 0.6, 0.9, 0.9)];
    for (const damaged of [[slant], [slant, far]]) {
      const { damagedCm2, places } = measured({ damaged });
      expect(damagedCm2).toBeCloseTo(places.reduce((sum, p) => sum + p.areaCm2, 0), 6);
    }
    // Half the cross product of two sides, on a rug of 200 by 300 cm.
    expect(measured({ damaged: [slant] }).damagedCm2).toBeCloseTo((66 * 83.1 - 22 * 21) / 2, 6);
  });
  it("has neither damage nor doubt nor ways where nothing is outlined", () => {
    expect(measured({})).toMatchObject({ damagedCm2: 0, damagedSdCm2: 0, share: 0, ways: [], chosen: null });
  });
  it("leaves out pieces under 40 cm, at the limit", () => {
    expect(measured({ damaged: [box(0, 40 / 300, 1, 1)] }).ways).toHaveLength(1);
    expect(measured({ damaged: [box(0, 39 / 300, 1, 1)] }).ways).toEqual([]);
  });
  it("finds the way that was chosen, and none where it no longer remains", () => {
    const damaged = [box(0, 0, 1, 0.1)];
    expect(measured({ damaged, chosen: "edge-off" }).chosen).toMatchObject({ kind: "edge-off", shareKept: 0.9 });
    expect(measured({ damaged, chosen: "edge-off", isSymmetric: true }).chosen).toBeNull();
  });
  it("says in words what is wrong with the marks", () => {
    expect(measurePlan({ ...MARKS, widthCm: NaN })).toMatch(/both sides in centimetres/);
    expect(measurePlan({ ...MARKS, damaged: [box(0, 0, 1, 0.1).slice(0, 2)] })).toMatch(/three points/);
  });
});

describe("edgesCost", () => {
  it("is the metres of binding at the rate for one", () => expect(edgesCost({ bindingM: 2.02 }, 35)).toBeCloseTo(70.7, 9));
});

describe("edgesRange", () => {
  it("goes from the edges as drawn to new ones all round each piece that is kept, each with its turn of 2 cm", () => {
    const piece = { left: 0, top: 0, right: 200, bottom: 120 };
    // 2 × 200 + 2 × 120 + 4 × 2 = 648 cm at 10 a metre.
    const one = edgesRange({ bindingM: 2.02, pieces: [piece] }, 10);
    expect([one.low, one.median]).toEqual([20.2, 20.2]);
    expect(one.high).toBeCloseTo(64.8, 9);
    expect(edgesRange({ bindingM: 4.04, pieces: [piece, piece] }, 10).high).toBeCloseTo(129.6, 9);
  });
  it("is never less than the edges as drawn", () => {
    const small = edgesRange({ bindingM: 9, pieces: [{ left: 0, top: 0, right: 50, bottom: 50 }] }, 10);
    expect(small).toEqual({ low: 90, median: 90, high: 90 });
  });
});
