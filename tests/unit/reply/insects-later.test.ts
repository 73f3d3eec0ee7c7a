import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import type { DraftInput } from "../../../lib/reply/pieces";
import type { RugAnswers } from "../../../lib/trade/questions";
import { action, FIRST_AID_SAID, inputOf } from "./make";
import { letterOf } from "./must-say/letter-of";

const EATEN = { fibres: { wool: 0.9 }, mechanisms: { insects: 0.9 } } as const;
const WET_ASKED = { id: "wetNow", kind: "question", ask: "Is any part of the rug wet right now?", why: "" } as const;
const eaten = (rest: Partial<Parameters<typeof inputOf>[0]> = {}, mould = 0): DraftInput =>
  inputOf({ sketch: { fibres: { wool: 0.9 }, mechanisms: { insects: 0.9, ...(mould > 0 ? { mould } : {}) }, rest: { improvement: null } }, answers: { incidents: ["insects"], changes: ["bare"] }, ...rest });
const letter = (input: DraftInput) => composeDraft(input).text;
const AT_ONCE = "Keep the rug dry and apart from anything made of wool, in a closed bag";
const LATER = "Once it is dry and may be handled, keep it apart from anything made of wool, in a closed bag";

describe("a rug that insects have fed on", () => {
  it("goes into a closed bag where it is dry and nothing else is in it", () => {
    expect(letter(eaten())).toContain(AT_ONCE);
    expect(letter(eaten())).not.toContain(LATER);
  });
  it.each([
    ["flood water got into it", eaten({ answers: { incidents: ["flood", "insects"] } })],
    ["spots of mould were told", eaten({ answers: { incidents: ["insects"], changes: ["spots"] } })],
    ["mould is likely", eaten({}, 0.5)],
    ["it is damp", eaten({ enquiry: { wetNow: "damp" } })],
    ["nobody knows whether it is wet", eaten({ sketch: { ...EATEN, rest: { nextQuestions: [WET_ASKED] } }, enquiry: { wetNow: "unsure" } })],
    ["first aid is due", eaten({ sketch: { fibres: { wool: 0.9 }, mechanisms: { insects: 0.9 }, rest: { firstAid: FIRST_AID_SAID } } })],
  ])("goes into none before it may be handled: %s", (_, input) => {
    expect(letter(input)).toContain(LATER);
    expect(letter(input)).not.toContain(AT_ONCE);
    expect(letter(input).match(/insects have fed on it/g)).toHaveLength(1);
  });
  it("goes into one at once where its owner writes in their own words that it is dry", () => {
    expect(letter(eaten({ sketch: { ...EATEN, rest: { nextQuestions: [WET_ASKED] } }, answers: { incidents: ["insects"], changes: ["bare"], story: "It is dry now." } }))).toContain(AT_ONCE);
  });
  it("is a matter for repair as before once somebody has seen it: that is no change of the answer", () => {
    const before = eaten();
    const { text, paragraphs, leftOut } = composeDraft(before);
    expect(text).toMatch(/a matter for repair of [^.]*, not for cleaning, and we would need to see it/);
    const seen = { ...before, assessments: before.assessments.map((rug) => ({ ...rug, inspection: { by: "Nell Harrow", on: "24 November 2026", isBeyondRepair: false } })) };
    const next = composeFollowing(seen, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: false, photos: 0, tested: false, inspected: 0 } });
    expect(next.text).toContain("Nell Harrow, who inspected it on 24 November 2026, does not judge it beyond economic repair.");
    expect(next.text).not.toMatch(/replaces what we wrote before about how far it may come back/);
  });
  it("is told of beside flood water and mould both", () => {
    const text = letter(eaten({ answers: { incidents: ["flood", "insects"], changes: ["spots"] } }, 0.6));
    expect(text).toMatch(/Flood and waste water can make you ill/);
    expect(text).toMatch(/that the spots are mould/);
    expect(text).toContain(LATER);
  });
});

describe("what is said of the holes", () => {
  it.each([["not-our-work", "no"], ["not-our-work", "damp"], ["quote-with-limits", "no"]] as const)("promises no work of ours: %s, wet %s", (id, wetNow) => {
    const text = letter(eaten({ sketch: { ...EATEN, rest: { improvement: null, advice: action(id) } }, enquiry: { wetNow } }));
    expect(text).toMatch(/the holes come after that/u);
    expect(text).not.toMatch(/\bwe see to\b/u);
    expect(text.includes("This is not work that we take on")).toBe(id === "not-our-work");
  });
});

describe("insects or bare patches that were told, of a pile that insects have likely not eaten", () => {
  const of = (changes: RugAnswers["changes"], incidents: RugAnswers["incidents"], wetNow: "no" | "unsure" = "no") =>
    letterOf({ answers: { labelText: "100% viscose", changes, incidents }, enquiry: { wetNow } }).draft.text;
  const NOW = /keep the rug apart from anything made of wool until somebody has looked/u;
  const THEN = /Once the rug is dry and may be handled, (?:please )?keep it apart from anything made of wool until somebody has looked/u;
  it.each<[string, string, RugAnswers["changes"], RugAnswers["incidents"]]>([
    ["insects, by mould that nobody touches", of(["spots"], ["insects", "stored"]), ["dirty"], ["insects", "stored"]],
    ["bare patches, by mould that nobody touches", of(["spots", "bare"], ["damp"]), ["bare"], ["damp"]],
    ["insects, where nobody knows whether it is wet", of(["dirty"], ["insects"], "unsure"), ["dirty"], ["insects"]],
  ])("have the rug moved apart only once it may be handled: %s", (_, text, changes, incidents) => {
    expect(text).toMatch(THEN);
    expect(text).not.toMatch(NOW);
    const handled = of(changes, incidents);
    expect(handled).toMatch(NOW);
    expect(handled).not.toMatch(THEN);
  });
});
