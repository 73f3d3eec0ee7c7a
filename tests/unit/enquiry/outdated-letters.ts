import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { recordLaboratoryReport } from "../../../lib/enquiry/record-laboratory-report";
import type { EnquiryStateId } from "../../../lib/enquiry/views";
import { database } from "../../../lib/store/database";
import { clientOf, givePhoto, good, later, staff, submitted } from "./workshop";

const nell = () => staff("owner", "Nell Harrow");
const DAY = 24 * 60;

/** Letters that left and no longer hold, since something else is known of a rug. */
export function outdatedLetters(): void {
  describe("a letter that left before an answer was corrected", () => {
    const standingOf = async (enquiryId: string) => good(await readQueue(await nell(), later(2 * DAY))).waiting.find((s) => s.enquiryId === enquiryId)?.standing;
    const label = async (rugId: string, labelText: string, minutes: number) => good(await correctAnswer(await nell(), { rugId, step: "label", values: { answer: "typed", labelText }, seen: false }, later(minutes)));
    /** A rug whose label says wool, of which our letter went a day ago. */
    async function answered() {
      const sent = await submitted(
        { wetNow: "no", reason: "routine", rug: { labelFound: "typed", labelText: "100% wool", widthCm: 200, lengthCm: 300, incidents: ["nothing"], changes: ["dirty"] } },
        { contact: { name: "Ana Example", email: `${randomUUID()}@example.org` }, consent: true },
      );
      const { enquiryId } = sent;
      const view = async () => good(await readEnquiry(await nell(), enquiryId, later(2 * DAY)));
      const approve = async (minutes: number) => {
        const { letterId } = good(await approveReply(await nell(), { enquiryId, number: (await view()).draft?.number ?? 0 }, later(minutes)));
        await database().letter.update({ where: { id: letterId }, data: { state: "sent", sentAt: later(minutes + 5) } });
      };
      await approve(1);
      const rugId = (await view()).rugs[0]?.id ?? "";
      const go = async (...states: EnquiryStateId[]) => { for (const to of states) good(await moveEnquiry(await nell(), { enquiryId, from: (await view()).state, to }, later(10))); };
      return { sent, enquiryId, rugId, view, approve, go };
    }

    it("makes it our turn with a letter that follows it, and queue, desk and history say why until that is approved", async () => {
      const { enquiryId, rugId, view, approve } = await answered();
      expect(await view()).toMatchObject({ state: "their_turn", outdated: null, draft: null });
      await label(rugId, "100% viscose", DAY);
      const seen = await view();
      expect(seen).toMatchObject({ state: "our_turn", stateSince: later(DAY).toISOString(), may: { edit: true, approve: true }, draft: { by: "the program" } });
      expect(seen.draft?.text).toMatch(/This replaces what we wrote before about what it is made of/u);
      expect(seen.outdated?.leftAt).toBe(later(6).toISOString());
      expect(seen.outdated?.changes.find((c) => c.place === "What it is, and how sure")).toMatchObject({ was: expect.stringMatching(/wool/u) as string, now: expect.stringMatching(/viscose/u) as string });
      expect(await standingOf(enquiryId)).toBe("our letter no longer holds");
      expect(seen.history.at(-1)).toMatchObject({ who: "The program", what: "took the turn back, since our letter no longer holds: a rug was judged anew after it" });
      await approve(DAY + 1);
      expect(await view()).toMatchObject({ state: "their_turn", outdated: null });
    });
    it("moves nothing for a test of our own, which the desk holds against the letter all the same", async () => {
      const { rugId, view } = await answered();
      good(await recordLaboratoryReport(await nell(), { id: randomUUID(), rugId, sample: "pile:whole", laboratory: "Fenwick Fibre Laboratory", reportedOn: "2026-11-20", reference: "F-112", percents: { viscose: 100 } }, later(DAY)));
      const seen = await view();
      expect(seen).toMatchObject({ state: "their_turn", draft: null, may: { moveTo: expect.arrayContaining(["our_turn"]) as unknown[] } });
      expect(seen.outdated?.changes.length).toBeGreaterThan(0);
    });
    it("makes it our turn for a caution that it did not have", async () => {
      const { rugId, view } = await answered();
      good(await correctAnswer(await nell(), { rugId, step: "changes", values: { answer: ["spots", "dirty"] }, seen: false }, later(DAY)));
      const { state, outdated, draft } = await view();
      expect(state).toBe("our_turn");
      expect(outdated?.changes.some(({ now }) => now?.includes("mould"))).toBe(true);
      expect(draft?.text).toMatch(/keep everybody out of the room/u);
    });
    it("stays as it is where the judgement is the same by a label that reads otherwise, or where something else is only asked for, and holds again where it is told so again", async () => {
      const { enquiryId, rugId, view } = await answered();
      good(await correctAnswer(await nell(), { rugId, step: "label", values: { answer: "typed", labelText: "100% Wool" }, seen: false }, later(DAY)));
      expect(await view()).toMatchObject({ state: "their_turn", outdated: null });
      good(await correctAnswer(await nell(), { rugId, step: "label", values: { answer: "typed", labelText: "100% wool" }, seen: false }, later(DAY + 1)));
      good(await givePhoto(await nell(), "whole", later(DAY + 1), rugId));
      expect(await view()).toMatchObject({ state: "their_turn", outdated: null });
      expect(await database().assessment.count({ where: { rug: { enquiryId } } })).toBeGreaterThan(1);
      expect(await standingOf(enquiryId)).toBeUndefined();
      await label(rugId, "100% viscose", DAY + 2);
      expect((await view()).outdated).not.toBeNull();
      await label(rugId, "100% wool", DAY + 3);
      expect((await view()).outdated).toBeNull();
    });
    it.each([["waiting_elsewhere"], ["quoted"]] as const)("makes it our turn too where it stands at %s", async (state) => {
      const { rugId, view, go } = await answered();
      await go(state);
      await label(rugId, "100% viscose", DAY);
      expect(await view()).toMatchObject({ state: "our_turn", outdated: { leftAt: later(6).toISOString() } });
    });
    it("moves nothing that is agreed or here, where the desk says so and offers our turn", async () => {
      for (const states of [["agreed"], ["coming_in"], ["coming_in", "in_workshop"]] as const) {
        const { enquiryId, rugId, view, go } = await answered();
        await go(...states);
        await label(rugId, "100% viscose", DAY);
        const seen = await view();
        expect(seen).toMatchObject({ state: states.at(-1), draft: null, may: { moveTo: expect.arrayContaining(["our_turn"]) as unknown[] } });
        expect(seen.outdated?.changes.length).toBeGreaterThan(0);
        expect(await standingOf(enquiryId)).toBeUndefined();
        await go("our_turn");
        expect((await view()).draft?.text).toMatch(/This replaces what we wrote before/u);
      }
    });
    it("is nothing that ended, and no reason beside a client's own words, who is heard anyway", async () => {
      const ended = await answered();
      await ended.go("declined");
      await label(ended.rugId, "100% viscose", DAY);
      expect(await ended.view()).toMatchObject({ state: "declined", outdated: null });
      const heard = await answered();
      good(await sendFromClient(await clientOf(heard.sent), { message: "It says viscose after all." }, later(DAY)));
      await label(heard.rugId, "100% viscose", DAY + 1);
      expect(await heard.view()).toMatchObject({ state: "our_turn", outdated: null });
      expect(await standingOf(heard.enquiryId)).not.toContain("no longer holds");
    });
  });
}
