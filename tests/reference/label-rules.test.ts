import { describe, expect, it } from "vitest";
import { LABEL_RULES, OTHER_FIBRES_MOST_PERCENT, US_NAMED_LEAST_PERCENT, VIRGIN_WOOL_LEAST_PERCENT, type LabelRuleId } from "../../lib/trade/label-rules";
import { readLabel } from "../../lib/triage/read-label";

/** "order!" is a broken rule, "pure" one that applies; what a label leaves unsaid of its parts is tested apart. */
const rules = (text: string) => readLabel(text).rules.filter((r) => !r.rule.startsWith("pile-") && r.rule !== "face-us").map((r) => `${r.rule}${r.broken ? "!" : ""}`);

describe("Regulation (EU) No 1007/2011, original text, as findings on a label", () => {
  it("Art. 7: 100 %, pure and all are for one fibre alone", () => {
    for (const text of ["100% wool", "pure wool", "all wool", "reine Wolle"]) expect(rules(text), text).toEqual(["pure"]);
    expect(rules("100% wool 20% silk")).toContain("pure!");
    expect(rules("pure silk 90% cotton 10%")).toContain("pure!");
    expect(rules("90% wool 10% silk")).toEqual([]);
    expect(LABEL_RULES.pure.note).toMatch(/2 %.*5 %/u);
  });
  it("Art. 8: virgin wool from 25 % of a mixture, with each per cent", () => {
    expect(VIRGIN_WOOL_LEAST_PERCENT).toBe(25);
    expect(rules("100% virgin wool")).toEqual(["pure", "virgin-wool"]);
    expect(rules("75% polyester 25% virgin wool")).toEqual(["virgin-wool"]);
    expect(rules("76% polyester 24% virgin wool")).toEqual(["virgin-wool!"]);
    expect(rules("laine vierge, polyester")).toContain("virgin-wool!");
    expect(LABEL_RULES["virgin-wool"].note).toContain("0.3 %");
  });
  it("Art. 9(1): falling order, each with its per cent", () => {
    expect(rules("50% wool 50% silk")).toEqual([]);
    expect(rules("49% wool 51% silk")).toEqual(["order!"]);
    expect(rules("60% wool 30% other fibres 10% silk")).not.toContain("order!");
    expect(rules("wool, silk")).toEqual(["each-percent!"]);
    expect(rules("80% wool, silk")).toEqual(["each-percent!"]);
  });
  it("Art. 9(2): other fibres up to 15 % together, with their per cent", () => {
    expect(OTHER_FIBRES_MOST_PERCENT).toBe(15);
    expect(rules("85% wool 15% other fibres")).toEqual(["other-fibres"]);
    expect(rules("84% wool 16% other fibres")).toEqual(["other-fibres!"]);
    expect(rules("100% sonstige Fasern")).toEqual(["other-fibres!"]);
  });
  it("Art. 9(4): mixed fibres and unspecified composition name no fibre", () => {
    for (const text of ["mixed fibres", "unspecified textile composition", "Mischfaser"]) {
      expect(rules(text), text).toEqual(["mixed-fibres"]);
      expect(readLabel(text).doubts.join(" "), text).toContain("only in general terms");
    }
  });
  it("Art. 9(3), from memory: cotton linen union", () => {
    for (const text of ["cotton linen union", "100% HL", "Halbleinen"]) expect(rules(text), text).toContain("cotton-linen");
    expect(LABEL_RULES["cotton-linen"].source.how).toBe("memory");
  });
  it("Art. 5: silk is only silk, bamboo is no name", () => {
    for (const text of ["100% art silk", "banana silk", "sari silk", "Kunstseide", "soie artificielle"]) expect(rules(text), text).toContain("silk-word!");
    expect(rules("100% silk")).toEqual(["pure"]);
    expect(rules("bamboo")).toEqual(["bamboo!", "bamboo-us"]);
  });
  it("Art. 14(3): abbreviations", () => {
    expect(rules("80% WO 20% PA")).toEqual(["abbreviation"]);
  });
  it("Annex IV, item 8: a statement for the pile alone says so", () => {
    const parts = (text: string) => readLabel(text).rules.filter((r) => r.rule.startsWith("pile-")).map((r) => r.rule);
    expect(parts("Pile: 100% wool")).toEqual(["pile-only"]);
    expect(parts("100% wool")).toEqual(["pile-unsaid"]);
    expect(parts("Pile: 100% wool. Backing: 100% cotton")).toEqual([]);
    expect(parts("Handmade")).toEqual([]);
  });
  it("puts each broken rule among the doubts, with its article", () => {
    expect(readLabel("20% silk 80% wool").doubts).toEqual(["The fibres of the rug do not stand in falling order of weight. (EU 1007/2011, Art. 9(1))"]);
    expect(readLabel("Pile: 20% silk 80% wool").doubts[0]).toContain("of the pile");
  });
});

