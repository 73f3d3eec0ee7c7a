import { existsSync, readdirSync } from "node:fs";
import { Readable } from "node:stream";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { blurPhoto } from "../../../lib/enquiry/blur-photo";
import { photoFile } from "../../../lib/enquiry/photo-file";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { deltaE00, labOf } from "../../../lib/photo/colour";
import { database } from "../../../lib/store/database";
import { photoFolder, photoPath } from "../../../lib/store/photo-files";
import { PHOTO_SIZES } from "../../../lib/store/photo-layout";
import { clientOf, givePhoto, good, intake, later, NOW, PHOTO, staff, submitted } from "./workshop";

const FACE = { left: 0.25, top: 0.25, width: 0.25, height: 0.25 };
/** Black and white squares of 20 pixels, 1600 × 1200: what is blurred shows as the loss of them. */
const squares = () => {
  const data = Buffer.alloc(1600 * 1200 * 3, 30);
  for (let i = 0; i < 1600 * 1200; i++) if ((Math.floor((i % 1600) / 20) + Math.floor(i / 1600 / 20)) % 2) data.fill(220, 3 * i, 3 * i + 3);
  return sharp(data, { raw: { width: 1600, height: 1200, channels: 3 } }).jpeg().toBuffer();
};

/** How much light and dark differ in a part of a picture, 0 to 255. */
async function contrast(file: string, area: { left: number; top: number; width: number; height: number }): Promise<number> {
  const { width, height } = await sharp(file).metadata();
  const part = { left: Math.round(area.left * width), top: Math.round(area.top * height), width: Math.round(area.width * width), height: Math.round(area.height * height) };
  const { channels } = await sharp(await sharp(file).extract(part).png().toBuffer()).stats();
  return channels[0]?.stdev ?? NaN;
}

async function withPhoto() {
  const enquiry = await submitted();
  const ivo = await staff("reviewer", "Ivo Castellane");
  const { id: rugId } = await database().rug.findFirstOrThrow({ where: { enquiryId: enquiry.enquiryId } });
  const photo = good(await addPhoto(ivo, { kind: "whole", rugId }, Readable.from([await squares()]), PHOTO, NOW));
  return { enquiry, ivo, rugId, photo };
}

export function blurring(): void {
  describe("blurPhoto", () => {
    it("leaves nothing of the part in any size, all of the rest, and no file of the old picture", async () => {
      const { enquiry, ivo, photo } = await withPhoto();
      const { photoId } = good(await blurPhoto(ivo, { photoId: photo.id, areas: [FACE] }, later(1)));
      const inner = { left: 0.28, top: 0.28, width: 0.19, height: 0.19 };
      for (const size of PHOTO_SIZES) {
        expect(existsSync(photoPath(photo.id, size)), size).toBe(false);
        expect(await contrast(photoPath(photoId, size), inner), size).toBeLessThan(4);
        expect(await contrast(photoPath(photoId, size), { left: 0.6, top: 0.6, width: 0.3, height: 0.3 }), size).toBeGreaterThan(60);
      }
      const view = good(await readEnquiry(ivo, enquiry.enquiryId, later(2)));
      expect(view.rugs[0]?.photos.map((p) => p.id)).toEqual([photoId]);
      expect(view.history.filter((h) => h.what.startsWith("blurred"))).toMatchObject([{ who: "Ivo Castellane", what: "blurred part of a photo for good" }]);
      const client = await clientOf(enquiry, later(2));
      expect(good(await readClientPage(client, later(2))).rugs[0]?.photos.map((p) => p.id)).toEqual([photoId]);
      expect(await photoFile(client, photo.id, "full")).toMatchObject({ ok: false, code: "not-found" });
    });
    it("keeps the colour of what was there on average, and what was known of the photo", async () => {
      const { ivo, photo } = await withPhoto();
      const before = await database().photo.findUniqueOrThrow({ where: { id: photo.id } });
      const { photoId } = good(await blurPhoto(ivo, { photoId: photo.id, areas: [FACE] }, later(1)));
      const after = await database().photo.findUniqueOrThrow({ where: { id: photoId } });
      expect({ ...after, id: "", measured: null }).toEqual({ ...before, id: "", measured: null });
      expect(after.measured).not.toEqual(before.measured);
      const [r, g, b] = await sharp(await sharp(photoPath(photoId, "1600")).extract({ left: 500, top: 400, width: 200, height: 100 }).png().toBuffer()).resize(1, 1).raw().toBuffer();
      expect(deltaE00(labOf(r!, g!, b!), labOf(125, 125, 125))).toBeLessThan(3); // the mean of 30 and 220
    });
    it("is done once where two do it at the same time, and the other is told", async () => {
      const { ivo, photo } = await withPhoto();
      const files = readdirSync(photoFolder()).length;
      const both = await Promise.all([1, 2].map((n) => blurPhoto(ivo, { photoId: photo.id, areas: [FACE] }, later(n))));
      expect(both.map((r) => (r.ok ? "done" : r.code)).sort()).toEqual(["changed-meanwhile", "done"]);
      expect(readdirSync(photoFolder())).toHaveLength(files);
    });
    it("is not for trainees, clients or strangers, and not for a questionnaire that was not sent", async () => {
      const { enquiry, photo } = await withPhoto();
      const trainee = await staff("trainee", "Tamsin Vale");
      const client = await clientOf(enquiry);
      const asked = { photoId: photo.id, areas: [FACE] };
      expect(await blurPhoto(trainee, asked, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
      for (const caller of [client, { kind: "public", addressHash: null } as const]) expect(await blurPhoto(caller, asked, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(good(await readEnquiry(trainee, enquiry.enquiryId, NOW)).may.blur).toBe(false);
      const ivo = await staff("reviewer", "Ivo Castellane");
      const unsent = good(await givePhoto(await intake()));
      expect(await blurPhoto(ivo, { photoId: unsent.id, areas: [FACE] }, NOW)).toMatchObject({ ok: false, code: "not-found" });
      expect(existsSync(photoPath(photo.id, "full"))).toBe(true);
    });
    it.each([["no area", []], ["one that reaches out", [{ ...FACE, left: 0.9 }]], ["one of no width", [{ ...FACE, width: 0 }]], ["too many", Array.from({ length: 21 }, () => FACE)]])(
      "refuses %s and changes nothing", async (_what, areas) => {
        const { ivo, photo } = await withPhoto();
        expect(await blurPhoto(ivo, { photoId: photo.id, areas }, NOW)).toMatchObject({ ok: false, code: "invalid" });
        expect(existsSync(photoPath(photo.id, "full"))).toBe(true);
      });
  });
}
