import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHANGES, CHANGE_IDS, DAMAGE_IDS, FAMILIES, SILENCE_COUNTS, type ChangeRow, type DamageId } from "../../../lib/trade/damage";
import type { FibreId } from "../../../lib/trade/fibres";
import { improvementCell, ROW_IDS, ROWS_OF, type RowId } from "../../../lib/trade/improvement";
import { QUESTIONS } from "../../../lib/trade/questions";
import type { Finding } from "../../../lib/triage/finding";
import { SIGNS, SIGN_IDS } from "../../../lib/trade/signs";
import { measuredChange } from "../../../lib/triage/clues";
import { KINDS } from "../../../lib/triage/kinds";
import { groupsOf } from "../../../lib/triage/mechanism-sets";
import { freshChance, mechanismPriors, triggerChances } from "../../../lib/triage/mechanism-priors";
import { rulingRows } from "../../../lib/triage/prospects";
import { readTold } from "../../../lib/triage/told";
import { marginals, whatHappened } from "../../../lib/triage/what-happened";
import { belief, findings, told } from "./told";

const chanceOf = (answers: Record<string, Finding["value"]>, mechanism: string, fibre: FibreId = "viscose"): number =>
  marginals(whatHappened(told(answers)), belief({ [fibre]: 1 })).find((m) => m.mechanism === mechanism)?.probability ?? 0;

interface Posterior { readonly marginal: Record<string, number>; readonly ruling: Record<string, number> }

/** The chance of what was told of one clue, given a set. */
function chanceOfClue(row: ChangeRow, set: readonly DamageId[], told: { shown: number; silence: number }): number {
  let unseen = 1 - row.none;
  for (const m of set) unseen *= 1 - (row.by[m] ?? 0);
  return (1 - told.shown * unseen) * (unseen / (1 - row.none)) ** told.silence;
}

/** Which row rules in a set for one ageing: the worst by median, then 90th, then 10th percentile; soil where none has a row. */
function worstRow(set: readonly DamageId[], fibre: FibreId, fresh: { browning: boolean; dye: boolean }): RowId {
  const rows = set.flatMap((m) => { const r = ROWS_OF[m]; return r ? [(m === "dye-bleed" ? fresh.dye : fresh.browning) ? r.fresh : r.old] : []; });
  const cell = (r: RowId) => improvementCell(r, fibre);
  return rows.sort((a, b) => cell(a).median - cell(b).median || cell(a).high - cell(b).high || cell(a).low - cell(b).low || ROW_IDS.indexOf(a) - ROW_IDS.indexOf(b))[0] ?? "soil";
}

/**
 * The posterior by its definition, over every subset of every mechanism at once: prior of a set as a product, one family as
 * one three-sided die, clues as leaky alternatives. Written apart from the program's components.
 */
function bruteForce(given: readonly Finding[], fibre: FibreId): Posterior {
  const t = readTold(given);
  const prior = mechanismPriors(t, fibre);
  const measured = measuredChange(t);
  const clues = [
    ...CHANGE_IDS.map((c) => {
      const shown = t.has(`changes:${c}`) ? 1 : measured?.change === c ? measured.sure : 0;
      return { row: CHANGES[c], told: { shown, silence: t.answered("changes") ? SILENCE_COUNTS.value * (1 - shown) : 0 } };
    }),
    ...SIGN_IDS.map((s) => ({ row: SIGNS[s], told: { shown: t.signs.shown.includes(s) ? 1 : 0, silence: t.signs.absent.includes(s) ? 1 : 0 } })),
  ];
  const marginal: Record<string, number> = { "soil-only": 0 };
  const ruling: Record<string, number> = Object.fromEntries(ROW_IDS.map((r) => [r, 0]));
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
    for (const c of clues) if (c.told.shown > 0 || c.told.silence > 0) p *= chanceOfClue(c.row, set, c.told);
    total += p;
    for (const m of set.length > 0 ? set : (["soil-only"] as const)) marginal[m] = (marginal[m] ?? 0) + p;
    for (const browning of [true, false]) for (const dye of [true, false]) {
      const [fb, fd] = [freshChance("browning", t), freshChance("dye", t)];
      const row = worstRow(set, fibre, { browning, dye });
      ruling[row] = (ruling[row] ?? 0) + p * (browning ? fb : 1 - fb) * (dye ? fd : 1 - fd);
    }
  }
  const scaled = (sums: Record<string, number>) => Object.fromEntries(Object.entries(sums).map(([m, x]) => [m, x / total]));
  return { marginal: scaled(marginal), ruling: scaled(ruling) };
}

const bench = (what: string, value: Finding["value"]): Finding => ({ what: `test:${what}`, value, strength: "bench", from: "bench:1" });

