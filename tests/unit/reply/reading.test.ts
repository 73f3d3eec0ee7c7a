import { describe, expect, it } from "vitest";
import { readingOf, syllables } from "../../../lib/reply/reading";

describe("syllables", () => {
  // Counts as dictionaries divide the words.
  it.each([["rug", 1], ["water", 2], ["viscose", 2], ["cleaned", 1], ["wanted", 2], ["improvement", 3], ["table", 2], ["hole", 1], ["fibre", 2], ["the", 1], ["strong", 1], ["testing", 2], ["inspection", 3], ["fibres", 2], ["pieces", 2], ["makes", 1], ["careful", 2], ["colour", 2], ["we", 1]])(
    "%s has %d", (word, count) => expect(syllables(word)).toBe(count));
  it("counts at least one, also for what is no word", () => expect([syllables("hm"), syllables("Ünal"), syllables("½")]).toEqual([1, 2, 1]));
});

describe("readingOf", () => {
  it("is empty for an empty text and for numbers alone", () => {
    expect(readingOf("")).toEqual({ words: 0, sentences: 0, grade: 0 });
    expect(readingOf("12 – 13 %")).toEqual({ words: 0, sentences: 0, grade: 0 });
  });
  it("counts words and sentences, list lines as sentences of their own", () => {
    expect(readingOf("Dear Ana,\n\nIt is wool. Is it?\n– One\n– Two")).toMatchObject({ words: 9, sentences: 5 });
  });
  it("does not take a decimal for the end of a sentence", () => expect(readingOf("It is 1.5 m wide.").sentences).toBe(1));
  it("comes within two grades of the textbook sentence of grade 11.3", () => {
    // 13 words, 24 syllables: 0.39·13 + 11.8·24/13 − 15.59 = 11.3, the usual example beside the formula (from memory).
    expect(Math.abs(readingOf("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.").grade - 11.3)).toBeLessThan(2);
  });
  it("is harder for longer sentences and longer words", () => {
    const easy = readingOf("We test it first. Then we clean it.").grade;
    expect(readingOf("We test it first and then we clean it with a method that we both agree on before we begin.").grade).toBeGreaterThan(easy);
    expect(readingOf("Preliminary examination precedes professional intervention.").grade).toBeGreaterThan(easy);
  });
});
