import { describe, expect, it } from "vitest";
import { headlineOf } from "../../../lib/reply/headline";
import { mechanismIn } from "../../../lib/reply/mechanism-name";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import type { RugAnswers } from "../../../lib/trade/questions";
import { wordsIn } from "../../../lib/words/words";
import { action, assessmentOf } from "./make";

const WORDS = wordsIn("en-GB");
const judged = (answers: RugAnswers) => ({ ...assessmentOf({ fibres: { wool: 0.9 }, mechanisms: { "food-old": 0.96 }, rest: { advice: action("quote-with-limits") } }), findings: findingsFromAnswers(answers, {}).map((f) => ({ ...f, decibans: 0, staff: "", client: "" })) });

describe("mechanismIn", () => {
  it.each<[RugAnswers, string]>([
    [{ incidents: ["spill"], liquid: "ink" }, "stain of ink, paint or make-up"],
    [{ incidents: ["vomit"] }, "stain of vomit"],
    [{ incidents: ["vomit"], liquid: "vomit" }, "stain of vomit"],
    [{ incidents: ["spill"], liquid: "coffee-tea" }, "stain of coffee or tea"],
    [{ incidents: ["spill"], liquid: "wine" }, "stain of wine, red or white"],
    [{ incidents: ["spill", "vomit"], liquid: "ink" }, "stain of something spilled"],
    [{ incidents: ["spill"], liquid: "other" }, "stain of something spilled"],
    [{ incidents: ["spill"], liquid: "water" }, "stain of something spilled"],
    [{}, "stain of something spilled"],
  ])("calls a stain by what was told to have made it, fresh or old: %j", (answers, says) => {
    expect(mechanismIn(judged(answers), "food-old", WORDS)).toBe(`an old ${says}`);
    expect(mechanismIn(judged(answers), "food-fresh", WORDS)).toBe(`a fresh ${says}`);
  });
  it("calls everything else by the name of its table", () => {
    expect(mechanismIn(judged({ incidents: ["spill"], liquid: "ink" }), "water-mark", WORDS)).toBe("a water mark");
  });
  it("is what the desk gives as its reason", () => {
    const assessment = judged({ incidents: ["spill"], liquid: "ink" });
    const letter = toldByLetter({ title: "Grey", assessment, answers: {} }, { enquiry: {}, isTrade: false });
    expect(headlineOf(assessment, { letter, words: WORDS }).why).toMatch(/^An old stain of ink, paint or make-up is very likely\./);
  });
});
