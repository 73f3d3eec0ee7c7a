import { execFileSync } from "node:child_process";
import { createHash, randomUUID } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import type { Caller } from "../../../lib/enquiry/caller";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { documentFile } from "../../../lib/enquiry/document-file";
import { encloseDocument } from "../../../lib/enquiry/enclose-document";
import { KEPT_WHOLE } from "../../../lib/triage/finding";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readDocument } from "../../../lib/enquiry/read-document";
import { readDocumentForm } from "../../../lib/enquiry/read-document-form";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { recordBenchTest } from "../../../lib/enquiry/record-bench-test";
import { recordInspection } from "../../../lib/enquiry/record-inspection";
import { recordLaboratoryReport } from "../../../lib/enquiry/record-laboratory-report";
import { recordMeasurement } from "../../../lib/enquiry/record-measurement";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { withdrawInspection } from "../../../lib/enquiry/withdraw-inspection";
import { withdrawMeasurement } from "../../../lib/enquiry/withdraw-measurement";
import { dayAndHour, longDay } from "../../../lib/enquiry/workshop-day";
import type { Block } from "../../../lib/reply/documents/blocks";
import { database } from "../../../lib/store/database";
import { DEFAULT_SETTINGS } from "../../../lib/workshop/settings-schema";
import { OLDEST_FIRST } from "../../../lib/store/row-order";
import { clientOf, givePhoto, good, intake, later, leaves, NOW, staff, submitted, WET_VISCOSE } from "./workshop";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import type { DocumentKind } from "../../../lib/reply/documents/offered";
import { UNSAID_PHOTO } from "../../../lib/trade/questions";
import { hasPrograms } from "../../programs";

const SEEN = { by: "Ivo Castellane", day: "2026-11-24", found: "The pile is distorted over a hand's breadth.", beyondRepair: "yes" as const };
const SELLER = { clientAddress: "4 Quay Street", sellerName: "Kestrel Floors", sellerAddress: "", boughtOn: "", price: "", invoice: "", saidWords: "pure silk", labelWords: "100% viscose" };
const nell = () => staff("owner", "Nell Harrow");
const pia = () => staff("trainee", "Pia Wetherby");
const audits = async (enquiryId: string) => (await database().audit.findMany({ where: { enquiryId }, orderBy: OLDEST_FIRST.at })).map((a) => a.action);

/** An enquiry about a wet rug sold as silk and labelled viscose, with one photo. */
export async function aRug(name = "Ana Example") {
  const from = await intake();
  good(await givePhoto(from));
  const enquiry = good(await submitEnquiry(from, { contact: { name, email: `${randomUUID()}@example.org` }, consent: true }, NOW));
  const { enquiryId } = enquiry;
  const view = async (caller: Caller = { kind: "staff", staffId: "s", name: "N", role: "owner" }, minutes = 1) => good(await readEnquiry(caller, enquiryId, later(minutes)));
  const rugId = (await view()).rugs[0]?.id ?? "";
  const make = async (kind: DocumentKind, filled: object = {}, minutes = 2) => good(await makeDocument(await nell(), { enquiryId, rugId, kind, filled }, later(minutes))).documentId;
  return { enquiry, enquiryId, rugId, view, make };
}
const textOf = async (documentId: string, enquiryId: string) => JSON.stringify(good(await readDocument(await nell(), { enquiryId, documentId })).content);
const rowOf = (id: string) => database().document.findUniqueOrThrow({ where: { id } });

/** What a block says in one run of words; cells of tables stand beside each other in the file, so they are left out. */
const wordsOf = (b: Block): readonly string[] => (b.kind === "list" ? b.items : b.kind === "signature" ? b.lines : b.kind === "table" || b.kind === "photo" ? [b.caption] : b.kind === "plan" ? [b.alternative] : [b.text]);
const bare = (text: string) => text.replace(/\s+/g, "");

