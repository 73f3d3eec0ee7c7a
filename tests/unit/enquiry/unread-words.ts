import { describe, expect, it } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { standByDraft } from "../../../lib/enquiry/stand-by-draft";
import { ANSWER_HERE } from "../../../lib/reply/open-places";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { database } from "../../../lib/store/database";
import { answerOnce, clientOf, CURIOUS, givePhoto, good, later, staff, submitted } from "./workshop";

const ivo = () => staff("reviewer", "Ivo Castellane");
const BLEACHED = "I have bleached it in the bath now.";
const AGAIN = "Please stop, I have sold the rug.";
const viewOf = async (enquiryId: string, minutes: number) => good(await readEnquiry(await ivo(), enquiryId, later(minutes)));
const standing = async (enquiryId: string) => good(await readQueue(await ivo(), later(60))).waiting.find((s) => s.enquiryId === enquiryId)?.standing;
const sent = (enquiryId: string) => database().letter.count({ where: { enquiryId, automatic: false } });
/** Somebody's own words in the draft, kept after so many minutes. */
async function edited(enquiryId: string, minutes: number) {
  const { draft } = await viewOf(enquiryId, minutes);
  return good(await saveDraft(await ivo(), { enquiryId, from: draft?.number ?? 0, subject: draft?.subject ?? "", text: (draft?.text ?? "").replace(ANSWER_HERE, "Yes.") }, later(minutes))).number;
}
const writes = async (enquiry: Awaited<ReturnType<typeof submitted>>, message: string, minutes: number) => good(await sendFromClient(await clientOf(enquiry), { message }, later(minutes)));

