import { createElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { toldByLetter } from "../../../lib/reply/told-by-letter";
import { belief, told } from "../triage/told";
import { judgeMethods } from "../../../lib/triage/methods";
import { Expected, Prospects, whyUnstated } from "../../../lib/ui/prospects";
import { wordsIn } from "../../../lib/words/words";
import { assessmentOf, range } from "../reply/make";

describe("the methods at the desk", () => {
  const shown = (wetByWords: "whole" | null, answers: Parameters<typeof told>[0] = {}) => {
    const assessment = { ...assessmentOf({ fibres: { wool: 0.9 } }), methods: judgeMethods(told(answers), belief({ wool: 1 }), () => 0) };
    const letter = toldByLetter({ title: "A rug", answers: {}, assessment, wetByWords }, { enquiry: {}, isTrade: false });
    return renderToStaticMarkup(createElement(Prospects, { assessment, letter, currencyNow: null, as: "h3", words: wordsIn("en-GB") })).replace(/<[^>]*>/gu, " ").replace(/\s+/gu, " ");
  };
  it("go on in a small letter after a verdict that was put before a sentence", () => {
    const assessment = assessmentOf({ fibres: { wool: 0.9 }, rest: { methods: [{ method: "none", verdict: "suitable", why: "It costs nothing, and the stain stays." }] } });
    const letter = toldByLetter({ title: "A rug", answers: {}, assessment }, { enquiry: {}, isTrade: false });
    expect(renderToStaticMarkup(createElement(Prospects, { assessment, letter, currencyNow: null, as: "h3", words: wordsIn("en-GB") }))).toContain("Suitable:</b> it costs nothing, and the stain stays.");
  });
  it("call leaving a wet rug as it is not suitable, and say why", () => {
    expect(shown(null, { wetNow: "wet" })).toContain("Leaving it as it is Not suitable: it has to dry first");
    expect(shown(null)).toContain("Leaving it as it is Always possible:");
  });
  it("say nothing of leaving it as long as only their own words tell of water", () => {
    expect(shown("whole")).toContain("until we know whether it is wet, nothing is tried");
    expect(shown("whole")).not.toContain("Leaving it as it is");
  });
});

describe("amounts at the desk in the currency of an earlier day", () => {
  it("say in which currency they come when judged anew, and lead to where that is done", () => {
    const assessment = assessmentOf({ fibres: { wool: 0.9 }, rest: { money: { currency: "GBP", clean: range(90, 110, 150), cutDown: null, replace: range(500, 900, 1600), valueToday: null } } });
    const letter = toldByLetter({ title: "A rug", answers: {}, assessment }, { enquiry: {}, isTrade: false });
    const shown = (currencyNow: string | null) => renderToStaticMarkup(createElement(Prospects, { assessment, letter, currencyNow, as: "h3", words: wordsIn("en-GB") }));
    expect(shown("USD")).toContain('Judged anew, it comes in USD: the owner has open enquiries judged anew under <a href="/desk/settings">Settings</a>.');
    expect(shown(null)).not.toContain("Judged anew");
  });
});

describe("the years at the desk", () => {
  it.each([["insects", "Only once no insects live in it, as the letter says: Between 2 and 6 years"], ["mould", "Only once the mould is treated and the rug is dry, as the letter says: Between 2 and 6 years"], ["matting", "Life left in ordinary use Between 2 and 6 years"]] as const)("stand under what has to hold first, with %s", (mechanism, says) => {
    const assessment = assessmentOf({ fibres: { wool: 0.9 }, evidence: [{ what: "label", value: "wool", strength: "label-typed" }], mechanisms: { [mechanism]: 0.9 }, rest: { lifeYears: { low: 2, median: 4, high: 6 } } });
    const letter = toldByLetter({ title: "A rug", answers: {}, assessment }, { enquiry: {}, isTrade: false });
    const shown = renderToStaticMarkup(createElement(Prospects, { assessment, letter, currencyNow: null, as: "h3", words: wordsIn("en-GB") })).replace(/<[^>]*>/gu, " ").replace(/\s+/gu, " ");
    expect(shown).toContain(says);
  });
});

describe("what is to be expected, at the desk", () => {
  it.each([[true, "Open after flood or waste water: the letter tells nothing yet of gain, harm or years. Beyond economic repair, in the judgement of Nell Harrow"], [false, "harm or years. Not beyond economic repair, in the judgement of Nell Harrow"], [null, "harm, worth or years."]] as const)("tells after a flood the verdict of an inspection, where there is one (%s)", (isBeyondRepair, says) => {
    const assessment = assessmentOf({ fibres: { wool: 0.9 }, rest: { improvement: range(5, 20, 40) } });
    const inspection = isBeyondRepair === null ? null : { by: "Nell Harrow", on: "29 November 2026", isBeyondRepair };
    const letter = toldByLetter({ title: "A rug", answers: { incidents: ["flood"] }, assessment, inspection }, { enquiry: {}, isTrade: false });
    const shown = renderToStaticMarkup(createElement(Expected, { assessment, letter, words: wordsIn("en-GB") })).replace(/<[^>]*>/gu, " ").replace(/\s+/gu, " ");
    expect(shown).toContain(says);
    expect(shown.includes("in the judgement of")).toBe(inspection !== null);
  });
  it("shows the chance that it is beyond economic repair, and where no damage was told and no cleaning is asked for says why not", () => {
    const shown = (reason: string, change = "none") => {
      const assessment = assessmentOf({ fibres: { wool: 0.9 }, evidence: [{ what: "reason", value: reason, strength: "told" }, { what: "changes", value: [change], strength: "told" }], rest: { beyondRepair: 0.38 } });
      const letter = toldByLetter({ title: "A rug", answers: {}, assessment }, { enquiry: {}, isTrade: false });
      return renderToStaticMarkup(createElement(Expected, { assessment, letter, words: wordsIn("en-GB") })).replace(/<[^>]*>/gu, " ").replace(/\s+/gu, " ");
    };
    expect(shown("routine", "stiff")).toMatch(/Beyond economic repair .*38/);
    for (const change of ["dirty", "none"]) expect(shown("routine", change)).toMatch(/^(?!.*Beyond economic repair).*Work not worth its cost .*38/);
    expect(shown("routine")).not.toContain("is not told");
    expect(shown("mis-sold")).toContain("Whether it is beyond economic repair is not told: no damage was told of or measured, and no cleaning was asked for.");
    expect(shown("mis-sold")).not.toMatch(/38/);
  });
  it.each([[true, "Beyond"], [false, "Not beyond"]] as const)("shows the judgement of who inspected it in place of that chance (beyond: %s)", (isBeyondRepair, says) => {
    const assessment = assessmentOf({ fibres: { wool: 0.9 }, rest: { beyondRepair: 0.38, why: { beyondRepair: "It cannot be told." } } });
    const letter = toldByLetter({ title: "A rug", answers: {}, assessment, inspection: { by: "Ivo Castellane", on: "24 November 2026", isBeyondRepair } }, { enquiry: {}, isTrade: false });
    const shown = renderToStaticMarkup(createElement(Expected, { assessment, letter, words: wordsIn("en-GB") })).replace(/<[^>]*>/gu, " ").replace(/\s+/gu, " ");
    expect(shown).toContain(`${says} economic repair, in the judgement of Ivo Castellane, who inspected it on 24 November 2026.`);
    expect(shown).not.toMatch(/38|provisional|not inspected|cannot be told/);
  });
});

describe("whyUnstated", () => {
  it("says a reason once that holds for several expectations, and keeps what differs, in their order", () => {
    expect(whyUnstated({ improvement: "Nothing changed.", worse: "Nothing changed.", beyondRepair: "It is mended." })).toEqual(["Nothing changed.", "It is mended."]);
  });
  it("says nothing where all is stated, and leaves reasons of other figures to their own places", () => {
    expect(whyUnstated({})).toEqual([]);
    expect(whyUnstated({ money: "The size is not known." })).toEqual([]);
  });
});
