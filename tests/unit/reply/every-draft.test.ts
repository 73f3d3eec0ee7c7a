import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { cleaning } from "../../../lib/reply/facts";
import { shippedParagraph } from "../../../lib/reply/library";
import { mostWords } from "../../../lib/reply/length";
import { PLACES } from "../../../lib/reply/paragraphs";
import { improvementPhrase } from "../../../lib/reply/phrases";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import { readingOf } from "../../../lib/reply/reading";
import { anyInput } from "./any-input";

const RUNS = 5000;
const count = (text: string, what: RegExp) => (text.match(what) ?? []).length;
/** Places that a letter leaves out as a whole before it grows too long. */
const CAN_WAIT = PLACES.filter((p) => p.spare?.from === 0).map((p) => p.id);
const canWait = (id: string) => CAN_WAIT.some((place) => place === shippedParagraph(id)?.place);

describe(`every draft of the program, over ${RUNS.toLocaleString("en")} made-up assessments`, () => {
  it("names what it rests on, gives every range, asks for a test before any cleaning, leaves no slot open and promises nothing", () => {
    const most = { words: 0, grade: 0 };
    fc.assert(fc.property(anyInput, (input) => {
      const { text, subject, paragraphs } = composeDraft(input);
      const rugs = input.assessments.map((r) => r.assessment);
      expect(count(text, /Going by |Your message is all we have so far/g)).toBe(rugs.length);
      for (const a of rugs) if (a.improvement) expect(text).toContain(improvementPhrase(a.improvement));
      expect(count(text, /test in a hidden corner/g)).toBeGreaterThanOrEqual(rugs.filter((a) => cleaning(a).some((m) => m.verdict !== "ruled-out")).length);
      expect(subject + text).not.toMatch(/[{}]|undefined|\bnull\b|NaN/);
      expect(checkLetter(text, knownOf(rugs.map((assessment) => ({ assessment }))))).toEqual([]);
      const words = readingOf(text).words;
      if (words > mostWords(rugs.length)) expect(paragraphs.filter((p) => canWait(p.id))).toEqual([]);
      if (rugs.length === 1) Object.assign(most, { words: Math.max(most.words, words), grade: Math.max(most.grade, readingOf(text).grade) });
    }), { numRuns: RUNS });
    expect(most.words).toBeLessThanOrEqual(350);
    expect(most.grade).toBeLessThanOrEqual(8);
  }, 240_000);
});
