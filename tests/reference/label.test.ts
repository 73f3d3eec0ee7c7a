import { describe, expect, it } from "vitest";
import { CLAIM_FIBRE, LABEL_CODES, LABEL_NAMES, type LabelClaim } from "../../lib/trade/label-names";
import { CLASS_OF_FINE, type FineFibre } from "../../lib/trade/label-fibres";
import { classOfLabel } from "../../lib/triage/label-class";
import { labelWords } from "../../lib/triage/label-text";
import { readLabel } from "../../lib/triage/read-label";
import published from "./data/label-names.json";

/** Rows as published: language, fibre or part in English, word, whether it was read or is remembered, kind of word. Sources in lib/trade/label-names.json. */
type Row = readonly [language: string, what: string, name: string, how: string, kind: string];
const rows = published as unknown as readonly Row[];

/** What each heading of the published rows means for a reader of labels; null: names a kind of cloth or rug, no fibre and no part. */
const MEANS: Readonly<Record<string, readonly string[] | null>> = {
  "shorn wool": ["wool"], "virgin wool": ["wool"], nylon: ["polyamide"], "bamboo (not an Annex I name)": ["bamboo"], "wool+silk": ["wool", "silk"],
  "TRAP: artificial silk": ["art-silk", "viscose"], "TRAP: artificial silk = viscose": ["art-silk", "viscose"], "TRAP: artificial silk = acetate or viscose": ["art-silk", "viscose", "acetate"],
  "TRAP: bamboo silk": ["art-silk"], "TRAP: vegetable silk": ["art-silk"], "TRAP: silk-like word = acetate": ["acetate"], "TRAP: household/underwear fabric": null,
  "component: pile": ["pile"], "component: knotted pile": ["pile"], "component: pile fabrics": ["pile"], "component: pile carpets": ["pile"], "component: plush": ["pile"],
  "component: velour": ["pile"], "component: velvet": ["pile"], "component: fringe": ["fringe"], "component: ground": ["ground"], "component: backing": ["ground"],
  "component: other fibres": ["other-fibres"], "component: mixed fibre": ["other-fibres"], "component: other textile materials": ["other-fibres"], "component: natural textile fibres": ["other-fibres"],
  "component: synthetic fibres": ["synthetic"], "component: synthetic staple fibres": ["synthetic"], "component: artificial fibres": ["synthetic"],
  "component: artificial staple fibres": ["synthetic"], "component: artificial textile fibres": ["synthetic"], "component: man-made fibres": ["synthetic"],
  "component: man-made textile materials": ["synthetic"], "component: metal fibre": ["metal"],
  "component: all": null, "component: pure": null, "component: pure/all": null, "component: carpet": null, "component: carpets": null, "component: knotted carpets": null,
  "component: tufted carpets": null, "component: rug": null, "component: selvedge": null, "component: fibre": null,
};
const PARTS = ["pile", "ground", "fringe"];
const meaningOf = (what: string) => (Object.hasOwn(MEANS, what) ? MEANS[what] as readonly string[] | null : [what]);
/** "polyamide / nylon" are two names; what stands in brackets explains the one before it. */
const alternatives = (name: string) => name.replace(/\s*\(.*$/u, "").split(" / ");
const spelling = (name: string) => labelWords(name).map((w) => w.key).join(" ");

/** Every meaning a spelling has in any language as published: 麻 is linen and hemp. */
const meanings = new Map<string, Set<string>>();
for (const [, what, name] of rows) {
  for (const n of alternatives(name)) meanings.set(spelling(n), new Set([...(meanings.get(spelling(n)) ?? []), ...(meaningOf(what) ?? [])]));
}
/** Published words of a meaning; an abbreviation is read as printed only. */
const saying = (kinds: (meaning: readonly string[] | null) => boolean, how = "read") =>
  rows.filter(([, what, , h]) => h === how && kinds(meaningOf(what))).flatMap(([language, what, name, , kind]) => alternatives(name).map((n) => ({ language, what, name: n, code: kind === "abbreviation" })));
const isPart = (m: readonly string[] | null) => m !== null && PARTS.includes(m[0] as string);
const isFibre = (m: readonly string[] | null) => m !== null && m.length >= 1 && !PARTS.includes(m[0] as string);
const fibresOf = (text: string) => readLabel(text).components.flatMap((c) => c.fibres);

const layouts: [string, (name: string, code: boolean) => string][] = [
  ["percentage before", (n) => `100 % ${n}`],
  ["percentage after", (n) => `${n} 100%`],
  ["capitals, no space", (n, code) => `100%${code ? n : n.toUpperCase()}`],
  ["per cent sign first", (n) => `%100 ${n}`],
  ["among other words", (n) => `Art. 4711 160 x 230 cm 100,0 % ${n} Made in Hallowmere`],
];

describe("the names of fibres as published (regulation, tariff, tables of label words)", () => {
  it("covers every heading of the published rows", () => {
    const unknown = rows.filter(([, what]) => !Object.hasOwn(MEANS, what) && !Object.hasOwn(CLASS_OF_FINE, what));
    expect(unknown).toEqual([]);
    expect(new Set(rows.map(([language]) => language)).size).toBeGreaterThanOrEqual(40);
    expect(rows.filter(([, , , how]) => how === "read")).toHaveLength(1609);
  });

  it.each(layouts)("reads every published name of a fibre, %s", (_, layout) => {
    const wrong = saying(isFibre).filter(({ name, what, code }) => {
      const read = fibresOf(layout(name, code));
      const [only] = read;
      if (what === "wool+silk") return read.map((f) => f.fibre).sort().join() !== "silk,wool";
      return read.length !== 1 || only?.percent !== 100 || !meanings.get(spelling(name))?.has(only.fibre);
    });
    expect(wrong.map((n) => `${n.language} ${n.name} (${n.what})`)).toEqual([]);
  });

  it("reads every published word for a part of the rug as that part", () => {
    const wrong = saying(isPart).filter(({ name }) => {
      const [only, ...more] = readLabel(`${name}: 100 % polyester`).components;
      return more.length > 0 || !meanings.get(spelling(name))?.has(only?.part ?? "none");
    });
    expect(wrong.map((n) => `${n.language} ${n.name} (${n.what})`)).toEqual([]);
  });

  it("finds no fibre in published words for a kind of rug or cloth", () => {
    const wrong = saying((m) => m === null).filter(({ name }) => fibresOf(name).length > 0);
    expect(wrong.map((n) => `${n.language} ${n.name} (${n.what})`)).toEqual([]);
  });

  it("never reads a published silk-like trade word as silk", () => {
    const traps = rows.filter(([, what]) => what.startsWith("TRAP: ") && what.includes("silk"));
    expect(traps.length).toBeGreaterThanOrEqual(35);
    for (const [, , name] of traps) {
      for (const text of [name, `100 % ${name}`, `${name.toUpperCase()} 100%`]) expect(fibresOf(text).map((f) => f.fibre), text).not.toContain("silk");
    }
  });

  it("reads the 138 rows that are remembered only as they are remembered", () => {
    const remembered = [...saying(isFibre, "memory"), ...saying(isPart, "memory")];
    expect(rows.filter(([, , , how]) => how === "memory")).toHaveLength(138);
    const wrong = remembered.filter(({ name, what }) => {
      const found = isPart(meaningOf(what)) ? readLabel(`${name}: 100 % polyester`).components[0]?.part : fibresOf(`100 % ${name}`)[0]?.fibre;
      return !meanings.get(spelling(name))?.has(found ?? "none");
    });
    // "rug" is the back in Dutch and the whole in English: it is not taken for a part.
    expect(wrong.map((n) => `${n.language} ${n.name}`)).toEqual(["nl rug"]);
  });

  it("says how many names of the table stand on memory alone: 693 of 2,314, the rest were read", () => {
    expect(LABEL_NAMES).toHaveLength(2_314);
    expect(LABEL_NAMES.filter((n) => n.source.how !== "read").map((n) => n.source.how)).toEqual(Array(693).fill("memory"));
  });

  it("reads every name of the program's own table as its table says, with the percentage before", () => {
    const fine = (m: string): m is FineFibre => Object.hasOwn(CLASS_OF_FINE, m);
    const means = (m: string): FineFibre | null => (fine(m) ? m : Object.hasOwn(CLAIM_FIBRE, m) ? CLAIM_FIBRE[m as LabelClaim] : null);
    const own = LABEL_NAMES.filter((n) => means(n.meaning) !== null);
    const all = new Map<string, Set<string>>();
    for (const n of own) all.set(spelling(n.name), (all.get(spelling(n.name)) ?? new Set()).add(means(n.meaning) as string));
    const wrong = own.filter(({ name }) => !all.get(spelling(name))?.has(fibresOf(`100 % ${name}`)[0]?.fibre ?? "none"));
    expect(wrong.map((n) => `${n.language} ${n.name}`)).toEqual([]);
  });
});

describe("the names of virgin wool (Regulation (EU) No 1007/2011, Annex III; Croatian from memory)", () => {
  const names = LABEL_NAMES.filter((n) => n.meaning === "virgin-wool" && n.source.source.includes("Annex III"));
  it("has a name in each of 24 languages", () => {
    expect(new Set(names.map((n) => n.language)).size).toBe(24);
    expect(names.filter((n) => n.source.how === "memory").map((n) => n.language)).toEqual(["hr"]);
  });
  it.each(names.map((n) => [n.language, n.name] as const))("%s %s is wool, and calls up Art. 8", (_, name) => {
    const reading = readLabel(`100 % ${name}`);
    expect(reading.components).toEqual([{ part: "whole", fibres: [{ fibre: "wool", percent: 100 }] }]);
    expect(reading.rules.map((r) => r.rule)).toContain("virgin-wool");
  });
});

describe("codes (ISO 2076 and DIN 60001-4 from memory; trade lists as read)", () => {
  const byCode = new Map(LABEL_CODES.map(({ code }) => [code, LABEL_CODES.filter((c) => c.code === code)]));
  const clashes = [...byCode].filter(([, list]) => new Set(list.map((c) => c.meaning)).size > 1).map(([code]) => code);
  it("knows which codes two lists read differently", () => {
    expect([...clashes].sort()).toEqual(["CA", "HA", "LY", "PE"]);
  });
  it.each([...byCode].filter(([code]) => !clashes.includes(code)).map(([code, [first]]) => [code, first?.meaning as string] as const))("reads %s beside a percentage as %s", (code, meaning) => {
    const fibre = Object.hasOwn(CLAIM_FIBRE, meaning) ? CLAIM_FIBRE[meaning as LabelClaim] : meaning;
    expect(fibresOf(`100% ${code}`)).toEqual([{ fibre, percent: 100 }]);
  });
  it.each(clashes)("does not decode %s, and says why", (code) => {
    const reading = readLabel(`100% ${code}`);
    expect(reading.components).toEqual([]);
    for (const row of LABEL_CODES.filter((c) => c.code === code && c.meaning !== "rare")) expect(reading.doubts.join(" ")).toContain(row.meaning);
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
  ["65 % Polyester 35 % Baumwolle (Rücken 100 % Latex)", "65 polyester, 35 cotton", "100 rare", "other"],
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
