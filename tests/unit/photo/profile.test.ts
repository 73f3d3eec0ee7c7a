import { describe, expect, it } from "vitest";
import sharp from "sharp";
import { toSrgbOf, type ToSrgb } from "../../../lib/photo/profile";
import { tagPng } from "../../../lib/photo/server/tag-png";
import { seeded } from "../../../prisma/demo/canvas";

async function profileOf(name: "p3" | "srgb" | "cmyk"): Promise<Buffer> {
  const one = sharp({ create: { width: 1, height: 1, channels: 3, background: "#fff" } });
  const { icc } = await sharp(await (name === "cmyk" ? one.toColourspace("cmyk").withIccProfile(name).jpeg() : one.withIccProfile(name).png()).toBuffer()).metadata();
  if (!icc) throw new Error("no profile");
  return icc;
}

/** What a thread does with each pixel. */
function through({ redGreen, blue, level }: ToSrgb, rgb: readonly number[]): number[] {
  const sum = (tables: readonly Int32Array[]) => rgb.reduce((all, v, k) => all + tables[k]![v]!, 0) | 0;
  return [level[sum(redGreen) >>> 16]!, level[sum(redGreen) & 0xffff]!, level[sum(blue)]!];
}

const COLOURS = (() => { const random = seeded(11); return Array.from({ length: 4096 }, () => [0, 1, 2].map(() => Math.floor(256 * random()))); })();

/** A profile with the colorants of `like` and one curve for all three channels. */
function withCurve(like: Buffer, curve: Buffer): Buffer {
  const made = Buffer.concat([like, curve]);
  for (let n = 0; n < like.readUInt32BE(128); n++) {
    const at = 132 + 12 * n;
    if (like.toString("latin1", at + 1, at + 4) !== "TRC") continue;
    made.writeUInt32BE(like.length, at + 4);
    made.writeUInt32BE(curve.length, at + 8);
  }
  made.writeUInt32BE(made.length, 0);
  return made;
}
function formula(type: number, ...parameters: number[]): Buffer {
  const curve = Buffer.alloc(12 + 4 * parameters.length);
  curve.write("para", 0, "latin1");
  curve.writeUInt16BE(type, 8);
  parameters.forEach((p, n) => curve.writeInt32BE(Math.round(p * 65_536), 12 + 4 * n));
  return curve;
}
function table(...values: number[]): Buffer {
  const curve = Buffer.alloc(4 * Math.ceil((12 + 2 * values.length) / 4));
  curve.write("curv", 0, "latin1");
  curve.writeUInt32BE(values.length, 8);
  values.forEach((v, n) => curve.writeUInt16BE(v, 12 + 2 * n));
  return curve;
}

describe("toSrgbOf", () => {
  // LittleCMS, by way of libvips, reads the same profile from a PNG; it rounds in other places.
  async function byLibrary(icc: Buffer): Promise<number[][]> {
    const png = await sharp(Buffer.from(COLOURS.flat()), { raw: { width: 64, height: 64, channels: 3 } }).png().toBuffer();
    const data = await sharp(tagPng(png, icc)).toColourspace("srgb").raw().toBuffer();
    return COLOURS.map((_, i) => [...data.subarray(3 * i, 3 * i + 3)]);
  }
  const apart = (ours: number[][], theirs: number[][]) => Math.max(...ours.flatMap((rgb, i) => rgb.map((v, k) => Math.abs(v - theirs[i]![k]!))));
  const converted = (icc: Buffer) => { const tables = toSrgbOf(icc); if (!tables) throw new Error("no tables"); return COLOURS.map((rgb) => through(tables, rgb)); };

  it("agrees with LittleCMS within two levels for Display P3, in all of its colours", async () => {
    const icc = await profileOf("p3");
    expect(apart(converted(icc), await byLibrary(icc))).toBeLessThanOrEqual(2);
    expect(apart(converted(icc), COLOURS)).toBeGreaterThan(20); // there was something to convert
  });
  it("leaves sRGB as it is, within a level", async () => {
    expect(apart(converted(await profileOf("srgb")), COLOURS)).toBeLessThanOrEqual(1);
  });
  // None gives light at level 0: the library would take it away again (black point compensation).
  it.each<[string, Buffer]>([
    ["a gamma as a formula", formula(0, 1.8)],
    ["type 1", formula(1, 2.2, 1.1, -0.1)],
    ["type 2", formula(2, 2.2, 1, 0, -0.001)],
    ["type 3", formula(3, 2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045)],
    ["type 4", formula(4, 2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045, -0.004, -0.001)],
    ["a gamma in a table", table(563)],
    ["a straight line", table()],
    ["a table", table(...Array.from({ length: 33 }, (_, i) => Math.round(65_535 * (i / 32) ** 2)))],
  ])("agrees with LittleCMS within two levels for %s", async (_what, curve) => {
    const icc = withCurve(await profileOf("p3"), curve);
    expect(apart(converted(icc), await byLibrary(icc))).toBeLessThanOrEqual(2);
  });
  it("answers null for a profile of another kind, an unknown formula and a damaged one", async () => {
    const icc = await profileOf("p3");
    expect(toSrgbOf(await profileOf("cmyk"))).toBeNull();
    expect(toSrgbOf(withCurve(icc, formula(9, 1)))).toBeNull();
    for (const length of [0, 20, 128, 140, icc.length - 60]) expect(toSrgbOf(icc.subarray(0, length))).toBeNull();
  });
});