/** Documents, inspections and what goes with a letter. */
export function onPaper(): void {
  describe("makeDocument", () => {
    it("keeps the file as it was made, with its hash, and says who made it", async () => {
      const { enquiryId, rugId, make } = await aRug();
      const id = await make("condition-report", { theirReference: "CL/118" });
      const row = await rowOf(id);
      const file = good(await documentFile(await nell(), id, NOW));
      expect(file.bytes.subarray(0, 5).toString()).toBe("%PDF-");
      expect([row.sha256, row.bytes, row.rugId, row.version]).toEqual([createHash("sha256").update(file.bytes).digest("hex"), file.bytes.length, rugId, 1]);
      expect(file.fileName).toMatch(/^Condition report [\w-]+\.pdf$/);
      expect(await textOf(id, enquiryId)).toMatch(/Your reference: CL\/118[\s\S]*Provisional, not inspected[\s\S]*It went over the edge of the tray[\s\S]*photoId/);
      expect(await audits(enquiryId)).toContain("document-made");
    });
    it("takes no telling of a seller for the seller's own words", async () => {
      const { enquiryId, rugId } = await aRug();
      const made = async (saidWords: string) => makeDocument(await nell(), { enquiryId, rugId, kind: "letter-to-seller", filled: { sellerName: "Harrowgate Rooms", saidWords } }, later(2));
      for (const told of ["They told me it was silk", "He swore it was pure silk, the liar", "The shop said silk", "sold it as silk"]) expect(await made(told), told).toMatchObject({ ok: false, fields: { saidWords: expect.stringContaining("own words") as string } });
      for (const own of ["pure silk", "Hand-knotted, 100 % silk, as they were told in Kashan", "These are silk"]) expect(await made(own), own).toMatchObject({ ok: true });
    });
    it("makes the same twice over once, and a version of its own once something has changed; the first stays as it was", async () => {
      const { make, enquiryId, rugId } = await aRug();
      const first = await make("condition-report");
      expect(await make("condition-report", {}, 30)).toBe(first);
      const before = await rowOf(first);
      good(await recordInspection(await nell(), { enquiryId, rugId, ...SEEN }, later(31)));
      const second = await make("condition-report", {}, 32);
      expect(second).not.toBe(first);
      expect([(await rowOf(second)).version, await rowOf(first)]).toEqual([2, before]);
      expect(good(await readDocument(await nell(), { enquiryId, documentId: first })).newerId).toBe(second);
    });
    it("offers what fits the rug, and nothing else", async () => {
      const { view, enquiryId, rugId } = await aRug();
      expect((await view()).rugs[0]?.offers).toEqual(["condition-report", "letter-to-seller", "care-card"]);
      const wool = await submitted({ wetNow: "no", rug: { labelText: "100% wool", labelFound: "typed", incidents: ["nothing"] } });
      const [rug] = good(await readEnquiry(await nell(), wool.enquiryId, NOW)).rugs;
      expect(rug).toMatchObject({ offers: ["condition-report"], planLack: { lacks: "photo", photoId: null } });
      expect(await makeDocument(await nell(), { enquiryId: wool.enquiryId, rugId: rug?.id ?? "", kind: "care-card", filled: {} }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      expect(await makeDocument(await nell(), { enquiryId: wool.enquiryId, rugId, kind: "condition-report", filled: {} }, NOW)).toMatchObject({ ok: false, code: "not-found" });
      expect(await makeDocument({ kind: "public", addressHash: null }, { enquiryId, rugId, kind: "care-card", filled: {} }, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
    });
    it("draws the plan on which a way of cutting was chosen, that way first, with the workshop's price for its edges", async () => {
      const { make, view, enquiryId } = await aRug();
      const photoId = (await view()).rugs[0]?.photos[0]?.id ?? "";
      const corners = [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }];
      const plan = { corners, widthCm: 200, lengthCm: 300, damaged: [[{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 0.1 }, { x: 0, y: 0.1 }]], borderCm: 0, isSymmetric: false };
      const mark = async (chosen: string | null, replaces: string | null, damaged = plan.damaged) => good(await recordMeasurement(await nell(), { id: randomUUID(), photoId, marked: { kind: "plan", marks: { ...plan, damaged, chosen } }, replaces }, later(2))).id;
      const lack = async () => { const [rug] = (await view()).rugs; expect(rug?.offers.includes("cut-down-plan")).toBe(rug?.planLack === null); return rug?.planLack; };
      // Until it can be made, the page says what is missing, one thing after the other.
      expect(await lack()).toEqual({ lacks: "corners", photoId });
      const bare = await mark(null, null, []);
      expect(await lack()).toEqual({ lacks: "damage", photoId });
      const first = await mark(null, bare);
      expect(await lack()).toEqual({ lacks: "way", photoId });
      const against = await mark(KEPT_WHOLE, first);
      expect(await lack()).toEqual({ lacks: "decision", photoId });
      expect((await view()).rugs[0]?.assessment?.findings.find((f) => f.what === KEPT_WHOLE)).toMatchObject({ staff: expect.stringContaining("not to cut it down") as string });
      const report = await textOf(await make("condition-report", {}, 2), enquiryId);
      expect(report).toContain("Considered on a plan of the rug, and decided against by the workshop.");
      expect(report).not.toContain("New edges after cutting down");
      await mark("equal-ends", against);
      expect(await lack()).toBeNull();
      const text = await textOf(await make("cut-down-plan"), enquiryId);
      expect(text).toMatch(/The rug measures about 200 × 300 cm as it is drawn here\..*1\. The same strip comes off both ends.*2\. One edge comes off/);
      // 30 cm off each end: 200 × 240 remain, two new edges of 200 cm with a turn of 2 cm, at EUR 35 a metre.
      expect(text).toContain("Remains: 200 × 240 cm, about 80\u00a0% of the rug.");
      expect(text).toContain("New edges: about 4.0 m of binding.");
      // All round what remains: 2 × 200 + 2 × 240 cm and four turns, 8.88 m. Two significant figures, as every estimate in a letter.
      expect([4.04 * 35, 8.88 * 35].map((cost) => Number(cost.toPrecision(2)))).toEqual([140, 310]);
      expect(text).toContain("Cost: €140 to €310, from these edges as drawn to new ones all round what remains; confirmed when we have seen it.");
      // The report of the same rug has the same cost.
      expect(await textOf(await make("condition-report", {}, 3), enquiryId)).toContain('["New edges after cutting down","€140 to €310"]');
    });
    it("writes the client's letter to the seller from what was filled in and what was tested, and asks whom it is to", async () => {
      const { make, enquiryId, rugId } = await aRug();
      expect(await makeDocument(await nell(), { enquiryId, rugId, kind: "letter-to-seller", filled: { ...SELLER, sellerName: " " } }, NOW)).toMatchObject({ ok: false, fields: { sellerName: "Write whom the letter is to." } });
      const untested = await textOf(await make("letter-to-seller", SELLER), enquiryId);
      expect(untested).toMatch(/Kestrel Floors[\s\S]*described to me as “pure silk”[\s\S]*label on it reads “100% viscose”/);
      expect(untested).not.toContain("tested since");
      expect(untested).not.toContain("sold to me as");
      expect(good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "letter-to-seller" }, NOW)).soldAs).toBe("It was sold to me as silk.");
      expect(await textOf(await make("letter-to-seller", { ...SELLER, saidWords: "" }), enquiryId)).toContain("It was sold to me as silk.");
      // A meter's reading and a test of the fringe say nothing of the pile, which is what was sold.
      good(await recordBenchTest(await nell(), { id: randomUUID(), rugId, test: "moisture", sample: "pile:whole", readings: { place: "affected", percent: 30 } }, later(2)));
      good(await recordBenchTest(await nell(), { id: randomUUID(), rugId, test: "wet-strength", sample: "fringe:whole", readings: { wet: "much-weaker" } }, later(2)));
      expect(await textOf(await make("letter-to-seller", SELLER, 3), enquiryId)).not.toMatch(/tested since|what you propose/);
      good(await recordBenchTest(await nell(), { id: randomUUID(), rugId, test: "wet-strength", sample: "pile:field", readings: { wet: "much-weaker" } }, later(3)));
      expect(await textOf(await make("letter-to-seller", SELLER, 3), enquiryId)).toMatch(/a test of a few fibres by [^:]+: Thread pulled wet, much weaker\..*what you propose/);
      good(await recordLaboratoryReport(await nell(), { id: randomUUID(), rugId, sample: "pile:whole", laboratory: "Fenwick Fibre Laboratory", reportedOn: "2026-11-20", reference: "", percents: { viscose: 82, cotton: 18 } }, later(3)));
      expect(await textOf(await make("letter-to-seller", SELLER, 4), enquiryId)).toContain("a laboratory’s report by Fenwick Fibre Laboratory, 20 November 2026: 82\u00a0% viscose, 18\u00a0% cotton.");
      expect(good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "letter-to-seller" }, NOW)).filled).toMatchObject({ labelWords: "100% viscose" });
    });
  });

  describe("a document in letters of other scripts", () => {
    it("says beforehand which characters can only print as boxes, is made once somebody agrees, and names them for good", async () => {
      const { enquiryId, rugId, make } = await aRug("王小明");
      const form = async () => good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "condition-report" }, later(1)));
      expect((await form()).boxed).toBe("王, 小 and 明 are in none of our typefaces and will print as empty boxes (◻).");
      const filled = { theirReference: "保-118" };
      const refused = await makeDocument(await nell(), { enquiryId, rugId, kind: "condition-report", filled }, later(2));
      expect(refused).toMatchObject({ ok: false, code: "invalid", fields: { mayBox: expect.stringContaining("王, 小, 明 and 保 are in none") as string } });
      expect(await database().document.count({ where: { rugId } })).toBe(0);
      const { documentId } = good(await makeDocument(await nell(), { enquiryId, rugId, kind: "condition-report", filled, mayBox: true }, later(3)));
      expect(good(await readDocument(await nell(), { enquiryId, documentId })).boxed).toBe("王, 小, 明 and 保 are in none of our typefaces and printed as empty boxes (◻).");
      // A letter that cannot be written out yet names those that are known.
      expect(good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "letter-to-seller" }, later(4))).boxed).toContain("王, 小 and 明");
      expect(await make("condition-report", { theirReference: "" }, 5).catch((e: unknown) => String(e))).toContain("invalid");
    });
    it("prints a name in Arabic without asking", async () => {
      const { enquiryId, rugId, make } = await aRug("ليلى الحداد");
      expect(good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "condition-report" }, later(1))).boxed).toBeNull();
      const documentId = await make("condition-report");
      expect(good(await readDocument(await nell(), { enquiryId, documentId })).boxed).toBeNull();
    });
  });

  describe("a form that is opened again", () => {
    it("holds what the last version was made with, emptied fields too", async () => {
      const { make, enquiryId, rugId } = await aRug();
      const filled = async (kind: DocumentKind) => good(await readDocumentForm(await nell(), { enquiryId, rugId, kind }, later(9))).filled;
      await make("letter-to-seller", { ...SELLER, price: "€900" });
      await make("letter-to-seller", { ...SELLER, price: "€1,200", saidWords: "" }, 3);
      expect(await filled("letter-to-seller")).toEqual({ ...SELLER, price: "€1,200", saidWords: "" });
      await make("condition-report", { theirReference: "CL/118" }, 4);
      expect(await filled("condition-report")).toEqual({ theirReference: "CL/118", leaveOutWords: "", putInWords: "" });
      await make("condition-report", { theirReference: "CL/118", leaveOutWords: "yes" }, 5);
      expect(await filled("condition-report")).toEqual({ theirReference: "CL/118", leaveOutWords: "yes", putInWords: "" });
    });
  });

  describe("a condition report", () => {
    it("leaves the client's own words out where somebody says so, and still tells what they answered", async () => {
      const { make, enquiryId, rugId } = await aRug();
      expect(good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "condition-report" }, NOW)).account).toEqual({ text: expect.stringContaining("It went over the edge of the tray") as string, isTrade: false });
      const text = await textOf(await make("condition-report", { leaveOutWords: "yes" }), enquiryId);
      expect(text).toContain("The client’s own words are kept at the workshop.");
      expect(text).not.toContain("edge of the tray");
      expect(text).toContain("What happened to it?");
      // As a browser has a box without a tick.
      expect(await textOf(await make("condition-report", { leaveOutWords: false }, 3), enquiryId)).toContain("edge of the tray");
    });
    it("says on which day it was told last whether the rug is wet, and what was told before it was put right: that it was wet is not gone", async () => {
      const { make, enquiryId, rugId } = await aRug();
      const day = (minutes: number) => longDay(dayAndHour(later(minutes), DEFAULT_SETTINGS.timeZone).day, DEFAULT_SETTINGS.locale);
      const TWO_DAYS = 2 * 24 * 60;
      expect(await textOf(await make("condition-report"), enquiryId)).toContain(`"Is any part of the rug wet right now?","Yes, it is wet, as told on ${day(0)}"`);
      good(await correctAnswer(await nell(), { rugId, step: "shine", values: { answer: "satin" }, seen: false }, later(TWO_DAYS / 2)));
      good(await correctAnswer(await nell(), { rugId, step: "wet-now", values: { answer: "no" }, seen: false }, later(TWO_DAYS)));
      expect(await textOf(await make("condition-report", {}, TWO_DAYS + 1), enquiryId)).toContain(`"Is any part of the rug wet right now?","Yes, it is wet, as told on ${day(0)}; later: No, it is dry, as told on ${day(TWO_DAYS)}"`);
      expect(day(TWO_DAYS)).not.toBe(day(0));
    });
    it("quotes what a cleaner wrote only where somebody says so", async () => {
      const { enquiryId } = await submitted({ reason: "trade", rug: { story: "Please help, my customer is on the telephone.", labelText: "100% viscose", labelFound: "typed" } });
      const { id: rugId } = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      expect(good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "condition-report" }, NOW)).account).toEqual({ text: "Please help, my customer is on the telephone.", isTrade: true });
      const made = async (filled: object) => textOf(good(await makeDocument(await nell(), { enquiryId, rugId, kind: "condition-report", filled }, NOW)).documentId, enquiryId);
      for (const filled of [{}, { putInWords: false }, { leaveOutWords: "" }]) {
        expect(await made(filled)).toContain("The client’s own words are kept at the workshop.");
        expect(await made(filled)).not.toContain("Please help");
      }
      expect(await made({ putInWords: "yes" })).toContain("In the client’s own words: “Please help, my customer is on the telephone.”");
    });
    it("on a cleaner's enquiry calls nobody the owner who is not, and the client's own letter to a seller is not made", async () => {
      const { enquiryId } = await submitted({ reason: "trade", rug: { sellerSaid: "silk", labelText: "100% viscose", labelFound: "typed", treatments: ["professional-wet"], treatedBy: "me-trade", since: "day" } });
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      expect(good(await readEnquiry(await nell(), enquiryId, NOW)).rugs[0]?.offers).toEqual(["condition-report", "care-card"]);
      expect(await makeDocument(await nell(), { enquiryId, rugId: rug.id, kind: "letter-to-seller", filled: SELLER }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      const made = async (kind: DocumentKind) => textOf(good(await makeDocument(await nell(), { enquiryId, rugId: rug.id, kind, filled: {} }, NOW)).documentId, enquiryId);
      expect(await made("condition-report")).toMatch(/cleans rugs and asked about a customer’s rug; its owner was not named\.[\s\S]*"When was that\?","Today, as told on \d+ November 2026"[\s\S]*"Who did that\?","I did"/);
      await database().thirdParty.create({ data: { id: randomUUID(), enquiryId, kind: "trade-customer", name: "Ines Varga" } });
      expect(await made("condition-report")).toContain("its owner is Ines Varga.");
      expect(await made("care-card")).toContain("For the owner of the rug, Ines Varga, by way of ");
    });
    it("tells the tests of fibres that stand and what was read of moisture, the one as evidence of the fibre and the other not", async () => {
      const { make, enquiryId, rugId } = await aRug();
      good(await recordBenchTest(await nell(), { id: randomUUID(), rugId, test: "moisture", sample: "pile:whole", readings: { place: "affected", percent: 30 } }, later(1)));
      const read = await textOf(await make("condition-report"), enquiryId);
      expect(read).toMatch(/the workshop measured moisture: 30 in the trouble\./);
      expect(read).not.toMatch(/tests of a few fibres|by a bench test/);
      good(await recordBenchTest(await nell(), { id: randomUUID(), rugId, test: "wet-strength", sample: "pile:field", readings: { wet: "much-weaker" } }, later(3)));
      const tested = await textOf(await make("condition-report", {}, 4), enquiryId);
      expect(tested).toMatch(/by tests of a few fibres\.[\s\S]*A test of a few fibres of the pile by [^:]+: Thread pulled wet, much weaker\./);
    });
    it("names a laboratory's report in full, and who made it out where nobody inspected the rug", async () => {
      const { make, enquiryId, rugId } = await aRug();
      good(await recordLaboratoryReport(await nell(), { id: randomUUID(), rugId, sample: "pile:whole", laboratory: "Fenwick Fibre Laboratory", reportedOn: "2026-11-20", reference: "FF-118", percents: { viscose: 82, cotton: 18 } }, later(1)));
      const text = await textOf(await make("condition-report"), enquiryId);
      expect(text).toContain("A laboratory’s report by Fenwick Fibre Laboratory, 20 November 2026 (reference FF-118), says of the pile: 82\u00a0% viscose, 18\u00a0% cotton.");
      expect(text).toContain("Made out by Nell Harrow for");
    });
    it("says of a photo that came by mail that what it shows was not said", async () => {
      const { make, enquiryId, rugId } = await aRug();
      await database().photo.updateMany({ where: { rugId }, data: { kind: UNSAID_PHOTO } });
      expect(await textOf(await make("condition-report"), enquiryId)).toContain('"caption":"Photo 1: as it came, what it shows was not said.');
    });
    it("draws what stands marked in its photos, and nothing of what was taken away", async () => {
      const { make, view, enquiryId } = await aRug();
      const photoId = (await view()).rugs[0]?.photos[0]?.id ?? "";
      const corners = [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 1, y: 1 }, { x: 0, y: 1 }];
      const damage = [{ x: 0.1, y: 0.1 }, { x: 0.4, y: 0.1 }, { x: 0.4, y: 0.3 }];
      const plan = { corners, widthCm: 200, lengthCm: 300, damaged: [damage], borderCm: 0, isSymmetric: false, chosen: null };
      const { id } = good(await recordMeasurement(await nell(), { id: randomUUID(), photoId, marked: { kind: "plan", marks: plan }, replaces: null }, later(2)));
      const shown = async (documentId: string) => good(await readDocument(await nell(), { enquiryId, documentId })).content.blocks.find((b) => b.kind === "photo");
      expect(await shown(await make("condition-report", {}, 3))).toMatchObject({ photoId, marks: [{ n: 1, outline: corners }, { n: 2, outline: damage }], caption: expect.stringContaining("the edges of the rug (1) and a damaged place (2)") as string });
      good(await withdrawMeasurement(await nell(), id, later(4)));
      expect(await shown(await make("condition-report", {}, 5))).not.toHaveProperty("marks");
    });
  });

  describe.skipIf(!hasPrograms("pdftotext", "qpdf"))("a document's file", () => {
    it.each(["condition-report", "letter-to-seller", "care-card"] as const)("says what its page says, in that order, and is sound: %s (poppler, qpdf)", async (kind) => {
      const { make, enquiryId } = await aRug();
      const id = await make(kind, kind === "letter-to-seller" ? SELLER : {});
      const folder = mkdtempSync(path.join(os.tmpdir(), "on-paper-"));
      const file = path.join(folder, "made.pdf");
      writeFileSync(file, good(await documentFile(await nell(), id, NOW)).bytes);
      const text = bare(execFileSync("pdftotext", ["-layout", "-nopgbrk", file, "-"], { encoding: "utf8" }).replace(/^.*, page \d+ of \d+$/gmu, ""));
      const { content } = good(await readDocument(await nell(), { enquiryId, documentId: id }));
      let from = 0;
      for (const words of content.blocks.flatMap(wordsOf).map(bare).filter((w) => w !== "")) {
        const at = text.indexOf(words, from);
        expect(at, words).toBeGreaterThanOrEqual(from);
        from = at + words.length;
      }
      expect(execFileSync("qpdf", ["--check", file], { encoding: "utf8" })).toContain("No syntax or stream encoding errors found");
      if (kind === "condition-report") expect(execFileSync("pdfimages", ["-list", file], { encoding: "utf8" }).trim().split("\n")).toHaveLength(3);
      rmSync(folder, { recursive: true });
    });
  });

  describe("an inspection", () => {
    it("is a named person's, makes a report more than provisional, and no longer counts once withdrawn", async () => {
      const { make, enquiryId, rugId, view } = await aRug();
      const { inspectionId } = good(await recordInspection(await nell(), { enquiryId, rugId, ...SEEN }, later(1)));
      const report = await textOf(await make("condition-report", {}, 2), enquiryId);
      expect(report).toContain("Inspected by Ivo Castellane on 24 November 2026.");
      expect(report).toContain("Beyond economic repair, in the judgement of Ivo Castellane");
      expect((await view()).rugs[0]?.inspection).toMatchObject({ by: "Ivo Castellane", isBeyondRepair: true });
      expect(await withdrawInspection(await nell(), { id: inspectionId, reason: "" }, later(3))).toMatchObject({ ok: false, code: "invalid" });
      good(await withdrawInspection(await nell(), { id: inspectionId, reason: "It was another rug." }, later(3)));
      expect(await withdrawInspection(await nell(), { id: inspectionId, reason: "Again." }, later(4))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect((await view()).rugs[0]?.inspection).toBeNull();
      expect(await textOf(await make("condition-report", {}, 5), enquiryId)).toContain("Provisional, not inspected: this report");
      expect(await audits(enquiryId)).toEqual(["submitted", "inspection-recorded", "document-made", "inspection-withdrawn", "document-made"]);
    });
    it("is what the letter and the desk say at once: an untouched draft is written anew, an edited one marked, and both go back once it is withdrawn", async () => {
      const { enquiryId, rugId, view } = await aRug();
      const first = (await view()).draft;
      expect(first?.text).not.toContain("Ivo Castellane");
      const { inspectionId } = good(await recordInspection(await nell(), { enquiryId, rugId, ...SEEN, beyondRepair: "no" }, later(2)));
      const SAYS = "Ivo Castellane, who inspected it on 24 November 2026, does not judge it beyond economic repair.";
      const seen = await view(undefined, 3);
      expect(seen.draft).toMatchObject({ number: 2, by: "the program", text: expect.stringContaining(SAYS) as string });
      expect(seen.draft?.text).not.toMatch(/nobody here has inspected|an inspection/u);
      expect(seen.rugs[0]?.letter?.inspection).toEqual({ by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair: false });
      const edited = `${seen.draft?.text ?? ""}\n\nWith a line of our own.`;
      good(await saveDraft(await nell(), { enquiryId, from: 2, subject: seen.draft?.subject ?? "", text: edited }, later(4)));
      expect((await view(undefined, 5)).draft?.today?.changes).toEqual([]);
      good(await withdrawInspection(await nell(), { id: inspectionId, reason: "It was another rug." }, later(6)));
      const after = (await view(undefined, 7)).draft;
      expect(after?.text).toBe(edited);
      expect(after?.today?.letter.text).toBe(first?.text);
      expect(after?.today?.changes).toContainEqual(expect.objectContaining({ was: SAYS }));
    });
    it("counts no more in a report, or for what a letter may say, while flood water is told of that it knew nothing of", async () => {
      const { make, enquiryId, rugId } = await aRug();
      good(await recordInspection(await nell(), { enquiryId, rugId, ...SEEN, day: "2026-11-25" }, later(1)));
      const happened = async (answer: string[], minutes: number) => good(await correctAnswer(await nell(), { rugId, step: "happened", values: { answer }, seen: false }, later(minutes)));
      const giveUp = async (minutes: number) => askClient(await nell(), { enquiryId, subject: "Your rug", text: "This rug is a goner." }, later(minutes));
      const VERDICT = "Beyond economic repair, in the judgement of Ivo Castellane";
      const noteOf = async (minutes: number) => good(await readDocumentForm(await nell(), { enquiryId, rugId, kind: "condition-report" }, later(minutes))).inspection;
      expect(await textOf(await make("condition-report", {}, 2), enquiryId)).toContain(VERDICT);
      expect(await noteOf(2)).toBe("It goes by the inspection of Ivo Castellane.");
      await happened(["spill", "flood"], 3);
      expect(await noteOf(4)).toBe("Flood or waste water was told of only after the inspection of Ivo Castellane, so the report says “provisional, not inspected since”.");
      const report = await textOf(await make("condition-report", {}, 4), enquiryId);
      expect(report).toContain("Ivo Castellane inspected it on 25 November 2026, before that.");
      expect(report).toContain("On 25 November 2026, before flood or waste water was told of: The pile is distorted over a hand's breadth.");
      expect(report).not.toContain(VERDICT);
      expect(await giveUp(5)).toMatchObject({ ok: false, code: "promises-too-much" });
      await happened(["spill"], 6);
      expect(await textOf(await make("condition-report", {}, 7), enquiryId)).toContain(VERDICT);
      good(await giveUp(8));
    });
    it("takes back a letter that waits to leave and would read otherwise, recorded or withdrawn", async () => {
      const { enquiryId, rugId, view } = await aRug();
      const held = async (minutes: number) => good(await approveReply(await nell(), { enquiryId, number: (await view()).draft?.number ?? 0 }, later(minutes))).letterId;
      const stateOf = async (id: string) => (await database().letter.findUniqueOrThrow({ where: { id } })).state;
      const unseen = await held(2);
      const { inspectionId } = good(await recordInspection(await nell(), { enquiryId, rugId, ...SEEN }, later(3)));
      expect(await stateOf(unseen)).toBe("taken_back");
      expect((await view(undefined, 4)).draft?.text).toContain("Ivo Castellane, who inspected it on 24 November 2026, judges it beyond economic repair");
      const seen = await held(5);
      good(await withdrawInspection(await nell(), { id: inspectionId, reason: "It was another rug." }, later(6)));
      expect([await stateOf(seen), (await view(undefined, 7)).draft?.text.includes("Ivo Castellane")]).toEqual(["taken_back", false]);
    });
    it("is signed for by somebody who may sign, says who and when, and belongs to its rug", async () => {
      const { enquiryId, rugId } = await aRug();
      const other = await aRug();
      expect(await recordInspection(await pia(), { enquiryId, rugId, ...SEEN }, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await recordInspection(await nell(), { enquiryId, rugId: other.rugId, ...SEEN }, NOW)).toMatchObject({ ok: false, code: "not-found" });
      for (const [field, value] of [["by", " "], ["day", "24 November"], ["day", "2999-01-01"], ["found", ""], ["found", "The cleaner ruined this rug and the insurer must pay. It is 100% viscose."], ["beyondRepair", "perhaps"]] as const)
        expect(await recordInspection(await nell(), { enquiryId, rugId, ...SEEN, [field]: value }, NOW), field).toMatchObject({ ok: false, fields: { [field]: expect.any(String) as string } });
      expect(await database().inspection.count({ where: { rugId } })).toBe(0);
    });
  });

  describe("what goes with a letter", () => {
    const put = async (documentId: string, isEnclosed = true, minutes = 5) => good(await encloseDocument(await nell(), { documentId, isEnclosed }, later(minutes)));
    const goes = async (letterId: string) => (await database().enclosure.findMany({ where: { letterId } })).map((e) => e.documentId);

    it("is the very version that lay with the draft; a later one changes nothing of what was sent", async () => {
      const { make, enquiryId, view } = await aRug();
      const first = await make("condition-report");
      await put(first);
      await put(first);
      expect((await view()).documents).toMatchObject([{ id: first, isEnclosed: true, letters: 0 }]);
      const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1, documents: [first] }, later(6)));
      await make("condition-report", { theirReference: "CL/118" }, 8);
      expect(await goes(letterId)).toEqual([first]);
      expect((await view()).documents).toMatchObject([{ id: first, isEnclosed: false, letters: 1, heldLetters: 1 }, { isEnclosed: false, letters: 0, heldLetters: 0 }]);
      await leaves(letterId, later(12));
      expect((await view()).documents).toMatchObject([{ id: first, letters: 1, heldLetters: 0 }, { letters: 0 }]);
      expect((await view()).letters.at(-1)?.enclosures).toEqual([{ id: first, title: expect.stringContaining("Condition report") as string }]);
      expect(await encloseDocument(await nell(), { documentId: first, isEnclosed: true }, later(9))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect((await view()).history.map((h) => h.what)).toEqual(expect.arrayContaining(["put a document with the letter: condition report", "made a document: condition report, version 2"]));
    });
    it("says of what would say otherwise that the rug was judged anew since, and nothing of a letter that would say the same", async () => {
      const { make, enquiryId, rugId, view } = await aRug();
      const [report, asks] = [await make("condition-report"), await make("letter-to-seller", { sellerName: "Harrowgate Rooms" })];
      const since = async () => Object.fromEntries((await view()).documents.map(({ id, judgedSince }) => [id, judgedSince]));
      expect(await since()).toEqual({ [report]: null, [asks]: null });
      good(await correctAnswer(await nell(), { rugId, step: "shine", values: { answer: "satin" }, seen: false }, later(5)));
      expect(await since()).toEqual({ [report]: later(5).toISOString(), [asks]: null });
      expect(good(await readDocument(await nell(), { enquiryId, documentId: report })).document.judgedSince).toBe(later(5).toISOString());
      const anew = await make("condition-report", {}, 6);
      expect((await since())[anew]).toBeNull();
    });
    it("is one version of each document, and lies with the draft again when the letter is taken back", async () => {
      const { make, enquiryId, rugId, view } = await aRug();
      await put(await make("condition-report"));
      good(await recordInspection(await nell(), { enquiryId, rugId, ...SEEN }, later(3)));
      const newer = await make("condition-report", {}, 4);
      await put(newer);
      const card = await make("care-card", {}, 4);
      await put(card);
      const enclosed = async () => (await view()).documents.filter((d) => d.isEnclosed).map((d) => d.id).sort();
      expect(await enclosed()).toEqual([newer, card].sort());
      const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 2 }, later(6)));
      expect(await enclosed()).toEqual([]);
      good(await takeBackLetter(await nell(), letterId, later(7)));
      expect(await enclosed()).toEqual([newer, card].sort());
      await put(card, false, 8);
      expect(await goes(good(await approveReply(await nell(), { enquiryId, number: 2 }, later(9))).letterId)).toEqual([newer]);
    });
    it("is what the person saw: approved after somebody changed it, nothing is sent", async () => {
      const { make, enquiryId } = await aRug();
      const id = await make("care-card");
      await put(id);
      expect(await approveReply(await nell(), { enquiryId, number: 1, documents: [] }, later(6))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await database().letter.count({ where: { enquiryId, automatic: false } })).toBe(0);
    });
    it("ends the waiting for a second person, who must see it, and goes with what they send", async () => {
      const { make, enquiryId, view } = await aRug();
      const id = await make("care-card");
      good(await approveReply(await pia(), { enquiryId, number: 1 }, later(4)));
      expect((await view()).waitsForSecond?.by).toBe("Pia Wetherby");
      await put(id);
      expect((await view()).waitsForSecond).toBeNull();
      good(await approveReply(await pia(), { enquiryId, number: 1 }, later(6)));
      expect(await goes(good(await secondReply(await nell(), { enquiryId, documents: [id] }, later(7))).letterId)).toEqual([id]);
    });
    it("is the client's to read once the letter has left, and nobody else's", async () => {
      const { make, enquiry, enquiryId } = await aRug();
      const id = await make("care-card");
      const loose = await make("condition-report");
      await put(id);
      const client = await clientOf(enquiry);
      const reads = async (caller: Caller, documentId: string, minutes: number) => (await documentFile(caller, documentId, later(minutes))).ok;
      expect(await reads(client, id, 6)).toBe(false);
      const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1 }, later(6)));
      expect([await reads(client, id, 10), await reads(client, id, 11), await reads(client, loose, 11)]).toEqual([false, true, false]);
      expect(good(await readClientPage(client, later(11))).letters[0]?.enclosures).toMatchObject([{ id }]);
      expect(await reads(await clientOf(await submitted(WET_VISCOSE)), id, 11)).toBe(false);
      expect(await documentFile({ kind: "public", addressHash: null }, id, later(11))).toMatchObject({ ok: false, code: "not-signed-in" });
      await database().letter.update({ where: { id: letterId }, data: { state: "taken_back" } });
      expect(await reads(client, id, 12)).toBe(false);
    });
    it("is named in the letter itself, and on a page, which shows it by itself, not once more", async () => {
      const { make, enquiry, enquiryId, view } = await aRug();
      await put(await make("care-card"));
      const { number } = good(await saveDraft(await nell(), { enquiryId, from: 1, subject: "Your rug", text: "Dear Ana,\n\nWith this letter:\n– a card\n\nUntil soon" }, later(5)));
      const { letterId } = good(await approveReply(await nell(), { enquiryId, number, reason: "Words of a test." }, later(6)));
      expect((await database().letter.findUniqueOrThrow({ where: { id: letterId } })).text).toContain("Until soon\n\nWith this letter:\n– a care card");
      const shown = [good(await readClientPage(await clientOf(enquiry), later(11))).letters[0]?.text, (await view()).letters.at(-1)?.text];
      for (const text of shown) expect(text?.trim().split("\n\n")).toEqual(["Dear Ana,", "With this letter:\n– a card", "Until soon", ...(text?.includes("the link to your own page") ? [expect.stringContaining("link") as string] : [])]);
    });
    it("goes to nobody where it is no longer the file that was made", async () => {
      const { make } = await aRug();
      const id = await make("care-card");
      await database().document.update({ where: { id }, data: { pdf: Buffer.from("%PDF-1.7 another").toString("base64") } });
      await expect(documentFile(await nell(), id, NOW)).rejects.toThrow("is not as it was made");
    });
  });
}
