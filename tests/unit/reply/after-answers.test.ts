import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { composeFollowing } from "../../../lib/reply/following";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import type { DraftInput } from "../../../lib/reply/pieces";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import { anyReason, anyRug } from "./any-answers";
import { WORKSHOP } from "./make";
import { letterOf, plainly } from "./must-say/letter-of";

/** What the program judges of these rugs, to be written about. */
const judged = (rugs: readonly RugAnswers[], enquiry: EnquiryAnswers): DraftInput => ({
  assessments: rugs.map((answers) => ({ title: "Grey, 170 × 240", answers, assessment: letterOf({ answers, enquiry }).rugs[0]!.assessment })),
  client: { name: "Ana Example", isTrade: false }, workshop: WORKSHOP, enquiry,
});
/** What may be told after the first letter, of the first rug or of all. */
const anyChange = fc.constantFrom<{ readonly rug?: Partial<RugAnswers>; readonly enquiry?: EnquiryAnswers }>(
  { enquiry: { wetNow: "no" } }, { enquiry: { wetNow: "damp" } }, { rug: { labelText: "100% wool" } }, { rug: { labelText: "100% viscose" } }, { rug: { changes: ["spots"] } },
  { rug: { changes: ["bare"] } }, { rug: { changes: ["smell"] } }, { rug: { age: "antique" } }, { rug: { incidents: ["flood"] } },
);

describe("a following letter, once an answer of theirs is another", () => {
  it("passes its own check, offers no cleaning without its limits, and begins no judgement with what the evidence is worth, over 150 enquiries judged by the program", () => {
    const seen = { cleans: 0, limits: 0 };
    fc.assert(fc.property(fc.array(anyRug, { minLength: 1, maxLength: 2 }), anyReason, anyChange, (rugs, enquiry, { rug = {}, enquiry: told = {} }) => {
      const before = composeDraft(judged(rugs, enquiry));
      const after = judged(rugs.map((r, at) => (at === 0 ? { ...r, ...rug } : r)), { ...enquiry, ...told });
      const { text } = composeFollowing(after, { told: { text: before.text, paragraphs: [...before.paragraphs, ...before.leftOut] }, came: { message: false, answers: true, photos: 0, tested: false } });
      const letter = plainly(text);
      expect(checkLetter(text, knownOf(after.assessments), [before.text])).toEqual([]);
      if (letter.includes("within the limits below")) expect(letter).toMatch(/test in a hidden corner/);
      expect(letter).not.toMatch(/(?:^|\n)(?:Words and photos can mislead)/);
      seen.cleans += Number(letter.includes("within the limits below"));
      seen.limits += Number(letter.includes("can mislead"));
    }), { numRuns: 150 });
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(0);
  }, 120_000);
});

describe("a following letter of two or three rugs", () => {
  const anyWet = fc.constantFrom<EnquiryAnswers>({ wetNow: "wet", reason: "just-happened" }, { wetNow: "no", reason: "older-trouble" });
  const anyNext = fc.oneof(fc.constant<{ readonly rug?: Partial<RugAnswers>; readonly enquiry?: EnquiryAnswers }>({}), anyChange);
  const anyTrouble = fc.oneof(anyRug, fc.constantFrom<RugAnswers>({ incidents: ["flood"], since: "day" }, { liquid: "wine", since: "hour" }));

  it("greets once and signs once, whatever was told since, over 30 sequences of three letters", () => {
    const seen = { quiet: 0 };
    fc.assert(fc.property(fc.array(anyTrouble, { minLength: 2, maxLength: 3 }), anyWet, fc.array(anyNext, { minLength: 2, maxLength: 2 }), (rugs, enquiry, changes) => {
      let [now, asked, before] = [rugs, enquiry, composeDraft(judged(rugs, enquiry))];
      for (const { rug = {}, enquiry: told = {} } of changes) {
        [now, asked] = [now.map((r, at) => (at === 0 ? { ...r, ...rug } : r)), { ...asked, ...told }];
        before = composeFollowing(judged(now, asked), { told: { text: before.text, paragraphs: [...before.paragraphs, ...before.leftOut] }, came: { message: true, answers: false, photos: 0, tested: false } });
        for (const once of [/^Dear Ana Example,$/gm, /^Mira Quill$/gm]) expect(before.text.match(once)).toHaveLength(1);
        seen.quiet += Number(!before.text.includes("Rug 1"));
      }
    }), { numRuns: 30 });
    expect(seen.quiet).toBeGreaterThan(0);
  }, 120_000);
});
