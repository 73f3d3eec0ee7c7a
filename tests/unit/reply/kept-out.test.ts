import { describe, expect, it } from "vitest";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import { toldOf } from "../../../lib/enquiry/slip";
import { asksAtDesk, asksOf } from "../../../lib/reply/asks";
import type { RugForDraft } from "../../../lib/reply/facts";
import { composeDraft } from "../../../lib/reply/draft";
import { assessmentOf, FIRST_AID_SAID, inputOf } from "./make";
import { letterOf } from "./must-say/letter-of";

const PHOTO = { id: "trouble", kind: "photo", ask: "Trouble", why: "" } as const;
const WHERE = { id: "boughtWhere", kind: "question", ask: "Where?", why: "" } as const;
const FRINGE = { id: "fringe", kind: "question", ask: "Fringe?", why: "" } as const;
const SHINE = { id: "shine", kind: "question", ask: "Shine?", why: "" } as const;
const GAS: RugAnswers = { incidents: ["spill"], liquid: "wine", since: "day", treatments: ["bleach", "vinegar-soda"] };
const BLEACHED: RugAnswers = { ...GAS, treatments: ["bleach"] };

interface How { readonly mould?: number; readonly isWet?: boolean; readonly wetByWords?: "whole" | "hands-off" | null }
/** What is asked of one rug. */
function asked(answers: RugAnswers, { mould = 0, isWet = false, wetByWords = null }: How = {}) {
  const rug = { title: "Grey", answers, wetByWords, assessment: assessmentOf({ fibres: { wool: 0.5 }, mechanisms: { "food-old": 0.9, mould }, rest: { firstAid: isWet ? FIRST_AID_SAID : null, nextQuestions: [PHOTO, FRINGE, SHINE, WHERE] } }) };
  const ids = asksOf(rug, ["food-old"]).listed.map(({ id }) => id);
  expect(asksAtDesk(rug, ["food-old"]).map(({ id }) => id)).toEqual(expect.arrayContaining(ids));
  return ids;
}

describe("asksOf, of a rug in a room that everybody is kept out of", () => {
  it.each<[string, RugAnswers, How]>([
    ["spots were told", { changes: ["spots"] }, {}], ["mould is likely", { changes: ["smell", "browner"] }, { mould: 0.33 }], ["flood water got into it", { incidents: ["flood"], changes: ["browner"] }, {}],
    ["what was put on it may give off gas, and first aid is due", GAS, { isWet: true }], ["their own words are of flood water", { changes: ["browner"] }, { wetByWords: "hands-off" }],
  ])("asks for no photo and for nothing that has to be looked at: %s", (_, answers, how) => expect(asked(answers, how)).toEqual([...(how.wetByWords ? ["wetNow"] : []), "boughtWhere"]));
  it.each<[string, RugAnswers, How]>([
    ["mould just below what is spoken of", { changes: ["browner"] }, { mould: 0.32 }], ["bleach alone, wet", BLEACHED, { isWet: true }], ["what may be gas, of a rug that is dry", GAS, {}],
  ])("asks for a photo as ever: %s", (_, answers, how) => expect(asked(answers, how)).toEqual(["trouble", "fringe", "shine"]));
  it.each<[string, RugAnswers, EnquiryAnswers, RegExp]>([
    ["spots", { labelText: "jute", back: "cloth", age: "10-25", since: "unsure", treatments: [], changes: ["spots"], household: ["pets", "humid", "children"], price: 400, boughtYear: 2015, currency: "GBP", widthCm: 60, lengthCm: 90 }, { reason: "routine" }, /keep everybody out of the room/u],
    ["gas", { labelText: "jute", back: "flat", age: "25-80", since: "hour", incidents: ["damp"], treatments: ["steam-heat", "household-cleaner", "bleach"], changes: ["paler"], widthCm: 300, lengthCm: 400 }, { wetNow: "damp" }, /Leave the room/u],
  ])("in a letter judged as the server judges it: %s", (_, answers, enquiry, keptOut) => {
    const { text } = letterOf({ answers, enquiry }).draft;
    expect(text).toMatch(keptOut);
    expect(text).not.toMatch(/\bphoto of\b|fringe|lift it off/iu);
  });
});

