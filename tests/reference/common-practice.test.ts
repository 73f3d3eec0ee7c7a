import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { METHODS, METHOD_IDS } from "../../lib/trade/care";
import { LIFE } from "../../lib/trade/life";
import { QUESTIONS, type EnquiryAnswers, type RugAnswers } from "../../lib/trade/questions";
import { assess, defaultSettings } from "../../lib/triage/assess";
import { findingsFromAnswers } from "../../lib/triage/findings-from-answers";

const AS_OF = "2026-03-01T09:00:00Z";
const of = (rug: RugAnswers, enquiry: EnquiryAnswers = {}) => assess(findingsFromAnswers(rug, enquiry), defaultSettings(), AS_OF);
const SIZE = { widthCm: 170, lengthCm: 240 };

/**
 * Bend-and-break cycles of a fibre. Common practice, no published source; figures differ widely, and wool and silk change
 * places between them, so that only the place of viscose is a check.
 */
const BEND_CYCLES = { viscose: [70, 75], cotton: [3_000], silk: [2_000, 3_500], wool: [1_500, 20_000, 180_000] } as const;

describe("common practice, no published source", () => {
  it("viscose bends far fewer times before it breaks than wool, silk and cotton, and the table of lives keeps that order", () => {
    const median = (f: keyof typeof BEND_CYCLES): number => { const row = LIFE[f]; return "medianYears" in row ? row.medianYears : Math.min(...Object.values(row).map((r) => r.medianYears)); };
    for (const f of ["wool", "silk", "cotton"] as const) {
      expect(Math.min(...BEND_CYCLES[f])).toBeGreaterThan(10 * Math.max(...BEND_CYCLES.viscose));
      expect(median(f), f).toBeGreaterThan(median("viscose"));
    }
  });

  it("a viscose rug lives about five years from new in ordinary domestic use: median 4 to 6", () => {
    const { lifeYears } = of({ labelText: "100% viscose", boughtWhere: "furniture", boughtYear: 2026, room: "ordinary", back: "loomed", ...SIZE });
    expect(lifeYears?.median).toBeGreaterThanOrEqual(4);
    expect(lifeYears?.median).toBeLessThanOrEqual(6);
  });

  it("wool and viscose browned in use and cleaned with low moisture comes back about 80 %: median 65 to 90", () => {
    const a = of({ labelText: "80% wool 20% viscose", incidents: ["damp"], household: ["pots"], changes: ["browner"], room: "ordinary", ...SIZE });
    expect(a.improvement?.median).toBeGreaterThanOrEqual(65);
    expect(a.improvement?.median).toBeLessThanOrEqual(90);
    expect(a.methods.find((m) => m.method === "low-moisture")?.verdict).toBe("needs-testing-first");
    expect(a.worse).toBeLessThan(0.2);
  });

  it("pure viscose with a pet accident treated with kitchen cleaner: beyond repair .7 or more; cut down, or replaced", () => {
    const a = of({
      labelText: "100% viscose", incidents: ["pet-urine", "spotted"], liquid: "urine", since: "week", treatments: ["household-cleaner", "rubbed"], treatedBy: "owner",
      changes: ["browner", "stiff", "smell"], room: "ordinary", household: ["pets"], back: "loomed", ...SIZE,
    }, { wetNow: "no" });
    expect(a.beyondRepair).toBeGreaterThanOrEqual(0.7);
    expect(["advise-cut-down", "advise-claim-or-replacement"]).toContain(a.advice.action);
    expect(a.money?.cutDown).not.toBeNull();
  });

  it("silk, dusty or lightly soiled: median 85 or more", () => {
    const a = of({
      labelText: "100% silk", sellerSaid: "silk", shine: "two-tone", touch: "warm-fine", footprints: "brush", back: "knots", incidents: ["nothing"], changes: ["dirty"], age: "10-25", ...SIZE,
    }, { reason: "routine" });
    expect(a.improvement?.median).toBeGreaterThanOrEqual(85);
  });

  it("viscose is never suitable for wet or home cleaning, whatever is told", () => {
    const many = (q: "incidents" | "treatments" | "changes" | "household") => fc.uniqueArray(fc.constantFrom(...Object.keys(QUESTIONS[q].answers)), { maxLength: 3 });
    const anyRug = fc.record({ incidents: many("incidents"), treatments: many("treatments"), changes: many("changes"), household: many("household"), age: fc.constantFrom(...Object.keys(QUESTIONS.age.answers)), back: fc.constantFrom(...Object.keys(QUESTIONS.back.answers)) }, { requiredKeys: [] }) as fc.Arbitrary<RugAnswers>;
    fc.assert(fc.property(anyRug, (rug) => {
      const a = of({ ...rug, labelText: "100% viscose" });
      for (const id of METHOD_IDS.filter((m) => METHODS[m].water)) expect(a.methods.find((m) => m.method === id)?.verdict, id).not.toBe("suitable");
    }), { numRuns: 20 });
  });
});

