import { describe, expect, it } from "vitest";
import { changesBetween, openIn, takenIn } from "../../../lib/reply/changes";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { SHIPPED } from "../../../lib/reply/library";
import { LEADS } from "../../../lib/reply/paragraphs";
import { piecesOf, type DraftInput } from "../../../lib/reply/pieces";
import type { RugAnswers } from "../../../lib/trade/questions";
import type { Assessment } from "../../../lib/triage/assessment";
import { action, FIRST_AID_SAID, inputOf, range, WOOL_METHODS, WORKSHOP } from "./make";
import { letterOf } from "./must-say/letter-of";

/** Several rugs in one letter, each drawn by itself. */
const together = (...rugs: readonly DraftInput[]): DraftInput => ({ ...rugs[0]!, assessments: rugs.flatMap(({ assessments }) => assessments) });
/** What the program judges of several rugs that are dry. */
const judged = (...rugs: readonly RugAnswers[]): DraftInput => ({
  assessments: rugs.map((answers) => ({ title: "Grey, 170 × 240", answers, assessment: letterOf({ answers, enquiry: { wetNow: "no" } }).rugs[0]!.assessment })),
  client: { name: "Ana Example", isTrade: false }, workshop: WORKSHOP, enquiry: { wetNow: "no" },
});
const first = (input: DraftInput): string => composeDraft(input).text.replaceAll("\u00a0", " ");
/** The letter to somebody who had the first one and has answered a question since. */
function letter(before: DraftInput, after: DraftInput): string {
  const { text, paragraphs, leftOut } = composeDraft(before);
  return composeFollowing(after, { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text.replaceAll("\u00a0", " ");
}
const ofRug = (number: number, text: string): string => new RegExp(`Rug ${number}: [^]*?(?=Rug \\d: |For each of|With kind regards)`).exec(text)?.[0] ?? "";

describe("what a letter before said of one of several rugs", () => {
  const [mouldy, soiled] = [{ changes: ["spots"], incidents: ["damp"] }, { changes: ["dirty"], incidents: ["damp"] }] as const satisfies RugAnswers[];
  const [eaten, stored] = [{ changes: ["bare"], incidents: ["stored"] }, { changes: ["dirty"], incidents: ["stored"] }] as const satisfies RugAnswers[];
  const [flooded, used] = [{ changes: ["browner"], incidents: ["flood"] }, { changes: ["dirty"], incidents: ["wear"] }] as const satisfies RugAnswers[];
  const MOULD = /likely that the spots are mould[^]*keep everybody out of the room[^]*have this rug seen to within a day or two[^]*a firm equipped to treat mould/;
  const INSECTS = /insects have fed on it\. Please use no insecticide[^]*pest control firm/;
  const FLOOD = /Flood and waste water can make you ill[^]*ask a flood-damage firm/;

  it.each<[string, RugAnswers, RugAnswers, RugAnswers, RegExp]>([["mould", mouldy, soiled, mouldy, MOULD], ["insects", eaten, stored, eaten, INSECTS], ["flood water", flooded, used, { ...used, incidents: ["flood"] }, FLOOD]])("is told of the other one too, once it may have %s as well", (_, feared, other, now, caution) => {
    expect(first(judged(feared, other))).toMatch(caution);
    expect(ofRug(2, letter(judged(feared, other), judged(feared, now)))).toMatch(caution);
  });
  it("gives the reason for what it says of the worth of the other one, and that it is provisional", () => {
    const text = letter(judged(mouldy, soiled), judged(mouldy, mouldy));
    expect(text).toMatch(/Rug 2 is likely not worth the cost of cleaning\./);
    expect(ofRug(2, text)).toMatch(/cleaning may bring back too little\. That is provisional/);
  });
  it("is told of neither again where it stood once for both of them, nor of the one that it was said of", () => {
    expect(first(judged(mouldy, mouldy))).toMatch(MOULD);
    expect(letter(judged(mouldy, mouldy), judged(mouldy, mouldy))).not.toMatch(/mould/);
    expect(letter(judged(mouldy, soiled), judged(mouldy, soiled))).not.toMatch(/mould/);
    expect(ofRug(1, letter(judged(mouldy, soiled), judged(mouldy, mouldy)))).toBe("");
  });
  it("is told of the other one as well where the workshop says nothing once of several rugs", () => {
    const apart = (input: DraftInput): DraftInput => ({ ...input, library: SHIPPED.filter(({ place }) => !LEADS.includes(place)) });
    const text = letter(apart(judged(mouldy, soiled)), apart(judged(mouldy, mouldy)));
    expect(text).toMatch(/Rug 2: [^]*likely that the spots are mould/);
    expect(text).not.toContain("Rug 1");
  });

  it("is no price of the other one, which is told though both read the same, and not again where that stands", () => {
    const priced = (isPriced: boolean) => inputOf({
      sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: { text: "100% wool", says: null, pile: "wool" }, strength: "told" }], mechanisms: { "soil-only": 0.9 },
        rest: { improvement: range(40, 60, 80), advice: action("routine-clean"), money: isPriced ? { currency: "GBP", clean: range(100, 150, 200), cutDown: null, replace: null, valueToday: null } : null } },
      answers: { changes: ["dirty"] },
    });
    const before = together(priced(true), priced(false));
    expect(ofRug(2, letter(before, together(priced(true), priced(true))))).toMatch(/£100 to £200/);
    expect(letter(before, before)).not.toContain("£");
  });
});

