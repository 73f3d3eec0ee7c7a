import { Readable } from "node:stream";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { answerLabelReading } from "../../../lib/enquiry/answer-label-reading";
import type { Caller } from "../../../lib/enquiry/caller";
import { readPhotoLabel } from "../../../lib/enquiry/read-photo-label";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import { database } from "../../../lib/store/database";
import { seeded } from "../../../prisma/demo/canvas";
import { conditionsOf } from "../../labels/conditions";
import { drawLabel } from "../../labels/draw";
import { TYPEFACES } from "../../labels/typefaces";
import { ANA, clientOf, CURIOUS, good, givePhoto, intake, later, NOW, staff } from "./workshop";

const WORDS = { language: "en", lines: ["80% WOOL", "20% VISCOSE"], says: [] } as const;
async function labelPhoto(caller: Caller): Promise<string> {
  const random = seeded(3);
  const { data, width, height } = drawLabel(random, WORDS, TYPEFACES[6]!, conditionsOf(random, "clean"));
  const body = Readable.from([await sharp(data, { raw: { width, height, channels: 3 } }).jpeg({ quality: 90 }).toBuffer()]);
  return good(await addPhoto(caller, { kind: "label" }, body, { name: "label.jpg", type: "image/jpeg" }, NOW)).id;
}
const labelsOf = (enquiryId: string) => database().finding.findMany({ where: { rug: { enquiryId }, what: "label" }, select: { value: true, strength: true, from: true } });

export function onLabels(): void {
  describe("the label in a photo", () => {
    it("is read once, marks the fibres, and is no finding until somebody says it is right", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      const [first, second] = [good(await readPhotoLabel(caller, photoId)), good(await readPhotoLabel(caller, photoId))];
      expect(first).toMatchObject({ state: "read", text: "80% WOOL\n20% VISCOSE" });
      expect(first.lines.flat().filter((w) => w.isFibre).map((w) => w.text)).toEqual(["WOOL", "VISCOSE"]);
      expect(second).toEqual(first);
      expect(await database().labelReading.count({ where: { photoId } })).toBe(1);
      const sent = good(await submitEnquiry(caller, ANA, later(1)));
      expect(await labelsOf(sent.enquiryId)).toEqual([]);

      const client = await clientOf(sent);
      expect(good(await answerLabelReading(client, { photoId, answer: "right" }, later(2)))).toMatchObject({ state: "confirmed" });
      expect(await labelsOf(sent.enquiryId)).toMatchObject([{ strength: "label-photo", from: "client", value: { says: "wool-viscose" } }]);
      expect(await database().audit.count({ where: { enquiryId: sent.enquiryId, action: "label-confirmed" } })).toBe(1);
    });
    it("confirmed before the enquiry is sent counts from the first assessment on", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      good(await readPhotoLabel(caller, photoId));
      good(await answerLabelReading(caller, { photoId, answer: "right" }, later(1)));
      const { enquiryId } = good(await submitEnquiry(caller, ANA, later(2)));
      expect(await labelsOf(enquiryId)).toMatchObject([{ strength: "label-photo" }]);
    });
    it("corrected by a client stands as typed, by staff as seen; what staff settled a client cannot change; refused says nothing", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      good(await readPhotoLabel(caller, photoId));
      const sent = good(await submitEnquiry(caller, ANA, later(1)));
      const client = await clientOf(sent);
      good(await answerLabelReading(client, { photoId, answer: "corrected", text: "100% silk" }, later(2)));
      expect(await labelsOf(sent.enquiryId)).toMatchObject([{ strength: "label-typed", value: { says: "silk" } }]);
      const ivo = await staff("reviewer", "Ivo Castellane");
      good(await answerLabelReading(ivo, { photoId, answer: "corrected", text: "100% viscose" }, later(3)));
      expect(await labelsOf(sent.enquiryId)).toMatchObject([{ strength: "label-photo", value: { says: "viscose" }, from: ivo.staffId }]);
      expect(await answerLabelReading(client, { photoId, answer: "right" }, later(4))).toMatchObject({ code: "changed-meanwhile" });
      good(await answerLabelReading(ivo, { photoId, answer: "no-label" }, later(5)));
      expect(await labelsOf(sent.enquiryId)).toEqual([]);
    });
    it("says that it holds no words where it holds none", async () => {
      const caller = await intake(CURIOUS);
      const photo = good(await givePhoto(caller, "label"));
      expect(good(await readPhotoLabel(caller, photo.id))).toMatchObject({ state: "unreadable", text: "" });
      expect(await answerLabelReading(caller, { photoId: photo.id, answer: "right" }, NOW)).toMatchObject({ code: "changed-meanwhile" });
    });
    it("is nobody else's, and only a photo of a label is read", async () => {
      const [caller, stranger] = [await intake(CURIOUS), await intake(CURIOUS)];
      const photo = good(await givePhoto(caller, "whole"));
      expect(await readPhotoLabel(stranger, photo.id)).toMatchObject({ code: "not-found" });
      expect(await answerLabelReading(stranger, { photoId: photo.id, answer: "right" }, NOW)).toMatchObject({ code: "not-found" });
      expect(await readPhotoLabel({ kind: "public", addressHash: null }, photo.id)).toMatchObject({ ok: false });
      expect(await readPhotoLabel(caller, photo.id)).toMatchObject({ code: "invalid" });
    });
    it("refuses an empty correction and one longer than a label", async () => {
      const caller = await intake(CURIOUS);
      const photo = good(await givePhoto(caller, "label"));
      for (const text of ["  ", "x".repeat(2_001)]) expect(await answerLabelReading(caller, { photoId: photo.id, answer: "corrected", text }, NOW)).toMatchObject({ code: "invalid" });
    });
  });
}
