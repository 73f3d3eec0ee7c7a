import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deltaE00, hexOf, labOf, linearOf } from "../../../lib/photo/colour";
import { isNearWhite } from "../../../lib/photo/yellowness";

const level = fc.integer({ min: 0, max: 255 });
const lab = fc.tuple(level, level, level).map(([r, g, b]) => labOf(r, g, b));

describe("labOf", () => {
  it("gives white 100 and black 0, both without colour", () => {
    expect(labOf(255, 255, 255).L).toBeCloseTo(100, 10);
    expect(labOf(0, 0, 0)).toEqual({ L: 0, a: 0, b: 0 });
  });
  it("gives every grey no colour and more lightness than the one before", () => {
    for (let v = 1; v < 256; v++) {
      const { L, a, b } = labOf(v, v, v);
      expect(Math.hypot(a, b)).toBeLessThan(1e-10);
      expect(L).toBeGreaterThan(labOf(v - 1, v - 1, v - 1).L);
    }
  });
});
describe("linearOf", () => {
  it("runs from 0 to 1 and is not a number for what is no level", () => {
    expect([linearOf(0), linearOf(255), linearOf(256), linearOf(0.5)]).toEqual([0, 1, NaN, NaN]);
  });
});
describe("hexOf", () => {
  it("clips what sRGB cannot show instead of wrapping round", () => {
    expect(hexOf({ L: 100, a: 0, b: 0 })).toBe("#ffffff");
    expect(hexOf({ L: 140, a: 0, b: 0 })).toBe("#ffffff");
    expect(hexOf({ L: 50, a: 200, b: -200 })).toMatch(/^#[0-9a-f]{6}$/);
  });
});
describe("deltaE00", () => {
  it("is 0 only between equal colours, symmetric, never negative", () => {
    fc.assert(fc.property(lab, lab, (p, q) => {
      const d = deltaE00(p, q);
      return d >= 0 && Math.abs(d - deltaE00(q, p)) < 1e-9 && deltaE00(p, p) === 0 && (d > 0 || (p.L === q.L && p.a === q.a && p.b === q.b));
    }));
  });
});

describe("isNearWhite", () => {
  it("holds of cream and of wool as it grows, not of blue, of red or of a dark beige", () => {
    expect([{ L: 82, a: 1, b: 10 }, { L: 70, a: 2, b: 16 }].map(isNearWhite)).toEqual([true, true]);
    expect([{ L: 26, a: -2, b: -16 }, { L: 60, a: 38, b: 14 }, { L: 40, a: 3, b: 12 }].map(isNearWhite)).toEqual([false, false, false]);
  });
});
