import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { addPhoto } from "../../../lib/enquiry/add-photo";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { sendFromClient } from "../../../lib/enquiry/answer-client";
import type { Caller } from "../../../lib/enquiry/caller";
import { moveEnquiry } from "../../../lib/enquiry/move-enquiry";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readReagents } from "../../../lib/enquiry/read-reagents";
import { recordBenchTest } from "../../../lib/enquiry/record-bench-test";
import { recordLaboratoryReport } from "../../../lib/enquiry/record-laboratory-report";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { switchReagent } from "../../../lib/enquiry/switch-reagent";
import { withdrawBenchTest } from "../../../lib/enquiry/withdraw-bench-test";
import { database } from "../../../lib/store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../../../lib/store/row-order";
import type { FibreId } from "../../../lib/trade/fibres";
import type { Assessment } from "../../../lib/triage/assessment";
import { readSettings } from "../../../lib/workshop/settings";
import { clientOf, CURIOUS, givePhoto, good, intake, later, leaves, NOW, PHOTO, photoBody, staff, submitted } from "./workshop";

const LETTER = { subject: "Your rug", text: "Please leave it flat and let it dry." };
/** Burning paper, no bead: what published tables give for cotton and viscose, and for neither silk nor wool. */
const LIKE_PAPER = { approach: "scorches", flame: "quick", smell: "paper" };
const burnt = (rugId: string, readings: Record<string, unknown> = LIKE_PAPER, id = randomUUID()) => ({ id, rugId, test: "burn", sample: "pile:field", readings });
const report = (rugId: string, percents: Record<string, number>) =>
  ({ id: randomUUID(), rugId, sample: "pile:whole" as const, laboratory: "Fenwick Fibre Laboratory", reportedOn: "2026-11-20", reference: "F-112", percents });

const chanceOf = (a: Assessment | null | undefined, ...fibres: FibreId[]) =>
  (a?.fibres ?? []).filter((f) => fibres.includes(f.fibre)).reduce((sum, f) => sum + f.probability, 0);
const rowsOf = (rugId: string) => database().benchTest.count({ where: { rugId } });
const audits = async (enquiryId: string) => (await database().audit.findMany({ where: { enquiryId }, orderBy: OLDEST_FIRST.at })).map((a) => a.action);

/** A curious owner's rug, and the page of it as `caller` sees it. */
async function aRug(caller: Caller) {
  const enquiry = await submitted(CURIOUS);
  const view = async (minutes = 59) => good(await readEnquiry(caller, enquiry.enquiryId, later(minutes)));
  const rugId = (await view()).rugs[0]?.id ?? "";
  return { enquiry, enquiryId: enquiry.enquiryId, rugId, view };
}
const nell = () => staff("owner", "Nell Harrow");
async function switchFlame(to: "on" | "off") {
  good(await switchReagent(await nell(), { reagent: "flame", to, isAssessed: true }, NOW));
}

