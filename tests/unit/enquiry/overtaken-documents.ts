import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { assessRug } from "../../../lib/enquiry/assess-rug";
import type { Caller } from "../../../lib/enquiry/caller";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { encloseDocument } from "../../../lib/enquiry/enclose-document";
import { makeAnew } from "../../../lib/enquiry/make-anew";
import { readDocument } from "../../../lib/enquiry/read-document";
import { readDocumentForm } from "../../../lib/enquiry/read-document-form";
import { recordMeasurement } from "../../../lib/enquiry/record-measurement";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { withdrawMeasurement } from "../../../lib/enquiry/withdraw-measurement";
import type { DocumentKind } from "../../../lib/reply/documents/offered";
import { database } from "../../../lib/store/database";
import { KEPT_WHOLE } from "../../../lib/triage/finding";
import { aRug } from "./on-paper";
import { good, later, staff } from "./workshop";

const nell = () => staff("owner", "Nell Harrow");
const pia = () => staff("trainee", "Pia Wetherby");

/** A rug with a document that lies with its letter, made after two minutes. */
async function withPaper(kind: DocumentKind = "condition-report", filled: object = {}) {
  return lyingWith(await aRug(), kind, filled);
}
async function lyingWith(rug: Awaited<ReturnType<typeof aRug>>, kind: DocumentKind, filled: object = {}) {
  const documentId = await rug.make(kind, filled);
  good(await encloseDocument(await nell(), { documentId, isEnclosed: true }, later(3)));
  const { enquiryId, rugId, view } = rug;
  return {
    ...rug, documentId,
    /** What is known of the rug changes, and with it the report. */
    judged: async (minutes: number, answer = "satin") => good(await correctAnswer(await nell(), { rugId, step: "shine", values: { answer }, seen: false }, later(minutes))),
    approve: async (caller: Caller, minutes: number, asItIs: { documentId: string; judgedAt: string }[] = []) => {
      const { draft, documents } = await view();
      return approveReply(caller, { enquiryId, number: draft?.number ?? 0, documents: documents.filter((d) => d.isEnclosed).map((d) => d.id), asItIs }, later(minutes));
    },
    /** What the document with the letter says in all. */
    text: async () => {
      const [lies] = (await view()).documents.filter((d) => d.isEnclosed);
      return JSON.stringify(good(await readDocument(await nell(), { enquiryId, documentId: lies?.id ?? "" })).content);
    },
    shown: async () => (await view()).documents.filter((d) => d.isEnclosed).map(({ id, version, judgedSince }) => ({ id, version, judgedSince })),
    sent: () => database().letter.count({ where: { enquiryId, automatic: false } }),
    last: async (action: string) => (await database().audit.findFirst({ where: { enquiryId, action }, orderBy: { at: "desc" } }))?.detail,
  };
}

const ASIDE = [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 0.1 }, { x: 0, y: 0.1 }];
const MARKS = { corners: [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }], widthCm: 200, lengthCm: 300, damaged: [ASIDE], borderCm: 0, isSymmetric: false };
/** A rug whose plan proposes the same strip off both ends, drawn for its letter after two minutes. */
async function withPlan() {
  const rug = await aRug();
  const photoId = (await rug.view()).rugs[0]?.photos[0]?.id ?? "";
  let planId: string | null = null;
  const mark = async (minutes: number, marks: { chosen: string; widthCm?: number }) => {
    planId = good(await recordMeasurement(await nell(), { id: randomUUID(), photoId, marked: { kind: "plan", marks: { ...MARKS, ...marks } }, replaces: planId }, later(minutes))).id;
    return planId;
  };
  const first = await mark(1, { chosen: "equal-ends" });
  return { ...(await lyingWith(rug, "cut-down-plan")), mark, first };
}

