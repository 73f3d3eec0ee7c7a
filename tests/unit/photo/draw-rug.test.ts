import { describe, expect, it } from "vitest";
import sharp from "sharp";
import { DAMAGE_KINDS } from "../../../prisma/demo/damage";
import { drawRug, placeInPhoto, type DrawOptions, type Weave } from "../../../prisma/demo/draw-rug";

const COLOURS = ["#8c8a86", "#39434c", "#c9c6c2"];
const rug: DrawOptions = { seed: 5, kind: "whole", weave: "loomed", colours: COLOURS };
const small = (options: DrawOptions): Promise<Buffer> => drawRug(options, 160, 120);
const pixels = async (options: DrawOptions) => (await sharp(await small(options)).raw().toBuffer());
const difference = (a: Buffer, b: Buffer) => a.reduce((sum, v, i) => sum + Math.abs(v - b[i]!), 0) / a.length;

describe("drawRug", () => {
  it("draws the same request the same, another seed another", async () => {
    expect(await small(rug)).toEqual(await small(rug));
    expect(await small({ ...rug, seed: 6 })).not.toEqual(await small(rug));
  });
  it.each<Weave>(["knotted", "flatweave", "tufted", "loomed", "machine"])("draws every kind of photo of a %s rug as a JPEG of the size asked for", async (weave) => {
    for (const kind of ["whole", "label", "back", "pile", "trouble", "bad"] as const) {
      expect(await sharp(await small({ ...rug, weave, kind, labelText: "80% wool\n20% viscose" })).metadata()).toMatchObject({ format: "jpeg", width: 160, height: 120 });
    }
  });
  it.each(DAMAGE_KINDS)("shows %s on the whole rug and, larger, in the photo of the trouble", async (kind) => {
    const damage = { kind, x: 0.5, y: 0.5, r: 0.25 };
    for (const photo of ["whole", "trouble"] as const) {
      expect(difference(await pixels({ ...rug, kind: photo, damage }), await pixels({ ...rug, kind: photo }))).toBeGreaterThan(0.4);
    }
  });
  it("prints what the label says", async () => {
    const label = (labelText: string) => pixels({ ...rug, kind: "label", labelText });
    const [empty, words, more] = await Promise.all([label(""), label("WOOL"), label("WOOL\nVISCOSE\nCOTTON")]);
    expect(difference(words, empty)).toBeGreaterThan(0.5);
    expect(difference(more, words)).toBeGreaterThan(0.5);
  });
  it("is dark or blurred when asked", async () => {
    const mean = (data: Buffer) => data.reduce((sum, v) => sum + v, 0) / data.length;
    expect(mean(await pixels({ ...rug, quality: "dark" }))).toBeLessThan(0.5 * mean(await pixels(rug)));
    expect(await small({ ...rug, quality: "blurred" })).not.toEqual(await small(rug));
  });
});

describe("placeInPhoto", () => {
  it("finds the middle of a stain where it is seen, along and across the rug", async () => {
    for (const [x, y] of [[0.25, 0.3], [0.7, 0.65], [0.5, 0.8]] as const) {
      const stained = { ...rug, damage: { kind: "wine", x, y, r: 0.06 } } as const;
      const [before, after] = [await pixels(rug), await pixels(stained)];
      // Where the two pictures differ, weighed by how much.
      let [sum, atX, atY] = [0, 0, 0];
      for (let i = 0; i < 160 * 120; i++) {
        const d = [0, 1, 2].reduce((all, c) => all + Math.abs(after[3 * i + c]! - before[3 * i + c]!), 0);
        if (d < 60) continue;
        sum += d; atX += d * ((i % 160) + 0.5); atY += d * (Math.floor(i / 160) + 0.5);
      }
      const place = placeInPhoto(stained, { x: 240 * x, y: 170 * y });
      expect([Math.abs(place.x - atX / sum / 160), Math.abs(place.y - atY / sum / 120)].map((v) => v < 0.03), `${x}, ${y}`).toEqual([true, true]);
    }
  });
});
