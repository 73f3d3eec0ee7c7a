import { describe, expect, it } from "vitest";
import type { RugAnswers } from "../../../lib/trade/questions";
import { composeDraft } from "../../../lib/reply/draft";
import { likelyMechanisms } from "../../../lib/reply/facts";
import { composeFollowing } from "../../../lib/reply/following";
import { headlineOf } from "../../../lib/reply/headline";
import type { DraftInput } from "../../../lib/reply/pieces";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import { wordsIn } from "../../../lib/words/words";
import { letterOf, plainly } from "./must-say/letter-of";
import { action, inputOf, range, WOOL_METHODS } from "./make";

const [LIKELY, UNLIKELY] = [0.33, 0.32];
const BY_FIRM = "Whether it can be cleaned at all, a firm equipped to treat mould in textiles has to say first";
const FIRM_FIRST = "only once a firm that treats mould has seen it";
const BROUGHT = /\broll(?:ed| it)\b/u;

/** A wool rug that would be cleaned as usual, with a price. */
const woolly = (answers: RugAnswers, mould: number, advice: Parameters<typeof action>[0] = "routine-clean"): DraftInput => inputOf({
  answers, sketch: {
    fibres: { wool: 0.95 }, methods: WOOL_METHODS, mechanisms: { "soil-only": 0.6, mould }, evidence: [{ what: "label", value: "100% wool", strength: "label-typed" }, ...(answers.changes ? [{ what: "changes", value: [...answers.changes], strength: "told" as const }] : [])],
    rest: { improvement: range(40, 60, 80), lifeYears: range(4, 6, 9), advice: action(advice), money: { currency: "GBP", clean: range(100, 120, 140), cutDown: null, replace: null, valueToday: range(500, 700, 900) } },
  },
});
const letter = (input: DraftInput) => plainly(composeDraft(input).text);
const headline = ({ assessments: [rug], enquiry }: DraftInput) => headlineOf(rug!.assessment, { letter: toldByLetter(rug!, { enquiry, isTrade: false }), words: wordsIn("en-GB") });
const deskOf = (input: DraftInput) => headline(input).says;
const SPOTS: RugAnswers = { changes: ["spots"] };
const MUSTY: RugAnswers = { changes: ["dirty"] };

