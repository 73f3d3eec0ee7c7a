import { renameSync } from "node:fs";
import { Readable } from "node:stream";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { answerLabelReading } from "../../../lib/enquiry/answer-label-reading";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import type { Caller } from "../../../lib/enquiry/caller";
import { frameLabel } from "../../../lib/enquiry/frame-label";
import { judgeAnew } from "../../../lib/enquiry/judge-anew";
import { inForce } from "../../../lib/enquiry/label-view";
import { resumeLabels, workOnLabel } from "../../../lib/enquiry/label-work";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readDocumentForm } from "../../../lib/enquiry/read-document-form";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { knownOf, readIntake } from "../../../lib/enquiry/read-intake";
import { readPhotoDesk } from "../../../lib/enquiry/read-photo-desk";
import { readPhotoLabel } from "../../../lib/enquiry/read-photo-label";
import { saveIntake } from "../../../lib/enquiry/save-intake";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import type { DocumentKind } from "../../../lib/reply/documents/offered";
import { database, transact } from "../../../lib/store/database";
import { photoPath } from "../../../lib/store/photo-files";
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
/** What was read, once it is. */
async function read(caller: Caller, photoId: string) {
  good(await readPhotoLabel(caller, photoId));
  await workOnLabel(photoId);
  return good(await readPhotoLabel(caller, photoId));
}
/** The label at the right of bare cloth. */
async function beside(caller: Caller): Promise<string> {
  const random = seeded(3);
  const { data, width, height } = drawLabel(random, WORDS, TYPEFACES[6]!, conditionsOf(random, "clean"));
  const label = await sharp(data, { raw: { width, height, channels: 3 } }).png().toBuffer();
  const whole = sharp({ create: { width: 2 * width, height, channels: 3, background: "#8d8577" } }).composite([{ input: label, left: width, top: 0 }]);
  return good(await addPhoto(caller, { kind: "label" }, Readable.from([await whole.jpeg({ quality: 90 }).toBuffer()]), { name: "label.jpg", type: "image/jpeg" }, NOW)).id;
}
const LEFT = { x: 0.05, y: 0.1, width: 0.3, height: 0.8 };
const RIGHT = { x: 0.5, y: 0, width: 0.5, height: 1 };
const stored = (photoId: string) => database().labelReading.findUniqueOrThrow({ where: { photoId } });
const labelsOf = (enquiryId: string) => database().finding.findMany({ where: { rug: { enquiryId }, what: "label" }, select: { value: true, strength: true, from: true } });

/** An enquiry whose label staff have said is read rightly. */
async function settledBeside() {
  const caller = await intake(CURIOUS);
  const photoId = await beside(caller);
  await read(caller, photoId);
  const sent = good(await submitEnquiry(caller, ANA, later(1)));
  const ivo = await staff("reviewer", "Ivo Castellane");
  good(await answerLabelReading(ivo, { photoId, answer: "right" }, later(2)));
  return { sent, photoId, ivo, client: await clientOf(sent) };
}

