import { expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { headlineOf } from "../../../lib/reply/headline";
import { labelStands } from "../../../lib/reply/label-said";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import type { FibreId } from "../../../lib/trade/fibres";
import type { RugAnswers } from "../../../lib/trade/questions";
import { wordsIn } from "../../../lib/words/words";
import { assessmentOf, inputOf } from "./make";
import { letterOf } from "./must-say/letter-of";

const labelled = (says: FibreId, pile: FibreId) => ({ fibres: { [pile]: 0.9 }, evidence: [{ what: "label", value: { says, pile: null }, strength: "label-photo" as const }] });

it.each([
  ["cotton", "mercerised-cotton", "agrees"], ["mercerised-cotton", "cotton", "agrees"], ["cotton", "cotton", "agrees"], ["mercerised-cotton", "mercerised-cotton", "agrees"],
  ["cotton", "viscose", "differs"], ["mercerised-cotton", "silk", "differs"], ["viscose", "cotton-viscose", "differs"], ["wool", "wool-silk", "differs"], ["viscose", "lyocell", "differs"],
] as const)("of a label that says %s, and a pile that is %s, the label %s", (says, pile, stands) => {
  expect(labelStands(assessmentOf(labelled(says, pile)))).toBe(stands);
  expect(composeDraft(inputOf({ sketch: labelled(says, pile) })).text.includes("although the label says")).toBe(stands === "differs");
});

it.each([
  ["70% wool 30% polyester", true], ["74% polyester 26% wool", true], ["75% polyester 25% wool", false], ["60% cotton 40% polyester", true], ["100% kapok", false], ["70% wool 30% viscose", false], ["", false],
])("a letter to whoever typed the label “%s” speaks of a mixture: %s", (labelText, isMixture) => {
  const { text } = letterOf({ answers: { labelText, incidents: ["wear"] }, enquiry: { wetNow: "no" }, photos: [] }).draft;
  expect(text.includes("would be a mixture")).toBe(isMixture);
  if (isMixture) expect(text).not.toContain("cannot tell yet what");
});

const deskOn = (labelText: string) => {
  const answers: RugAnswers = { labelText, incidents: ["wear"] };
  const { rugs: [rug] } = letterOf({ answers, enquiry: { wetNow: "no" }, photos: [] });
  if (!rug) throw new Error("Expected the one rug that was told of but received none");
  const letter = toldByLetter({ ...rug, answers }, { enquiry: { wetNow: "no" }, isTrade: false });
  return headlineOf(rug.assessment, { letter, words: wordsIn("en-GB") }).why;
};
it.each(["55% polypropylene 45% polyester", "70% wool 30% polyester", "74% polyester 26% wool"])("the desk says of “%s”, as the letter does, that it is a mixture, and names no fibre first", (labelText) => {
  const why = deskOn(labelText);
  expect(why).toContain("The fibre is open: its label names a mixture, and how a mixture cleans only a test can show.");
  expect(why).not.toMatch(/comes first|viscose|silk/u);
});
it.each(["", "70% wool 30% viscose", "75% polyester 25% wool"])("the desk speaks of no mixture where the label “%s” names none that has no class", (labelText) => {
  expect(deskOn(labelText)).not.toContain("mixture");
});
