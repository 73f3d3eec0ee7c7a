import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import type { RugAnswers } from "../../../lib/trade/questions";
import type { MechanismId } from "../../../lib/triage/assessment";
import { action, inputOf, range } from "./make";

/** A letter about two rugs, the second of which is this. */
const letter = (mechanism: MechanismId, answers: RugAnswers, chance = 0.8) => {
  const rug = (what: MechanismId, told: RugAnswers, likely: number) => inputOf({ answers: told, sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "touch", value: "dry", strength: "told" }], mechanisms: { [what]: likely }, rest: { advice: action("quote-with-limits"), improvement: range(20, 35, 60) } } });
  const first = rug("dye-bleed", { changes: ["ran"] }, 0.8);
  return composeDraft({ ...first, assessments: [...first.assessments, ...rug(mechanism, answers, chance).assessments] }).text;
};

describe("the short answer of each of several rugs", () => {
  it.each<[MechanismId, RugAnswers, string]>([
    ["backing-failure", { changes: ["crumbles"] }, "Rug 2 calls for repair of its back, more than for cleaning."],
    ["insects", { changes: ["bare"] }, "Rug 2 calls for repair of the eaten or bare patches, more than for cleaning."],
    ["mould", { changes: ["smell"] }, "Whether and how rug 2 could be cleaned is a matter for later."],
    ["food-old", { changes: ["ring"] }, "Rug 2 we would clean, within the limits below."],
  ])("of %s offers cleaning only where the letter below does", (mechanism, answers, says) => expect(letter(mechanism, answers)).toContain(says));
  it("offers cleaning where a repair is not likely enough to speak of", () => expect(letter("backing-failure", { changes: ["crumbles"] }, 0.32)).toContain("Rug 2 we would clean"));
});

describe("the short answer of a rug that no money is to be spent on before it was seen", () => {
  const second = (advice: "advise-claim-or-replacement" | "quote-with-limits") => {
    const rug = (mechanism: MechanismId, says: typeof advice) => inputOf({ sketch: { fibres: { wool: 0.9 }, evidence: [{ what: "touch", value: "dry", strength: "told" }], mechanisms: { [mechanism]: 0.8 }, rest: { advice: action(says) } } });
    const first = rug("dye-bleed", "quote-with-limits");
    return composeDraft({ ...first, assessments: [...first.assessments, ...rug("soil-only", advice).assessments] }).text;
  };
  it("is that it should be seen, and not that we would clean it", () => {
    const text = second("advise-claim-or-replacement");
    expect(text).toContain("Rug 2 should be seen before anybody decides.");
    expect(text).toContain("Please do not spend money on cleaning before someone has seen it");
    expect(text).not.toContain("Rug 2 we would clean");
    expect(second("quote-with-limits")).toContain("Rug 2 we would clean, within the limits below.");
  });
});
