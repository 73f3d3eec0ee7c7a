import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LABEL_NAMES } from "../../lib/trade/label-names";
import { classOfLabel } from "../../lib/triage/label-class";
import { plainLetters, wordKey } from "../../lib/triage/label-text";
import { readLabel } from "../../lib/triage/read-label";
import published from "./data/label-names.json";

/** Names as published and read again (regulation, tariff, tables of label words): language, fibre in English, name, how, kind. Sources in lib/trade/label-names.json. */
const rows = (published as unknown as [string, string, string, string, string][]).filter(([, , , how, kind]) => how === "read" && kind !== "abbreviation");
const FIBRES = ["silk", "wool", "cotton", "linen", "hemp", "jute", "viscose", "modal", "lyocell", "cupro", "acetate", "polyamide", "polyester", "polypropylene", "acrylic", "ramie", "sisal", "coir"];
const key = (name: string) => name.split(/[\s'’-]+/u).map(wordKey).join(" ");
const meant = new Map<string, Set<string>>();
for (const [, what, name] of rows) meant.set(key(name), (meant.get(key(name)) ?? new Set()).add(what));
/** Names that are a part's word in another language, as "vlas" is pile in Czech. */
const parts = new Set(LABEL_NAMES.filter((n) => ["pile", "ground", "fringe"].includes(n.meaning)).map((n) => key(n.name)));
/** One word or several, but no explanation, no alternative, no phrase of the tariff, and one meaning in whatever language. */
const names = rows.filter(([, what, name]) => FIBRES.includes(what) && !/[/(),]|-$/u.test(name) && name.split(" ").length <= 2 && [...name].length >= 2 && meant.get(key(name))?.size === 1 && !parts.has(key(name)) && name !== "in");
const byLanguage = new Map<string, Map<string, string[]>>();
for (const [language, what, name] of names) {
  const fibres = byLanguage.get(language) ?? new Map<string, string[]>();
  byLanguage.set(language, fibres.set(what, [...(fibres.get(what) ?? []), name]));
}
const languages = [...byLanguage].filter(([, fibres]) => fibres.size >= 4).map(([language]) => language);

interface Part { fibre: string; name: string; percent: number }

/** One to four different fibres of one language in falling order, whole per cents that make 100. */
const composition: fc.Arbitrary<Part[]> = fc.constantFrom(...languages).chain((language) => {
  const fibres = byLanguage.get(language) as Map<string, string[]>;
  return fc.uniqueArray(fc.constantFrom(...fibres.keys()), { minLength: 1, maxLength: 4 }).chain((chosen) =>
    fc.tuple(fc.tuple(...chosen.map((f) => fc.constantFrom(...(fibres.get(f) as string[])))), fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: chosen.length - 1, maxLength: chosen.length - 1 })).map(([words, cuts]) => {
      const edges = [0, ...cuts.sort((a, b) => a - b), 100];
      const shares = chosen.map((_, i) => (edges[i + 1] as number) - (edges[i] as number)).sort((a, b) => b - a);
      return chosen.map((fibre, i) => ({ fibre, name: words[i] as string, percent: shares[i] as number }));
    }));
});

const FORMATS: Readonly<Record<string, (p: Part) => string>> = {
  "80% wool": (p) => `${p.percent}% ${p.name}`, "80 % wool": (p) => `${p.percent} % ${p.name}`, "%80 wool": (p) => `%${p.percent} ${p.name}`,
  "wool 80%": (p) => `${p.name} ${p.percent}%`, "wool: 80 %": (p) => `${p.name}: ${p.percent} %`, "80,0 % wool": (p) => `${p.percent},0 % ${p.name}`,
};
const SEPARATORS = [", ", "; ", " / ", "\n", " ", " + ", ",", " – "];
const CASES: Readonly<Record<string, (name: string) => string>> = {
  "as printed": (n) => n, capitals: (n) => n.toUpperCase(), "small letters": (n) => n.toLowerCase(), "accents lost": plainLetters, "capitals, accents lost": (n) => plainLetters(n).toUpperCase(),
};
const read = (text: string) => readLabel(text).components.map((c) => ({ part: c.part, fibres: c.fibres.map((f) => [f.fibre, f.percent]) }));
const said = (parts: readonly Part[]) => parts.map((p) => [p.fibre, p.percent]);
const style = fc.tuple(fc.constantFrom(...Object.keys(FORMATS)), fc.constantFrom(...SEPARATORS), fc.constantFrom(...Object.keys(CASES)));
const written = (parts: readonly Part[], [format, separator, letters]: readonly [string, string, string]) =>
  parts.map((p) => (FORMATS[format] as (q: Part) => string)({ ...p, name: (CASES[letters] as (n: string) => string)(p.name) })).join(separator);

