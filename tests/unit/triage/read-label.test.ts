import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LABEL_NAMES } from "../../../lib/trade/label-names";
import { classOfLabel, pileOf, sayComponent } from "../../../lib/triage/label-class";
import { labelWords, percentNumber, wordKey } from "../../../lib/triage/label-text";
import { readLabel } from "../../../lib/triage/read-label";
import { readSellerWords } from "../../../lib/triage/seller-reading";

describe("wordKey", () => {
  it("takes away accents and case", () => {
    expect(wordKey("WEŁNA")).toBe(wordKey("welna"));
    expect(wordKey("Flößer")).toBe(wordKey("flosser"));
  });
  it.each([["V1SC0SE", "viscose"], ["VI5COSE", "viscose"], ["W00L", "wool"], ["SlLK", "silk"], ["İPEK", "ipek"]])("reads %s as %s", (seen, meant) => {
    expect(wordKey(seen)).toBe(wordKey(meant));
  });
  it("leaves numbers numbers", () => {
    expect(wordKey("100")).toBe("100");
    expect(wordKey("5m")).toBe("5m");
  });
});

describe("labelWords", () => {
  const seen = (text: string) => labelWords(text).map((w) => [w.gap, w.printed]);
  it("keeps a decimal comma or point, parts per cent signs and digits from letters", () => {
    expect(labelWords("52,5% Seide 47.5 %Viskose").map((w) => w.printed)).toEqual(["52.5", "%", "Seide", "47.5", "%", "Viskose"]);
    expect(labelWords("80WOLLE").map((w) => w.printed)).toEqual(["80", "WOLLE"]);
  });
  it("says what stands between words", () => {
    expect(seen("Pile: wool, silk\njute-back - end")).toEqual([["none", "Pile"], ["colon", "wool"], ["break", "silk"], ["line", "jute"], ["none", "back"], ["break", "end"]]);
  });
  it("reads the digits of other scripts", () => {
    expect(labelWords("۸۰٪ ٢٠٪ १००%").map((w) => w.printed)).toEqual(["80", "%", "20", "%", "100", "%"]);
  });
});

describe("percentNumber", () => {
  it.each([["100", 100], ["1OO", 100], ["l00", 100], ["8O", 80], ["52.5", 52.5], ["0", 0], ["101", null], ["1000", null], ["x", null], ["", null], ["4711", null]])("%s is %s", (word, value) => {
    expect(percentNumber(word)).toBe(value);
  });
});