describe("asksOf, of a label that is sewn under a corner", () => {
  const LABEL = { id: "label", kind: "photo", ask: "Label", why: "" } as const;
  const askedOf = (firstAid: typeof FIRST_AID_SAID | null, more: Pick<RugForDraft, "wetByWords"> = {}) =>
    asksOf({ answers: SPILT, ...more, assessment: assessmentOf({ fibres: { wool: 0.5 }, mechanisms: { "food-old": 0.9 }, rest: { firstAid, nextQuestions: [PHOTO, LABEL] } }) }, ["food-old"]).listed.map(({ id }) => id);
  it("asks for it of a rug that may be lifted, and not while it is wet or may be by their own words", () => {
    expect(askedOf(null)).toEqual(["trouble", "label"]);
    expect(askedOf(FIRST_AID_SAID)).toEqual(["trouble"]);
    expect(askedOf(null, { wetByWords: "whole" })).toEqual(["wetNow", "trouble"]);
  });
  it("does not ask for it beside first aid that leaves a soaked rug lying, in a letter judged as the server judges it", () => {
    const letter = (wetNow: "wet" | "no") => letterOf({ answers: {}, enquiry: { wetNow, reason: "what-is-it" } }).draft.text;
    expect(letter("wet")).toMatch(/Leave a soaked rug lying/u);
    expect(letter("wet")).not.toMatch(/label/u);
    expect(letter("no")).toMatch(/photo of the label/u);
  });
});

const OTHER: RugAnswers = { incidents: ["wear"], changes: ["flat"] };
const MUSTY: RugAnswers = { incidents: ["damp"], changes: ["smell"] };
const SPILT: RugAnswers = { incidents: ["spill"], liquid: "wine" };
/** The second of two rugs of one enquiry: what its letter and the desk ask for of it. `mould`: how likely it is in the first. */
function askedBeside(first: RugAnswers, second: RugAnswers, { mould = 0, isWet = false }: How = {}) {
  const rest = { firstAid: isWet ? FIRST_AID_SAID : null, nextQuestions: [PHOTO, FRINGE, WHERE] };
  const rug = (answers: RugAnswers, likely: number) => ({ title: "Grey", answers, assessment: assessmentOf({ fibres: { wool: 0.5 }, mechanisms: { "food-old": 0.9, mould: likely }, rest }) });
  const [one, two] = [rug(first, mould), rug(second, 0)];
  const { text } = composeDraft({ ...inputOf({ sketch: { fibres: { wool: 0.5 } } }), assessments: [one, two] });
  const row = { answers: {}, letters: [], client: { isTrade: false }, rugs: [one, two].map(({ answers, assessment }) => ({
    answers: Object.entries(answers).map(([question, value]) => ({ id: question, rugId: "", question, value, at: new Date(0), from: "client" })), assessments: [{ result: assessment }],
  })) };
  return { letter: /^– (?:Rug 2: )?A photo of/mu.test(text), desk: toldOf(row, { title: two.title, answers: row.rugs[1]!.answers, assessment: two.assessment }).asks.map(({ id }) => id).includes("trouble") };
}

describe("what is asked of a rug beside one in a room that everybody is kept out of", () => {
  const [NO, YES] = [{ letter: false, desk: false }, { letter: true, desk: true }];
  it.each<[string, RugAnswers, RugAnswers, How]>([
    ["flood water, and nothing told of it", { incidents: ["flood"] }, {}, {}], ["spots", { changes: ["spots"] }, { changes: ["dirty"] }, {}], ["mould as likely as is spoken of", MUSTY, { incidents: ["unknown"] }, { mould: 0.33 }], ["what may be gas, and first aid is due", GAS, {}, { isWet: true }],
  ])("is no photo of it where nobody has said what happened to it, for it may lie in there too: %s", (_, first, second, how) => expect(askedBeside(first, second, how)).toEqual(NO));
  it.each<[string, RugAnswers, RugAnswers, How]>([
    ["something else was told of it", { incidents: ["flood"] }, SPILT, {}], ["nothing happened to it, by their answer", { incidents: ["flood"] }, { incidents: ["nothing"] }, {}],
    ["mould just below what is spoken of", MUSTY, {}, { mould: 0.32 }], ["no room is shut", OTHER, {}, {}],
  ])("is a photo as ever: %s", (_, first, second, how) => expect(askedBeside(first, second, how)).toEqual(YES));
});