/** A letter to the seller that quotes a label, which was corrected after five minutes. */
async function withQuotedLabel(labelWords: string) {
  const paper = await withPaper("letter-to-seller", { sellerName: "Harrowgate Rooms", clientAddress: "4 Quay Street", labelWords });
  good(await correctAnswer(await nell(), { rugId: paper.rugId, step: "label", values: { answer: "typed", labelText: "60% viscose, 40% cotton" }, seen: false }, later(5)));
  return paper;
}

/** A document that the judgement of its rug has overtaken. */
export function overtakenDocuments(): void {
  describe("a document with a letter whose rug was judged anew", () => {
    it("stops the letter until somebody says that it goes as it is, which is kept with its version and the judgement", async () => {
      const { approve, documentId, judged, last, sent, shown, view } = await withPaper();
      await judged(5);
      const judgedAt = later(5).toISOString();
      expect(await shown()).toEqual([{ id: documentId, version: 1, judgedSince: judgedAt }]);
      expect(await approve(await nell(), 6)).toMatchObject({
        ok: false, code: "changed-meanwhile", say: expect.stringMatching(/^“Condition report [\w-]+” was made before the rug was judged anew, and would say otherwise now\. Nothing was sent/) as string,
        fields: { asItIs: "Make it anew, leave it out, or say that it goes as it is." },
      });
      expect(await sent()).toBe(0);
      good(await approve(await nell(), 7, [{ documentId, judgedAt }]));
      expect(await last("reply-approved")).toMatchObject({ outdated: [{ documentId, document: "condition-report", version: 1, judgedAt }] });
      expect((await view()).history.at(-1)?.what).toBe("approved the reply, with what was made before the rug was judged anew: condition report, version 1");
    });
    it("stops it again where the rug was judged once more after somebody looked", async () => {
      const { approve, documentId, judged, sent } = await withPaper();
      await judged(5);
      await judged(6, "two-tone");
      expect(await approve(await nell(), 7, [{ documentId, judgedAt: later(5).toISOString() }])).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await sent()).toBe(0);
    });
    it("is made anew with what was filled in for it, and lies in the place of the old one, which stays", async () => {
      const { approve, documentId, enquiryId, judged, last, shown } = await withPaper("condition-report", { theirReference: "CL/118" });
      await judged(5);
      const { documentId: anew } = good(await makeAnew(await nell(), documentId, later(6)));
      expect(await shown()).toEqual([{ id: anew, version: 2, judgedSince: null }]);
      expect(JSON.stringify(good(await readDocument(await nell(), { enquiryId, documentId: anew })).content)).toContain("CL/118");
      expect(good(await readDocument(await nell(), { enquiryId, documentId })).document).toMatchObject({ version: 1, isEnclosed: false });
      expect(await last("document-enclosed")).toEqual({ documentId: anew, document: "condition-report", version: 2, insteadOf: documentId });
      const { letterId } = good(await approve(await nell(), 7));
      expect(await database().enclosure.findMany({ where: { letterId }, select: { documentId: true } })).toEqual([{ documentId: anew }]);
      expect(await last("reply-approved")).not.toHaveProperty("outdated");
    });
    it("goes where the new judgement says the same: nothing has overtaken it, even days later", async () => {
      const { approve, documentId, rugId, shown } = await withPaper();
      good(await assessRug(await nell(), rugId, later(3 * 24 * 60)));
      expect((await database().assessment.findMany({ where: { rugId }, orderBy: { createdAt: "asc" } })).map((a) => a.createdAt)).toEqual([later(0), later(3 * 24 * 60)]);
      expect(await shown()).toEqual([{ id: documentId, version: 1, judgedSince: null }]);
      good(await approve(await nell(), 3 * 24 * 60 + 1));
    });
    it("that would say the same stops no letter", async () => {
      const { approve, judged, shown } = await withPaper("letter-to-seller", { sellerName: "Harrowgate Rooms" });
      await judged(5);
      expect(await shown()).toMatchObject([{ judgedSince: null }]);
      good(await approve(await nell(), 6));
    });
    it("that no longer fits the rug cannot be made anew, and is left out", async () => {
      const { approve, documentId, enquiryId, rugId, shown, view } = await withPaper("care-card");
      good(await correctAnswer(await nell(), { rugId, step: "label", values: { answer: "typed", labelText: "100% wool" }, seen: false }, later(5)));
      expect(await makeAnew(await nell(), documentId, later(6))).toMatchObject({ ok: false, code: "invalid", say: expect.stringContaining("No care card is made for this rug") as string });
      expect(await shown()).toMatchObject([{ id: documentId, judgedSince: later(5).toISOString() }]);
      expect((await view()).documents).toMatchObject([{ id: documentId, canMakeAnew: false }]);
      expect(await approve(await nell(), 7)).toMatchObject({ ok: false, say: expect.not.stringContaining("ake it anew") as string, fields: { asItIs: "Leave it out, or say that it goes as it is." } });
      good(await encloseDocument(await nell(), { documentId, isEnclosed: false }, later(8)));
      good(await approve(await nell(), 9));
      expect(await makeAnew(await nell(), documentId, later(10))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await database().document.count({ where: { enquiryId } })).toBe(1);
    });
    it("goes with what a second person sends where the first one said so of that judgement, and of no later one", async () => {
      const { approve, documentId, enquiryId, judged, last, sent, view } = await withPaper();
      await judged(5);
      const said = { documentId, judgedAt: later(5).toISOString() };
      expect(await approve(await pia(), 6)).toMatchObject({ ok: false, code: "changed-meanwhile" });
      good(await approve(await pia(), 7, [said]));
      expect((await view()).waitsForSecond?.asItIs).toEqual([said]);
      await database().assessment.updateMany({ where: { createdAt: later(5) }, data: { createdAt: later(8) } });
      expect(await secondReply(await nell(), { enquiryId, documents: [documentId] }, later(9))).toMatchObject({ ok: false, code: "changed-meanwhile", say: expect.stringContaining("judged anew") as string });
      expect(await sent()).toBe(0);
      await database().assessment.updateMany({ where: { createdAt: later(8) }, data: { createdAt: later(5) } });
      good(await secondReply(await nell(), { enquiryId, documents: [documentId] }, later(10)));
      expect(await last("reply-seconded")).toMatchObject({ outdated: [{ documentId, version: 1 }] });
    });
    it("made anew ends the waiting for a second person, and is nobody's to make who is not staff", async () => {
      const { approve, documentId, judged, view } = await withPaper();
      await judged(5);
      good(await approve(await pia(), 6, [{ documentId, judgedAt: later(5).toISOString() }]));
      expect(await makeAnew({ kind: "public", addressHash: null }, documentId, later(7))).toMatchObject({ ok: false, code: "not-signed-in" });
      good(await makeAnew(await nell(), documentId, later(7)));
      expect((await view()).waitsForSecond).toBeNull();
    });
  });

  describe("a cut-down plan with a letter whose way is no longer chosen: the overtaken one", () => {
    it("stops the letter once it was decided to cut nothing, and can then only be left out or sent as it is", async () => {
      const { approve, documentId, last, mark, sent, shown, view } = await withPlan();
      expect(await shown()).toEqual([{ id: documentId, version: 1, judgedSince: null }]);
      await mark(5, { chosen: KEPT_WHOLE });
      const judgedAt = later(5).toISOString();
      expect((await view()).documents).toMatchObject([{ id: documentId, judgedSince: judgedAt, canMakeAnew: false, altered: null }]);
      expect(await approve(await nell(), 6)).toMatchObject({ ok: false, code: "changed-meanwhile", say: expect.stringMatching(/^“[^”]+” was made before the rug was judged anew/) as string, fields: { asItIs: "Leave it out, or say that it goes as it is." } });
      expect(await makeAnew(await nell(), documentId, later(7))).toMatchObject({ ok: false, code: "invalid", say: expect.stringContaining("No cut-down plan is made for this rug") as string });
      expect(await sent()).toBe(0);
      good(await approve(await nell(), 8, [{ documentId, judgedAt }]));
      expect(await last("reply-approved")).toMatchObject({ outdated: [{ documentId, document: "cut-down-plan", version: 1, judgedAt }] });
    });
    it("is made anew with another way that was chosen, and with marks that were changed", async () => {
      const { approve, documentId, mark, shown, text } = await withPlan();
      expect(await text()).toContain("1. The same strip comes off both ends");
      await mark(5, { chosen: "edge-off" });
      expect(await approve(await nell(), 6)).toMatchObject({ ok: false, fields: { asItIs: "Make it anew, leave it out, or say that it goes as it is." } });
      const { documentId: second } = good(await makeAnew(await nell(), documentId, later(7)));
      expect(await text()).toContain("1. One edge comes off");
      await mark(8, { chosen: "edge-off", widthCm: 240 });
      expect(await shown()).toEqual([{ id: second, version: 2, judgedSince: later(8).toISOString() }]);
      const { documentId: third } = good(await makeAnew(await nell(), second, later(9)));
      expect(await text()).toContain("The rug measures about 240 × 300 cm");
      expect(await shown()).toEqual([{ id: third, version: 3, judgedSince: null }]);
      good(await approve(await nell(), 10));
    });
    it("goes where the same way is chosen once more, and stops where its plan was taken away", async () => {
      const { approve, documentId, mark, shown, view } = await withPlan();
      await mark(5, { chosen: KEPT_WHOLE });
      const again = await mark(6, { chosen: "equal-ends" });
      expect(await shown()).toEqual([{ id: documentId, version: 1, judgedSince: null }]);
      good(await withdrawMeasurement(await nell(), again, later(7)));
      expect((await view()).documents).toMatchObject([{ id: documentId, judgedSince: later(7).toISOString(), canMakeAnew: false }]);
      expect(await approve(await nell(), 8)).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
  });

  describe("a letter to the seller that quotes a label which was corrected: the overtaken one", () => {
    it("stops the letter, and is made anew with the corrected words and everything else as it was filled in", async () => {
      const { approve, documentId, shown, text } = await withQuotedLabel("100% viscose");
      expect(await text()).toContain("label on it reads “100% viscose”");
      expect(await shown()).toEqual([{ id: documentId, version: 1, judgedSince: later(5).toISOString() }]);
      expect(await approve(await nell(), 6)).toMatchObject({ ok: false, fields: { asItIs: "Make it anew, leave it out, or say that it goes as it is." } });
      const { documentId: anew } = good(await makeAnew(await nell(), documentId, later(7)));
      expect(await text()).toMatch(/4 Quay Street[\s\S]*Harrowgate Rooms[\s\S]*label on it reads “60% viscose, 40% cotton”/);
      expect(await shown()).toEqual([{ id: anew, version: 2, judgedSince: null }]);
      good(await approve(await nell(), 8));
    });
    it("stops it with words that were typed by hand, and its form holds the corrected ones", async () => {
      const { enquiryId, rugId, shown } = await withQuotedLabel("Viscose, 100 per cent");
      expect(await shown()).toMatchObject([{ judgedSince: later(5).toISOString() }]);
      expect(good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "letter-to-seller" }, later(6))).filled).toMatchObject({ sellerName: "Harrowgate Rooms", labelWords: "60% viscose, 40% cotton" });
    });
    it("does not stop it where it quotes no label on purpose, or has the right words already", async () => {
      for (const labelWords of ["", "60% viscose, 40% cotton"]) {
        const { approve, shown } = await withQuotedLabel(labelWords);
        expect(await shown(), labelWords).toMatchObject([{ judgedSince: null }]);
        good(await approve(await nell(), 6));
      }
    });
    it("keeps words typed by hand where the rug was judged anew and the label stayed as it was", async () => {
      const { judged, shown, text } = await withPaper("letter-to-seller", { sellerName: "Harrowgate Rooms", labelWords: "Viscose, 100 per cent" });
      await judged(5);
      expect(await shown()).toMatchObject([{ judgedSince: null }]);
      expect(await text()).toContain("“Viscose, 100 per cent”");
    });
  });
}
