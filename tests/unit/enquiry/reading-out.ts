import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import { asSeen } from "../../../lib/enquiry/client-schema";
import { correctClient } from "../../../lib/enquiry/correct-client";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { enterEnquiry } from "../../../lib/enquiry/enter-enquiry";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { recordReadOut, takeReadOutBack } from "../../../lib/enquiry/read-out";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { database } from "../../../lib/store/database";
import { clientOf, CURIOUS, good, later, NOW, staff, submitted } from "./workshop";

const ivo = () => staff("reviewer", "Ivo Castellane");
const viewOf = async (enquiryId: string, minutes = 20) => good(await readEnquiry(await ivo(), enquiryId, later(minutes)));
const slipOf = async (enquiryId: string) => good(await readQueue(await ivo(), later(60))).waiting.find((s) => s.enquiryId === enquiryId);
/** Somebody rang, and left no e-mail address. */
async function rang() {
  const { enquiryId } = good(await enterEnquiry(await ivo(), { channel: "telephone", client: { name: "Odd Farrow", telephone: "01632 960 112" }, wetNow: "no", rugs: [{ labelText: "100% wool", labelFound: "typed", widthCm: 100, lengthCm: 200 }] }, NOW));
  const { letterId } = good(await approveReply(await ivo(), { enquiryId, number: 1 }, later(2)));
  return { enquiryId, letterId };
}

