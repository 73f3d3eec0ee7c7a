import { describe, expect, it } from "vitest";
import { cutDowns } from "../../lib/photo/cut-down";
import { largestSound } from "../../lib/photo/cut-grid";
import { homographyOf, mapped, type Corners, type Point } from "../../lib/photo/homography";
import { lengthCm, planOf } from "../../lib/photo/plan";
import { areaOf, coveredArea, crossesItself, type Box, type Polygon } from "../../lib/photo/polygon";
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

/** A polygon cut to a box, side by side (Sutherland & Hodgman 1974). */
function clipped(polygon: Polygon, { left, top, right, bottom }: Box): Polygon {
  const sides = [["x", 1, left], ["x", -1, right], ["y", 1, top], ["y", -1, bottom]] as const;
  return sides.reduce<Polygon>((points, [axis, sign, at]) => {
    const within = (p: Point) => sign * (p[axis] - at) >= 0;
    return points.flatMap((p, i) => {
      const before = points[(i + points.length - 1) % points.length]!;
      const share = (at - before[axis]) / (p[axis] - before[axis]);
      const crossing = within(p) === within(before) ? [] : [{ x: before.x + share * (p.x - before.x), y: before.y + share * (p.y - before.y) }];
      return within(p) ? [...crossing, p] : crossing;
    });
  }, polygon);
}
/** Four to eight corners about a middle, in the order of their angles: an outline that does not cross itself. */
function randomOutline(width: number, length: number): Polygon {
  const middle = { x: within(0, width), y: within(0, length) };
  const angles = Array.from({ length: 4 + Math.floor(random() * 5) }, () => within(0, 2 * Math.PI)).sort((a, b) => a - b);
  return angles.map((angle) => { const far = within(1, 7); return { x: Math.min(width, Math.max(0, middle.x + far * Math.cos(angle))), y: Math.min(length, Math.max(0, middle.y + far * Math.sin(angle))) }; });
}

const [WIDTH, LENGTH, BORDER] = [14, 18, 3];
/** Rounding, no damage. */
const SLIVER_CM2 = 1e-8;
/** The largest box in whole centimetres that fits `allowed` and holds none of the polygon but a sliver, by trying all. */
function bruteLargest(polygon: Polygon, allowed: (b: Box) => boolean): number {
  const hit = Array.from({ length: LENGTH }, (_, y) => Array.from({ length: WIDTH }, (_, x) => areaOf(clipped(polygon, { left: x, top: y, right: x + 1, bottom: y + 1 })) > SLIVER_CM2));
  const sum = Array.from({ length: LENGTH + 1 }, () => new Int32Array(WIDTH + 1));
  for (let y = 0; y < LENGTH; y++) for (let x = 0; x < WIDTH; x++) sum[y + 1]![x + 1] = sum[y]![x + 1]! + sum[y + 1]![x]! - sum[y]![x]! + Number(hit[y]![x]!);
  let most = 0;
  for (let top = 0; top < LENGTH; top++) for (let bottom = top + 1; bottom <= LENGTH; bottom++)
    for (let left = 0; left < WIDTH; left++) for (let right = left + 1; right <= WIDTH; right++) {
      const area = (right - left) * (bottom - top);
      if (area > most && sum[bottom]![right]! - sum[top]![right]! - sum[bottom]![left]! + sum[top]![left]! === 0 && allowed({ left, top, right, bottom })) most = area;
    }
  return most;
}
const borderWhole = ({ left, top, right, bottom }: Box) =>
  [[left, WIDTH], [right, WIDTH], [top, LENGTH], [bottom, LENGTH]].every(([at, end]) => at === 0 || at === end || (at! >= BORDER && at! <= end! - BORDER));
const centred = ({ left, top, right, bottom }: Box) => left === WIDTH - right && top === LENGTH - bottom;

describe("the cut-down planner against brute force on 1,000 random polygons", () => {
  const outlines: Polygon[] = [];
  while (outlines.length < 1000) {
    const outline = randomOutline(WIDTH, LENGTH);
    if (!crossesItself(outline) && areaOf(outline) > SLIVER_CM2) outlines.push(outline);
  }
  const found = (p: Polygon, kind: string, wishes: { borderCm: number; isSymmetric: boolean }) =>
    cutDowns({ widthCm: WIDTH, lengthCm: LENGTH }, [p], { turnCm: 2, leastSideCm: 1, ...wishes }).filter((w) => w.kind === kind || w.pieces.length === 1);
  const most = (ways: { areaKeptCm2: number }[]) => Math.max(0, ...ways.map((w) => w.areaKeptCm2));

  it.each([
    ["any rectangle", "smaller-rectangle", { borderCm: 0, isSymmetric: false }, () => true],
    ["one that cuts no border lengthwise", "smaller-rectangle", { borderCm: BORDER, isSymmetric: false }, borderWhole],
    ["one about the middle", "centred", { borderCm: 0, isSymmetric: true }, centred],
    ["one about the middle that cuts no border lengthwise", "centred", { borderCm: BORDER, isSymmetric: true }, (b: Box) => centred(b) && borderWhole(b)],
  ])("finds the largest: %s", (_what, kind, wishes, allowed) => {
    for (const outline of outlines) {
      const ways = found(outline, kind, wishes);
      for (const { pieces: [piece] } of ways) {
        expect(areaOf(clipped(outline, piece!))).toBeLessThan(SLIVER_CM2);
        expect(allowed(piece!)).toBe(true);
      }
      expect(most(ways)).toBe(bruteLargest(outline, allowed));
    }
  });

  it("measures what outlines cover together as inclusion and exclusion does, with an exact cut for two", () => {
    for (const outline of outlines.slice(0, 200)) {
      const box = { left: 2, top: 3, right: 11, bottom: 12 };
      const square = [{ x: 2, y: 3 }, { x: 11, y: 3 }, { x: 11, y: 12 }, { x: 2, y: 12 }];
      const exact = areaOf(outline) + areaOf(square) - areaOf(clipped(outline, box));
      expect(Math.abs(coveredArea([outline, square], 0.02) - exact)).toBeLessThan(0.01 * exact);
    }
  });
});
