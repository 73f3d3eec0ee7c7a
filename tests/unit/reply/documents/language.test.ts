import { describe, expect, it } from "vitest";
import { RIGHTS } from "../../../../lib/trade/rights";
import { CAUTIONS, LEFT_AS_IT_IS, METHOD_IDS, METHOD_SENTENCES, METHODS } from "../../../../lib/trade/care";
import { CARE_WORDS } from "../../../../lib/trade/care-words";
import { NOT_STATED } from "../../../../lib/trade/not-stated";
import { methodWhyIn, notStatedIn } from "../../../../lib/words/judged";
import { wordsIn } from "../../../../lib/words/words";
import { allWordsOf, documentsIn, OWN } from "./made";

const MARKED = { locale: "en-XA", areaUnit: "m2" } as const;
const outside = (text: string): string => { const rest = text.replace(/⟦[^⟦⟧]*⟧/gu, ""); return rest === text ? text : outside(rest); };
/** Besides their own words: days and sources of law, which are data, and the signs of units. */
const DATA = [...Object.values(OWN), ...Object.values(RIGHTS).flat().map((r) => r.source)];
const DAY = /\d{1,2} [A-Z][a-z]+ \d{4}/gu;
const SIGN = /(?<=\d\s)(?:cm|m)(?!\p{L})/gu;
const unmarked = (text: string) => DATA.reduce((rest, own) => rest.replaceAll(own, ""), outside(text)).replace(DAY, "").replace(SIGN, "");

describe("documents in the marked locale", () => {
  it.each(documentsIn(MARKED))("$name: says no sentence outside the catalogue", ({ document }) => {
    const said = allWordsOf(document);
    expect(said.length).toBeGreaterThan(10);
    for (const text of said) expect(unmarked(text), text).not.toMatch(/\p{L}/u);
  });
  it("sees a sentence that stands outside", () => expect(unmarked("⟦By ⟦far⟧⟧ the best, ⟦x⟧ 170 cm.")).toMatch(/the best/u));
});

describe("documents of a workshop in the United States", () => {
  const all = documentsIn({ locale: "en-US", areaUnit: "sqft" });
  it.each(all)("$name: tells no metre", ({ document }) => {
    for (const text of allWordsOf(document)) expect(text).not.toMatch(/\b(?:cm|mm|m²|cm²|met(?:re|er)s?|centimet(?:re|er)s?)\b|\d\s?m\b|m²/iu);
  });
  it("writes days and sides as they are written there", () => {
    const text = all.flatMap(({ document }) => allWordsOf(document)).join("\n");
    expect(text).toMatch(/November 28, 2026/);
    expect(text).toMatch(/5 ft 7 in × 7 ft 10 in/);
    expect(text).not.toMatch(/\d{1,2} November/);
  });
  it("tells metres elsewhere, so that the check can fail", () => {
    const text = documentsIn({ locale: "en-GB", areaUnit: "m2" }).flatMap(({ document }) => allWordsOf(document)).join("\n");
    expect(text).toMatch(/170 × 240 cm[\s\S]*2\.0 m of binding/);
  });
});

describe("sentences an assessment holds in English", () => {
  const marked = wordsIn("en-XA");
  it("on methods are read back whole, whichever they are", () => {
    for (const method of METHOD_IDS) {
      const { fine, test, forbidden } = METHODS[method];
      const sentences = [
        ...CARE_WORDS.filter((w) => w.method === method).map((w) => METHOD_SENTENCES[w.verdict === "suitable" ? "suitable" : "test"](w.say)),
        METHOD_SENTENCES.suitable(fine), METHOD_SENTENCES.test(test), METHOD_SENTENCES["ruled-out"](forbidden), METHOD_SENTENCES["ruled-out-pile"](forbidden, "wool and silk", "45 %"),
        ...CAUTIONS.flatMap(({ why }) => [METHOD_SENTENCES.seen(why), METHOD_SENTENCES["ruled-out"](why)]), ...LEFT_AS_IT_IS.map(({ say, verdict }) => METHOD_SENTENCES[verdict === "ruled-out" ? "left-not" : "left-but"](say)), METHOD_SENTENCES.left(fine),
      ];
      for (const sentence of sentences) {
        expect(methodWhyIn(wordsIn("en-GB"), method, sentence)).toBe(sentence);
        expect(unmarked(methodWhyIn(marked, method, sentence)), sentence).not.toMatch(/\p{L}/u);
      }
    }
  });
  it("on what is not stated are read back whole", () => {
    for (const sentence of Object.values(NOT_STATED)) expect(notStatedIn(marked, sentence)).toBe(`⟦${sentence}⟧`);
  });
  it("of an older wording stay as they are", () => {
    expect(methodWhyIn(marked, "dusting", "Fine by us.")).toBe("Fine by us.");
    expect(notStatedIn(marked, "Nobody knows.")).toBe("Nobody knows.");
  });
});
