import fc from "fast-check";
import { describe, expect, it } from "vitest";
import sharp from "sharp";
import { blurOf } from "../../../lib/photo/blur";
import { LIMITS, qualityOf, remarkOn, type Quality } from "../../../lib/photo/quality";
import { drawRug } from "../../../prisma/demo/draw-rug";

const fine: Quality = { sharpness: 0.8, mean: 0.45, clippedDark: 0, clippedLight: 0, flat: 0.01, cast: 3, castToward: "yellow", subject: 0.6, likeness: "0f0f0f0f0f0f0f0f", longSide: 1024 };

describe("remarkOn", () => {
  it.each([
    ["sharpness", LIMITS.sharpness, "below", "blurred"], ["mean", LIMITS.tooDark, "below", "dark"], ["mean", LIMITS.tooLight, "above", "washed out"],
    ["clippedDark", LIMITS.clippedDark, "above", "dark"], ["clippedLight", LIMITS.clippedLight, "above", "washed out"],
    ["flat", LIMITS.flat, "above", "screen"], ["cast", LIMITS.cast, "above", "yellow"],
  ] as const)("speaks when %s passes %d (%s)", (what, limit, side, word) => {
    const beyond = side === "below" ? limit - 1e-6 : limit + 1e-6, within = side === "below" ? limit + 1e-6 : limit - 1e-6;
    expect(remarkOn({ ...fine, [what]: beyond })).toContain(word);
    expect(remarkOn({ ...fine, [what]: limit })).toBeNull();
    expect(remarkOn({ ...fine, [what]: within })).toBeNull();
  });
  it("lets a label be white, and says of one that is nothing but light that it is washed out", () => {
    const light = (clippedLight: number, white: boolean) => remarkOn({ ...fine, clippedLight }, { white });
    expect(light(0.3, false)).toContain("light");
    expect(light(0.3, true)).toBeNull();
    expect(light(0.9, true)).toBeNull();
    expect(light(0.95, true)).toContain("light");
  });
  it("asks for the photo itself where a small copy came, and not of a label, whose words can be read all the same", () => {
    expect(remarkOn({ ...fine, longSide: LIMITS.longSide - 1 })).toContain("small copy");
    expect(remarkOn({ ...fine, longSide: LIMITS.longSide })).toBeNull();
    expect(remarkOn({ ...fine, longSide: 300 }, { white: true })).toBeNull();
    expect(qualityOf({ data: new Uint8Array(3 * 12 * 7), width: 7, height: 12 }).longSide).toBe(12);
  });
  it("does not send anybody from a picture of a label to a photo of the rug", () => {
    expect(remarkOn({ ...fine, flat: 0.9 }, { white: true })).toBeNull();
  });
  it("says that the rug is small only where it was to fill the picture, and never of a picture that one thing fills", () => {
    const small = (subject: number, fills = true) => remarkOn({ ...fine, subject }, { fills });
    expect(small(LIMITS.subject - 1e-6)).toContain("nearer");
    expect(small(LIMITS.speck + 1e-6)).toContain("nearer");
    expect([small(LIMITS.subject), small(LIMITS.speck), small(LIMITS.subject - 1e-6, false)]).toEqual([null, null, null]);
  });
  it("says of a colour cast what it could be, and nothing where no light is known to tint so", () => {
    expect(remarkOn({ ...fine, cast: 30, castToward: "blue" })).toMatch(/blue.*shade.*If the rug is not so itself/);
    expect(remarkOn({ ...fine, cast: 30, castToward: null })).toBeNull();
  });
  it("tells the same photo from among others by up to four bits", () => {
    expect(remarkOn(fine, { others: [null, "0f0f0f0f0f0f0ff0"] })).toBeNull(); // eight bits
    expect(remarkOn(fine, { others: ["0f0f0f0f0f0f0f10"] })).toBeNull(); // five
    expect(remarkOn(fine, { others: ["0f0f0f0f0f0f0f00"] })).toContain("already"); // four
    expect(remarkOn({ ...fine, likeness: null }, { others: [null] })).toBeNull();
  });
  it("says of a screen with black bars that it is a screen, and of a photo taken in the dark that it is dark", () => {
    expect(remarkOn({ ...fine, flat: 0.64, mean: 0.21 })).toContain("screen"); // bars of a dark grey
    expect(remarkOn({ ...fine, flat: 0.6, clippedDark: 0.6, mean: 0.18 })).toContain("screen"); // black bars about a well lit photo
    expect(remarkOn({ ...fine, flat: 0.6, clippedDark: 0.6, mean: 0.06 })).toContain("dark"); // what is not black is dark too
  });
  it("says of a photo too dark to show any form that it is dark, though the levels left in it are few and alike", async () => {
    expect(remarkOn({ ...fine, flat: 0.8, mean: 0.06, likeness: null })).toContain("dark");
    expect(remarkOn({ ...fine, flat: 0.8, mean: 0.45, likeness: null })).toContain("screen");
    const rug = await drawRug({ seed: 10, kind: "whole", weave: "flatweave", colours: ["#8a2f2b", "#24406b", "#c9a24a"] }, 1024, 768);
    const night = await sharp(await sharp(rug).linear(0.06, 0).jpeg({ quality: 60 }).toBuffer()).raw().toBuffer({ resolveWithObject: true });
    const quality = qualityOf({ data: night.data, width: night.info.width, height: night.info.height });
    expect(quality.flat).toBeGreaterThan(LIMITS.flat);
    expect(remarkOn(quality)).toContain("dark");
  });
  it("names the light first when a photo is dark and blurred", () => {
    expect(remarkOn({ ...fine, mean: 0.1, sharpness: 0.1 })).toContain("dark");
  });
});

