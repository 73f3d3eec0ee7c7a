import { describe, expect, it, onTestFinished } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { standByDraft } from "../../../lib/enquiry/stand-by-draft";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { takenIn } from "../../../lib/reply/changes";
import { ANSWER_HERE } from "../../../lib/reply/open-places";
import type { RugAnswers } from "../../../lib/trade/questions";
import { database } from "../../../lib/store/database";
import { readSettings } from "../../../lib/workshop/settings";
import { clientOf, givePhoto, good, later, leaves, staff, submitted, SYSTEM } from "./workshop";

const WOOL: RugAnswers = { labelFound: "typed", labelText: "100% wool", widthCm: 200, lengthCm: 300, incidents: ["nothing"], changes: ["dirty"], touch: "springy", back: "knots", age: "2-5" };
const ivo = () => staff("reviewer", "Ivo Castellane");
const dryRug = (rug: RugAnswers) => submitted({ wetNow: "no", reason: "routine", rug });
const dirtyWool = () => dryRug(WOOL);
const viewOf = async (enquiryId: string, minutes = 20) => good(await readEnquiry(await ivo(), enquiryId, later(minutes)));
const draftOf = async (enquiryId: string) => {
  const { draft } = await viewOf(enquiryId);
  if (!draft) throw new Error("Expected a draft but there is none");
  return draft;
};
const approve = async (enquiryId: string, number: number, minutes = 2) => approveReply(await ivo(), { enquiryId, number }, later(minutes));
/** An enquiry whose first letter went out after two minutes; the client then asked something after ten. */
async function asked(message = "May I bring it on Thursday?", rug = WOOL) {
  const enquiry = await dryRug(rug);
  const { letterId } = good(await approve(enquiry.enquiryId, 1));
  await leaves(letterId, later(7));
  good(await sendFromClient(await clientOf(enquiry), { message }, later(10)));
  return { ...enquiry, letterId };
}
const resized = async (enquiryId: string, size: { widthCm: number; lengthCm: number }, minutes: number) => {
  const rug = await database().rug.findFirstOrThrow({ where: { enquiryId } });
  good(await correctAnswer(await ivo(), { rugId: rug.id, step: "size", values: { unit: "cm", widthCm: String(size.widthCm), lengthCm: String(size.lengthCm) }, seen: false }, later(minutes)));
};
const priceIn = (text: string) => /Cleaning would cost about (\S+)/.exec(text)?.[1];
const edited = async (enquiryId: string) => {
  const { number, subject, text } = await draftOf(enquiryId);
  return { subject, text: `${text}\n\nWe close in August.`, number: good(await saveDraft(await ivo(), { enquiryId, from: number, subject, text: `${text}\n\nWe close in August.` }, later(11))).number };
};

