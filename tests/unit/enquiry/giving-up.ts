import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { fileFailure } from "../../../lib/enquiry/file-failure";
import { giveUpLetter } from "../../../lib/enquiry/give-up-letter";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { recordReadOut, takeReadOutBack } from "../../../lib/enquiry/read-out";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { deliverDue } from "../../../lib/mail/outbox";
import { database } from "../../../lib/store/database";
import { besideMailServer } from "./beside-mail-server";
import { clientOf, CURIOUS, good, later, NOW, staff, submitted } from "./workshop";

const ivo = () => staff("reviewer", "Ivo Castellane");
const PUT_OFF = { code: 451, say: "4.3.0 try later" };

/** Letters that did not get through so far, and what people here may do about them. */
export function givingUp(): void {
  describe("a letter that did not get through so far", () => {
    const mail = besideMailServer();
    const deliver = (now: Date) => deliverDue(now, { onFailed: fileFailure, times: { connectMs: 2_000, silenceMs: 400 } });
    const view = async (enquiryId: string) => good(await readEnquiry(await ivo(), enquiryId, later(60)));
    const rowOf = (id: string) => database().letter.findUniqueOrThrow({ where: { id } });
    const deeds = (enquiryId: string, action: string) => database().audit.count({ where: { enquiryId, action } });
    /** A reply that a server put off, or whose sending ended without an answer. */
    async function tried(after: { code: number; say: string } | "drop") {
      const enquiry = await submitted(CURIOUS, { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true });
      await deliver(NOW);
      const { letterId } = good(await approveReply(await ivo(), { enquiryId: enquiry.enquiryId, number: 1 }, later(2)));
      mail.server.received.length = 0;
      mail.server.afterDot = () => after;
      await deliver(later(10));
      mail.server.afterDot = () => "accept";
      return { ...enquiry, letterId };
    }

    it.each([
      [PUT_OFF, { isInDoubt: false, says: "Not sent: it was given up here. The last try ended with: “451 4.3.0 try later”." }],
      ["drop", { isInDoubt: true, says: "Nobody knows whether it arrived, and it is not tried again. It was given up here. It may have arrived." }],
    ] as const)("is given up after %j: it is never tried again, and the turn and its words are ours", async (after, undelivered) => {
      const enquiry = await tried(after);
      const { enquiryId, letterId } = enquiry;
      const theirs = async () => good(await readClientPage(await clientOf(enquiry), later(12))).letters.length;
      expect(await theirs()).toBe(1);
      expect(await view(enquiryId)).toMatchObject({ state: "their_turn", letters: [{}, { canGiveUp: true, canTakeBack: false }] });
      const before = mail.server.received.length;
      good(await giveUpLetter(await staff("trainee", "Pia"), letterId, later(11)));
      const seen = await view(enquiryId);
      expect(seen).toMatchObject({ state: "our_turn", stateSince: later(11).toISOString(), draft: { number: 1 }, may: { approve: true, ask: true }, undelivered });
      expect(seen.history.at(-1)).toMatchObject({ who: "Pia", what: "gave up a letter that did not get through" });
      expect(good(await readQueue(await ivo(), later(60))).waiting.find((s) => s.enquiryId === enquiryId)?.standing).toBe("our letter did not get through");
      expect(await theirs(), "what is to be written anew does not stand on the client's page").toBe(0);
      await deliver(later(10_000));
      expect(mail.server.received).toHaveLength(before);
    });
    it("stands on the client's page while nothing was written in its place, and not beside what was", async () => {
      const enquiry = await tried(PUT_OFF);
      await database().letter.update({ where: { id: enquiry.letterId }, data: { state: "failed", lastResponse: "550 5.1.1 no such user" } });
      const texts = async () => good(await readClientPage(await clientOf(enquiry), later(60))).letters.map((l) => l.subject);
      expect(await texts()).toHaveLength(1);
      await database().enquiry.update({ where: { id: enquiry.enquiryId }, data: { state: "our_turn" } });
      await database().draft.update({ where: { enquiryId: enquiry.enquiryId }, data: { approvedNumber: null } });
      const { letterId } = good(await approveReply(await ivo(), { enquiryId: enquiry.enquiryId, number: 1 }, later(20)));
      const { subject } = await rowOf(letterId);
      expect(await texts()).toEqual([subject]);
    });

    it("is told on the telephone instead: it counts as told, and is not sent any more", async () => {
      for (const [after, says] of [[PUT_OFF, "Read out on the telephone."], ["drop", "Read out on the telephone. It may have arrived by mail too."]] as const) {
        const { enquiryId, letterId } = await tried(after);
        const before = mail.server.received.length;
        good(await recordReadOut(await ivo(), letterId, later(58)));
        expect(await view(enquiryId)).toMatchObject({ state: "their_turn", undelivered: null, letters: [{}, { state: "sent", says, sentAt: later(58).toISOString(), readOutUntil: later(63).toISOString(), canGiveUp: false }] });
        await deliver(later(10_000));
        expect(mail.server.received).toHaveLength(before);
        expect(await deeds(enquiryId, "letter-read-out")).toBe(1);
      }
    });

    it("is tried again where it was not read out after all, and stays in doubt where it was", async () => {
      for (const [after, state] of [[PUT_OFF, "waiting"], ["drop", "unknown"]] as const) {
        const { enquiryId, letterId } = await tried(after);
        good(await recordReadOut(await ivo(), letterId, later(20)));
        good(await takeReadOutBack(await ivo(), letterId, later(21)));
        expect(await rowOf(letterId)).toMatchObject({ state, sentAt: null });
        expect((await view(enquiryId)).state).toBe("their_turn");
        await deliver(later(10_000));
        expect((await rowOf(letterId)).state).toBe("sent");
        expect(await takeReadOutBack(await ivo(), letterId, later(10_001))).toMatchObject({ ok: false, code: "not-found" });
      }
    });

    /** Refused for good by the other server. */
    async function refusedLetter() {
      const enquiry = await tried({ code: 550, say: "5.1.1 no such user" });
      expect(await rowOf(enquiry.letterId)).toMatchObject({ state: "failed" });
      return enquiry;
    }
    it("is told on the telephone also once it was refused for good: it is their turn, with nothing left to be sent; taken back, it failed as it had", async () => {
      const { enquiryId, letterId } = await refusedLetter();
      const [row, before] = [await rowOf(letterId), await view(enquiryId)];
      expect(before).toMatchObject({ state: "our_turn", undelivered: { letterId, canBeReadOut: true }, may: { approve: true } });
      expect(before.draft).not.toBeNull();
      good(await recordReadOut(await staff("trainee", "Pia"), letterId, later(58)));
      const told = await view(enquiryId);
      expect(told).toMatchObject({ state: "their_turn", stateSince: later(58).toISOString(), undelivered: null, draft: null, letters: [{}, { state: "sent", says: "Read out on the telephone.", readOutUntil: later(63).toISOString() }] });
      expect(told.history.at(-1)).toMatchObject({ who: "Pia", what: "rang the client and read the letter out" });
      good(await takeReadOutBack(await ivo(), letterId, later(59)));
      expect(await rowOf(letterId)).toMatchObject({ state: "failed", lastResponse: row.lastResponse, sentAt: null });
      const after = await view(enquiryId);
      expect(after).toMatchObject({ state: "our_turn", stateSince: before.stateSince, undelivered: { letterId, says: before.undelivered?.says } });
      expect(after.draft?.text).toBe(before.draft?.text);
      const sent = mail.server.received.length;
      await deliver(later(10_000));
      expect(mail.server.received).toHaveLength(sent);
    });
    it("told once it was refused leaves words alone that somebody has changed since, and the turn with us where the client wrote", async () => {
      const changed = await refusedLetter();
      const { draft } = await view(changed.enquiryId);
      good(await saveDraft(await ivo(), { enquiryId: changed.enquiryId, from: draft?.number ?? 0, subject: draft?.subject ?? "", text: `${draft?.text ?? ""} One word more.` }, later(20)));
      good(await recordReadOut(await ivo(), changed.letterId, later(21)));
      const seen = await view(changed.enquiryId);
      expect(seen.state).toBe("their_turn");
      expect(seen.draft?.text).toMatch(/One word more\.$/);

      const wrote = await refusedLetter();
      good(await sendFromClient(await clientOf(wrote), { message: "Is there any news?" }, later(20)));
      good(await recordReadOut(await ivo(), wrote.letterId, later(21)));
      expect(await view(wrote.enquiryId)).toMatchObject({ state: "our_turn", undelivered: null, since: { messages: [{ text: "Is there any news?" }] } });
      expect((await view(wrote.enquiryId)).draft).not.toBeNull();
      good(await takeReadOutBack(await ivo(), wrote.letterId, later(22)));
      expect(await view(wrote.enquiryId)).toMatchObject({ state: "our_turn", undelivered: { letterId: wrote.letterId } });
    });
    it("is not told once another was written in its place, by anybody outside, nor by two people", async () => {
      const { letterId, ...enquiry } = await refusedLetter();
      for (const caller of [await clientOf(enquiry), { kind: "public", addressHash: null } as const]) expect(await recordReadOut(caller, letterId, later(20))).toMatchObject({ ok: false });
      const first = await database().letter.findFirstOrThrow({ where: { enquiryId: enquiry.enquiryId, automatic: true } });
      expect(await recordReadOut(await ivo(), first.id, later(20))).toMatchObject({ ok: false, code: "not-found" });
      const all = await Promise.all([1, 2, 3].map(async () => recordReadOut(await ivo(), letterId, later(20))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(await deeds(enquiry.enquiryId, "letter-read-out")).toBe(1);
      good(await takeReadOutBack(await ivo(), letterId, later(21)));
      good(await approveReply(await ivo(), { enquiryId: enquiry.enquiryId, number: (await view(enquiry.enquiryId)).draft?.number ?? 0 }, later(22)));
      expect(await recordReadOut(await ivo(), letterId, later(23))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect((await rowOf(letterId)).state).toBe("failed");
    });

    it("is given up, told or sent, whichever is first, and by one person", async () => {
      for (let n = 0; n < 6; n++) {
        const { enquiryId, letterId } = await tried(n % 2 === 0 ? PUT_OFF : "drop");
        const before = mail.server.received.length;
        const by = await ivo();
        const [, ...done] = await Promise.all([deliver(later(9_000)), giveUpLetter(by, letterId, later(9_000)), giveUpLetter(by, letterId, later(9_000)), recordReadOut(by, letterId, later(9_000))]);
        const wasSent = mail.server.received.length - before;
        expect(done.filter((r) => r.ok)).toHaveLength(1 - wasSent);
        for (const late of done) if (!late.ok) expect(late.code).toBe("changed-meanwhile");
        expect(await deeds(enquiryId, "letter-given-up") + await deeds(enquiryId, "letter-read-out")).toBe(1 - wasSent);
      }
    });

    it("is let alone while it is being sent, once it went, and by anybody outside", async () => {
      const { letterId, ...enquiry } = await tried(PUT_OFF);
      await database().letter.update({ where: { id: letterId }, data: { state: "sending", leaseOwner: "another", leaseUntil: later(100) } });
      for (const deed of [giveUpLetter, recordReadOut]) expect(await deed(await ivo(), letterId, later(20))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      await database().letter.update({ where: { id: letterId }, data: { state: "waiting", leaseOwner: null, leaseUntil: null } });
      for (const caller of [await clientOf(enquiry), { kind: "public", addressHash: null } as const]) expect(await giveUpLetter(caller, letterId, later(20))).toMatchObject({ ok: false });
      await deliver(later(10_000));
      for (const deed of [giveUpLetter, recordReadOut]) expect(await deed(await ivo(), letterId, later(10_001))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      const first = await database().letter.findFirstOrThrow({ where: { enquiryId: enquiry.enquiryId, automatic: true } });
      for (const id of [first.id, "no-such-letter"]) expect(await giveUpLetter(await ivo(), id, later(20))).toMatchObject({ ok: false, code: "not-found" });
      expect(await rowOf(letterId)).toMatchObject({ state: "sent" });
    });
  });
}
