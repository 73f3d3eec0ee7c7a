import { describe, expect, it } from "vitest";
import { fibreInLetter } from "../../../lib/reply/greater-first";
import { checkSentences, knownOf } from "../../../lib/reply/promises/check";
import type { FibreId } from "../../../lib/trade/fibres";
import { labelFinding } from "../../../lib/triage/findings-from-answers";
import { wordsIn } from "../../../lib/words/words";
import { assessmentOf } from "./make";
import { letterOf } from "./must-say/letter-of";

const WORDS = wordsIn("en-GB");
interface Told { readonly label?: string; readonly report?: Readonly<Record<string, number>> }
const judged = (id: FibreId, { label = "", report }: Told) => assessmentOf({ fibres: { [id]: 0.9 }, evidence: [
  ...labelFinding(label, "label-typed", "client"), ...(report ? [{ what: "laboratory", value: report, strength: "laboratory" as const }] : []),
] });
const called = (id: FibreId, told: Told, by: "all" | "label" = "all") => fibreInLetter(id, judged(id, told), { words: WORDS, by });

describe("a blend in a letter", () => {
  it.each<[string, FibreId, string]>([
    ["80% viscose 20% cotton", "cotton-viscose", "viscose with cotton"], ["20% cotton 80% viscose", "cotton-viscose", "viscose with cotton"], ["51% viscose 49% cotton", "cotton-viscose", "viscose with cotton"],
    ["50% viscose 50% cotton", "cotton-viscose", "cotton with viscose"], ["49% viscose 51% cotton", "cotton-viscose", "cotton with viscose"], ["viscose and cotton", "cotton-viscose", "cotton with viscose"],
    ["60% bamboo viscose 40% wool", "wool-viscose", "viscose with wool"], ["70% silk 30% wool", "wool-silk", "silk with wool"], ["70% viscose 30% silk", "silk-viscose", "viscose with silk"],
  ])("is named by the greater part first, by a label of %s", (label, id, name) => expect(called(id, { label })).toBe(name));
  it("keeps the order of its class where a label speaks of other fibres, or there is none", () => {
    expect(called("wool-viscose", { label: "70% silk 30% wool" })).toBe("wool with viscose");
    expect(called("wool-viscose", {})).toBe("wool with viscose");
  });
  it("goes by a laboratory before a label, which is quoted in its own order", () => {
    const told = { label: "60% wool 40% viscose", report: { wool: 20, viscose: 80 } };
    expect(called("wool-viscose", told)).toBe("viscose with wool");
    expect(called("wool-viscose", told, "label")).toBe("wool with viscose");
  });
  it("is a fibre of its own in either order to the check of promises", () => {
    const known = knownOf([{ assessment: judged("wool", {}) }]);
    for (const name of ["cotton with viscose", "viscose with cotton"]) expect(checkSentences(`Your rug is very likely ${name}.`, known).map(({ why }) => why).join(), name).toContain(`gives ${name} a chance`);
  });
  it("stands so in the sentence that answers", () => {
    const { text } = letterOf({ answers: { labelText: "80% viscose 20% cotton", changes: ["dirty"] }, enquiry: { wetNow: "no" } }).draft;
    expect(text).toContain("your rug is likely viscose with cotton.");
  });
  it("is one of a single fibre as it was", () => expect(called("wool", { label: "100% wool" })).toBe("wool"));
});
