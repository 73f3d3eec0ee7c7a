import { describe, expect, it, onTestFinished } from "vitest";
import { approveReply } from "../../../lib/enquiry/approve-reply";
import { paragraphForm, type ParagraphInput } from "../../../lib/enquiry/paragraph-form";
import { previewParagraph } from "../../../lib/enquiry/preview-paragraph";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readParagraph, readParagraphs } from "../../../lib/enquiry/read-paragraphs";
import { readUsedParagraphs } from "../../../lib/enquiry/read-used-paragraphs";
import { restoreParagraph } from "../../../lib/enquiry/restore-paragraph";
import { saveDraft } from "../../../lib/enquiry/save-draft";
import { saveParagraph } from "../../../lib/enquiry/save-paragraph";
import { saveSettings } from "../../../lib/enquiry/save-settings";
import { database } from "../../../lib/store/database";
import { readSettings } from "../../../lib/workshop/settings";
import { ANA, CURIOUS, good, later, NOW, staff, submitted } from "./workshop";

const input = (change: Partial<ParagraphInput>): ParagraphInput =>
  ({ ...paragraphForm.parse({ place: "signature", text: "Yours,\n{signature}", when: "{}", after: "first" }), ...change });
const owner = () => staff("owner", "Nell Harrow");
const seenOf = async (id: string) => good(await readParagraph(await owner(), id)).seen;
const shipped = async (id: string) => good(await restoreParagraph(await owner(), { id, seen: await seenOf(id) }, NOW));
const draftOf = async (enquiryId: string) => good(await readEnquiry(await owner(), enquiryId, NOW)).draft?.text ?? "";

