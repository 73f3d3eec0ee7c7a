import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { castOf } from "../../../lib/photo/cast";
import { LIMITS, qualityOf } from "../../../lib/photo/quality";
import { subjectShareOf } from "../../../lib/photo/subject";
import { drawRug } from "../../../prisma/demo/draw-rug";
import { rgbOf } from "./pictures";

const RUGS = [["#8f8c8a", "#39434c", "#c9c6c2"], ["#2d3d6b", "#8a2f2f", "#d9c38a"], ["#d9d4c8", "#cfc8b8", "#bdb5a2"], ["#c8b48a", "#b79a5e", "#e0d3b0"], ["#7d2e38", "#d8c7b0", "#2f3a4a"]];
const whole = (colours: readonly string[]) => drawRug({ seed: 30, kind: "whole", weave: "knotted", colours }, 960, 720);
const flat = (r: number, g: number, b: number) => ({ data: new Uint8Array(32 * 32 * 3).map((_, i) => [r, g, b][i % 3]!), width: 32, height: 32 });

describe("castOf", () => {
  it("sees none in daylight, whatever the rug", async () => {
    for (const colours of RUGS) expect((await rgbOf(await whole(colours)).then(castOf)).amount).toBeLessThan(LIMITS.cast);
  }, 60_000);
  // Halogen light uncorrected takes about a fifth of green's level and half of blue's (Planck's law at 3000 K against 6500 K, from memory).
  it("sees lamplight on a pale rug as yellow", async () => {
    const lit = await sharp(await whole(RUGS[2]!)).linear([1, 0.8, 0.5], [0, 0, 0]).jpeg().toBuffer();
    expect(castOf(await rgbOf(lit))).toMatchObject({ toward: "yellow" });
    expect(castOf(await rgbOf(lit)).amount).toBeGreaterThan(LIMITS.cast);
  }, 60_000);
  it.each([["yellow", 235, 190, 110], ["green", 130, 190, 120], ["blue", 90, 120, 220]] as const)("names a flat %s", (toward, r, g, b) => {
    expect(castOf(flat(r, g, b)).toward).toBe(toward);
  });
  it("is nothing for grey, for black and for white", () => {
    for (const level of [0, 128, 255]) expect(castOf(flat(level, level, level)).amount).toBeCloseTo(0, 6);
  });
  it("is excused by white that is white", () => {
    const picture = flat(235, 190, 110);
    picture.data.fill(240, 0, 3 * 32 * 4);
    expect(castOf(picture).amount).toBeLessThan(1);
  });
});

describe("subjectShareOf", () => {
  const onFloor = async (width: number) => rgbOf(await sharp({ create: { width: 960, height: 720, channels: 3, background: "#b9a58c" } })
    .composite([{ input: await sharp(await whole(RUGS[1]!)).resize(width).png().toBuffer(), gravity: "centre" }]).jpeg().toBuffer());
  it("comes within a quarter of the share that a rug takes of a plain floor", async () => {
    for (const width of [200, 400, 700]) {
      const share = (width * width * 0.75) / (960 * 720);
      const found = subjectShareOf(await onFloor(width));
      expect(found).toBeGreaterThan(share * 0.6);
      expect(found).toBeLessThan(share * 1.25);
    }
  }, 60_000);
  it("is nothing for a plain picture", () => expect(subjectShareOf(flat(90, 80, 70))).toBe(0));
  it("asks nobody to go nearer who photographed the whole of a rug as asked", async () => {
    for (const colours of RUGS) expect(subjectShareOf(await rgbOf(await whole(colours)))).toBeGreaterThan(LIMITS.subject * 2);
  }, 60_000);
});

describe("qualityOf", () => {
  it("finds hardly two neighbours alike in a photo, and most alike in a screenshot", async () => {
    expect(qualityOf(await rgbOf(await whole(RUGS[0]!))).flat).toBeLessThan(LIMITS.flat / 5);
    const screen = '<svg xmlns="http://www.w3.org/2000/svg" width="390" height="844"><rect width="390" height="844" fill="#f4f4f6"/><rect y="90" width="390" height="300" fill="#5d6d7e"/><text x="20" y="450" font-size="22">Viscose rug, 170 × 240</text></svg>';
    expect(qualityOf(await rgbOf(sharp(Buffer.from(screen)))).flat).toBeGreaterThan(LIMITS.flat);
  }, 60_000);
});
