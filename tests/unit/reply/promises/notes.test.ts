import { describe, expect, it } from "vitest";
import { checkLetter, checkSentences, WORDS_AND_PHOTOS, type Known } from "../../../../lib/reply/promises/check";
import { notesOf } from "../../../../lib/reply/promises/notes";
import { RULES } from "../../../../lib/reply/promises/rules";
import { assessmentOf, range } from "../make";

const notes = (text: string, known: Known = WORDS_AND_PHOTOS) => notesOf(checkSentences(text, known));
const whyOf = (id: string) => RULES.find((r) => r.id === id)?.why;
const VISCOSE: Known = { assessment: assessmentOf({ fibres: { viscose: 0.72 }, words: "likely", rest: { improvement: range(10, 30, 55), lifeYears: range(1, 2.5, 5) } }) };

describe("the notes on a letter", () => {
  it("are none where nothing was found", () => expect(notesOf([])).toEqual([]));

  it("are one for a sentence that breaks one rule, and it answers that", () => {
    const [note, ...more] = notes("The stain will come out.");
    expect(more).toEqual([]);
    expect(note?.reasons.map((r) => r.why)).toEqual([whyOf("result")]);
    expect(note?.instead).toBe(RULES.find((r) => r.id === "result")?.instead);
  });

  it.each([
    ["The dyes are safe, they will hold.", ["result", "safety"]],
    ["We know that the browning comes from the cleaner's water.", ["certainty", "blame"]],
    ["It will be good for twenty more years.", ["result", "safety", "number"]],
  ])("are one for a sentence that breaks several, with each reason, and what answers them all and passes: %s", (say, broken) => {
    const [note, ...more] = notes(`Thank you for the photos. ${say} We are open until six.`);
    expect(more).toEqual([]);
    expect(note?.sentence).toBe(say);
    expect(note?.reasons.map((r) => r.why)).toEqual(broken.map(whyOf));
    expect(note?.instead).toBe(RULES.filter((r) => broken.includes(r.id)).map((r) => r.instead).join(" "));
    for (const known of [WORDS_AND_PHOTOS, VISCOSE]) expect(checkSentences(note?.instead ?? "", known)).toEqual([]);
  });

  it("are one for a sentence that breaks a rule and says more than the assessment, with what can be answered of it", () => {
    const [note, ...more] = notes("It is silk, and nine tenths of the stain may come out.", VISCOSE);
    expect(more).toEqual([]);
    expect(note?.reasons).toHaveLength(2);
    expect(note?.reasons[1]?.suggestion).toMatch(/10.+55/u);
    expect(note?.instead).toBe(RULES.find((r) => r.id === "certainty")?.instead);
  });

  it("offer nothing in its place where only the assessment is passed over", () => {
    const [note] = notes("Nine tenths of the stain may come out.", VISCOSE);
    expect(note?.reasons).toHaveLength(1);
    expect(note).not.toHaveProperty("instead");
  });

  it("say once what stands in a letter twice, and two things of two sentences", () => {
    expect(notes("The stain will come out. The stain will come out.").map((n) => n.reasons.length)).toEqual([1]);
    expect(notes("The stain will come out. It is silk.").map((n) => n.sentence)).toEqual(["The stain will come out.", "It is silk."]);
  });

  it("are one each for what a letter leaves out", () => {
    const left = checkLetter("It is likely wool, going by your photos. We will wash it.", WORDS_AND_PHOTOS).filter((o) => o.sentence === "");
    expect(left.length).toBeGreaterThan(1);
    expect(notesOf(left)).toHaveLength(left.length);
  });
});