describe("whatHappened", () => {
  it.each([
    ["a pet and a kitchen cleaner on viscose", findings({ incidents: ["pet-urine", "spotted"], since: "week", treatments: ["household-cleaner", "rubbed"], treatedBy: "owner", changes: ["browner", "stiff", "smell"] }), "viscose"],
    ["coffee on wool", findings({ incidents: ["spill"], liquid: "coffee-tea", since: "day", changes: ["browner", "ring"] }), "wool"],
    ["nothing told", [], "viscose"],
    ["a colour ran, nobody knows why", findings({ incidents: ["unknown"], changes: ["ran", "browner"] }), "silk"],
    ["a measured change and tests of the place, wool and silk", [...findings({ incidents: ["washed-professional"], since: "week", "colour-change": { deltaE: 5, direction: "yellower-darker", uncertainty: 1.2 } }),
      bench("spot-ph", { place: "affected", ph: 9 }), bench("ultraviolet", { place: "affected", glow: "yellow-green" }), bench("dye-bleed", { colour: "red", water: "none" })], "wool-silk"],
    ["eight changes at once", findings({ incidents: ["flood"], changes: ["browner", "ring", "stiff", "smell", "spots", "paler", "wavy", "dirty"] }), "other"],
  ] as const)("agrees with every subset counted by definition, marginals and ruling rows, to 1e-9: %s", (_, given, fibre) => {
    const t = readTold(given);
    const happened = whatHappened(t);
    const truth = bruteForce(given, fibre);
    const program = new Map(marginals(happened, belief({ [fibre]: 1 })).map((m) => [m.mechanism as string, m.probability]));
    for (const [m, p] of Object.entries(truth.marginal)) {
      if (p > 0.0101) expect(program.get(m), m).toBeCloseTo(p, 9);
      else expect(program.get(m) ?? 0, m).toBeLessThan(0.0102);
    }
    const rows = rulingRows(happened, t)[fibre];
    for (const r of ROW_IDS) expect(rows[r], r).toBeCloseTo(truth.ruling[r] as number, 9);
  });

  it("lets one cause explain another away: cleaning that browns makes browning in use less likely", () => {
    const damp = { incidents: ["damp"], changes: ["browner"] };
    expect(chanceOf({ ...damp, treatments: ["professional-wet"] }, "browning-use")).toBeLessThan(chanceOf(damp, "browning-use") - 0.1);
  });

  it("keeps fresh and old of one kind apart", () => {
    for (const [fresh, old] of FAMILIES) {
      const [a, b] = [DAMAGE_IDS.indexOf(fresh), DAMAGE_IDS.indexOf(old)];
      const { components } = whatHappened(told({ incidents: ["spill", "pet-urine"], changes: ["smell", "ring"] }));
      expect(components.some((c) => c.masks.some((m) => m & (1 << a) && m & (1 << b)))).toBe(false);
      expect(components.some((c) => c.masks.some((m) => m & (1 << a)))).toBe(true);
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

  const measured = (deltaE: number, uncertainty = 0.5) => chanceOf({ incidents: ["damp"], "colour-change": { deltaE, direction: "yellower-darker", uncertainty } }, "browning-use");
  it("takes a measured change by degrees: never falling as ΔE00 rises, with no jump at 3.4", () => {
    for (let d = 0; d < 12; d += 0.25) expect(measured(d + 0.25)).toBeGreaterThanOrEqual(measured(d) - 1e-12);
    expect(measured(3.5) - measured(3.3)).toBeLessThan(0.05);
    expect(measured(0)).toBeCloseTo(chanceOf({ incidents: ["damp"] }, "browning-use"), 1);
    expect(measured(9)).toBeGreaterThan(measured(3.4) + 0.1);
  });
  it("trusts a measured change less the less sure it is", () => {
    expect(measured(6, 4)).toBeLessThan(measured(6, 0.5));
    expect(measured(6, 0.5)).toBeLessThan(chanceOf({ incidents: ["damp"], changes: ["browner"] }, "browning-use") + 1e-9);
  });
  it("reads nothing from a measurement without a direction or a number", () => {
    const plain = chanceOf({ incidents: ["damp"] }, "browning-use");
    expect(chanceOf({ incidents: ["damp"], "colour-change": { deltaE: NaN, direction: "yellower-darker" } }, "browning-use")).toBe(plain);
    expect(chanceOf({ incidents: ["damp"], "colour-change": { deltaE: 9, direction: "another-hue" } }, "browning-use")).toBe(plain);
  });

  it("sums to one in every component and on every kind, whatever was told", () => {
    fc.assert(fc.property(anyAnswers, (answers) => {
      for (const c of whatHappened(told(answers)).components) {
        KINDS.forEach((_, k) => expect(Array.from(c.masks, (__, i) => c.chances[i * KINDS.length + k] as number).reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9));
      }
    }), { numRuns: 60 });
  });
});

describe("tests of places", () => {
  const after = (answers: Record<string, Finding["value"]>, tests: Finding[], mechanism: string, fibre: FibreId = "wool") =>
    marginals(whatHappened(readTold([...findings(answers), ...tests])), belief({ [fibre]: 1 })).find((m) => m.mechanism === mechanism)?.probability ?? 0;
  const UNKNOWN = { incidents: ["unknown"], changes: ["browner", "smell"] };
  it("alkaline and fluorescing speaks for old urine, neutral and dark against it", () => {
    const before = after(UNKNOWN, [], "urine-old");
    const [alkaline, glows] = [bench("spot-ph", { place: "affected", ph: 9.1 }), bench("ultraviolet", { place: "affected", glow: "yellow-green" })];
    expect(after(UNKNOWN, [alkaline], "urine-old")).toBeGreaterThan(before);
    expect(after(UNKNOWN, [alkaline, glows], "urine-old")).toBeGreaterThan(after(UNKNOWN, [alkaline], "urine-old"));
    expect(after(UNKNOWN, [bench("spot-ph", { place: "affected", ph: 6 }), bench("ultraviolet", { place: "affected", glow: "none" })], "urine-old")).toBeLessThan(before);
  });
  it("an untouched place that is as alkaline takes the news away", () => {
    const both = [bench("spot-ph", { place: "affected", ph: 8.5 }), bench("spot-ph", { place: "untouched", ph: 8.2 })];
    expect(after(UNKNOWN, both, "urine-old")).toBeLessThan(after(UNKNOWN, both.slice(0, 1), "urine-old"));
  });
  it("a dye that moves speaks for one that ran; order and doubles of tests change nothing", () => {
    const ran = { incidents: ["washed-home"], changes: ["ran"] };
    const tests = [bench("dye-bleed", { colour: "red", water: "strong" }), bench("dye-bleed", { colour: "blue", water: "none" }), bench("moisture", { place: "affected", percent: 12 })];
    expect(after({ incidents: ["washed-home"] }, tests, "dye-bleed")).toBeGreaterThan(after({ incidents: ["washed-home"] }, [], "dye-bleed"));
    expect(after(ran, [...tests].reverse(), "dye-bleed")).toBe(after(ran, tests, "dye-bleed"));
    expect(after(ran, [...tests, ...tests], "dye-bleed")).toBe(after(ran, tests, "dye-bleed"));
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

describe("mechanismPriors by make, ground, who and time", () => {
  const at = (answers: Record<string, Finding["value"]>, m: DamageId, fibre: FibreId = "wool") => mechanismPriors(told(answers), fibre)[m];
  it("a back fails where it is glued, hardly where it is knotted", () => {
    expect(at({ back: "cloth" }, "backing-failure")).toBeGreaterThan(5 * at({ back: "knots" }, "backing-failure"));
  });
  it("browning wicks into wool from jute, less from cotton, little from polypropylene; viscose browns by itself", () => {
    const of = (ground: string, fibre: FibreId) => at({ treatments: ["professional-wet"], label: { says: null, ground } }, "browning-cleaning", fibre);
    expect(of("100 % jute", "wool")).toBeGreaterThan(of("100 % cotton", "wool"));
    expect(of("100 % cotton", "wool")).toBeGreaterThan(of("100 % polypropylene", "wool"));
    expect(of("100 % jute", "viscose")).toBe(of("100 % polypropylene", "viscose"));
  });
  it("a cleaner of rugs alone does less harm than the owner with the same means", () => {
    const by = (treatedBy: string) => at({ treatments: ["household-cleaner"], treatedBy }, "browning-cleaning", "viscose");
    expect(by("rug-cleaner")).toBeLessThan(by("me-trade"));
    expect(by("me-trade")).toBeLessThan(by("owner"));
  });
  it("mould takes days", () => expect(at({ incidents: ["flood"], since: "hour" }, "mould", "cotton")).toBeLessThan(0.1 * at({ incidents: ["flood"], since: "week" }, "mould", "cotton")));
});

describe("groupsOf", () => {
  it("joins what shares a clue or a family, and leaves the rest alone", () => {
    const bit = (m: DamageId) => 1 << DAMAGE_IDS.indexOf(m);
    const groups = groupsOf([bit("mould") | bit("fading"), bit("fading") | bit("urine-old")]);
    expect(groups).toContain(bit("mould") | bit("fading") | bit("urine-old") | bit("urine-fresh"));
    expect(groups).toContain(bit("insects"));
    expect(groups.reduce((a, b) => a + b, 0)).toBe(2 ** DAMAGE_IDS.length - 1);
  });
});
