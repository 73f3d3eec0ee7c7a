import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { assessRug } from "../../../lib/enquiry/assess-rug";
import { correctAnswer } from "../../../lib/enquiry/correct-answer";
import { enterEnquiry } from "../../../lib/enquiry/enter-enquiry";
import { letterFile } from "../../../lib/enquiry/letter-file";
import { nextLetter } from "../../../lib/enquiry/next-letter";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { readClientPage } from "../../../lib/enquiry/read-client-page";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readEverything } from "../../../lib/enquiry/read-everything";
import { readQueue } from "../../../lib/enquiry/read-queue";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { submitEnquiry } from "../../../lib/enquiry/submit-enquiry";
import { takeBackLetter } from "../../../lib/enquiry/take-back";
import { ANSWER_HERE } from "../../../lib/reply/open-places";
import { database } from "../../../lib/store/database";
import { OLDEST_FIRST } from "../../../lib/store/row-order";
import { readSettings } from "../../../lib/workshop/settings";
import { ANA, answerOnce, clientOf, CURIOUS, good, intake, later, leaves, NOW, staff, submitted, SYSTEM, WET_VISCOSE } from "./workshop";

const replies = (enquiryId: string) => database().letter.findMany({ where: { enquiryId, automatic: false }, orderBy: OLDEST_FIRST.createdAt });

