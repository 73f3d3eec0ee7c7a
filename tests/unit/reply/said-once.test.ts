import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { changesBetween, openIn, takenIn } from "../../../lib/reply/changes";
import { SHIPPED } from "../../../lib/reply/library";
import { mostWords } from "../../../lib/reply/length";
import { says } from "../../../lib/reply/parts";
import { piecesOf, type DraftInput } from "../../../lib/reply/pieces";
import { MUST_SAYS } from "../../../lib/reply/promises/must-say";
import { readingOf } from "../../../lib/reply/reading";
import { anyInput } from "./any-input";
import { action, FIRST_AID_SAID, inputOf, range, WOOL_METHODS, type OneRug } from "./make";
import { DEMO_CLIENTS, letterAbout } from "./must-say/demo-letters";
import { plainly } from "./must-say/letter-of";

const PRICE = { currency: "GBP", clean: range(150, 180, 240), cutDown: null, replace: null, valueToday: null };
const rug = ({ rest = {}, ...sketch }: Partial<OneRug["sketch"]> = {}, more: Partial<OneRug> = {}): OneRug => ({
  sketch: { fibres: { wool: 0.93 }, methods: WOOL_METHODS, evidence: [{ what: "touch", value: "springy", strength: "told" }], mechanisms: { "food-old": 0.9 }, ...sketch, rest: { improvement: range(15, 45, 75), worse: 0.22, lifeYears: range(4, 9, 16), money: PRICE, ...rest } },
  answers: { liquid: "coffee-tea" }, enquiry: { wetNow: "no", reason: "older-trouble" }, ...more,
});
const WOOL = rug();
const BLUE = rug({ rest: { improvement: range(30, 60, 88), lifeYears: range(2, 4, 8) } }, { title: "Blue, 200 × 300" });
const JUTE = rug({ fibres: { "hard-fibre": 0.9 }, methods: {}, evidence: [{ what: "label", value: "jute", strength: "label-typed" }], mechanisms: { matting: 0.9 }, rest: { improvement: range(2, 30, 61), worse: 0.05, lifeYears: null, money: null } }, { title: "Brown, 70 × 250" });

function inputAbout(...rugs: OneRug[]): DraftInput {
  const all = rugs.map(inputOf);
  return { ...(all[0] as DraftInput), assessments: all.flatMap((i) => i.assessments) };
}
function about(...rugs: OneRug[]) {
  const draft = composeDraft(inputAbout(...rugs));
  return { ...draft, text: plainly(draft.text) };
}
const times = (text: string, words: RegExp) => (text.match(new RegExp(words, "g")) ?? []).length;
const orderOf = (text: string, words: readonly string[]) => words.map((w) => text.indexOf(w));
/** In which order they stand; none is missing. */
const expectOrder = (text: string, words: readonly string[]) => {
  const at = orderOf(text, words);
  expect(at.every((n) => n >= 0), words[at.indexOf(-1)]).toBe(true);
  expect(at).toEqual([...at].sort((a, b) => a - b));
};

/** Sentences of six words and more, and lines of a list whole. */
const sentencesOf = (text: string) => text.split("\n").flatMap((line) => (line.startsWith("– ") ? [line] : line.split(/(?<=[.!?])\s+/u))).filter((s) => readingOf(s).words >= 6);
/** What each paragraph about one rug says that a letter does not: of what is asked the lines, of all else every sentence. */
const missingOf = ({ text, paragraphs }: Pick<ReturnType<typeof composeDraft>, "text" | "paragraphs">) => paragraphs.flatMap(({ rug: of, place, said }) => {
  if (of === null || place === "heading" || said === null) return [];
  return (place === "asks" ? said.split("\n").slice(1) : [said]).filter((words) => !says(text, words));
});
/** Sentences that something different follows for each rug, which is understood only beside them; and those that limit something different before them. */
const LEANED_ON = ["It may dry and leave no mark.", "Viscose is made from wood pulp."], LIMITS = /^That is provisional: /;
const twiceIn = (text: string) => sentencesOf(text).filter((s, at, all) => all.indexOf(s) !== at && !LEANED_ON.includes(s) && !LIMITS.test(s));

