import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CAPS, OLD_AGES, OLD_CEILING, SHORT_LIVED, SILK_CEILING, TEMPER, WHOLLY_MISLEADING, type EvidenceStrength } from "../../../lib/trade/evidence-caps";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import type { LikelihoodTable, NamedFibre } from "../../../lib/trade/likelihood-table";
import { LABEL_SAYS, OTHER_LABELLED_OTHER } from "../../../lib/trade/likelihoods-label";
import { LIKELIHOODS } from "../../../lib/trade/likelihoods";
import { priorFor } from "../../../lib/trade/priors";
import { believe } from "../../../lib/triage/belief";
import type { Finding } from "../../../lib/triage/finding";
import { AS_OF, SETTINGS, told } from "./belief-helpers";

/**
 * The method of the design worked out slowly, in plain probabilities and without the program's own steps:
 * L′ = (1 − ε)·L + ε·Σπ·L over words and photos, labels outside that block, groups tempered, caps last.
 */
type Fibres = Record<FibreId, number>;
const NAMED = FIBRE_IDS.filter((f): f is NamedFibre => f !== "other");
const each = (value: (f: FibreId) => number): Fibres => Object.fromEntries(FIBRE_IDS.map((f) => [f, value(f)])) as Fibres;

interface Answer { readonly table: LikelihoodTable; readonly answer: string; readonly strength: EvidenceStrength }
/** By how many of a group are there; the label is never tempered. */
function powerOf(a: Answer, all: readonly Answer[]): number {
  if (a.table.group === null || a.table.what === "label") return 1;
  return TEMPER[a.table.group][all.filter((b) => b.table.group === a.table.group).length - 1] as number;
}

function byHand(answers: readonly Answer[], prior: Fibres): Fibres {
  const cell = (a: Answer, f: NamedFibre) => a.table.rows[f][a.table.answers.indexOf(a.answer)] as number;
  const meanOf = (value: (f: NamedFibre) => number) => NAMED.reduce((s, f) => s + prior[f] * value(f), 0) / (1 - prior.other);
  const tempered = (a: Answer): Fibres => {
    const power = powerOf(a, answers);
    const otherOwn = a.table.what === "label" ? (a.answer === "other" ? OTHER_LABELLED_OTHER : (1 - OTHER_LABELLED_OTHER) / (LABEL_SAYS.length - 1)) ** power : null;
    return each((f) => (f === "other" ? otherOwn ?? meanOf((g) => cell(a, g) ** power) : cell(a, f) ** power));
  };
  const product = (which: readonly Answer[]) => which.map(tempered).reduce((p, l) => each((f) => p[f] * l[f]), each(() => 1));
  const isLabel = (a: Answer) => a.strength.startsWith("label");
  const words = product(answers.filter((a) => !isLabel(a)));
  const meanWords = FIBRE_IDS.reduce((s, f) => s + prior[f] * words[f], 0);
  const labels = product(answers.filter(isLabel));
  const weights = each((f) => prior[f] * ((1 - WHOLLY_MISLEADING) * words[f] + WHOLLY_MISLEADING * meanWords) * labels[f]);
  const total = FIBRE_IDS.reduce((s, f) => s + weights[f], 0);
  const capOf = (f: FibreId): number => {
    const supports = (a: Answer) => (f === "other" ? a.table.what === "label" && a.answer === "other" : cell(a, f) > meanOf((g) => cell(a, g)));
    const best = Math.max(CAPS.told, ...answers.filter(supports).map((a) => CAPS[a.strength]));
    const old = answers.some((a) => a.table.what === "age" && OLD_AGES.includes(a.answer)) && SHORT_LIVED.includes(f) && best === CAPS.told;
    return Math.max(prior[f], Math.min(best, f === "silk" ? SILK_CEILING : old ? OLD_CEILING : 1));
  };
  const share = Math.max(0, ...FIBRE_IDS.map((f) => (weights[f] / total > capOf(f) ? (weights[f] / total - capOf(f)) / (weights[f] / total - prior[f]) : 0)));
  return each((f) => (1 - share) * (weights[f] / total) + share * prior[f]);
}

const TABLES = LIKELIHOODS.filter((t) => t.what !== "changes");
const anyAnswers: fc.Arbitrary<readonly Answer[]> = fc.shuffledSubarray([...TABLES]).chain((tables) => fc.tuple(...tables.map((table) => fc.record({
  table: fc.constant(table), answer: fc.constantFrom(...table.answers),
  strength: fc.constantFrom<EvidenceStrength>(...(table.what === "label" ? ["label-typed", "label-photo"] as const : ["told", "photo"] as const)),
}))));
const findingOf = ({ table, answer, strength }: Answer): Finding => told(table.what, table.what === "label" ? { says: answer, text: answer } : answer, strength);

