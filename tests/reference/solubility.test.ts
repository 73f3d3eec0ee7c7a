import { describe, expect, it } from "vitest";
import { SINGLE_FIBRES, type SingleFibre } from "../../lib/trade/single-fibres";
import { pileEvidence } from "../../lib/triage/bench-evidence";
import { classIndex } from "../../lib/triage/classes";
import { bench, decibans, flatPosterior, topOf, type TestReading } from "./bench-helpers";

/**
 * Regulation (EU) No 1007/2011, Annex VIII, chapter 2: what each method dissolves and what it lists as residue, as far as
 * they are fibres of ours (read). Modal and cupro stand for lyocell’s class in the lists; lyocell itself is not in them.
 */
const METHODS: readonly { method: number; test: string; dissolves: readonly SingleFibre[]; residue: readonly SingleFibre[] }[] = [
  { method: 1, test: "acetone", dissolves: ["acetate"], residue: ["wool", "silk", "cotton", "bast", "hard-fibre", "lyocell", "viscose", "acrylic", "polyamide",
    "polyester"] },
  { method: 2, test: "hypochlorite", dissolves: ["wool", "silk"], residue: ["cotton", "lyocell", "viscose", "acrylic", "polyamide", "polyester", "polypropylene"] },
  { method: 3, test: "formic-acid-zinc-chloride", dissolves: ["viscose"], residue: ["cotton"] },
  { method: 4, test: "formic-acid", dissolves: ["polyamide"], residue: ["wool", "cotton", "lyocell", "viscose", "acrylic", "polyester", "polypropylene"] },
  { method: 11, test: "sulphuric-acid-75", dissolves: ["silk"], residue: ["wool"] },
];
const dissolved = (test: string): TestReading => [test, { outcome: "dissolves" }];
const stayed = (test: string): TestReading => [test, { outcome: "stays" }];
/** One clear test tells at least this much. */
const CLEAR_DB = 15;

describe("published solubility, one clear test from a flat prior", () => {
  it.each(METHODS)("method $method ($test) separates what dissolves from every listed residue by 15 dB, either way", ({ test, dissolves, residue }) => {
    for (const one of dissolves)
      for (const other of residue) {
        expect(decibans(flatPosterior(dissolved(test)), one, other), `${one} against ${other}`).toBeGreaterThanOrEqual(CLEAR_DB);
        expect(decibans(flatPosterior(stayed(test)), other, one), `${other} against ${one}`).toBeGreaterThanOrEqual(CLEAR_DB);
      }
  });

  it.each(METHODS)("method $method ($test): dissolved, what is published to dissolve comes first or level", ({ test, dissolves }) => {
    const p = flatPosterior(dissolved(test));
    const most = Math.max(...SINGLE_FIBRES.map((f) => p[f]));
    for (const f of dissolves) expect(p[f]).toBeCloseTo(most, 6);
  });

  it("hypochlorite separates silk and wool from viscose and cotton, and silk from wool not at all", () => {
    const p = flatPosterior(dissolved("hypochlorite"));
    for (const animal of ["silk", "wool"] as const) for (const plant of ["viscose", "cotton"] as const) expect(decibans(p, animal, plant)).toBeGreaterThanOrEqual(CLEAR_DB);
    expect(decibans(p, "silk", "wool")).toBeCloseTo(0, 6);
  });

  it("75 % sulphuric acid separates silk from wool, but not silk from viscose (method 7 dissolves cellulose as well)", () => {
    const p = flatPosterior(dissolved("sulphuric-acid-75"));
    expect(decibans(p, "silk", "wool")).toBeGreaterThanOrEqual(CLEAR_DB);
    expect(Math.abs(decibans(p, "silk", "viscose"))).toBeLessThan(1);
  });

  it("acetone singles out acetate", () => {
    const p = flatPosterior(dissolved("acetone"));
    expect(topOf(p)).toBe("acetate");
    expect(p.acetate).toBeGreaterThan(0.9);
  });
});

describe("the set of published responses of a fibre puts it, or what the methods cannot tell from it, on top", () => {
  const sets: readonly (readonly [SingleFibre, readonly SingleFibre[], readonly TestReading[]])[] = [
    ["silk", ["silk"], [dissolved("hypochlorite"), dissolved("sulphuric-acid-75"), stayed("acetone")]],
    ["wool", ["wool"], [dissolved("hypochlorite"), stayed("sulphuric-acid-75"), stayed("formic-acid"), stayed("acetone")]],
    ["viscose", ["viscose", "lyocell"], [stayed("hypochlorite"), dissolved("formic-acid-zinc-chloride"), stayed("formic-acid"), stayed("acetone"),
      dissolved("sulphuric-acid-75")]],
    // Some modal stays in formic acid and zinc chloride (method 3 names "certain types" only), as cotton does.
    ["cotton", ["cotton", "mercerised-cotton", "bast", "hard-fibre", "lyocell"], [stayed("hypochlorite"), stayed("formic-acid-zinc-chloride"),
      stayed("formic-acid"), stayed("acetone"), dissolved("sulphuric-acid-75")]],
    ["acetate", ["acetate"], [stayed("hypochlorite"), dissolved("acetone")]],
    ["polyamide", ["polyamide"], [stayed("hypochlorite"), dissolved("formic-acid"), stayed("acetone")]],
    ["polyester", ["polyester", "polypropylene", "acrylic"], [stayed("hypochlorite"), stayed("formic-acid"), stayed("acetone"), stayed("sulphuric-acid-75")]],
  ];
  it.each(sets)("%s", (_, level, tests) => {
    const p = flatPosterior(...tests);
    expect(level).toContain(topOf(p));
    expect(level.reduce((sum, f) => sum + p[f], 0)).toBeGreaterThan(0.8);
  });
});

describe("through the yarn to the class of the pile", () => {
  const classDb = (test: TestReading, yarn: "field" | "whole", one: "silk", other: "viscose") => {
    const [item] = pileEvidence([{ ...bench(test), of: { part: "pile", yarn } }]);
    return 10 * Math.log10((item?.likelihood[classIndex(one)] as number) / (item?.likelihood[classIndex(other)] as number));
  };
  it("one clear hypochlorite test speaks for silk against viscose by 15 dB", () => {
    for (const yarn of ["field", "whole"] as const) expect(classDb(dissolved("hypochlorite"), yarn, "silk", "viscose")).toBeGreaterThanOrEqual(CLEAR_DB);
  });
  it("and for viscose against silk by 13 dB: a sample may be a stray tuft, and a stray is rather plant than animal fibre", () => {
    for (const yarn of ["field", "whole"] as const) expect(classDb(stayed("hypochlorite"), yarn, "silk", "viscose")).toBeLessThanOrEqual(-13);
  });
});