describe("readLabel", () => {
  it("says where percentages do not make 100, allowing 1 for rounding", () => {
    expect(readLabel("60% wool 41% silk").doubts).toEqual([]);
    expect(readLabel("60% wool 42% silk").doubts).toEqual(["The percentages of the rug add up to 102, not 100."]);
    expect(readLabel("Pile: 60% wool 38% silk").doubts).toEqual(["The percentages of the pile add up to 98, not 100."]);
  });
  it("says where a percentage or a fibre stands alone", () => {
    expect(readLabel("80% wool 20%").doubts).toContain("A percentage of the rug stands without a fibre that could be read.");
    expect(readLabel("100% wool, silk").doubts).toContain("A fibre of the rug stands without its percentage.");
  });
  it("says where a name is a trade word, a plant or general", () => {
    expect(readLabel("100% art silk").doubts).toHaveLength(1);
    expect(readLabel("100% bamboo").doubts).toHaveLength(1);
    expect(readLabel("100% other fibres").doubts).toHaveLength(1);
  });
  it.each(["silk touch", "silk look", "silky", "Seidenoptik", "aspect soie", "effetto seta", "tacto seda"])("takes %s for no silk, but keeps that it suggests it", (text) => {
    expect(readLabel(text)).toEqual({ components: [], doubts: [], suggests: ["silk-look"] });
  });
  it("never takes lyocell, modal, cupro or ramie for viscose", () => {
    for (const name of LABEL_NAMES.filter((n) => ["lyocell", "modal", "cupro", "ramie"].includes(n.meaning))) {
      expect(classOfLabel(readLabel(`100% ${name.name}`))).not.toBe("viscose");
    }
  });
  it("wants a percentage beside short names that are common words elsewhere", () => {
    expect(readLabel("Made in Hallowmere by hand, to be kept in the dry").components).toEqual([]);
    expect(readLabel("100% in").components[0]?.fibres[0]?.fibre).toBe("linen");
    expect(readLabel("le tapis est lin et beau").components).toEqual([]);
  });
  it("reads codes only beside a percentage, and only as printed", () => {
    expect(readLabel("CO, PA and SE").components).toEqual([]);
    expect(readLabel("100% co").components).toEqual([]);
  });
  it("never breaks on any text, and gives only percentages from 0 to 100", () => {
    const pieces = fc.constantFrom("100%", "80 %", "%", "wool", "Seide", "绢", "pile", "Rücken:", "on", "with", ",", "\n", "1OO%", "silk look", "80/20", "٪", "\u0001", "CO");
    fc.assert(fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.array(pieces, { maxLength: 14 }).map((p) => p.join(" "))), (text) => {
      const reading = readLabel(text);
      for (const c of reading.components) {
        expect(c.fibres.length).toBeGreaterThan(0);
        for (const f of c.fibres) expect(f.percent === null || (f.percent >= 0 && f.percent <= 100)).toBe(true);
        expect(sayComponent(c)).not.toContain("null");
      }
      expect(() => classOfLabel(reading)).not.toThrow();
    }), { numRuns: 300 });
  });
  it("reads a label in two languages as one", () => {
    const once = readLabel("80% wool 20% silk");
    expect(readLabel("80% wool 20% silk / 80% laine 20% soie / 80% Wolle 20% Seide")).toEqual(once);
  });
});

describe("classOfLabel", () => {
  it.each([
    ["91% wool 9% silk", "wool"],
    ["90% wool 10% silk", "wool-silk"],
    ["60% polyester 40% wool", "polyester"],
    ["59% polyester 41% wool", "other"],
    ["71% polyester 29% viscose", "polyester"],
    ["70% polyester 30% viscose", "viscose"],
    ["100% mercerised cotton", "mercerised-cotton"],
    ["100% cashmere", "wool"],
    ["100% bamboo", "viscose"],
    ["100% other fibres", null],
    ["", null],
  ])("%s is %s", (text, says) => {
    expect(classOfLabel(readLabel(text))).toBe(says);
  });
});

describe("pileOf", () => {
  it("is the pile where the label says so, whatever else stands on it", () => {
    expect(pileOf(readLabel("Ground: cotton. Pile: silk"))?.fibres).toEqual([{ fibre: "silk", percent: null }]);
  });
  it("leaves out cotton and jute that are only the foundation of the whole, unless they make a class with it", () => {
    expect(pileOf(readLabel("70% wool 30% cotton"))?.fibres.map((f) => f.fibre)).toEqual(["wool"]);
    expect(pileOf(readLabel("70% viscose 30% cotton"))?.fibres.map((f) => f.fibre)).toEqual(["viscose", "cotton"]);
    expect(pileOf(readLabel("100% cotton"))?.fibres.map((f) => f.fibre)).toEqual(["cotton"]);
  });
  it("is nothing where only the ground is named", () => {
    expect(pileOf(readLabel("Backing: 100% jute"))).toBeNull();
  });
});

describe("readSellerWords", () => {
  it.each([
    ["genuine silk", "silk"], ["pure silk on cotton", "silk"], ["wool & silk", "wool-and-silk"], ["banana silk", "art-silk"], ["Kunstseide", "art-silk"], ["silk touch rug", "silk-look"],
    ["rayon", "viscose"], ["viscose, silk look", "viscose"], ["New Zealand wool", "wool"], ["tappeto di lana", "wool"], ["cotton", "cotton"], ["polypropylene", "other"], ["a bargain", null], ["", null],
  ])("%s is %s", (words, said) => {
    expect(readSellerWords(words)).toBe(said);
  });
});
