import { randomUUID } from "node:crypto";
import { describe, expect, it, onTestFinished } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import { assessRug } from "../../../lib/enquiry/assess-rug";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { encloseDocument } from "../../../lib/enquiry/enclose-document";
import { enterEnquiry } from "../../../lib/enquiry/enter-enquiry";
import { judgeOpenAnew } from "../../../lib/enquiry/judge-open-anew";
import { makeDocument } from "../../../lib/enquiry/make-document";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { recordLaboratoryReport } from "../../../lib/enquiry/record-laboratory-report";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { withdrawBenchTest } from "../../../lib/enquiry/withdraw-bench-test";
import { deliverDue } from "../../../lib/mail/outbox";
import { database } from "../../../lib/store/database";
import { readSettings } from "../../../lib/workshop/settings";
import { besideMailServer } from "./beside-mail-server";
import { good, later, NOW, staff, submitted, SYSTEM } from "./workshop";

const nell = () => staff("owner", "Nell Harrow");
const EIGHT = { day: "2026-11-26", hour: "08:00" };
const AT_EIGHT = new Date("2026-11-26T08:00:00Z");
const SAYS = "Held back before it went out: the rug was judged anew meanwhile.";
/** Later than anything that other tests have judged. */
const LAST = later(2_000_000);