/** Answers that say the same but for how wet it was made, the wetter first. */
const WETTER: readonly [RugAnswers["treatments"], RugAnswers["treatments"]][] = [
  [["professional-wet"], ["professional-dry"]], [["machine"], ["professional-dry"]], [["professional-dry"], ["solvent"]], [["household-cleaner"], ["blotted"]], [["plain-water"], ["blotted"]], [["blotted", "plain-water"], ["blotted"]],
];
describe("less water or quicker drying", () => {
  it.each(WETTER)("%j browns no less than %j on any label, with nothing seen yet", (wet, dry) => {
    for (const labelText of ["100% viscose", "100% wool", "80% wool 20% viscose", "100% cotton", "100% silk"]) {
      for (const since of ["day", "longer"] as const) {
        const browning = (treatments: RugAnswers["treatments"]) => 1 - ["browning-cleaning", "water-mark"].reduce((p, m) => p * (1 - (of({ labelText, treatments, since, incidents: ["spotted"] }).mechanisms.find((x) => x.mechanism === m)?.probability ?? 0)), 1);
        expect(browning(dry), labelText).toBeLessThanOrEqual(browning(wet) + 1e-9);
      }
    }
  });
});

describe("bad and contradictory findings", () => {
  it("never give NaN or an infinite figure, and antiques get neither life nor value", () => {
    const wild = fc.oneof(fc.constant(-5), fc.constant(0), fc.constant(1e-9), fc.constant(1e12), fc.constant(NaN), fc.constant(Infinity), fc.integer({ min: 1, max: 600 }));
    const rug = fc.record({
      widthCm: wild, lengthCm: wild, price: wild, boughtYear: fc.constantFrom(1600, 2020, 3020), currency: fc.constantFrom("GBP", "XTS"), boughtWhere: fc.constantFrom("specialist", "bazaar"),
      labelText: fc.constantFrom("100% viscose", "აბრეშუმი", "100% wool 100% silk"), age: fc.constantFrom("under-2", "25-80", "antique"), incidents: fc.constantFrom(["nothing", "flood"], ["pet-urine", "sun"]),
      changes: fc.constantFrom(["none", "browner", "paler", "bare"], Object.keys(QUESTIONS.changes.answers)), treatments: fc.constantFrom(["nothing", "bleach", "professional-wet", "professional-dry"], Object.keys(QUESTIONS.treatments.answers)),
    }, { requiredKeys: [] }) as unknown as fc.Arbitrary<RugAnswers>;
    const losses = fc.option(fc.dictionary(fc.constantFrom("made-worse", "promised-and-failed", "cut-needlessly", "trouble-photo"), fc.constantFrom(0, 1e9)), { nil: null });
    fc.assert(fc.property(rug, losses, (r, l) => {
      const a = assess(findingsFromAnswers(r, {}), defaultSettings({ losses: l }), AS_OF);
      const numbers: number[] = [];
      JSON.stringify(a, (_, v: unknown) => { if (typeof v === "number") numbers.push(v); return v; });
      expect(numbers.filter((n) => !Number.isFinite(n))).toEqual([]);
      for (const range of [a.improvement, a.lifeYears, a.money?.clean, a.money?.cutDown, a.money?.replace, a.money?.valueToday]) {
        if (range) expect(0 <= range.low && range.low <= range.median && range.median <= range.high, JSON.stringify(range)).toBe(true);
      }
      if (r.age === "antique") {
        expect([a.lifeYears, a.money?.valueToday ?? null, a.money?.cutDown ?? null]).toEqual([null, null, null]);
        expect(a.advice.losses.map((x) => x.action)).not.toContain("advise-cut-down");
      }
    }), { numRuns: 40 });
  });
});
