import { describe, expect, it } from "vitest";
import { numberPlaces } from "../../../../lib/reply/documents/number-places";

const PHOTO = { width: 200, height: 150, radius: 6 };
type Point = { x: number; y: number };
const circle = (x: number, y: number, r = 5): Point[] => Array.from({ length: 32 }, (_, i) => ({ x: x + r * Math.cos((i * Math.PI) / 16), y: y + r * Math.sin((i * Math.PI) / 16) }));
const apart = (a: Point | undefined, b: Point | undefined) => Math.hypot((a?.x ?? NaN) - (b?.x ?? NaN), (a?.y ?? NaN) - (b?.y ?? NaN));

describe("numberPlaces", () => {
  it("stands a number above its outline where nothing is in the way", () => {
    const [place] = numberPlaces([circle(100, 80)], PHOTO);
    expect(place?.x).toBeCloseTo(100, 6);
    expect(place?.y).toBeCloseTo(80 - 5 - 1.2 * 6, 6);
  });
  it("stays on the photo with an outline in any of its corners, or as large as the photo", () => {
    const whole = [{ x: 0, y: 0 }, { x: 200, y: 0 }, { x: 200, y: 150 }, { x: 0, y: 150 }];
    for (const outline of [circle(2, 2), circle(198, 2), circle(2, 148), circle(198, 148), whole]) {
      const [place] = numberPlaces([outline], PHOTO);
      expect(place?.x).toBeGreaterThanOrEqual(6);
      expect(place?.x).toBeLessThanOrEqual(194);
      expect(place?.y).toBeGreaterThanOrEqual(6);
      expect(place?.y).toBeLessThanOrEqual(144);
    }
  });
  it("lays no number on another, wherever two spots lie to each other, as far as one spot at both places", () => {
    for (let dx = -24; dx <= 24; dx += 3) for (let dy = -24; dy <= 24; dy += 3) {
      const [a, b] = numberPlaces([circle(100, 80), circle(100 + dx, 80 + dy)], PHOTO);
      expect(apart(a, b), `${dx}, ${dy}`).toBeGreaterThanOrEqual(12);
    }
  });
  it("leaves another spot to be seen where it can", () => {
    const [, below] = numberPlaces([circle(100, 60), circle(100, 80)], PHOTO);
    expect(apart(below, { x: 100, y: 60 })).toBeGreaterThanOrEqual(5 + 6);
  });
  it("keeps four numbers apart that crowd at one edge", () => {
    const places = numberPlaces([circle(60, 4), circle(66, 4), circle(72, 4), circle(66, 10)], PHOTO);
    places.forEach((a, i) => places.slice(i + 1).forEach((b) => expect(apart(a, b)).toBeGreaterThanOrEqual(12)));
  });
});
