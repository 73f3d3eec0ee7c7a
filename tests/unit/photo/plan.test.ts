import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutDowns, type CutDown } from "../../../lib/photo/cut-down";
import { homographyOf, type Corners, type Point } from "../../../lib/photo/homography";
import { areaSdCm2, damagedPlace, edgeAtTop, planOf, POINTING_SD, PLAN_LIMITS, type Plan } from "../../../lib/photo/plan";
import { areaOf, crossesItself, type Polygon } from "../../../lib/photo/polygon";
import { seeded } from "../../reference/seeded";

const SQUARE: Corners = [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }];
/** As a rug looks from where one stands. */
const TILTED: Corners = [{ x: 0.25, y: 0.2 }, { x: 0.8, y: 0.22 }, { x: 0.95, y: 0.9 }, { x: 0.05, y: 0.85 }];
/** A rug of 2 by 3 metres that fills its photo. */
const plan = planOf(SQUARE, { widthCm: 200, lengthCm: 300 }) as Plan;
const box = (left: number, top: number, right: number, bottom: number): Polygon => [{ x: left, y: top }, { x: right, y: top }, { x: right, y: bottom }, { x: left, y: bottom }];
const WISHES = { turnCm: 2, leastSideCm: 40, borderCm: 0, isSymmetric: false };

describe("planOf", () => {
  it("refuses sizes out of bounds, in words", () => {
    expect(planOf(SQUARE, { widthCm: PLAN_LIMITS.leastCm - 1, lengthCm: 100 })).toMatch(/both sides in centimetres/);
    expect(typeof planOf(SQUARE, { widthCm: PLAN_LIMITS.leastCm, lengthCm: PLAN_LIMITS.mostCm })).toBe("object");
    expect(planOf(SQUARE, { widthCm: NaN, lengthCm: 100 })).toMatch(/both sides/);
  });
  it("refuses corners in a line or crossed", () => {
    expect(planOf([{ x: 0, y: 0 }, { x: 0.5, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 1 }], { widthCm: 100, lengthCm: 100 })).toMatch(/do not go round/);
    expect(homographyOf([SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]], SQUARE)).toBeNull();
  });
  it("maps to the photo and back", () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (x, y) => {
      const back = plan.toPhoto(plan.toPlan({ x, y }));
      expect(Math.hypot(back.x - x, back.y - y)).toBeLessThan(1e-9);
    }));
  });
});

describe("damagedPlace", () => {
  it("gives area, share and distances to the edges", () => {
    const d = damagedPlace(plan, [{ x: 0.1, y: 0.2 }, { x: 0.3, y: 0.2 }, { x: 0.3, y: 0.3 }, { x: 0.1, y: 0.3 }]);
    if (typeof d === "string") throw new Error(d);
    expect(d.areaCm2).toBeCloseTo(40 * 30, 6);
    expect(d.share).toBeCloseTo(0.02, 9);
    expect([d.toEdges.left, d.toEdges.top, d.toEdges.right, d.toEdges.bottom].map(Math.round)).toEqual([20, 60, 140, 210]);
  });
  it("holds an outline within the rug and refuses one outside, crossed or of two points", () => {
    const out = damagedPlace(plan, [{ x: -1, y: 0 }, { x: 0.5, y: 0 }, { x: 0.5, y: 1 }, { x: -1, y: 1 }]);
    expect(typeof out === "string" ? 0 : out.share).toBeCloseTo(0.5, 9);
    expect(damagedPlace(plan, [{ x: 2, y: 2 }, { x: 3, y: 2 }, { x: 3, y: 3 }])).toMatch(/outside/);
    expect(damagedPlace(plan, [{ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 1, y: 0 }, { x: 0, y: 1 }])).toMatch(/crosses itself/);
    expect(damagedPlace(plan, [{ x: 0, y: 0 }, { x: 1, y: 1 }])).toMatch(/three points/);
  });
});

describe("areaSdCm2", () => {
  const SIZE = { widthCm: 200, lengthCm: 300 };
  it("agrees with the spread of areas when every point is moved at random, within a tenth", () => {
    const outline = [{ x: 0.3, y: 0.3 }, { x: 0.6, y: 0.35 }, { x: 0.5, y: 0.6 }];
    const random = seeded(5);
    const missed = () => POINTING_SD * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const moved = (p: Point) => ({ x: p.x + missed(), y: p.y + missed() });
    const areas = Array.from({ length: 4000 }, () => {
      const seen = planOf(TILTED.map(moved) as unknown as Corners, SIZE) as Plan;
      return areaOf(outline.map(moved).map(seen.toPlan));
    });
    const mean = areas.reduce((a, b) => a + b, 0) / areas.length;
    const sd = Math.sqrt(areas.reduce((sum, a) => sum + (a - mean) ** 2, 0) / (areas.length - 1));
    expect(Math.abs(areaSdCm2(TILTED, SIZE, outline) / sd - 1)).toBeLessThan(0.1);
  });
  it("is NaN where the corners make no plan", () => expect(areaSdCm2([SQUARE[0], SQUARE[0], SQUARE[2], SQUARE[3]], SIZE, SQUARE)).toBeNaN());
});

describe("areaOf and crossesItself", () => {
  it("gives the shoelace area of a triangle either way round", () => {
    const triangle: Polygon = [{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 3 }];
    expect([areaOf(triangle), areaOf([...triangle].reverse())]).toEqual([6, 6]);
    expect(crossesItself(triangle)).toBe(false);
  });
});

