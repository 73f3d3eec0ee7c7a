import { describe, expect, it } from "vitest";
import { composeDraft } from "../../../lib/reply/draft";
import { moneyPhrase } from "../../../lib/reply/phrases";
import { checkLetter, knownOf } from "../../../lib/reply/promises/check";
import { answeredBy, askedQuestion } from "../../../lib/reply/questions-asked";
import { wordsIn } from "../../../lib/words/words";
import { CASES } from "./cases";
import { inputOf, range, worthless } from "./make";
import type { DraftInput } from "../../../lib/reply/pieces";

const ASKS = "What would it cost to clean?";
const asking = (input: DraftInput): DraftInput => ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, answers: { ...rug.answers, story: ASKS } })) });
const PRICE = range(150, 200, 250);
const priced = (rest: Parameters<typeof worthless>[0]) => worthless({ money: { currency: "GBP", clean: PRICE, cutDown: null, replace: range(900, 1200, 1500), valueToday: range(500, 700, 900) }, improvement: range(30, 60, 80), ...rest });

describe("a letter to somebody who asks what it costs", () => {
  it("says what a price goes by where there is none yet, and nothing of it where there is one or nobody asks", () => {
    const WHY = /You ask what it costs: that goes by its size/u;
    const told = (input: DraftInput) => composeDraft(input).text;
    const unpriced = priced({ money: null, advice: { action: "inspect-and-test", why: "", referTo: null, losses: [] } });
    expect(told(asking(unpriced))).toMatch(WHY);
    expect([told(unpriced), told(asking(priced({ advice: { action: "inspect-and-test", why: "", referTo: null, losses: [] } })))].filter((text) => WHY.test(text))).toEqual([]);
  });
  it.each(["leave-alone", "advise-claim-or-replacement", "advise-cut-down", "refer", "quote-with-limits"] as const)("tells them where we advise %s, worth it or not", (id) => {
    for (const beyondRepair of [0.1, 0.5, 0.9]) {
      const input = asking(priced({ beyondRepair, advice: { action: id, why: "", referTo: id === "refer" ? "a conservator" : null, losses: [] } }));
      const { text, paragraphs } = composeDraft(input);
      expect(text).toContain(moneyPhrase(PRICE, "GBP", wordsIn("en-GB")));
      expect(answeredBy(askedQuestion({ question: ASKS, rug: 0, hasPlace: false }, { said: paragraphs, rugs: 1 }), { begun: text, text })).not.toBeNull();
      expect(checkLetter(text, knownOf(input.assessments)).filter((f) => /You ask what it costs/u.test(f.sentence))).toEqual([]);
    }
  });
  it.each([["little comes back", 24.9], ["more does", 25]])("tells them once where it costs more than the rug is worth too, and is likely not worth it: %s", (_, high) => {
    for (const id of ["leave-alone", "advise-claim-or-replacement", "refer"] as const) {
      const { text } = composeDraft(asking(worthless({ money: { currency: "GBP", clean: PRICE, cutDown: null, replace: range(300, 400, 500), valueToday: range(80, 150, 220) }, improvement: range(5, 12, high), advice: { action: id, why: "", referTo: id === "refer" ? "a conservator" : null, losses: [] } })));
      expect(text.split(moneyPhrase(PRICE, "GBP", wordsIn("en-GB"))), id).toHaveLength(2);
    }
  });
  it("is told it in a long letter too, and nobody who asks nothing is", () => {
    for (const [name, made] of Object.entries(CASES)) {
      const input = inputOf(made);
      const asked = composeDraft(asking(input));
      if (composeDraft(input).paragraphs.some((p) => p.place === "price")) expect(asked.paragraphs.some((p) => p.place === "price" && p.stands), name).toBe(true);
      expect(composeDraft(input).text, name).not.toContain("You ask what it costs");
    }
  });
});