/** What a client writes while a letter to them is being written: before our first one, and after the page was opened. */
export function unreadWords(): void {
  describe("a letter approved from a page that is older than the client's last words", () => {
    it.each([
      ["a message", async (enquiry: Awaited<ReturnType<typeof submitted>>) => writes(enquiry, BLEACHED, 3)],
      ["a photo", async (enquiry: Awaited<ReturnType<typeof submitted>>) => good(await givePhoto(await clientOf(enquiry), "trouble", later(3)))],
    ])("is refused past %s, sends nothing, and goes once that was seen", async (_, comes) => {
      const enquiry = await submitted(CURIOUS);
      const { enquiryId } = enquiry;
      const number = await edited(enquiryId, 1);
      const { heard } = await viewOf(enquiryId, 2);
      expect(heard).toBeNull();
      await comes(enquiry);
      expect(await approveReply(await ivo(), { enquiryId, number, heard, read: true }, later(4))).toMatchObject({
        ok: false, code: "changed-meanwhile", say: "Ana Example wrote, or sent something, after this page was opened. Nothing was sent, and your words are kept: read what came, then approve it again.",
      });
      expect(await viewOf(enquiryId, 5)).toMatchObject({ state: "new", draft: { number } });
      expect(await sent(enquiryId)).toBe(0);
      const { draft, heard: now } = await viewOf(enquiryId, 5);
      const looked = draft?.today ? good(await standByDraft(await ivo(), { enquiryId, from: number, mark: draft.today.mark }, later(6))).number : number;
      good(await approveReply(await ivo(), { enquiryId, number: looked, heard: now, read: true }, later(7)));
      expect((await viewOf(enquiryId, 8)).history.at(-1)?.what).toBe("approved the reply, having read what the client wrote meanwhile");
    });
    it("is refused as a question and by the second person too", async () => {
      const enquiry = await submitted(CURIOUS);
      const { enquiryId } = enquiry;
      good(await approveReply(await staff("trainee", "Wim Oakes"), { enquiryId, number: 1, heard: null }, later(1)));
      await writes(enquiry, BLEACHED, 3);
      const refusal = { ok: false, code: "changed-meanwhile", say: expect.stringContaining("after this page was opened") as string };
      expect(await secondReply(await ivo(), { enquiryId, heard: null }, later(4))).toMatchObject(refusal);
      expect(await askClient(await ivo(), { enquiryId, subject: "A question", text: "How old is it?", heard: null }, later(4))).toMatchObject(refusal);
      expect(await secondReply(await ivo(), { enquiryId, heard: (await viewOf(enquiryId, 5)).heard }, later(6)), "what came after the first approval, nobody has answered").toMatchObject({ ok: false, code: "invalid", fields: { read: expect.any(String) as string } });
      expect(await sent(enquiryId)).toBe(0);
    });
    it("takes no account of what the client did that tells us nothing", async () => {
      const enquiry = await submitted(CURIOUS);
      await database().audit.create({ data: { id: `copied-${enquiry.enquiryId}`, at: later(1), actorKind: "client", action: "copied", enquiryId: enquiry.enquiryId, detail: {} } });
      expect((await viewOf(enquiry.enquiryId, 2)).heard).toBeNull();
    });
  });

  describe("a message before our first letter", () => {
    it("stands beside the letter, leaves a place for its answer in a draft nobody has touched, and is named in the queue", async () => {
      const enquiry = await submitted(CURIOUS);
      const { enquiryId } = enquiry;
      expect(await viewOf(enquiryId, 1)).toMatchObject({ since: null, wordsWithoutPlace: 0 });
      await writes(enquiry, AGAIN, 3);
      const view = await viewOf(enquiryId, 4);
      expect(view).toMatchObject({ state: "new", since: { at: null, messages: [{ at: later(3).toISOString(), text: AGAIN }] }, wordsWithoutPlace: 0, draft: { by: "the program" } });
      const parts = view.draft?.text.split("\n\n") ?? [];
      expect(parts[parts.findIndex((part) => part.includes("answer this letter")) - 1]).toBe(ANSWER_HERE);
      expect(await standing(enquiryId)).toBe("the client wrote again");
      expect(await approveReply(await ivo(), { enquiryId, number: view.draft?.number ?? 0, heard: view.heard }, later(5))).toMatchObject({ ok: false, fields: { text: expect.stringContaining(ANSWER_HERE) as string } });
      await answerOnce(enquiryId, later(6));
      expect(await sent(enquiryId)).toBe(1);
    });
    it("wants to have been read where the draft was edited before it came, and each further one anew", async () => {
      const enquiry = await submitted(CURIOUS);
      const { enquiryId } = enquiry;
      const number = await edited(enquiryId, 1);
      await writes(enquiry, BLEACHED, 3);
      const view = await viewOf(enquiryId, 4);
      expect(view).toMatchObject({ since: { messages: [{ text: BLEACHED }] }, wordsWithoutPlace: 1, draft: { number, by: "Ivo Castellane" } });
      expect(await standing(enquiryId)).toBe("the client wrote again, draft edited by Ivo Castellane");
      const unread = await approveReply(await ivo(), { enquiryId, number, heard: view.heard }, later(5));
      expect(unread).toMatchObject({ ok: false, code: "invalid", fields: { read: "Say that you have read it." } });
      expect(await sent(enquiryId)).toBe(0);
      await writes(enquiry, AGAIN, 6);
      expect((await viewOf(enquiryId, 7)).wordsWithoutPlace).toBe(2);
      expect(await approveReply(await ivo(), { enquiryId, number, heard: view.heard, read: true }, later(8))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      good(await approveReply(await ivo(), { enquiryId, number, heard: (await viewOf(enquiryId, 9)).heard, read: true }, later(9)));
    });
    it("wants it too after an edit that began after the place, and came before the message", async () => {
      const enquiry = await submitted(CURIOUS);
      const { enquiryId } = enquiry;
      await writes(enquiry, BLEACHED, 1);
      const number = await edited(enquiryId, 3);
      expect((await viewOf(enquiryId, 4)).wordsWithoutPlace, "answered in its place").toBe(0);
      await writes(enquiry, AGAIN, 5);
      expect((await viewOf(enquiryId, 6)).wordsWithoutPlace).toBe(1);
      expect(await approveReply(await ivo(), { enquiryId, number }, later(7))).toMatchObject({ ok: false, fields: { read: expect.any(String) as string } });
    });
    it("wants nothing more of what was read before a letter that was taken back, and names the next one alone", async () => {
      const enquiry = await submitted(CURIOUS);
      const { enquiryId } = enquiry;
      const number = await edited(enquiryId, 1);
      await writes(enquiry, BLEACHED, 3);
      const { letterId } = good(await approveReply(await ivo(), { enquiryId, number, read: true }, later(4)));
      good(await takeBackLetter(await ivo(), letterId, later(5)));
      expect((await viewOf(enquiryId, 6)).wordsWithoutPlace).toBe(0);
      await writes(enquiry, AGAIN, 7);
      expect((await viewOf(enquiryId, 8)).wordsWithoutPlace).toBe(1);
      expect(await approveReply(await ivo(), { enquiryId, number }, later(9))).toMatchObject({ ok: false, fields: { read: expect.any(String) as string } });
    });
    it("is answered by the letter, and wants nothing after it", async () => {
      const enquiry = await submitted(CURIOUS);
      const { enquiryId } = enquiry;
      await edited(enquiryId, 1);
      await writes(enquiry, BLEACHED, 3);
      good(await approveReply(await ivo(), { enquiryId, number: 2, read: true }, later(4)));
      await database().letter.updateMany({ where: { enquiryId, automatic: false }, data: { state: "sent", sentAt: later(9) } });
      await writes(enquiry, "Thank you.", 20);
      expect(await viewOf(enquiryId, 21)).toMatchObject({ wordsWithoutPlace: 0, since: { at: later(4).toISOString(), messages: [{ text: "Thank you." }] } });
    });
  });
}
