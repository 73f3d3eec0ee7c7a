import { createReadStream, readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import sharp from "sharp";
import { deltaE00, labOf } from "../../../lib/photo/colour";
import { remarkOn } from "../../../lib/photo/quality";
import { MAX_PHOTO_BYTES } from "../../../lib/photo/limits";
import { receivePhoto, type Reception, type ReceivedPhoto } from "../../../lib/photo/server/receive";
import { animatedPng, animatedWebp, bombPng, drawn, inPieces, listed, phoneJpeg, sha256, tempFolder } from "./pictures";

const after = vi.hoisted(() => ({ sizes: null as (() => void) | null }));
vi.mock("../../../lib/photo/server/sizes", async (original) => {
  const real = await original<typeof import("../../../lib/photo/server/sizes")>();
  return { makeSizes: async (...given: Parameters<typeof real.makeSizes>) => { const made = await real.makeSizes(...given); after.sizes?.(); return made; } };
});
afterEach(() => { after.sizes = null; });

const HEIC = path.resolve("tests/fixtures/rug.heic");
const send = (data: Uint8Array, folder: string, name = "photo.jpg", type = "image/jpeg"): Promise<Reception> => receivePhoto(inPieces(data), { name, type }, folder);

async function accepted(data: Uint8Array, folder: string, name?: string, type?: string): Promise<ReceivedPhoto> {
  const answer = await send(data, folder, name, type);
  if (!answer.ok) throw new Error(`refused: ${answer.code} ${answer.say}`);
  return answer.photo;
}

const genuine: Record<string, () => Promise<Buffer>> = {
  "image/jpeg": () => drawn(120, 80).jpeg().toBuffer(),
  "image/png": () => drawn(120, 80).png().toBuffer(),
  "image/webp": () => drawn(120, 80).webp().toBuffer(),
  "image/heic": () => readFile(HEIC),
};
const false_: Record<string, () => Promise<Buffer> | Buffer> = {
  gif: () => drawn(40, 30).gif().toBuffer(),
  tiff: () => drawn(40, 30).tiff().toBuffer(),
  avif: () => drawn(64, 64).avif({ effort: 0 }).toBuffer(),
  "avif under a neutral brand": async () => { const data = await drawn(64, 64).avif({ effort: 0 }).toBuffer(); data.write("mif1", 8); return data; },
  svg: () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>alert(1)</script><rect width="9" height="9"/></svg>'),
  "svg with an XML head": () => Buffer.from('\ufeff  <?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
  html: () => Buffer.from("<!doctype html><script>alert(1)</script>"),
  pdf: () => Buffer.from("%PDF-1.7\n1 0 obj<<>>endobj\ntrailer<<>>\n%%EOF"),
  zip: () => Buffer.from("PK\x03\x04\x14\0\0\0\0\0aaaa", "latin1"),
  gzip: () => Buffer.from([0x1f, 0x8b, 8, 0, 0, 0, 0, 0, 0, 3]),
  exe: () => Buffer.from("MZ\x90\0\x03\0\0\0\x04\0\0\0\xff\xff", "latin1"),
  film: () => Buffer.from("\0\0\0\x18ftypmp42\0\0\0\0mp42isom", "latin1"),
  "the moving half of a Live Photo": () => Buffer.from("\0\0\0\x14ftypqt  \0\0\0\0qt  ", "latin1"),
  "JPEG 2000": () => Buffer.from("\0\0\0\x0cjP  \r\n\x87\n", "latin1"),
  "JPEG XL": () => Buffer.from("\xff\x0a\xfa\x1f", "latin1"),
  "JPEG XL in a box": () => Buffer.from("\0\0\0\x0cJXL \r\n\x87\n", "latin1"),
  "the EICAR test text": () => Buffer.from("X5O!P%@AP[4\\PZX54(P^)7CC)7}$" + "EICAR-STANDARD-ANTIVIRUS-TEST-FILE!$H+H*"),
  "plain text": () => Buffer.from("hello"),
  nothing: () => Buffer.alloc(0),
};
const DISGUISES = [["a.jpg", "image/jpeg"], ["a.png", "image/png"], ["a.heic", "image/heic"], ["a.exe", "application/octet-stream"], ["a", ""]] as const;

describe("receivePhoto: content decides", () => {
  for (const [type, make] of Object.entries(genuine)) {
    it(`takes ${type} under any name and declared type`, async () => {
      const folder = tempFolder(), data = await make();
      for (const [name, declared] of DISGUISES) expect((await accepted(data, folder, name, declared)).receivedType).toBe(type);
      expect(listed(folder)).toHaveLength(3 * DISGUISES.length);
    });
  }
  for (const [what, make] of Object.entries(false_)) {
    it(`refuses ${what} under any name and declared type, with a sentence, and keeps nothing`, async () => {
      const folder = tempFolder(), data = await make();
      for (const [name, declared] of DISGUISES) {
        const answer = await send(data, folder, name, declared);
        expect(answer).toMatchObject({ ok: false, code: "unsupported" });
        expect(answer.ok ? "" : answer.say).toMatch(/^[A-Z].*JPEG, PNG, WebP or HEIC\.$/);
      }
      expect(listed(folder)).toEqual([]);
    });
  }
  it.each([["WebP", animatedWebp], ["PNG", async () => animatedPng(await drawn(40, 30).png().toBuffer())]])("refuses an animated %s and says that it moves", async (_what, make) => {
    const folder = tempFolder(), answer = await send(await make(), folder);
    expect(answer).toMatchObject({ ok: false, code: "unsupported", say: expect.stringContaining("moving") });
    expect(listed(folder)).toEqual([]);
  });
});

describe("receivePhoto: limits", () => {
  it.each(Object.entries(genuine))("refuses %s cut short, and keeps nothing", async (_type, make) => {
    const folder = tempFolder(), data = await make();
    for (const share of [0.3, 0.6, 0.95]) {
      const answer = await send(data.subarray(0, Math.floor(data.length * share)), folder);
      expect(answer).toMatchObject({ ok: false, code: "unreadable" });
    }
    expect(listed(folder)).toEqual([]);
  });
  it("refuses 16383 × 16383 pixels without decoding them", async () => {
    const folder = tempFolder(), bomb = bombPng(16_383);
    expect(bomb.length).toBeLessThan(100_000);
    const before = process.memoryUsage().rss;
    expect(await send(bomb, folder)).toMatchObject({ ok: false, code: "too-large", say: expect.stringContaining("66 megapixels") });
    expect(process.memoryUsage().rss - before).toBeLessThan(400e6); // decoded it would be 805 MB
    expect(listed(folder)).toEqual([]);
  });
  it("refuses 12 bits a colour, and says so", async () => {
    const deep = await drawn(120, 80).jpeg().toBuffer();
    deep[deep.indexOf(Buffer.from([0xff, 0xc0])) + 4] = 12; // the sample precision of the frame header (ITU-T T.81, B.2.2)
    expect(await send(deep, tempFolder())).toMatchObject({ ok: false, code: "unsupported", say: expect.stringContaining("12 bits") });
  });
  it("takes a panorama of 64 megapixels", async () => {
    const folder = tempFolder(), wide = await sharp({ create: { width: 16_382, height: 3908, channels: 3, background: "#806040" } }).jpeg().toBuffer();
    expect(await accepted(wide, folder)).toMatchObject({ width: 16_382, height: 3908 });
  }, 60_000);
  it("takes 25 MB to the byte", async () => {
    const folder = tempFolder(), jpeg = await drawn(120, 80).jpeg().toBuffer();
    const photo = await accepted(Buffer.concat([jpeg, Buffer.alloc(MAX_PHOTO_BYTES - jpeg.length)]), folder);
    expect(photo.receivedBytes).toBe(MAX_PHOTO_BYTES);
  });
  it("stops reading at 25 MB and one byte, ends the stream and keeps nothing", async () => {
    const folder = tempFolder();
    let sent = 0, ended = false;
    async function* endless() {
      try {
        yield Buffer.from([0xff, 0xd8, 0xff]);
        for (const piece = Buffer.alloc(1024 * 1024); ; sent += piece.length) yield piece;
      } finally {
        ended = true;
      }
    }
    expect(await receivePhoto(endless(), { name: "a.jpg", type: "image/jpeg" }, folder)).toMatchObject({ ok: false, code: "too-large", say: expect.stringContaining("25 MB") });
    expect(sent).toBeLessThanOrEqual(MAX_PHOTO_BYTES);
    expect(ended).toBe(true);
    expect(listed(folder)).toEqual([]);
  });
  it("rejects when the sender goes away half-way, and keeps nothing", async () => {
    const folder = tempFolder(), jpeg = await drawn(120, 80).jpeg().toBuffer();
    async function* broken() {
      yield jpeg.subarray(0, 200);
      throw new Error("connection lost");
    }
    await expect(receivePhoto(broken(), { name: "a.jpg", type: "image/jpeg" }, folder)).rejects.toThrow("connection lost");
    expect(listed(folder)).toEqual([]);
  });
  it.each([["a full disk", Object.assign(new Error("write"), { code: "ENOSPC" })], ["a full disk, as the picture library says it", new Error("part-full: write error\nsystem error: No space left on device")]])(
    "rejects for %s instead of blaming the photo, and keeps nothing of what was written already", async (_what, error) => {
      const folder = tempFolder(), jpeg = await drawn(120, 80).jpeg().toBuffer();
      let written = 0;
      after.sizes = () => { written = listed(folder).length; throw error; };
      await expect(send(jpeg, folder)).rejects.toBe(error);
      expect(written).toBe(4); // as received, and three sizes
      expect(listed(folder)).toEqual([]);
    });
  it("takes twelve at once", async () => {
    const folder = tempFolder(), jpeg = await drawn(1200, 800).jpeg().toBuffer();
    const photos = await Promise.all(Array.from({ length: 12 }, () => accepted(jpeg, folder)));
    expect(new Set(photos.map((p) => p.id)).size).toBe(12);
    expect(listed(folder)).toHaveLength(36);
  });
});

describe("receivePhoto: what is kept", () => {
  it("keeps no place, owner or other metadata in any size, and the profile only as sRGB pixels", async () => {
    const folder = tempFolder(), sent = await phoneJpeg();
    expect((await sharp(sent).metadata()).exif?.length).toBeGreaterThan(100);
    const { id } = await accepted(sent, folder);
    for (const name of [`${id}.jpg`, `${id}-1600.jpg`, `${id}-320.jpg`]) {
      const { exif, xmp, iptc, icc, orientation, format } = await sharp(path.join(folder, name)).metadata();
      expect({ exif, xmp, iptc, icc, orientation, format }).toEqual({ exif: undefined, xmp: undefined, iptc: undefined, icc: undefined, orientation: undefined, format: "jpeg" });
    }
  });
  it("applies EXIF orientation 6: what was left on the sensor is on top", async () => {
    const folder = tempFolder();
    const { id, width, height } = await accepted(await phoneJpeg(), folder);
    expect([width, height]).toEqual([80, 120]);
    const at = async (top: number) => [...(await sharp(path.join(folder, `${id}.jpg`)).extract({ left: 36, top, width: 8, height: 8 }).resize(1, 1).raw().toBuffer())];
    const [red, blue] = [await at(10), await at(100)];
    expect(red[0]).toBeGreaterThan(red[2]! + 60);
    expect(blue[2]).toBeGreaterThan(blue[0]! + 40);
  });
  it("shows the colours of a CMYK picture as they were", async () => {
    const folder = tempFolder(), brown = sharp({ create: { width: 64, height: 64, channels: 3, background: "#8a6a50" } });
    const sent = await brown.toColourspace("cmyk").jpeg({ quality: 100 }).toBuffer();
    expect((await sharp(sent).metadata()).space).toBe("cmyk");
    const { id } = await accepted(sent, folder);
    const [r, g, b] = await sharp(path.join(folder, `${id}.jpg`)).resize(1, 1).raw().toBuffer();
    expect(deltaE00(labOf(r!, g!, b!), labOf(0x8a, 0x6a, 0x50))).toBeLessThan(6); // two profiles round on the way; inverted it would be tens
  });
  it("drops what is hidden behind the end of a JPEG", async () => {
    const folder = tempFolder(), jpeg = await drawn(120, 80).jpeg().toBuffer();
    const { id } = await accepted(Buffer.concat([jpeg, Buffer.from("<script>alert(1)</script>PK\x03\x04payload", "latin1")]), folder);
    for (const name of listed(folder)) {
      const kept = readFileSync(path.join(folder, name)).toString("latin1");
      expect(kept).not.toContain("<script>");
      expect(kept).not.toContain("PK\x03\x04");
    }
    expect(listed(folder).sort()).toEqual([`${id}-1600.jpg`, `${id}-320.jpg`, `${id}.jpg`]);
  });
  it("keeps the SHA-256 of the bytes as received, the time and the exposure", async () => {
    const sent = await phoneJpeg();
    const photo = await accepted(sent, tempFolder());
    expect(photo.sha256).toBe(sha256(sent));
    expect(photo.receivedBytes).toBe(sent.length);
    expect(photo.takenAt?.toISOString()).toBe("2026-03-14T15:09:26.000Z"); // no zone in the file: the clock on the display
    expect(photo.exposure).toEqual({ exposureSeconds: 0.02, fNumber: 1.8, iso: 125, flash: true });
  });
  it("makes copies of 1600 and 320 pixels on the long side, and none larger than the photo", async () => {
    const folder = tempFolder();
    const [large, small] = [await accepted(await drawn(2000, 1000).jpeg().toBuffer(), folder), await accepted(await drawn(300, 200).jpeg().toBuffer(), folder)];
    const size = async (name: string) => { const { width, height } = await sharp(path.join(folder, name)).metadata(); return [width, height]; };
    expect(await size(`${large.id}.jpg`)).toEqual([2000, 1000]);
    expect(await size(`${large.id}-1600.jpg`)).toEqual([1600, 800]);
    expect(await size(`${large.id}-320.jpg`)).toEqual([320, 160]);
    for (const ending of ["", "-1600", "-320"]) expect(await size(`${small.id}${ending}.jpg`)).toEqual([300, 200]);
  });
  it("takes grey, 16-bit and see-through pictures as well, on white", async () => {
    const folder = tempFolder();
    await accepted(await drawn(60, 40).greyscale().png().toBuffer(), folder);
    await accepted(await drawn(60, 40).toColourspace("rgb16").png().toBuffer(), folder);
    const clear = await sharp({ create: { width: 60, height: 40, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } }).png().toBuffer();
    const { id, measured } = await accepted(clear, folder);
    expect([...(await sharp(path.join(folder, `${id}-320.jpg`)).resize(1, 1).raw().toBuffer())]).toEqual([255, 255, 255]);
    expect(measured.colours).toEqual([{ hex: "#ffffff", share: 1 }]);
  });
  it("measures the colours and the quality of what it keeps", async () => {
    const { measured } = await accepted(await drawn(800, 600).png().toBuffer(), tempFolder());
    expect(measured.colours.map((c) => Math.round(100 * c.share))).toEqual([50, 50]);
    expect(remarkOn(measured.quality, { fills: true })).toContain("a drawing"); // which it is
  });
});

describe("receivePhoto: HEIC of a telephone", () => {
  it("stands upright once, though container and EXIF both say so, and keeps time with its zone", async () => {
    const folder = tempFolder();
    const answer = await receivePhoto(createReadStream(HEIC), { name: "IMG_0001.HEIC", type: "image/heic" }, folder);
    if (!answer.ok) throw new Error(answer.say);
    expect(answer.photo).toMatchObject({ width: 480, height: 640, exposure: { exposureSeconds: 0.02, fNumber: 1.8, iso: 125, flash: false } });
    expect(answer.photo.takenAt?.toISOString()).toBe("2026-03-14T13:09:26.000Z");
    expect(await sharp(path.join(folder, `${answer.photo.id}.jpg`)).metadata()).toMatchObject({ format: "jpeg", width: 480, height: 640 });
  });
});

describe("receivePhoto: names", () => {
  const NAMES: [string, string | null][] = [
    ["../../etc/x.jpg", "x.jpg"], ["C:\\fakepath\\rug.jpg", "rug.jpg"], ["a\0.jpg", "a.jpg"], ['x";\r\nSet-Cookie: a=b.jpg', 'x";Set-Cookie: a=b.jpg'],
    ["\u202egpj.exe", "gpj.exe"], ["CON", "CON"], ["-rf.jpg", "-rf.jpg"], [".htaccess", ".htaccess"], ["", null], ["\0\0", null], ["\ud800.jpg", ".jpg"], ["Teppich ä 🧶.jpg", "Teppich ä 🧶.jpg"],
  ];
  it.each(NAMES)("%j never reaches the disk and is shown as %j", async (name, shown) => {
    const folder = tempFolder(), { id, originalName } = await accepted(await drawn(60, 40).jpeg().toBuffer(), folder, name);
    expect(originalName).toBe(shown);
    expect(id).toMatch(/^[a-z0-9-]{20,}$/);
    for (const file of listed(folder)) expect(file).toMatch(/^[a-z0-9-]{20,}\.jpg$/);
  });
  it("shows at most 120 characters of a long name", async () => {
    const { originalName } = await accepted(await drawn(60, 40).jpeg().toBuffer(), tempFolder(), "ü".repeat(300) + ".jpg");
    expect(originalName).toBe("ü".repeat(120));
  });
});
