import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { isGasNow, isGasTold } from "../../../lib/reply/happened";
import { headlineOf } from "../../../lib/reply/headline";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import type { DraftInput } from "../../../lib/reply/pieces";
import { FIRST_AID, firstAidSentences } from "../../../lib/trade/first-aid";
import type { RugAnswers } from "../../../lib/trade/questions";
import { firstAidIn } from "../../../lib/words/first-aid";
import { wordsIn } from "../../../lib/words/words";
import { FIRST_AID_SAID, inputOf, WORKSHOP } from "./make";
import { letterOf } from "./must-say/letter-of";

const VINEGAR: RugAnswers = { liquid: "wine", since: "longer", treatments: ["bleach", "vinegar-soda"] };
const URINE: RugAnswers = { incidents: ["pet-urine"], treatments: ["bleach"] };

describe("isGasTold", () => {
  it.each<[string, RugAnswers]>([
    ["vinegar", VINEGAR], ["a household cleaner", { treatments: ["household-cleaner", "bleach"] }], ["a stain-remover fluid", { treatments: ["bleach", "solvent"] }],
    ["a cleaning product that got on it", { liquid: "cleaner", treatments: ["bleach"] }], ["urine of this week", { ...URINE, since: "week" }],
    ["urine as what got on it", { liquid: "urine", since: "hour", treatments: ["bleach"] }], ["urine of which nobody said when", URINE],
  ])("holds for bleach with %s", (_, answers) => expect(isGasTold(answers)).toBe(true));
  it.each<[string, RugAnswers]>([
    ["bleach alone on an old wine stain", { liquid: "wine", since: "longer", treatments: ["blotted", "bleach"] }], ["vinegar without bleach", { liquid: "wine", treatments: ["vinegar-soda", "household-cleaner"] }],
    ["bleach on urine of this month", { ...URINE, since: "month" }], ["fresh urine without bleach", { incidents: ["pet-urine"], since: "hour", treatments: ["plain-water"] }], ["nothing told", {}],
  ])("does not hold for %s", (_, answers) => expect(isGasTold(answers)).toBe(false));
});

describe("isGasNow", () => {
  it("holds while it is wet or where it was today, and not of a dry rug from before", () => {
    expect([isGasNow(VINEGAR, { wetNow: "wet" }), isGasNow(VINEGAR, { wetNow: "damp" }), isGasNow({ ...VINEGAR, since: "day" }, { wetNow: "no" })]).toEqual([true, true, true]);
    expect([isGasNow({ ...VINEGAR, since: "two-days" }, { wetNow: "no" }), isGasNow(VINEGAR, {}), isGasNow({ since: "hour" }, { wetNow: "wet" })]).toEqual([false, false, false]);
  });
});

