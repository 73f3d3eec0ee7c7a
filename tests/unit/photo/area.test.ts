import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaBetween, inPicture, LEAST, limitsOf, moved, resized, withFigure } from "../../../lib/photo/area";

const any = fc.double({ min: -2, max: 2, noNaN: true });
const liesInside = ({ left, top, width, height }: ReturnType<typeof inPicture>) =>
  left >= 0 && top >= 0 && width >= LEAST - 1e-12 && height >= LEAST - 1e-12 && left + width <= 1 + 1e-12 && top + height <= 1 + 1e-12;

describe("areas", () => {
  it("lie inside the picture and have a size, however they are drawn, moved or sized", () => {
    fc.assert(fc.property(any, any, any, any, any, any, (a, b, c, d, right, down) => {
      const area = areaBetween({ x: a, y: b }, { x: c, y: d });
      return liesInside(area) && liesInside(moved(area, right, down)) && liesInside(resized(area, right, down)) && liesInside(inPicture({ left: a, top: b, width: c, height: d }));
    }));
  });
  it("are the same whichever corner is drawn first", () => {
    expect(areaBetween({ x: 0.7, y: 0.2 }, { x: 0.3, y: 0.6 })).toEqual(areaBetween({ x: 0.3, y: 0.6 }, { x: 0.7, y: 0.2 }));
    expect(areaBetween({ x: 0.25, y: 0.25 }, { x: 0.5, y: 0.75 })).toEqual({ left: 0.25, top: 0.25, width: 0.25, height: 0.5 });
  });
  it("keep their size where they are moved, and their place where they are sized", () => {
    const area = { left: 0.4, top: 0.4, width: 0.2, height: 0.2 };
    expect(moved(area, 0.9, -0.9)).toEqual({ left: 0.8, top: 0, width: 0.2, height: 0.2 });
    expect(resized(area, 0.9, -0.9)).toEqual({ left: 0.4, top: 0.4, width: 0.6, height: LEAST });
  });
  it("keep their size where a place is typed that lies too far out, and stay inside by every figure", () => {
    const area = { left: 0.4, top: 0.4, width: 0.2, height: 0.2 };
    expect(withFigure(area, "left", 1.5)).toEqual({ left: 0.8, top: 0.4, width: 0.2, height: 0.2 });
    const tall = withFigure(area, "height", 3);
    expect([tall.left, tall.top, tall.width, tall.height].map((share) => Number(share.toFixed(9)))).toEqual([0.4, 0.4, 0.2, 0.6]);
    fc.assert(fc.property(fc.constantFrom("left", "top", "width", "height" as const), any, (figure, share) => {
      const set = withFigure(area, figure, share), { least, most } = limitsOf(area, figure);
      return liesInside(set) && set[figure] >= least - 1e-12 && set[figure] <= most + 1e-12;
    }));
  });
  it("are cut where they reach out", () => expect(inPicture({ left: -0.1, top: 0.5, width: 0.3, height: 0.9 })).toMatchObject({ left: 0, top: 0.5, height: 0.5 }));
});
