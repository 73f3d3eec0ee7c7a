import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import sharp, { type Sharp } from "sharp";
import { codedPicture, withoutNotes } from "../../../lib/photo/server/coded-picture";
import { receivePhoto } from "../../../lib/photo/server/receive";
import { seeded } from "../../../prisma/demo/canvas";
import { drawn, inPieces, listed, phoneJpeg, tempFolder } from "./pictures";

/** A segment of a JPEG, put straight behind its start (ITU-T T.81, B.1.1.4). */
const segment = (marker: number, body: Buffer | string): Buffer => {
  const bytes = Buffer.from(body), head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(2 + bytes.length, 2);
  return Buffer.concat([head, bytes]);
};
const behindStart = (jpeg: Buffer, ...parts: Buffer[]) => Buffer.concat([jpeg.subarray(0, 2), ...parts, jpeg.subarray(2)]);
const kept = async (data: Buffer) => {
  const file = path.join(tempFolder(), "sent.jpg");
  writeFileSync(file, data);
  return codedPicture(file);
};
const pixels = (picture: Buffer | Sharp) => (Buffer.isBuffer(picture) ? sharp(picture) : picture).raw().toBuffer();

const CAMERAS: [string, () => Promise<Buffer>][] = [
  ["as phones write them", () => drawn(320, 240).withExif({ IFD0: { Make: "Example" } }).jpeg({ quality: 92 }).toBuffer()],
  ["without thinned colours", () => drawn(320, 240).jpeg({ chromaSubsampling: "4:4:4" }).toBuffer()],
  ["in passes", () => drawn(320, 240).jpeg({ progressive: true }).toBuffer()],
  ["with codes of their own", () => drawn(320, 240).jpeg({ mozjpeg: true }).toBuffer()],
  ["in grey", () => drawn(320, 240).greyscale().jpeg().toBuffer()],
  ["with a profile that says sRGB", () => drawn(320, 240).withIccProfile("srgb").jpeg().toBuffer()],
];

describe("codedPicture", () => {
  it.each(CAMERAS)("keeps JPEGs %s bit by bit: the library decodes the same pixels of both", async (_what, make) => {
    const sent = await make(), bare = await kept(sent);
    if (!bare) throw new Error("coded anew");
    expect((await pixels(bare)).equals(await pixels(sent))).toBe(true);
    const { exif, xmp, iptc, icc } = await sharp(bare).metadata();
    expect({ exif, xmp, iptc, icc }).toEqual({ exif: undefined, xmp: undefined, iptc: undefined, icc: undefined });
  });
  it("leaves out every note, in whatever segment, and what stands behind the end", async () => {
    const jpeg = await drawn(120, 80).jpeg().toBuffer(), bare = await kept(jpeg);
    const notes = [0xe1, 0xe2, 0xe5, 0xed, 0xef, 0xfe].map((marker) => segment(marker, `secret ${marker}`));
    const told = await kept(Buffer.concat([behindStart(jpeg, ...notes), Buffer.from("secret behind")]));
    expect(told?.equals(bare ?? Buffer.alloc(0))).toBe(true);
    expect(told?.includes("secret")).toBe(false);
  });
  it.each<[string, () => Promise<Buffer>]>([
    ["lies on its side", phoneJpeg],
    ["has other colours than sRGB", () => drawn(120, 80).withIccProfile("p3").jpeg().toBuffer()],
    ["has a profile nobody can read", async () => behindStart(await drawn(120, 80).jpeg().toBuffer(), segment(0xe2, Buffer.concat([Buffer.from("ICC_PROFILE\0\x01\x01", "latin1"), Buffer.alloc(200, 1)])))],
    ["is made for print", () => drawn(120, 80).toColourspace("cmyk").jpeg().toBuffer()],
    ["says that its colours are not those of JFIF", async () => behindStart(await drawn(120, 80).jpeg().toBuffer(), segment(0xee, Buffer.from("Adobe\0d\0\0\0\0\0", "latin1")))],
  ])("leaves to be coded anew what %s", async (_what, make) => {
    expect(await kept(await make())).toBeNull();
  });
});

