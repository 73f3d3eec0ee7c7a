import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keyTarget, KEY_STEP, placeInWords } from "../../../../lib/ui/marking/handle";
import { centreOf, dueSpot, FINGER_RADIUS, FRESH_SPOTS, keptSpots, moveHandle, reshape, resize, spotHandles, type SpotDraft } from "../../../../lib/ui/marking/spots";
import { sayEnglish } from "../english";

const NAMES = { untouched: { name: "Clean spot", tag: "clean" }, affected: { name: "Changed spot", tag: "changed" } };
const share = fc.double({ min: -0.5, max: 1.5, noNaN: true });
const inside = (x: number) => x >= 0 && x <= 1;

describe("keyTarget", () => {
  it("moves by a step, and ten with Shift, and stays on the photo", () => {
    expect(keyTarget({ x: 0.5, y: 0.5 }, "ArrowLeft", false)).toEqual({ x: 0.5 - KEY_STEP, y: 0.5 });
    expect(keyTarget({ x: 0.5, y: 0.5 }, "ArrowDown", true)!.y).toBeCloseTo(0.5 + 10 * KEY_STEP, 12);
    expect(keyTarget({ x: 0, y: 1 }, "ArrowDown", true)).toEqual({ x: 0, y: 1 });
    expect(keyTarget({ x: 0.5, y: 0.5 }, "Enter", false)).toBeNull();
  });
});

describe("placeInWords", () => {
  it("tells per cents from the left and the top", () => expect(placeInWords({ x: 0.336, y: 0.5 }, sayEnglish)).toBe("34 % from the left, 50 % from the top"));
});

describe("moveHandle", () => {
  it("puts a spot and keeps the other", () => {
    const moved = moveHandle(FRESH_SPOTS, "untouched", { x: 0.1, y: 0.2 });
    expect(moved.marks.untouched).toEqual({ shape: "circle", x: 0.1, y: 0.2, radius: FINGER_RADIUS });
    expect(moved.marks.affected).toBe(FRESH_SPOTS.marks.affected);
    expect(moved.touched).toEqual(["untouched"]);
    expect(dueSpot(moved, "untouched")).toBe("affected");
  });
  it("makes a proposal the person's own, both spots of it", () => {
    const proposed: SpotDraft = { ...FRESH_SPOTS, isProposed: true };
    expect(moveHandle(proposed, "affected", { x: 0.5, y: 0.5 })).toMatchObject({ isProposed: false, touched: ["untouched", "affected"] });
  });
  it("agrees to no proposal where its grip was touched and not moved", () => {
    const proposed: SpotDraft = { ...reshape(FRESH_SPOTS, "rectangle", 4 / 3), isProposed: true };
    const grip = spotHandles(proposed, NAMES, (name) => `${name}, corner`).find((h) => h.key === "affected-corner")!;
    expect(moveHandle(proposed, "affected-corner", grip)).toBe(proposed);
    expect(moveHandle(proposed, "affected-corner", { x: grip.x + 0.01, y: grip.y })).toMatchObject({ isProposed: false, touched: ["untouched", "affected"] });
  });
  it("stretches a rectangle from its upper left corner, never to nothing", () => {
    const draft = reshape(keptSpots(FRESH_SPOTS.marks), "rectangle", 4 / 3);
    const before = draft.marks.affected as { x: number; y: number };
    const moved = moveHandle(draft, "affected-corner", { x: 0, y: 0.9 }).marks.affected;
    expect(moved).toMatchObject({ x: before.x, y: before.y, width: 0.015 });
    expect(moved.shape === "rectangle" && moved.y + moved.height).toBeCloseTo(0.9, 12);
  });
  it("keeps every spot on the photo, wherever it is dragged", () => {
    fc.assert(fc.property(share, share, fc.constantFrom("circle" as const, "rectangle" as const), fc.constantFrom("untouched", "affected", "affected-corner"), (x, y, shape, key) => {
      for (const spot of Object.values(moveHandle(reshape(keptSpots(FRESH_SPOTS.marks), shape, 0.75), key, { x, y }).marks)) {
        expect(inside(spot.x) && inside(spot.y)).toBe(true);
        if (spot.shape === "rectangle") expect(inside(spot.width) && inside(spot.height) && spot.x + spot.width <= 1.02 && spot.y + spot.height <= 1.02).toBe(true);
      }
    }));
  });
});

describe("reshape and resize", () => {
  it.each([4 / 3, 3 / 4])("gives a rectangle the width and height of the circle in pixels, at a ratio of %d", (ratio) => {
    const { affected } = reshape(FRESH_SPOTS, "rectangle", ratio).marks;
    if (affected.shape !== "rectangle") throw new Error("no rectangle");
    const [width, height] = [affected.width * ratio, affected.height];
    expect(width / height).toBeCloseTo(1, 9);
    expect(width / Math.max(1, ratio)).toBeCloseTo(2 * FINGER_RADIUS, 9);
    expect(centreOf(affected).x).toBeCloseTo(centreOf(FRESH_SPOTS.marks.affected).x, 9);
  });
  it("changes the size of round spots only", () => {
    expect(resize(FRESH_SPOTS, 0.05).marks.untouched).toMatchObject({ radius: 0.05 });
    const rectangles = reshape(FRESH_SPOTS, "rectangle", 1);
    expect(resize(rectangles, 0.05)).toEqual(rectangles);
  });
});

describe("spotHandles", () => {
  it("puts one tag below its spot where both would lie over each other, and leaves them where they would not", () => {
    const below = (x: number, y: number) => spotHandles(moveHandle(FRESH_SPOTS, "affected", { x, y }), NAMES, (name) => name).map((h) => h.isTagBelow);
    expect(below(0.35, 0.5)).toEqual([false, true]); // the untouched spot waits at 0.3, 0.5
    expect(below(0.6, 0.5)).toEqual([false, false]);
    expect(below(0.3, 0.7)).toEqual([false, false]);
  });
  it("has a middle for each spot, and a corner for a rectangle, named apart", () => {
    expect(spotHandles(FRESH_SPOTS, NAMES, (name) => sayEnglish("spots.corner", { name })).map((h) => [h.key, h.name, h.isWaiting])).toEqual([["untouched", "Clean spot", true], ["affected", "Changed spot", true]]);
    expect(spotHandles(reshape(FRESH_SPOTS, "rectangle", 1), NAMES, (name) => sayEnglish("spots.corner", { name })).map((h) => h.name)).toEqual(["Clean spot", "Clean spot, lower right corner", "Changed spot", "Changed spot, lower right corner"]);
  });
});
