import { writeFileSync } from "node:fs";
import path from "node:path";
import heic from "heic-decode";
import { describe, expect, it } from "vitest";
import sharp, { type Sharp } from "sharp";
import { levelOf, linearOf } from "../../../lib/photo/colour";
import { toSrgbOf } from "../../../lib/photo/profile";
import { decodeHeic } from "../../../lib/photo/server/heic";
import { fromPixels } from "../../../lib/photo/server/pictures";
import { receivePhoto } from "../../../lib/photo/server/receive";
import { gridHeic, middlePart, mirrored, rotated } from "../../heic-grid";
import { inPieces, tempFolder } from "./pictures";

describe("decodeHeic", () => {
  it("gives up and ends its thread when patience runs out", async () => {
    const threads = () => process.getActiveResourcesInfo().filter((what) => what === "MessagePort" || what === "Worker").length;
    const before = threads();
    await expect(decodeHeic(path.resolve("tests/fixtures/rug.heic"), 1)).rejects.toThrow("out of patience");
    await expect.poll(threads).toBeLessThanOrEqual(before);
  });
  it("takes 48 megapixels in tiles, as telephones write them", async () => {
    const folder = tempFolder(), answer = await receivePhoto(inPieces(gridHeic(16, 10)), { name: "IMG_48.HEIC", type: "" }, folder);
    expect(answer).toMatchObject({ ok: true, photo: { receivedType: "image/heic", width: 10_240, height: 4800 } });
  }, 120_000);
  it.each<[string, Parameters<typeof gridHeic>[2]]>([
    ["as it is", {}],
    ["cut, as a telephone's picture is no multiple of its tiles", { size: { width: 1100, height: 800 } }],
    ...[1, 2, 3].map((quarters): [string, Parameters<typeof gridHeic>[2]] => [`cut and turned by ${quarters} quarters`, { size: { width: 1100, height: 800 }, transforms: [rotated(quarters)] }]),
    ["mirrored", { size: { width: 1100, height: 800 }, transforms: [mirrored(1)] }],
    ["put upside down by a mirror", { size: { width: 1100, height: 800 }, transforms: [mirrored(0)] }],
    ["of which only the middle is to be seen", { transforms: [middlePart(900, 500)] }],
    ["of which only the middle is to be seen, turned", { transforms: [middlePart(900, 500), rotated(1)] }],
  ])("puts the tiles of a picture together as the whole is decoded at once: %s", async (_what, shown) => {
    const file = path.join(tempFolder(), "grid.heic"), bytes = gridHeic(2, 2, shown);
    writeFileSync(file, bytes);
    const whole = await heic({ buffer: new Uint8Array(bytes) }), ours = await decodeHeic(file);
    expect([ours.width, ours.height]).toEqual([whole.width, whole.height]);
    // The whole without its profile, which is Display P3: colours shift a little, places do not.
    const small = (picture: Sharp) => picture.removeAlpha().resize(60, 60, { fit: "fill" }).greyscale().raw().toBuffer();
    const [a, b] = [await small(fromPixels(ours)), await small(fromPixels({ ...whole, data: new Uint8Array(whole.data), channels: 4 }))];
    expect(Math.max(...a.map((v, i) => Math.abs(v - b[i]!)))).toBeLessThan(8);
  });
  it("leaves a profile that tables do not hold to the picture library: one with six times the light", async () => {
    const { icc } = await sharp(path.resolve("tests/fixtures/rug.heic")).metadata();
    const bright = Buffer.from(icc!);
    for (const name of ["rXYZ", "gXYZ", "bXYZ"]) {
      const tag = bright.readUInt32BE(bright.indexOf(name, 128, "latin1") + 4);
      for (const at of [8, 12, 16]) bright.writeInt32BE(6 * bright.readInt32BE(tag + at), tag + at);
    }
    expect(toSrgbOf(bright)).toBeNull();
    const decoded = async (profile: Buffer) => { const file = path.join(tempFolder(), "grid.heic"); writeFileSync(file, gridHeic(1, 1, { icc: profile })); return (await decodeHeic(file)).data; };
    const [plain, lit] = [await decoded(icc!), await decoded(bright)];
    const dark = [...plain.keys()].filter((i) => i % 3 === 0 && [0, 1, 2].every((k) => plain[i + k]! > 5 && plain[i + k]! < 90));
    expect(dark.length).toBeGreaterThan(1000);
    const off = dark.map((i) => Math.abs(lit[i + 1]! - levelOf(6 * linearOf(plain[i + 1]!))));
    expect(off.reduce((sum, d) => sum + d, 0) / off.length).toBeLessThan(3);
  });
  it("rejects for a file that is no HEIC", async () => {
    await expect(decodeHeic(path.resolve("package.json"))).rejects.toThrow();
  });
});
