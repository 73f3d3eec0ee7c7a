import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deltaE00, labOf } from "../../../lib/photo/colour";
import { stripOf } from "../../../lib/photo/strip";

type Colour = readonly [number, number, number];
/** A picture filled by a rule. */
function picture(width: number, height: number, at: (x: number, y: number) => Colour) {
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data.set(at(x, y), 3 * (y * width + x));
  return { data, width, height };
}
const labOfHex = (hex: string) => labOf(...([1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16)) as [number, number, number]));

describe("stripOf", () => {
  it("finds the colours of a rug of three and the share of each", () => {
    // Of 100 columns the margin of 14 leaves 14 to 85: 36 of red, 22 of blue, 14 of cream.
    const strip = stripOf(picture(100, 100, (x) => (x < 50 ? [140, 40, 36] : x < 72 ? [40, 60, 110] : [225, 205, 165])));
    expect(strip.map((c) => c.hex)).toEqual(["#8c2824", "#283c6e", "#e1cda5"]);
    expect(strip.map((c) => c.share)).toEqual([36 / 72, 22 / 72, 14 / 72]);
  });
  it("does not count the floor around the rug", () => {
    const strip = stripOf(picture(200, 100, (x, y) => (Math.min(x / 200, 1 - x / 200, y / 100, 1 - y / 100) < 0.13 ? [0, 200, 0] : [140, 40, 36])));
    expect(strip).toEqual([{ hex: "#8c2824", share: 1 }]);
  });
  it("joins shades that look like one colour and keeps those that can be told apart", () => {
    const near = stripOf(picture(60, 60, (x, y) => ((x + (y >> 1)) & 2 ? [140, 40, 36] : [146, 46, 41])));
    expect(near).toHaveLength(1);
    const apart = stripOf(picture(60, 60, (x, y) => ((x >> 3) + (y >> 3)) & 1 ? [140, 40, 36] : [190, 90, 80]));
    expect(apart).toHaveLength(2);
  });
  it("leaves out what takes less than a fiftieth", () => {
    expect(stripOf(picture(200, 100, (x) => (x === 50 ? [255, 255, 0] : [40, 60, 110])))).toHaveLength(1);
    expect(stripOf(picture(200, 100, (x) => (x === 50 || x === 54 ? [255, 255, 0] : [40, 60, 110])))).toHaveLength(2);
  });
  it("has at most six colours that can be told apart, the largest first, shares that make 1, and no chance in it", () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(255), fc.nat(255), fc.nat(255)), { minLength: 1, maxLength: 20 }), (colours) => {
      const noise = picture(40, 40, (x, y) => colours[((x >> 2) * 7 + (y >> 2) * 3) % colours.length]!);
      const strip = stripOf(noise);
      expect(stripOf(noise)).toEqual(strip);
      expect(strip.length).toBeGreaterThanOrEqual(1);
      expect(strip.length).toBeLessThanOrEqual(6);
      expect(strip.reduce((sum, c) => sum + c.share, 0)).toBeCloseTo(1, 10);
      strip.forEach((c, i) => {
        expect(c.share).toBeLessThanOrEqual(strip[i - 1]?.share ?? 1);
        for (const other of strip.slice(0, i)) expect(deltaE00(labOfHex(c.hex), labOfHex(other.hex))).toBeGreaterThan(8);
      });
    }), { numRuns: 60 });
  });
});
