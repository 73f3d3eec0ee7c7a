import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHANGES, CHANGE_IDS, DAMAGE_IDS, FAMILIES, SILENCE_COUNTS, type DamageId } from "../../../lib/trade/damage";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import { QUESTIONS } from "../../../lib/trade/questions";
import type { Finding } from "../../../lib/triage/finding";
import { freshChance, marginals, mechanismPriors, triggerChances, whatHappened } from "../../../lib/triage/what-happened";
import { mostAtOnce } from "../../../lib/triage/mechanism-sets";
import { belief, told } from "./told";

const chanceOf = (answers: Record<string, Finding["value"]>, mechanism: string, fibre: FibreId = "viscose"): number =>
  marginals(whatHappened(told(answers)), belief({ [fibre]: 1 })).find((m) => m.mechanism === mechanism)?.probability ?? 0;

/**
 * The same posterior by its definition, over every subset of every mechanism: prior of a set as a product, one family as
 * one three-sided die, changes as leaky alternatives. Written apart from the program's recursion.
 */
function bruteForce(answers: Record<string, Finding["value"]>, fibre: FibreId): Record<string, number> {
  const t = told(answers);
  const prior = mechanismPriors(t, fibre);
  const sums: Record<string, number> = { "soil-only": 0 };
  let total = 0;
  for (let bits = 0; bits < 2 ** DAMAGE_IDS.length; bits += 1) {
    const set = DAMAGE_IDS.filter((_, i) => bits & (1 << i));
    if (FAMILIES.some(([a, b]) => set.includes(a) && set.includes(b))) continue;
    let p = 1;
    for (const m of DAMAGE_IDS) {
      const family = FAMILIES.find((f) => f.includes(m));
      if (!family) p *= set.includes(m) ? prior[m] : 1 - prior[m];
      else if (m === family[0]) p *= set.includes(family[0]) ? prior[family[0]] : set.includes(family[1]) ? prior[family[1]] : 1 - prior[family[0]] - prior[family[1]];
    }
    for (const c of CHANGE_IDS) {
      let unseen = 1 - CHANGES[c].none;
      for (const m of set) unseen *= 1 - (CHANGES[c].by[m] ?? 0);
      if (t.has(`changes:${c}`)) p *= 1 - unseen;
      else if (t.answered("changes")) p *= unseen ** SILENCE_COUNTS.value;
    }
    total += p;
    for (const m of set.length > 0 ? set : (["soil-only"] as const)) sums[m] = (sums[m] ?? 0) + p;
  }
  return Object.fromEntries(Object.entries(sums).map(([m, s]) => [m, s / total]));
}