describe("what a following letter says moved of one of several rugs", () => {
  const WASHED: Partial<Assessment> = { improvement: range(40, 60, 80), advice: action("quote-with-limits"), lifeYears: range(4, 8, 16) };
  const rug = (rest: Partial<Assessment> = {}) => inputOf({ sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: { text: "100% wool", says: null, pile: "wool" }, strength: "told" }], mechanisms: { "soil-only": 0.9 }, methods: WOOL_METHODS, rest: { ...WASHED, ...rest } }, answers: { changes: ["dirty"] } });
  const [same, sooner] = [rug(), rug({ lifeYears: range(2, 3, 6) })];
  const REPLACED = /This replaces what we wrote before about how long (it|rugs? [\d and]+) may serve\./;

  it("names the rug, and none where it is so of all", () => {
    expect(letter(together(same, same), together(same, sooner)).match(REPLACED)?.[1]).toBe("rug 2");
    expect(letter(together(same, same, same), together(sooner, same, sooner)).match(REPLACED)?.[1]).toBe("rugs 1 and 3");
    for (const [before, after] of [[together(same, same), together(sooner, sooner)], [same, sooner]] as const) expect(letter(before, after).match(REPLACED)).toEqual(expect.arrayContaining(["it"]));
  });
  it("names the rug once where several things of it moved, and after what moved of all", () => {
    const priced = (low: number) => ({ money: { currency: "GBP", clean: range(low, low + 50, low + 100), cutDown: null, replace: null, valueToday: null } });
    const [before, other] = [rug(priced(500)), rug({ ...priced(100), lifeYears: range(2, 3, 6) })];
    expect(letter(together(before, before), together(before, other))).toMatch(/This replaces what we wrote before about how long rug 2 may serve and what cleaning it costs\./);
    expect(letter(together(before, before, before), together(other, before, other))).toMatch(/about how long rugs 1 and 3 may serve and what cleaning them costs\./);
    expect(letter(together(before, before), together(rug(priced(100)), other))).toMatch(/about what cleaning costs and how long rug 2 may serve\./);
  });
  it("names the rug that may be wet again, of which what was said of a dry one waits", () => {
    const wet = { ...same, assessments: same.assessments.map((r) => ({ ...r, wetByWords: "whole" as const })) };
    const text = letter(together(same, same), together(same, wet));
    expect(text).toMatch(/What we wrote before about [^.]*rug 2[^.]* was about a dry rug/);
    expect(text).not.toMatch(/rug 1\)/);
  });

  const left = rug({ advice: action("leave-alone") });
  const inShort = (text: string): string[] => (/^Rug \d (?!:)[^\n]*$/m.exec(text)?.[0] ?? "").match(/Rug \d/g) ?? [];
  it("answers in short every rug that it speaks of, in their order, where the short answer of one is another", () => {
    expect(inShort(first(together(same, sooner, same)))).toEqual(["Rug 1", "Rug 2", "Rug 3"]);
    const text = letter(together(same, same, same), together(sooner, same, left));
    expect(ofRug(1, text)).toMatch(/./);
    expect(inShort(text)).toEqual(["Rug 1", "Rug 3"]);
  });
  it("answers none in short where no short answer is another", () => expect(inShort(letter(together(same, same), together(sooner, same)))).toEqual([]));
  it("says of one that it answers as not worth its cost why and how surely, though a letter before did: that answer has its limits beside it", () => {
    const worn = (isWet: boolean, beyondRepair: number) => inputOf({
      sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "touch", value: "springy", strength: "told" }], mechanisms: { "dye-bleed": 0.9 }, methods: WOOL_METHODS,
        rest: { beyondRepair, improvement: range(10, 30, 60), advice: action(isWet ? "first-aid" : "quote-with-limits"), ...(isWet ? { firstAid: FIRST_AID_SAID, urgency: { level: "hours", why: "" } } : {}) } },
      answers: { changes: ["ran"] }, enquiry: { wetNow: isWet ? "wet" : "no" },
    });
    const both = (isWet: boolean) => together(worn(isWet, 0.93), worn(isWet, 0.2));
    expect(first(both(true))).toMatch(/That is provisional/);
    const text = letter(both(true), both(false));
    expect(text).toMatch(/Rug 1 is very likely not worth the cost of cleaning\./);
    expect(ofRug(1, text)).toMatch(/It is very likely that [^.]*\. That is provisional: nobody here has inspected it/);
    expect(ofRug(2, text)).not.toMatch(/provisional/);
  });
});

