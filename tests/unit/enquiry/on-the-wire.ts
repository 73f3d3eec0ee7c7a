import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { config } from "../../../lib/config/config";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { encloseDocument } from "../../../lib/enquiry/enclose-document";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { previewLetter } from "../../../lib/enquiry/preview-letter";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { sendTestLetter } from "../../../lib/enquiry/send-test-letter";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { deliverDue } from "../../../lib/mail/outbox";
import { ALLOWANCES } from "../../../lib/staff/rate-limit";
import { database } from "../../../lib/store/database";
import { besideMailServer } from "./beside-mail-server";
import { clientOf, good, later, NOW, staff, submitted, WET_VISCOSE } from "./workshop";

const nell = () => staff("owner", "Nell Harrow");
const pia = () => staff("trainee", "Pia Wetherby");
const WORDS = { subject: "Your rug: grün & <b>kind</b>", text: "Dear Ana,\n\nPlease leave it flat & let it dry.\n– no water\n– no heat\n\nWith kind wishes" };
const EIGHT = { day: "2026-11-26", hour: "08:00" };
const AT_EIGHT = new Date("2026-11-26T08:00:00Z");

/** Letters at a chosen time, as they will arrive, and tried on oneself. */
export function onTheWire(): void {
  describe("on the wire", () => {
    const mail = besideMailServer();
    async function anEnquiry() {
      const address = `${randomUUID()}@example.org`;
      const enquiry = await submitted(WET_VISCOSE, { contact: { name: "Ana Example", email: address }, consent: true });
      await database().letter.deleteMany({});
      const { enquiryId } = enquiry;
      return { enquiry, enquiryId, address };
    }
    async function enclosed(enquiryId: string): Promise<void> {
      const [rug] = good(await readEnquiry(await nell(), enquiryId, NOW)).rugs;
      const { documentId } = good(await makeDocument(await nell(), { enquiryId, rugId: rug?.id ?? "", kind: "care-card", filled: {} }, NOW));
      good(await encloseDocument(await nell(), { documentId, isEnclosed: true }, NOW));
    }

    describe("a letter at a chosen time", () => {
      it("leaves then and not before, can be taken back until then, and is the client's to read from then on", async () => {
        const { enquiry, enquiryId } = await anEnquiry();
        const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1, sendAt: EIGHT }, NOW));
        const view = async (now: Date) => good(await readEnquiry(await nell(), enquiryId, now)).letters.find((l) => l.id === letterId);
        expect(good(await readEnquiry(await nell(), enquiryId, later(60))).history.at(-1)?.what).toBe("approved the reply, to leave on 26 November 2026 at 08:00");
        expect(await view(later(60))).toMatchObject({ state: "held", notBefore: AT_EIGHT.toISOString(), canTakeBack: true });
        await deliverDue(new Date(AT_EIGHT.getTime() - 60_000));
        expect(mail.server.received).toHaveLength(0);
        const client = await clientOf(enquiry);
        expect(good(await readClientPage(client, later(60))).letters).toEqual([]);
        await deliverDue(AT_EIGHT);
        expect(mail.server.received).toHaveLength(1);
        expect(good(await readClientPage(client, AT_EIGHT)).letters).toHaveLength(1);
        expect(await takeBackLetter(await nell(), letterId, AT_EIGHT)).toMatchObject({ ok: false, code: "changed-meanwhile" });
      });
      it("is refused for a time that is past, and nothing is approved", async () => {
        const { enquiryId } = await anEnquiry();
        expect(await approveReply(await nell(), { enquiryId, number: 1, sendAt: { day: "2026-11-25", hour: "08:59" } }, NOW)).toMatchObject({ ok: false, code: "invalid", fields: { sendAt: expect.stringContaining("past") as string } });
        expect(await database().letter.count({ where: { enquiryId } })).toBe(0);
        expect((await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId } })).state).toBe("new");
      });
      it("waits with a trainee's approval for the second person, and goes at once where its time is over by then", async () => {
        for (const [seconds, leaves] of [[later(60), AT_EIGHT], [new Date("2026-11-26T09:00:00Z"), new Date("2026-11-26T09:05:00Z")]] as const) {
          const { enquiryId } = await anEnquiry();
          good(await approveReply(await pia(), { enquiryId, number: 1, sendAt: EIGHT }, NOW));
          expect(good(await readEnquiry(await nell(), enquiryId, NOW)).waitsForSecond).toEqual({ by: "Pia Wetherby", asItIs: [], sendAt: AT_EIGHT.toISOString() });
          const { letterId } = good(await secondReply(await nell(), { enquiryId }, seconds));
          expect((await database().letter.findUniqueOrThrow({ where: { id: letterId } })).notBefore).toEqual(leaves);
        }
      });
    });

    describe("sendTestLetter", () => {
      it("goes to whoever asked and to nobody else, marked in its subject, with what is enclosed; nothing but the history changes", async () => {
        const { enquiryId, address } = await anEnquiry();
        await enclosed(enquiryId);
        const rows = async () => JSON.stringify([await database().enquiry.findUnique({ where: { id: enquiryId } }), await database().letter.findMany(), await database().draft.findMany({ where: { enquiryId } }), await database().enclosure.findMany()]);
        const before = await rows();
        const caller = await pia();
        const { email } = await database().staff.findUniqueOrThrow({ where: { id: caller.staffId } });
        expect(good(await sendTestLetter(caller, { enquiryId, kind: "reply", ...WORDS }, NOW))).toEqual({ to: email });
        const [message] = mail.server.received;
        expect([mail.server.received.length, message?.to, message?.mail.subject]).toEqual([1, [email], `[Test] ${WORDS.subject}`]);
        expect(message?.raw.toString("latin1")).not.toContain(address);
        expect(message?.mail.attachments.map((a) => [a.contentType, a.filename])).toEqual([["application/pdf", expect.stringMatching(/^Living with .*\.pdf$/)]]);
        expect(await rows()).toBe(before);
        expect(await database().audit.findMany({ where: { enquiryId, action: "test-letter-sent" } })).toMatchObject([{ actorId: caller.staffId }]);
      });
      it("says why it was not sent: refused, no server, empty words, an enquiry that is not there, too many", async () => {
        const { enquiryId } = await anEnquiry();
        const test = async (given: object = {}) => sendTestLetter(await nell(), { enquiryId, kind: "question", ...WORDS, ...given }, NOW);
        mail.server.onRcpt = () => ({ code: 550, say: "5.1.1 no such mailbox" });
        expect(await test()).toMatchObject({ ok: false, code: "unavailable", say: expect.stringContaining("5.1.1 no such mailbox") as string });
        mail.server.onRcpt = () => null;
        const smtp = config.smtp;
        config.smtp = null;
        expect(await test()).toMatchObject({ ok: false, say: "No mail server is set up, so no test letter can be sent." });
        config.smtp = smtp;
        expect(await test({ text: "" })).toMatchObject({ ok: false, code: "invalid" });
        expect(await test({ enquiryId: "another" })).toMatchObject({ ok: false, code: "not-found" });
        expect(await sendTestLetter({ kind: "public", addressHash: null }, { enquiryId, kind: "reply", ...WORDS }, NOW)).toMatchObject({ code: "not-signed-in" });
        for (let n = 2; n < ALLOWANCES.testLetter.max; n++) good(await test());
        expect(await test()).toMatchObject({ ok: false, code: "too-many" });
        expect(await database().audit.count({ where: { enquiryId, action: "test-letter-sent" } })).toBe(ALLOWANCES.testLetter.max - 2);
      });
    });

    describe("previewLetter", () => {
      it("is, to the letter, both forms of what then arrives, with the enclosure beside it", async () => {
        const { enquiryId } = await anEnquiry();
        await enclosed(enquiryId);
        const { number } = good(await saveDraft(await nell(), { enquiryId, from: 1, ...WORDS }, NOW));
        const seen = good(await previewLetter(await nell(), { enquiryId, kind: "reply", ...WORDS }));
        good(await approveReply(await nell(), { enquiryId, number, reason: "Words of a test." }, NOW));
        await deliverDue(later(5));
        const [message] = mail.server.received;
        expect(message?.mail.html).toBe(seen.html);
        expect(message?.mail.text?.trim()).toBe(seen.text.trim());
        expect(seen.text).toContain("With this letter:\n– a care card");
        expect(message?.mail.attachments).toHaveLength(1);
        const { pdf } = await database().document.findFirstOrThrow({ where: { enquiryId } });
        expect(message?.mail.attachments[0]?.content.toString("base64")).toBe(pdf);
      });
      it("is the desk's alone, and of an enquiry that is there", async () => {
        const { enquiryId, enquiry } = await anEnquiry();
        expect(await previewLetter(await clientOf(enquiry), { enquiryId, kind: "reply", ...WORDS })).toMatchObject({ ok: false, code: "not-signed-in" });
        expect(await previewLetter(await nell(), { enquiryId: "another", kind: "reply", ...WORDS })).toMatchObject({ code: "not-found" });
      });
    });
  });
}
