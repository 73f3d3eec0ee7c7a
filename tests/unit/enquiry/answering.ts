import { describe, expect, it } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { askClient } from "../../../lib/enquiry/ask-client";
import type { Caller } from "../../../lib/enquiry/caller";
import { eraseEnquiry } from "../../../lib/enquiry/erase-enquiry";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readEverything } from "../../../lib/enquiry/read-everything";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { secondReply } from "../../../lib/enquiry/second-reply";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { database } from "../../../lib/store/database";
import { OLDEST_FIRST } from "../../../lib/store/row-order";
import { answerOnce, clientOf, givePhoto, good, intake, later, leaves, NOW, staff, submitted, WET_VISCOSE } from "./workshop";

const LETTER = { subject: "Your rug", text: "Please leave it flat, keep children and pets off it, and put nothing on it.\n\nWe look at it on Monday." };
const actions = async (enquiryId: string) => (await database().audit.findMany({ where: { enquiryId }, orderBy: OLDEST_FIRST.at })).map((a) => a.action);
const replies = (enquiryId: string) => database().letter.findMany({ where: { enquiryId, automatic: false }, orderBy: OLDEST_FIRST.createdAt });

export function answering(): void {
  describe("saveDraft", () => {
    it("keeps every revision and who wrote it", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      expect(good(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER }, later(1)))).toEqual({ number: 2 });
      const { draft } = good(await readEnquiry(ivo, enquiryId, later(1)));
      expect(draft).toMatchObject({ number: 2, subject: LETTER.subject, text: LETTER.text, by: "Ivo Castellane", words: 21 });
      expect(await database().revision.count({ where: { draft: { enquiryId } } })).toBe(2);
      expect(await actions(enquiryId)).toEqual(["submitted", "draft-saved"]);
    });
    it("lets one of twenty edits of the same revision through and tells others whose, and oneself that it was in another window", async () => {
      const { enquiryId } = await submitted();
      const [ivo, pia] = [await staff("reviewer", "Ivo Castellane"), await staff("trainee", "Pia Wetherby")];
      const all = await Promise.all(
        Array.from({ length: 20 }, (_, n) => saveDraft(ivo, { enquiryId, from: 1, subject: `Edit ${n}`, text: "Text" }, later(1))),
      );
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      for (const r of all.filter((x) => !x.ok))
        expect(r).toMatchObject({ code: "changed-meanwhile", say: expect.stringContaining("in another window") as string });
      expect(await saveDraft(pia, { enquiryId, from: 1, subject: "Edit 0", text: "Text of another" }, later(1)))
        .toMatchObject({ code: "changed-meanwhile", say: expect.stringContaining("Ivo Castellane") as string });
      expect(await database().revision.count({ where: { draft: { enquiryId } } })).toBe(2);
    });
    it("keeps the same words sent twice once, for whoever wrote them and for nobody else", async () => {
      const { enquiryId } = await submitted();
      const [ivo, pia] = [await staff("reviewer", "Ivo Castellane"), await staff("trainee", "Pia Wetherby")];
      good(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER }, later(1)));
      expect(good(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER }, later(2)))).toEqual({ number: 2 });
      expect(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER, text: `${LETTER.text} Or on Tuesday.` }, later(2))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await saveDraft(pia, { enquiryId, from: 1, ...LETTER }, later(2))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await actions(enquiryId)).toEqual(["submitted", "draft-saved"]);
      expect(good(await readEnquiry(ivo, enquiryId, later(3))).draft).toMatchObject({ number: 2, isByYou: true });
      expect(good(await readEnquiry(pia, enquiryId, later(3))).draft).toMatchObject({ number: 2, isByYou: false });
    });
    it("refuses a subject of two lines, an empty letter, and one that is too long", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      for (const bad of [{ subject: "Hello\r\nBcc: x@example.org" }, { subject: " " }, { text: "" }, { text: "x".repeat(20_001) }]) {
        expect(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER, ...bad }, later(1))).toMatchObject({ ok: false, code: "invalid" });
      }
      expect(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER, text: "x".repeat(20_000) }, later(1))).toMatchObject({ ok: true });
    });
  });

  describe("approveReply", () => {
    it("puts the edited words into the outbox, held, threaded to the acknowledgement, and passes the turn", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { number } = good(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER }, later(1)));
      const { letterId, waitsForSecond } = good(await approveReply(ivo, { enquiryId, number }, later(2)));
      expect(waitsForSecond).toBe(false);
      const acknowledgement = await database().letter.findFirstOrThrow({ where: { enquiryId, automatic: true } });
      expect(await replies(enquiryId)).toMatchObject([
        {
          id: letterId,
          kind: "reply",
          state: "held",
          subject: LETTER.subject,
          inReplyTo: acknowledgement.messageId,
          approvedById: ivo.staffId,
          secondedById: null,
          notBefore: later(7),
        },
      ]);
      expect((await replies(enquiryId))[0]?.text).toContain("We look at it on Monday.");
      const view = good(await readEnquiry(ivo, enquiryId, later(2)));
      expect(view).toMatchObject({ state: "their_turn", draft: null, may: { edit: false, approve: false, ask: false } });
      expect(view.letters.map((l) => [l.kind, l.canTakeBack])).toEqual([
        ["acknowledgement", false],
        ["reply", true],
      ]);
      expect(await actions(enquiryId)).toEqual(["submitted", "draft-saved", "reply-approved"]);
    });
    it("is said to be held in every list until it may leave, though it is their turn already", async () => {
      const { enquiryId, reference } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      const slip = async () => good(await readEverything(ivo, { text: reference })).slips.find((s) => s.enquiryId === enquiryId);
      expect(await slip()).toMatchObject({ state: "new", heldUntil: null });
      const { letterId } = good(await approveReply(ivo, { enquiryId, number: 1 }, later(2)));
      expect(await slip()).toMatchObject({ state: "their_turn", heldUntil: later(7).toISOString() });
      await database().letter.update({ where: { id: letterId }, data: { state: "sent", sentAt: later(7) } });
      expect(await slip()).toMatchObject({ state: "their_turn", standing: "their turn", heldUntil: null });
    });
    it("succeeds for one of fifty at once; the others are told who was first, and one letter lies in the outbox", async () => {
      const { enquiryId } = await submitted();
      const people = [await staff("reviewer", "Ivo Castellane"), await staff("owner", "Nell Harrow")];
      const all = await Promise.all(Array.from({ length: 50 }, (_, n) => approveReply(people[n % 2] as Caller, { enquiryId, number: 1 }, later(1))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      for (const r of all.filter((x) => !x.ok))
        expect(r).toMatchObject({
          code: "changed-meanwhile",
          say: expect.stringMatching(/^(You have|Ivo Castellane has|Nell Harrow has) approved a letter here already/) as string,
        });
      expect(await replies(enquiryId)).toHaveLength(1);
      expect((await actions(enquiryId)).filter((a) => a === "reply-approved")).toHaveLength(1);
    });
    it("approves no revision but the newest", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      good(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER }, later(1)));
      for (const number of [1, 3])
        expect(await approveReply(ivo, { enquiryId, number }, later(2))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      expect(await replies(enquiryId)).toHaveLength(0);
      expect(good(await readEnquiry(ivo, enquiryId, later(2))).state).toBe("new");
    });
    it("is for staff alone", async () => {
      const enquiry = await submitted();
      for (const caller of [await clientOf(enquiry), await intake(), { kind: "public", addressHash: null } as const]) {
        expect(await approveReply(caller, { enquiryId: enquiry.enquiryId, number: 1 }, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
        expect(await readEnquiry(caller, enquiry.enquiryId, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
        expect(await readQueue(caller, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
      }
    });
    it("keeps a letter to a client without an address out of the mail and on their page", async () => {
      const enquiry = await submitted(WET_VISCOSE, { contact: { name: "Tom", telephone: "01632 960 111" }, consent: true });
      const ivo = await staff("reviewer", "Ivo Castellane");
      good(await approveReply(ivo, { enquiryId: enquiry.enquiryId, number: 1 }, later(1)));
      const [letter] = good(await readEnquiry(ivo, enquiry.enquiryId, later(1))).letters;
      expect(letter?.says).toMatch(/^Not sent: the client left no e-mail address/);
      expect(good(await readClientPage(await clientOf(enquiry), later(6))).letters).toHaveLength(1);
    });
    it("keeps a letter on the client's page while it waits to be tried again, with no time still to come", async () => {
      const enquiry = await submitted();
      const { letterId } = good(await approveReply(await staff("reviewer", "Ivo Castellane"), { enquiryId: enquiry.enquiryId, number: 1 }, NOW));
      const client = await clientOf(enquiry);
      await database().letter.update({ where: { id: letterId }, data: { state: "waiting", attempts: 1, notBefore: later(60) } });
      expect(good(await readClientPage(client, later(10))).letters).toMatchObject([{ at: later(10).toISOString() }]);
      await database().letter.update({ where: { id: letterId }, data: { attempts: 0 } });
      expect(good(await readClientPage(client, later(10))).letters).toEqual([]);
    });
  });

  describe("a letter that says more than we know", () => {
    const BOLD = { subject: "Your rug", text: "Keep children off it.\n\nIt is silk, and the mark will come out." };
    it("goes out only with a reason, which stays in the history", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { number } = good(await saveDraft(ivo, { enquiryId, from: 1, ...BOLD }, later(1)));
      expect(await approveReply(ivo, { enquiryId, number }, later(2))).toMatchObject({ ok: false, code: "promises-too-much", say: expect.stringContaining("It is silk, and the mark will come out.") as string, fields: { reason: expect.any(String) as string } });
      expect(await approveReply(ivo, { enquiryId, number, reason: "too few" }, later(2))).toMatchObject({ ok: false, code: "promises-too-much" });
      expect(await replies(enquiryId)).toHaveLength(0);
      good(await approveReply(ivo, { enquiryId, number, reason: "A test of ours on the twin of this rug." }, later(3)));
      expect(await replies(enquiryId)).toHaveLength(1);
      const { history } = good(await readEnquiry(ivo, enquiryId, later(3)));
      expect(history.at(-1)).toMatchObject({ who: "Ivo Castellane", what: "approved the reply, though it says more than we know: “A test of ours on the twin of this rug.”" });
      // The sentence it was given for is kept with it, by its rule, and not the rest of the letter.
      const sentences = history.at(-1)?.sentences ?? [];
      expect(sentences.filter((s) => s.sentence !== "").map((s) => s.sentence)).toContain("It is silk, and the mark will come out.");
      expect(JSON.stringify(sentences)).not.toContain("Keep children off it.");
      for (const { why } of sentences) expect(why).toMatch(/\w+ \w+/u);
      const { detail } = await database().audit.findFirstOrThrow({ where: { enquiryId, action: "reply-approved" } });
      expect(detail).toMatchObject({ promises: expect.stringContaining("result") as string, allowed: expect.arrayContaining([expect.objectContaining({ rule: "result", sentence: "It is silk, and the mark will come out." })]) as unknown[] });
      expect(history.slice(0, -1).flatMap((h) => h.sentences)).toEqual([]);
    });
    it("leaves no sentence of it behind once the enquiry is erased", async () => {
      const { enquiryId, reference } = await submitted();
      const [nell, ivo] = [await staff("owner", "Nell Harrow"), await staff("reviewer", "Ivo Castellane")];
      const { number } = good(await saveDraft(ivo, { enquiryId, from: 1, ...BOLD }, later(1)));
      good(await approveReply(ivo, { enquiryId, number, reason: "A test of ours on the twin of this rug." }, later(3)));
      const { id } = await database().audit.findFirstOrThrow({ where: { enquiryId, action: "reply-approved" } });
      good(await eraseEnquiry(nell, { enquiryId, typed: reference }, later(4)));
      expect((await database().audit.findUniqueOrThrow({ where: { id } })).detail).toEqual({});
    });
    it("may not be asked as a question either", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      expect(await askClient(ivo, { enquiryId, ...BOLD }, later(1))).toMatchObject({ ok: false, code: "promises-too-much" });
      expect(await database().revision.count({ where: { draft: { enquiryId } } })).toBe(1);
    });
    it("of a trainee keeps the trainee's reason for the second person", async () => {
      const { enquiryId } = await submitted();
      const [pia, ivo] = [await staff("trainee", "Pia Wetherby"), await staff("reviewer", "Ivo Castellane")];
      const { number } = good(await saveDraft(pia, { enquiryId, from: 1, ...BOLD }, later(1)));
      expect(await approveReply(pia, { enquiryId, number }, later(2))).toMatchObject({ ok: false, code: "promises-too-much" });
      good(await approveReply(pia, { enquiryId, number, reason: "We tested it on Monday, see the book." }, later(2)));
      good(await secondReply(ivo, { enquiryId }, later(3)));
      expect(await replies(enquiryId)).toHaveLength(1);
      const { history } = good(await readEnquiry(ivo, enquiryId, later(3)));
      expect(history.slice(-2).map((h) => h.sentences.some((s) => s.sentence === "It is silk, and the mark will come out."))).toEqual([true, true]);
    });
  });

  describe("a letter longer than people read", () => {
    const WHY = "Three kinds of damage, each with its own answer.";
    const of = (words: number) => ({ subject: "Your rug", text: `Keep children off it.\n\n${Array.from({ length: words - 4 }, () => "slowly").join(" ")}` });
    const said = async (enquiryId: string) => good(await readEnquiry(await staff("owner", "Nell Harrow"), enquiryId, later(9))).history.at(-1)?.what;
    it.each([[350, WHY, "approved the reply"], [351, null, "approved the reply, 351 words long"], [351, "  ", "approved the reply, 351 words long"], [360, WHY, `approved the reply, 360 words long: “${WHY}”`]])("goes out, of %i words and with the reason %j, and the history says so where it is long", async (words, longReason, what) => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { number } = good(await saveDraft(ivo, { enquiryId, from: 1, ...of(words) }, later(1)));
      const missing = "Enough was tested on Monday, see the book.";
      good(await approveReply(ivo, { enquiryId, number, reason: missing, longReason }, later(2)));
      expect(await replies(enquiryId)).toHaveLength(1);
      expect((await said(enquiryId))?.replace(`, though it says more than we know: “${missing}”`, "")).toBe(what);
    });
    it("does not take a reason that is itself a letter", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { number } = good(await saveDraft(ivo, { enquiryId, from: 1, ...of(351) }, later(1)));
      const approval = (chars: number) => approveReply(ivo, { enquiryId, number, reason: "Enough was tested on Monday.", longReason: "x".repeat(chars) }, later(2));
      expect(await approval(501)).toMatchObject({ ok: false, code: "invalid", fields: { longReason: "At most 500 characters." } });
      expect(await replies(enquiryId)).toHaveLength(0);
      good(await approval(500));
    });
    it("of a trainee keeps the trainee's reason for the second person", async () => {
      const { enquiryId } = await submitted();
      const [pia, ivo] = [await staff("trainee", "Pia Wetherby"), await staff("reviewer", "Ivo Castellane")];
      const { number } = good(await saveDraft(pia, { enquiryId, from: 1, ...of(400) }, later(1)));
      good(await approveReply(pia, { enquiryId, number, reason: "Enough was tested on Monday.", longReason: WHY }, later(2)));
      good(await secondReply(ivo, { enquiryId }, later(3)));
      expect(await said(enquiryId)).toContain(`400 words long: “${WHY}”`);
    });
  });

  describe("a trainee's approval", () => {
    it("writes no letter; a second person who is not the trainee sends exactly what was approved", async () => {
      const { enquiryId } = await submitted();
      const [pia, ivo] = [await staff("trainee", "Pia Wetherby"), await staff("reviewer", "Ivo Castellane")];
      const { number } = good(await saveDraft(pia, { enquiryId, from: 1, ...LETTER }, later(1)));
      expect(good(await approveReply(pia, { enquiryId, number }, later(2)))).toEqual({ letterId: "", waitsForSecond: true, isHeldLonger: false });
      expect(await replies(enquiryId)).toHaveLength(0);
      expect(good(await readEnquiry(ivo, enquiryId, later(2)))).toMatchObject({
        state: "new",
        waitsForSecond: { by: "Pia Wetherby" },
        may: { second: true },
      });
      expect(good(await readEnquiry(pia, enquiryId, later(2))).may).toMatchObject({ second: false, approve: false, moveTo: [] });
      expect(good(await readQueue(ivo, later(2))).waiting.find((s) => s.enquiryId === enquiryId)?.standing).toBe("waiting for a second person");
      expect(await secondReply(pia, { enquiryId }, later(3))).toMatchObject({ ok: false, code: "not-allowed" });
      const all = await Promise.all(Array.from({ length: 10 }, () => secondReply(ivo, { enquiryId }, later(3))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(await replies(enquiryId)).toMatchObject([{ approvedById: pia.staffId, secondedById: ivo.staffId, subject: LETTER.subject }]);
      expect(await actions(enquiryId)).toEqual(["submitted", "draft-saved", "reply-waits", "reply-seconded"]);
    });
    it("counts once, and an edit by anybody ends it", async () => {
      const { enquiryId } = await submitted();
      const [pia, ivo] = [await staff("trainee", "Pia Wetherby"), await staff("reviewer", "Ivo Castellane")];
      good(await approveReply(pia, { enquiryId, number: 1 }, later(1)));
      expect(await approveReply(pia, { enquiryId, number: 1 }, later(2))).toMatchObject({
        ok: false,
        say: expect.stringContaining("waits for a second person") as string,
      });
      good(await saveDraft(ivo, { enquiryId, from: 1, ...LETTER }, later(3)));
      expect(await secondReply(ivo, { enquiryId }, later(4))).toMatchObject({ ok: false });
      expect(await replies(enquiryId)).toHaveLength(0);
    });
    it("cannot be seconded by the same person, even after they were promoted", async () => {
      const { enquiryId } = await submitted();
      const pia = await staff("trainee", "Pia Wetherby");
      good(await approveReply(pia, { enquiryId, number: 1 }, later(1)));
      expect(await secondReply({ ...pia, role: "reviewer" }, { enquiryId }, later(2))).toMatchObject({ ok: false, code: "not-allowed" });
    });
    it("of a question waits too", async () => {
      const { enquiryId } = await submitted();
      const [pia, ivo] = [await staff("trainee", "Pia Wetherby"), await staff("reviewer", "Ivo Castellane")];
      expect(good(await askClient(pia, { enquiryId, ...LETTER }, later(1))).waitsForSecond).toBe(true);
      expect(await replies(enquiryId)).toHaveLength(0);
      good(await secondReply(ivo, { enquiryId }, later(2)));
      expect(await replies(enquiryId)).toMatchObject([{ kind: "question", subject: LETTER.subject }]);
    });
  });

  describe("askClient", () => {
    it("sends a question, and the client's answer brings the enquiry back with a new draft", async () => {
      const enquiry = await submitted();
      const { enquiryId } = enquiry;
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { letterId } = good(await askClient(ivo, { enquiryId, ...LETTER }, later(1)));
      expect(await replies(enquiryId)).toMatchObject([{ kind: "question", state: "held" }]);
      const me = await clientOf(enquiry);
      expect(good(await readClientPage(me, later(5)))).toMatchObject({ letters: [], standing: expect.stringContaining("It is with us") as string });
      expect(good(await readClientPage(me, later(6)))).toMatchObject({
        letters: [{ subject: LETTER.subject, by: "Ivo Castellane" }],
        standing: expect.stringContaining("asked you something") as string,
      });
      await leaves(letterId, later(6));
      good(await sendFromClient(me, { message: "The label says Viskose." }, later(10)));
      const view = good(await readEnquiry(ivo, enquiryId, later(11)));
      expect(view).toMatchObject({ state: "our_turn", draft: { number: 3, by: "the program" }, may: { edit: true, approve: true } });
      expect(view.rugs[0]).toMatchObject({ answers: { story: "It went over the edge of the tray." }, messages: [{ at: later(10).toISOString(), text: "The label says Viskose.", other: null }] });
      await answerOnce(enquiryId, later(12));
      expect((await replies(enquiryId)).map((l) => l.kind)).toEqual(["question", "reply"]);
    });
    it("brings it back by a photo too, and a new draft begins once", async () => {
      const enquiry = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      await leaves(good(await askClient(ivo, { enquiryId: enquiry.enquiryId, ...LETTER }, later(1))).letterId, later(6));
      const me = await clientOf(enquiry);
      for (let n = 0; n < 3; n++) good(await givePhoto(me, "label", later(10 + n)));
      const view = good(await readEnquiry(ivo, enquiry.enquiryId, later(15)));
      // Begun with the first photo, written anew once where one photo became more, and not again for the third.
      expect(view).toMatchObject({ state: "our_turn", draft: { number: 4, by: "the program" } });
      expect(view.rugs[0]?.photos).toHaveLength(3);
    });
  });
}