describe("the line of the gas", () => {
  it.each(["hour", "day", "two-days"] as const)("stands in a letter wherever the page of the enquiry gives it, of a rug that is called dry too, and nobody goes back in for a photo: %s", (since) => {
    const answers: RugAnswers = { labelText: "100% wool", incidents: ["spotted"], treatments: ["bleach", "vinegar-soda"], treatedBy: "owner", changes: ["paler"], since };
    const enquiry = { wetNow: "no", reason: "just-happened" } as const;
    const { text } = letterOf({ answers, enquiry }).draft;
    expect(isGasNow(answers, enquiry)).toBe(since !== "two-days");
    expect(text.includes("bleach can give off a harmful gas")).toBe(isGasNow(answers, enquiry));
    expect(/photo of the trouble/u.test(text)).toBe(!isGasNow(answers, enquiry));
  });
  it("is said with the emergency number of today, whichever it was stored with", () => {
    expect(firstAidIn(wordsIn("en-GB"), firstAidSentences("112", false, true), "911")).toEqual(firstAidSentences("911", false, true));
  });
  it("is held up by a letter that follows without a word of wet, and once, whether they wrote since that it is dry or not; where none may rise, what may be wet is", () => {
    const following = (treatments: NonNullable<RugAnswers["treatments"]>, saidOfWater: "dry" | null) => {
      const input = inputOf({ sketch: { fibres: { wool: 0.9 }, rest: { firstAid: FIRST_AID_SAID } }, answers: { incidents: ["spotted"], treatments, since: "hour" }, enquiry: { wetNow: "no" } });
      const { text, paragraphs, leftOut } = composeDraft(input);
      const since = { ...input, assessments: input.assessments.map((rug) => ({ ...rug, saidOfWater })) };
      return composeFollowing(since, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: true, answers: false, photos: 0, tested: false } }).text;
    };
    for (const saidOfWater of ["dry", null] as const) {
      const [gas, wet] = [following(["bleach", "vinegar-soda"], saidOfWater), following(["bleach"], saidOfWater)];
      expect(gas.match(/may still give off a harmful gas, wet or dry, and our first aid still holds\. Keep everybody[^.]*out of the room/gu)).toHaveLength(1);
      expect(gas).not.toMatch(/still wet/u);
      expect(wet).toMatch(/If any of it is still wet[^.]*our first aid still holds/u);
      expect(wet).not.toMatch(/harmful gas/u);
      expect([gas, wet].map((text) => text.includes("You write that it is dry."))).toEqual([saidOfWater === "dry", saidOfWater === "dry"]);
    }
  });
  it("is taken back once none may rise any more, by what they say now or since it is dry, and stands while it may", () => {
    const GONE = /What we wrote before about gas from what was put on it no longer holds\./u;
    const told = (treatments: NonNullable<RugAnswers["treatments"]>, isDue: boolean) => inputOf({ sketch: { fibres: { wool: 0.9 }, rest: { firstAid: isDue ? FIRST_AID_SAID : null } }, answers: { incidents: ["spotted"], treatments, since: "hour" }, enquiry: { wetNow: "no" } });
    const after = (...[first, ...more]: [DraftInput, ...DraftInput[]]) => more.reduce(({ text, paragraphs, leftOut }, now) =>
      composeFollowing(now, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }), composeDraft(first)).text;
    const [gas, over, none, blotted] = [told(["bleach", "vinegar-soda"], true), told(["bleach", "vinegar-soda"], false), told(["blotted"], false), told(["blotted"], true)];
    for (const now of [over, none, blotted]) for (const before of [[gas], [gas, gas]] as [DraftInput, ...DraftInput[]][]) expect(after(...before, now)).toMatch(GONE);
    for (const letters of [[gas, gas], [gas, none, none], [blotted, none], [blotted, gas]] as [DraftInput, ...DraftInput[]][]) expect(after(...letters)).not.toMatch(GONE);
  });
  it("stands in a letter that follows one which could not know of it, and not once more after that", () => {
    const told = (answers: RugAnswers) => inputOf({ sketch: { fibres: { wool: 0.9 }, rest: { firstAid: FIRST_AID_SAID } }, answers, enquiry: { wetNow: "wet" } });
    const after = (before: RugAnswers) => {
      const { text, paragraphs, leftOut } = composeDraft(told(before));
      return composeFollowing(told(VINEGAR), { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text;
    };
    const gas = FIRST_AID.gas.line(WORKSHOP.emergencyNumber);
    expect(after({ liquid: "wine" })).toContain(gas);
    expect(after(VINEGAR)).not.toContain(gas);
    expect(after(VINEGAR)).toContain("our first aid still holds");
  });
});

describe("the desk", () => {
  const reasonOf = (answers: RugAnswers, wetNow: "wet" | "no") => {
    const [rug] = letterOf({ answers, enquiry: { wetNow } }).rugs;
    return headlineOf(rug!.assessment, { letter: toldByLetter({ ...rug!, answers }, { enquiry: { wetNow }, isTrade: false }), words: wordsIn("en-GB") }).why;
  };
  it("answers with first aid for what may be gas, wet or dry, and else for what is wet", () => {
    const treated = (treatments: RugAnswers["treatments"]): RugAnswers => ({ incidents: ["spotted"], treatments, since: "hour" });
    for (const wetNow of ["wet", "no"] as const) expect(reasonOf(treated(["bleach", "vinegar-soda"]), wetNow)).toMatch(/^What was put on it may give off a harmful gas, and that comes before everything else/u);
    expect(reasonOf(treated(["bleach"]), "wet")).toMatch(/^It is wet now/u);
  });
});

describe("first aid in short", () => {
  it.each<[string, RugAnswers]>([["a product", { liquid: "wine", treatments: ["household-cleaner"] }], ["what may be gas", VINEGAR], ["water", { incidents: ["water"] }], ["nobody knows", {}]])("says once to put nothing on it: %s", (_, answers) => {
    const { text } = composeDraft(inputOf({ sketch: { fibres: { wool: 0.9 }, rest: { firstAid: FIRST_AID_SAID } }, answers, enquiry: { wetNow: "wet" } }));
    expect(text.match(/\bput (?:nothing|no)\b/gi)).toHaveLength(1);
  });
});
