import { describe, expect, it } from "vitest";
import { coversFrame, coversPoint, coversSpot } from "../../../lib/photo/covered";
import { seeded } from "../../../prisma/demo/canvas";

const AREA = { left: 0.4, top: 0.4, width: 0.2, height: 0.2 };
const PHOTO = { width: 200, height: 100 };
const circle = (x: number, y: number, radius: number) => ({ shape: "circle", x, y, radius }) as const;

describe("coversSpot", () => {
  it("knows a circle by its nearest edge, its radius being a share of the longer side", () => {
    // The area ends 80 pixels from the left; a circle of 20 pixels about 60 touches it, no more.
    expect(coversSpot(AREA, circle(0.3, 0.5, 0.1), PHOTO)).toBe(false);
    expect(coversSpot(AREA, circle(0.301, 0.5, 0.1), PHOTO)).toBe(true);
    // From above the same 20 pixels are a fifth of the height.
    expect(coversSpot(AREA, circle(0.5, 0.2, 0.1), PHOTO)).toBe(false);
    expect(coversSpot(AREA, circle(0.5, 0.21, 0.1), PHOTO)).toBe(true);
  });
  it("does not take a circle at a corner for its square", () => {
    expect(coversSpot(AREA, circle(0.33, 0.26, 0.09), PHOTO)).toBe(false);
    expect(coversSpot(AREA, { shape: "rectangle", x: 0.24, y: 0.08, width: 0.18, height: 0.36 }, PHOTO)).toBe(true);
  });
  it("says the same as looking at every pixel", () => {
    const random = seeded(11);
    const size = { width: 120, height: 90 };
    for (let n = 0; n < 200; n++) {
      const area = { left: 0.7 * random(), top: 0.7 * random(), width: 0.05 + 0.25 * random(), height: 0.05 + 0.25 * random() };
      const spot = circle(random(), random(), 0.02 + 0.1 * random());
      const radius = spot.radius * 120;
      let any = false, nearly = false;
      for (let x = 0; x < 120; x += 0.5) for (let y = 0; y < 90; y += 0.5) {
        if (x < area.left * 120 || x > (area.left + area.width) * 120 || y < area.top * 90 || y > (area.top + area.height) * 90) continue;
        const away = Math.hypot(x - spot.x * 120, y - spot.y * 90);
        if (away < radius) any = true;
        if (away < radius + 1) nearly = true;
      }
      const covers = coversSpot(area, spot, size);
      // Half a pixel beside the grid only the arithmetic can tell.
      expect(covers ? nearly : !any, JSON.stringify({ area, spot })).toBe(true);
    }
  });
});
describe("coversFrame", () => {
  it("takes an edge in common for none", () => {
    const area = { left: 0.25, top: 0.25, width: 0.25, height: 0.25 };
    expect(coversFrame(area, { x: 0.5, y: 0.25, width: 0.125, height: 0.125 })).toBe(false);
    expect(coversFrame(area, { x: 0.499, y: 0.25, width: 0.125, height: 0.125 })).toBe(true);
    expect(coversFrame(area, { x: 0, y: 0, width: 1, height: 1 })).toBe(true);
  });
});
describe("coversPoint", () => {
  it.each([[0.4, 0.4, true], [0.5, 0.5, true], [0.399, 0.5, false], [0.5, 0.601, false]])("of %d, %d says %s", (x, y, is) => expect(coversPoint(AREA, { x, y })).toBe(is));
});
