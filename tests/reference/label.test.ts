import { describe, expect, it } from "vitest";
import { CLASS_OF_FINE, type FineFibre } from "../../lib/trade/label-fibres";
import { LABEL_CODES, LABEL_NAMES, type LabelMeaning } from "../../lib/trade/label-names";
import { classOfLabel } from "../../lib/triage/label-class";
import { labelWords } from "../../lib/triage/label-text";
import { readLabel } from "../../lib/triage/read-label";

const isFibre = (m: LabelMeaning): m is FineFibre => Object.hasOwn(CLASS_OF_FINE, m);
const names = LABEL_NAMES.filter((n) => isFibre(n.meaning));
const spelling = (name: string) => labelWords(name).map((w) => w.key).join(" ");

/** Every meaning a spelling has in any language: 麻 is linen and hemp. */
const meanings = new Map<string, Set<LabelMeaning>>();
for (const { name, meaning } of names) meanings.set(spelling(name), (meanings.get(spelling(name)) ?? new Set()).add(meaning));

const layouts: [string, (name: string) => string][] = [
  ["percentage before", (n) => `100 % ${n}`],
  ["percentage after", (n) => `${n} 100%`],
  ["capitals, no space", (n) => `100%${n.toUpperCase()}`],
  ["per cent sign first", (n) => `%100 ${n}`],
  ["among other words", (n) => `Art. 4711 160 x 230 cm 100,0 % ${n} Made in Hallowmere`],
];

describe("the names of fibres as published (regulation, tariff, tables of label words)", () => {
  it("holds a good number of languages and mostly read sources", () => {
    expect(new Set(names.map((n) => n.language)).size).toBeGreaterThanOrEqual(40);
    expect(names.filter((n) => n.source.how === "read").length).toBeGreaterThan(1000);
  });

  it.each(layouts)("reads every published name, %s", (_, layout) => {
    const wrong = names.filter((n) => n.source.how === "read").filter(({ name }) => {
      const { components } = readLabel(layout(name));
      const [only] = components[0]?.fibres ?? [];
      return components.length !== 1 || components[0]?.fibres.length !== 1 || only?.percent !== 100 || !meanings.get(spelling(name))?.has(only.fibre);
    });
    expect(wrong.map((n) => `${n.language} ${n.name} (${n.meaning})`)).toEqual([]);
  });

  it("reads every name remembered but not seen again, percentage before", () => {
    const wrong = names.filter((n) => n.source.how === "memory").filter(({ name }) => !meanings.get(spelling(name))?.has(readLabel(`100 % ${name}`).components[0]?.fibres[0]?.fibre as FineFibre));
    expect(wrong.map((n) => `${n.language} ${n.name}`)).toEqual([]);
  });

  it.each(LABEL_CODES.map((c) => [c.code, c.meaning] as const))("reads the code %s beside a percentage as %s", (code, meaning) => {
    expect(readLabel(`100% ${code}`).components).toEqual([{ part: "whole", fibres: [{ fibre: meaning, percent: 100 }] }]);
  });

  it("does not decode the two codes that label systems read differently", () => {
    for (const code of ["CA", "HA"]) expect(readLabel(`100% ${code}`).components).toEqual([]);
  });
});