describe("blurOf", () => {
  const noise = (width: number, height: number) => Float32Array.from({ length: width * height }, (_, i) => ((i * 2654435761) >>> 8) % 256 / 255);
  it("counts a picture without any difference as wholly blurred", () => {
    expect(blurOf(new Float32Array(400), 20, 20)).toBe(1);
  });
  it("lies between 0 and 1, and weak contrast above the noise changes it little", () => {
    fc.assert(fc.property(fc.double({ min: 0.3, max: 1, noNaN: true }), (contrast) => {
      const grey = noise(32, 32), blur = blurOf(grey, 32, 32);
      return blur >= 0 && blur <= 1 && Math.abs(blurOf(grey.map((v) => 0.5 + (v - 0.5) * contrast), 32, 32) - blur) < 0.05;
    }));
  });
  it("counts differences of two levels as noise, those of four as detail", () => {
    const check = (levels: number) => Float32Array.from({ length: 32 * 32 }, (_, i) => 0.5 + ((((i % 32) + Math.floor(i / 32)) & 1) * levels) / 255);
    expect(blurOf(check(2), 32, 32)).toBe(1);
    expect(blurOf(check(4), 32, 32)).toBeLessThan(0.5);
  });
  it("is the worse of both directions: smear along one is enough", () => {
    const stripes = Float32Array.from({ length: 64 * 64 }, (_, i) => (i % 64) & 1), smear = Float32Array.from({ length: 64 * 64 }, (_, i) => Math.sin((i % 64) / 20) * 0.4 + 0.5 + ((Math.floor(i / 64) & 1) * 0.1));
    expect(blurOf(stripes, 64, 64)).toBe(1); // nothing changes downward
    expect(blurOf(smear, 64, 64)).toBeGreaterThan(0.8);
  });
  it("grows when a picture is blurred, step by step", async () => {
    const at = async (sigma: number) => {
      const drawing = sharp(await drawRug({ seed: 4, kind: "whole", weave: "knotted", colours: ["#7d1f22", "#1d2a4d", "#c9a86a"] }, 400, 300)).greyscale();
      const { data, info } = await (sigma ? drawing.blur(sigma) : drawing).raw().toBuffer({ resolveWithObject: true });
      return blurOf(Float32Array.from(data, (v) => v / 255), info.width, info.height);
    };
    const blurs = await Promise.all([0, 0.8, 1.6, 3.2].map(at));
    blurs.slice(1).forEach((blur, i) => expect(blur).toBeGreaterThan(blurs[i]! + 0.02));
  });
});

describe("qualityOf", () => {
  const flat = (r: number, g: number, b: number) => ({ data: new Uint8Array(32 * 32 * 3).map((_, i) => [r, g, b][i % 3]!), width: 32, height: 32 });
  it("counts black and white pixels, and not strong colours", () => {
    expect(qualityOf(flat(8, 8, 8))).toMatchObject({ clippedDark: 1, clippedLight: 0 });
    expect(qualityOf(flat(9, 8, 8)).clippedDark).toBe(0);
    expect(qualityOf(flat(250, 250, 250)).clippedLight).toBe(1);
    expect(qualityOf(flat(255, 255, 249)).clippedLight).toBe(0);
    expect(qualityOf(flat(255, 0, 0))).toMatchObject({ clippedDark: 0, clippedLight: 0 });
  });
  const measured = async (quality: "good" | "dark" | "blurred", weave: "knotted" | "loomed") => {
    const jpeg = await drawRug({ seed: 21, kind: "whole", weave, colours: ["#8f8c8a", "#39434c", "#c9c6c2"], quality }, 1024, 768);
    const { data, info } = await sharp(jpeg).raw().toBuffer({ resolveWithObject: true });
    return remarkOn(qualityOf({ data, width: info.width, height: info.height }), { fills: true });
  };
  it.each([["knotted", "good", null], ["knotted", "dark", "dark"], ["knotted", "blurred", "blurred"], ["loomed", "good", null], ["loomed", "dark", "dark"], ["loomed", "blurred", "blurred"]] as const)(
    "on a drawn photo of a %s rug that is %s says %s", async (weave, quality, word) => {
      const remark = await measured(quality, weave);
      if (word) expect(remark).toContain(word);
      else expect(remark).toBeNull();
    }, 60_000);
});
