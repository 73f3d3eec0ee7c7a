import { describe, expect, it } from "vitest";
import { gradeOfDifference, greyScaleGrade } from "../../lib/photo/grey-scale";
import { yellownessOfXyz } from "../../lib/photo/yellowness";

/**
 * Steps of the grey scale: EN 20105-A02:1994 (ISO 105-A02:1993), clause 2.4, CIELAB difference of each grade with its
 * tolerance, read in a catalogue's excerpt (decimal points restored there).
 */
const STEPS = [
  { grade: 5, deltaE: 0, tolerance: 0.2 }, { grade: 4.5, deltaE: 0.8, tolerance: 0.2 }, { grade: 4, deltaE: 1.7, tolerance: 0.3 }, { grade: 3.5, deltaE: 2.5, tolerance: 0.35 },
  { grade: 3, deltaE: 3.4, tolerance: 0.4 }, { grade: 2.5, deltaE: 4.8, tolerance: 0.5 }, { grade: 2, deltaE: 6.8, tolerance: 0.6 }, { grade: 1.5, deltaE: 9.6, tolerance: 0.7 },
  { grade: 1, deltaE: 13.6, tolerance: 1 },
];

describe("the grade of ISO 105-A05 on the steps of ISO 105-A02", () => {
  it.each(STEPS)("a grey pair $deltaE apart has grade $grade", ({ grade, deltaE }) => {
    expect(gradeOfDifference(deltaE)).toBe(grade);
    expect(greyScaleGrade({ L: 55, a: 0, b: 0 }, { L: 55 - deltaE, a: 0, b: 0 })).toBe(grade);
    expect(greyScaleGrade({ L: 55, a: 0, b: 0 }, { L: 55 + deltaE, a: 0, b: 0 })).toBe(grade);
  });
  it.each(STEPS.slice(1, -1))("within the tolerance of the scale itself, grade $grade is met within a quarter", ({ grade, deltaE, tolerance }) => {
    expect(Math.abs(gradeOfDifference(deltaE - tolerance) - grade)).toBeLessThanOrEqual(0.26);
    expect(Math.abs(gradeOfDifference(deltaE + tolerance) - grade)).toBeLessThanOrEqual(0.26);
  });
  it("never falls under 1", () => expect(gradeOfDifference(40)).toBe(1));
  it("weighs a change of chroma less on a strong colour than on a grey", () => {
    expect(greyScaleGrade({ L: 50, a: 60, b: 0 }, { L: 50, a: 66, b: 0 })).toBeGreaterThan(greyScaleGrade({ L: 50, a: 0, b: 0 }, { L: 50, a: 6, b: 0 }));
  });
});

/** Yellowness of ASTM E313, 2° observer and D65: values of an open colour library's unit tests (read). */
describe("the yellowness index of ASTM E313", () => {
  it.each([{ xyz: [95, 100, 105], yi: 4.34 }, { xyz: [105, 100, 95], yi: 28.66 }, { xyz: [100, 100, 100], yi: 16.5 }] as const)("of $xyz is $yi", ({ xyz, yi }) => {
    expect(yellownessOfXyz(xyz)).toBeCloseTo(yi, 2);
  });
  it("of the white of D65 is near 0", () => expect(Math.abs(yellownessOfXyz([95.047, 100, 108.883]))).toBeLessThan(0.5));
});
