import { randomUUID } from "node:crypto";
import { existsSync, readdirSync } from "node:fs";
import { Readable } from "node:stream";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { blurPhoto } from "../../../lib/enquiry/blur-photo";
import { documentFile } from "../../../lib/enquiry/document-file";
import { encloseDocument } from "../../../lib/enquiry/enclose-document";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { workOnLabel } from "../../../lib/enquiry/label-work";
import { makeDocument } from "../../../lib/enquiry/make-document";
import type { PlanMarks, SpotMarks } from "../../../lib/enquiry/mark-schema";
import { postFile } from "../../../lib/enquiry/post-file";
import { readDocument } from "../../../lib/enquiry/read-document";
import { readPhotoDesk } from "../../../lib/enquiry/read-photo-desk";
import { recordMeasurement } from "../../../lib/enquiry/record-measurement";
import { sortPost } from "../../../lib/enquiry/sort-post";
import { attachmentsOf } from "../../../lib/mail/enclosures";
import { readMessage } from "../../../lib/mail/incoming/read-message";
import { photoFile } from "../../../lib/enquiry/photo-file";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { deltaE00, labOf } from "../../../lib/photo/colour";
import { database } from "../../../lib/store/database";
import { photoFolder, photoPath } from "../../../lib/store/photo-files";
import { PHOTO_SIZES } from "../../../lib/store/photo-layout";
import { letter } from "./mail-files";
import { clientOf, CURIOUS, givePhoto, good, intake, later, NOW, PHOTO, staff, submitted, SYSTEM } from "./workshop";

const FACE = { left: 0.25, top: 0.25, width: 0.25, height: 0.25 };
/** Black and white squares of 20 pixels, 1600 × 1200: what is blurred shows as the loss of them. */
const squares = () => {
  const data = Buffer.alloc(1600 * 1200 * 3, 30);
  for (let i = 0; i < 1600 * 1200; i++) if ((Math.floor((i % 1600) / 20) + Math.floor(i / 1600 / 20)) % 2) data.fill(220, 3 * i, 3 * i + 3);
  return sharp(data, { raw: { width: 1600, height: 1200, channels: 3 } }).jpeg().toBuffer();
};