describe("withoutNotes", () => {
  const jpeg = () => drawn(120, 80).jpeg().toBuffer();
  it.each<[string, (whole: Buffer) => Buffer]>([
    ["is cut short in a head", (j) => j.subarray(0, 100)],
    ["has no end", (j) => j.subarray(0, -2)],
    ["has a byte between two segments", (j) => behindStart(j, Buffer.from("x"))],
    ["has an unknown segment", (j) => behindStart(j, segment(0xf0, "hello"))],
    ["has text in a table of steps", (j) => behindStart(j, segment(0xdb, "hello"))],
    ["has text behind a table of codes", (j) => behindStart(j, segment(0xc4, Buffer.concat([Buffer.alloc(17), Buffer.from("hello")])))],
    ["has text behind a restart interval", (j) => behindStart(j, segment(0xdd, "hello"))],
    ["has two frames", (j) => behindStart(j, segment(0xc0, Buffer.from([8, 0, 9, 0, 9, 1, 1, 0x11, 0])))],
    ["has more segments than any camera writes", (j) => behindStart(j, ...Array.from({ length: 300 }, () => segment(0xdd, Buffer.alloc(2))))],
    ["promises a segment longer than the file", (j) => behindStart(j, Buffer.from([0xff, 0xdb, 0xff, 0xff]))],
    ["has a segment of no length", (j) => behindStart(j, Buffer.from([0xff, 0xe1, 0, 0]))],
  ])("keeps nothing of one that %s", async (_what, spoil) => {
    const whole = await jpeg();
    expect(withoutNotes(whole)).not.toBeNull();
    expect(withoutNotes(spoil(whole))).toBeNull();
  });
  it("never reads beyond the end or keeps more than was sent, whatever bytes are changed", async () => {
    const whole = await jpeg(), random = seeded(5);
    for (let n = 0; n < 3_000; n++) {
      const changed = Buffer.from(whole);
      for (let k = 0; k < 4; k++) changed[Math.floor(random() * (n % 2 ? 700 : changed.length))] = Math.floor(random() * 256);
      const bare = withoutNotes(changed.subarray(0, Math.ceil(random() * changed.length)));
      if (bare) expect(bare.length).toBeLessThanOrEqual(changed.length + 20);
    }
  });
});

describe("receivePhoto, of a JPEG whose coded picture can be kept", () => {
  const send = (data: Buffer, folder: string) => receivePhoto(inPieces(data), { name: "a.jpg", type: "" }, folder);
  it("keeps the camera's own pixels in the full size", async () => {
    const folder = tempFolder(), sent = await drawn(2000, 1500).withExif({ IFD0: { Artist: "Somebody" } }).jpeg({ quality: 95 }).toBuffer();
    const answer = await send(sent, folder);
    if (!answer.ok) throw new Error(answer.say);
    const full = readFileSync(path.join(folder, `${answer.photo.id}.jpg`));
    expect((await pixels(full)).equals(await pixels(sent))).toBe(true);
    expect(full.includes("Somebody")).toBe(false);
  });
  it.each(["PK\x03\x04", "PK\x05\x06", "<script>", "<SVG ", "%PDF-", "<?php"])("codes anew a picture whose own bytes spell %j", async (mark) => {
    const folder = tempFolder(), sent = await spelling(mark);
    expect(sent.includes(Buffer.from(mark, "latin1"))).toBe(true);
    expect(withoutNotes(sent)).not.toBeNull();
    const answer = await send(sent, folder);
    if (!answer.ok) throw new Error(answer.say);
    for (const name of listed(folder)) expect(readFileSync(path.join(folder, name)).includes(Buffer.from(mark, "latin1"))).toBe(false);
  });
});

/** A sound JPEG with `mark` among the steps of a table that no colour uses (T.81, B.2.4.1): nothing but the words tells it from another. */
async function spelling(mark: string): Promise<Buffer> {
  const table = Buffer.alloc(65, 1);
  table[0] = 3;
  table.write(mark, 20, "latin1");
  return behindStart(await drawn(400, 300).jpeg().toBuffer(), segment(0xdb, table));
}