/** Letters that wait to leave while their rug is judged anew. */
export function holdingOvertaken(): void {
  describe("a letter that has not left when its rug is judged anew", () => {
    const mail = besideMailServer();
    const rowOf = (id: string) => database().letter.findUniqueOrThrow({ where: { id } });
    const standingOf = async (enquiryId: string) => good(await readQueue(await nell(), later(60))).waiting.find((s) => s.enquiryId === enquiryId)?.standing;
    const label = async (rugId: string, labelText: string, now = later(3)) => good(await correctAnswer(await nell(), { rugId, step: "label", values: { answer: "typed", labelText }, seen: false }, now));
    const report = async (rugId: string, percents: Record<string, number>) => {
      const id = randomUUID();
      good(await recordLaboratoryReport(await nell(), { id, rugId, sample: "pile:whole", laboratory: "Fenwick Fibre Laboratory", reportedOn: "2026-11-20", reference: "F-112", percents }, later(3)));
      return id;
    };
    /** A rug whose label says wool, whose acknowledgement has arrived. */
    async function woolRug() {
      const { enquiryId } = await submitted(
        { wetNow: "no", reason: "routine", rug: { labelFound: "typed", labelText: "100% wool", widthCm: 200, lengthCm: 300, incidents: ["nothing"], changes: ["dirty"] } },
        { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true },
      );
      await deliverDue(NOW);
      mail.server.received.length = 0;
      const view = async () => good(await readEnquiry(await nell(), enquiryId, later(60)));
      const [rug] = (await view()).rugs;
      const approve = async (sendAt: typeof EIGHT | null = null) => good(await approveReply(await nell(), { enquiryId, number: (await view()).draft?.number ?? 0, sendAt }, later(2))).letterId;
      return { enquiryId, rugId: rug?.id ?? "", view, approve };
    }

    it("comes back to the desk where the label was corrected, never leaves, and queue, desk and history say why", async () => {
      const { enquiryId, rugId, view, approve } = await woolRug();
      const letterId = await approve();
      const approved = (await view()).letters.find((l) => l.id === letterId)?.text;
      expect(approved).toMatch(/wool/u);
      await label(rugId, "100% viscose");
      const seen = await view();
      expect(seen).toMatchObject({
        state: "new", stateSince: NOW.toISOString(), may: { edit: true, approve: true }, draft: { number: 2, by: "the program", text: expect.stringMatching(/viscose/u) as string },
        meanwhile: { kind: "reply", isHeldBack: true, isOvertaken: true, approvedAt: later(2).toISOString(), messages: [], photos: 0, answers: false },
      });
      expect(seen.letters.find((l) => l.id === letterId), "what was approved stays to be seen").toMatchObject({ state: "taken_back", canTakeBack: false, says: SAYS, text: approved });
      expect(seen.history.slice(-2).map((h) => `${h.who} ${h.what}`)).toEqual(["Nell Harrow corrected an answer: Is there a label, and what does it say?", "The program held our letter back, since the rug was judged anew before it left"]);
      expect(await standingOf(enquiryId)).toBe("the rug was judged anew before our letter left");
      expect(await takeBackLetter(await nell(), letterId, later(4))).toMatchObject({ ok: false, say: SAYS });
      await deliverDue(later(60));
      expect(mail.server.received).toEqual([]);
      await approve();
      expect((await view()).meanwhile, "a newer letter has taken its place").toBeNull();
      await deliverDue(later(60));
      expect(mail.server.received).toHaveLength(1);
    });
    it("comes back from a chosen time for a laboratory's report, and for one that is struck", async () => {
      const { rugId, view, approve } = await woolRug();
      const first = await approve(EIGHT);
      const id = await report(rugId, { viscose: 100 });
      const second = await approve(EIGHT);
      good(await withdrawBenchTest(await nell(), { id, reason: "Another rug’s report." }, later(4)));
      expect([await rowOf(first), await rowOf(second)]).toMatchObject([{ state: "taken_back" }, { state: "taken_back" }]);
      expect(await view()).toMatchObject({ meanwhile: { isOvertaken: true, approvedAt: later(2).toISOString() } });
      await deliverDue(AT_EIGHT);
      expect(mail.server.received).toEqual([]);
    });
    it("leaves where the rug was judged anew and the letter would say the same", async () => {
      const { rugId, view, approve } = await woolRug();
      const letterId = await approve(EIGHT);
      good(await assessRug(await nell(), rugId, later(3)));
      await label(rugId, "100% wool", later(4));
      expect(await rowOf(letterId)).toMatchObject({ state: "held" });
      expect(await view()).toMatchObject({ state: "their_turn", meanwhile: null });
      await deliverDue(AT_EIGHT);
      expect(mail.server.received).toHaveLength(1);
    });
    it("keeps the words that a person wrote, with what was enclosed, and names what changed", async () => {
      const { enquiryId, rugId, view, approve } = await woolRug();
      const { documentId } = good(await makeDocument(await nell(), { enquiryId, rugId, kind: "condition-report", filled: {} }, NOW));
      good(await encloseDocument(await nell(), { documentId, isEnclosed: true }, NOW));
      const { draft } = await view();
      const text = `${draft?.text ?? ""}\nWe close in August.`;
      good(await saveDraft(await nell(), { enquiryId, from: 1, subject: "Your rug", text }, later(1)));
      await approve();
      await label(rugId, "100% viscose");
      const seen = await view();
      expect(seen).toMatchObject({ state: "new", draft: { number: 2, by: "Nell Harrow", text }, documents: [{ id: documentId, isEnclosed: true }] });
      expect(seen.draft?.today?.changes.length).toBeGreaterThan(0);
      expect(await approveReply(await nell(), { enquiryId, number: 2 }, later(4))).toMatchObject({ ok: false, code: "changed-meanwhile", say: expect.stringContaining("It would now read otherwise at:") as string });
    });
    it("comes back where only a document with it would say otherwise", async () => {
      const { enquiryId, rugId, view, approve } = await woolRug();
      const { documentId } = good(await makeDocument(await nell(), { enquiryId, rugId, kind: "condition-report", filled: {} }, NOW));
      good(await encloseDocument(await nell(), { documentId, isEnclosed: true }, NOW));
      const letterId = await approve();
      // How it shines stands in a report, and in no letter of a rug whose label says wool.
      good(await correctAnswer(await nell(), { rugId, step: "shine", values: { answer: "none" }, seen: false }, later(3)));
      expect(await view(), "the letter reads the same").toMatchObject({ draft: { number: 1, by: "the program" } });
      expect(await rowOf(letterId)).toMatchObject({ state: "taken_back" });
    });
    it("comes back where every open enquiry is judged anew with other prices", async () => {
      const before = await readSettings();
      onTestFinished(async () => void good(await saveSettings(SYSTEM, before)));
      good(await saveSettings(SYSTEM, { ...before, prices: { cleanPerM2: 40, cleanMinimum: 100, bindingPerM: 30 } }));
      const { enquiryId, view, approve } = await woolRug();
      const letterId = await approve(EIGHT);
      expect((await rowOf(letterId)).text).toContain("240");
      good(await saveSettings(await nell(), { ...(await readSettings()), prices: { cleanPerM2: 60, cleanMinimum: 100, bindingPerM: 30 } }, later(3)));
      expect(await rowOf(letterId), "the prices alone judge nothing").toMatchObject({ state: "held" });
      for (let left = 1; left > 0;) ({ left } = good(await judgeOpenAnew(await nell(), LAST)));
      expect(await rowOf(letterId), "its time had come by then, and no sender had taken it").toMatchObject({ state: "taken_back" });
      expect((await view()).draft?.text).toContain("360");
      expect(await standingOf(enquiryId)).toBe("the rug was judged anew before our letter left");
    });
    it("goes where it was being handed over already, and it is our turn at once since it no longer holds", async () => {
      const { rugId, view, approve } = await woolRug();
      const letterId = await approve();
      mail.server.afterDot = async () => {
        await label(rugId, "100% viscose", later(10));
        return "accept" as const;
      };
      await deliverDue(later(10));
      expect(mail.server.received).toHaveLength(1);
      expect(await rowOf(letterId)).toMatchObject({ state: "sent" });
      expect(await view()).toMatchObject({ state: "our_turn", meanwhile: null, outdated: { changes: expect.arrayContaining([expect.objectContaining({ place: "What it is, and how sure" })]) as unknown } });
    });
    it("goes or is held back, one of the two, when outbox and staff come at the same moment", async () => {
      for (let n = 0; n < 5; n++) {
        const { rugId, view, approve } = await woolRug();
        const letterId = await approve();
        await Promise.all([deliverDue(later(7)), label(rugId, "100% viscose", later(7))]);
        const { state } = await rowOf(letterId);
        expect([state, mail.server.received.length, (await view()).state]).toEqual(state === "sent" ? ["sent", 1, "our_turn"] : ["taken_back", 0, "new"]);
      }
    });
    it("is ours again from where somebody has put the enquiry by hand, and goes from where a client's words give us no turn", async () => {
      for (const [to, state, stands] of [["quoted", "taken_back", "our_turn"], ["coming_in", "held", "coming_in"]] as const) {
        const { enquiryId, rugId, view, approve } = await woolRug();
        const letterId = await approve(EIGHT);
        good(await moveEnquiry(await nell(), { enquiryId, from: "their_turn", to }, later(2)));
        await label(rugId, "100% viscose");
        expect(await rowOf(letterId)).toMatchObject({ state });
        expect((await view()).state).toBe(stands);
      }
    });
    it("comes back too where it was to be read out to a client without an address, until its time has come", async () => {
      const rang = async () => good(await enterEnquiry(await nell(), { channel: "telephone", client: { name: "Odd Farrow", telephone: "01632 960 112" }, wetNow: "no", rugs: [{ labelText: "100% wool", labelFound: "typed" }] }, NOW)).enquiryId;
      for (const [minutes, state, standing] of [[3, "taken_back", "the rug was judged anew before our letter left"], [30, "held", "new"]] as const) {
        const enquiryId = await rang();
        const { rugs } = good(await readEnquiry(await nell(), enquiryId, later(1)));
        const { letterId } = good(await approveReply(await nell(), { enquiryId, number: 1 }, later(2)));
        await label(rugs[0]?.id ?? "", "100% viscose", later(minutes));
        expect(await rowOf(letterId)).toMatchObject({ state });
        expect(await standingOf(enquiryId)).toBe(standing);
        good(await approveReply(await nell(), { enquiryId, number: 2 }, later(minutes + 1)));
        expect(await standingOf(enquiryId)).toBe("ring them: our letter is to be read out");
      }
    });
    it("is left alone where it is a question or the acknowledgement", async () => {
      const asked = await woolRug();
      const { letterId } = good(await askClient(await nell(), { enquiryId: asked.enquiryId, subject: "A question", text: "How old is it?" }, later(2)));
      await label(asked.rugId, "100% viscose");
      expect(await rowOf(letterId)).toMatchObject({ state: "held" });
      const { enquiryId } = await submitted();
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      await label(rug.id, "100% wool");
      expect(await database().letter.findMany({ where: { enquiryId } })).toMatchObject([{ automatic: true, state: "waiting" }]);
    });
  });
}
