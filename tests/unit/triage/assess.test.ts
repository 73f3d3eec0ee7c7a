import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS } from "../../../lib/trade/fibres";
import { QUESTIONS, type RugAnswers } from "../../../lib/trade/questions";
import { assess, defaultSettings, MODEL_VERSION } from "../../../lib/triage/assess";
import type { Finding } from "../../../lib/triage/finding";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { readTold } from "../../../lib/triage/told";
import { marginals, whatHappened } from "../../../lib/triage/what-happened";
import { belief } from "./told";

const AS_OF = "2026-03-01T09:00:00Z";
const of = (rug: RugAnswers, enquiry: Parameters<typeof findingsFromAnswers>[1] = {}) => assess(findingsFromAnswers(rug, enquiry), defaultSettings(), AS_OF);

/** Any answers a person may give, a few at a time. */
const questions = Object.entries(QUESTIONS).filter(([, q]) => q.of === "rug");
const anyRug = fc.record(Object.fromEntries(questions.map(([id, q]) => {
  const answers = [...Object.keys(q.answers), "unsure"];
  return [id, q.kind === "one" ? fc.constantFrom(...answers) : fc.uniqueArray(fc.constantFrom(...answers), { maxLength: 4 })];
})), { requiredKeys: [] }) as fc.Arbitrary<RugAnswers>;
const anyEnquiry = fc.record({ wetNow: fc.constantFrom("wet", "damp", "no", "unsure"), reason: fc.constantFrom(...Object.keys(QUESTIONS.reason.answers)) }, { requiredKeys: [] }) as fc.Arbitrary<Parameters<typeof findingsFromAnswers>[1]>;

