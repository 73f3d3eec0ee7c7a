import { describe, expect, it } from "vitest";
import type { PlanMarks } from "../../../../lib/enquiry/mark-schema";
import { addPoint, closedOutlines, cornerHandles, dueCorner, FRESH_PLAN, isRoundTheRug, keptPlan, movePlanHandle, outlineOf, pointHandles, pointKey, putCorner, removeOutline, removePoint, seated, swapped, type PlanDraft } from "../../../../lib/ui/marking/plan-draft";

const put = (draft: PlanDraft, points: readonly (readonly [number, number])[]) => points.reduce((d, [x, y]) => putCorner(d, null, { x, y }), draft);
const ROUND = [[0.1, 0.2], [0.9, 0.2], [0.9, 0.8], [0.1, 0.8]] as const;
const outlined = [[0.2, 0.2], [0.4, 0.2], [0.3, 0.4]].reduce((d, [x, y]) => addPoint(d, 0, { x: x!, y: y! }), FRESH_PLAN);

describe("putCorner", () => {
  it("puts the corners in the order in which they are touched", () => {
    const two = put(FRESH_PLAN, ROUND.slice(0, 2));
    expect([dueCorner(two), isRoundTheRug(two)]).toEqual([2, false]);
    const four = put(FRESH_PLAN, ROUND);
    expect(four.corners.map(({ x, y }) => [x, y])).toEqual(ROUND);
    expect([dueCorner(four), isRoundTheRug(four)]).toEqual([null, true]);
  });
  it("moves the active corner once all are put, and nothing where none is active", () => {
    const four = put(FRESH_PLAN, ROUND);
    expect(putCorner(four, null, { x: 0.5, y: 0.5 })).toEqual(four);
    expect(putCorner(four, "corner:1", { x: 0.95, y: 0.1 }).corners[1]).toEqual({ x: 0.95, y: 0.1 });
  });
});

describe("seated and swapped", () => {
  const PHOTO = { width: 4000, height: 3000 };
  const four = put(FRESH_PLAN, ROUND);
  const tall = { widthCm: 150, lengthCm: 267 };
  it("makes the second corner the first where the size says that the marked width is the length", () => {
    expect(seated(four, PHOTO, tall).corners[0]).toEqual({ x: 0.9, y: 0.2 });
    expect(seated(four, PHOTO, { widthCm: 267, lengthCm: 150 })).toBe(four);
  });
  it("waits for the four corners and a size, and leaves a person's choice and a kept plan alone", () => {
    const three = put(FRESH_PLAN, ROUND.slice(0, 3));
    expect(seated(three, PHOTO, tall)).toBe(three);
    expect(seated(four, PHOTO, { widthCm: 150, lengthCm: NaN })).toBe(four);
    const chosen = swapped(seated(four, PHOTO, tall));
    expect(seated(chosen, PHOTO, tall)).toBe(chosen);
    const kept = keptPlan({ corners: [...four.corners] as PlanMarks["corners"], damaged: [] });
    expect(seated(kept, PHOTO, tall)).toBe(kept);
  });
  it("swapping keeps the damage where it lies in the photo", () => expect(swapped(outlined).outlines).toBe(outlined.outlines));
});

describe("outlines", () => {
  it("count once they have three points", () => {
    expect(closedOutlines(addPoint(outlined, 1, { x: 0.7, y: 0.7 }))).toHaveLength(1);
    expect(closedOutlines(outlined)[0]).toHaveLength(3);
  });
  it("lose a point, and go with their last one", () => {
    expect(removePoint(outlined, pointKey(0, 1)).outlines[0]!.map((p) => p.x)).toEqual([0.2, 0.3]);
    const one = addPoint(FRESH_PLAN, 0, { x: 0.5, y: 0.5 });
    expect(removePoint(one, pointKey(0, 0)).outlines).toEqual([]);
    expect(removePoint(one, "corner:0")).toBe(one);
    expect(removeOutline(outlined, 0).outlines).toEqual([]);
  });
  it("have a handle for each point, which is held on the photo", () => {
    expect(pointHandles(outlined).map((h) => h.name)[2]).toBe("Damaged place 1, point 3");
    expect(movePlanHandle(outlined, pointKey(0, 0), { x: -1, y: 2 }).outlines[0]![0]).toEqual({ x: 0, y: 1 });
    expect([outlineOf(pointKey(3, 1)), outlineOf("corner:2"), outlineOf(null)]).toEqual([3, null, null]);
    expect(cornerHandles(FRESH_PLAN).every((h) => h.isWaiting)).toBe(true);
  });
});
