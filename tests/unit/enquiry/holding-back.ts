import { randomUUID } from "node:crypto";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import { encloseDocument } from "../../../lib/enquiry/enclose-document";
import { asSeen } from "../../../lib/enquiry/client-schema";
import { correctClient } from "../../../lib/enquiry/correct-client";
import { enterEnquiry } from "../../../lib/enquiry/enter-enquiry";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { putPostAside } from "../../../lib/enquiry/put-post-aside";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { sortPost, sortReceived } from "../../../lib/enquiry/sort-post";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { takePostOut } from "../../../lib/enquiry/take-post-out";
import { ANSWER_HERE } from "../../../lib/reply/open-places";
import { deliverDue } from "../../../lib/mail/outbox";
import { withoutFoot } from "../../../lib/mail/foot";
import { database } from "../../../lib/store/database";
import { besideMailServer } from "./beside-mail-server";
import { letter, photos } from "./mail-files";
import { answerOnce, clientOf, CURIOUS, givePhoto, good, later, leaves, NOW, staff, submitted, SYSTEM } from "./workshop";

const nell = () => staff("owner", "Nell Harrow");
const SAID = "Please wait: I have found the label.";
const EIGHT = { day: "2026-11-26", hour: "08:00" };
const AT_EIGHT = new Date("2026-11-26T08:00:00Z");

