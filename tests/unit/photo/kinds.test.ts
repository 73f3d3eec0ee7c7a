import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import sharp from "sharp";
import { deltaE00, labOf } from "../../../lib/photo/colour";
import { remarkOn } from "../../../lib/photo/quality";
import { receivePhoto, type ReceivedPhoto } from "../../../lib/photo/server/receive";
import { gridHeic } from "../../heic-grid";
import { animatedPng, animatedWebp, drawn, inPieces, listed, tempFolder } from "./pictures";

const send = (data: Uint8Array, folder: string) => receivePhoto(inPieces(data), { name: "IMG_0001", type: "" }, folder);
async function taken(data: Uint8Array, folder: string): Promise<ReceivedPhoto> {
  const answer = await send(data, folder);
  if (!answer.ok) throw new Error(`refused: ${answer.code} ${answer.say}`);
  return answer.photo;
}
const kept = (folder: string) => listed(folder).map((name) => readFileSync(path.join(folder, name)).toString("latin1"));
const colourOf = async (file: string) => { const [r, g, b] = await sharp(file).resize(1, 1).raw().toBuffer(); return labOf(r!, g!, b!); };

/** A segment of a JPEG, put straight behind its start (ITU-T T.81, B.1.1.4). */
function withSegment(jpeg: Buffer, marker: number, body: Buffer): Buffer {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(2 + body.length, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}
const plain = (width: number, height: number, colour: string) => sharp({ create: { width, height, channels: 3, background: colour } });
const film = Buffer.from("\0\0\0\x18ftypmp42\0\0\0\0mp42isom\0\0\0\x10mdatfilmfilm", "latin1");

describe("receivePhoto: a photo that brings a film or further pictures", () => {
  it("keeps the still half of a JPEG with its film behind it, and nothing of the film", async () => {
    const folder = tempFolder(), still = await drawn(300, 200).jpeg().toBuffer();
    expect(await taken(Buffer.concat([still, film]), folder)).toMatchObject({ receivedType: "image/jpeg", width: 300, height: 200 });
    for (const file of kept(folder)) expect(file).not.toContain("mdat");
  });
  it("keeps the still half of a HEIC with its film in a box behind it", async () => {
    const folder = tempFolder(), head = Buffer.from("\0\0\0\0mpvd", "latin1");
    head.writeUInt32BE(8 + film.length, 0);
    expect(await taken(Buffer.concat([gridHeic(2, 1), head, film]), folder)).toMatchObject({ receivedType: "image/heic", width: 1280, height: 480 });
    for (const file of kept(folder)) expect(file).not.toContain("mdat");
  });
  it("keeps the first picture of a JPEG with a second one behind it, as its index says (CIPA DC-007)", async () => {
    const folder = tempFolder(), [first, second] = [await plain(300, 200, "#8a6a50").jpeg().toBuffer(), await plain(500, 500, "#2040c0").jpeg().toBuffer()];
    const { id, width, height } = await taken(Buffer.concat([withSegment(first, 0xe2, Buffer.from("MPF\0MM\0*\0\0\0\x08", "latin1")), second]), folder);
    expect([width, height]).toEqual([300, 200]);
    expect(deltaE00(await colourOf(path.join(folder, `${id}.jpg`)), labOf(0x8a, 0x6a, 0x50))).toBeLessThan(1);
  });
  it("keeps the main picture of a burst in one HEIC, though others stand before it", async () => {
    expect(await taken(gridHeic(2, 2, { areTilesPictures: true }), tempFolder())).toMatchObject({ width: 1280, height: 960 });
  });
  it("keeps the still picture of a sequence that has one", async () => {
    expect(await taken(gridHeic(2, 1, { brands: ["heic", "mif1", "hevc"] }), tempFolder())).toMatchObject({ width: 1280, height: 480 });
  });
  it.each([[["hevc", "msf1"]], [["msf1", "hevc", "iso8"]]])("refuses a sequence without a still picture (%s), and says which photo to choose", async (brands) => {
    const folder = tempFolder();
    expect(await send(gridHeic(2, 1, { brands }), folder)).toMatchObject({ ok: false, code: "unsupported", say: expect.stringMatching(/moving picture.*choose one of its photos/) });
    expect(listed(folder)).toEqual([]);
  });
  it("says of the moving half sent alone that the still one is wanted", async () => {
    expect(await send(film, tempFolder())).toMatchObject({ ok: false, say: expect.stringContaining("send the still half") });
  });
  it.each([["WebP", animatedWebp], ["PNG", async () => animatedPng(await drawn(40, 30).png().toBuffer())]])("asks for a single photo instead of an animated %s", async (_what, make) => {
    expect(await send(await make(), tempFolder())).toMatchObject({ ok: false, say: expect.stringContaining("send a single photo") });
  });
});

describe("receivePhoto: sizes of telephones", () => {
  it.each([["a panorama", 16_000, 3000], ["48 megapixels", 8064, 6048]])("takes %s", async (_what, width, height) => {
    const folder = tempFolder(), photo = await taken(await plain(width, height, "#806040").jpeg().toBuffer(), folder);
    expect([photo.width, photo.height]).toEqual([width, height]);
    const copy = await sharp(path.join(folder, `${photo.id}-1600.jpg`)).metadata();
    expect([copy.width, copy.height]).toEqual([1600, Math.round((1600 * height) / width)]);
  }, 60_000);
  it("takes a screenshot, and says that a photo of the rug itself is wanted", async () => {
    const bar = { input: await plain(1170, 240, "#204080").png().toBuffer(), top: 0, left: 0 };
    const screen = await plain(1170, 2532, "#f2f2f7").composite([bar]).ensureAlpha().png().toBuffer();
    const photo = await taken(screen, tempFolder());
    expect([photo.width, photo.height]).toEqual([1170, 2532]);
    expect(remarkOn(photo.measured.quality, { fills: true })).toContain("a picture of a screen");
  });
});

describe("receivePhoto: files that are two things at once", () => {
  const SCRIPT = "<script>alert(1)</script>", ZIP = "PK\x03\x04payload";
  const hidden = Buffer.from(SCRIPT + ZIP, "latin1");
  it.each<[string, () => Promise<Buffer>]>([
    ["a JPEG with a page in its comment", async () => withSegment(await drawn(120, 80).jpeg().toBuffer(), 0xfe, hidden)],
    ["a JPEG with a page in notes of a kind that nobody knows", async () => withSegment(await drawn(120, 80).jpeg().toBuffer(), 0xed, hidden)],
    ["a PNG with an archive behind it", async () => Buffer.concat([await drawn(120, 80).png().toBuffer(), hidden])],
    ["a WebP with an archive behind it", async () => Buffer.concat([await drawn(120, 80).webp().toBuffer(), hidden])],
    ["a HEIC with an archive behind it", () => Promise.resolve(Buffer.concat([gridHeic(1, 1), hidden]))],
  ])("keeps the picture of %s, and nothing else", async (_what, make) => {
    const folder = tempFolder(), data = await make();
    expect(data.includes(hidden)).toBe(true);
    await taken(data, folder);
    expect(listed(folder)).toHaveLength(3);
    for (const file of kept(folder)) {
      expect(file).not.toContain(SCRIPT);
      expect(file).not.toContain(ZIP);
    }
  });
  it.each([["a PDF", "%PDF-1.7\n"], ["a page", "<!doctype html>"], ["a GIF", "GIF89a"], ["an archive", ZIP]])("refuses %s with a JPEG behind its head", async (_what, head) => {
    const folder = tempFolder();
    expect(await send(Buffer.concat([Buffer.from(head, "latin1"), await drawn(120, 80).jpeg().toBuffer()]), folder)).toMatchObject({ ok: false, code: "unsupported" });
    expect(listed(folder)).toEqual([]);
  });
});
