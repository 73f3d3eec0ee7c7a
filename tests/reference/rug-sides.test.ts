import { describe, expect, it } from "vitest";
import type { Corners, Point } from "../../lib/photo/homography";
import { POINTING_SD } from "../../lib/photo/plan";
import { sidesIn, type Sides } from "../../lib/photo/rug-sides";
import { seeded } from "./seeded";

const PHOTO = { width: 4000, height: 3000 };
const FRAME_DIAGONAL_MM = Math.hypot(36, 24);
const random = seeded(81);
const within = (low: number, high: number) => low + (high - low) * random();
/** Normally distributed about nought (Box & Muller 1958). */
const missed = (sd: number) => sd * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

interface Shot { tiltDeg: number; turnDeg: number; lensMm: number }
/**
 * A pinhole camera above a rug on the floor, exactly: the rug turned about its middle as it lies, then tilted away, at
 * such a distance that it fills three quarters of the photo. Corners in shares, going round from the first, which
 * begins the width.
 */
function photographed({ widthCm, lengthCm }: { widthCm: number; lengthCm: number }, { tiltDeg, turnDeg, lensMm }: Shot): Corners {
  const [tilt, turn] = [tiltDeg, turnDeg].map((d) => (d * Math.PI) / 180) as [number, number];
  const focal = (Math.hypot(PHOTO.width, PHOTO.height) * lensMm) / FRAME_DIAGONAL_MM;
  const seenFrom = (distance: number) => ([[-1, -1], [1, -1], [1, 1], [-1, 1]] as const).map(([i, j]): Point => {
    const [u, v] = [(i * widthCm) / 2, (j * lengthCm) / 2];
    const [x, y] = [u * Math.cos(turn) - v * Math.sin(turn), u * Math.sin(turn) + v * Math.cos(turn)];
    // The far edge lies at the top of the photo.
    const depth = distance - y * Math.sin(tilt);
    return { x: 0.5 + (focal * x) / depth / PHOTO.width, y: 0.5 + (focal * y * Math.cos(tilt)) / depth / PHOTO.height };
  });
  const spreads = (corners: readonly Point[]) => Math.max(...corners.flatMap(({ x, y }) => [Math.abs(x - 0.5), Math.abs(y - 0.5)]));
  const [near, far] = [0.6 * Math.max(widthCm, lengthCm), 40 * Math.max(widthCm, lengthCm)];
  let [low, high] = [near, far];
  for (let i = 0; i < 60; i++) { const middle = (low + high) / 2; if (spreads(seenFrom(middle)) > 0.42) low = middle; else high = middle; }
  return seenFrom(high) as unknown as Corners;
}
const pointedAt = (corners: Corners): Corners => corners.map((p) => ({ x: p.x + missed(POINTING_SD), y: p.y + missed(POINTING_SD) })) as unknown as Corners;
const fromSecond = ([a, b, c, d]: Corners): Corners => [b, c, d, a];
const LENSES = [24, 26, 28, 52] as const;
const shot = (mostTiltDeg: number): Shot => ({ tiltDeg: within(0, mostTiltDeg), turnDeg: within(-180, 180), lensMm: LENSES[Math.floor(random() * LENSES.length)]! });

/** How often the side is read right, wrong, or left to the person, as marked and begun one corner on. The size is stated with an error of 3 %. */
function tried(rug: () => { widthCm: number; lengthCm: number }, mostTiltDeg: number) {
  const counts = { right: 0, wrong: 0, unclear: 0 };
  for (let i = 0; i < 500; i++) {
    const size = rug();
    const corners = pointedAt(photographed(size, shot(mostTiltDeg)));
    const stated = { widthCm: size.widthCm * (1 + missed(0.03)), lengthCm: size.lengthCm * (1 + missed(0.03)) };
    for (const [marked, truth] of [[corners, "as-marked"], [fromSecond(corners), "swapped"]] as [Corners, Sides][]) {
      const said = sidesIn(PHOTO, marked, stated);
      counts[said === truth ? "right" : said === "unclear" ? "unclear" : "wrong"]++;
    }
  }
  return counts;
}

describe("sidesIn against exact projections of known rectangles, corners pointed at by hand", () => {
  it("reads rugs of 170 × 240 cm up to a tilt of 45°, and never the wrong way round", () => {
    const { right, wrong } = tried(() => ({ widthCm: 170, lengthCm: 240 }), 45);
    expect(wrong).toBe(0);
    expect(right / 1000).toBeGreaterThan(0.95);
  });
  it("reads runners up to a tilt of 65°, where the far end looks short", () => {
    const { right, wrong } = tried(() => ({ widthCm: 80, lengthCm: 300 }), 65);
    expect(wrong).toBe(0);
    expect(right / 1000).toBeGreaterThan(0.99);
  });
  it("leaves rugs whose sides differ by 4 % to the person, nearly always", () => {
    const { wrong, unclear } = tried(() => ({ widthCm: 200, lengthCm: 208 }), 60);
    expect(unclear / 1000).toBeGreaterThan(0.95);
    expect(wrong / 1000).toBeLessThan(0.01);
  });
  it("is wrong of any rug in fewer than one of a hundred photos", () => {
    expect(tried(() => ({ widthCm: within(60, 400), lengthCm: within(60, 400) }), 65).wrong / 1000).toBeLessThan(0.01);
  });
  it("corrects the perspective: of a runner along the view the long edges look shorter than the short ones", () => {
    const rug = { widthCm: 120, lengthCm: 170 };
    const corners = photographed(rug, { tiltDeg: 62, turnDeg: 0, lensMm: 26 });
    const far = (p: Point, q: Point) => Math.hypot((p.x - q.x) * PHOTO.width, (p.y - q.y) * PHOTO.height);
    expect(far(corners[0], corners[1]) + far(corners[2], corners[3])).toBeGreaterThan(far(corners[1], corners[2]) + far(corners[3], corners[0]));
    expect([sidesIn(PHOTO, corners, rug), sidesIn(PHOTO, fromSecond(corners), rug)]).toEqual(["as-marked", "swapped"]);
  });
});

describe("sidesIn", () => {
  const corners = photographed({ widthCm: 170, lengthCm: 240 }, { tiltDeg: 20, turnDeg: 5, lensMm: 26 });
  it("does not tell where the sides are alike, a size is none, or the corners go round nothing", () => {
    expect(sidesIn(PHOTO, corners, { widthCm: 200, lengthCm: 200 })).toBe("unclear");
    expect(sidesIn(PHOTO, corners, { widthCm: NaN, lengthCm: 200 })).toBe("unclear");
    expect(sidesIn(PHOTO, [corners[0], corners[2], corners[1], corners[3]], { widthCm: 170, lengthCm: 240 })).toBe("unclear");
  });
  it("goes by the photo's pixels, not by shares of it", () => {
    const whole: Corners = [{ x: 0.1, y: 0.1 }, { x: 0.9, y: 0.1 }, { x: 0.9, y: 0.9 }, { x: 0.1, y: 0.9 }];
    expect(sidesIn({ width: 4000, height: 3000 }, whole, { widthCm: 240, lengthCm: 180 })).toBe("as-marked");
    expect(sidesIn({ width: 3000, height: 4000 }, whole, { widthCm: 240, lengthCm: 180 })).toBe("swapped");
  });
});