describe("a letter about several rugs", () => {
  it("says of two rugs with the same trouble once what is the same, the answer first, and of each under its name what is its own", () => {
    const { text } = about(WOOL, BLUE);
    expectOrder(text, ["First, for each of the two rugs\n\nGoing by what you told us, this rug is very likely wool.", "Words and photos can mislead", "Rug 1: Grey, 170 × 240\n\nWe would expect careful cleaning", "15–75 %", "between 4 and 16 years", "Rug 2: Blue, 200 × 300\n\nWe would expect careful cleaning", "30–88 %", "between 2 and 8 years", "For each of the two rugs\n\n", "the stain has set", "test in a hidden corner", "Please do not clean it at home", "Cleaning would cost about £150 to £240", "From here nobody can be sure"]);
    for (const once of [/Going by/, /mislead/, /hidden corner/, /at home/, /£150/, /The price is an estimate/, /between 15 and 30 in 100/]) expect(times(text, once), String(once)).toBe(1);
    expect(readingOf(text).words).toBeLessThanOrEqual(mostWords(1));
  });
  it("names two rugs that are the same in everything only together", () => {
    const { text, paragraphs } = about(WOOL, WOOL);
    expect(text).toContain("For each of the two rugs\n\nGoing by what you told us");
    expect(text).not.toMatch(/Rug \d|First, for/);
    expect(paragraphs.filter((p) => p.place === "care").map((p) => [p.rug, p.stands, p.here])).toEqual([[0, true, null], [1, true, null]]);
  });
  it("begins with the answer of each rug in one sentence, all in one block, and of one rug has none", () => {
    const answers = (text: string) => text.split("\n\n").filter((block) => /^(?:Rug 1|Of rug 1|Whether rug 1)[^:]/u.test(block));
    expect(answers(about(WOOL, JUTE).text)).toEqual(["Rug 1 we would clean, within the limits below. Rug 2 should be seen before anybody decides."]);
    const lost = rug({ rest: { beyondRepair: 0.93, improvement: range(1, 4, 9), advice: action("advise-claim-or-replacement") } }, { title: "Brown, 70 × 250" });
    const whole = about(WOOL, lost).text;
    expectOrder(whole, ["Rug 2 is very likely not worth the cost of cleaning.", "Going by", "Rug 1: Grey, 170 × 240\n\n", "Rug 2: Brown, 70 × 250\n\n", "It is very likely that"]);
    expect(answers(about(WOOL).text)).toEqual([]);
  });
  it("leads nothing where two rugs have nothing in common, nor in a letter about one", () => {
    expect(about(WOOL, JUTE).text).not.toMatch(/or each of/);
    expectOrder(about(WOOL, JUTE).text, ["Rug 1: Grey, 170 × 240\n\nGoing by", "Rug 2: Brown, 70 × 250\n\nGoing by"]);
    expect(about(WOOL).text).not.toMatch(/or each of|Rug 1/);
  });
  it("says which of three rugs share it, and of all three before what only two share", () => {
    const { text } = about(WOOL, JUTE, BLUE);
    expectOrder(text, ["First, for each of rugs 1 and 3\n\nGoing by what you told us", "Rug 1: Grey", "Rug 2: Brown", "Going by the label", "Rug 3: Blue", "For each of rugs 1 and 3\n\n", "the stain has set"]);
    expect(about(WOOL, WOOL, WOOL).text).toContain("For each of the three rugs");
  });
  it("says first aid once and first where one of them is urgent, and how soon under that one's name", () => {
    const urgent = rug({ rest: { firstAid: FIRST_AID_SAID, advice: action("first-aid"), urgency: { level: "two-days", why: "" } } }, { enquiry: { wetNow: "wet" }, title: "Red, 80 × 150" });
    const { text } = about(WOOL, urgent);
    expectOrder(text, ["Please do this first", "First, for each of the two rugs", "Rug 2: Red, 80 × 150", "within a day or two", "For each of the two rugs\n\n"]);
    expect([times(text, /Please do this first/), times(text, /within a day or two/)]).toEqual([1, 1]);
    expect(times(about(urgent, urgent).text, /Please do this first/)).toBe(1);
  });
  it("says once of all that are urgent that first aid comes first, and of one alone by its number", () => {
    const urgent = (fibre: "wool" | "silk", title: string) => rug({ fibres: { [fibre]: 0.93 }, rest: { firstAid: FIRST_AID_SAID, advice: action("first-aid"), urgency: { level: "two-days", why: "" } } }, { enquiry: { wetNow: "wet" }, title });
    const [wool, silk] = [urgent("wool", "Red, 80 × 150"), urgent("silk", "Green, 60 × 90")];
    const firstOf = (...rugs: Parameters<typeof about>) => about(...rugs).text.match(/[^.\n]+ what stands above comes first\./gu)?.map((s) => s.trim());
    expect(firstOf(wool, silk)).toEqual(["For each of the two rugs what stands above comes first."]);
    expect(firstOf(wool, JUTE, silk)).toEqual(["For each of rugs 1 and 3 what stands above comes first."]);
    expect(firstOf(JUTE, silk)).toEqual(["For rug 2 what stands above comes first."]);
  });
  it("puts a caution that both need before their answers", () => {
    const mould = (fibre: "wool" | "silk") => rug({ fibres: { [fibre]: 0.93 }, mechanisms: { mould: 0.9 } });
    const { text } = about(mould("wool"), mould("silk"));
    expectOrder(text, ["First, for each of the two rugs\n\n", "It is very likely that mould grows in it. Mould can harm your health", "Rug 1:", "very likely wool", "Rug 2:", "very likely silk"]);
    expect(times(text, /Mould can harm/)).toBe(1);
  });
  it("says beside each judgement of worth that it is provisional, and once where both are judged in the same words", () => {
    const lost = (beyondRepair: number) => rug({ mechanisms: { "dye-bleed": 0.9 }, rest: { beyondRepair, improvement: range(10, 30, 60), advice: action("advise-claim-or-replacement") } });
    const apart = about(lost(0.93), lost(0.7)).text;
    expectOrder(apart, ["Rug 1: ", "It is very likely that in money", "Rug 2: ", "It is likely that in money"]);
    expect(apart).not.toMatch(/\n\nThat is provisional/);
    expect(times(apart, /worth[^.]*\. That is provisional/)).toBe(2);
    expect(times(about(lost(0.93), lost(0.93)).text, /That is provisional/)).toBe(1);
  });
  it("keeps a caution for both where only its chance differs", () => {
    const { text } = about(rug({ mechanisms: { mould: 0.95 } }), rug({ mechanisms: { mould: 0.7 } }));
    expectOrder(text, ["First, for each of the two rugs", "Mould can harm your health", "Rug 1:", "very likely that mould grows in it", "Rug 2:", "It is likely that mould grows in it"]);
  });
  it("says everything rug by rug where the workshop has put a lead away", () => {
    const library = SHIPPED.map((row) => (row.place === "shared" ? { ...row, off: true } : row));
    const { text } = composeDraft({ ...inputAbout(WOOL, BLUE), library });
    expect(text).not.toMatch(/or each of/);
    expect(times(text, /Going by what you told us/)).toBe(2);
  });
  it("asks for everything in one list, and says of which rug where it is not of all", () => {
    const asks = (...ids: ("label" | "back" | "whole")[]) => rug({ fibres: { wool: 0.4, viscose: 0.35 }, words: "about as likely as not", rest: { advice: action("ask-for-more"), nextQuestions: ids.map((id) => ({ id, kind: "photo" as const, ask: id, why: "" })) } });
    const { text } = about(asks("label", "back"), asks("label", "whole"));
    expect(times(text, /It would help us most/)).toBe(1);
    expect(text).toMatch(/told us already\.\n– A photo of the label[^\n]*\n– Rug 1: A photo of the back[^\n]*\n– Rug 2: A photo of the whole rug/);
  });

  it.each([["about as likely as not", "ask-for-more"], ["likely", "inspect-and-test"]] as const)("does not call it one thing where each of two rugs has its own: %s", (words, id) => {
    const asks = (ask: "label" | "whole") => rug({ fibres: { wool: 0.4, viscose: 0.35 }, words, rest: { advice: action(id), nextQuestions: [{ id: ask, kind: "photo", ask, why: "" }] } });
    const { text } = about(asks("label"), asks("whole"));
    expect(text).toMatch(/This would (?:help us most|tell us more):\n– Rug 1: A photo of the label[^\n]*\n– Rug 2: A photo of the whole rug/);
    expect(text).not.toMatch(/one thing/i);
  });

  it("says no sentence twice, leaves none out, is no longer than it may be and keeps its limits, for clients of the demo two by two", () => {
    for (const [at, a] of DEMO_CLIENTS.entries()) {
      for (const b of DEMO_CLIENTS.slice(at + 1, at + 4)) {
        const { draft, rugs } = letterAbout([a, b]);
        expect(twiceIn(draft.text), `${a}, ${b}`).toEqual([]);
        expect(missingOf(draft)).toEqual([]);
        // A paragraph on a claim that somebody chose stands in a letter of any length.
        const claim = draft.paragraphs.filter((p) => p.place === "claim").reduce((sum, p) => sum + readingOf(p.said ?? "").words, 0);
        expect(readingOf(draft.text).words - claim).toBeLessThanOrEqual(mostWords(rugs.length));
        const letter = draft.text.toLowerCase();
        expect(MUST_SAYS.filter((m) => m.when(letter) && !m.needs.test(letter) && !m.unless?.test(letter)).map((m) => m.id)).toEqual([]);
      }
    }
  }, 120_000);
  it("says no sentence twice and leaves none of a paragraph out, over 1,000 made-up letters", () => {
    fc.assert(fc.property(anyInput, (input) => {
      const draft = composeDraft(input);
      if (input.assessments.length === 2) expect(twiceIn(draft.text)).toEqual([]);
      expect(missingOf(draft)).toEqual([]);
    }), { numRuns: 1000 });
  }, 120_000);
});

