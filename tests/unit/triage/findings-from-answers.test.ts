import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { QUESTIONS, type QuestionId, type RugAnswers } from "../../../lib/trade/questions";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { anyRug } from "./belief-helpers";

const values = (rug: RugAnswers, enquiry = {}) => Object.fromEntries(findingsFromAnswers(rug, enquiry).map((f) => [f.what, f.value]));

describe("findingsFromAnswers", () => {
  it("makes a finding of every answer, named by its question, told by the client", () => {
    for (const [id, question] of Object.entries(QUESTIONS)) {
      const answer = Object.keys(question.answers)[0] as string;
      const given = { [id]: question.kind === "many" ? [answer] : answer };
      const findings = question.of === "rug" ? findingsFromAnswers(given, {}) : findingsFromAnswers({}, given);
      expect(findings).toEqual([{ what: id, value: given[id], strength: "told", from: "client" }]);
    }
  });
  it("makes none of what was not answered, of unsure, or of the story", () => {
    const unsure = Object.fromEntries((Object.keys(QUESTIONS) as QuestionId[]).filter((q) => QUESTIONS[q].of === "rug").map((q) => [q, QUESTIONS[q].kind === "many" ? ["unsure"] : "unsure"]));
    expect(findingsFromAnswers(unsure, { wetNow: "unsure", reason: "unsure" })).toEqual([]);
    expect(findingsFromAnswers({}, {})).toEqual([]);
    expect(findingsFromAnswers({ story: "It is pure silk, the label says viscose", labelFound: "unsure" }, {})).toEqual([]);
  });
  it("sorts several answers and drops unsure and doubles among them, so that their order says nothing", () => {
    expect(values({ changes: ["stiff", "browner", "unsure", "stiff"] })).toEqual({ changes: ["browner", "stiff"] });
  });
  it("says who told it, and what the workshop saw in a photo itself", () => {
    const [back, shine] = findingsFromAnswers({ shine: "none", back: "knots" }, {}, ["back"]).sort((a, b) => a.what.localeCompare(b.what));
    expect([back?.from, back?.strength, shine?.from, shine?.strength]).toEqual(["staff", "photo", "client", "told"]);
  });
});

describe("findingsFromAnswers, the label", () => {
  it("is read, part by part, as label wording typed by the client", () => {
    const [label] = findingsFromAnswers({ labelText: "Pile: 80% wool 20% viscose. Backing: 100% cotton" }, {});
    expect(label).toMatchObject({ what: "label", strength: "label-typed", value: { says: "wool-viscose", pile: "80 % wool, 20 % viscose", ground: "100 % cotton", fringe: null, doubts: null } });
  });
  it("is kept, saying nothing, where no fibre can be read in it", () => {
    expect(values({ labelText: "ქართული" })["label"]).toMatchObject({ says: null, text: "ქართული", pile: null });
  });
  it("carries its doubts and what it only suggests", () => {
    expect(values({ labelText: "70% wool 20% silk" })["label"]).toMatchObject({ doubts: "The percentages of the rug add up to 90, not 100." });
    expect(values({ labelText: "silk touch polyester" })["label"]).toMatchObject({ says: "polyester", suggests: "silk-look" });
  });
  it("says so where there is no label", () => {
    expect(values({ labelFound: "none" })).toEqual({ labelFound: "none" });
    expect(values({ labelFound: "none", labelText: "100% wool" })).toMatchObject({ label: { says: "wool" } });
    expect(values({ labelFound: "none", labelText: "100% wool" })).not.toHaveProperty("labelFound");
  });
  it.each(["", "   "])("is none where the text is %j", (labelText) => {
    expect(values({ labelText })).toEqual({});
  });
});

describe("findingsFromAnswers, size and price", () => {
  it("gives the price by the square metre where the size is known", () => {
    expect(values({ price: 1500, currency: "EUR", boughtYear: 2019, widthCm: 200, lengthCm: 300, boughtWhere: "bazaar" })).toEqual({
      boughtWhere: "bazaar", boughtYear: 2019, size: { widthCm: 200, lengthCm: 300, m2: 6 },
      "price-per-m2": { amount: 250, priceTotal: 1500, currency: "EUR", year: 2019, place: "bazaar" },
    });
  });
  it("keeps a price without a size as a price, and a size without a price", () => {
    expect(values({ price: 1500 })).toEqual({ price: { priceTotal: 1500, currency: null, year: null, place: null } });
    expect(values({ widthCm: 100, lengthCm: 50 })).toEqual({ size: { widthCm: 100, lengthCm: 50, m2: 0.5 } });
    expect(values({ widthCm: 100 })).toEqual({});
  });
  it("makes no price of 0: a gift has none", () => {
    expect(values({ price: 0, widthCm: 100, lengthCm: 100 })).toEqual({ size: { widthCm: 100, lengthCm: 100, m2: 1 } });
  });
});

describe("findingsFromAnswers, what the seller said", () => {
  it.each([
    [{ sellerSaid: "silk", sellerWords: "banana silk" }, "silk"],
    [{ sellerSaid: "other", sellerWords: "banana silk" }, "art-silk"],
    [{ sellerSaid: "unsure", sellerWords: "New Zealand wool" }, "wool"],
    [{ sellerWords: "hand-knotted wool and silk" }, "wool-and-silk"],
    [{ sellerSaid: "other", sellerWords: "something lovely" }, "other"],
    [{ sellerWords: "something lovely" }, undefined],
  ] as [RugAnswers, string | undefined][])("%j is %s", (rug, expected) => {
    expect(values(rug)["sellerSaid"]).toBe(expected);
  });
});

describe("findingsFromAnswers, for any answers", () => {
  it("never breaks and never says the same kind twice", () => {
    fc.assert(fc.property(anyRug, (rug) => {
      const whats = findingsFromAnswers(rug, {}).map((f) => f.what);
      expect(new Set(whats).size).toBe(whats.length);
    }));
  });
});
