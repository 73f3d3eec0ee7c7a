import { describe, expect, it } from "vitest";
import { LETTER_ENGLISH } from "../../../lib/trade/letter-language";
import { isOtherLanguage } from "../../../lib/triage/letter-language";
import { letterUrgency } from "../../../lib/triage/letter-signs";
import { HONEST_LETTERS, IN_OTHER_LANGUAGES } from "./letters-in-languages";

describe("isOtherLanguage", () => {
  it.each(Object.entries(IN_OTHER_LANGUAGES))("knows a letter in %s for one it cannot read", (_, text) => expect(isOtherLanguage(text)).toBe(true));
  it.each(HONEST_LETTERS)("takes an English letter for one: %s", (text) => expect(isOtherLanguage(text)).toBe(false));

  it("does not judge a few words in Latin letters, and needs one English word in ten of more", () => {
    const others = (n: number) => Array.from({ length: n }, (_, i) => `mokket${"abcdefghijklmnopqrs".charAt(i)}`).join(" ");
    expect(isOtherLanguage(others(LETTER_ENGLISH.leastWords - 1))).toBe(false);
    expect(isOtherLanguage(others(LETTER_ENGLISH.leastWords))).toBe(true);
    expect(isOtherLanguage(`the ${others(9)}`)).toBe(false);
    expect(isOtherLanguage(`the ${others(10)}`)).toBe(true);
  });
  it("judges nothing where there is no word", () => {
    expect(isOtherLanguage("")).toBe(false);
    expect(isOtherLanguage("170 × 240, 1998?")).toBe(false);
  });
  it("knows another script by a single word", () => expect(isOtherLanguage("помогите")).toBe(true));
});

describe("a letter whose words nobody looked for", () => {
  const german = IN_OTHER_LANGUAGES.German;
  it("is read today, until somebody has answered whether it is wet", () => {
    expect(letterUrgency(german, () => false)).toEqual({ level: "two-days", why: "Not in a language whose words we look for: read it today.", firstAid: "unread" });
    expect(letterUrgency(german, (q) => q === "wetNow")).toBeNull();
  });
  it("is read now where a word that is looked for stands in it all the same", () => {
    expect(letterUrgency(`${german} Everything is soaked!`, () => false)?.level).toBe("hours");
  });
});
