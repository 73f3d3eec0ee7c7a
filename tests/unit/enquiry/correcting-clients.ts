import { randomUUID } from "node:crypto";
import { Readable } from "node:stream";
import { describe, expect, it, vi } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import type { Caller } from "../../../lib/enquiry/caller";
import { asSeen, type Contact } from "../../../lib/enquiry/client-schema";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { correctClient } from "../../../lib/enquiry/correct-client";
import { enterEnquiry } from "../../../lib/enquiry/enter-enquiry";
import { eraseEnquiry } from "../../../lib/enquiry/erase-enquiry";
import { fileFailure } from "../../../lib/enquiry/file-failure";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { callerFromLink } from "../../../lib/enquiry/open-client-link";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readLetters } from "../../../lib/enquiry/read-letters";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { recordReadOut } from "../../../lib/enquiry/read-out";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { sortPost } from "../../../lib/enquiry/sort-post";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { deliverDue } from "../../../lib/mail/outbox";
import { suppressedWhy } from "../../../lib/mail/suppression";
import { database, type Letter } from "../../../lib/store/database";
import { OLDEST_FIRST } from "../../../lib/store/row-order";
import { besideMailServer } from "./beside-mail-server";
import { letter } from "./mail-files";
import { clientOf, CURIOUS, good, later, NOW, staff, submitted, SYSTEM } from "./workshop";

const nell = () => staff("owner", "Nell Harrow");
const anAddress = (of = "ana") => `${of}-${randomUUID().slice(0, 8)}@example.org`;
const tokenIn = (text: string | undefined) => /\/e\/([\w-]+)/.exec(text ?? "")?.[1];

