import { expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { labelStands } from "../../../lib/reply/label-said";
import type { FibreId } from "../../../lib/trade/fibres";
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