describe("any composition, in any language and common format, reads back the same", () => {
  it("draws on enough of the published names", () => {
    expect(names.length).toBeGreaterThan(800);
    expect(languages.length).toBeGreaterThanOrEqual(30);
  });

  it("percentages before or after, with any separator, in capitals, with accents kept or lost", () => {
    fc.assert(fc.property(composition, style, (parts, how) => {
      expect(read(written(parts, how))).toEqual([{ part: "whole", fibres: said(parts) }]);
    }), { numRuns: 3_000 });
  });

  it("says so where accents were lost, and where a figure is read for a letter", () => {
    expect(readLabel("100% welna").doubts).toEqual([expect.stringContaining("“wełna”")]);
    expect(readLabel("100% wełna").doubts).toEqual([]);
    expect(readLabel("100% WEŁNA").doubts).toEqual([]);
  });

  it("with the pile, the ground and the fringe named, headings before or words after", () => {
    const two = fc.tuple(composition, composition, style);
    fc.assert(fc.property(two, ([pile, ground, how]) => {
      const expected = [{ part: "pile", fibres: said(pile) }, { part: "ground", fibres: said(ground) }];
      expect(read(`Pile: ${written(pile, how)}\nBacking: ${written(ground, how)}`)).toEqual(expected);
      expect(read(`PILE ${written(pile, how)}. GROUND ${written(ground, how)}`)).toEqual(expected);
    }), { numRuns: 600 });
    fc.assert(fc.property(composition, composition, (pile, fringe) => {
      const listed = (parts: readonly Part[]) => parts.map((p) => `${p.percent}% ${p.name}`).join(" ");
      expect(read(`${listed(pile)} pile, ${listed(fringe)} fringe`)).toEqual([{ part: "pile", fibres: said(pile) }, { part: "fringe", fibres: said(fringe) }]);
    }), { numRuns: 600 });
  });

  it("with all names first and the figures after them in the same order", () => {
    fc.assert(fc.property(composition.filter((c) => c.length > 1), fc.constantFrom("/", " / ", ", "), (parts, separator) => {
      const fibres = said(parts);
      expect(read(`${parts.map((p) => p.name).join(separator)} ${parts.map((p) => p.percent).join("/")}`)[0]?.fibres).toEqual(fibres);
      expect(read(`${parts.map((p) => p.percent).join("/")} ${parts.map((p) => p.name).join(separator)}`)[0]?.fibres).toEqual(fibres);
    }), { numRuns: 600 });
  });

  it("leaves no doubt about a composition as published, in falling order", () => {
    fc.assert(fc.property(composition, (parts) => {
      expect(readLabel(parts.map((p) => `${p.percent} % ${p.name}`).join(", ")).doubts).toEqual([]);
    }), { numRuns: 600 });
  });
});

describe("what must never be read as something else", () => {
  const all = (fibres: string[]) => (published as unknown as [string, string, string, string][]).filter(([, what]) => fibres.includes(what)).map(([, , name]) => name);
  it("ramie, lyocell, modal and cupro are never viscose", () => {
    const never = all(["ramie", "lyocell", "modal", "cupro"]);
    expect(never.length).toBeGreaterThan(100);
    for (const name of never) for (const text of [name, `100% ${name}`, `${plainLetters(name).toUpperCase()} 100 %`]) expect(classOfLabel(readLabel(text)), text).not.toBe("viscose");
  });
  it("what looks like silk and is polyester is polyester, in whatever order", () => {
    for (const look of ["silk look", "silky", "satin", "silk touch", "SILK-LOOK", "Seidenoptik", "aspect soie", "effetto seta", "tacto seda"]) {
      for (const text of [`${look} polyester`, `polyester, ${look}`, `${look} 100% polyester`, `100 % polyester\n${look}`]) {
        const reading = readLabel(text);
        expect(reading.components.flatMap((c) => c.fibres.map((f) => f.fibre)), text).toEqual(["polyester"]);
        expect(reading.suggests, text).toEqual(["silk-look"]);
      }
    }
  });
  it("bamboo alone is a doubt, bamboo as the source of viscose is viscose", () => {
    for (const name of all(["bamboo (not an Annex I name)"])) expect(readLabel(`100% ${name}`).doubts, name).toEqual([expect.stringContaining("Bamboo is a plant")]);
    for (const text of ["100% viscose from bamboo", "100% rayon made from bamboo", "bamboo viscose 100%"]) expect(readLabel(text).components[0]?.fibres, text).toEqual([{ fibre: "viscose", percent: 100 }]);
  });
});