/** A client's name, address and telephone number put right. */
export function correctingClients(): void {
  describe("correctClient", () => {
    const mail = besideMailServer();
    const deliver = (now: Date) => deliverDue(now, { onFailed: fileFailure, times: { connectMs: 2_000, silenceMs: 400 } });
    const arrivedAt = (address: string) => mail.server.received.filter((m) => m.to.includes(address));
    const view = async (enquiryId: string) => good(await readEnquiry(await nell(), enquiryId, later(60)));
    const lettersOf = (enquiryId: string): Promise<Letter[]> => database().letter.findMany({ where: { enquiryId }, orderBy: [...OLDEST_FIRST.createdAt] });
    const clientRow = async (enquiryId: string) => (await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { client: true } })).client;
    const corrections = (enquiryId: string) => database().audit.findMany({ where: { enquiryId, action: { in: ["client-corrected", "address-corrected"] } } });
    const anEnquiry = async (email = anAddress()) => ({ ...(await submitted(CURIOUS, { contact: { name: "Ana Example", email }, consent: true })), email });
    async function correct(enquiryId: string, to: Partial<Contact>, { by, now = later(20), isSomebodyElses = false }: { by?: Caller; now?: Date; isSomebodyElses?: boolean } = {}) {
      const { name, email, telephone } = await clientRow(enquiryId);
      return correctClient(by ?? (await nell()), { enquiryId, seen: asSeen({ name, email, telephone }), contact: { name, email, telephone, ...to }, isSomebodyElses }, now);
    }

    it.each(["desk@lantern-yard.example", "Desk@Lantern-Yard.example"])("refuses the desk's own address %s as a client's, and changes nothing", async (own) => {
      const { enquiryId, email } = await anEnquiry();
      expect(await correct(enquiryId, { email: own })).toMatchObject({ ok: false, code: "invalid", fields: { email: "That is the desk’s own address: letters would come back here. Write the client’s." } });
      expect((await clientRow(enquiryId)).email).toBe(email);
      expect(await enterEnquiry(await nell(), { channel: "telephone", client: { name: "Odd", email: own }, rugs: [{}] }, NOW)).toMatchObject({ ok: false, fields: { email: expect.stringContaining("own address") as string } });
    });
    it("says in the list of letters which failed at an address that was corrected since", async () => {
      const { enquiryId, email } = await anEnquiry();
      const [first] = await lettersOf(enquiryId);
      await database().letter.update({ where: { id: first?.id ?? "" }, data: { state: "failed", lastResponse: "550 no such mailbox", attempts: 1 } });
      const inList = async () => good(await readLetters(await nell(), later(60))).notGone.find((l) => l.letter.id === first?.id);
      expect(await inList()).toMatchObject({ isCorrected: false, letter: { to: email } });
      await database().client.updateMany({ where: { email }, data: { email: anAddress("right") } });
      expect(await inList()).toMatchObject({ isCorrected: true });
    });
    it("lets a letter that was refused go to the new address, with an acknowledgement and its link, and says from what to what", async () => {
      mail.server.onRcpt = (address) => (address.includes("exmaple") ? { code: 550, say: "5.1.1 no such mailbox" } : null);
      const { enquiryId, email: wrong } = await anEnquiry(anAddress().replace("example", "exmaple"));
      good(await approveReply(await nell(), { enquiryId, number: 1 }, later(1)));
      await deliver(later(10));
      const right = anAddress();
      expect(good(await correct(enquiryId, { email: right }))).toEqual({ was: wrong, is: right, redirected: 0, posted: 0, overtaken: 0, inDoubt: 0, areLinksEnded: false, isAcknowledged: true, suppressedWhy: null, others: [] });
      const seen = await view(enquiryId);
      expect(seen).toMatchObject({ state: "our_turn", client: { email: right, suppressedWhy: null }, undelivered: { kind: "reply", to: wrong } });
      expect(seen.history.at(-1)).toMatchObject({ who: "Nell Harrow", what: `corrected the client’s e-mail address: e-mail address from “${wrong}” to “${right}”` });
      expect(good(await readQueue(await nell(), later(60))).waiting.find((s) => s.enquiryId === enquiryId)?.standing).toBe("our turn again");
      const unsettled = async () => [good(await readQueue(await nell(), later(60))).letters.failed, good(await readLetters(await nell(), later(60))).notGone.map((l) => l.isReplaced)];
      expect(await unsettled()).toEqual([1, [false, false, true]]);
      good(await approveReply(await nell(), { enquiryId, number: seen.draft?.number ?? 0 }, later(30)));
      await deliver(later(40));
      expect(arrivedAt(right).map((m) => m.mail.headers.has("auto-submitted"))).toEqual([true, false]);
      expect(await callerFromLink(tokenIn(arrivedAt(right)[0]?.mail.text), later(41))).toMatchObject({ enquiryId });
      expect((await view(enquiryId)).undelivered).toBeNull();
      expect(await unsettled()).toEqual([0, [true, true]]);
    });

    it("takes held and waiting letters along, leaves what was sent, and gives up what may have arrived", async () => {
      const { enquiryId, email } = await anEnquiry();
      const [ack] = await lettersOf(enquiryId);
      await database().letter.update({ where: { id: ack?.id ?? "" }, data: { attempts: 3, notBefore: later(500), lastResponse: "451 4.3.0 try later" } });
      const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1 }, later(18)));
      const like = (id: string, state: "sent" | "unknown") => ({ id, enquiryId, kind: "reply" as const, automatic: false, state, messageId: `<${id}@x.example>`, toName: "Ana", toAddress: email, subject: "Your rug", text: "", html: "", notBefore: NOW, createdAt: later(2) });
      const [sent, unknown] = [randomUUID(), randomUUID()];
      await database().letter.createMany({ data: [like(sent, "sent"), like(unknown, "unknown")] });
      const right = anAddress();
      expect(good(await correct(enquiryId, { email: right, name: "Ana Exemplar" }))).toMatchObject({ redirected: 2, inDoubt: 1, isAcknowledged: false });
      const rows = Object.fromEntries((await lettersOf(enquiryId)).map((l) => [l.id, l]));
      expect(rows[letterId]).toMatchObject({ state: "held", toAddress: right, toName: "Ana Exemplar", notBefore: later(23) });
      expect(rows[ack?.id ?? ""]).toMatchObject({ state: "waiting", toAddress: right, attempts: 0, notBefore: later(20), lastResponse: null });
      expect(rows[sent]).toMatchObject({ state: "sent", toAddress: email });
      expect(rows[unknown]).toMatchObject({ state: "failed", toAddress: email, lastResponse: expect.stringContaining("It may have arrived.") as string });
      await deliver(later(600));
      expect([arrivedAt(email).length, arrivedAt(right).length]).toEqual([0, 2]);
    });

    it("makes it our turn where the only letter may or may not have arrived at the old address", async () => {
      const { enquiryId } = await anEnquiry();
      const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1 }, later(1)));
      await database().letter.update({ where: { id: letterId }, data: { state: "unknown" } });
      good(await correct(enquiryId, { email: anAddress() }));
      expect(await view(enquiryId)).toMatchObject({ state: "our_turn", undelivered: { isInDoubt: true }, may: { approve: true } });
    });

    it("waits while a letter is leaving for the old address, and changes nothing", async () => {
      const { enquiryId, email } = await anEnquiry();
      await database().letter.updateMany({ where: { enquiryId }, data: { state: "sending", leaseOwner: "another", leaseUntil: later(21) } });
      expect(await correct(enquiryId, { email: anAddress() })).toMatchObject({ ok: false, code: "changed-meanwhile", say: expect.stringContaining("leaving") as string });
      expect((await clientRow(enquiryId)).email).toBe(email);
      expect(await corrections(enquiryId)).toEqual([]);
      expect(good(await correct(enquiryId, { email: anAddress() }, { now: later(22) }))).toMatchObject({ inDoubt: 1, isAcknowledged: true });
    });

    it("never lets one letter go to the old address once it was said to go to the new one", async () => {
      for (let n = 0; n < 8; n++) {
        const { enquiryId, email } = await anEnquiry();
        const [, corrected] = await Promise.all([deliver(later(20)), correct(enquiryId, { email: anAddress() })]);
        await deliver(later(30));
        const { redirected } = corrected.ok ? corrected.value : { redirected: 0 };
        expect(arrivedAt(email)).toHaveLength(1 - redirected);
      }
    });

    it("reads a letter anew whose address was corrected between its being found and its being claimed", async () => {
      const { enquiryId, email } = await anEnquiry();
      const right = anAddress();
      const { letter: letters } = database();
      const find = letters.findFirst.bind(letters) as (wanted: unknown) => Promise<Letter | null>;
      const between = vi.spyOn(letters as { findFirst: (wanted: unknown) => Promise<Letter | null> }, "findFirst").mockImplementationOnce(async (wanted) => {
        const found = await find(wanted);
        good(await correct(enquiryId, { email: right }));
        return found;
      });
      await deliver(later(20));
      expect(between).toHaveBeenCalled();
      between.mockRestore();
      expect([arrivedAt(email).length, arrivedAt(right).length]).toEqual([0, 1]);
    });

    it("is done by one of any number at once; the others are told what it is now and nothing of it is lost", async () => {
      const { enquiryId } = await anEnquiry();
      const { name, email, telephone } = await clientRow(enquiryId);
      const by = await nell();
      const wishes = Array.from({ length: 5 }, () => anAddress());
      const all = await Promise.all(wishes.map((to) => correctClient(by, { enquiryId, seen: asSeen({ name, email, telephone }), contact: { name, email: to, telephone }, isSomebodyElses: false }, later(20))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      const is = (await clientRow(enquiryId)).email ?? "";
      expect(wishes).toContain(is);
      for (const r of all.filter((o) => !o.ok)) expect(r).toMatchObject({ code: "changed-meanwhile", say: expect.stringContaining(is) as string });
      expect(await corrections(enquiryId)).toHaveLength(1);
    });

    it("refuses what is no address, no name, nothing new, nobody's enquiry, and whoever may not", async () => {
      const { enquiryId, email } = await anEnquiry();
      for (const [to, field] of [[{ email: "ana@" }, "email"], [{ email: "a@x.example, b@y.example" }, "email"], [{ name: "  " }, "name"], [{ telephone: "none" }, "telephone"]] as const)
        expect(await correct(enquiryId, to), field).toMatchObject({ ok: false, code: "invalid", fields: { [field]: expect.any(String) as string } });
      expect(await correct(enquiryId, {})).toMatchObject({ ok: false, code: "invalid", say: expect.stringContaining("Nothing is different") as string });
      expect(await correctClient(await nell(), { enquiryId: "another", seen: "", contact: { name: "Ana", email: null, telephone: null }, isSomebodyElses: false }, NOW)).toMatchObject({ ok: false, code: "not-found" });
      expect(await correct(enquiryId, { email: anAddress() }, { by: await staff("trainee", "Pia") })).toMatchObject({ ok: false, code: "not-allowed" });
      for (const by of [{ kind: "public", addressHash: null }, { kind: "client", enquiryId, linkId: "l" }, SYSTEM] satisfies Caller[])
        expect(await correct(enquiryId, { email: anAddress() }, { by }), by.kind).toMatchObject({ ok: false, code: "not-signed-in" });
      expect((await clientRow(enquiryId)).email).toBe(email);
      expect(await corrections(enquiryId)).toEqual([]);
    });

    it("leaves what was refused with the address: the old one, a new one that refused too, and the same one in other letters", async () => {
      const [shared, known] = [anAddress(), anAddress()];
      const [one, other, third] = [await anEnquiry(shared), await anEnquiry(shared), await anEnquiry(known)];
      await database().client.updateMany({ where: { email: { in: [shared, known] } }, data: { suppressedAt: NOW, suppressedWhy: "550 5.1.1" } });
      good(await correct(one.enquiryId, { name: "Ana Exemplar" }));
      good(await correct(one.enquiryId, { email: shared.toUpperCase() }));
      expect((await clientRow(one.enquiryId)).suppressedAt).toEqual(NOW);
      expect(good(await correct(one.enquiryId, { email: known }))).toMatchObject({ suppressedWhy: "550 5.1.1", others: [other.reference] });
      expect((await clientRow(other.enquiryId)).suppressedAt).toEqual(NOW);
      const right = anAddress();
      expect(good(await correct(third.enquiryId, { email: right }))).toMatchObject({ suppressedWhy: null });
      expect(await suppressedWhy(database(), right)).toBeNull();
    });

    it("ends every link sent before where the old address is somebody else's, and sends a new one; else the old one stays good", async () => {
      const kept = await anEnquiry();
      good(await correct(kept.enquiryId, { email: anAddress() }));
      expect(await callerFromLink(kept.clientToken, later(30))).not.toBeNull();
      const enquiry = await anEnquiry();
      await clientOf(enquiry);
      const right = anAddress();
      expect(good(await correct(enquiry.enquiryId, { email: right }, { isSomebodyElses: true }))).toMatchObject({ redirected: 0, areLinksEnded: true, isAcknowledged: true });
      expect(await callerFromLink(enquiry.clientToken, later(30))).toBeNull();
      await deliver(later(30));
      expect(arrivedAt(enquiry.email)).toEqual([]);
      expect(arrivedAt(right)).toHaveLength(1);
      expect(await callerFromLink(tokenIn(arrivedAt(right)[0]?.mail.text), later(31))).toMatchObject({ enquiryId: enquiry.enquiryId });
    });

    it("takes an address away: what waits stays here to be read out, and no link is sent to nobody", async () => {
      const { enquiryId, email, clientToken } = await anEnquiry();
      good(await approveReply(await nell(), { enquiryId, number: 1 }, later(18)));
      expect(good(await correct(enquiryId, { email: null, telephone: "01632 960 112" }, { isSomebodyElses: true }))).toMatchObject({ is: null, redirected: 1, areLinksEnded: true, isAcknowledged: false });
      await deliver(later(60));
      expect(arrivedAt(email)).toEqual([]);
      expect((await view(enquiryId)).letters.at(-1)).toMatchObject({ to: "", state: "waiting" });
      expect(await callerFromLink(clientToken, later(61))).toBeNull();
    });

    /** Somebody who rang, and left no address. */
    const rang = async () => good(await enterEnquiry(await nell(), { channel: "telephone", client: { name: "Odd Farrow", telephone: "01632 960 112" }, wetNow: "no", rugs: [{ labelText: "100% wool", labelFound: "typed", widthCm: 100, lengthCm: 200 }] }, NOW)).enquiryId;

    it("sends whoever rang an acknowledgement with a link to their first address, which follows nothing", async () => {
      const enquiryId = await rang();
      const first = anAddress();
      expect(good(await correct(enquiryId, { email: first }))).toMatchObject({ was: null, posted: 0, isAcknowledged: true });
      await deliver(later(30));
      const [ack] = arrivedAt(first);
      expect(ack?.mail.text).toContain("Thank you for ringing us");
      expect([ack?.mail.inReplyTo, ack?.mail.references]).toEqual([undefined, undefined]);
      expect(await callerFromLink(tokenIn(ack?.mail.text), later(31))).toMatchObject({ enquiryId });
    });

    it("lets a letter that was to be read out go to a first address, held as long as any, with nothing before it that they never had", async () => {
      const enquiryId = await rang();
      const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1 }, later(2)));
      const first = anAddress();
      expect(good(await correct(enquiryId, { email: first }))).toMatchObject({ posted: 1, overtaken: 0, redirected: 0, isAcknowledged: true });
      const held = await view(enquiryId);
      expect(held).toMatchObject({ state: "their_turn", draft: null, letters: [{ id: letterId, state: "held", to: first, notBefore: later(25).toISOString(), isToBeReadOut: false }, { kind: "acknowledgement" }] });
      expect(held.history.map((h) => h.what)).toContain("let the letter that was to be read out go by e-mail");
      await deliver(later(24));
      expect(arrivedAt(first).map((m) => m.mail.headers.has("auto-submitted"))).toEqual([true]);
      await deliver(later(26));
      expect(arrivedAt(first).map((m) => [m.mail.headers.has("auto-submitted"), m.mail.inReplyTo])).toEqual([[true, undefined], [false, undefined]]);
      expect(good(await readLetters(await nell(), later(60))).notGone.filter((l) => l.enquiryId === enquiryId)).toEqual([]);
    });

    it("takes such a letter back where a newer draft stands, and lets it be taken back while it is held", async () => {
      const [overtaken, held] = [await rang(), await rang()];
      for (const enquiryId of [overtaken, held]) good(await approveReply(await nell(), { enquiryId, number: 1 }, later(2)));
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId: overtaken } });
      good(await correctAnswer(await nell(), { rugId: rug.id, step: "size", values: { unit: "cm", widthCm: "300", lengthCm: "400" }, seen: false }, later(10)));
      const email = anAddress();
      expect(good(await correct(overtaken, { email }))).toMatchObject({ posted: 0, overtaken: 1 });
      expect(await view(overtaken)).toMatchObject({ state: "new", draft: { by: "the program" }, may: { approve: true } });
      await deliver(later(60));
      expect(arrivedAt(email).map((m) => m.mail.headers.has("auto-submitted"))).toEqual([true]);
      good(await correct(held, { email: anAddress() }));
      const [first] = await lettersOf(held);
      good(await takeBackLetter(await nell(), first?.id ?? "", later(21)));
      expect(await view(held)).toMatchObject({ state: "new", draft: { by: "the program" }, may: { approve: true } });
    });

    it("goes by mail or counts as read out, whichever is first, and never both", async () => {
      for (let n = 0; n < 5; n++) {
        const enquiryId = await rang();
        const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1 }, later(2)));
        const by = await nell();
        const [told, corrected] = await Promise.all([recordReadOut(by, letterId, later(20)), correct(enquiryId, { email: anAddress() })]);
        expect(good(corrected).posted).toBe(told.ok ? 0 : 1);
        expect((await view(enquiryId)).state).toBe("their_turn");
      }
    });

    it("threads an acknowledgement, and a letter taken along, under nothing that went to the old address", async () => {
      const { enquiryId, email } = await anEnquiry();
      await deliver(NOW);
      good(await approveReply(await nell(), { enquiryId, number: 1 }, later(18)));
      const right = anAddress();
      const before = (await lettersOf(enquiryId)).at(-1);
      expect(before?.inReplyTo).toBe((await lettersOf(enquiryId))[0]?.messageId);
      good(await correct(enquiryId, { email: right }, { isSomebodyElses: true }));
      await deliver(later(60));
      expect([arrivedAt(email).length, arrivedAt(right).length]).toEqual([1, 2]);
      for (const { mail: { inReplyTo, references } } of arrivedAt(right)) expect([inReplyTo, references]).toEqual([undefined, undefined]);
    });

    it("writes the program's draft anew with the corrected name, and leaves one that a person wrote", async () => {
      const [untouched, edited] = [await anEnquiry(), await anEnquiry()];
      good(await saveDraft(await nell(), { enquiryId: edited.enquiryId, from: 1, subject: "Your rug", text: "Dear Ana Example, mine." }, later(1)));
      for (const { enquiryId } of [untouched, edited]) good(await correct(enquiryId, { name: "Annika Exemplar" }));
      expect((await view(untouched.enquiryId)).draft?.text).toContain("Dear Annika Exemplar");
      expect((await view(edited.enquiryId)).draft?.text).toBe("Dear Ana Example, mine.");
    });

    it("holds for every enquiry of one client, and each history says so", async () => {
      const [one, two] = [await anEnquiry(), await anEnquiry()];
      const { id: clientId } = await clientRow(one.enquiryId);
      await database().enquiry.update({ where: { id: two.enquiryId }, data: { clientId } });
      await database().letter.updateMany({ where: { enquiryId: two.enquiryId }, data: { toAddress: one.email } });
      const right = anAddress();
      expect(good(await correct(one.enquiryId, { email: right }))).toMatchObject({ redirected: 2 });
      for (const { enquiryId } of [one, two]) {
        expect(await corrections(enquiryId)).toHaveLength(1);
        expect((await lettersOf(enquiryId)).map((l) => l.toAddress)).toEqual([right]);
      }
    });

    it("leaves nothing behind once the enquiry is erased: neither address in the history, nor loose messages from the client's old one", async () => {
      for (const isSomebodyElses of [false, true]) {
        const mark = `carmine${randomUUID().slice(0, 8)}`;
        const { enquiryId, reference } = await anEnquiry(`${mark}@example.org`);
        const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: `${mark}@example.org`, text: "One thing more." })]), later(10)));
        await sortPost(postId, later(10));
        good(await correct(enquiryId, { email: anAddress(mark), name: `Ana ${mark}` }, { isSomebodyElses }));
        expect(JSON.stringify(await corrections(enquiryId))).toContain(mark);
        good(await eraseEnquiry(await nell(), { enquiryId, typed: reference }, later(60)));
        expect(JSON.stringify([await database().audit.findMany({ orderBy: { at: "desc" }, take: 2_000 }), await database().client.findMany({ where: { name: { contains: mark } } })])).not.toContain(mark);
        expect(await database().post.count({ where: { id: postId } })).toBe(isSomebodyElses ? 1 : 0);
      }
    });
  });
}
