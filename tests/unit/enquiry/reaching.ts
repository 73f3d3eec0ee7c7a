import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import { encloseDocument } from "../../../lib/enquiry/enclose-document";
import { fileFailure } from "../../../lib/enquiry/file-failure";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import type { EnquiryStateId } from "../../../lib/enquiry/views";
import { deliverDue } from "../../../lib/mail/outbox";
import { suppressedWhy } from "../../../lib/mail/suppression";
import { database } from "../../../lib/store/database";
import { OLDEST_FIRST } from "../../../lib/store/row-order";
import { besideMailServer } from "./beside-mail-server";
import { clientOf, CURIOUS, good, later, NOW, staff, submitted } from "./workshop";

const nell = () => staff("owner", "Nell Harrow");
const QUICK = { connectMs: 2_000, silenceMs: 400 };
const NO_SUCH_BOX = { code: 550, say: "5.1.1 no such mailbox" };
/** So often a letter was tried when its four days are over at the next try. */
const LAST_TRIES = 100;

/** Letters that fail for good, to a mail server whose moods a test sets. */
export function reaching(): void {
  describe("a letter that fails for good", () => {
    const mail = besideMailServer();
    const deliver = (now: Date) => deliverDue(now, { onFailed: fileFailure, times: QUICK });
    const view = async (enquiryId: string, now = later(60)) => good(await readEnquiry(await nell(), enquiryId, now));
    const slip = async (enquiryId: string) => good(await readQueue(await nell(), later(60))).waiting.find((s) => s.enquiryId === enquiryId);
    const did = async (enquiryId: string) => (await database().audit.findMany({ where: { enquiryId }, orderBy: [...OLDEST_FIRST.at] })).map((a) => a.action);
    const stateOf = (enquiryId: string) => database().enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true, stateSince: true } });
    /** An enquiry whose acknowledgement has arrived. */
    async function anEnquiry() {
      const enquiry = await submitted(CURIOUS, { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true });
      await deliver(NOW);
      return enquiry;
    }
    /** Approved, and due at `later(10)`. */
    async function approved() {
      const enquiry = await anEnquiry();
      const { letterId } = good(await approveReply(await nell(), { enquiryId: enquiry.enquiryId, number: 1 }, later(2)));
      return { ...enquiry, letterId };
    }
    /** A server put the letter off, so it can no longer be held back. */
    const isTriedAgain = (id: string) => database().letter.update({ where: { id }, data: { state: "waiting", attempts: 1 } });

    it("comes back with the words that were approved and what was enclosed, and the queue says why", async () => {
      const { enquiryId } = await anEnquiry();
      const [rug] = (await view(enquiryId)).rugs;
      const { documentId } = good(await makeDocument(await nell(), { enquiryId, rugId: rug?.id ?? "", kind: "care-card", filled: {} }, NOW));
      good(await encloseDocument(await nell(), { documentId, isEnclosed: true }, NOW));
      const { number } = good(await saveDraft(await nell(), { enquiryId, from: 1, subject: "Your rug", text: "Dear Ana,\n\nWe would like to see it." }, later(1)));
      good(await approveReply(await nell(), { enquiryId, number }, later(2)));
      mail.server.onRcpt = () => NO_SUCH_BOX;
      await deliver(later(10));
      const seen = await view(enquiryId);
      expect(seen).toMatchObject({ state: "our_turn", draft: { number, text: "Dear Ana,\n\nWe would like to see it." }, may: { approve: true }, undelivered: { kind: "reply", isInDoubt: false, says: expect.stringContaining("5.1.1 no such mailbox") as string } });
      expect(seen.documents).toMatchObject([{ id: documentId, isEnclosed: true }]);
      expect(await slip(enquiryId)).toMatchObject({ standing: "our letter could not be delivered, draft edited by Nell Harrow" });
      expect(seen.history.at(-1)).toMatchObject({ who: "The program", what: "noted that a letter of ours could not be delivered" });
      expect((await stateOf(enquiryId)).stateSince.getTime()).toBeGreaterThanOrEqual(later(10).getTime());
    });
    it("comes back after a refusal of the letter itself, which says nothing against the address", async () => {
      const { enquiryId, letterId } = await approved();
      mail.server.afterDot = () => ({ code: 554, say: "5.6.0 not wanted here" });
      await deliver(later(10));
      const { toAddress } = await database().letter.findUniqueOrThrow({ where: { id: letterId } });
      expect(await suppressedWhy(database(), toAddress)).toBeNull();
      expect((await stateOf(enquiryId)).state).toBe("our_turn");
    });
    it("comes back once four days of trying are over, and not a try before", async () => {
      for (const [attempts, state] of [[1, "their_turn"], [LAST_TRIES, "our_turn"]] as const) {
        const { enquiryId, letterId } = await approved();
        await database().letter.update({ where: { id: letterId }, data: { attempts } });
        mail.server.afterDot = () => ({ code: 451, say: "4.3.0 try later" });
        await deliver(later(10));
        expect((await stateOf(enquiryId)).state).toBe(state);
        await database().letter.deleteMany({});
        mail.server.afterDot = () => "accept";
      }
    });
    it("is said to be in doubt where an earlier try may have arrived", async () => {
      const { enquiryId, letterId } = await approved();
      mail.server.afterDot = () => "drop";
      await deliver(later(10));
      expect((await stateOf(enquiryId)).state).toBe("their_turn");
      mail.server.onRcpt = () => NO_SUCH_BOX;
      await deliver((await database().letter.findUniqueOrThrow({ where: { id: letterId } })).notBefore);
      expect(await view(enquiryId)).toMatchObject({ state: "our_turn", undelivered: { isInDoubt: true, says: expect.stringMatching(/^Nobody knows whether it arrived/) as string } });
      expect(await slip(enquiryId)).toMatchObject({ standing: "our letter may not have arrived" });
      expect(await did(enquiryId)).toContain("letter-in-doubt");
    });
    it("gives no turn back where the client wrote meanwhile, and keeps how long they have waited", async () => {
      const enquiry = await approved();
      await isTriedAgain(enquiry.letterId);
      good(await sendFromClient(await clientOf(enquiry), { message: "One thing more." }, later(3)));
      const before = await stateOf(enquiry.enquiryId);
      mail.server.onRcpt = () => NO_SUCH_BOX;
      await deliver(later(10));
      expect(await stateOf(enquiry.enquiryId)).toEqual(before);
      expect(before).toEqual({ state: "our_turn", stateSince: later(3) });
      expect(await did(enquiry.enquiryId)).toContain("letter-failed");
    });
    it("gives no turn back where a newer letter is on its way or has gone", async () => {
      for (const newer of ["waiting", "sent"] as const) {
        const enquiry = await approved();
        const { enquiryId, letterId } = enquiry;
        await isTriedAgain(letterId);
        good(await sendFromClient(await clientOf(enquiry), { message: "One thing more." }, later(3)));
        const second = good(await askClient(await nell(), { enquiryId, subject: "Your rug", text: "How old is it?" }, later(4)));
        await database().letter.update({ where: { id: second.letterId }, data: { state: newer, notBefore: later(1_000) } });
        mail.server.onRcpt = () => NO_SUCH_BOX;
        await deliver(later(10));
        expect((await database().letter.findUniqueOrThrow({ where: { id: letterId } })).state).toBe("failed");
        expect((await stateOf(enquiryId)).state, newer).toBe("their_turn");
        expect((await view(enquiryId)).undelivered).toBeNull();
        mail.server.onRcpt = () => null;
      }
    });
    it.each([["quoted", "our_turn"], ["waiting_elsewhere", "our_turn"], ["declined", "declined"]] as const)("from %s, moved there by hand, goes to %s", async (moved, ends) => {
      const { enquiryId } = await approved();
      good(await moveEnquiry(await nell(), { enquiryId, from: "their_turn", to: moved satisfies EnquiryStateId }, later(3)));
      mail.server.onRcpt = () => NO_SUCH_BOX;
      await deliver(later(10));
      expect((await stateOf(enquiryId)).state).toBe(ends);
    });
    it("leaves the program's own draft after a question, and what was asked among the letters", async () => {
      const { enquiryId } = await anEnquiry();
      const { letterId } = good(await askClient(await nell(), { enquiryId, subject: "A question", text: "How old is it?" }, later(2)));
      mail.server.onRcpt = () => NO_SUCH_BOX;
      await deliver(later(10));
      const seen = await view(enquiryId);
      expect(seen).toMatchObject({ state: "our_turn", draft: { by: "the program" }, undelivered: { kind: "question" } });
      expect(seen.letters.find((l) => l.id === letterId)?.text).toContain("How old is it?");
    });
    it("is said of an acknowledgement too, and moves nothing", async () => {
      mail.server.onRcpt = () => NO_SUCH_BOX;
      const { enquiryId } = await anEnquiry();
      expect(await view(enquiryId)).toMatchObject({ state: "new", undelivered: { kind: "acknowledgement" }, client: { suppressedWhy: expect.stringContaining("5.1.1") as string } });
      expect(await slip(enquiryId)).toMatchObject({ standing: "our acknowledgement could not be delivered" });
      expect(await did(enquiryId)).toContain("acknowledgement-failed");
      expect((await stateOf(enquiryId)).stateSince).toEqual(NOW);
    });
  });
}