const kinds = (ways: readonly CutDown[]) => Object.fromEntries(ways.map((w) => [w.kind, w]));

describe("cutDowns", () => {
  it("takes an edge off where the damage lies at an edge", () => {
    const ways = kinds(cutDowns(plan, [box(0, 0, 200, 30)], WISHES));
    expect(ways["edge-off"]).toMatchObject({ areaKeptCm2: 200 * 270, shareKept: 0.9, newEdgesCm: [200], bindingM: 2.02 });
    expect(ways["equal-ends"]).toMatchObject({ areaKeptCm2: 200 * 240, newEdgesCm: [200, 200] });
    expect(ways["split-in-two"]).toBeUndefined();
  });
  it("splits in two where a band across the middle is gone", () => {
    const ways = kinds(cutDowns(plan, [box(0, 140, 200, 160)], WISHES));
    expect(ways["split-in-two"]).toMatchObject({ areaKeptCm2: 200 * 280, newEdgesCm: [200, 200] });
    expect(ways["split-in-two"]!.pieces).toHaveLength(2);
    expect(ways["equal-ends"]).toBeUndefined();
  });
  it("leaves out pieces too small to serve, at the limit", () => {
    const damage = [box(41, 0, 200, 300)];
    expect(cutDowns(plan, damage, { ...WISHES, leastSideCm: 41 })).toHaveLength(1);
    expect(cutDowns(plan, damage, { ...WISHES, leastSideCm: 42 })).toEqual([]);
  });
  it("has nothing to cut where nothing is damaged", () => expect(cutDowns(plan, [], WISHES)).toEqual([]));

  it("moves a cut out of a border that is to be kept, and takes a border off whole", () => {
    const ways = kinds(cutDowns(plan, [box(0, 0, 200, 8)], { ...WISHES, borderCm: 20 }));
    expect(ways["edge-off"]).toMatchObject({ areaKeptCm2: 200 * 280, newEdgesCm: [200] });
    const near = kinds(cutDowns(plan, [box(50, 280, 60, 290)], { ...WISHES, borderCm: 25 }));
    expect(near["edge-off"]!.pieces).toEqual([{ left: 0, top: 0, right: 200, bottom: 275 }]);
  });
  it("offers only ways that leave the pattern even where that is wished", () => {
    const ways = kinds(cutDowns(plan, [box(20, 120, 60, 160)], { ...WISHES, isSymmetric: true }));
    expect(Object.keys(ways).sort()).toEqual(["equal-ends", "split-in-two"]);
    expect(ways["split-in-two"]!.pieces.map((p) => p.bottom - p.top)).toEqual([120, 120]);
    const twoSides = [box(90, 0, 110, 10), box(0, 140, 10, 160)];
    expect(kinds(cutDowns(plan, twoSides, { ...WISHES, isSymmetric: true }))["centred"]!.pieces).toEqual([{ left: 10, top: 10, right: 190, bottom: 290 }]);
    expect(cutDowns(plan, [...twoSides, box(95, 145, 105, 155)], { ...WISHES, isSymmetric: true })).toEqual([]);
  });

  const point = fc.record({ x: fc.double({ min: 0, max: 200, noNaN: true }), y: fc.double({ min: 0, max: 300, noNaN: true }) });
  const triangles = fc.array(fc.tuple(point, point, point), { minLength: 1, maxLength: 3 });
  it("never keeps a place that is damaged, and keeps no more than the whole", () => {
    fc.assert(fc.property(triangles, (damage) => {
      const inside = (p: Point, [a, b, c]: readonly [Point, Point, Point]) => {
        const side = (p0: Point, p1: Point) => Math.sign((p1.x - p0.x) * (p.y - p0.y) - (p1.y - p0.y) * (p.x - p0.x));
        const s = [side(a, b), side(b, c), side(c, a)];
        return s.every((v) => v > 0) || s.every((v) => v < 0);
      };
      for (const way of cutDowns(plan, damage, WISHES)) {
        expect(way.shareKept).toBeLessThan(1);
        for (const piece of way.pieces)
          for (let i = 0; i < 300; i++) {
            const p = { x: piece.left + ((i % 20) + 0.5) * ((piece.right - piece.left) / 20), y: piece.top + (Math.floor(i / 20) + 0.5) * ((piece.bottom - piece.top) / 15) };
            expect(damage.some((t) => inside(p, t))).toBe(false);
          }
      }
    }), { numRuns: 60 });
  });
});

describe("edgeAtTop", () => {
  const FLAT: Corners = [{ x: 0.2, y: 0.1 }, { x: 0.8, y: 0.15 }, { x: 0.9, y: 0.9 }, { x: 0.1, y: 0.8 }];
  const from = (k: number): Corners => [0, 1, 2, 3].map((i) => FLAT[(i + k) % 4]) as unknown as Corners;
  it.each([[0, "top"], [1, "left"], [2, "bottom"], [3, "right"]] as const)("is where what stands above the rug in the photo comes to lie on its plan, begun at corner %i", (k, edge) => {
    const plan = planOf(from(k), { widthCm: 200, lengthCm: 300 });
    if (typeof plan === "string") throw new Error(plan);
    const above = plan.toPlan({ x: 0.5, y: 0.05 });
    const beyond = { top: -above.y, left: -above.x, bottom: above.y - 300, right: above.x - 200 };
    expect(edgeAtTop(from(k))).toBe(edge);
    expect(beyond[edge]).toBeGreaterThan(0);
  });
});
