import { describe, expect, it } from "vitest";
import { seeded } from "../../../../prisma/demo/canvas";
import { dueGrip, frameAround, frameHandles, LEAST_SIDE, moveFrame, type FrameDraft, type Grip } from "../../../../lib/ui/marking/frame";

const FOUND = { x: 0.2, y: 0.3, width: 0.4, height: 0.2 };
const begun = frameAround(FOUND);
/** Left, top, right and bottom in thousandths. */
const sidesOf = ({ frame: { x, y, width, height } }: FrameDraft) => [x, y, x + width, y + height].map((v) => Math.round(1000 * v));

describe("frameAround", () => {
  it("begins around what was found, and in the middle of the photo where that is all of it", () => {
    expect(begun).toEqual({ frame: FOUND, touched: [] });
    const { frame } = frameAround({ x: 0, y: 0, width: 1, height: 1 });
    expect(frame.x).toBeGreaterThan(0);
    expect(frame.x + frame.width).toBeLessThan(1);
  });
  it("brings what reaches out of the photo, or is too thin to hold, inside and up to its least size", () => {
    const { frame } = frameAround({ x: 0.99, y: -0.2, width: 0.001, height: 0.5 });
    expect(frame).toEqual({ x: 1 - LEAST_SIDE, y: 0, width: LEAST_SIDE, height: 0.5 });
  });
});
describe("moveFrame", () => {
  it("moves one corner and leaves the other where it is", () => {
    expect(sidesOf(moveFrame(begun, "upper-left", { x: 0.1, y: 0.1 }))).toEqual([100, 100, 600, 500]);
    expect(sidesOf(moveFrame(begun, "lower-right", { x: 0.9, y: 0.7 }))).toEqual([200, 300, 900, 700]);
  });
  it("moves the whole by its middle, and no further than the edge", () => {
    const { frame } = moveFrame(begun, "middle", { x: 0.95, y: 0.5 });
    expect(frame).toMatchObject({ width: 0.4, height: 0.2 });
    expect(frame.x).toBeCloseTo(0.6, 9);
    expect(frame.y).toBeCloseTo(0.4, 9);
  });
  it("never turns over, leaves the photo or becomes too small, wherever its handles go", () => {
    const random = seeded(5);
    let draft: FrameDraft = begun;
    for (let n = 0; n < 2_000; n++) {
      const grip = (["upper-left", "lower-right", "middle"] as const)[Math.floor(3 * random())] as Grip;
      draft = moveFrame(draft, grip, { x: 1.4 * random() - 0.2, y: 1.4 * random() - 0.2 });
      const { x, y, width, height } = draft.frame;
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(LEAST_SIDE - 1e-9);
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-9);
      expect(Math.max(x + width, y + height)).toBeLessThanOrEqual(1 + 1e-9);
    }
  });
});
describe("dueGrip", () => {
  it("takes the upper left corner first, then the lower right, then whichever was used last", () => {
    expect(dueGrip(begun, "middle")).toBe("upper-left");
    const one = moveFrame(begun, "upper-left", { x: 0, y: 0 });
    expect(dueGrip(one, "upper-left")).toBe("lower-right");
    expect(dueGrip(moveFrame(one, "lower-right", { x: 1, y: 1 }), "upper-left")).toBe("upper-left");
  });
});
describe("frameHandles", () => {
  it("stand at the two corners and in the middle", () => {
    const handles = frameHandles(begun, (grip) => `the ${grip} grip`);
    expect(handles.map((h) => h.name)).toEqual(["the upper-left grip", "the lower-right grip", "the middle grip"]);
    const at = Object.fromEntries(handles.map((h) => [h.key, [h.x, h.y].map((v) => Math.round(1000 * v))]));
    expect(at).toEqual({ "upper-left": [200, 300], "lower-right": [600, 500], middle: [400, 400] });
  });
});
