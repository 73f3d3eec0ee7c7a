import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COLOUR_WORDS, colourWord } from "../../../lib/reply/colour-word";
import { titleIn } from "../../../lib/reply/rug-title";
import { wordsIn } from "../../../lib/words/words";
import { MAX_SENTENCE_CHARS, rugTitleOf, sentenceOf, titleOf } from "../../../lib/reply/describe";
import { QUESTIONS, type RugAnswers } from "../../../lib/trade/questions";
import type { AreaUnit } from "../../../lib/words/measures";

const GREY = [{ hex: "#ffffff", share: 0.2 }, { hex: "#8a8f98", share: 0.6 }];

describe("colourWord", () => {
  // Colours that anyone would call so.
  it.each([["#000000", "black"], ["#ffffff", "white"], ["#808080", "grey"], ["#8a8f98", "grey"], ["#c00000", "red"], ["#0a3d91", "blue"], ["#1f6b2f", "green"], ["#ffd500", "yellow"], ["#5b3a1e", "brown"],
    ["#d8c7a3", "beige"], ["#f7efdc", "cream"], ["#ff8c1a", "orange"], ["#6a2c8f", "purple"], ["#ff8fb8", "pink"], ["#2aa7b5", "turquoise"]])("%s is %s", (hex, word) => expect(colourWord(hex)).toBe(word));
  it("has a word of its list for every colour", () => fc.assert(fc.property(fc.integer({ min: 0, max: 0xffffff }), (n) => {
    expect(COLOUR_WORDS).toContain(colourWord(`#${n.toString(16).padStart(6, "0")}`));
  })));
  it.each(["grey", "#fff", "#12345g", ""])("refuses %s", (text) => expect(() => colourWord(text)).toThrow(/Expected a colour/));
});

describe("rugTitleOf", () => {
  it("names the largest colour and the size", () => expect(rugTitleOf({ answers: { widthCm: 170, lengthCm: 240.4 }, colours: GREY })).toBe("Grey, 170 × 240"));
  it("does without what is not known", () => {
    expect(rugTitleOf({ answers: {}, colours: GREY })).toBe("Grey rug");
    expect(rugTitleOf({ answers: { widthCm: 90, lengthCm: 160 }, colours: [] })).toBe("Rug, 90 × 160");
    expect(rugTitleOf({ answers: { widthCm: 90 }, colours: [] })).toBe("A rug");
  });
});

describe("titleOf", () => {
  const title = (answers: RugAnswers, enquiry = {}, areaUnit: AreaUnit = "m2") => titleOf({ answers, enquiry, colours: GREY }, { locale: "en-GB", areaUnit });
  it("says what happened, then what was put on it", () => {
    expect(title({ widthCm: 170, lengthCm: 240, incidents: ["pet-urine"], treatments: ["rubbed", "household-cleaner"] })).toBe("Grey 170 × 240, urine, then household cleaner");
  });
  it("names the liquid of a spill, and the gravest of several things", () => {
    expect(title({ incidents: ["spill"], liquid: "wine" })).toBe("Grey rug, wine");
    expect(title({ incidents: ["wear", "flood"] })).toBe("Grey rug, flood water");
  });
  it("tells the size in feet where the workshop counts so", () => {
    expect(title({ widthCm: 244, lengthCm: 305, incidents: ["spill"], liquid: "wine" }, {}, "sqft")).toBe("Grey 8 ft × 10 ft, wine");
    expect(title({ incidents: ["spill"], liquid: "wine" }, {}, "sqft")).toBe("Grey rug, wine");
  });
  it("does not say a cleaning twice", () => expect(title({ incidents: ["washed-professional"], treatments: ["professional-wet"] })).toBe("Grey rug, cleaned by a cleaner"));
  it("falls back to the change, then to the reason", () => {
    expect(title({ changes: ["ring"] }, { reason: "older-trouble" })).toBe("Grey rug, a ring");
    expect(title({}, { reason: "what-is-it" })).toBe("Grey rug, what is it made of?");
    expect(title({ sellerSaid: "silk" }, { reason: "mis-sold" })).toBe("Grey rug, sold as silk?");
    expect(title({})).toBe("Grey rug");
  });
  it("calls a cleaner's enquiry so, by the change first", () => {
    expect(title({ incidents: ["washed-professional"], changes: ["browner"] }, { reason: "trade" })).toBe("A cleaner’s customer’s rug, turned browner");
  });
});

