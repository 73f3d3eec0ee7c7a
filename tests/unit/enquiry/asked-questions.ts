import { describe, expect, it, onTestFinished } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { openQuestions } from "../../../lib/reply/questions-asked";
import { ANSWER_HERE } from "../../../lib/reply/open-places";
import { database } from "../../../lib/store/database";
import { readSettings } from "../../../lib/workshop/settings";
import { clientOf, CURIOUS, good, later, leaves, staff, submitted, SYSTEM } from "./workshop";

const ivo = () => staff("reviewer", "Ivo Castellane");
const COLLECT = "Do you collect?";
const SILK = "Is it really silk?";
const asking = (...questions: string[]) => submitted({ ...CURIOUS, rug: { ...CURIOUS.rug, story: `It was my aunt’s. ${questions.join(" ")}` } });
const viewOf = async (enquiryId: string, minutes: number) => good(await readEnquiry(await ivo(), enquiryId, later(minutes)));
async function openIn(enquiryId: string, minutes: number) {
  const { asked, draft } = await viewOf(enquiryId, minutes);
  return asked && openQuestions(asked, draft?.text ?? "");
}
const sent = (enquiryId: string) => database().letter.count({ where: { enquiryId, automatic: false } });
/** The draft with something in it written otherwise, kept after so many minutes. */
async function edited(enquiryId: string, edit: (text: string) => string, minutes: number) {
  const { draft } = await viewOf(enquiryId, minutes);
  return good(await saveDraft(await ivo(), { enquiryId, from: draft?.number ?? 0, subject: draft?.subject ?? "", text: edit(draft?.text ?? "") }, later(minutes))).number;
}
const UNSEEN = { ok: false, code: "invalid", say: expect.stringContaining(`asks “${COLLECT}”`) as string, fields: { asked: expect.any(String) as string } };

