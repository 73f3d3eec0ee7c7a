import { describe, expect, it } from "vitest";
import sharp from "sharp";
import { DAMAGE_KINDS } from "../../../prisma/demo/damage";
import { drawRug, type DrawOptions, type Weave } from "../../../prisma/demo/draw-rug";

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
