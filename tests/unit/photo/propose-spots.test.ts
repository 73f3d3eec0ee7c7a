import { describe, expect, it } from "vitest";
import { proposeSpots } from "../../../lib/photo/propose-spots";
import type { Rgb } from "../../../lib/photo/strip";

const [WIDTH, HEIGHT] = [240, 180];
const drawnBy = (colour: (x: number, y: number) => readonly [number, number, number]): Rgb => {
  const data = new Uint8Array(WIDTH * HEIGHT * 3);
  for (let y = 0; y < HEIGHT; y++) for (let x = 0; x < WIDTH; x++) data.set(colour(x, y), 3 * (y * WIDTH + x));
  return { data, width: WIDTH, height: HEIGHT };
};
const CREAM = [225, 215, 190] as const, BROWN = [150, 110, 60] as const, BLUE = [40, 60, 120] as const;
const isStain = (x: number, y: number) => (x - 150) ** 2 + (y - 90) ** 2 < 30 ** 2;

describe("proposeSpots", () => {
  it("finds a stain on a plain rug, and a clean place beside it", () => {
    const found = proposeSpots(drawnBy((x, y) => (isStain(x, y) ? BROWN : CREAM)));
    if (found?.affected.shape !== "rectangle" || found.untouched.shape !== "rectangle") throw new Error("no spots");
    const at = (s: { x: number; y: number; width: number; height: number }) => [(s.x + s.width / 2) * WIDTH, (s.y + s.height / 2) * HEIGHT] as const;
    expect(isStain(...at(found.affected))).toBe(true);
    expect(isStain(...at(found.untouched))).toBe(false);
  });
  it("takes no floor beside the rug for a stain", () => {
    const onFloor = (inside: (x: number, y: number) => readonly [number, number, number]) => drawnBy((x, y) => (y < 50 ? BLUE : inside(x, y)));
    expect(proposeSpots(onFloor(() => CREAM))).toBeNull();
    const found = proposeSpots(onFloor((x, y) => (isStain(x, y - 20) ? BROWN : CREAM)));
    expect(found && isStain((found.affected.x + 0.02) * WIDTH, (found.affected.y + 0.02) * HEIGHT - 20)).toBe(true);
  });
  it("looks at nothing but the rug where its corners are known: neither planks that are the most of the picture, nor what lies on them", () => {
    const OAK = [190, 140, 90] as const;
    // A small cream rug with a stain, upper right, on a floor with a dark knot at the left.
    const isRug = (x: number, y: number) => x > 120 && x < 230 && y > 15 && y < 130;
    const isKnot = (x: number, y: number) => (x - 60) ** 2 + (y - 100) ** 2 < 32 ** 2;
    const isSpilled = (x: number, y: number) => (x - 175) ** 2 + (y - 70) ** 2 < 20 ** 2;
    const room = drawnBy((x, y) => (isSpilled(x, y) ? BROWN : isRug(x, y) ? CREAM : isKnot(x, y) ? BLUE : OAK));
    const corners = [[120, 15], [230, 15], [230, 130], [120, 130]].map(([x = 0, y = 0]) => ({ x: x / WIDTH, y: y / HEIGHT }));
    const at = (s: { x: number; y: number }) => [(s.x + 1 / 48) * WIDTH, (s.y + 1 / 48) * HEIGHT] as const;
    const found = proposeSpots(room, corners);
    if (found?.affected.shape !== "rectangle" || found.untouched.shape !== "rectangle") throw new Error("no spots");
    expect(isSpilled(...at(found.affected))).toBe(true);
    expect(isRug(...at(found.untouched)) && !isSpilled(...at(found.untouched))).toBe(true);
    // Without them it is told of the floor, or nothing.
    const without = proposeSpots(room);
    expect(without?.affected.shape === "rectangle" && isSpilled(...at(without.affected))).toBe(false);
    // A rug without a stain gives nothing, whatever lies beside it.
    expect(proposeSpots(drawnBy((x, y) => (isRug(x, y) ? CREAM : isKnot(x, y) ? BLUE : OAK)), corners)).toBeNull();
  });
  it("proposes nothing on a plain rug without a stain", () => expect(proposeSpots(drawnBy(() => CREAM))).toBeNull());
  it("proposes nothing on a pattern", () => expect(proposeSpots(drawnBy((x, y) => [CREAM, BROWN, BLUE][(Math.floor(x / 20) + Math.floor(y / 20)) % 3] as typeof CREAM))).toBeNull());
  it("proposes nothing where medallions stand out beside a stain, for either could be the other", () => {
    const isMedallion = (x: number, y: number) => x > 30 && x < 210 && y > 20 && y < 160 && ((x % 45) - 22) ** 2 + ((y % 45) - 22) ** 2 < 15 ** 2;
    expect(proposeSpots(drawnBy((x, y) => (isStain(x, y) ? BROWN : isMedallion(x, y) ? BLUE : CREAM)))).toBeNull();
  });
  it("proposes nothing where half the rug is another colour", () => expect(proposeSpots(drawnBy((x) => (x < WIDTH / 2 ? CREAM : BLUE)))).toBeNull());
});
