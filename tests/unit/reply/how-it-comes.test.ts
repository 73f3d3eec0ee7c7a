import { describe, expect, it } from "vitest";
import { answeredBy, askedQuestion } from "../../../lib/reply/questions-asked";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import { TONE_IDS } from "../../../lib/trade/tones";
import { letterOf, plainly, type Told } from "./must-say/letter-of";

const COLLECTING = "We collect within 15 miles of Hallowmere; from further away you bring it, or a carrier does.";
const BOTH = { collecting: COLLECTING, workWeeks: { low: 3, high: 6 } };
const NEITHER = { collecting: "", workWeeks: null };
const WOOL: Told = { answers: { labelText: "wool", back: "knots", incidents: ["spill"], liquid: "coffee-tea", since: "longer", widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "older-trouble" } };
const COLLECT = "Do you collect?";
const LONG = "How long does it take?";
const asking = (story: string, more: Told = WOOL): Told => ({ ...more, answers: { ...more.answers, story } });
const written = (told: Told, workshop: Told["workshop"]) => letterOf({ ...told, workshop: { ...told.workshop, ...workshop } });
const textOf = (told: Told, workshop: Told["workshop"] = BOTH) => plainly(written(told, workshop).draft.text);
const answers = (question: string, told: Told, workshop: Told["workshop"] = BOTH) => {
  const { text, paragraphs } = written(told, workshop).draft;
  return answeredBy(askedQuestion({ question, rug: 0, hasPlace: false }, { said: paragraphs, rugs: 1 }), { begun: text, text });
};
const TAKES = "Our work usually takes 3 to 6 weeks from the day a rug reaches us; we confirm it after the inspection.";

describe("a letter to somebody who asks whether we collect, or how long the work takes", () => {
  it("says what the settings say, and answers the question with it", () => {
    expect(textOf(asking(COLLECT))).toContain(COLLECTING);
    expect(answers(COLLECT, asking(COLLECT))).toEqual(["Bringing it, or having it collected"]);
    expect(textOf(asking(LONG))).toContain(TAKES);
    expect(answers(LONG, asking(LONG))).toEqual(["How long the work takes"]);
  });
  it("says how it comes once, whether it is to be brought or not", () => {
    const cleaners: Told = { ...WOOL, enquiry: { wetNow: "no", reason: "trade" } };
    const dirty: Told = { answers: { labelText: "100% wool", changes: ["dirty"], incidents: ["wear"] }, enquiry: { wetNow: "no", reason: "routine" } };
    const told = asking("Can you collect it?", dirty);
    expect(textOf(told)).toContain("If you bring it, roll it");
    expect(textOf(asking(COLLECT, cleaners))).not.toContain("roll it");
    for (const each of [told, asking(COLLECT), asking(COLLECT, cleaners)]) expect(textOf(each).split(COLLECTING)).toHaveLength(2);
  });
  it("reads as before where nothing is set, and leaves the question open", () => {
    for (const question of [COLLECT, LONG]) {
      expect(textOf(asking(question), NEITHER)).toBe(textOf(asking("It was my aunt’s."), NEITHER));
      expect(answers(question, asking(question), NEITHER)).toBeNull();
    }
    expect(textOf(WOOL, NEITHER)).toContain("Bring it rolled and not folded, or ask us whether we can collect it.");
  });
  it("tells nobody how long it takes who did not ask, and how it comes where the rug is to be brought", () => {
    expect(textOf(WOOL)).not.toContain("weeks");
    expect(textOf(WOOL)).toContain(`${COLLECTING} If you bring it, roll it and do not fold it.`);
    expect(textOf(WOOL)).not.toContain("ask us whether");
  });
  it("writes a range of one number, and one week, as such", () => {
    expect(textOf(asking(LONG), { workWeeks: { low: 4, high: 4 } })).toContain("usually takes about 4 weeks from");
    expect(textOf(asking(LONG), { workWeeks: { low: 1, high: 1 } })).toContain("usually takes about a week from");
  });
  it("says nothing of it while water is in their own words, after a flood, and of how it comes where there may be mould", () => {
    const flood: Told = { answers: { ...WOOL.answers, incidents: ["flood"] }, enquiry: { wetNow: "no", reason: "older-trouble" } };
    const wet = asking(`Water ran over it an hour ago and it is soaking wet. ${COLLECT} ${LONG}`, { answers: {}, channel: "email", photos: [] });
    for (const told of [asking(`${COLLECT} ${LONG}`, flood), wet]) {
      expect(textOf(told)).not.toContain(COLLECTING);
      expect(textOf(told)).not.toContain("usually takes");
    }
    expect(textOf(asking(COLLECT, { answers: { labelText: "cotton", incidents: ["damp"], changes: ["spots", "smell"], widthCm: 170, lengthCm: 240 }, enquiry: WOOL.enquiry ?? {} }))).not.toContain(COLLECTING);
  });
  it("tells a cleaner and an owner of a wet rug how it comes, and not to bring it rolled", () => {
    const cleaner: Told = { ...WOOL, enquiry: { wetNow: "no", reason: "trade" } };
    const damp: Told = { answers: { ...WOOL.answers, since: "day" }, enquiry: { wetNow: "damp", reason: "just-happened" } };
    for (const told of [cleaner, damp]) {
      expect(textOf(asking(COLLECT, told))).toContain(COLLECTING);
      expect(textOf(asking(COLLECT, told))).not.toContain("roll it");
    }
  });
  it("promises nothing by it, in any tone", () => {
    for (const tone of TONE_IDS) {
      const told = { ...asking(`${COLLECT} ${LONG}`), tone };
      expect(textOf(told)).toContain(TAKES);
      const { draft, rugs } = written(told, BOTH);
      expect(checkLetter(draft.text, knownOf(rugs))).toEqual([]);
    }
  });
});