describe("whatHappened", () => {
  it.each([
    ["a pet and a kitchen cleaner on viscose", { incidents: ["pet-urine", "spotted"], since: "week", treatments: ["household-cleaner", "rubbed"], changes: ["browner", "stiff", "smell"] }, "viscose"],
    ["coffee on wool", { incidents: ["spill"], liquid: "coffee-tea", since: "day", changes: ["browner", "ring"] }, "wool"],
    ["nothing told", {}, "viscose"],
    ["a colour ran, nobody knows why", { incidents: ["unknown"], changes: ["ran"] }, "silk"],
  ] as const)("agrees with every subset counted by definition, within .02: %s", (_, answers, fibre) => {
    const all = bruteForce(answers as never, fibre);
    const program = new Map(marginals(whatHappened(told(answers as never)), belief({ [fibre]: 1 })).map((m) => [m.mechanism as string, m.probability]));
    for (const [m, p] of Object.entries(all)) expect(Math.abs((program.get(m) ?? 0) - p), `${m}: ${p}`).toBeLessThan(0.02);
  });

  it("lets one cause explain another away: cleaning that browns makes browning in use less likely", () => {
    const damp = { incidents: ["damp"], changes: ["browner"] };
    expect(chanceOf({ ...damp, treatments: ["professional-wet"] }, "browning-use")).toBeLessThan(chanceOf(damp, "browning-use") - 0.1);
  });

  it("keeps fresh and old of one kind apart", () => {
    for (const [fresh, old] of FAMILIES) {
      const { sets } = whatHappened(told({ incidents: ["spill", "pet-urine"], changes: ["smell", "ring"] }));
      expect(sets.some((s) => s.includes(fresh) && s.includes(old))).toBe(false);
      expect(sets.some((s) => s.includes(fresh))).toBe(true);
    }
  });

  it("gives soil alone where a routine clean is asked for and nothing happened", () => {
    expect(chanceOf({ incidents: ["nothing"], changes: ["dirty"] }, "soil-only", "wool")).toBeGreaterThan(0.85);
  });

  it("knows an accident that was named", () => {
    expect(chanceOf({ incidents: ["pet-urine"], since: "longer" }, "urine-old")).toBeGreaterThan(0.9);
    expect(chanceOf({ incidents: ["pet-urine"], since: "day" }, "urine-fresh")).toBeGreaterThan(0.9);
    expect(chanceOf({ incidents: ["pet-urine"], since: "day" }, "urine-old")).toBeLessThan(0.05);
  });

  it("does not take clean water for a food stain", () => {
    expect(chanceOf({ incidents: ["spill"], liquid: "water", since: "day" }, "food-fresh", "wool")).toBeLessThan(0.1);
    expect(chanceOf({ incidents: ["spill"], liquid: "water", since: "day" }, "water-mark", "silk")).toBeGreaterThan(0.3);
  });

  it("takes a measured change from ΔE00 3.4 on, and not below", () => {
    const at = (deltaE: number) => chanceOf({ incidents: ["damp"], "colour-change": { deltaE, direction: "yellower-darker" } }, "browning-use");
    expect(at(3.3)).toBeCloseTo(chanceOf({ incidents: ["damp"] }, "browning-use"), 6);
    expect(at(3.4)).toBeGreaterThan(at(3.3) + 0.2);
    expect(at(9)).toBeCloseTo(at(3.4), 6);
  });

  it("sums to one for every fibre, whatever was told", () => {
    fc.assert(fc.property(anyAnswers, (answers) => {
      const { given } = whatHappened(told(answers));
      for (const f of FIBRE_IDS) expect(given[f].reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
    }), { numRuns: 60 });
  });
});

const many = (question: "incidents" | "treatments" | "changes" | "household") => fc.uniqueArray(fc.constantFrom(...Object.keys(QUESTIONS[question].answers)), { maxLength: 5 });
const one = (question: "liquid" | "since" | "room" | "age" | "back") => fc.constantFrom(...Object.keys(QUESTIONS[question].answers));
const anyAnswers = fc.record({
  incidents: many("incidents"), treatments: many("treatments"), changes: many("changes"), household: many("household"), liquid: one("liquid"), since: one("since"), back: one("back"), age: one("age"),
}, { requiredKeys: [] }) as fc.Arbitrary<Record<string, Finding["value"]>>;

describe("triggerChances", () => {
  const WETTER: [string, string][] = [["professional-wet", "professional-dry"], ["machine", "professional-dry"], ["bleach", "blotted"], ["household-cleaner", "blotted"], ["plain-water", "blotted"], ["steam-heat", "blotted"], ["soap", "nothing"]];

  it("never raises browning by less water or quicker drying", () => {
    fc.assert(fc.property(anyAnswers, fc.constantFrom(...WETTER), (answers, [wet, drier]) => {
      const other = ((answers["treatments"] as string[] | undefined) ?? []).filter((x) => x !== wet && x !== drier);
      const at = (t: string[]) => triggerChances(told({ ...answers, treatments: t }));
      const [more, less] = [at([...other, wet]), at([...other, drier])];
      for (const m of ["browning-cleaning", "browning-use", "water-mark", "pile-distortion"] as DamageId[]) expect(less[m]).toBeLessThanOrEqual(more[m] + 1e-12);
    }), { numRuns: 300 });
  });

  it("never lowers a mechanism by one more incident", () => {
    fc.assert(fc.property(anyAnswers, fc.constantFrom("pet-urine", "flood", "damp", "sun", "wear", "water"), (answers, incident) => {
      const before = { incidents: ["nothing"], ...answers };
      const after = { ...before, incidents: [...(before.incidents as string[]), incident] };
      const [a, b] = [triggerChances(told(before)), triggerChances(told(after))];
      if ((before.incidents as string[]).length > 0 && !(before.incidents as string[]).includes("unknown")) for (const m of DAMAGE_IDS) expect(b[m]).toBeGreaterThanOrEqual(a[m] - 1e-12);
    }), { numRuns: 200 });
  });

  it("counts one event once: the cleaner's wash and “after cleaning” are the same wash", () => {
    const wash = triggerChances(told({ treatments: ["professional-wet"], incidents: ["washed-professional"], reason: "after-cleaning" }));
    expect(wash["browning-cleaning"]).toBeCloseTo(triggerChances(told({ treatments: ["professional-wet"], incidents: ["nothing"] }))["browning-cleaning"], 9);
  });
});

describe("mechanismPriors", () => {
  it("splits a family by freshness without losing any of it", () => {
    const t = told({ incidents: ["pet-urine"], since: "week" });
    const p = mechanismPriors(t, "wool");
    expect(p["urine-fresh"] + p["urine-old"]).toBeCloseTo(triggerChances(t)["urine-old"], 9);
    expect(p["urine-fresh"] / (p["urine-fresh"] + p["urine-old"])).toBeCloseTo(freshChance("urine", t), 9);
  });
  it("spares polypropylene from browning and viscose from moths", () => {
    const t = told({ treatments: ["professional-wet"], incidents: ["insects"] });
    expect(mechanismPriors(t, "polypropylene")["browning-cleaning"]).toBeLessThan(0.1);
    expect(mechanismPriors(t, "viscose").insects).toBeLessThan(0.05);
    expect(mechanismPriors(t, "wool").insects).toBeGreaterThan(0.9);
  });
});

describe("freshChance", () => {
  it("calls ink old from the start", () => expect(freshChance("food", told({ liquid: "ink", since: "hour" }))).toBe(0));
  it("takes what has just happened as fresh where the day is not told", () => expect(freshChance("urine", told({ reason: "just-happened" }))).toBe(1));
  it("takes dye as damp where the rug is damp now", () => expect(freshChance("dye", told({ since: "week", wetNow: "damp" }))).toBe(0.9));
});

describe("mostAtOnce", () => {
  it("takes every subset of twelve mechanisms (4096 sets), six at once of thirteen (4096), four of sixteen (2517)", () => {
    expect([mostAtOnce(0), mostAtOnce(12), mostAtOnce(13), mostAtOnce(16)]).toEqual([0, 12, 6, 4]);
  });
});