describe("assess", () => {
  it("holds for any answers: sums, order, ranges, and a sentence for everything that is null", () => {
    fc.assert(fc.property(anyRug, anyEnquiry, (rug, enquiry) => {
      const a = of(rug, enquiry);
      expect(a.fibres.reduce((s, f) => s + f.probability, 0)).toBeCloseTo(1, 9);
      expect(a.fibres).toHaveLength(FIBRE_IDS.length);
      for (const f of a.fibres) expect(f.probability, f.fibre).toBeLessThanOrEqual(0.9 + 1e-9);
      for (const m of a.mechanisms) expect(m.probability > 0.01 && m.probability <= 1).toBe(true);
      for (const field of ["improvement", "lifeYears"] as const) {
        const r = a[field];
        if (r) expect(0 <= r.low && r.low <= r.median && r.median <= r.high, field).toBe(true);
      }
      for (const field of ["improvement", "worse", "beyondRepair", "lifeYears", "firstAid"] as const) if (a[field] === null) expect(a.why[field], field).toMatch(/\.$/);
      if (a.money === null) expect(a.why.money).toMatch(/\.$/);
      for (const p of [a.worse, a.beyondRepair]) if (p !== null) expect(p >= 0 && p <= 1).toBe(true);
      expect(a.modelVersion).toBe(MODEL_VERSION);
    }), { numRuns: 25 });
  });

  it("is the same for the same findings, in any order and doubled", () => {
    const findings = findingsFromAnswers({ sellerSaid: "silk", shine: "two-tone", incidents: ["spill"], liquid: "wine", since: "week", changes: ["ring"] }, { wetNow: "no" });
    const first = assess(findings, defaultSettings(), AS_OF);
    expect(assess([...findings].reverse(), defaultSettings(), AS_OF)).toEqual(first);
    expect(assess([...findings, ...findings], defaultSettings(), AS_OF)).toEqual(first);
  });

  it("survives being stored as JSON", () => {
    const a = of({ incidents: ["pet-urine"], changes: ["browner"] });
    expect(JSON.parse(JSON.stringify(a))).toEqual(a);
  });

  it("takes the reason and whether it is wet from the settings where no finding has them", () => {
    const a = assess([], defaultSettings({ wetNow: "wet", emergencyNumber: "112" }), AS_OF);
    expect(a.urgency.level).toBe("hours");
    expect(a.firstAid?.[0]).toContain("112");
  });

  it("reads nothing as evidence from “not sure”", () => {
    expect(of({ shine: "unsure", incidents: ["unsure"], changes: ["unsure"] })).toEqual(of({}));
  });

  it("does not take a rug of more than 25 years for viscose with confidence", () => {
    const a = of({ shine: "two-tone", touch: "cool-slippery", footprints: "stay", age: "25-80", back: "knots" });
    expect(a.fibres.find((f) => f.fibre === "viscose")?.probability).toBeLessThan(0.5);
  });

  it("says more surely that little comes back, the more it points to viscose", () => {
    const trouble = { incidents: ["pet-urine"], since: "week", changes: ["browner"] } as const;
    const at = (labelText: string) => of({ ...trouble, incidents: ["pet-urine"], changes: ["browner"], labelText }).beyondRepair ?? NaN;
    expect(at("100% viscose")).toBeGreaterThan(at("80% wool 20% viscose"));
    expect(at("80% wool 20% viscose")).toBeGreaterThan(at("100% wool"));
  });

  it("never calls a rug lost for certain from words and photos", () => {
    const worst = { labelText: "100% viscose", incidents: ["pet-urine"], since: "years", changes: ["browner", "stiff", "bare"], pricePaid: "10" } as unknown as RugAnswers;
    expect(of(worst).beyondRepair).toBeLessThanOrEqual(0.9);
  });

  it("states no improvement for a sound rug or a repair, and says why", () => {
    expect(of({ incidents: ["nothing"], changes: ["none"] }).why.improvement).toContain("nothing to bring back");
    expect(of({ sellerSaid: "wool", incidents: ["insects"], changes: ["bare"] }).why.improvement).toContain("repairs");
  });

  it("gives an antique to a conservator, with no figure for its life and none for its value", () => {
    const a = of({ age: "antique", back: "knots", incidents: ["wear"], widthCm: 200, lengthCm: 300 });
    expect(a.lifeYears).toBeNull();
    expect(a.money?.valueToday).toBeNull();
    expect(a.advice).toMatchObject({ action: "refer", referTo: expect.stringContaining("conservator") });
    expect(a.onlyInspection.join(" ")).toContain("valuer");
    expect(a.advice.losses.map((l) => l.action)).not.toContain("advise-cut-down");
  });

  it("asks for the place and the size before it advises a cut-down", () => {
    const lost = { labelText: "100% viscose", incidents: ["pet-urine", "spotted"], since: "week", treatments: ["household-cleaner", "rubbed"], changes: ["browner", "stiff"] } as const;
    const a = of({ ...lost, incidents: [...lost.incidents], treatments: [...lost.treatments], changes: [...lost.changes] });
    expect(a.advice.losses.map((l) => l.action)).not.toContain("advise-cut-down");
    const b = of({ ...lost, incidents: [...lost.incidents], treatments: [...lost.treatments], changes: [...lost.changes], widthCm: 170, lengthCm: 240 });
    expect(b.advice.losses.map((l) => l.action)).toContain("advise-cut-down");
  });

  it("takes bench tests of a place in any order: what it does to methods, urgency and chance of harm", () => {
    const told = findingsFromAnswers({ labelText: "100% wool", back: "knots", incidents: ["unknown"], changes: ["browner", "smell"], widthCm: 200, lengthCm: 300 }, {});
    const bench = (what: string, value: Record<string, string | number>, row: number): Finding => ({ what: `test:${what}`, value, strength: "bench", from: `bench:${row}` });
    const tests = [bench("dye-bleed", { colour: "red", water: "none" }, 1), bench("spot-ph", { place: "affected", ph: 9 }, 2), bench("spot-ph", { place: "untouched", ph: 6 }, 3), bench("moisture", { place: "affected", percent: 30 }, 4)];
    const [before, after] = [assess(told, defaultSettings(), AS_OF), assess([...told, ...tests], defaultSettings(), AS_OF)];
    expect(assess([...tests].reverse().concat(told, tests), defaultSettings(), AS_OF)).toEqual(after);
    expect(after.worse).toBeLessThan(before.worse ?? 0);
    expect([before.urgency.level, after.urgency.level]).toEqual(["can-wait", "hours"]);
    const old = (a: typeof after) => a.mechanisms.find((m) => m.mechanism === "urine-old")?.probability ?? 0;
    expect(old(after)).toBeGreaterThan(old(before));
  });

  it("explains less by dirt once a cause is named", () => {
    const soil = (rug: RugAnswers) => marginals(whatHappened(readTold(findingsFromAnswers(rug, {}))), belief({ wool: 1 })).find((m) => m.mechanism === "soil-only")?.probability ?? 0;
    expect(soil({ incidents: ["spill"], liquid: "wine" })).toBeLessThan(soil({ incidents: ["nothing"] }));
  });
});
