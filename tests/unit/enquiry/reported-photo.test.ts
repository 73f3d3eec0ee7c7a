import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { asReported, turnedBack, type ReportedPhoto } from "../../../lib/enquiry/reported-photo";
import { forPrint } from "../../../lib/photo/server/for-print";

const folder = mkdtempSync(path.join(tmpdir(), "reported-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const label = (degrees: number, state = "confirmed") =>
  ({ id: "l", photoId: "p", text: "100% WOOL", corrected: null, words: [[{ text: "100%", confidence: 90, unsure: false }]], crop: { x: 0, y: 0, width: 1, height: 1 }, degrees, state, answeredBy: null, answeredAt: null, agreed: null, createdAt: new Date(0) });
const spots = { kind: "spots", withdrawnAt: null, at: new Date(0), from: "client", photoId: "p",
  marks: { untouched: { shape: "rectangle", x: 0.1, y: 0.2, width: 0.2, height: 0.1 }, affected: { shape: "circle", x: 0.5, y: 0.5, radius: 0.1 } },
  result: { deltaE: 7, lightness: 0, chroma: 0, hue: 0, uncertainty: 1, yellowness: 0, grade: 3, direction: "none", sureness: 1, says: "", ...Object.fromEntries(["untouched", "affected"].map((s) => [s, { mean: { L: 50, a: 0, b: 0 }, error: { L: 1, a: 1, b: 1 }, pixels: 100, clipped: 0 }])) } };
const photo = (rest: object): ReportedPhoto => ({ id: "p", kind: "label", width: 400, height: 200, takenAt: null, measured: { colours: [], quality: {} }, measurements: [], label: null, ...rest }) as unknown as ReportedPhoto;

describe("asReported", () => {
  it("turns a photo of a label as its words lie, and no other photo", () => {
    expect([0, 4, 91, 180, -178, 268].map((degrees) => asReported(photo({ label: label(degrees) })).quarters)).toEqual([0, 0, 1, 2, 2, 3]);
    expect(asReported(photo({ label: label(180, "read") })).quarters).toBe(2);
    for (const state of ["reading", "failed", "unreadable", "refused", "withdrawn"]) expect(asReported(photo({ label: label(180, state) })).quarters, state).toBe(0);
    expect(asReported(photo({ kind: "back", label: label(180) })).quarters).toBe(0);
    expect(asReported(photo({})).quarters).toBe(0);
  });
  it("outlines what was marked: a circle round whatever the shape of the photo", () => {
    const [untouched, affected] = asReported(photo({ measurements: [spots] })).marks;
    expect(untouched).toMatchObject({ what: "untouched", outline: [{ x: 0.1, y: 0.2 }, { x: expect.closeTo(0.3, 9) as number, y: 0.2 }, { x: expect.closeTo(0.3, 9) as number, y: expect.closeTo(0.3, 9) as number }, { x: 0.1, y: expect.closeTo(0.3, 9) as number }] });
    expect(affected).toMatchObject({ what: "affected", deltaE: 7 });
    // A tenth of the longer side of 400 by 200 pixels.
    for (const { x, y } of affected?.outline ?? []) expect(Math.hypot((x - 0.5) * 400, (y - 0.5) * 200)).toBeCloseTo(40, 6);
  });
});

describe("turnedBack", () => {
  // The picture itself is turned by the picture library: one red pixel of four by three is followed there.
  it.each([0, 1, 2, 3])("says where a point lies in the picture that is printed, by %i quarters", async (quarters) => {
    const [width, height, x, y] = [40, 30, 7, 22];
    const pixels = Buffer.alloc(width * height * 3);
    for (let dy = -2; dy <= 2; dy += 1) for (let dx = -2; dx <= 2; dx += 1) pixels[((y + dy) * width + x + dx) * 3] = 255;
    const file = path.join(folder, `${quarters}.png`);
    await sharp(pixels, { raw: { width, height, channels: 3 } }).png().toFile(file);
    const printed = await sharp((await forPrint(file, quarters)) ?? Buffer.alloc(0)).raw().toBuffer({ resolveWithObject: true });
    const at = turnedBack({ x: (x + 0.5) / width, y: (y + 0.5) / height }, quarters);
    const index = (Math.floor(at.y * printed.info.height) * printed.info.width + Math.floor(at.x * printed.info.width)) * printed.info.channels;
    expect([printed.info.width, printed.info.height]).toEqual(quarters % 2 === 1 ? [height, width] : [width, height]);
    expect(printed.data[index]).toBeGreaterThan(180);
  });
});
