import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import type { Caller } from "../../../lib/enquiry/caller";
import { eraseEnquiry } from "../../../lib/enquiry/erase-enquiry";
import { LIMITS } from "../../../lib/enquiry/limits";
import { openAnother } from "../../../lib/enquiry/open-intake";
import type { IntakeAnswers } from "../../../lib/enquiry/questionnaire";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { knownOf, readIntake } from "../../../lib/enquiry/read-intake";
import { saveIntake } from "../../../lib/enquiry/save-intake";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { database } from "../../../lib/store/database";
import { ANA, clientOf, givePhoto, good, intake, later, NOW, staff, WET_VISCOSE } from "./workshop";

const person = () => ({ ...ANA, contact: { name: "Ana Example", email: `${randomUUID()}@example.org` } });
const OTHER: IntakeAnswers = { wetNow: "wet", reason: "just-happened", rug: { labelText: "100% wool", labelFound: "typed", incidents: ["spill"], since: "hour", widthCm: 80, lengthCm: 300, story: "The runner in the hall caught it too." } };

/** A first rug that was sent, and a questionnaire begun from there about another. */
async function begun(answers: IntakeAnswers = OTHER, who = person()) {
  const device = await intake({ ...WET_VISCOSE, contact: who.contact });
  const first = good(await submitEnquiry(device, who, NOW));
  return { who, device, first, second: await another(device, answers) };
}
async function another(device: Caller, answers: IntakeAnswers): Promise<Caller & { kind: "intake" }> {
  const { intakeId } = good(await openAnother(device, later(5)));
  const caller = { kind: "intake", intakeId, addressHash: null } as const;
  good(await saveIntake(caller, answers));
  return caller;
}
const rugsOf = (enquiryId: string) => database().rug.findMany({ where: { enquiryId }, orderBy: { position: "asc" }, include: { photos: true, answers: true, assessments: true } });