/** Written by hand in the manner of real labels; expectation: pile (or whole), ground, class. */
const LABELS: [text: string, pile: string, ground: string, says: string | null][] = [
  ["100% VISCOSE", "100 viscose", "", "viscose"],
  ["Pile: 100% Viscose\nBacking: 100% Cotton", "100 viscose", "100 cotton", "viscose"],
  ["100% Cotton Pile", "100 cotton", "", "cotton"],
  ["Face-60% Rayon, 40% Cotton", "60 viscose, 40 cotton", "", "cotton-viscose"],
  ["100% Nylon Pile 100% Cotton Back", "100 polyamide", "100 cotton", "polyamide"],
  ["Outer Surface-100% Wool", "100 wool", "", "wool"],
  ["Hand knotted. Pure new wool on cotton warp", "wool", "cotton", "wool"],
  ["80% Wool / 20% Bamboo Silk", "80 wool, 20 art-silk", "", "wool-viscose"],
  ["art silk", "art-silk", "", "art-silk"],
  ["Silk look. 100% Polyester", "100 polyester", "", "polyester"],
  ["silk touch heat-set polypropylene", "polypropylene", "", "polypropylene"],
  ["70% wool 30% silk", "70 wool, 30 silk", "", "wool-silk"],
  ["WOOL 95% NYLON 5%", "95 wool, 5 polyamide", "", "wool"],
  ["1OO% C0TTON", "100 cotton", "", "cotton"],
  ["8O % VlSCOSE 2O % W00L", "80 viscose, 20 wool", "", "wool-viscose"],
  ["Flor: 100 % Viskose, Rücken: 100 % Baumwolle", "100 viscose", "100 cotton", "viscose"],
  ["100% Schurwolle", "100 wool", "", "wool"],
  ["Viskoseflor auf Baumwolle", "viscose", "cotton", "viscose"],
  ["52,5 % Seide, 47,5 % Viskose", "52.5 silk, 47.5 viscose", "", "silk-viscose"],
  ["100% Kunstseide", "100 art-silk", "", "art-silk"],
  ["Seidenoptik, 100% Polyester", "100 polyester", "", "polyester"],
  ["Polmaterial: 80 % Schurwolle, 20 % Polyamid", "80 wool, 20 polyamide", "", "wool"],
  ["Velours : 100 % soie. Dossier : 100 % coton", "100 silk", "100 cotton", "silk"],
  ["Composition : laine vierge 80 %, viscose 20 %", "80 wool, 20 viscose", "", "wool-viscose"],
  ["100 % soie artificielle", "100 art-silk", "", "art-silk"],
  ["laine sur coton", "wool", "cotton", "wool"],
  ["100% seta", "100 silk", "", "silk"],
  ["60% lana vergine 40% seta artificiale", "60 wool, 40 art-silk", "", "wool-viscose"],
  ["Pelo: 100% seda. Base: 100% algodón", "100 silk", "100 cotton", "silk"],
  ["50% lino 50% algodón", "50 linen, 50 cotton", "", "bast"],
  ["100% lã", "100 wool", "", "wool"],
  ["80% wol 20% viscose", "80 wool, 20 viscose", "", "wool-viscose"],
  ["100% kunstzijde", "100 art-silk", "", "art-silk"],
  ["%80 Yün %20 İpek", "80 wool, 20 silk", "", "wool-silk"],
  ["%100 bambu ipek", "100 art-silk", "", "art-silk"],
  ["100% wełna", "100 wool", "", "wool"],
  ["70% wiskoza, 30% bawełna", "70 viscose, 30 cotton", "", "cotton-viscose"],
  ["100% вискоза", "100 viscose", "", "viscose"],
  ["100% μετάξι", "100 silk", "", "silk"],
  ["100 % ull", "100 wool", "", "wool"],
  ["100% bomull", "100 cotton", "", "cotton"],
  ["羊毛80% 蚕丝20%", "80 wool, 20 silk", "", "wool-silk"],
  ["絹100%", "100 silk", "", "silk"],
  ["۱۰۰٪ ابریشم", "100 silk", "", "silk"],
  ["80 WO 20 CV", "80 wool, 20 viscose", "", "wool-viscose"],
  ["100% CV", "100 viscose", "", "viscose"],
  ["100% Tencel", "100 lyocell", "", "lyocell"],
  ["100% Ramie", "100 ramie", "", "bast"],
  ["55% linen 45% viscose", "55 linen, 45 viscose", "", "viscose"],
  ["100% Wolle/Wool/Laine/Lana", "100 wool", "", "wool"],
  ["80% Wolle 20% Seide / 80% wool 20% silk", "80 wool, 20 silk", "", "wool-silk"],
  ["wool/viscose 80/20", "80 wool, 20 viscose", "", "wool-viscose"],
  ["80/20 wool viscose", "80 wool, 20 viscose", "", "wool-viscose"],
  ["Pile 80% New Zealand Wool 20% Viscose, Backing 100% cotton canvas", "80 wool, 20 viscose", "100 cotton", "wool-viscose"],
  ["100% Polypropylene Heat-Set. Backing: Jute", "100 polypropylene", "jute", "polypropylene"],
  ["50% Wool, 30% Viscose, 20% Cotton", "50 wool, 30 viscose, 20 cotton", "", "wool-viscose"],
  ["Chaîne coton, velours laine et soie", "wool, silk", "cotton", "wool-silk"],
  ["soie 100 %, tapis noué main, fond coton", "100 silk", "cotton", "silk"],
  ["Velours 100% laine sur trame coton", "100 wool", "cotton", "wool"],
  ["Composição: 100% viscose / Base: 100% algodão", "100 viscose", "100 cotton", "viscose"],
  ["Состав: 70% шерсть, 30% вискоза", "70 wool, 30 viscose", "", "wool-viscose"],
  ["65 % Polyester 35 % Baumwolle (Rücken 100 % Latex)", "65 polyester, 35 cotton", "100 rare", "polyester"],
  ["Hand-tufted 100% wool with cotton canvas back", "100 wool", "cotton", "wool"],
  ["wool with silk highlights", "wool, silk", "", "wool-silk"],
  ["Pile: 80% wool 20% silk; cotton warp", "80 wool, 20 silk", "cotton", "wool-silk"],
  ["Fibre content: silk/viscose 50/50", "50 silk, 50 viscose", "", "silk-viscose"],
  ["Art Silk (viscose) 100%", "100 viscose", "", "viscose"],
  ["Viscose (art silk) 100%", "100 viscose", "", "viscose"],
  ["100% art\nsilk", "100 art-silk", "", "art-silk"],
  ["no silk, 100% viscose", "100 viscose", "", "viscose"],
  ["Jute 100%, pile height 8 mm", "100 jute", "", "hard-fibre"],
  ["70% Wool 30% Jute", "70 wool, 30 jute", "", "wool"],
  ["52% Viscose 48% Polyester", "52 viscose, 48 polyester", "", "viscose"],
  ["パイル: レーヨン100%", "100 viscose", "", "viscose"],
  ["55% wool, 45% bamboo", "55 wool, 45 bamboo", "", "wool-viscose"],
  ["100% other fibres", "100 other-fibres", "", null],
  ["Made in India. Dry clean only. Do not rub. Store in base.", "", "", null],
];

describe("labels in the manner of real ones", () => {
  const say = (text: string, part: "pile" | "ground") => {
    const { components } = readLabel(text);
    const found = components.find((c) => c.part === part) ?? (part === "pile" ? components.find((c) => c.part === "whole") : undefined);
    return (found?.fibres ?? []).map((f) => (f.percent === null ? f.fibre : `${f.percent} ${f.fibre}`)).join(", ");
  };
  it.each(LABELS)("%s", (text, pile, ground, says) => {
    expect(say(text, "pile")).toBe(pile);
    expect(say(text, "ground")).toBe(ground);
    expect(classOfLabel(readLabel(text))).toBe(says);
  });
});
