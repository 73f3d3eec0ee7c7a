import { describe, expect, it } from "vitest";
import sharp, { type Exif } from "sharp";
import { readCameraNotes } from "../../../lib/photo/server/exposure";
import { drawn, phoneJpeg } from "./pictures";

const exifOf = async (exif: Exif) => (await sharp(await drawn(40, 30).jpeg().withExif(exif).toBuffer()).metadata()).exif;
const taken = async (tags: Record<string, string>) => readCameraNotes(await exifOf({ IFD2: tags })).takenAt?.toISOString() ?? null;

describe("readCameraNotes", () => {
  it("reads a time with its zone as that instant", async () => {
    expect(await taken({ DateTimeOriginal: "2026:03:14 15:09:26", OffsetTimeOriginal: "+05:30" })).toBe("2026-03-14T09:39:26.000Z");
  });
  it("keeps the figures of a clock without zone as if they were UTC", async () => {
    expect(await taken({ DateTimeOriginal: "2026:03:14 15:09:26" })).toBe("2026-03-14T15:09:26.000Z");
  });
  it.each(["0000:00:00 00:00:00", "2026:13:41 15:09:26", "1989:12:31 23:59:59", "yesterday"])("has no time for %s", async (text) => {
    expect(await taken({ DateTimeOriginal: text })).toBeNull();
  });
  it("takes the first year of digital cameras", async () => {
    expect(await taken({ DateTimeOriginal: "1990:01:01 00:00:00" })).toBe("1990-01-01T00:00:00.000Z");
  });
  it.each([["16", false], ["25", true], ["0", false], ["1", true]])("flash %s fired: %s", async (flash, fired) => {
    expect(readCameraNotes(await exifOf({ IFD2: { Flash: flash } })).exposure?.flash).toBe(fired);
  });
  it("has no exposure where the camera wrote none of it, nor for 0/0 seconds", async () => {
    expect(readCameraNotes(await exifOf({ IFD0: { Make: "Example" } })).exposure).toBeNull();
    expect(readCameraNotes(await exifOf({ IFD2: { ExposureTime: "0/0" } })).exposure).toBeNull();
  });
  it("answers nothing for no notes and for damaged ones", async () => {
    const nothing = { takenAt: null, exposure: null };
    expect(readCameraNotes(undefined)).toEqual(nothing);
    expect(readCameraNotes(Buffer.from("Exif\0\0garbage"))).toEqual(nothing);
    const { exif } = await sharp(await phoneJpeg()).metadata();
    for (let cut = 0; cut < exif!.length; cut += 13) expect(() => readCameraNotes(exif!.subarray(0, cut))).not.toThrow();
  });
  it("hands out nothing but time and exposure", async () => {
    const { exif } = await sharp(await phoneJpeg()).metadata();
    const notes = readCameraNotes(exif);
    expect(Object.keys(notes).sort()).toEqual(["exposure", "takenAt"]);
    expect(Object.keys(notes.exposure!).sort()).toEqual(["exposureSeconds", "fNumber", "flash", "iso"]);
  });
});