/** The least chance that is called "likely" (IPCC guidance note 2010). */
const LIKELY_FROM = 0.66;

describe("believe, beside the method worked out by hand", () => {
  it("agrees for any answers, labels and reasons, one answer a question", () => {
    const again = new Map([null, "what-is-it", "mis-sold", "trade"].map((reason) => [reason, { prior: priorFor({ ...SETTINGS, reason }), belief: believe([], { ...SETTINGS, reason }, AS_OF) }]));
    fc.assert(fc.property(anyAnswers, fc.constantFrom(...again.keys()), (answers, reason) => {
      const { prior, belief } = again.get(reason) as NonNullable<ReturnType<typeof again.get>>;
      const expected = byHand(answers, prior);
      const found = belief.hypothetical(answers.map(findingOf));
      for (const f of FIBRE_IDS) expect(Math.abs(found[f] - expected[f]), f).toBeLessThan(1e-8);
    }), { numRuns: 1500 });
  });
  it("lets no fibre over the cap of its label, typed or photographed, nor silk over its ceiling", () => {
    const again = believe([], SETTINGS, AS_OF).hypothetical;
    fc.assert(fc.property(anyAnswers, (answers) => {
      const label = answers.find((a) => a.table.what === "label");
      const p = again(answers.map(findingOf));
      for (const f of FIBRE_IDS) expect(p[f], f).toBeLessThanOrEqual(CAPS[label?.strength ?? "told"] + 1e-9);
      expect(p.silk).toBeLessThanOrEqual(SILK_CEILING + 1e-9);
    }), { numRuns: 1500 });
  });
});

describe("a rug in use for 25 years and more", () => {
  it("is never called viscose, lyocell or acetate as much as likely by words and photos, whatever they are and whoever writes", () => {
    const again = ["mis-sold", "trade", "older"].map((reason) => believe([], { ...SETTINGS, reason }, AS_OF).hypothetical);
    fc.assert(fc.property(anyAnswers, fc.constantFrom(...again), fc.constantFrom("25-80", "antique"), (answers, of, age) => {
      const p = of([...answers.filter((a) => !["age", "label"].includes(a.table.what)).map(findingOf), told("age", age)]);
      for (const f of SHORT_LIVED) expect(p[f], f).toBeLessThan(LIKELY_FROM);
    }), { numRuns: 1000 });
  });
  it.each(["mis-sold", "trade"])("not where every word speaks for it (%s), until a label agrees; said to be of two ages it is not held back so", (reason) => {
    const of = (...more: Finding[]) => believe([
      told("sellerSaid", "art-silk"), told("shine", "two-tone"), told("touch", "cool-slippery"), told("footprints", "stay"), told("back", "loomed"), told("changes", ["stiff"]), told("incidents", ["spill"]), ...more,
    ], { ...SETTINGS, reason }, AS_OF).probabilities.viscose;
    expect(of()).toBeGreaterThan(0.8);
    expect(of(told("age", "25-80"))).toBeLessThan(LIKELY_FROM);
    expect(of(told("age", "25-80"))).toBeGreaterThan(0.6);
    expect(of(told("age", "25-80"), told("label", { says: "viscose", text: "100% viscose" }, "label-typed"))).toBeGreaterThan(0.9);
    expect(of(told("age", "25-80"), told("age", "2-5"))).toBeGreaterThan(LIKELY_FROM);
  });
});

describe("an answer that staff confirmed in a photo", () => {
  it("replaces what was told to the same question, and leaves the others", () => {
    const [shine, touch] = [told("shine", "none"), told("touch", "cool-slippery")];
    const seen: Finding = { what: "shine", value: "two-tone", strength: "photo", from: "staff" };
    const of = (findings: Finding[]) => believe(findings, SETTINGS, AS_OF);
    expect(of([shine, touch, seen]).probabilities).toEqual(of([seen, touch]).probabilities);
    const replaced = of([shine, touch, seen]).findings.find((f) => f.what === "shine" && f.strength === "told");
    expect(replaced?.decibans).toBe(0);
    expect(replaced?.staff).toContain("Not weighed");
  });
  it("carries no further than words do", () => expect(CAPS.photo).toBe(CAPS.told));
});