/** Reagents, bench tests, laboratory reports, and what is judged anew by them. */
export function onTheBench(): void {
  describe("switchReagent", () => {
    it("takes an assessment to switch on, none to switch off, and keeps who and when", async () => {
      const owner = await nell();
      expect(good(await readReagents(owner)).every((r) => r.on === null)).toBe(true);
      expect(await switchReagent(owner, { reagent: "flame", to: "on", isAssessed: false }, NOW)).toMatchObject({ ok: false, code: "invalid" });
      good(await switchReagent(owner, { reagent: "flame", to: "on", isAssessed: true }, later(1)));
      expect(good(await readReagents(owner)).find((r) => r.id === "flame")?.on).toEqual({ by: "Nell Harrow", at: later(1).toISOString() });
      good(await switchReagent(owner, { reagent: "flame", to: "off", isAssessed: false }, later(2)));
      expect(good(await readReagents(owner)).find((r) => r.id === "flame")?.on).toBeNull();
      const kept = await database().audit.findMany({ where: { action: { in: ["reagent-on", "reagent-off"] } }, orderBy: OLDEST_FIRST.at });
      expect(kept.map((a) => [a.action, a.actorId, a.detail])).toEqual([
        ["reagent-on", owner.staffId, { reagent: "flame" }],
        ["reagent-off", owner.staffId, { reagent: "flame" }],
      ]);
    });
    it("is the owner's alone, and knows no reagent that is not in the table", async () => {
      for (const caller of [await staff("reviewer", "Ivo Castellane"), await staff("trainee", "Pia Wetherby")]) {
        expect(await switchReagent(caller, { reagent: "flame", to: "on", isAssessed: true }, NOW)).toMatchObject({ ok: false, code: "not-allowed" });
        expect(await readReagents(caller)).toMatchObject({ ok: false, code: "not-allowed" });
      }
      expect(await switchReagent({ kind: "public", addressHash: null }, { reagent: "flame", to: "on", isAssessed: true }, NOW)).toMatchObject({ code: "not-signed-in" });
      expect(await switchReagent(await nell(), { reagent: "turpentine", to: "on", isAssessed: true }, NOW)).toMatchObject({ ok: false, code: "not-found" });
    });
    it("cannot be gone round by saving the other settings", async () => {
      const at = NOW.toISOString();
      const saved = good(await saveSettings(await nell(), { ...(await readSettings()), reagents: { flame: { byId: "x", at } } }));
      expect(saved.settings.reagents).toEqual({});
      expect((await readSettings()).reagents).toEqual({});
    });
  });

  describe("recordBenchTest", () => {
    it("refuses a test whose reagent is off, and leaves nothing", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { rugId } = await aRug(ivo);
      expect(await recordBenchTest(ivo, burnt(rugId), later(1))).toMatchObject({ ok: false, code: "not-allowed" });
      expect(await rowsOf(rugId)).toBe(0);
    });
    it("refuses a reading whose reagent is off, and takes the rest of the test", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { rugId } = await aRug(ivo);
      const dye = (readings: object) => ({ id: randomUUID(), rugId, test: "dye-bleed", sample: "pile:whole", readings: { colour: "red", ...readings } });
      expect(await recordBenchTest(ivo, dye({ acid: "strong" }), later(1))).toMatchObject({ ok: false, code: "not-allowed" });
      good(await recordBenchTest(ivo, dye({ water: "slight" }), later(2)));
      expect(await rowsOf(rugId)).toBe(1);
    });
    it("keeps the readings, judges the rug anew, audits it and drafts a new reply, in one step", async () => {
      const pia = await staff("trainee", "Pia Wetherby");
      await switchFlame("on");
      const { enquiryId, rugId, view } = await aRug(pia);
      const before = (await view()).rugs[0]?.assessment;
      expect(good(await recordBenchTest(pia, burnt(rugId), later(5)))).toEqual({ enquiryId });
      const after = await view();
      const [rug] = after.rugs;
      expect(rug?.tests).toMatchObject([{ name: "Burn test", of: "the pile, its field", by: "Pia Wetherby", at: later(5).toISOString(), withdrawn: null }]);
      expect(rug?.tests[0]?.readings.map((r) => r.says)).toContain("Burning paper, leaves or wood");
      expect(rug?.assessment?.findings.find((f) => f.what === "test:burn")).toMatchObject({ strength: "bench", value: LIKE_PAPER });
      expect(chanceOf(rug?.assessment, "silk", "wool", "wool-silk")).toBeLessThan(chanceOf(before, "silk", "wool", "wool-silk"));
      expect(after.draft).toMatchObject({ number: 2, by: "the program" });
      const revision = await database().revision.findFirstOrThrow({ where: { draft: { enquiryId }, number: 2 } });
      expect(revision.assessmentId).toBe((await database().assessment.findFirstOrThrow({ where: { rugId }, orderBy: NEWEST_FIRST.createdAt })).id);
      expect(await audits(enquiryId)).toEqual(["submitted", "test-recorded"]);
      expect(after.history.at(-1)).toMatchObject({ who: "Pia Wetherby", what: "recorded a bench test: Burn test" });
    });
    it("leaves words that somebody wrote, and a trainee's letter that waits, as they are", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const edited = await aRug(ivo);
      good(await saveDraft(ivo, { enquiryId: edited.enquiryId, from: 1, ...LETTER }, later(1)));
      good(await recordBenchTest(ivo, burnt(edited.rugId), later(2)));
      expect((await edited.view()).draft).toMatchObject({ number: 2, text: LETTER.text, by: "Ivo Castellane" });
      const waiting = await aRug(ivo);
      good(await approveReply(await staff("trainee", "Pia Wetherby"), { enquiryId: waiting.enquiryId, number: 1 }, later(1)));
      good(await recordBenchTest(ivo, burnt(waiting.rugId), later(2)));
      expect(await waiting.view()).toMatchObject({ draft: { number: 1 }, waitsForSecond: { by: "Pia Wetherby" } });
    });
    it("lets an enquiry that has been answered rest, until it is our turn again", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { enquiryId, rugId, view } = await aRug(ivo);
      await leaves(good(await approveReply(ivo, { enquiryId, number: 1 }, later(1))).letterId, later(1));
      good(await recordBenchTest(ivo, burnt(rugId), later(2)));
      expect(await view()).toMatchObject({ state: "their_turn", draft: null });
      good(await moveEnquiry(ivo, { enquiryId, from: "their_turn", to: "our_turn" }, later(3)));
      expect(await view()).toMatchObject({ state: "our_turn", draft: { number: 2, by: "the program" } });
    });
    it("records the same form once, however often it is sent", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { enquiryId, rugId } = await aRug(ivo);
      const form = burnt(rugId);
      const all = await Promise.all(Array.from({ length: 5 }, () => recordBenchTest(ivo, form, later(2))));
      expect(all.map(good)).toEqual(Array.from({ length: 5 }, () => ({ enquiryId })));
      expect(await rowsOf(rugId)).toBe(1);
      const other = await aRug(ivo);
      expect(await recordBenchTest(ivo, { ...form, rugId: other.rugId }, later(3))).toMatchObject({ ok: false, code: "not-found" });
    });
    it("counts every test of several recorded at once", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { rugId, view } = await aRug(ivo);
      const tests = ["pile:field", "pile:accent", "fringe:whole", "ground:whole"].map((sample) => ({ ...burnt(rugId), sample }));
      for (const r of await Promise.all(tests.map((t, n) => recordBenchTest(ivo, t, later(2 + n))))) good(r);
      const newest = await database().assessment.findMany({ where: { rugId } });
      const most = Math.max(...newest.map((a) => (a.findings as { what: string }[]).filter((f) => f.what === "test:burn").length));
      expect(most).toBe(4);
      expect((await view()).rugs[0]?.tests).toHaveLength(4);
    });
    it("says what is wrong with the readings, and leaves nothing", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { rugId } = await aRug(ivo);
      for (const [change, field] of [
        [{ readings: {} }, "readings"], [{ readings: { smell: "roses" } }, "readings.smell"], [{ readings: { ...LIKE_PAPER, colour: "red" } }, "readings"],
        [{ sample: "pile" }, "sample"], [{ sample: "ground:accent" }, "sample"],
        [{ test: "spot-ph", readings: { place: "affected", ph: 15 } }, "readings.ph"], [{ test: "spot-ph", readings: { ph: 7 } }, "readings.place"],
        [{ test: "moisture", readings: { place: "affected", percent: Number.NaN } }, "readings.percent"],
      ] as const) {
        const given = { ...burnt(rugId), ...change };
        expect(await recordBenchTest(ivo, given, later(1)), JSON.stringify(change)).toMatchObject({ ok: false, code: "invalid", fields: { [field]: expect.any(String) as string } });
      }
      expect(await recordBenchTest(ivo, { ...burnt(rugId), test: "tasting" }, later(1))).toMatchObject({ ok: false, code: "not-found" });
      expect(await recordBenchTest(ivo, burnt("no-such-rug"), later(1))).toMatchObject({ ok: false, code: "not-found" });
      expect(await recordBenchTest(ivo, { ...burnt(rugId), id: "mine" }, later(1))).toMatchObject({ ok: false, code: "not-found" });
      expect(await rowsOf(rugId)).toBe(0);
    });
    it("is for everybody who works here, and for nobody else", async () => {
      const { enquiry, rugId, enquiryId } = await aRug(await nell());
      for (const caller of [await clientOf(enquiry), await intake(), { kind: "public", addressHash: null }, { kind: "system", what: "tests" }] as Caller[]) {
        expect(await recordBenchTest(caller, burnt(rugId), later(1))).toMatchObject({ ok: false, code: "not-signed-in" });
        expect(await recordLaboratoryReport(caller, report(rugId, { silk: 100 }), later(1))).toMatchObject({ ok: false, code: "not-signed-in" });
        expect(await withdrawBenchTest(caller, { id: randomUUID(), reason: "No." }, later(1))).toMatchObject({ ok: false, code: "not-signed-in" });
      }
      for (const role of ["owner", "reviewer", "trainee"] as const) good(await recordBenchTest(await staff(role, `${role} X`), burnt(rugId), later(2)));
      expect((await audits(enquiryId)).filter((a) => a === "test-recorded")).toHaveLength(3);
    });
  });

  describe("withdrawBenchTest", () => {
    it("keeps the test with its reason, and judges as if it had never been", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { enquiryId, rugId, view } = await aRug(ivo);
      const before = (await view()).rugs[0]?.assessment;
      const form = burnt(rugId);
      good(await recordBenchTest(ivo, form, later(1)));
      expect(await withdrawBenchTest(ivo, { id: form.id, reason: "  " }, later(2))).toMatchObject({ ok: false, code: "invalid", fields: { reason: expect.any(String) as string } });
      const all = await Promise.all(Array.from({ length: 5 }, () => withdrawBenchTest(ivo, { id: form.id, reason: "The yarn was of another rug." }, later(3))));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      for (const r of all.filter((x) => !x.ok)) expect(r).toMatchObject({ code: "changed-meanwhile" });
      const [rug] = (await view()).rugs;
      expect(rug?.assessment?.fibres).toEqual(before?.fibres);
      expect(rug?.tests).toMatchObject([{ says: [], withdrawn: { by: "Ivo Castellane", at: later(3).toISOString(), why: "The yarn was of another rug." } }]);
      expect(await audits(enquiryId)).toEqual(["submitted", "test-recorded", "test-withdrawn"]);
      expect(await withdrawBenchTest(ivo, { id: randomUUID(), reason: "Not there." }, later(4))).toMatchObject({ ok: false, code: "not-found" });
    });
  });

  describe("recordLaboratoryReport", () => {
    it("keeps the report and counts it above words", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { rugId, view } = await aRug(ivo);
      good(await recordLaboratoryReport(ivo, report(rugId, { viscose: 99.2, cotton: 0.8 }), later(1)));
      const { rugs, history } = await view();
      expect(chanceOf(rugs[0]?.assessment, "viscose")).toBeGreaterThan(0.9);
      expect(rugs[0]?.assessment?.findings[0]).toMatchObject({ what: "laboratory", strength: "laboratory", from: "laboratory:Fenwick Fibre Laboratory" });
      expect(rugs[0]?.tests).toMatchObject([{ name: "laboratory report", of: "the pile as a whole" }]);
      expect(rugs[0]?.tests[0]?.readings.map((r) => r.says)).toContain("99.2\u00a0% viscose, 0.8\u00a0% cotton");
      expect(rugs[0]?.tests[0]?.says.length).toBeGreaterThan(0);
      expect(history.at(-1)?.what).toBe("entered a laboratory report");
    });
    it.each([[98.9, false], [99, true], [101, true], [101.1, false]])("takes per cents that add up to %d: %s", async (sum, isTaken) => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { rugId } = await aRug(ivo);
      const result = await recordLaboratoryReport(ivo, report(rugId, { wool: 60, viscose: Number((sum - 60).toFixed(1)) }), later(1));
      expect(result.ok).toBe(isTaken);
      expect(await rowsOf(rugId)).toBe(isTaken ? 1 : 0);
    });
    it("refuses what no report can say", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { rugId } = await aRug(ivo);
      const silk = report(rugId, { silk: 100 });
      for (const change of [
        { percents: {} }, { percents: { silk: 120, wool: -20 } }, { percents: { gold: 100 } }, { percents: { silk: Number.NaN } },
        { laboratory: " " }, { reportedOn: "yesterday" }, { reportedOn: "2999-01-01" }, { sample: "sofa" },
      ])
        expect(await recordLaboratoryReport(ivo, { ...silk, ...change } as never, later(1)), JSON.stringify(change)).toMatchObject({ ok: false, code: "invalid" });
      expect(await rowsOf(rugId)).toBe(0);
    });
  });

  describe("what a client adds", () => {
    it("has the rug judged anew with a photo, in the step that takes it in, and asks for it no more", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { enquiry, rugId, view } = await aRug(ivo);
      const asked = (await view()).rugs[0]?.assessment?.nextQuestions.map((q) => q.id);
      expect(asked).toContain("label");
      good(await givePhoto(await clientOf(enquiry), "label", later(1)));
      const { rugs } = await view();
      expect(rugs[0]?.assessment?.nextQuestions.map((q) => q.id)).not.toContain("label");
      expect(await database().assessment.count({ where: { rugId } })).toBe(2);
    });
    it("has a new draft begun where the program wrote the last, and where it became a letter", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { enquiry, enquiryId, view } = await aRug(ivo);
      const me = await clientOf(enquiry);
      await leaves(good(await approveReply(ivo, { enquiryId, number: 1 }, later(1))).letterId, later(1));
      good(await sendFromClient(me, { message: "It is the rug of my aunt." }, later(2)));
      const one = await view();
      expect(one).toMatchObject({ state: "our_turn", draft: { number: 2, by: "the program" } });
      good(await sendFromClient(me, { message: "And it came from a market." }, later(3)));
      expect((await view()).draft?.text, "a message alone says nothing new of the rug").toBe(one.draft?.text.replace("your message.", "your messages."));
    });
    it("is judged with a photo that somebody here adds as well, and it stays their turn", async () => {
      const ivo = await staff("reviewer", "Ivo Castellane");
      const { enquiryId, rugId, view } = await aRug(ivo);
      await leaves(good(await approveReply(ivo, { enquiryId, number: 1 }, later(1))).letterId, later(1));
      good(await addPhoto(ivo, { kind: "back", rugId }, await photoBody(), PHOTO, later(2)));
      expect(await view()).toMatchObject({ state: "their_turn" });
      expect(await database().assessment.count({ where: { rugId } })).toBe(2);
    });
  });
}