describe("a rug with mould, seen as spots or likely", () => {
  it.each<[string, RugAnswers, number]>([["spots told, mould just below what is spoken of", SPOTS, UNLIKELY], ["likely, none seen", MUSTY, LIKELY]])("names no way of cleaning, no price and no bringing before a firm has treated it: %s", (_, answers, mould) => {
    const input = woolly(answers, mould);
    const text = letter(input);
    expect(text).toContain(BY_FIRM);
    expect(text).toContain(FIRM_FIRST);
    expect(text).toMatch(/Were it cleaned/u);
    expect(text).toContain("Only once the mould is treated");
    expect(text).not.toMatch(BROUGHT);
    expect(text).not.toMatch(/we would clean it|Cleaning would cost|With cleaning we would expect/iu);
    expect(deskOf(input)).toBe("Have a firm that treats mould see it first; then inspect and test it");
  });
  it("is cleaned as usual where none was seen and it is just below what is spoken of", () => {
    const input = woolly(MUSTY, UNLIKELY);
    expect(letter(input)).toMatch(/Cleaning would cost/u);
    expect(letter(input)).toMatch(BROUGHT);
    expect(letter(input)).not.toMatch(/treats? mould/u);
    expect(deskOf(input)).toBe("Clean it as usual");
  });
  it("is spoken of among several as a matter for later", () => {
    const [mouldy, sound] = [woolly(SPOTS, UNLIKELY), woolly(MUSTY, UNLIKELY)];
    const text = letter({ ...mouldy, assessments: [...mouldy.assessments, ...sound.assessments] });
    expect(text).toContain("Whether and how rug 1 could be cleaned is a matter for later.");
    expect(text).not.toContain("rug 2 could be cleaned is a matter for later");
    expect(text).toContain("For a rug that mould may grow in");
  });
  it.each(["refer", "leave-alone", "ask-for-more"] as const)("is asked in by nothing that an advice closes with: %s", (advice) => {
    const text = letter(woolly(MUSTY, 0.6, advice));
    expect(text).toContain(FIRM_FIRST);
    expect(text).not.toContain("you would like us to look at it");
    expect(letter(woolly(MUSTY, 0, advice))).not.toContain(FIRM_FIRST);
  });
  it("takes back in the letter that follows the way of cleaning that it named before the spots were told", () => {
    const { text, paragraphs, leftOut } = composeDraft(woolly(MUSTY, UNLIKELY));
    const next = plainly(composeFollowing(woolly(SPOTS, UNLIKELY), { told: { text, paragraphs: [...paragraphs, ...leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } }).text);
    expect(next).toContain(BY_FIRM);
    expect(next).not.toMatch(BROUGHT);
  });
  it("judged as the server judges it: spots were told, and mould stays below what is spoken of", () => {
    const { draft, rugs } = letterOf({ answers: { labelText: "100% wool", liquid: "unsure", since: "week", incidents: ["unknown", "nothing"], treatments: ["rubbed", "blotted", "professional-wet"], changes: ["spots"], price: 2500, boughtYear: 1998, currency: "GBP", widthCm: 170, lengthCm: 240 } });
    expect(likelyMechanisms(rugs[0]!.assessment)).not.toContain("mould");
    expect(draft.text).toContain(BY_FIRM);
    expect(draft.text).not.toMatch(BROUGHT);
  });
});

describe("a rug with mould and insects", () => {
  const MOULD_FIRM = "a firm equipped to treat mould in textiles", PEST_FIRM = "a pest control firm or a workshop that treats rugs for insects";
  const MOULD_FIRST = `is for ${MOULD_FIRM} first, and then for ${PEST_FIRM}.`;
  const DUE = { level: "a-week", why: "" } as const;
  const both = (answers: RugAnswers, { mould, insects }: { mould: number; insects: number }, inspection: DraftInput["assessments"][number]["inspection"] = null): DraftInput => {
    const input = inputOf({ answers, sketch: { fibres: { wool: 0.9 }, mechanisms: { insects, mould }, rest: { urgency: DUE, advice: { ...action("refer"), referTo: "a textile conservator, and a valuer" } } } });
    return { ...input, assessments: input.assessments.map((rug) => ({ ...rug, inspection })) };
  };
  it.each<[string, RugAnswers, number]>([["spots told, mould just below what is spoken of", SPOTS, UNLIKELY], ["mould likely", MUSTY, LIKELY]])("has the mould treated first, whatever is likelier, by letter and desk: %s", (_, answers, mould) => {
    const input = both(answers, { mould, insects: 0.9 });
    expect(letter(input)).toContain(`This ${MOULD_FIRST}`);
    expect(headline(input).why).toContain(`this ${MOULD_FIRST}`);
    expect(letter(both(answers, { mould, insects: 0.9 }, { by: "Nell Harrow", on: "24 November 2026", isBeyondRepair: false }))).toContain(`This ${MOULD_FIRST}`);
  });
  it("is for one firm where only one of them is in it", () => {
    expect(letter(both(MUSTY, { mould: UNLIKELY, insects: LIKELY }))).toContain(`This is for ${PEST_FIRM}.`);
    expect(letter(both(SPOTS, { mould: UNLIKELY, insects: UNLIKELY }))).toContain(`This is for ${MOULD_FIRM}.`);
  });
  it("judged as the server judges it: an old piece with spots, that insects have likely fed on", () => {
    const { draft } = letterOf({ answers: { labelText: "Art silk", age: "antique", incidents: ["insects"], changes: ["spots", "browner"], widthCm: 170, lengthCm: 240 }, enquiry: { wetNow: "no", reason: "older-trouble" } });
    expect(draft.text).toContain(MOULD_FIRST);
  });
});