export function addingRugs(): void {
  describe("openAnother", () => {
    it("takes along who they are, asks all else anew, and passes over what is known", async () => {
      const { who, second } = await begun({});
      const read = good(await readIntake(second));
      expect(read).toMatchObject({ answers: { contact: who.contact }, submittedReference: null, isAnother: true });
      expect(read.answers.wetNow).toBeUndefined();
      expect(knownOf(read)).toEqual(["contact"]);
      expect(knownOf({ ...read, isAnother: false })).toEqual([]);
    });
    it("is for a questionnaire that was sent, and for nobody else", async () => {
      expect(await openAnother(await intake(), NOW)).toMatchObject({ ok: false, code: "expired" });
      expect(await openAnother({ kind: "public", addressHash: null }, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await openAnother({ kind: "intake", intakeId: randomUUID(), addressHash: null }, NOW)).toMatchObject({ ok: false, code: "expired" });
    });
  });

  describe("submitEnquiry of another rug", () => {
    it("adds it to the enquiry sent before: one page, one letter about both, told at the desk and in a note", async () => {
      const { who, first, second } = await begun();
      const photo = good(await givePhoto(second));
      const sent = good(await submitEnquiry(second, who, later(9)));
      expect(sent).toMatchObject({ enquiryId: first.enquiryId, reference: first.reference });
      const [, rug] = await rugsOf(first.enquiryId);
      expect(rug).toMatchObject({ position: 2, photos: [{ id: photo.id }] });
      expect(rug?.assessments).toHaveLength(1);
      const page = good(await readClientPage(await clientOf(sent), later(10)));
      expect(page.rugs.map((r) => r.answers.labelText)).toEqual(["100% viscose", "100% wool"]);
      expect(page.rugs.map((r) => r.sinceToldOn)).toEqual(["25 November 2026", "25 November 2026"]);
      expect(page.written.map((w) => w.text)).toEqual([WET_VISCOSE.rug?.story, OTHER.rug?.story]);
      const view = good(await readEnquiry(await staff("reviewer", "Ivo Castellane"), first.enquiryId, later(10)));
      expect(view.title).toMatch(/^2 rugs\. /);
      expect(view.draft?.text).toMatch(/wool/);
      expect(view.draft?.text).toMatch(/viscose/);
      expect(view.history.map((h) => h.what)).toContain("added a rug to the enquiry");
      const letters = await database().letter.findMany({ where: { enquiryId: first.enquiryId }, orderBy: { createdAt: "asc" } });
      expect(letters.map((l) => l.kind)).toEqual(["acknowledgement", "acknowledgement"]);
      expect(letters[1]?.text).toMatch(/Your other rug has reached us too[^]*On your own page/);
    });
    it("finds what was added when it is sent again, five times at once too, and takes no more answers", async () => {
      const { who, first, second } = await begun();
      const all = (await Promise.all(Array.from({ length: 5 }, () => submitEnquiry(second, who, later(9))))).map(good);
      expect(new Set(all.map((s) => s.enquiryId))).toEqual(new Set([first.enquiryId]));
      expect(await rugsOf(first.enquiryId)).toHaveLength(2);
      expect(good(await readIntake(second)).submittedReference).toBe(first.reference);
      expect(await saveIntake(second, { rug: { sellerSaid: "silk" } })).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await givePhoto(second)).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
    it("takes a third one, begun where the second was sent", async () => {
      const { who, first, second } = await begun();
      good(await submitEnquiry(second, who, later(9)));
      good(await submitEnquiry(await another(second, OTHER), who, later(12)));
      expect((await rugsOf(first.enquiryId)).map((r) => r.position)).toEqual([1, 2, 3]);
    });
    it("makes an enquiry of its own where another thing holds for the whole, another person sends it, or there is no room", async () => {
      const elsewhere = async (answers: IntakeAnswers, contact: object = {}) => {
        const { who, first, second } = await begun(answers);
        const sent = good(await submitEnquiry(second, { ...who, contact: { ...who.contact, ...contact } }, later(9)));
        expect(await rugsOf(first.enquiryId)).toHaveLength(1);
        return sent.enquiryId !== first.enquiryId;
      };
      expect(await elsewhere({ ...OTHER, wetNow: "no" })).toBe(true);
      expect(await elsewhere({ ...OTHER, reason: "older-trouble" })).toBe(true);
      expect(await elsewhere(OTHER, { email: "somebody.else@example.org" })).toBe(true);
      expect(await elsewhere(OTHER, { name: "Bo Example" })).toBe(true);
      const { who, first, second } = await begun();
      await database().rug.createMany({ data: Array.from({ length: LIMITS.maxRugs - 1 }, (_, n) => ({ id: randomUUID(), enquiryId: first.enquiryId, position: n + 2, title: "A rug" })) });
      expect(good(await submitEnquiry(second, who, later(9))).enquiryId).not.toBe(first.enquiryId);
    });
    it("shows on the page of each of two enquiries of one person the rugs of the other, and of another person's nothing", async () => {
      const { who, first, second } = await begun({ ...OTHER, wetNow: "no" });
      const apart = good(await submitEnquiry(second, who, later(9)));
      const beside = async (sent: typeof apart) => good(await readClientPage(await clientOf(sent), later(10))).beside;
      expect(await beside(apart)).toEqual([{ reference: first.reference, rugs: [expect.stringContaining("170 × 240")] }]);
      expect(await beside(first)).toEqual([{ reference: apart.reference, rugs: [expect.stringContaining("80 × 300")] }]);
      const theirs = await begun();
      const other = good(await submitEnquiry(theirs.second, person(), later(9)));
      expect([await beside(theirs.first), await beside(other)]).toEqual([[], []]);
    });
    it("makes an enquiry of its own once a letter of ours was approved, which stays as it is", async () => {
      const { who, first, second } = await begun();
      good(await approveReply(await staff("reviewer", "Ivo Castellane"), { enquiryId: first.enquiryId, number: 1 }, later(7)));
      expect(good(await submitEnquiry(second, who, later(9))).enquiryId).not.toBe(first.enquiryId);
      expect(await database().letter.findFirst({ where: { enquiryId: first.enquiryId, automatic: false } })).toMatchObject({ state: "held" });
    });
    it("refuses an approval of a letter that was opened before the rug came", async () => {
      const { who, first, second } = await begun();
      good(await submitEnquiry(second, who, later(9)));
      const number = (await database().draft.findUniqueOrThrow({ where: { enquiryId: first.enquiryId } })).number;
      expect(number).toBe(2);
      expect(await approveReply(await staff("reviewer", "Ivo Castellane"), { enquiryId: first.enquiryId, number, heard: null }, later(10))).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
    it("is erased with its enquiry, and so is what was begun and not sent; what became an enquiry of its own is not", async () => {
      const { who, first, second } = await begun();
      const sent = good(await submitEnquiry(second, who, later(9)));
      const unsent = await another(second, OTHER);
      const photo = good(await givePhoto(unsent));
      const apart = await another(second, { ...OTHER, wetNow: "no" });
      good(await submitEnquiry(apart, who, later(11)));
      good(await eraseEnquiry(await clientOf(sent), { enquiryId: first.enquiryId, typed: first.reference }, later(12)));
      expect(await database().intake.findMany({ where: { id: { in: [second.intakeId, unsent.intakeId, apart.intakeId] } }, select: { id: true } })).toEqual([{ id: apart.intakeId }]);
      expect(await database().photo.count({ where: { id: photo.id } })).toBe(0);
    });
  });
}