describe("16 CFR 303 as findings on a label: the rule’s own examples", () => {
  const say = (text: string) => readLabel(text).components.map((c) => `${c.part}: ${c.fibres.map((f) => `${f.percent} ${f.fibre}`).join(", ")}`);
  it.each([
    ["303.11", "100% Cotton Pile", ["pile: 100 cotton"]],
    ["303.11", "Face-60% Rayon, 40% Cotton", ["pile: 60 viscose, 40 cotton"]],
    ["303.11", "Outer Surface-100% Wool", ["pile: 100 wool"]],
    ["303.24", "100% Nylon Pile 100% Cotton Back (Back constitutes 60% of fabric and pile 40%)", ["pile: 100 polyamide", "ground: 100 cotton"]],
    ["303.24", "Face-60% Rayon, 40% Nylon Back-70% Cotton, 30% Rayon (Face constitutes 60% of fabric and back 40%)", ["pile: 60 viscose, 40 polyamide", "ground: 70 cotton, 30 viscose"]],
    ["303.3", "96 percent acetate, 4 percent spandex", ["whole: 96 acetate, 4 elastane"]],
  ])("%s: %s", (_, text, parts) => {
    expect(say(text)).toEqual(parts);
    expect(readLabel(text).doubts).toEqual([]);
  });
  it("303.11: a statement of the face alone", () => {
    expect(readLabel("100% Cotton Pile").rules.map((r) => r.rule)).toContain("face-us");
    expect(readLabel("100% Nylon Pile 100% Cotton Back").rules.map((r) => r.rule)).not.toContain("face-us");
  });
  it("303.23: fibres added on top are a doubt of the sum", () => {
    expect(readLabel("55% Cotton 45% Rayon Except 5% Nylon added to toe and heel.").doubts).toEqual(["The percentages of the rug add up to 105, not 100."]);
  });
  it("303.3: a fibre under 5 %", () => {
    expect(US_NAMED_LEAST_PERCENT).toBe(5);
    expect(rules("95% wool 5% silk")).toEqual([]);
    expect(rules("96% wool 4% silk")).toEqual(["under-five-us"]);
  });
  it("303.18: words that imply a fibre that is not there", () => {
    expect(rules("silk look 100% polyester")).toContain("implied-fibre");
  });
  it("rayon is viscose, and either name is accepted in the US; unknown fibres, from memory", () => {
    expect(rules("100% rayon")).toEqual(["pure", "rayon"]);
    expect(rules("100% viscose")).toEqual(["pure"]);
    expect(rules("unknown fibers")).toContain("unknown-us");
  });
});

describe("LABEL_RULES", () => {
  it("names for each rule its article and where it was read", () => {
    const ids = Object.keys(LABEL_RULES) as LabelRuleId[];
    expect(ids.filter((id) => LABEL_RULES[id].source.how === "memory")).toEqual(["cotton-linen", "unknown-us"]);
    for (const id of ids) {
      expect(LABEL_RULES[id].source.source, id).toContain(LABEL_RULES[id].article.replace(/^EU 1007\/2011, /u, ""));
      expect(LABEL_RULES[id].note ?? LABEL_RULES[id].broken, id).not.toBeNull();
    }
  });
});
