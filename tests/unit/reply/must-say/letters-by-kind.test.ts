import { describe, expect, it } from "vitest";
import { mostWords } from "../../../../lib/reply/length";
import { checkLetter, knownOf } from "../../../../lib/reply/promises/check";
import { readingOf } from "../../../../lib/reply/reading";
import { KINDS } from "./kinds";
import { letterOf, missing, plainly, said } from "./letter-of";
import { ALWAYS, NEVER } from "./lists";

describe.each(KINDS)("the letter for $kind", ({ told, must, never }) => {
  const { draft, rugs } = letterOf(told);
  const text = plainly(draft.text);
  it("says what it must", () => expect(missing(text, [...must, ...ALWAYS])).toEqual([]));
  it("says nothing that it must not", () => expect(said(text, [...never, ...NEVER])).toEqual([]));
  it("is short, plain and promises nothing", () => {
    expect(readingOf(text).words).toBeLessThanOrEqual(mostWords(1));
    expect(readingOf(text).grade).toBeLessThanOrEqual(8);
    expect(checkLetter(draft.text, knownOf(rugs))).toEqual([]);
  });
});