/** Letters to clients who have no address: somebody has to tell them. */
export function readingOut(): void {
  describe("a letter to a client without an e-mail address", () => {
    it("stays our turn until somebody records that they rang and read it out, and then is theirs", async () => {
      const { enquiryId, letterId } = await rang();
      expect(await viewOf(enquiryId)).toMatchObject({ state: "new", stateSince: NOW.toISOString(), may: { approve: false }, letters: [{ isToBeReadOut: true, says: "Not sent: the client left no e-mail address. Ring them, and read it out." }] });
      expect((await slipOf(enquiryId))?.standing).toBe("ring them: our letter is to be read out");
      good(await recordReadOut(await staff("trainee", "Pia"), letterId, later(30)));
      expect(await viewOf(enquiryId)).toMatchObject({ state: "their_turn", stateSince: later(30).toISOString(), letters: [{ state: "sent", isToBeReadOut: false, canTakeBack: false, sentAt: later(30).toISOString(), says: "Read out on the telephone." }] });
      expect((await viewOf(enquiryId)).history.at(-1)).toMatchObject({ who: "Pia", what: "rang the client and read the letter out" });
      expect(await slipOf(enquiryId)).toBeUndefined();
    });
    it("is approved by one person and recorded by one, however many press at once", async () => {
      const { enquiryId, letterId } = await rang();
      expect(await approveReply(await ivo(), { enquiryId, number: 1 }, later(3))).toMatchObject({ ok: false, say: "You have approved a letter here already. Nothing more was sent." });
      const all = await Promise.all([1, 2, 3].map(async () => recordReadOut(await ivo(), letterId, later(30))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(all.find((r) => !r.ok)).toMatchObject({ code: "changed-meanwhile" });
      expect(await database().audit.count({ where: { enquiryId, action: "letter-read-out" } })).toBe(1);
    });
    it("cannot be recorded once it was taken back, nor taken back once it was read out", async () => {
      const back = await rang();
      good(await takeBackLetter(await ivo(), back.letterId, later(3)));
      expect(await viewOf(back.enquiryId)).toMatchObject({ state: "new", may: { approve: true } });
      expect(await recordReadOut(await ivo(), back.letterId, later(4))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      const told = await rang();
      good(await recordReadOut(await ivo(), told.letterId, later(3)));
      expect(await takeBackLetter(await ivo(), told.letterId, later(4))).toMatchObject({ ok: false, code: "changed-meanwhile" });
    });
    it("is not told while nobody rang: what is drafted then is the whole letter", async () => {
      const { enquiryId } = await rang();
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      good(await correctAnswer(await ivo(), { rugId: rug.id, step: "size", values: { unit: "cm", widthCm: "300", lengthCm: "400" }, seen: false }, later(10)));
      const view = await viewOf(enquiryId);
      expect(view).toMatchObject({ state: "new", since: null, draft: { by: "the program", today: { whole: null } } });
      expect((await slipOf(enquiryId))?.standing).toBe("new");
    });
    it("leaves the turn with us where a newer letter is to be read out still", async () => {
      const { enquiryId, letterId } = await rang();
      const question = good(await askClient(await ivo(), { enquiryId, subject: "A question", text: "How old is it?" }, later(5)));
      good(await recordReadOut(await ivo(), letterId, later(6)));
      expect((await viewOf(enquiryId)).state).toBe("new");
      good(await recordReadOut(await ivo(), question.letterId, later(7)));
      expect((await viewOf(enquiryId)).state).toBe("their_turn");
    });
    it("is to be read out still where somebody takes back that it was, and ours since when it was: until the holding time is over, and not from then on", async () => {
      const { enquiryId, letterId } = await rang();
      const before = await viewOf(enquiryId);
      good(await recordReadOut(await ivo(), letterId, later(30)));
      expect((await viewOf(enquiryId, 34)).letters).toMatchObject([{ readOutUntil: later(35).toISOString() }]);
      good(await takeReadOutBack(await staff("trainee", "Pia"), letterId, new Date(later(35).getTime() - 1)));
      const after = await viewOf(enquiryId, 35);
      expect(after).toMatchObject({ state: "new", stateSince: before.stateSince, letters: [{ state: "waiting", isToBeReadOut: true, sentAt: null, readOutUntil: null }] });
      expect(after.history.at(-1)).toMatchObject({ who: "Pia", what: "took back that the letter was read out" });
      expect((await slipOf(enquiryId))?.standing).toBe("ring them: our letter is to be read out");
      good(await recordReadOut(await ivo(), letterId, later(40)));
      expect((await viewOf(enquiryId, 45)).letters).toMatchObject([{ readOutUntil: null }]);
      expect(await takeReadOutBack(await ivo(), letterId, later(45))).toMatchObject({ ok: false, code: "changed-meanwhile", say: expect.stringContaining("second letter") as string });
      expect(await viewOf(enquiryId, 46)).toMatchObject({ state: "their_turn", letters: [{ state: "sent" }] });
    });
    it("is spoken of as told where an address comes after it was read out, and not where it only waited", async () => {
      for (const isRead of [true, false]) {
        const { enquiryId, letterId } = await rang();
        if (isRead) good(await recordReadOut(await ivo(), letterId, later(3)));
        const { client: { name, email, telephone } } = await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { client: true } });
        good(await correctClient(await ivo(), { enquiryId, seen: asSeen({ name, email, telephone }), contact: { name, email: `${randomUUID()}@example.org`, telephone }, isSomebodyElses: false }, later(4)));
        const { text } = await database().letter.findFirstOrThrow({ where: { enquiryId, automatic: true } });
        expect(text.includes("What we have told you so far stands on your own page"), String(isRead)).toBe(isRead);
        expect(text.includes("answers you"), String(isRead)).toBe(!isRead);
      }
    });
    it("is taken back once, by people here alone, and leaves an enquiry alone that has gone on meanwhile", async () => {
      const { enquiryId, letterId } = await rang();
      expect(await takeReadOutBack(await ivo(), letterId, later(29)), "nobody said so").toMatchObject({ ok: false, code: "changed-meanwhile" });
      good(await recordReadOut(await ivo(), letterId, later(30)));
      good(await moveEnquiry(await ivo(), { enquiryId, from: "their_turn", to: "coming_in" }, later(31)));
      for (const caller of [await clientOf(await submitted(CURIOUS)), { kind: "public", addressHash: null } as const]) expect(await takeReadOutBack(caller, letterId, later(32))).toMatchObject({ ok: false });
      const all = await Promise.all([1, 2, 3].map(async () => takeReadOutBack(await ivo(), letterId, later(32))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(all.find((r) => !r.ok)).toMatchObject({ code: "changed-meanwhile" });
      expect(await database().audit.count({ where: { enquiryId, action: "read-out-taken-back" } })).toBe(1);
      expect(await viewOf(enquiryId)).toMatchObject({ state: "coming_in", letters: [{ isToBeReadOut: true }] });
    });
    it("is none of an acknowledgement's, of a client's with an address, nor of anybody outside", async () => {
      const enquiry = await submitted(CURIOUS);
      const { letterId } = good(await approveReply(await ivo(), { enquiryId: enquiry.enquiryId, number: 1 }, later(2)));
      const first = await database().letter.findFirstOrThrow({ where: { enquiryId: enquiry.enquiryId, automatic: true } });
      for (const id of [letterId, first.id, "no-such-letter"]) for (const deed of [recordReadOut, takeReadOutBack]) expect(await deed(await ivo(), id, later(3))).toMatchObject({ ok: false, code: "not-found" });
      expect(await recordReadOut(await clientOf(enquiry), letterId, later(3))).toMatchObject({ ok: false });
      expect((await viewOf(enquiry.enquiryId)).state).toBe("their_turn");
    });
    it("is ours again where the address is taken away before it left", async () => {
      const enquiry = await submitted(CURIOUS, { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true });
      const { enquiryId } = enquiry;
      const { letterId } = good(await approveReply(await ivo(), { enquiryId, number: 1 }, later(2)));
      const { client: { name, email, telephone } } = await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { client: true } });
      good(await correctClient(await ivo(), { enquiryId, seen: asSeen({ name, email, telephone }), contact: { name, email: null, telephone: "01632 960 113" }, isSomebodyElses: false }, later(3)));
      expect(await viewOf(enquiryId)).toMatchObject({ state: "our_turn" });
      good(await recordReadOut(await ivo(), letterId, later(4)));
      expect((await viewOf(enquiryId)).state).toBe("their_turn");
    });
  });
}
