import { describe, expect, it } from "vitest";
import { QUESTIONS, type QuestionId } from "../../../lib/trade/questions";
import { WORDING_FOR_TRADE } from "../../../lib/trade/wording-for-trade";
import { wordsIn } from "../../../lib/words/words";
import { wordingOf } from "../../../lib/ui/wording";

const ENGLISH = wordsIn("en-GB");
const IDS = Object.keys(QUESTIONS) as QuestionId[];

describe("wordingOf", () => {
  it("closes every question with “I’m not sure”", () => {
    for (const id of IDS) expect(wordingOf(id, {}, ENGLISH).options.at(-1), id).toEqual({ id: "unsure", label: "I’m not sure", hint: undefined });
  });
  it("asks a colleague about their customer's rug, with the same answers", () => {
    expect(wordingOf("boughtWhere", { reason: "trade" }, ENGLISH).ask).toBe("Where did your customer get it?");
    expect(wordingOf("boughtWhere", { reason: "trade" }, ENGLISH).options).toEqual(wordingOf("boughtWhere", {}, ENGLISH).options);
  });
  it("has words for every answer it offers, to everybody", () => {
    for (const id of IDS) for (const reason of ["trade", "routine"] as const) for (const o of wordingOf(id, { reason }, ENGLISH).options) expect(o.label, `${id} ${o.id}`).toMatch(/\S/);
  });
});

describe("WORDING_FOR_TRADE", () => {
  it("rewords only answers that exist", () => {
    for (const [id, wording] of Object.entries(WORDING_FOR_TRADE)) {
      expect(Object.keys(QUESTIONS[id as QuestionId].answers)).toEqual(expect.arrayContaining(Object.keys(wording.answers ?? {})));
    }
  });
});