describe("sentenceOf", () => {
  it("sets the label against the seller and tells what is seen", () => {
    expect(sentenceOf({ answers: { labelText: "100 % viscose", sellerSaid: "silk", changes: ["stiff", "paler"] }, enquiry: {} })).toBe("Label 100 % viscose, sold as silk. Paler, stiff.");
  });
  it("says first what is wet", () => expect(sentenceOf({ answers: { changes: ["ring"] }, enquiry: { wetNow: "wet" } })).toBe("Wet now, a ring."));
  it("says that nothing was answered, though photos may tell something", () => expect(sentenceOf({ answers: {}, enquiry: {} })).toBe("Nothing was answered about it yet."));
  it("says so of words of their own alone too, and not of somebody who has answered something", () => {
    expect(sentenceOf({ answers: { story: "It has faded." }, enquiry: {} })).toBe("Nothing was answered about it yet.");
    const known = "Neither its label, nor what it was sold as, nor a change in it is known.";
    expect(sentenceOf({ answers: { incidents: ["spill"] }, enquiry: {} })).toBe(known);
    expect(sentenceOf({ answers: {}, enquiry: { wetNow: "no" } })).toBe(known);
    expect(sentenceOf({ answers: { labelFound: "unsure" as never, widthCm: 170 }, enquiry: {} })).toBe(known);
    expect(known.length).toBeLessThanOrEqual(MAX_SENTENCE_CHARS);
  });
  it("has room for 110 characters, whatever was answered", () => {
    const some = (q: "changes" | "sellerSaid") => fc.constantFrom(...Object.keys(QUESTIONS[q].answers));
    fc.assert(fc.property(fc.string({ maxLength: 2000 }), fc.uniqueArray(some("changes"), { maxLength: 9 }), some("sellerSaid"), (labelText, changes, sellerSaid) => {
      const sentence = sentenceOf({ answers: { labelText, changes, sellerSaid } as RugAnswers, enquiry: { wetNow: "damp" } });
      expect(sentence.length).toBeLessThanOrEqual(MAX_SENTENCE_CHARS);
      expect(sentence).toMatch(/^\S.*\.$/u);
      expect(sentence).not.toMatch(/[\n\r]/);
    }));
  });
});

describe("titleIn", () => {
  const METRIC = wordsIn("en-GB");
  it("leaves a title as it is kept where nothing is to be said otherwise", () => {
    for (const title of ["Grey, 170 × 240", "Grey rug", "Rug, 90 × 160", "A rug", "Grandmother’s rug, the red one"]) expect(titleIn(title, METRIC, "m2")).toBe(title);
  });
  it("tells the size in feet where the workshop counts so", () => expect(titleIn("Grey, 170 × 240", wordsIn("en-US"), "sqft")).toBe("Grey, 5 ft 7 in × 7 ft 10 in"));
  it("takes its words from the catalogue", () => {
    expect(["Grey, 170 × 240", "Grey rug", "Rug, 90 × 160", "A rug"].map((t) => titleIn(t, wordsIn("en-XA"), "m2"))).toEqual(["⟦⟦grey⟧, 170 × 240⟧", "⟦⟦grey⟧ rug⟧", "⟦Rug, 90 × 160⟧", "⟦A rug⟧"]);
  });
  it("has a word of the catalogue for every colour", () => {
    for (const colour of COLOUR_WORDS) expect(titleIn(`${colour} rug`, wordsIn("en-XA"), "m2")).toBe(`⟦⟦${colour}⟧ rug⟧`);
  });
});