describe("what would read otherwise in a draft of several rugs", () => {
  const rug = (low: number | null, improved = 80) => inputOf({
    sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "label", value: { text: "100% wool", says: null, pile: "wool" }, strength: "told" }], mechanisms: { "soil-only": 0.9 },
      rest: { improvement: range(40, 60, improved), advice: action("routine-clean"), money: low === null ? null : { currency: "GBP", clean: range(low, low + 50, low + 100), cutDown: null, replace: null, valueToday: null } } },
    answers: { changes: ["dirty"] },
  });
  const changes = (before: DraftInput, after: DraftInput) => {
    const { text, paragraphs, leftOut } = composeDraft(before);
    return changesBetween({ text, paragraphs: [...paragraphs, ...leftOut] }, composeDraft(after), piecesOf(after).readsToday);
  };
  const prices = (before: DraftInput, after: DraftInput) => changes(before, after).filter((c) => c.place === "Price").map(({ was, now, of }) => [of?.rug, /£\d+/.exec(was ?? "")?.[0] ?? null, /£\d+/.exec(now ?? "")?.[0] ?? null]);
  /** A draft with every change taken in, and what it says of each rug. */
  const takenInto = (before: DraftInput, after: DraftInput) => {
    const all = changes(before, after);
    const text = all.reduce((letter, change) => takenIn(change, letter), composeDraft(before).text);
    expect(openIn(all, text)).toEqual([]);
    return [1, 2].map((number) => /£\d+/.exec(ofRug(number, text.replaceAll("\u00a0", " ")))?.[0]);
  };
  const [dear, cheap, unpriced] = [rug(500), rug(100), rug(null)];

  it("is named of each rug where two change places, and taken in where each is spoken of", () => {
    const [before, after] = [together(dear, cheap), together(cheap, dear)];
    expect(prices(before, after)).toEqual([[0, "£500", "£100"], [1, "£100", "£500"]]);
    expect(openIn(changes(before, after), composeDraft(before).text).filter((c) => c.place === "Price")).toHaveLength(2);
    expect(takenInto(before, after)).toEqual(["£100", "£500"]);
  });
  it("is named of both where one is silent from now on and the other says the same words", () => {
    const [before, after] = [together(dear, rug(null, 70)), together(unpriced, rug(500, 70))];
    expect(prices(before, after)).toEqual(expect.arrayContaining([[0, "£500", null], [1, null, "£500"]]));
    expect(takenInto(before, after)).toEqual([undefined, "£500"]);
    expect(takenInto(after, before)).toEqual(["£500", undefined]);
  });
  it("is none where each rug keeps its words, and needs no rug's name where the words tell which it is", () => {
    expect(changes(together(dear, cheap), together(dear, cheap))).toEqual([]);
    expect(prices(together(dear, cheap), together(dear, rug(200)))).toEqual([[undefined, "£100", "£200"]]);
  });
  it("is looked for in the whole letter where somebody took the heading out", () => {
    const [swap] = changes(together(dear, cheap), together(cheap, dear)).filter((c) => c.place === "Price");
    if (!swap) throw new Error("Expected a change of the price but received none");
    expect(takenIn(swap, `Dear Ana,\n\n${swap.was}\n\nMira`)).toBe(`Dear Ana,\n\n${swap.now}\n\nMira`);
  });
  it("is none of what is said of no rug in particular, whichever rug calls for it", () => {
    const notes = { ...SHIPPED[0]!, from: "workshop" as const, id: "own-note", place: "notes" as const, when: { is: { has: ["clean-price" as const] } }, text: "We take cards.", tones: {} };
    const noted = (input: DraftInput): DraftInput => ({ ...input, library: [...SHIPPED, notes] });
    expect(changes(noted(together(dear, unpriced)), noted(together(unpriced, dear))).map((c) => c.place)).not.toContain("Notes of your own");
  });
});