export function onLabels(): void {
  describe("the label in a photo", () => {
    it.each([[90, 1], [180, 2], [270, 3]])("knows of a label that lies turned by %d degrees how to show it upright", async (degrees, quarters) => {
    const random = seeded(3);
    const { data, width, height } = drawLabel(random, WORDS, TYPEFACES[6]!, conditionsOf(random, "clean"));
    const turned = await sharp(data, { raw: { width, height, channels: 3 } }).rotate(degrees).jpeg({ quality: 90 }).toBuffer();
    const caller = await intake(CURIOUS);
    const { id } = good(await addPhoto(caller, { kind: "label" }, Readable.from([turned]), { name: "label.jpg", type: "image/jpeg" }, NOW));
    expect(await read(caller, id)).toMatchObject({ state: "read", text: expect.stringContaining("80% WOOL"), quarters });
  });
  it("is read once, marks the fibres, and is no finding until somebody says it is right", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      // Nobody waits for it.
      expect(good(await readPhotoLabel(caller, photoId))).toMatchObject({ state: "reading", text: "", by: null });
      const [first, second] = [await read(caller, photoId), await read(caller, photoId)];
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
      await read(caller, photoId);
      good(await answerLabelReading(caller, { photoId, answer: "right" }, later(1)));
      const { enquiryId } = good(await submitEnquiry(caller, ANA, later(2)));
      expect(await labelsOf(enquiryId)).toMatchObject([{ strength: "label-photo" }]);
    });
    it("corrected by a client stands as typed, by staff as seen; what staff settled a client cannot change; refused says nothing", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      await read(caller, photoId);
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
    it("is set against what was typed of it where the two differ, for the client and at the desk, and either can be taken", async () => {
      const caller = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "typed", labelText: "100% art silk" } });
      const photoId = await labelPhoto(caller);
      expect(await read(caller, photoId)).toMatchObject({ state: "read", told: "100% art silk" });
      expect(good(await readIntake(caller)).photos[0]?.label).toMatchObject({ told: "100% art silk" });
      const sent = good(await submitEnquiry(caller, ANA, later(1)));
      const [client, ivo] = [await clientOf(sent), await staff("reviewer", "Ivo Castellane")];
      const seen = async () => [good(await readClientPage(client, later(2))).rugs[0], good(await readEnquiry(ivo, sent.enquiryId, later(2))).rugs[0], { photos: [good(await readPhotoDesk(ivo, { enquiryId: sent.enquiryId, photoId })).photo] }].map((rug) => rug?.photos[0]?.label?.told);
      expect(await seen()).toEqual(["100% art silk", "100% art silk", "100% art silk"]);
      // Agreed to, what was read still is not what was typed.
      expect(good(await answerLabelReading(client, { photoId, answer: "right" }, later(2)))).toMatchObject({ state: "confirmed", told: "100% art silk" });
      expect(await seen()).toEqual(["100% art silk", "100% art silk", "100% art silk"]);
      const taken = good(await answerLabelReading(client, { photoId, answer: "told" }, later(3)));
      expect(taken).toMatchObject({ state: "corrected", text: "100% art silk", told: null });
      expect(taken.lines.flat().map((w) => [w.text, w.isFibre, w.goesOn])).toEqual([["100%", false, false], ["art", true, false], ["silk", true, true]]);
      expect(await seen()).toEqual([null, null, null]);
      expect(await database().audit.count({ where: { enquiryId: sent.enquiryId, action: "label-corrected" } })).toBe(1);
    });
    it("stops a letter by the typed words while its photo names other fibres, until somebody has said which are right or that they cannot tell", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const unsettled = async (labelText: string) => {
        const caller = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "typed", labelText } });
        const photoId = await labelPhoto(caller);
        await read(caller, photoId);
        const sent = good(await submitEnquiry(caller, ANA, later(1)));
        return { photoId, approve: async () => approveReply(ivo, { enquiryId: sent.enquiryId, number: 1, reason: "It goes as it is.", read: true }, later(4)) };
      };
      const silk = await unsettled("100% art silk");
      expect(await silk.approve()).toMatchObject({ ok: false, say: expect.stringMatching(/typed as “100% art silk”, and its photo reads “80% WOOL 20% VISCOSE”/) as string });
      good(await answerLabelReading(ivo, { photoId: silk.photoId, answer: "unsure" }, later(3)));
      good(await silk.approve());
      good(await (await unsettled("wool 80, viscose 20")).approve());
    });
    it("makes no document that quotes a label in dispute, says so beside its form, and makes it once it is settled", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const caller = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, sellerSaid: "art-silk", labelFound: "typed", labelText: "100% art silk" } });
      const photoId = await labelPhoto(caller);
      await read(caller, photoId);
      const { enquiryId } = good(await submitEnquiry(caller, ANA, later(1)));
      const rugId = good(await readEnquiry(ivo, enquiryId, later(2))).rugs[0]?.id ?? "";
      const make = (kind: DocumentKind) => makeDocument(ivo, { enquiryId, rugId, kind, filled: kind === "letter-to-seller" ? { sellerName: "Kestrel Floors" } : {} }, later(3));
      const form = async (kind: DocumentKind) => good(await readDocumentForm(ivo, { enquiryId, rugId, kind }, later(3))).unsettled;
      const says = expect.stringMatching(/typed as “100% art silk”, and its photo reads “80% WOOL 20% VISCOSE”\. Say first which words are right/) as string;
      for (const kind of ["condition-report", "letter-to-seller"] as const) {
        expect(await make(kind)).toMatchObject({ ok: false, say: says });
        expect(await form(kind)).toEqual({ photoId, says });
      }
      good(await answerLabelReading(ivo, { photoId, answer: "unsure" }, later(3)));
      for (const kind of ["condition-report", "letter-to-seller"] as const) {
        expect(await form(kind)).toBeNull();
        good(await make(kind));
      }
    });
    it("is not set against words that say the same, and those of an enquiry in which nothing was typed cannot be taken", async () => {
      const same = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "typed", labelText: "wool 80, viscose 20" } });
      expect(await read(same, await labelPhoto(same))).toMatchObject({ state: "read", told: null });
      const none = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "none", labelText: "" } });
      const photoId = await labelPhoto(none);
      expect(await read(none, photoId)).toMatchObject({ told: null });
      expect(await answerLabelReading(none, { photoId, answer: "told" }, NOW)).toMatchObject({ code: "changed-meanwhile" });
    });
    it("is told in the letter beside what was typed where it says the same, whether it was read before the enquiry was sent or after, and is no finding by that", async () => {
      const typed = { ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "typed" as const, labelText: "wool 80, viscose 20" } };
      const ivo = await staff("reviewer", "Ivo Castellane");
      const draftOf = async (enquiryId: string) => good(await readEnquiry(ivo, enquiryId, later(9))).draft?.text;
      const reportOf = async (enquiryId: string) => {
        const { id: rugId } = await database().rug.findFirstOrThrow({ where: { enquiryId } });
        const { documentId } = good(await makeDocument(ivo, { enquiryId, rugId, kind: "condition-report", filled: {} }, later(9)));
        return JSON.stringify((await database().document.findUniqueOrThrow({ where: { id: documentId } })).content);
      };
      for (const isReadFirst of [true, false]) {
        const caller = await intake(typed);
        const photoId = await labelPhoto(caller);
        if (isReadFirst) await read(caller, photoId);
        const sent = good(await submitEnquiry(caller, ANA, later(1)));
        if (!isReadFirst) {
          expect(await draftOf(sent.enquiryId)).toContain("the label as you typed it (");
          await read(await clientOf(sent), photoId);
        }
        expect(await draftOf(sent.enquiryId)).toContain("the label as you typed it and as your photo shows it (");
        expect(await reportOf(sent.enquiryId)).toContain("as it was written down for us and as a photo shows it, says “wool 80, viscose 20”");
        expect(await labelsOf(sent.enquiryId)).toMatchObject([{ strength: "label-typed" }]);
        good(await answerLabelReading(ivo, { photoId, answer: "unsure" }, later(3)));
        expect(await draftOf(sent.enquiryId)).toContain("the label as you typed it (");
        expect(await reportOf(sent.enquiryId)).toContain("as it was written down for us, says “wool 80, viscose 20”");
      }
    });
    it("is not told to be shown by a photo whose words are mostly guessed, and so shown to nobody", async () => {
      const caller = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "typed", labelText: "wool 80, viscose 20" } });
      const photoId = await labelPhoto(caller);
      await read(caller, photoId);
      const word = (text: string, unsure: boolean) => ({ text, confidence: 0.2, unsure });
      await database().labelReading.update({ where: { photoId }, data: { words: [[word("80%", false), word("WOOL", false), word("ge", true), word("ag", true)], [word("20%", false), word("VISCOSE", false), word("ih", true), word("rn", true), word("mf", true)]] } });
      const { enquiryId } = good(await submitEnquiry(caller, ANA, later(1)));
      expect(good(await readEnquiry(await staff("reviewer", "Ivo Castellane"), enquiryId, later(2))).draft?.text).toContain("the label as you typed it (");
    });
    it("says that silk may be more than was read, until somebody has said what stands there", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      expect(await read(caller, photoId)).toMatchObject({ isSilkInDoubt: false });
      const word = (text: string, more: object) => ({ text, confidence: 0.9, unsure: false, ...more });
      await database().labelReading.update({ where: { photoId }, data: { text: "SILK PILE", words: [[word("SILK", { missed: true }), word("PILE", {})]] } });
      expect(good(await readPhotoLabel(caller, photoId))).toMatchObject({ state: "read", isSilkInDoubt: true });
      expect(good(await answerLabelReading(caller, { photoId, answer: "corrected", text: "art silk pile" }, later(1)))).toMatchObject({ isSilkInDoubt: false });
    });
    it("says that it holds no words where it holds none", async () => {
      const caller = await intake(CURIOUS);
      const photo = good(await givePhoto(caller, "label"));
      expect(await read(caller, photo.id)).toMatchObject({ state: "unreadable", text: "", lines: [] });
      expect(await answerLabelReading(caller, { photoId: photo.id, answer: "right" }, NOW)).toMatchObject({ code: "changed-meanwhile" });
    });
    it("holds no words beside those that were typed, which both sides are shown; what staff took down is not shown to the client as typed by them", async () => {
      const caller = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "typed", labelText: "pure new wool" } });
      const photo = good(await givePhoto(caller, "label"));
      expect(await read(caller, photo.id)).toMatchObject({ state: "unreadable", typed: "pure new wool", told: null });
      const sent = good(await submitEnquiry(caller, ANA, later(1)));
      const [client, ivo] = [await clientOf(sent), await staff("reviewer", "Ivo Castellane")];
      const label = async () => [good(await readClientPage(client, later(2))).rugs[0], good(await readEnquiry(ivo, sent.enquiryId, later(2))).rugs[0]].map((rug) => rug?.photos[0]?.label?.typed);
      expect(await label()).toEqual(["pure new wool", "pure new wool"]);
      await database().answer.updateMany({ where: { question: "labelText", rug: { enquiryId: sent.enquiryId } }, data: { from: ivo.staffId } });
      expect(await label()).toEqual([null, "pure new wool"]);
    });
    it("agreed on answers the question: no longer asked, quoted in letter, queue and documents as it was agreed, and nobody says that there is none", async () => {
      const caller = await intake({ ...CURIOUS, rug: { ...CURIOUS.rug, labelFound: "none", labelText: "" } });
      const photoId = await labelPhoto(caller);
      const known = async () => knownOf(good(await readIntake(caller)));
      await read(caller, photoId);
      expect(await known()).toEqual([]);
      good(await saveIntake(caller, { rug: {} }, ["rug.labelFound"]));
      good(await answerLabelReading(caller, { photoId, answer: "right" }, later(1)));
      expect(await known()).toEqual(["label"]);
      good(await saveIntake(caller, { rug: { labelFound: "none" } }, []));
      const sent = good(await submitEnquiry(caller, ANA, later(2)));
      const found = await database().finding.findMany({ where: { rug: { enquiryId: sent.enquiryId }, what: { in: ["label", "labelFound"] } } });
      expect(found.map((f) => f.what)).toEqual(["label"]);
      const ivo = await staff("reviewer", "Ivo Castellane");
      const view = async () => good(await readEnquiry(ivo, sent.enquiryId, later(3)));
      const before = await view();
      expect(before.sentence).toMatch(/^Label 80% WOOL 20% VISCOSE/);
      expect(before.rugs[0]?.assessment?.nextQuestions.map((q) => q.id)).not.toContain("label");
      good(await answerLabelReading(ivo, { photoId, answer: "corrected", text: "100% viscose" }, later(4)));
      const after = await view();
      expect(after.sentence).toMatch(/^Label 100% viscose/);
      expect(after.draft?.text).toContain("“100% viscose”");
    });
    it("can be left open by who cannot tell: that is no finding, and staff may still settle it", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      await read(caller, photoId);
      const sent = good(await submitEnquiry(caller, ANA, later(1)));
      const client = await clientOf(sent);
      expect(good(await answerLabelReading(client, { photoId, answer: "unsure" }, later(2)))).toMatchObject({ state: "unsure", by: "client", text: "80% WOOL\n20% VISCOSE" });
      expect(await labelsOf(sent.enquiryId)).toEqual([]);
      const ivo = await staff("reviewer", "Ivo Castellane");
      expect(good(await answerLabelReading(ivo, { photoId, answer: "right" }, later(3)))).toMatchObject({ state: "confirmed", by: "staff" });
      expect(await labelsOf(sent.enquiryId)).toMatchObject([{ strength: "label-photo" }]);
    });
    it("can be written down while it is being read, and the reading that ends later changes nothing", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      good(await readPhotoLabel(caller, photoId));
      good(await answerLabelReading(caller, { photoId, answer: "corrected", text: "100% wool" }, later(1)));
      await workOnLabel(photoId);
      expect(good(await readPhotoLabel(caller, photoId))).toMatchObject({ state: "corrected", text: "100% wool" });
    });
    it("is read on where the server ended meanwhile", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      await database().labelReading.create({ data: { id: "left", photoId, text: "", words: [], crop: { x: 0, y: 0, width: 1, height: 1 }, degrees: 0, state: "reading" } });
      await resumeLabels();
      expect(await stored(photoId)).toMatchObject({ state: "read", text: "80% WOOL\n20% VISCOSE" });
    });
    it("says that the reader failed where the picture is gone, and can be asked again by a frame", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await labelPhoto(caller);
      const full = photoPath(photoId, "full");
      renameSync(full, `${full}.away`);
      expect(await read(caller, photoId)).toMatchObject({ state: "failed", text: "" });
      renameSync(`${full}.away`, full);
      good(await frameLabel(caller, { photoId, frame: { x: 0, y: 0, width: 1, height: 0.99 } }, later(1)));
      expect(await read(caller, photoId)).toMatchObject({ state: "read", text: "80% WOOL\n20% VISCOSE" });
    });
    it("is read within the frame that a person draws, and what was agreed on counts until somebody agrees to the new reading", async () => {
      const caller = await intake(CURIOUS);
      const photoId = await beside(caller);
      await read(caller, photoId);
      const sent = good(await submitEnquiry(caller, ANA, later(1)));
      const client = await clientOf(sent);
      good(await answerLabelReading(client, { photoId, answer: "corrected", text: "100% silk" }, later(2)));
      const silk = [{ strength: "label-typed", from: "client", value: { says: "silk", text: "100% silk" } }];
      expect(await labelsOf(sent.enquiryId)).toMatchObject(silk);
      expect(good(await frameLabel(client, { photoId, frame: RIGHT }, later(3)))).toMatchObject({ state: "reading", crop: RIGHT, by: "client", agreed: { text: "100% silk", by: "client", state: "corrected" } });
      expect(await labelsOf(sent.enquiryId)).toMatchObject(silk);
      const framed = await read(client, photoId);
      expect(framed).toMatchObject({ state: "read", text: "80% WOOL\n20% VISCOSE", agreed: { text: "100% silk" } });
      expect(inForce(framed)).toMatchObject({ state: "corrected", text: "100% silk", agreed: null });
      expect(framed.crop.x).toBeGreaterThanOrEqual(RIGHT.x);
      expect(await labelsOf(sent.enquiryId)).toMatchObject(silk);
      expect(await database().audit.count({ where: { enquiryId: sent.enquiryId, action: "label-framed" } })).toBe(1);
      // Judged anew for whatever reason, it is judged by the words agreed on.
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { id: rugId } = await database().rug.findFirstOrThrow({ where: { enquiryId: sent.enquiryId } });
      await transact((tx) => judgeAnew(tx, rugId, later(4)));
      expect(await labelsOf(sent.enquiryId)).toMatchObject(silk);
      good(await answerLabelReading(ivo, { photoId, answer: "right" }, later(5)));
      expect(await labelsOf(sent.enquiryId)).toMatchObject([{ strength: "label-photo", from: ivo.staffId, value: { says: "wool-viscose" } }]);
      expect(await stored(photoId)).toMatchObject({ state: "confirmed", agreed: null });
      // What staff have settled a client frames no more.
      expect(await frameLabel(client, { photoId, frame: RIGHT }, later(6))).toMatchObject({ code: "changed-meanwhile" });
    });
    it("framed anew by staff keeps what they agreed on from a client, through frames on frames, and is put back as it was", async () => {
      const { sent, client, ivo, photoId } = await settledBeside();
      const before = await stored(photoId);
      const assessments = () => database().assessment.count({ where: { rug: { enquiryId: sent.enquiryId } } });
      const judged = await assessments();
      for (const [n, frame] of [RIGHT, LEFT].entries()) good(await frameLabel(ivo, { photoId, frame }, later(4 + n)));
      expect(await read(ivo, photoId)).toMatchObject({ state: "unreadable", by: "staff", agreed: { text: "80% WOOL\n20% VISCOSE", by: "staff" } });
      for (const answer of ["kept", "no-label", "right"] as const) expect(await answerLabelReading(client, { photoId, answer }, later(6))).toMatchObject({ code: "changed-meanwhile" });
      expect(await frameLabel(client, { photoId, frame: RIGHT }, later(6))).toMatchObject({ code: "changed-meanwhile" });
      // Who cannot tell what stands in the new frame says nothing of the words agreed on.
      good(await answerLabelReading(ivo, { photoId, answer: "unsure" }, later(7)));
      const unsure = await database().finding.findMany({ where: { rug: { enquiryId: sent.enquiryId }, what: "label" } });
      expect(unsure).toMatchObject([{ from: ivo.staffId, value: { says: "wool-viscose" } }]);
      const judgedUnsure = await assessments();
      expect(good(await answerLabelReading(ivo, { photoId, answer: "kept" }, later(8)))).toMatchObject({ state: "confirmed", text: "80% WOOL\n20% VISCOSE", agreed: null });
      const { id: _before, ...asBefore } = before;
      expect(await stored(photoId)).toMatchObject(asBefore);
      expect([judgedUnsure, await assessments()]).toEqual([judged + 1, judged + 1]);
      expect(await database().audit.count({ where: { enquiryId: sent.enquiryId, action: "label-kept" } })).toBe(1);
      expect(await answerLabelReading(ivo, { photoId, answer: "kept" }, later(9))).toMatchObject({ code: "changed-meanwhile" });
    });
    it.each([["no-label", []], ["corrected", [{ value: { says: "cotton" } }]]] as const)("framed anew by staff, answered %s, counts as answered and no longer as agreed before", async (answer, labels) => {
      const { sent, ivo, photoId } = await settledBeside();
      good(await frameLabel(ivo, { photoId, frame: RIGHT }, later(4)));
      await workOnLabel(photoId);
      good(await answerLabelReading(ivo, { photoId, answer, ...(answer === "corrected" ? { text: "100% cotton" } : {}) }, later(5)));
      expect(await labelsOf(sent.enquiryId)).toMatchObject(labels);
      expect(await stored(photoId)).toMatchObject({ agreed: null });
    });
    it("kept while the new frame is being read, is not changed by that reading when it ends", async () => {
      const { ivo, photoId } = await settledBeside();
      good(await frameLabel(ivo, { photoId, frame: LEFT }, later(4)));
      good(await answerLabelReading(ivo, { photoId, answer: "kept" }, later(5)));
      await workOnLabel(photoId);
      expect(await stored(photoId)).toMatchObject({ state: "confirmed", text: "80% WOOL\n20% VISCOSE" });
    });
    it("is framed by staff in a photo of anything, by a client only in one of the label; a frame is inside the picture and not too small", async () => {
      const caller = await intake(CURIOUS);
      const photo = good(await givePhoto(caller, "whole"));
      const sent = good(await submitEnquiry(caller, ANA, later(1)));
      const [client, ivo] = [await clientOf(sent), await staff("reviewer", "Ivo Castellane")];
      expect(await frameLabel(client, { photoId: photo.id, frame: RIGHT }, later(2))).toMatchObject({ code: "invalid" });
      for (const frame of [{ ...RIGHT, x: 0.6 }, { ...RIGHT, width: 0.009 }, { ...RIGHT, y: Number.NaN }]) expect(await frameLabel(ivo, { photoId: photo.id, frame }, later(2))).toMatchObject({ code: "invalid" });
      expect(good(await frameLabel(ivo, { photoId: photo.id, frame: RIGHT }, later(3)))).toMatchObject({ state: "reading" });
      await workOnLabel(photo.id);
      expect(await frameLabel(await intake(CURIOUS), { photoId: photo.id, frame: RIGHT }, later(4))).toMatchObject({ code: "not-found" });
    });
    it("is framed by one client twenty times an hour, no more", async () => {
      const caller = await intake(CURIOUS);
      const photo = good(await givePhoto(caller, "label"));
      const frame = (n: number) => frameLabel(caller, { photoId: photo.id, frame: RIGHT }, later(n / 60));
      for (let n = 0; n < 20; n++) good(await frame(n));
      expect(await frame(20)).toMatchObject({ code: "too-many" });
      await workOnLabel(photo.id);
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
