import fc from "fast-check";
import sharp, { type Sharp } from "sharp";
import { beforeAll, describe, expect, it } from "vitest";
import { isSame, likenessOf, SAME_BITS } from "../../../lib/photo/likeness";
import { drawRug } from "../../../prisma/demo/draw-rug";
import { rgbOf } from "./pictures";

const COLOURS = ["#7d2e38", "#d8c7b0", "#2f3a4a"];
let rug: Buffer;
beforeAll(async () => { rug = await drawRug({ seed: 10, kind: "whole", weave: "knotted", colours: COLOURS }, 960, 720); }, 60_000);
const likeness = async (picture: Buffer | Sharp) => likenessOf(await rgbOf(picture)) ?? "none";

describe("likenessOf", () => {
  it.each([
    ["half the size", (p: Sharp) => p.resize(480)], ["a coarse JPEG", (p: Sharp) => p.jpeg({ quality: 40 })],
    ["a WebP", (p: Sharp) => p.webp({ quality: 70 })], ["a shade lighter", (p: Sharp) => p.linear(1.08, 4)],
    ["half a per cent cropped", (p: Sharp) => p.extract({ left: 2, top: 2, width: 956, height: 716 })],
  ])("is the same for %s", async (_what, change) => {
    const changed = await change(sharp(rug)).toBuffer();
    expect(isSame(await likeness(rug), await likeness(changed))).toBe(true);
  });
  it.each([
    ["another rug in the same place", { seed: 11, kind: "whole", colours: ["#8f8c8a", "#39434c", "#c9c6c2"] }], ["the same rug from near", { seed: 10, kind: "pile", colours: COLOURS }],
    ["its back", { seed: 10, kind: "back", colours: COLOURS }],
  ] as const)("is another for %s", async (_what, drawing) => {
    expect(isSame(await likeness(rug), await likeness(await drawRug({ ...drawing, weave: "knotted" }, 960, 720)))).toBe(false);
  }, 60_000);
  it("is another for the same rug upside down", async () => {
    expect(isSame(await likeness(rug), await likeness(sharp(rug).rotate(180)))).toBe(false);
  });
  it("is none for a picture without any form, and 16 digits for every other", () => {
    expect(likenessOf({ data: new Uint8Array(64 * 64 * 3).fill(80), width: 64, height: 64 })).toBeNull();
    fc.assert(fc.property(fc.uint8Array({ minLength: 40 * 30 * 3, maxLength: 40 * 30 * 3 }), (data) => {
      const found = likenessOf({ data, width: 40, height: 30 });
      return found === null || /^[0-9a-f]{16}$/.test(found);
    }), { numRuns: 40 });
  });
  it("holds one wave for what it is: the coefficients are those of the cosine transform", () => {
    // Four half-waves along x, none along y: by the definition of the DCT-II only coefficient (0, 4) differs from nothing.
    const data = Uint8Array.from({ length: 32 * 32 * 3 }, (_, i) => 128 + Math.round(100 * Math.cos((Math.PI / 32) * ((Math.floor(i / 3) % 32) + 0.5) * 4)));
    const wide = { data: new Uint8Array(64 * 64 * 3), width: 64, height: 64 };
    for (let y = 0; y < 64; y++) for (let x = 0; x < 64; x++) wide.data.fill(data[3 * ((y >> 1) * 32 + (x >> 1))]!, 3 * (y * 64 + x), 3 * (y * 64 + x) + 3);
    const bits = BigInt(`0x${likenessOf(wide)}`).toString(2).padStart(64, "0");
    expect(bits[4]).toBe("1");
  });
});

describe("isSame", () => {
  it(`allows ${SAME_BITS} bits and no more`, () => {
    const flipped = (bits: number) => ((1n << BigInt(bits)) - 1n).toString(16).padStart(16, "0");
    expect(isSame("0000000000000000", flipped(SAME_BITS))).toBe(true);
    expect(isSame("0000000000000000", flipped(SAME_BITS + 1))).toBe(false);
  });
});