/** The workshop's own paragraphs: written, tried, used, kept in every version, taken back. */
export function ownParagraphs(): void {
  describe("saveParagraph", () => {
    it("is used by letters from then on; one that was approved keeps what it said and which version said it", async () => {
      const before = await submitted(CURIOUS);
      good(await approveReply(await owner(), { enquiryId: before.enquiryId, number: 1 }, later(1)));
      const { version } = good(await saveParagraph(await owner(), { id: "signature", seen: await seenOf("signature"), input: input({}) }, NOW));
      const after = await submitted(CURIOUS);
      expect((await database().letter.findFirstOrThrow({ where: { enquiryId: before.enquiryId, automatic: false } })).text).toMatch(/With kind regards,\n/);
      expect(good(await readUsedParagraphs(await owner(), before.enquiryId))?.paragraphs.at(-1)).toMatchObject({ id: "signature", from: "shipped" });
      expect(await draftOf(after.enquiryId)).toMatch(/\nYours,\n/);
      const { paragraphs } = await database().revision.findFirstOrThrow({ where: { draft: { enquiryId: after.enquiryId } } });
      expect(paragraphs).toContainEqual({ language: "en", id: "signature", version, from: "workshop", text: "Yours,\n{signature}", place: "signature", rug: null, said: "Yours,\nLantern Yard Rug Workshop", stands: true });
      good(await approveReply(await owner(), { enquiryId: after.enquiryId, number: 1 }, later(1)));
      await shipped("signature");
      const used = good(await readUsedParagraphs(await staff("trainee", "Pia Wetherby"), after.enquiryId));
      expect(used?.paragraphs.at(-1)).toEqual({ language: "en", id: "signature", place: "Signature", version, from: "workshop", text: "Yours,\n{signature}" });
      expect(await readUsedParagraphs({ kind: "public", addressHash: null }, after.enquiryId)).toMatchObject({ ok: false, code: "not-signed-in" });
    });
    it("adds versions and changes none; of people at once one is kept and the others are told", async () => {
      const seen = await seenOf("life");
      const life = (text: string) => input({ place: "life", text, when: { is: { life: ["both"] } } });
      const all = await Promise.all([1, 2, 3, 4].map(async (n) => saveParagraph(await owner(), { id: "life", seen, input: life(`It may have {life}, say we ${n}.`) }, NOW)));
      expect(all.filter((r) => r.ok)).toHaveLength(1);
      expect(all.filter((r) => !r.ok && r.code === "changed-meanwhile")).toHaveLength(3);
      good(await saveParagraph(await owner(), { id: "life", seen: seen + 1, input: life("It may have {life}.") }, later(1)));
      const { versions } = good(await readParagraph(await owner(), "life"));
      expect(versions.slice(0, 2).map((v) => [v.version, v.by, v.text])).toEqual([[seen + 2, "Nell Harrow", "It may have {life}."], [seen + 1, "Nell Harrow", expect.stringContaining("say we")]]);
      expect(await database().audit.count({ where: { action: "paragraph-written", actorId: (await owner()).staffId } })).toBeGreaterThanOrEqual(2);
      await shipped("life");
    });
    it("refuses what is wrong beside its field, and keeps nothing of it", async () => {
      const before = await database().paragraphVersion.count();
      const saved = await saveParagraph(await owner(), { id: "fibre", seen: await seenOf("fibre"), input: input({ place: "fibre", text: "It is {fibr}.", off: true }) }, NOW);
      expect(saved).toMatchObject({ ok: false, code: "invalid", fields: { text: expect.stringContaining("{fibr}"), off: expect.stringContaining("stays") } });
      expect(await database().paragraphVersion.count()).toBe(before);
      expect(await saveParagraph(await owner(), { id: "no-such", seen: 0, input: input({}) }, NOW)).toMatchObject({ ok: false, code: "not-found" });
    });
    it("names everything that is wrong at once, so that nobody mends a paragraph fault by fault", async () => {
      const saved = await saveParagraph(await owner(), { id: null, seen: 0, input: input({ place: "notes", text: "The stain {goes} will come out. Every colour is fast. {" }) }, NOW);
      expect(saved).toMatchObject({ ok: false, code: "invalid", fields: { text: expect.stringMatching(/no \{goes\}.*A brace stands open/u), reason: expect.stringMatching(/come out.*Every colour is fast.*say why/u) } });
    });
    it("takes words that say more than we know only with a reason, and keeps the reason", async () => {
      const promise = input({ place: "notes", text: "The stain will come out." });
      expect(await saveParagraph(await owner(), { id: null, seen: 0, input: promise }, NOW)).toMatchObject({ ok: false, fields: { reason: expect.stringContaining("will come out") } });
      expect(await saveParagraph(await owner(), { id: null, seen: 0, input: { ...promise, reason: "so" } }, NOW)).toMatchObject({ ok: false, fields: { reason: expect.any(String) } });
      const { id } = good(await saveParagraph(await owner(), { id: null, seen: 0, input: { ...promise, reason: "Only for chalk, which does." } }, NOW));
      const { versions } = good(await readParagraph(await owner(), id));
      expect(versions[0]?.reason).toBe("Only for chalk, which does.");
      good(await saveParagraph(await owner(), { id, seen: 1, input: { ...promise, off: true, reason: "Only for chalk, which does." } }, NOW));
    });
    it("is the owner's alone, as are reading, trying and going back", async () => {
      for (const who of [await staff("reviewer", "Ivo Castellane"), await staff("trainee", "Pia Wetherby")]) {
        const refused = { ok: false, code: "not-allowed" };
        expect(await saveParagraph(who, { id: null, seen: 0, input: input({}) }, NOW)).toMatchObject(refused);
        expect(await restoreParagraph(who, { id: "life", seen: 0 }, NOW)).toMatchObject(refused);
        expect(await previewParagraph(who, { id: null, input: input({}) })).toMatchObject(refused);
        expect(await readParagraphs(who)).toMatchObject(refused);
        expect(await readParagraph(who, "life")).toMatchObject(refused);
      }
    });
  });

  describe("restoreParagraph", () => {
    it("goes back to the shipped text as a version of its own, once", async () => {
      const seen = await seenOf("signature");
      good(await saveParagraph(await owner(), { id: "signature", seen, input: input({}) }, NOW));
      expect(await restoreParagraph(await owner(), { id: "signature", seen }, NOW)).toMatchObject({ ok: false, code: "changed-meanwhile" });
      await shipped("signature");
      await shipped("signature");
      const { versions, shippedText, values } = good(await readParagraph(await owner(), "signature"));
      expect([versions[0], versions.length, shippedText, values["text"]]).toEqual([expect.objectContaining({ version: seen + 2, text: null }), seen + 2, null, "With kind regards,\n{signature}"]);
      expect(await database().audit.count({ where: { action: "paragraph-restored" } })).toBeGreaterThan(0);
    });
  });

  describe("drafts that wait", () => {
    const edited = async () => {
      const { enquiryId } = await submitted(CURIOUS);
      const text = `${await draftOf(enquiryId)}\n\nWe close in August.`;
      good(await saveDraft(await owner(), { enquiryId, from: 1, subject: "Your rug", text }, NOW));
      return { enquiryId, text };
    };
    const changesOf = async (enquiryId: string) => good(await readEnquiry(await owner(), enquiryId, NOW)).draft?.today?.changes;
    const REWORDED = { place: "Signature", was: "With kind regards,\nLantern Yard Rug Workshop", now: "Yours,\nLantern Yard Rug Workshop" };

    it("are written anew with the words of today where nobody changed them, also once the words are taken back", async () => {
      const { enquiryId } = await submitted(CURIOUS);
      good(await saveParagraph(await owner(), { id: "signature", seen: await seenOf("signature"), input: input({}) }, NOW));
      expect(await draftOf(enquiryId)).toMatch(/\nYours,\nLantern Yard/);
      await shipped("signature");
      expect(await draftOf(enquiryId)).toMatch(/\nWith kind regards,\nLantern Yard/);
    });
    it("stay where somebody changed them, say what changed, and leave only once it was looked at", async () => {
      const { enquiryId, text } = await edited();
      expect(await changesOf(enquiryId)).toEqual([]);
      good(await saveParagraph(await owner(), { id: "signature", seen: await seenOf("signature"), input: input({}) }, NOW));
      expect(await draftOf(enquiryId)).toBe(text);
      expect(await changesOf(enquiryId)).toEqual([REWORDED]);
      expect(await approveReply(await owner(), { enquiryId, number: 2 }, later(1))).toMatchObject({ ok: false, code: "changed-meanwhile", say: expect.stringContaining("read otherwise at: Signature") as string });
      await shipped("signature");
      expect(await changesOf(enquiryId)).toEqual([]);
    });
    it("follow a paragraph of the workshop's own that is used from now on, stands elsewhere or is switched off", async () => {
      const [{ enquiryId }, mine] = [await submitted(CURIOUS), await edited()];
      const note = input({ place: "notes", text: "We are closed in August.", when: {} });
      const { id } = good(await saveParagraph(await owner(), { id: null, seen: 0, input: note }, NOW));
      expect(await draftOf(enquiryId)).toContain("We are closed in August.");
      expect(await changesOf(mine.enquiryId)).toMatchObject([{ was: null, now: "We are closed in August." }]);
      good(await saveParagraph(await owner(), { id, seen: 1, input: { ...note, when: { is: { reason: ["trade"] } } } }, NOW));
      expect(await draftOf(enquiryId)).not.toContain("August");
      good(await saveParagraph(await owner(), { id, seen: 2, input: { ...note, off: true } }, NOW));
      expect([await draftOf(mine.enquiryId), await changesOf(mine.enquiryId)]).toEqual([mine.text, []]);
    });
    it("follow how letters sound: untouched ones are written anew, changed ones say what changed", async () => {
      const settings = await readSettings();
      onTestFinished(async () => void good(await saveSettings(await owner(), settings)));
      good(await saveParagraph(await owner(), { id: "signature", seen: await seenOf("signature"), input: input({ text: "With kind regards,\n{signature}", warm: "Warmly,\n{signature}" }) }, NOW));
      const [{ enquiryId }, mine] = [await submitted(CURIOUS), await edited()];
      good(await saveSettings(await owner(), { ...settings, tone: "warm" }, later(1)));
      expect(await draftOf(enquiryId)).toMatch(/\nWarmly,\nLantern Yard/);
      expect(await draftOf(mine.enquiryId)).toBe(mine.text);
      expect(await changesOf(mine.enquiryId)).toContainEqual({ ...REWORDED, now: "Warmly,\nLantern Yard Rug Workshop" });
      await shipped("signature");
    });
  });

  describe("previewParagraph", () => {
    it("shows how letters to past enquiries would read, and keeps nothing", async () => {
      const { reference } = await submitted(CURIOUS, ANA, later(60 * 24 * 365));
      const before = await database().paragraphVersion.count();
      const seen = good(await previewParagraph(await owner(), { id: null, input: input({ place: "notes", text: "We are closed in August.", when: { is: { reason: ["what-is-it"] } } }) }));
      const letter = seen.letters.find((l) => l.reference === reference);
      expect(letter).toMatchObject({ says: ["We are closed in August."], isChanged: true });
      expect(letter?.after).toContain("We are closed in August.");
      const kept = good(await readParagraph(await owner(), "signature"));
      const unchanged = good(await previewParagraph(await owner(), { id: "signature", input: paragraphForm.parse(kept.values) }));
      const signed = unchanged.letters.find((l) => l.reference === reference);
      expect(signed?.isChanged).toBe(false);
      expect(signed?.after.endsWith(signed.says[0] ?? "—")).toBe(true);
      expect([seen.faults, seen.over, seen.words, seen.used >= 1, seen.used <= seen.tried]).toEqual([[], [], 5, true, true]);
      expect(await database().paragraphVersion.count()).toBe(before);
      const none = good(await previewParagraph(await owner(), { id: null, input: input({ place: "notes", text: "{nobody}", when: { is: { reason: ["trade"] }, not: { reason: ["trade"] } } }) }));
      expect([none.faults.map((f) => f.field), none.used]).toEqual([["text", "when"], 0]);
    });
  });

  describe("readParagraphs", () => {
    it("lists every place of a letter with when each paragraph is used", async () => {
      const places = good(await readParagraphs(await owner()));
      expect(places[0]).toMatchObject({ id: "greeting", paragraphs: [{ id: "greeting", from: "shipped", when: ["What there is to say: the client’s name"] }, { id: "greeting-nameless", when: [] }] });
      expect(places.at(-1)?.id).toBe("signature");
    });
  });
}