describe("what was said once of several rugs", () => {
  const later = inputAbout(WOOL, rug({ rest: { improvement: range(30, 60, 88), lifeYears: range(2, 4, 8), worse: 0.35 } }, { title: "Blue, 200 × 300" }));
  const first = inputAbout(WOOL, BLUE);
  const told = { text: composeDraft(first).text, paragraphs: composeDraft(first).paragraphs };

  it("was told of each of them: a letter that follows says of one what changed, under its name", () => {
    const { text } = composeFollowing(later, { told, came: { message: true, answers: false, photos: 0, tested: false } });
    expect(plainly(text)).toMatch(/Rug 2: Blue[^]*between 25 and 45 in 100/);
    expect(text).not.toMatch(/Rug 1|Going by|or each of/);
  });
  it("says once in a letter that follows what changed for both", () => {
    const both = inputAbout(rug({ rest: { worse: 0.35 } }), rug({ rest: { improvement: range(30, 60, 88), lifeYears: range(2, 4, 8), worse: 0.35 } }, { title: "Blue, 200 × 300" }));
    const { text } = composeFollowing(both, { told, came: { message: true, answers: false, photos: 0, tested: false } });
    expect(text).toContain("For each of the two rugs");
    expect(times(plainly(text), /between 25 and 45 in 100/)).toBe(1);
  });
  it("leaves its lead in an edited draft where it holds for one of them only from now on", () => {
    const changes = changesBetween(told, composeDraft(later), piecesOf(later).readsToday);
    const taken = changes.reduce((text, change) => takenIn(change, text), told.text);
    expect(openIn(changes, taken)).toEqual([]);
    expectOrder(plainly(taken), ["Rug 1: Grey", "between 15 and 30 in 100", "Rug 2: Blue", "between 25 and 45 in 100", "For each of the two rugs"]);
  });
  it("changes nothing where nothing changed", () => expect(changesBetween(told, composeDraft(first), piecesOf(first).readsToday)).toEqual([]));
});
