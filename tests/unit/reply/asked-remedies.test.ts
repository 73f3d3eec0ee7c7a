import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import { asksOfKind } from "../../../lib/reply/questions-asked";
import { CASES } from "./cases";
import { inputOf } from "./make";

const REMEDIES = [
  "Can I put vinegar on it until you come?", "Can I bleach it?", "Should I try some baking soda?", "Is it ok to use washing-up liquid?", "Would salt help?", "May we dab white wine on it?", "Could I just shampoo it?",
  "What about a carpet cleaner?", "Is there any harm in bicarbonate of soda?", "Should we sprinkle talcum powder on it?",
];
const FLAMES = ["Can I burn a thread to find out?", "Should I hold a lighter to a bit of the fringe?", "Is it ok to singe a fibre?", "Could we do a burn test?", "May I set light to a strand?"];
const NEITHER = [
  "Can it be saved?", "My neighbour put vinegar on it. Can it be saved?", "We bleached the floor beside it. What does it cost?", "Can you tell what the shampoo has done?", "Is the soap still in it?", "It has a burn from the fire, can you mend it?",
  "Is it silk?", "Do you use bleach?", "Can you match the colour?", "Will the salt come out?", "Should I wash it again to get the soap out?", "Can you get the vinegar out again?",
];

describe("asking leave to do something to it", () => {
  it.each(REMEDIES)("%s: something to put on it", (q) => expect([asksOfKind([q], "remedy"), asksOfKind([q], "flame")]).toEqual([true, false]));
  it.each(FLAMES)("%s: a flame", (q) => expect([asksOfKind([q], "remedy"), asksOfKind([q], "flame")]).toEqual([false, true]));
  it.each(NEITHER)("%s: neither", (q) => expect([asksOfKind([q], "remedy"), asksOfKind([q], "flame")]).toEqual([false, false]));

  it("is answered in the letter, once, in words that the check lets pass, and by nothing where nobody asks", () => {
    for (const [name, made] of Object.entries(CASES)) {
      const input = inputOf(made);
      const asking = (story: string) => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { ...rug.answers, story } })) });
      const { text } = composeDraft(asking("Can I put vinegar on it until you come? Can I burn a thread to find out?"));
      expect(text.match(/please put nothing of the kind on it/gu), name).toHaveLength(1);
      expect(text.match(/please hold none to it/gu), name).toHaveLength(1);
      const known = knownOf(input.assessments);
      expect(checkLetter(text, known).map((f) => f.sentence).filter((s) => /You ask about|nothing of the kind|hold none|set light|one mark out/u.test(s)), name).toEqual([]);
      expect(composeDraft(input).text, name).not.toMatch(/You ask about/u);
    }
  });
});