/** Letters after the first one, and drafts whose assessment moved. */
export function following(): void {
  describe("the draft after a client's answer to our letter", () => {
    it("is short: it thanks for what came and leaves a place for the answer, without which it does not leave", async () => {
      const { enquiryId } = await asked();
      const draft = await draftOf(enquiryId);
      expect(draft.text).toBe(`Dear Ana Example,\n\nThank you for your message.\n\n${ANSWER_HERE}\n\nWith kind regards,\nLantern Yard Rug Workshop`);
      expect(await approve(enquiryId, draft.number, 20)).toMatchObject({ ok: false, code: "invalid", fields: { text: expect.stringContaining(ANSWER_HERE) as string } });
      const text = draft.text.replace(ANSWER_HERE, "Thursday suits us well, from eight o’clock on.");
      const { number } = good(await saveDraft(await ivo(), { enquiryId, from: draft.number, subject: draft.subject, text }, later(21)));
      good(await approve(enquiryId, number, 22));
      expect((await database().letter.findFirstOrThrow({ where: { enquiryId, text: { contains: "Thursday suits us" } } })).state).toBe("held");
    });
    it("need not repeat a caution that a letter of ours told, which a first letter may not leave out", async () => {
      const eaten: RugAnswers = { ...WOOL, incidents: ["insects"], changes: ["bare"] };
      const first = await dryRug(eaten);
      const short = good(await saveDraft(await ivo(), { enquiryId: first.enquiryId, from: 1, subject: "Your rug", text: "Dear Ana,\n\nPlease ring us." }, later(1)));
      expect(await approve(first.enquiryId, short.number)).toMatchObject({ ok: false, code: "promises-too-much", say: expect.stringContaining("to use no insecticide") as string });
      const { enquiryId } = await asked("When are you open?", eaten);
      const { number, subject, text } = await draftOf(enquiryId);
      expect(text).not.toContain("insecticide");
      const answered = good(await saveDraft(await ivo(), { enquiryId, from: number, subject, text: text.replace(ANSWER_HERE, "From eight o’clock on.") }, later(21)));
      good(await approve(enquiryId, answered.number, 22));
    });
    it("shows the client's words and offers the whole letter", async () => {
      const { enquiryId } = await asked();
      const { since, draft } = await viewOf(enquiryId);
      expect(since).toEqual({ at: later(2).toISOString(), leftAt: later(7).toISOString(), hasLeft: true, messages: [{ at: later(10).toISOString(), cameAt: null, text: "May I bring it on Thursday?", other: null, owned: null, enclosed: null, hidesPerhaps: null }], answers: false, photos: 0 });
      expect(draft?.today?.whole?.text).toMatch(/Going by [^]*hidden corner/);
      expect(draft?.today?.changes).toEqual([]);
    });
    it("says again what changed since, and names photos", async () => {
      const enquiry = await asked();
      const { enquiryId } = enquiry;
      const before = (await database().letter.findFirstOrThrow({ where: { id: enquiry.letterId } })).text;
      await resized(enquiryId, { widthCm: 300, lengthCm: 400 }, 12);
      good(await givePhoto(await clientOf(enquiry), "back", later(13)));
      const { text } = await draftOf(enquiryId);
      expect(text).toMatch(/^Dear Ana Example,\n\nThank you for your message and the new photo\.\n\n\{Your answer to what they wrote\}\n\nWith what you have sent us since, our answer has changed\. This replaces what we wrote before about [^.]*what cleaning costs\.\n\n/);
      expect(priceIn(text)).not.toBe(priceIn(before));
      expect(text).not.toContain("With what you have sent us since, our answer has changed. With");
    });
    it("thanks for no photo that the workshop added itself", async () => {
      const { enquiryId } = await asked();
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      good(await givePhoto(await ivo(), "back", later(13), rug.id));
      expect((await draftOf(enquiryId)).text).toMatch(/^Dear Ana Example,\n\nThank you for your message\.\s/);
      expect((await viewOf(enquiryId)).since).toMatchObject({ photos: 0 });
    });
    it("is the whole letter again where the first was taken back, and where only a question went out", async () => {
      const back = await dirtyWool();
      const { letterId } = good(await approve(back.enquiryId, 1));
      good(await takeBackLetter(await ivo(), letterId, later(3)));
      good(await sendFromClient(await clientOf(back), { message: "And the fringe?" }, later(10)));
      expect((await draftOf(back.enquiryId)).text).toMatch(/Going by/);
      const questioned = await dirtyWool();
      await leaves(good(await askClient(await ivo(), { enquiryId: questioned.enquiryId, subject: "A question", text: "How old is it?" }, later(2))).letterId, later(7));
      good(await sendFromClient(await clientOf(questioned), { message: "Three years." }, later(10)));
      expect(await viewOf(questioned.enquiryId)).toMatchObject({ since: { at: null, messages: [{ text: "Three years." }] }, draft: { text: expect.stringMatching(/Going by/) as string, today: { whole: null } } });
    });
    it("is the whole letter where the last one came back", async () => {
      const enquiry = await dirtyWool();
      const { letterId } = good(await approve(enquiry.enquiryId, 1));
      await database().letter.update({ where: { id: letterId }, data: { state: "failed" } });
      good(await sendFromClient(await clientOf(enquiry), { message: "I heard nothing?" }, later(10)));
      expect((await draftOf(enquiry.enquiryId)).text).toMatch(/Going by/);
    });
  });

  describe("a follow-up whose assessment moved while somebody edited it", () => {
    /** The answer is written, then the size turns out otherwise and every new wording is taken in; one draft of the program stood before it. */
    async function allTakenIn(): Promise<{ enquiry: Awaited<ReturnType<typeof asked>>; text: string; number: number }> {
      const enquiry = await asked();
      const { enquiryId } = enquiry;
      const { number, subject, text } = await draftOf(enquiryId);
      const answered = good(await saveDraft(await ivo(), { enquiryId, from: number, subject, text: text.replace(ANSWER_HERE, "Thursday suits us well.") }, later(11))).number;
      await resized(enquiryId, { widthCm: 300, lengthCm: 400 }, 12);
      const draft = await draftOf(enquiryId);
      const whole = (draft.today?.changes ?? []).reduce((all, change) => takenIn(change, all), draft.text);
      const kept = good(await saveDraft(await ivo(), { enquiryId, from: answered, subject: draft.today?.subject?.now ?? draft.subject, text: whole }, later(13)));
      return { enquiry, text: whole, number: kept.number };
    }
    it("names what changed in its opening once the new price is taken in, between the answer and the closing", async () => {
      const { text } = await allTakenIn();
      expect(text).toMatch(/Thank you for your message\.\n\nThursday suits us well\.\n\nWith what you have sent us since, our answer has changed\. This replaces what we wrote before about what cleaning costs\.\n\nCleaning would cost about [^]*With kind regards,/);
    });
    it("is what the next letter follows: that takes nothing back that was told, and what moves then is held against it", async () => {
      const { enquiry, number } = await allTakenIn();
      const { enquiryId } = enquiry;
      const { letterId } = good(await approve(enquiryId, number, 14));
      await leaves(letterId, later(15));
      good(await sendFromClient(await clientOf(enquiry), { message: "Thank you. And the fringe?" }, later(16)));
      expect((await draftOf(enquiryId)).text).toBe(`Dear Ana Example,\n\nThank you for your message.\n\n${ANSWER_HERE}\n\nWith kind regards,\nLantern Yard Rug Workshop`);
    });
    it("is held against what it was before once somebody goes back to the words that stood there, and then stands by them", async () => {
      const { enquiry: { enquiryId }, number } = await allTakenIn();
      const mine = await database().revision.findFirstOrThrow({ where: { draft: { enquiryId }, text: { contains: "Thursday suits us well." } }, orderBy: { number: "asc" } });
      expect((await draftOf(enquiryId)).today?.changes).toEqual([]);
      const back = good(await saveDraft(await ivo(), { enquiryId, from: number, subject: mine.subject, text: mine.text }, later(14))).number;
      const draft = await draftOf(enquiryId);
      expect(draft.today?.changes.map((c) => c.place)).toContain("Price");
      expect(await approve(enquiryId, back, 15)).toMatchObject({ ok: false, code: "changed-meanwhile" });
      const stood = good(await standByDraft(await ivo(), { enquiryId, from: back, mark: draft.today?.mark ?? "" }, later(16))).number;
      const more = good(await saveDraft(await ivo(), { enquiryId, from: stood, subject: mine.subject, text: `${mine.text} And more.` }, later(17))).number;
      good(await saveDraft(await ivo(), { enquiryId, from: more, subject: mine.subject, text: mine.text }, later(18)));
      expect((await draftOf(enquiryId)).today?.changes).toEqual([]);
    });
    it("is held against what was taken in where it moves once more, and says the newer price in place of that", async () => {
      const { enquiry: { enquiryId }, text } = await allTakenIn();
      await resized(enquiryId, { widthCm: 100, lengthCm: 150 }, 14);
      const price = (await draftOf(enquiryId)).today?.changes.find((c) => c.place === "Price");
      expect(price && text.includes(price.was ?? "")).toBe(true);
      expect(priceIn(price ? takenIn(price, text) : "")).toBe(priceIn(price?.now ?? ""));
    });
  });

  describe("a change of the workshop's units", () => {
    it("is told by the subject of a draft nobody has touched, and said of one that somebody edited", async () => {
      const before = await readSettings();
      onTestFinished(async () => void good(await saveSettings(SYSTEM, before)));
      good(await saveSettings(SYSTEM, { ...before, areaUnit: "m2" }, later(1)));
      const [untouched, touched] = [await dirtyWool(), await dirtyWool()];
      expect((await draftOf(untouched.enquiryId)).subject).toContain("200 × 300");
      const mine = await edited(touched.enquiryId);
      good(await saveSettings(SYSTEM, { ...before, areaUnit: "sqft" }, later(12)));
      expect((await draftOf(untouched.enquiryId)).subject).not.toContain("200 × 300");
      const draft = await draftOf(touched.enquiryId);
      expect(draft.subject).toBe(mine.subject);
      expect(draft.today?.subject).toEqual({ was: mine.subject, now: (await draftOf(untouched.enquiryId)).subject });
      expect(await approve(touched.enquiryId, mine.number, 13)).toMatchObject({ ok: false, say: expect.stringContaining("at: Subject") as string });
    });
  });

  describe("a draft that somebody edited before the assessment moved", () => {
    it("is not written over, says what would read otherwise, and leaves only once that was looked at", async () => {
      const { enquiryId } = await dirtyWool();
      const mine = await edited(enquiryId);
      await resized(enquiryId, { widthCm: 100, lengthCm: 100 }, 12);
      const draft = await draftOf(enquiryId);
      expect(draft).toMatchObject({ text: mine.text, number: mine.number });
      const price = draft.today?.changes.find((c) => c.place === "Price");
      expect(priceIn(price?.was ?? "")).toBe(priceIn(mine.text));
      expect(priceIn(price?.now ?? "")).not.toBe(priceIn(mine.text));
      expect(await approve(enquiryId, mine.number, 13)).toMatchObject({ ok: false, code: "changed-meanwhile", say: expect.stringMatching(/assessment or the paragraphs changed.*Price/) as string });
      const { number } = good(await standByDraft(await ivo(), { enquiryId, from: mine.number, mark: draft.today?.mark ?? "" }, later(14)));
      expect(await draftOf(enquiryId)).toMatchObject({ number, text: mine.text, by: "Ivo Castellane", today: { changes: [], subject: null } });
      good(await approve(enquiryId, number, 15));
      expect((await viewOf(enquiryId)).history.map((h) => h.what)).toContain("looked at what changed since the draft was written, and left the draft as it was");
    });
    it("leaves without another look once every new wording was taken in", async () => {
      const { enquiryId } = await dirtyWool();
      const mine = await edited(enquiryId);
      await resized(enquiryId, { widthCm: 100, lengthCm: 100 }, 12);
      const { today } = await draftOf(enquiryId);
      const text = (today?.changes ?? []).reduce((all, change) => takenIn(change, all), mine.text);
      const { number } = good(await saveDraft(await ivo(), { enquiryId, from: mine.number, subject: today?.subject?.now ?? mine.subject, text }, later(13)));
      expect(priceIn(text)).not.toBe(priceIn(mine.text));
      expect(text).toContain("We close in August.");
      good(await approve(enquiryId, number, 14));
    });
    it("is not passed over for a change that came after the look", async () => {
      const { enquiryId } = await dirtyWool();
      const mine = await edited(enquiryId);
      await resized(enquiryId, { widthCm: 100, lengthCm: 100 }, 12);
      const mark = (await draftOf(enquiryId)).today?.mark ?? "";
      await resized(enquiryId, { widthCm: 300, lengthCm: 400 }, 13);
      expect(await standByDraft(await ivo(), { enquiryId, from: mine.number, mark }, later(14))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await database().revision.count({ where: { draft: { enquiryId } } })).toBe(2);
    });
    it("is not sent by a second person either, and standing by it ends the waiting", async () => {
      const { enquiryId } = await dirtyWool();
      const pia = await staff("trainee", "Pia Wetherby");
      expect(good(await approveReply(pia, { enquiryId, number: 1 }, later(2))).waitsForSecond).toBe(true);
      await resized(enquiryId, { widthCm: 100, lengthCm: 100 }, 12);
      expect(await secondReply(await ivo(), { enquiryId }, later(13))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      const draft = await draftOf(enquiryId);
      good(await standByDraft(await ivo(), { enquiryId, from: draft.number, mark: draft.today?.mark ?? "" }, later(14)));
      expect((await viewOf(enquiryId)).waitsForSecond).toBeNull();
    });
    it("is nobody's to stand by who may not edit it", async () => {
      const enquiry = await dirtyWool();
      expect(await standByDraft(await clientOf(enquiry), { enquiryId: enquiry.enquiryId, from: 1, mark: "" }, later(1))).toMatchObject({ ok: false });
      expect(await standByDraft({ kind: "public", addressHash: null }, { enquiryId: enquiry.enquiryId, from: 1, mark: "" }, later(1))).toMatchObject({ ok: false });
      expect(await standByDraft(await ivo(), { enquiryId: "nowhere", from: 1, mark: "" }, later(1))).toMatchObject({ ok: false, code: "not-found" });
    });
  });
}