/** What staff and clients read, and what staff do beside the reply. */
export function atTheDesk(): void {
  describe("readClientPage", () => {
    it("draws the life left once a reply is out, where the letter does not say that it cannot be told", async () => {
      const urine = await submitted({ wetNow: "no", reason: "older-trouble", rug: { labelFound: "typed", labelText: "Pile: 100% viscose. Backing: cotton.", sellerSaid: "art-silk", boughtYear: 2023, touch: "cool-slippery", incidents: ["pet-urine"], changes: ["browner"] } });
      const ivo = await staff("reviewer", "Ivo Castellane");
      good(await approveReply(ivo, { enquiryId: urine.enquiryId, number: 1 }, later(2)));
      const page = good(await readClientPage(await clientOf(urine), later(7)));
      expect(page.letters[0]?.text).not.toMatch(/no number of years|cannot tell/);
      expect(page.rugs[0]?.lifeYears).toEqual(good(await readEnquiry(ivo, urine.enquiryId, later(7))).rugs[0]?.assessment?.lifeYears);
    });
    it("draws no life left that no letter has told, and draws it once one has", async () => {
      const spilt = await submitted({ wetNow: "damp", reason: "just-happened", rug: { labelFound: "typed", labelText: "100% VISCOSE", widthCm: 250, lengthCm: 350, price: 3000, currency: "GBP", boughtYear: 2023, incidents: ["water"], liquid: "water", since: "day", treatments: ["plain-water", "steam-heat"], treatedBy: "owner", changes: ["wavy", "ring", "browner"], matters: ["claim"] } });
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { letterId } = good(await approveReply(ivo, { enquiryId: spilt.enquiryId, number: 1 }, later(2)));
      await leaves(letterId, later(7));
      const me = await clientOf(spilt);
      const page = good(await readClientPage(me, later(8)));
      expect(page.letters[0]?.text).toMatch(/for your claim/);
      expect(page.letters[0]?.text).not.toMatch(/to serve|£/);
      expect(page.rugs[0]?.lifeYears).toBeNull();
      good(await sendFromClient(me, { message: "It is dry now." }, later(10)));
      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId: spilt.enquiryId } });
      good(await correctAnswer(ivo, { rugId: rug.id, step: "wet-now", values: { answer: "no" }, seen: false }, later(12)));
      const { draft } = good(await readEnquiry(ivo, spilt.enquiryId, later(13)));
      expect(draft?.text).toMatch(/You write that it is dry\./);
      expect(draft?.text).not.toMatch(/still wet|what cleaning costs/);
      expect(draft?.text).toMatch(/we would expect it to serve/);
      const { number } = good(await saveDraft(ivo, { enquiryId: spilt.enquiryId, from: draft?.number ?? 0, subject: draft?.subject ?? "", text: draft?.text.replace(ANSWER_HERE, "Thank you for telling us.") ?? "" }, later(14)));
      await leaves(good(await approveReply(ivo, { enquiryId: spilt.enquiryId, number }, later(15))).letterId, later(20));
      expect(good(await readClientPage(me, later(21))).rugs[0]?.lifeYears).toEqual(good(await readEnquiry(ivo, spilt.enquiryId, later(21))).rugs[0]?.assessment?.lifeYears);
    });
    it("says beside the life left what has to hold first, as the letter does", async () => {
      const moths = await submitted({ wetNow: "no", reason: "older-trouble", rug: { labelFound: "typed", labelText: "Pile: 100% wool", sellerSaid: "wool", boughtYear: 2006, touch: "springy", incidents: ["insects"], changes: ["bare"], age: "10-25", room: "busy" } });
      good(await approveReply(await staff("reviewer", "Ivo Castellane"), { enquiryId: moths.enquiryId, number: 1 }, later(2)));
      const page = good(await readClientPage(await clientOf(moths), later(7)));
      expect(page.letters[0]?.text).toMatch(/Only once no insects live in it would we expect it to serve/);
      expect(page.rugs[0]).toMatchObject({ lifeYears: { low: expect.any(Number) as number }, lifeOnce: "insects" });
    });
    it("carries no judgement before a reply was approved and its hold is over", async () => {
      const enquiry = await submitted(CURIOUS);
      const ivo = await staff("reviewer", "Ivo Castellane");
      const me = await clientOf(enquiry);
      const before = good(await readClientPage(me, later(1)));
      expect(before.rugs[0]?.lifeYears).toBeNull();
      expect(JSON.stringify(before)).not.toMatch(/viscose|probab|likely|draft|score|staff/i);
      good(await approveReply(ivo, { enquiryId: enquiry.enquiryId, number: 1 }, later(2)));
      expect(good(await readClientPage(me, later(6)))).toMatchObject({ letters: [] });
      const after = good(await readClientPage(me, later(7)));
      expect(after.letters).toHaveLength(1);
      expect(after.letters[0]?.text).toMatch(/no number of years|cannot tell/);
      expect(after.rugs[0]?.lifeYears).toBeNull();
      expect(Object.keys(after).sort()).toEqual([
        "answers",
        "beside",
        "canAddPhotos",
        "clientName",
        "copy",
        "firstAid",
        "isMouldFeared",
        "letters",
        "mayErase",
        "photosLeft",
        "reference",
        "rugs",
        "standing",
        "submittedAt",
        "unopened",
        "workshop",
        "written",
      ]);
    });
    it("gives back what the client wrote and answered, with the times they wrote it, and nothing that staff took down or corrected", async () => {
      const enquiry = await submitted({ ...CURIOUS, rug: { ...CURIOUS.rug, story: "It was my aunt’s." } });
      const { enquiryId } = enquiry;
      const me = await clientOf(enquiry);
      good(await sendFromClient(me, { message: "She bought it in 1974." }, later(3)));
      const row = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      const from = (await staff("reviewer", "Ivo Castellane")).staffId;
      await database().answer.createMany({ data: [
        { id: randomUUID(), rugId: row.id, question: "shine", value: "satin", from, at: later(4) }, { id: randomUUID(), rugId: row.id, question: "message", value: "Rang; sounded upset", from, at: later(4) },
      ] });
      const page = good(await readClientPage(me, later(5)));
      expect(page.written).toEqual([{ at: NOW.toISOString(), text: "It was my aunt’s." }, { at: later(3).toISOString(), text: "She bought it in 1974." }]);
      expect(page.answers).toMatchObject({ wetNow: "no", reason: "what-is-it" });
      expect(page.rugs[0]?.answers).toMatchObject({ shine: "two-tone", incidents: ["nothing"] });
    });
    it("gives no answers back of an enquiry that staff took down on the telephone", async () => {
      const { enquiryId } = good(await enterEnquiry(await staff("reviewer", "Ivo Castellane"), { channel: "telephone", client: { name: "Odd", telephone: "01632 960 112" }, wetNow: "no", rugs: [{ story: "Keeps saying it is silk.", shine: "satin" }] }, NOW));
      const page = good(await readClientPage({ kind: "client", enquiryId, linkId: "l" }, later(1)));
      expect([page.written, page.answers, page.rugs.map((r) => r.answers)]).toEqual([[], {}, [{}]]);
    });
    it("shows first aid while something is wet, and keeps it within reach once a person has replied", async () => {
      const enquiry = await submitted(WET_VISCOSE);
      const me = await clientOf(enquiry);
      expect(good(await readClientPage(me, NOW)).firstAid).toEqual({ isNow: true, handsOff: false, isGas: false });
      good(await approveReply(await staff("owner", "Nell Harrow"), { enquiryId: enquiry.enquiryId, number: 1 }, later(1)));
      expect(good(await readClientPage(me, later(6)))).toMatchObject({ letters: [{ subject: expect.any(String) as string }], firstAid: { isNow: false, handsOff: false } });
    });
    it("lays no cloth on what waste water has soaked, neither before nor after our reply", async () => {
      const enquiry = await submitted({ ...WET_VISCOSE, rug: { ...WET_VISCOSE.rug, incidents: ["flood"] } });
      const me = await clientOf(enquiry);
      expect(good(await readClientPage(me, NOW)).firstAid).toEqual({ isNow: true, handsOff: true, isGas: false });
      good(await approveReply(await staff("owner", "Nell Harrow"), { enquiryId: enquiry.enquiryId, number: 1 }, later(1)));
      expect(good(await readClientPage(me, later(6))).firstAid).toEqual({ isNow: false, handsOff: true, isGas: false });
    });
    it("warns at once, and on their own page, whoever put bleach and vinegar on a wet rug of the gas", async () => {
      const enquiry = await submitted({ ...WET_VISCOSE, rug: { ...WET_VISCOSE.rug, treatments: ["bleach", "vinegar-soda"] } });
      expect(good(await readClientPage(await clientOf(enquiry), NOW)).firstAid).toEqual({ isNow: true, handsOff: false, isGas: true });
      const told = await database().letter.findFirst({ where: { enquiryId: enquiry.enquiryId, automatic: true } });
      expect(told?.text).toMatch(/please do this first[^\n]*\n– Leave the room, put nothing more on the rug and do not lean over it[^\n]*harmful gas/);
      expect(told?.text).not.toMatch(/white cloth|open a window/);
    });
    it("warns of mould that may be in a dry rug, and lays no cloth on it, until a letter of ours does", async () => {
      const about = (rug: Partial<typeof CURIOUS.rug>) => submitted({ ...CURIOUS, reason: "older-trouble", rug: { ...CURIOUS.rug, incidents: ["wear"], ...rug } });
      const spotted = await about({ changes: ["spots"] });
      const me = await clientOf(spotted);
      expect(good(await readClientPage(me, NOW))).toMatchObject({ isMouldFeared: true, firstAid: { isNow: false, handsOff: true } });
      good(await approveReply(await staff("owner", "Nell Harrow"), { enquiryId: spotted.enquiryId, number: 1 }, later(1)));
      expect(good(await readClientPage(me, later(6)))).toMatchObject({ isMouldFeared: false, firstAid: { handsOff: true } });
      expect(good(await readClientPage(await clientOf(await about({ changes: ["smell"] })), NOW))).toMatchObject({ isMouldFeared: false, firstAid: { handsOff: false } });
    });
    it.each(["web", "telephone"] as const)("sends the same warning of mould with the acknowledgement of an enquiry by %s, and none where nothing speaks of mould; without an address nothing is sent", async (channel) => {
      const send = async (changes: "spots" | "smell", email: string | null = "ana@example.org") => {
        const rug = { ...CURIOUS.rug, incidents: ["wear" as const], changes: [changes] };
        if (channel === "web") return submitted({ ...CURIOUS, reason: "older-trouble", rug });
        return good(await enterEnquiry(await staff("reviewer", "Ivo Castellane"), { channel, client: { name: "Ana Example", telephone: "01632 960 112", ...(email ? { email } : {}) }, wetNow: "no", reason: "older-trouble", rugs: [rug] }, NOW));
      };
      const told = async ({ enquiryId }: { enquiryId: string }) => (await database().letter.findMany({ where: { enquiryId, automatic: true } })).map((l) => l.text).join();
      expect(await told(await send("spots"))).toMatch(/there may be mould in the rug\. Mould can harm your health/);
      expect(await told(await send("smell"))).not.toMatch(/mould/i);
      if (channel === "telephone") expect(await told(await send("spots", null))).toBe("");
    });
    it("offers first aid to somebody with a dry rug too, closed", async () => {
      expect(good(await readClientPage(await clientOf(await submitted(CURIOUS)), NOW)).firstAid).toEqual({ isNow: false, handsOff: false, isGas: false });    });
  });

  describe("takeBackLetter", () => {
    it("brings letter, draft and turn back until the hold is over, and not from then on", async () => {
      const enquiry = await submitted();
      const { enquiryId } = enquiry;
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { letterId } = good(await approveReply(ivo, { enquiryId, number: 1 }, NOW));
      expect(await takeBackLetter(ivo, letterId, later(5))).toMatchObject({ ok: false, code: "changed-meanwhile" });
      const all = await Promise.all(Array.from({ length: 5 }, () => takeBackLetter(ivo, letterId, later(4))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(good(await readEnquiry(ivo, enquiryId, later(4)))).toMatchObject({ state: "new", stateSince: NOW.toISOString(), draft: { number: 1 }, may: { approve: true } });
      expect(good(await readClientPage(await clientOf(enquiry), later(30))).letters).toEqual([]);
      good(await approveReply(ivo, { enquiryId, number: 1 }, later(6)));
      expect((await replies(enquiryId)).map((l) => l.state)).toEqual(["taken_back", "held"]);
    });
    it("makes it our turn where the client had heard from us, or somebody had moved it by hand", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const takenBack = async (enquiryId: string) => {
        const { letterId } = await answerOnce(enquiryId, later(20));
        good(await takeBackLetter(ivo, letterId, later(21)));
        return good(await readEnquiry(ivo, enquiryId, later(22)));
      };
      const heard = await submitted(CURIOUS);
      const { letterId } = good(await approveReply(ivo, { enquiryId: heard.enquiryId, number: 1 }, NOW));
      await leaves(letterId, later(5));
      good(await sendFromClient(await clientOf(heard), { message: "One thing more." }, later(10)));
      expect(await takenBack(heard.enquiryId)).toMatchObject({ state: "our_turn", stateSince: later(21).toISOString() });
      const moved = await submitted(CURIOUS);
      good(await moveEnquiry(ivo, { enquiryId: moved.enquiryId, from: "new", to: "waiting_elsewhere" }, later(1)));
      good(await moveEnquiry(ivo, { enquiryId: moved.enquiryId, from: "waiting_elsewhere", to: "our_turn" }, later(2)));
      expect(await takenBack(moved.enquiryId)).toMatchObject({ state: "our_turn" });
    });
    it("never takes back an acknowledgement", async () => {
      const { enquiryId } = await submitted();
      const { id } = await database().letter.findFirstOrThrow({ where: { enquiryId } });
      expect(await takeBackLetter(await staff("owner", "Nell"), id, NOW)).toMatchObject({ ok: false, code: "not-found" });
    });
  });

  describe("moveEnquiry", () => {
    it("moves from the state the person saw, once, and only where the table allows", async () => {
      const { enquiryId } = await submitted();
      const ivo = await staff("reviewer", "Ivo Castellane");
      expect(await moveEnquiry(ivo, { enquiryId, from: "new", to: "finished" }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      const all = await Promise.all(Array.from({ length: 10 }, () => moveEnquiry(ivo, { enquiryId, from: "new", to: "declined" }, later(1))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(good(await readEnquiry(ivo, enquiryId, later(1))).history.at(-1)).toMatchObject({
        who: "Ivo Castellane",
        what: "moved the enquiry from “new” to “declined”",
      });
      expect(await moveEnquiry(await staff("trainee", "Pia"), { enquiryId, from: "declined", to: "our_turn" }, NOW)).toMatchObject({
        ok: false,
        code: "not-allowed",
      });
    });
  });

  describe("readQueue", () => {
    it("puts what loses by waiting first, then who has waited longest, and leaves out what is not our turn", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const old = await submitted(CURIOUS, ANA, later(-600));
      const young = await submitted(CURIOUS, ANA, later(-10));
      const wet = await submitted(WET_VISCOSE, ANA, later(-1));
      const answered = await submitted(WET_VISCOSE, ANA, later(-700));
      good(await approveReply(ivo, { enquiryId: answered.enquiryId, number: 1 }, NOW));
      const { waiting, newSince } = good(await readQueue(ivo, NOW));
      const order = waiting.map((s) => s.enquiryId);
      const at = (e: { enquiryId: string }) => order.indexOf(e.enquiryId);
      expect(at(wet)).toBeLessThan(at(old));
      expect(at(old)).toBeLessThan(at(young));
      expect(at(answered)).toBe(-1);
      expect(newSince.since).toBe("2026-11-24T18:00:00.000Z");
      expect(newSince.count).toBe(waiting.filter((s) => s.submittedAt > newSince.since).length);
      const view = good(await readEnquiry(ivo, wet.enquiryId, NOW));
      expect(view.place).toEqual({ at: at(wet) + 1, of: waiting.length, nextId: order[at(wet) + 1] });
      expect(waiting[at(wet)]).toMatchObject({ urgency: "hours", standing: "new", reference: wet.reference, fibre: { name: "viscose" } });
      const all = good(await readEverything(ivo));
      expect(all.total).toBe(await database().enquiry.count());
      expect(all.slips.length).toBeLessThanOrEqual(50);
    });
    it("counts a letter that waits without a mail server as not sent, never as sent", async () => {
      const { letters } = good(await readQueue(await staff("owner", "Nell"), NOW));
      expect(letters).toMatchObject({
        mailConfigured: false,
        notSent: await database().letter.count({ where: { state: "waiting", toAddress: { not: "" } } }),
      });
      expect(letters.notSent).toBeGreaterThan(0);
      const { id } = await database().letter.findFirstOrThrow({ where: { state: "waiting" } });
      expect(good(await letterFile(await staff("trainee", "Pia"), id)).bytes.toString()).toMatch(/^[\w-]+: /);
      expect(await letterFile({ kind: "public", addressHash: null }, id)).toMatchObject({ ok: false, code: "not-signed-in" });
    });
  });

  describe("enterEnquiry", () => {
    it("has the letter say that a label was read to us where somebody rang, until they typed it themselves", async () => {
      const rang = (channel: "telephone" | "email") => enterEnquiry(SYSTEM, { channel, client: { name: "Odd Farrow", email: "odd@example.org" }, wetNow: "no", rugs: [{ labelText: "100% wool", labelFound: "typed" }] }, NOW);
      const says = async (enquiryId: string) => (await nextLetter(database(), enquiryId))?.composed.text;
      const { enquiryId } = good(await rang("telephone"));
      const draft = await database().revision.findFirstOrThrow({ where: { draft: { enquiryId } } });
      expect(draft.text).toContain("the label as you read it to us (“100% wool”)");
      expect(await says(enquiryId)).toBe(draft.text);
      expect(await says(good(await rang("email")).enquiryId)).toContain("the label as you typed it (“100% wool”)");

      const rug = await database().rug.findFirstOrThrow({ where: { enquiryId } });
      await database().answer.create({ data: { id: randomUUID(), rugId: rug.id, question: "labelText", value: "100% wool", from: "client", at: later(60) } });
      expect(await says(enquiryId)).toContain("the label as you typed it (“100% wool”)");
    });
    it("takes several rugs by telephone, the urgency of the worst, and the third parties", async () => {
      const pia = await staff("trainee", "Pia Wetherby");
      const { enquiryId } = good(
        await enterEnquiry(
          pia,
          {
            channel: "telephone",
            wetNow: "no",
            reason: "trade",
            client: { name: "Cleaner Ltd", telephone: "01632 960 112" },
            parties: [{ kind: "insurer", name: "Example Mutual", reference: "C-17" }],
            rugs: [{ sellerSaid: "wool" }, { incidents: ["pet-urine"], since: "day", liquid: "urine" }],
          },
          NOW,
        ),
      );
      const view = good(await readEnquiry(pia, enquiryId, NOW));
      expect(view.rugs).toHaveLength(2);
      const worst = view.rugs.map((r) => r.assessment?.urgency.level.replace("-", "_"));
      expect(worst).toContain(view.urgency);
      expect(view).toMatchObject({ channel: "telephone", client: { isTrade: true }, parties: [{ kind: "insurer", reference: "C-17" }] });
      expect(view.history).toMatchObject([{ who: "Pia Wetherby", what: "entered the enquiry" }]);
    });
    it("reads no file for a person here, and nothing for the rest of the world", async () => {
      const file = { client: { name: "X", telephone: "01632 960 112" }, rugs: [{ photos: [{ path: "/etc/hostname" }] }] };
      expect(await enterEnquiry(await staff("owner", "Nell"), file, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await enterEnquiry({ kind: "public", addressHash: null }, file, NOW)).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await enterEnquiry(SYSTEM, { ...file, rugs: [{ photos: [{ path: "package.json" }] }] }, NOW)).toMatchObject({
        ok: false,
        code: "unsupported",
      });
    });
  });

  describe("assessRug", () => {
    it("gives the same assessment for the same answers, and keeps both", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { enquiryId } = await submitted();
      const [rug] = good(await readEnquiry(ivo, enquiryId, NOW)).rugs;
      expect(good(await assessRug(ivo, rug?.id ?? "", later(60)))).toEqual(rug?.assessment);
      expect(await database().assessment.count({ where: { rugId: rug?.id ?? "" } })).toBe(2);
      expect(await database().finding.count({ where: { rugId: rug?.id ?? "" } })).toBe(rug?.assessment?.findings.length);
    });
  });

  describe("saveSettings", () => {
    it("is the owner's alone and keeps the shape", async () => {
      const settings = await readSettings();
      for (const role of ["reviewer", "trainee"] as const)
        expect(await saveSettings(await staff(role, "X"), settings)).toMatchObject({ ok: false, code: "not-allowed" });
      const nell = await staff("owner", "Nell");
      expect(await saveSettings(nell, { ...settings, holdMinutes: -1 })).toMatchObject({
        ok: false,
        code: "invalid",
        fields: { holdMinutes: expect.any(String) as string },
      });
      expect(await saveSettings(nell, { ...settings, timeZone: "Mars/Base" })).toMatchObject({ ok: false, code: "invalid" });
      expect(await saveSettings(nell, { ...settings, colour: "red" } as never)).toMatchObject({ ok: false, code: "invalid" });
      expect(await saveSettings(nell, { ...settings, emergencyNumber: "call grandma <script>" })).toMatchObject({ ok: false, code: "invalid", fields: { emergencyNumber: expect.stringContaining("in figures") as string } });
      for (const [collecting, says] of [["Yes", "whole sentence"], ["You’ll have it back good as new.", "“You’ll have it back good as new.”"]] as const)
        expect(await saveSettings(nell, { ...settings, collecting })).toMatchObject({ ok: false, code: "invalid", fields: { collecting: expect.stringContaining(says) as string } });
      expect(await saveSettings(nell, { ...settings, prices: { ...settings.prices, cleanPerM2: 0, bindingPerM: 0 } })).toMatchObject({ ok: false, code: "invalid", fields: { cleanPerM2: expect.stringContaining("more than 0") as string, bindingPerM: expect.stringContaining("more than 0") as string } });
      expect(await readSettings()).toEqual(settings);
      expect(good(await saveSettings(nell, { ...settings, hours: "Monday to Friday, 9 to 17" })).settings.hours).toBe("Monday to Friday, 9 to 17");
      expect((await readSettings()).hours).toBe("Monday to Friday, 9 to 17");
    });
  });

  describe("submitEnquiry and the reply", () => {
    it("survive a second submission after the reply: same reference, state untouched", async () => {
      const caller = await intake();
      const { enquiryId, reference } = good(await submitEnquiry(caller, ANA, NOW));
      good(await approveReply(await staff("owner", "Nell"), { enquiryId, number: 1 }, later(1)));
      expect(good(await submitEnquiry(caller, ANA, later(2)))).toMatchObject({ enquiryId, reference });
      expect((await database().enquiry.findUniqueOrThrow({ where: { id: enquiryId } })).state).toBe("their_turn");
    });
  });
}
