import { describe, expect, it } from "vitest";
import { largestSound } from "../../lib/photo/cut-down";
import { homographyOf, mapped, type Corners, type Point } from "../../lib/photo/homography";
import { lengthCm, planOf } from "../../lib/photo/plan";
import { seeded } from "./seeded";

/** A pinhole camera: the exact projection of a rug on the floor, tilted about its width, in pixels of a 4000 × 3000 photo. */
function photographed(rug: { widthCm: number; lengthCm: number }, tiltDeg: number): (p: Point) => Point {
  const tilt = (tiltDeg * Math.PI) / 180;
  const focal = 3200, distance = 2.2 * Math.max(rug.widthCm, rug.lengthCm);
  return ({ x, y }) => {
    const [u, v] = [x - rug.widthCm / 2, y - rug.lengthCm / 2];
    const depth = distance + v * Math.sin(tilt);
    return { x: 2000 + (focal * u) / depth, y: 1500 + (focal * v * Math.cos(tilt)) / depth };
  };
}
const cornersOf = ({ widthCm, lengthCm }: { widthCm: number; lengthCm: number }): Corners => [{ x: 0, y: 0 }, { x: widthCm, y: 0 }, { x: widthCm, y: lengthCm }, { x: 0, y: lengthCm }];
const four = (corners: Corners, f: (p: Point) => Point) => corners.map(f) as unknown as Corners;
const random = seeded(20261128);
const within = (low: number, high: number) => low + (high - low) * random();

describe("the plan against exact projections", () => {
  it("gives every place back where the corners are exact", () => {
    for (let i = 0; i < 200; i++) {
      const rug = { widthCm: within(60, 400), lengthCm: within(60, 600) };
      const camera = photographed(rug, within(0, 60));
      const h = homographyOf(four(cornersOf(rug), camera), cornersOf(rug));
      const place = { x: within(0, rug.widthCm), y: within(0, rug.lengthCm) };
      const back = h && mapped(h, camera(place));
      expect(Math.hypot(back!.x - place.x, back!.y - place.y)).toBeLessThan(1e-6);
    }
  });

  it("gives lengths within 1 % at a tilt of 30° with corners 2 pixels off", () => {
    const errors: number[] = [];
    for (let i = 0; i < 500; i++) {
      const rug = { widthCm: 170, lengthCm: 240 };
      const camera = photographed(rug, 30);
      const noisy = four(four(cornersOf(rug), camera), ({ x, y }) => { const angle = within(0, 2 * Math.PI); return { x: x + 2 * Math.cos(angle), y: y + 2 * Math.sin(angle) }; });
      const plan = planOf(noisy, rug);
      if (typeof plan === "string") throw new Error(plan);
      const [from, to] = [{ x: within(0, 60), y: within(0, 90) }, { x: within(110, 170), y: within(150, 240) }];
      const true_ = Math.hypot(from.x - to.x, from.y - to.y);
      errors.push(Math.abs(lengthCm(plan, camera(from), camera(to)) / true_ - 1));
    }
    expect(Math.max(...errors)).toBeLessThan(0.01);
  });
});

describe("the largest sound rectangle", () => {
  it("agrees with brute force over every rectangle on 1,000 random grids", () => {
    for (let n = 0; n < 1000; n++) {
      const [columns, rows] = [1 + Math.floor(random() * 12), 1 + Math.floor(random() * 12)];
      const cells = Uint8Array.from({ length: columns * rows }, () => (random() < 0.25 ? 1 : 0));
      const box = largestSound({ columns, rows, cells });
      const isSound = (left: number, top: number, right: number, bottom: number) => {
        for (let y = top; y < bottom; y++) for (let x = left; x < right; x++) if (cells[y * columns + x] !== 0) return false;
        return true;
      };
      let most = 0;
      for (let top = 0; top < rows; top++) for (let bottom = top + 1; bottom <= rows; bottom++)
        for (let left = 0; left < columns; left++) for (let right = left + 1; right <= columns; right++)
          if ((right - left) * (bottom - top) > most && isSound(left, top, right, bottom)) most = (right - left) * (bottom - top);
      expect((box.right - box.left) * (box.bottom - box.top)).toBe(most);
      expect(isSound(box.left, box.top, box.right, box.bottom)).toBe(true);
    }
  });
});