/** What a client asked in their own words, and a letter that does not plainly answer it. */
export function askedQuestions(): void {
  describe("a question that the letter does not plainly answer", () => {
    it("holds the letter until somebody says that they have read it; the history keeps that", async () => {
      const { enquiryId } = await asking(SILK, COLLECT);
      expect(await openIn(enquiryId, 1)).toEqual([COLLECT]);
      expect(await approveReply(await ivo(), { enquiryId, number: 1 }, later(2))).toMatchObject(UNSEEN);
      expect(await viewOf(enquiryId, 3)).toMatchObject({ state: "new", draft: { number: 1 } });
      expect(await sent(enquiryId)).toBe(0);
      good(await approveReply(await ivo(), { enquiryId, number: 1, asked: [COLLECT] }, later(4)));
      expect((await viewOf(enquiryId, 5)).history.at(-1)?.what).toBe("approved the reply, having read one question that it does not plainly answer");
    });
    it("asks nothing of whoever approves a letter whose own paragraphs answer all of it", async () => {
      const { enquiryId } = await asking(SILK);
      good(await approveReply(await ivo(), { enquiryId, number: 1 }, later(2)));
      expect((await viewOf(enquiryId, 5)).history.at(-1)?.what).toBe("approved the reply");
    });
    it("is one that an edit left without its answer, and was not on the page of somebody who looked before", async () => {
      const { enquiryId } = await asking(SILK, COLLECT);
      const number = await edited(enquiryId, (text) => text.split("\n\n").filter((block) => !block.startsWith("Going by")).join("\n\n"), 2);
      expect(await openIn(enquiryId, 3)).toEqual([SILK, COLLECT]);
      expect(await approveReply(await ivo(), { enquiryId, number, asked: [COLLECT] }, later(4))).toMatchObject({ ok: false, code: "changed-meanwhile", fields: { asked: expect.any(String) as string } });
      expect(await sent(enquiryId)).toBe(0);
      good(await approveReply(await ivo(), { enquiryId, number, asked: [SILK, COLLECT] }, later(5)));
    });
    it("is answered by a block of somebody's own that is about it, in a first letter as well, and by no other", async () => {
      const { enquiryId } = await asking(SILK, "May I put vinegar on it?", COLLECT);
      const VINEGAR = "May I put vinegar on it?";
      const before = await openIn(enquiryId, 1);
      expect(before).toContain(COLLECT);
      const put = (block: string) => (text: string) => text.replace("\n\nWith kind regards", `\n\n${block}\n\nWith kind regards`);
      await edited(enquiryId, put("The parquet below is fine."), 2);
      expect(await openIn(enquiryId, 3)).toEqual(before);
      await edited(enquiryId, put("Please put no vinegar on it."), 4);
      expect(await openIn(enquiryId, 5)).toEqual(before?.filter((q) => q !== VINEGAR));
      const number = await edited(enquiryId, put("Yes, we collect on Thursdays."), 6);
      expect(await openIn(enquiryId, 7)).toEqual([]);
      good(await approveReply(await ivo(), { enquiryId, number }, later(8)));
      expect((await viewOf(enquiryId, 9)).history.at(-1)?.what).toBe("approved the reply");
    });
    it("is looked at once for both people where a trainee approves", async () => {
      const { enquiryId } = await asking(COLLECT);
      const wim = await staff("trainee", "Wim Oakes");
      expect(await approveReply(wim, { enquiryId, number: 1 }, later(1))).toMatchObject(UNSEEN);
      good(await approveReply(wim, { enquiryId, number: 1, asked: [COLLECT] }, later(2)));
      good(await secondReply(await ivo(), { enquiryId }, later(3)));
      expect(await sent(enquiryId)).toBe(1);
    });
    it("does not come back once a letter has answered it, nor is anything asked while none is written", async () => {
      const enquiry = await asking(COLLECT);
      const { enquiryId } = enquiry;
      const { letterId } = good(await approveReply(await ivo(), { enquiryId, number: 1, asked: [COLLECT] }, later(2)));
      expect((await viewOf(enquiryId, 3)).asked).toBeNull();
      await leaves(letterId, later(7));
      good(await sendFromClient(await clientOf(enquiry), { message: "Thank you. May I bring it on Monday?" }, later(10)));
      expect((await viewOf(enquiryId, 11)).asked?.questions.map((q) => q.question)).toEqual(["May I bring it on Monday?"]);
    });
    it("is answered by what somebody writes in the place of a first letter to a client who wrote again, whatever else they take out of it", async () => {
      const enquiry = await asking(SILK, COLLECT);
      const { enquiryId } = enquiry;
      good(await sendFromClient(await clientOf(enquiry), { message: "I forgot: may I bring it on Monday?" }, later(1)));
      const { draft, asked } = await viewOf(enquiryId, 2);
      expect(draft?.text).toContain(ANSWER_HERE);
      expect(asked?.questions.map((q) => q.hasPlace)).toEqual([true, true, true]);
      const filled = await edited(enquiryId, (text) => text.replace(ANSWER_HERE, "Yes, we collect, and Monday is fine.").split("\n\n").filter((block) => !block.startsWith("If any part")).join("\n\n"), 3);
      expect(await openIn(enquiryId, 4)).toEqual([]);
      good(await approveReply(await ivo(), { enquiryId, number: filled }, later(5)));
      expect((await viewOf(enquiryId, 6)).history.at(-1)?.what).toBe("approved the reply");
    });
    it("is answered by what the settings say of collecting and of weeks, in drafts that were written before they were set, and a price of it is not", async () => {
      const before = await readSettings();
      onTestFinished(async () => void good(await saveSettings(SYSTEM, before)));
      const LONG = "How long does it take?";
      const [plain, priced] = [await asking(COLLECT, LONG), await asking(COLLECT, "What would that cost?")];
      expect(await openIn(plain.enquiryId, 1)).toEqual([COLLECT, LONG]);
      good(await saveSettings(SYSTEM, { ...before, collecting: "We collect within 15 miles of Hallowmere", workWeeks: { low: 3, high: 6 } }, later(2)));
      const { draft } = await viewOf(plain.enquiryId, 3);
      expect(draft?.text).toContain("We collect within 15 miles of Hallowmere.");
      expect(draft?.text.replaceAll("\u00a0", " ")).toContain("usually takes 3 to 6 weeks");
      expect(await openIn(plain.enquiryId, 3)).toEqual([]);
      expect(await openIn(priced.enquiryId, 3)).toEqual(["What would that cost?"]);
    });
    it("is answered by what somebody writes in its place in a letter that follows, and holds one whose place was taken out", async () => {
      const enquiry = await asking(COLLECT);
      const { enquiryId } = enquiry;
      await leaves(good(await approveReply(await ivo(), { enquiryId, number: 1, asked: [COLLECT] }, later(2))).letterId, later(7));
      good(await sendFromClient(await clientOf(enquiry), { message: COLLECT }, later(10)));
      const without = await edited(enquiryId, (text) => text.replace(`${ANSWER_HERE}\n\n`, ""), 11);
      expect(await approveReply(await ivo(), { enquiryId, number: without }, later(12))).toMatchObject(UNSEEN);
      const number = await edited(enquiryId, (text) => text.replace("\n\nWith kind regards", "\n\nYes, on Thursdays.\n\nWith kind regards"), 13);
      good(await approveReply(await ivo(), { enquiryId, number }, later(14)));
      expect(await sent(enquiryId)).toBe(2);
    });
  });
}