/** Letters that wait to leave while their client writes. */
export function holdingBack(): void {
  describe("a letter that has not left when its client writes", () => {
    const mail = besideMailServer();
    const view = async (enquiryId: string, now = later(60)) => good(await readEnquiry(await nell(), enquiryId, now));
    const rowOf = (id: string) => database().letter.findUniqueOrThrow({ where: { id } });
    const approve = async (enquiryId: string, sendAt: typeof EIGHT | null = null) => good(await approveReply(await nell(), { enquiryId, number: 1, sendAt }, later(2))).letterId;
    const writes = async (enquiry: Awaited<ReturnType<typeof anEnquiry>>, now = later(3)) => good(await sendFromClient(await clientOf(enquiry), { message: SAID }, now));
    /** An enquiry whose acknowledgement has arrived. */
    async function anEnquiry() {
      const enquiry = await submitted(CURIOUS, { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true });
      await deliverDue(NOW);
      mail.server.received.length = 0;
      return enquiry;
    }

    it("comes back to the desk with its words and what was enclosed, never leaves, and queue, desk and history say why", async () => {
      const enquiry = await anEnquiry();
      const { enquiryId } = enquiry;
      const [rug] = (await view(enquiryId)).rugs;
      const { documentId } = good(await makeDocument(await nell(), { enquiryId, rugId: rug?.id ?? "", kind: "care-card", filled: {} }, NOW));
      good(await encloseDocument(await nell(), { documentId, isEnclosed: true }, NOW));
      const before = (await view(enquiryId)).draft;
      const letterId = await approve(enquiryId);
      await writes(enquiry);
      const seen = await view(enquiryId);
      expect(seen).toMatchObject({
        state: "new", stateSince: NOW.toISOString(), may: { edit: true, approve: true }, draft: { number: 2, text: expect.stringContaining(ANSWER_HERE) as string },
        meanwhile: { kind: "reply", isHeldBack: true, approvedAt: later(2).toISOString(), messages: [{ at: later(3).toISOString(), text: SAID }], photos: 0 },
        documents: [{ id: documentId, isEnclosed: true }],
      });
      expect(seen.draft?.text.replace(`${ANSWER_HERE}\n\n`, ""), "the same words beside the place for an answer").toBe(before?.text);
      expect(seen.letters.find((l) => l.id === letterId)).toMatchObject({ state: "taken_back", canTakeBack: false, says: "Held back before it went out: the client had written meanwhile." });
      expect(seen.history.slice(-2)).toMatchObject([{ who: "Ana Example", what: "wrote again" }, { who: "The program", what: "held our letter back, since the client had written before it left" }]);
      expect(good(await readQueue(await nell(), later(60))).waiting.find((s) => s.enquiryId === enquiryId)?.standing).toBe("the client wrote before our letter left");
      await deliverDue(later(60));
      expect(mail.server.received).toEqual([]);
      expect(good(await readClientPage(await clientOf(enquiry), later(60))).letters).toEqual([]);
      expect(await takeBackLetter(await nell(), letterId, later(4))).toMatchObject({ ok: false, say: "Held back before it went out: the client had written meanwhile." });
      await answerOnce(enquiryId, later(5));
      expect((await view(enquiryId)).meanwhile, "a newer letter has taken its place").toBeNull();
      await deliverDue(later(60));
      expect(mail.server.received).toHaveLength(1);
    });
    it("comes back from a chosen time for a photo, with a draft that has heard of it", async () => {
      const enquiry = await anEnquiry();
      const letterId = await approve(enquiry.enquiryId, EIGHT);
      good(await givePhoto(await clientOf(enquiry), "label", later(300)));
      expect(await rowOf(letterId)).toMatchObject({ state: "taken_back" });
      expect(await view(enquiry.enquiryId, later(301))).toMatchObject({ state: "new", draft: { by: "the program" }, meanwhile: { isHeldBack: true, messages: [], photos: 1 } });
      await deliverDue(AT_EIGHT);
      expect(mail.server.received).toEqual([]);
    });
    it.each([["words", false], ["a photo alone", true]])("comes back for %s by mail", async (_, withPhoto) => {
      const { enquiryId } = await anEnquiry();
      const letterId = await approve(enquiryId, EIGHT);
      const first = await database().letter.findFirstOrThrow({ where: { enquiryId, automatic: true } });
      const bytes = letter({ from: first.toAddress, text: withPhoto ? "" : SAID, answers: first.messageId, photos: withPhoto ? await photos("#8a8f98") : [] });
      const { postId } = good(await keepPost(SYSTEM, Readable.from([bytes]), later(9)));
      await sortPost(postId, later(9));
      expect(await rowOf(letterId)).toMatchObject({ state: "taken_back" });
      expect(await view(enquiryId)).toMatchObject({ state: "new", draft: { by: "the program" }, meanwhile: { isHeldBack: true, messages: withPhoto ? [] : [{ text: SAID }], photos: withPhoto ? 1 : 0 } });
      expect((await view(enquiryId)).history.slice(-2).map((h) => h.what)).toEqual(["took in a letter that came by mail", "held our letter back, since the client had written before it left"]);
    });
    it("comes back for a letter from its client's address that answers none of ours and waits in the Post, and the enquiry names that letter until it is sorted", async () => {
      const { enquiryId } = await anEnquiry();
      const other = await anEnquiry();
      const [letterId, othersId] = [await approve(enquiryId), await approve(other.enquiryId)];
      const { toAddress } = await rowOf(letterId);
      const bytes = letter({ from: toAddress.toUpperCase(), subject: "The rug is wet again", text: "The pipe burst again. Should I lift it?" });
      const { postId } = good(await keepPost(SYSTEM, Readable.from([bytes]), later(3)));
      await sortPost(postId, later(3));
      expect(await database().post.findUniqueOrThrow({ where: { id: postId } })).toMatchObject({ state: "waiting", enquiryId: null });
      expect([await rowOf(letterId), await rowOf(othersId)]).toMatchObject([{ state: "taken_back" }, { state: "held" }]);
      expect(await view(enquiryId)).toMatchObject({ state: "new", meanwhile: { isHeldBack: true, messages: [], photos: 0 }, inPost: [{ id: postId, subject: "The rug is wet again" }] });
      expect((await view(other.enquiryId)).inPost).toEqual([]);
      good(await putPostAside(await nell(), { postId }, later(4)));
      expect((await view(enquiryId)).inPost).toEqual([]);
    });
    /** A letter from the client's own address that answers none of ours. */
    async function writesAnew(to: string, now = later(3)): Promise<string> {
      const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: to, subject: randomUUID(), text: "Please wait with your answer." })]), now));
      await sortPost(postId, now);
      return postId;
    }
    const addressOf = async (enquiryId: string) => (await database().letter.findFirstOrThrow({ where: { enquiryId, automatic: true } })).toAddress;
    const inPost = (name: string) => ({ ok: false, code: "changed-meanwhile", say: `A letter from ${name}’s address waits in the Post. Say first where it belongs. Nothing was sent, and your words are kept.` });

    it.each([["at once", null], ["for a time", EIGHT]])("is not approved %s while a letter from its client's address waits in the Post already, until that is sorted", async (_, sendAt) => {
      const { enquiryId } = await anEnquiry();
      const other = await anEnquiry();
      const postId = await writesAnew(await addressOf(enquiryId));
      const { heard } = await view(enquiryId);
      expect(await approveReply(await nell(), { enquiryId, number: 1, sendAt, heard, read: true }, later(4))).toMatchObject(inPost("Ana Example"));
      expect(await askClient(await nell(), { enquiryId, subject: "A question", text: "How old is it?" }, later(4))).toMatchObject(inPost("Ana Example"));
      expect(await approveReply(await staff("trainee", "Tam Ridley"), { enquiryId, number: 1 }, later(4))).toMatchObject(inPost("Ana Example"));
      expect(await database().letter.count({ where: { enquiryId, automatic: false } })).toBe(0);
      expect(await view(enquiryId)).toMatchObject({ state: "new", draft: { number: 1 }, waitsForSecond: null, inPost: [{ id: postId }] });
      good(await approveReply(await nell(), { enquiryId: other.enquiryId, number: 1 }, later(4)));
      good(await putPostAside(await nell(), { postId }, later(5)));
      good(await approveReply(await nell(), { enquiryId, number: 1, sendAt, heard }, later(6)));
    });
    it("is not sent by a second person past a letter that came to the Post after the first approved it", async () => {
      const { enquiryId } = await anEnquiry();
      good(await approveReply(await staff("trainee", "Tam Ridley"), { enquiryId, number: 1 }, later(2)));
      const postId = await writesAnew(await addressOf(enquiryId));
      expect(await secondReply(await nell(), { enquiryId }, later(4))).toMatchObject(inPost("Ana Example"));
      good(await putPostAside(await nell(), { postId }, later(5)));
      good(await secondReply(await nell(), { enquiryId }, later(6)));
    });
    it("names how many letters wait, where it is not one", async () => {
      const { enquiryId } = await anEnquiry();
      const to = await addressOf(enquiryId);
      await writesAnew(to);
      await writesAnew(to);
      expect(await approveReply(await nell(), { enquiryId, number: 1 }, later(4))).toMatchObject({ say: "2 letters from Ana Example’s address wait in the Post. Say first where they belong. Nothing was sent, and your words are kept." });
    });
    it("comes back where a letter from its address is put back among what waits, is taken out of another enquiry, or waits at the address that it is pointed at", async () => {
      const aside = await anEnquiry();
      const postId = await writesAnew(await addressOf(aside.enquiryId));
      good(await putPostAside(await nell(), { postId }, later(4)));
      const past = await approve(aside.enquiryId, EIGHT);
      good(await putPostAside(await nell(), { postId, isBack: true }, later(5)));

      const taken = await anEnquiry();
      const elsewhere = await anEnquiry();
      const ours = await database().letter.findFirstOrThrow({ where: { enquiryId: elsewhere.enquiryId, automatic: true } });
      const { postId: answers } = good(await keepPost(SYSTEM, Readable.from([letter({ from: await addressOf(taken.enquiryId), text: SAID, answers: ours.messageId })]), later(3)));
      await sortPost(answers, later(3));
      const beside = await approve(taken.enquiryId, EIGHT);
      good(await takePostOut(await nell(), answers, later(5)));

      const moved = await anEnquiry();
      const pointed = await approve(moved.enquiryId, EIGHT);
      const address = `${randomUUID()}@example.org`;
      good(await keepPost(SYSTEM, Readable.from([letter({ from: address, text: "Is my rug worth it?" })]), later(3)));
      await sortReceived(later(3));
      const { name, email, telephone } = (await view(moved.enquiryId)).client;
      good(await correctClient(await nell(), { enquiryId: moved.enquiryId, seen: asSeen({ name, email, telephone }), contact: { name, email: address, telephone }, isSomebodyElses: false }, later(5)));

      expect(await Promise.all([past, beside, pointed].map(async (id) => (await rowOf(id)).state))).toEqual(["taken_back", "taken_back", "taken_back"]);
      mail.server.received.length = 0;
      await deliverDue(AT_EIGHT);
      expect(mail.server.received.filter((m) => !m.mail.headers.has("auto-submitted"))).toEqual([]);
    });
    it("leaves the words that a person wrote as they are, and it is our turn since the client wrote where they had heard from us before", async () => {
      const enquiry = await anEnquiry();
      const { enquiryId } = enquiry;
      await leaves(await approve(enquiryId), later(7));
      good(await sendFromClient(await clientOf(enquiry), { message: "May I bring it?" }, later(10)));
      const { letterId } = await answerOnce(enquiryId, later(20));
      const words = withoutFoot((await rowOf(letterId)).text).trim();
      await writes(enquiry, later(21));
      const seen = await view(enquiryId);
      expect(seen).toMatchObject({ state: "our_turn", stateSince: later(21).toISOString(), draft: { by: "Ivo Castellane" }, meanwhile: { messages: [{ text: SAID }] }, since: { messages: [{ text: "May I bring it?" }, { text: SAID }] } });
      expect(seen.draft?.text.trim()).toBe(words);
    });
    it("is a question again, not a reply, where it asked something", async () => {
      const enquiry = await anEnquiry();
      const { letterId } = good(await askClient(await nell(), { enquiryId: enquiry.enquiryId, subject: "A question", text: "How old is it?" }, later(2)));
      await writes(enquiry);
      const seen = await view(enquiry.enquiryId);
      expect(seen).toMatchObject({ state: "new", draft: { by: "the program" }, meanwhile: { kind: "question", isHeldBack: true } });
      expect(seen.letters.findLast((l) => l.kind !== "acknowledgement")).toMatchObject({ id: letterId, state: "taken_back", text: "How old is it?\n" });
    });
    it("goes where it was being handed over already, and the desk says that the client wrote just before", async () => {
      const enquiry = await anEnquiry();
      const letterId = await approve(enquiry.enquiryId);
      mail.server.afterDot = async () => {
        await writes(enquiry, later(10));
        return "accept" as const;
      };
      await deliverDue(later(10));
      expect(mail.server.received).toHaveLength(1);
      expect(await rowOf(letterId)).toMatchObject({ state: "sent" });
      expect(await view(enquiry.enquiryId)).toMatchObject({ state: "our_turn", meanwhile: { isHeldBack: false, messages: [{ text: SAID }] } });
      expect((await view(enquiry.enquiryId)).history.some((h) => h.what.includes("held our letter back"))).toBe(false);
    });
    it("goes or is held back, one of the two, when outbox and client come at the same moment", async () => {
      for (let n = 0; n < 5; n++) {
        const enquiry = await anEnquiry();
        const letterId = await approve(enquiry.enquiryId);
        await Promise.all([deliverDue(later(7)), writes(enquiry, later(7))]);
        const { state } = await rowOf(letterId);
        expect([state, mail.server.received.length]).toEqual(state === "sent" ? ["sent", 1] : ["taken_back", 0]);
        expect((await view(enquiry.enquiryId)).may.approve).toBe(true);
      }
    });
    it("is held back until a sender has taken it, also when its time has come", async () => {
      const enquiry = await anEnquiry();
      const letterId = await approve(enquiry.enquiryId);
      await writes(enquiry, later(8));
      expect(await rowOf(letterId)).toMatchObject({ state: "taken_back" });
    });
    it("stays where the client can have read it on their own page: tried already, or its time has come and there is no address", async () => {
      const tried = await anEnquiry();
      const waiting = await approve(tried.enquiryId);
      mail.server.afterDot = () => ({ code: 451, say: "4.3.0 try later" });
      await deliverDue(later(7));
      await writes(tried, later(8));
      expect(await rowOf(waiting)).toMatchObject({ state: "waiting" });
      const { enquiryId } = good(await enterEnquiry(await nell(), { channel: "telephone", client: { name: "Ana Example", telephone: "01632 960 112" }, wetNow: "no", rugs: [{ story: "Coffee." }] }, NOW));
      const onPage = await approve(enquiryId);
      const client = { kind: "client", enquiryId, linkId: "l" } as const;
      good(await sendFromClient(client, { message: SAID }, later(7)));
      expect(await rowOf(onPage)).toMatchObject({ state: "held" });
      expect(good(await readClientPage(client, later(8))).letters).toHaveLength(1);
    });
    it("goes from where somebody has put an enquiry whose client's words give us no turn", async () => {
      const enquiry = await anEnquiry();
      const letterId = await approve(enquiry.enquiryId, EIGHT);
      good(await moveEnquiry(await nell(), { enquiryId: enquiry.enquiryId, from: "their_turn", to: "coming_in" }, later(2)));
      await writes(enquiry);
      expect(await rowOf(letterId)).toMatchObject({ state: "held" });
      expect(await view(enquiry.enquiryId)).toMatchObject({ state: "coming_in", meanwhile: null });
    });
    it("is not held back when it is the acknowledgement", async () => {
      const enquiry = await submitted(CURIOUS);
      await writes(enquiry);
      expect(await database().letter.findMany({ where: { enquiryId: enquiry.enquiryId } })).toMatchObject([{ automatic: true, state: "waiting" }]);
    });
  });
}