/** How much light and dark differ in a part of a picture, 0 to 255. */
async function contrast(file: string | Buffer, area: { left: number; top: number; width: number; height: number }): Promise<number> {
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

const BROWN = [170, 135, 95] as const, CREAM = [220, 210, 190] as const;
/** The left half cream, the right half brown, 800 × 600. */
const stained = () => {
  const data = Buffer.alloc(800 * 600 * 3);
  for (let i = 0; i < 800 * 600; i++) data.set(i % 800 < 400 ? CREAM : BROWN, 3 * i);
  return sharp(data, { raw: { width: 800, height: 600, channels: 3 } }).jpeg({ quality: 95 }).toBuffer();
};
const spotsAt = (y: number): SpotMarks => ({ untouched: { shape: "circle", x: 0.2, y, radius: 0.04 }, affected: { shape: "rectangle", x: 0.7, y: y - 0.05, width: 0.1, height: 0.1 } });
const planTo = (y: number): PlanMarks => ({
  corners: [{ x: 0.02, y: 0.02 }, { x: 0.98, y: 0.02 }, { x: 0.98, y }, { x: 0.02, y }], widthCm: 200, lengthCm: 300, damaged: [[{ x: 0.02, y: 0.02 }, { x: 0.98, y: 0.02 }, { x: 0.98, y: 0.08 }]], borderCm: 0, isSymmetric: false, chosen: "edge-off",
});
/** The lower edge of the picture, to its left. */
const BELOW = { left: 0.1, top: 0.9, width: 0.3, height: 0.1 };

async function withStain(kind = "trouble") {
  const enquiry = await submitted(CURIOUS);
  const ivo = await staff("reviewer", "Ivo Castellane");
  const { id: rugId } = await database().rug.findFirstOrThrow({ where: { enquiryId: enquiry.enquiryId } });
  const photo = good(await addPhoto(ivo, { kind, rugId }, Readable.from([await stained()]), PHOTO, NOW));
  const mark = async (marked: object, at = later(1)) => good(await recordMeasurement(ivo, { id: randomUUID(), photoId: photo.id, marked, replaces: null }, at)).id;
  const findings = (what: string) => database().finding.findMany({ where: { rugId, what } });
  return { ...enquiry, ivo, rugId, photo, mark, findings };
}
/** The first picture in a PDF, as it was embedded. */
function pictureIn(pdf: Buffer): Buffer {
  const from = pdf.indexOf(Buffer.from([0xff, 0xd8, 0xff]));
  return pdf.subarray(from, pdf.indexOf("endstream", from));
}
const word = (text: string) => ({ text, confidence: 0.9, unsure: false });
const readLabelAt = (photoId: string, crop: object, more: object = {}) =>
  database().labelReading.create({ data: { id: randomUUID(), photoId, text: "100% VISCOSE", words: [[word("100%"), word("VISCOSE")]], crop, degrees: 0, state: "read", ...more } });

export function blurring(): void {
  describe("blurPhoto, and what was drawn from the photo", () => {
    it("measures anew, in the blurred picture, what lies outside of it, and withdraws with a reason what lies inside", async () => {
      const { enquiryId, ivo, photo, mark, findings } = await withStain();
      const above = await mark({ kind: "spots", marks: spotsAt(0.3) });
      const below = await mark({ kind: "spots", marks: spotsAt(0.88) }, later(2));
      // What stands there must come from the picture, not from what was kept.
      const kept = await database().measurement.findUniqueOrThrow({ where: { id: above } });
      await database().measurement.update({ where: { id: above }, data: { result: { ...(kept.result as object), deltaE: 99 } } });
      const { photoId } = good(await blurPhoto(ivo, { photoId: photo.id, areas: [BELOW] }, later(3)));
      const { measurements } = good(await readPhotoDesk(ivo, { enquiryId, photoId }));
      expect(measurements).toMatchObject([
        { id: above, withdrawn: null, marks: spotsAt(0.3) },
        { id: below, withdrawn: { by: "Ivo Castellane", isMoved: false, why: "Part of the photo where it was measured was blurred for good." } },
      ]);
      const expected = deltaE00(labOf(...CREAM), labOf(...BROWN));
      const [stands] = measurements;
      expect(stands?.kind === "spots" && Math.abs(stands.result.deltaE - expected)).toBeLessThan(0.5);
      const [change, ...more] = await findings("colour-change");
      expect(more).toEqual([]);
      expect(Math.abs((change?.value as { deltaE: number }).deltaE - expected)).toBeLessThan(0.5);
      expect(change?.from).toBe(`photo:${photoId}`);
    });
    it("withdraws a plan with a corner in what was blurred, says so on what was made of it, and keeps one without", async () => {
      for (const [corner, isGone] of [[0.95, true], [0.85, false]] as const) {
        const { enquiryId, ivo, rugId, photo, mark, findings } = await withStain();
        const id = await mark({ kind: "plan", marks: planTo(corner) });
        const { documentId } = good(await makeDocument(ivo, { enquiryId, rugId, kind: "cut-down-plan", filled: {} }, later(2)));
        good(await blurPhoto(ivo, { photoId: photo.id, areas: [{ left: 0, top: 0.9, width: 0.05, height: 0.1 }] }, later(3)));
        const row = await database().measurement.findUniqueOrThrow({ where: { id } });
        expect(row.withdrawnAt !== null, `corner at ${corner}`).toBe(isGone);
        expect(await findings("cut-down")).toHaveLength(isGone ? 0 : 1);
        const { document } = good(await readDocument(ivo, { enquiryId, documentId }));
        expect([document.judgedSince, document.canMakeAnew], "it stops its letter").toEqual(isGone ? [later(3).toISOString(), false] : [null, true]);
        expect(document.altered?.why ?? null).toEqual(isGone ? expect.stringContaining("The plan it shows no longer counts") : null);
      }
    });
    it("forgets what was read of a label that is blurred, keeps one beside it, and what a client wrote of the rug in front of them", async () => {
      const { enquiryId, ivo, photo, findings } = await withStain("label");
      const under = { x: 0.2, y: 0.85, width: 0.2, height: 0.1 }, above = { x: 0.2, y: 0.1, width: 0.2, height: 0.1 };
      const settled = { state: "confirmed", answeredBy: ivo.staffId, answeredAt: NOW };
      await readLabelAt(photo.id, above, settled);
      const first = good(await blurPhoto(ivo, { photoId: photo.id, areas: [BELOW] }, later(1))).photoId;
      expect(await findings("label")).toHaveLength(1);
      await database().labelReading.update({ where: { photoId: first }, data: { crop: under } });
      const second = good(await blurPhoto(ivo, { photoId: first, areas: [BELOW] }, later(2))).photoId;
      expect(await findings("label")).toEqual([]);
      expect(await database().labelReading.findUniqueOrThrow({ where: { photoId: second } })).toMatchObject({ state: "withdrawn", text: "", words: [], corrected: null, answeredBy: null });
      expect(good(await readEnquiry(ivo, enquiryId, later(3))).rugs[0]?.photos.at(-1)?.label).toMatchObject({ state: "withdrawn", lines: [] });
      await database().labelReading.update({ where: { photoId: second }, data: { state: "corrected", text: "100% VISCOSE", corrected: "100% viscose", answeredBy: "client" } });
      const third = good(await blurPhoto(ivo, { photoId: second, areas: [BELOW] }, later(4))).photoId;
      expect(await database().labelReading.findUniqueOrThrow({ where: { photoId: third } })).toMatchObject({ state: "corrected", text: "", corrected: "100% viscose" });
      expect(await findings("label")).toMatchObject([{ strength: "label-typed" }]);
    });
    it("forgets what was agreed of a label before another part was framed where that is blurred, unless a client wrote it", async () => {
      const { ivo, photo, findings } = await withStain("label");
      const under = { x: 0.2, y: 0.85, width: 0.2, height: 0.1 }, above = { x: 0.2, y: 0.1, width: 0.2, height: 0.1 };
      const agreed = { state: "confirmed", text: "100% VISCOSE", corrected: null, words: [[word("100%"), word("VISCOSE")]], crop: under, degrees: 0, answeredBy: "client", answeredAt: NOW.toISOString() };
      await readLabelAt(photo.id, above, { text: "100% SILK", agreed: { ...agreed, state: "corrected", corrected: "100% wool" } });
      const first = good(await blurPhoto(ivo, { photoId: photo.id, areas: [BELOW] }, later(1))).photoId;
      expect(await database().labelReading.findUniqueOrThrow({ where: { photoId: first } })).toMatchObject({ state: "read", text: "100% SILK", agreed: { corrected: "100% wool", text: "", words: [] } });
      expect(await findings("label")).toMatchObject([{ strength: "label-typed" }]);
      await database().labelReading.update({ where: { photoId: first }, data: { agreed } });
      const second = good(await blurPhoto(ivo, { photoId: first, areas: [BELOW] }, later(2))).photoId;
      expect(await database().labelReading.findUniqueOrThrow({ where: { photoId: second } })).toMatchObject({ state: "read", text: "100% SILK", agreed: null });
      expect(await findings("label")).toEqual([]);
    });
    it("lets no reading of the old picture end in a row of the new one", async () => {
      const { ivo, photo } = await withStain("label");
      const { id: before } = await readLabelAt(photo.id, { x: 0, y: 0, width: 1, height: 1 }, { state: "reading", text: "", words: [] });
      const { photoId } = good(await blurPhoto(ivo, { photoId: photo.id, areas: [BELOW] }, later(1)));
      await workOnLabel(photoId);
      expect(await database().labelReading.findUnique({ where: { id: before } })).toBeNull();
      expect(await database().labelReading.findUniqueOrThrow({ where: { photoId } })).toMatchObject({ state: "unreadable" });
    });
    it("leaves no unblurred picture in a document that was made, enclosed or already sent, and says what was done", async () => {
      const { enquiry, ivo, rugId, photo } = await withPhoto();
      const { enquiryId } = enquiry;
      const { documentId } = good(await makeDocument(ivo, { enquiryId, rugId, kind: "condition-report", filled: {} }, later(1)));
      good(await encloseDocument(ivo, { documentId, isEnclosed: true }, later(1)));
      const { draft } = good(await readEnquiry(ivo, enquiryId, later(1)));
      const { letterId } = good(await approveReply(ivo, { enquiryId, number: draft?.number ?? 0, documents: [documentId] }, later(2)));
      const before = good(await documentFile(ivo, documentId, later(3)));
      expect(await contrast(pictureIn(before.bytes), FACE)).toBeGreaterThan(60);
      const was = (await database().document.findUniqueOrThrow({ where: { id: documentId } })).sha256;

      const { photoId } = good(await blurPhoto(ivo, { photoId: photo.id, areas: [FACE] }, later(3)));
      const inner = { left: 0.28, top: 0.28, width: 0.19, height: 0.19 };
      const client = await clientOf(enquiry, later(60));
      const [forStaff, forClient, [enclosed]] = [good(await documentFile(ivo, documentId, later(60))), good(await documentFile(client, documentId, later(60))), await attachmentsOf(letterId)];
      for (const bytes of [forStaff.bytes, forClient.bytes, enclosed?.bytes ?? Buffer.alloc(0)]) {
        expect(await contrast(pictureIn(bytes), inner)).toBeLessThan(4);
        expect(await contrast(pictureIn(bytes), { left: 0.6, top: 0.6, width: 0.3, height: 0.3 })).toBeGreaterThan(60);
      }
      const { document, content } = good(await readDocument(ivo, { enquiryId, documentId }));
      expect(content.blocks.filter((b) => b.kind === "photo").map((b) => b.photoId)).toContain(photoId);
      expect(JSON.stringify(content)).not.toContain(photo.id);
      expect(document).toMatchObject({ letters: 1, altered: { at: later(3).toISOString(), why: "A photo in it was blurred in part after it was made, and is blurred here too." } });
      const { detail } = await database().audit.findFirstOrThrow({ where: { enquiryId, action: "photo-blurred" } });
      expect(JSON.stringify(detail)).toContain(`${documentId} was ${was}`);
    });
    it("shows no unblurred picture where a document is made, or a spot measured, at the same moment", async () => {
      const { enquiry, ivo, rugId, photo } = await withPhoto();
      const made = (minutes: number) => makeDocument(ivo, { enquiryId: enquiry.enquiryId, rugId, kind: "condition-report", filled: { theirReference: String(minutes) } }, later(minutes));
      const measured = () => recordMeasurement(ivo, { id: randomUUID(), photoId: photo.id, marked: { kind: "spots", marks: spotsAt(0.35) }, replaces: null }, later(1));
      const [blurred] = await Promise.all([blurPhoto(ivo, { photoId: photo.id, areas: [FACE] }, later(1)), made(1), measured(), made(2)]);
      const last = blurred.ok ? blurred.value.photoId : good(await blurPhoto(ivo, { photoId: photo.id, areas: [FACE] }, later(3))).photoId;
      const documents = await database().document.findMany({ where: { rugId } });
      for (const { content, pdf } of documents) {
        expect(JSON.stringify(content)).toContain(last);
        expect(JSON.stringify(content)).not.toContain(photo.id);
        expect(await contrast(pictureIn(Buffer.from(pdf, "base64")), { left: 0.28, top: 0.28, width: 0.19, height: 0.19 })).toBeLessThan(4);
      }
      expect(await database().measurement.count({ where: { photoId: last, withdrawnAt: null } })).toBe(await database().measurement.count({ where: { photo: { rugId }, withdrawnAt: null } }));
    });
    it("takes the picture out of the message that brought it, and leaves its words", async () => {
      const [picture, other] = [await squares(), await stained()];
      const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: "Ana <ana-blur@example.org>", text: "It turned brown.", photos: [picture, other] })]), NOW));
      await sortPost(postId, NOW);
      const { enquiryId } = await database().post.findUniqueOrThrow({ where: { id: postId } });
      const ivo = await staff("reviewer", "Ivo Castellane");
      const [first] = await database().photo.findMany({ where: { rug: { enquiryId: enquiryId ?? "" } }, orderBy: { position: "asc" } });
      good(await blurPhoto(ivo, { photoId: first?.id ?? "", areas: [FACE] }, later(1)));
      const incoming = await readMessage(good(await postFile(ivo, postId)).bytes);
      const left = incoming.kind === "letter" ? incoming.message : null;
      expect(left?.pictures.map((p) => p.content.equals(other))).toEqual([true]);
      expect(left?.body.own).toContain("It turned brown.");
    });
  });
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
