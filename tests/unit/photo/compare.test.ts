import { describe, expect, it } from "vitest";
import { deltaE00, hexOf, labOf, type Lab } from "../../../lib/photo/colour";
import { compareSpots, directionOf, type Comparison } from "../../../lib/photo/compare";
import { LEAST_PIXELS, spotColour, type Spot } from "../../../lib/photo/spot";
import type { Rgb } from "../../../lib/photo/strip";
import { seeded } from "../../reference/seeded";

const rgbOf = (c: Lab) => { const hex = hexOf(c); return [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16)) as [number, number, number]; };

/** A picture whose left half has one colour and whose right half another, with noise of so many levels. */
function halves(left: Lab, right: Lab, noise = 6): Rgb {
  const [width, height] = [200, 120];
  const random = seeded(7);
  const data = new Uint8Array(width * height * 3);
  const [l, r] = [rgbOf(left), rgbOf(right)];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let k = 0; k < 3; k++) data[3 * (y * width + x) + k] = Math.min(255, Math.max(0, Math.round((x < width / 2 ? l : r)[k]! + noise * (random() + random() - 1))));
  return { data, width, height };
}
const LEFT: Spot = { shape: "circle", x: 0.25, y: 0.5, radius: 0.08 };
const RIGHT: Spot = { shape: "rectangle", x: 0.6, y: 0.3, width: 0.3, height: 0.4 };
const compared = (left: Lab, right: Lab, noise?: number): Comparison => {
  const c = compareSpots(halves(left, right, noise), { untouched: LEFT, affected: RIGHT });
  if (typeof c === "string") throw new Error(c);
  return c;
};
const CREAM: Lab = { L: 82, a: 1, b: 10 };

describe("spotColour", () => {
  it("finds the colour of a noisy spot within half a unit", () => {
    const seen = spotColour(halves(CREAM, { L: 40, a: 20, b: 10 }), LEFT);
    expect(deltaE00(seen!.mean, CREAM)).toBeLessThan(0.5);
  });
  it("is not moved by a dark line through it", () => {
    const picture = halves(CREAM, CREAM);
    for (let y = 0; y < picture.height; y++) for (let x = 48; x < 51; x++) picture.data.fill(20, 3 * (y * picture.width + x), 3 * (y * picture.width + x) + 3);
    expect(deltaE00(spotColour(picture, LEFT)!.mean, CREAM)).toBeLessThan(0.6);
  });
  it("has a greater error where blocks of it differ", () => {
    const [even, uneven] = [spotColour(halves(CREAM, CREAM), LEFT)!, spotColour(halves(CREAM, { L: 70, a: 1, b: 10 }), { shape: "circle", x: 0.5, y: 0.5, radius: 0.08 })!];
    expect(uneven.error.L).toBeGreaterThan(5 * even.error.L);
  });
  it("says nothing of a spot with too few pixels, or outside the picture", () => {
    const side = (n: number) => ({ shape: "rectangle", x: 0, y: 0, width: n / 200, height: n / 120 }) as const;
    expect(spotColour(halves(CREAM, CREAM), side(Math.sqrt(LEAST_PIXELS)))).not.toBeNull();
    expect(spotColour(halves(CREAM, CREAM), side(Math.sqrt(LEAST_PIXELS) - 1))).toBeNull();
    expect(spotColour(halves(CREAM, CREAM), { shape: "circle", x: 2, y: 2, radius: 0.1 })).toBeNull();
  });
});

describe("directionOf", () => {
  it.each<[string, Lab, Lab, string]>([
    ["browned cream", CREAM, { L: 62, a: 7, b: 28 }, "yellower-darker"],
    ["yellowed cream", CREAM, { L: 82, a: 0, b: 20 }, "yellower"],
    ["bleached red", { L: 38, a: 42, b: 20 }, { L: 66, a: 18, b: 9 }, "lighter-paler"],
    ["wet blue", { L: 45, a: 2, b: -30 }, { L: 34, a: 3, b: -34 }, "darker"],
    ["soiled blue", { L: 55, a: 2, b: -30 }, { L: 46, a: 1, b: -18 }, "greyer"],
    ["a blue-grey bleached to beige", { L: 50, a: -2, b: -5 }, { L: 63, a: 2, b: 9 }, "lighter-paler"],
    ["bleached blue", { L: 45, a: 2, b: -30 }, { L: 64, a: 1, b: -14 }, "lighter-paler"],
    ["pile the other way", { L: 50, a: 10, b: 8 }, { L: 57, a: 10.3, b: 8.2 }, "lightness-only"],
    ["red on cream", CREAM, { L: 60, a: 38, b: 14 }, "another-hue"],
    ["wine on dark blue: darker, and redder still", { L: 26, a: -2, b: -16 }, { L: 12, a: 5, b: -12 }, "another-hue"],
    ["nothing", CREAM, { L: 82.4, a: 1.1, b: 10.2 }, "none"],
  ])("%s", (_, from, to, direction) => expect(directionOf(from, to)).toBe(direction));
});

describe("compareSpots", () => {
  it("measures a drawn change within its own uncertainty, and names its direction", () => {
    const brown: Lab = { L: 66, a: 6, b: 26 };
    const c = compared(CREAM, brown);
    expect(Math.abs(c.deltaE - deltaE00(CREAM, brown))).toBeLessThan(c.uncertainty);
    expect(c).toMatchObject({ direction: "yellower-darker" });
    expect(c.sureness).toBeGreaterThan(0.9);
    expect(c.yellowness).toBeGreaterThan(10);
    expect(c.lightness).toBeLessThan(0);
    expect(c.says).toMatch(/browner.*indicative, from a photo, not an ISO 105 measurement/);
  });
  it("is less sure of a small change than of a great one", () => {
    expect(compared(CREAM, { L: 80.6, a: 1.4, b: 11.6 }).sureness).toBeLessThan(compared(CREAM, { L: 66, a: 6, b: 26 }).sureness);
  });
  it("is less sure in a noisier photo", () => {
    const to: Lab = { L: 76, a: 3, b: 15 };
    expect(compared(CREAM, to, 60).uncertainty).toBeGreaterThan(compared(CREAM, to, 2).uncertainty);
  });
  it("gives the same numbers for the same photo", () => expect(compared(CREAM, { L: 60, a: 5, b: 20 })).toEqual(compared(CREAM, { L: 60, a: 5, b: 20 })));
  it("measures no spot that is too small or burnt out", () => {
    expect(compareSpots(halves(CREAM, CREAM), { untouched: LEFT, affected: { ...RIGHT, width: 0.01, height: 0.01 } as Spot })).toMatch(/too small/);
    expect(compareSpots(halves(labOf(255, 255, 255), CREAM), { untouched: LEFT, affected: RIGHT })).toMatch(/burnt out/);
  });
});
