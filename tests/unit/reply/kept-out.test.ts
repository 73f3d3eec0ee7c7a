import { describe, expect, it } from "vitest";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import { asksAtDesk, asksOf } from "../../../lib/reply/asks";
import { assessmentOf, FIRST_AID_SAID } from "./make";
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
  ])("asks for no photo and for nothing that has to be looked at: %s", (_, answers, how) => expect(asked(answers, how)).toEqual(["boughtWhere"]));
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
