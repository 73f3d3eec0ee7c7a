import { describe, expect, it } from "vitest";
import { BENCH_TESTS } from "../../../lib/trade/bench-tests";
import { CAPS, SILK_CEILING, WHOLLY_MISLEADING } from "../../../lib/trade/evidence-caps";
import { FIBRE_IDS, type FibreId } from "../../../lib/trade/fibres";
import type { LikelihoodTable, NamedFibre } from "../../../lib/trade/likelihood-table";
import { LIKELIHOODS } from "../../../lib/trade/likelihoods";
import { ACTIONS, type ActionId } from "../../../lib/trade/losses";
import { priorFor } from "../../../lib/trade/priors";
import type { EnquiryAnswers, RugAnswers } from "../../../lib/trade/questions";
import { WORTH_ASKING } from "../../../lib/trade/questions-value";
import { misnamingLoss, riskContributions, weighActions, type Decision } from "../../../lib/triage/advice";
import { decisionOf, defaultSettings } from "../../../lib/triage/assess";
import { believe } from "../../../lib/triage/belief";
import { findingsFromAnswers } from "../../../lib/triage/findings-from-answers";
import { nextQuestions, worthOfAsking } from "../../../lib/triage/next-question";
import { findings } from "./told";

/**
 * The worth of a question by brute force, from the tables alone: every answer with its chance, Bayes anew after each, and the
 * least of the summed expected losses. One finding of a group at a time, so that no power of tempering comes in.
 */
const AS_OF = "2026-03-01T00:00:00Z";
type Fibres = Record<FibreId, number>;
const NAMED = FIBRE_IDS.filter((f): f is NamedFibre => f !== "other");
const tableOf = (what: string) => LIKELIHOODS.find((t) => t.what === what) as LikelihoodTable;

/** P(answer | fibre), `other` answering like the mean of all by the untouched prior. */
function column(what: string, answer: string, prior: Fibres): Fibres {
  const table = tableOf(what);
  const named = NAMED.map((f) => [f, table.rows[f][table.answers.indexOf(answer)] as number] as const);
  const mean = named.reduce((s, [f, p]) => s + prior[f] * p, 0) / named.reduce((s, [f]) => s + prior[f], 0);
  return { ...Object.fromEntries(named), other: mean } as Fibres;
}

/** Bayes over words, a share ε of the prior mixed in, and the caps of words. */
function posterior(answers: readonly (readonly [string, string])[], prior: Fibres): Fibres {
  const joint = FIBRE_IDS.map((f) => answers.reduce((p, [what, answer]) => p * column(what, answer, prior)[f], prior[f]));
  const total = joint.reduce((a, b) => a + b, 0);
  const damped = FIBRE_IDS.map((f, i) => (1 - WHOLLY_MISLEADING) * ((joint[i] as number) / total) + WHOLLY_MISLEADING * prior[f]);
  const share = Math.max(0, ...FIBRE_IDS.map((f, i) => {
    const cap = Math.max(prior[f], f === "silk" ? Math.min(CAPS.told, SILK_CEILING) : CAPS.told);
    return (damped[i] as number) > cap ? ((damped[i] as number) - cap) / ((damped[i] as number) - prior[f]) : 0;
  }));
  return Object.fromEntries(FIBRE_IDS.map((f, i) => [f, (1 - share) * (damped[i] as number) + share * prior[f]])) as Fibres;
}

/** The least expected loss of the actions that decide now: every risk summed over fibres and rows, naming added. */
function leastLoss(d: Decision, fibres: Fibres): number {
  const at = { ...d, fibres };
  const open = new Set(weighActions(at).map((w) => w.action));
  const risks = riskContributions(at);
  const naming = d.circumstances.asksName * misnamingLoss(fibres, d.losses);
  const losses = (Object.keys(ACTIONS) as ActionId[]).filter((a) => open.has(a) && a !== "ask-for-more" && a !== "inspect-and-test")
    .map((action) => risks.filter((r) => r.action === action).reduce((s, r) => s + r.expected, 0) + (action === "first-aid" ? 0 : naming));
  return Math.min(...losses);
}
const bitsOf = (p: Fibres) => FIBRE_IDS.reduce((s, f) => (p[f] > 0 ? s - p[f] * Math.log2(p[f]) : s), 0);

function byBruteForce(what: string, given: readonly (readonly [string, string])[], { d, prior }: { d: Decision; prior: Fibres }): { drop: number; bits: number } {
  const before = posterior(given, prior);
  let [loss, bits] = [0, 0];
  for (const answer of tableOf(what).answers) {
    const likely = column(what, answer, prior);
    const chance = FIBRE_IDS.reduce((s, f) => s + before[f] * likely[f], 0);
    const after = posterior([...given, [what, answer]], prior);
    loss += chance * leastLoss(d, after);
    bits += chance * bitsOf(after);
  }
  return { drop: Math.max(0, leastLoss(d, before) - loss), bits: Math.max(0, bitsOf(before) - bits) };
}

const CASES = {
  "sold as silk, and asked what it is": { sellerSaid: "silk", age: "5-10", wetNow: "no", household: ["none"], reason: "what-is-it", incidents: ["nothing"], changes: ["none"] },
  "called art silk, with a ring": { sellerSaid: "art-silk", age: "2-5", wetNow: "no", household: ["none"], reason: "older", incidents: ["sun"], changes: ["ring"] },
  "bought at a bazaar, nothing said of it": { boughtWhere: "bazaar", age: "10-25", wetNow: "no", household: ["none"], reason: "routine", incidents: ["nothing"], changes: ["dirty"] },
} as const;

describe.each(Object.entries(CASES))("worthOfAsking: %s", (_, answers) => {
  const settings = defaultSettings({ reason: answers.reason, benchTests: Object.keys(BENCH_TESTS) });
  const told = findings(answers as never);
  const belief = believe(told, settings, AS_OF);
  const { told: read, decision } = decisionOf(told, settings, AS_OF);
  const asking = { ...belief, benchTests: settings.benchTests };
  const worths = worthOfAsking(read, decision, asking);
  const prior = priorFor(settings);
  const given = Object.entries(answers).filter(([what]) => ["sellerSaid", "boughtWhere", "age"].includes(what)) as [string, string][];

  it("starts from the belief that brute force starts from", () => {
    const mine = posterior(given, prior);
    for (const f of FIBRE_IDS) expect(belief.probabilities[f]).toBeCloseTo(mine[f], 9);
  });
  it.each([["shine", "question"], ["touch", "question"], ["footprints", "question"], ["back", "question"], ["fringe", "question"], ["back", "photo"]] as const)("gives %s, a %s, the drop and the bits of brute force", (what, kind) => {
    const expected = byBruteForce(what, given, { d: decision, prior });
    const found = worths.find((w) => w.id === what && w.kind === kind);
    expect(expected.bits).toBeGreaterThan(0.01);
    expect(found?.drop).toBeCloseTo(expected.drop, 9);
    expect(found?.bits).toBeCloseTo(expected.bits, 9);
  });
  it("weighs every open question, photo and test, best for its trouble first", () => {
    const ids = worths.map((w) => `${w.kind}:${w.id}`);
    for (const q of ["shine", "touch", "footprints", "back", "fringe"]) expect(ids).toContain(`question:${q}`);
    for (const p of ["label", "back", "pile", "trouble", "whole"]) expect(ids).toContain(`photo:${p}`);
    for (const t of ["burn", "hypochlorite", "acetone", "formic-acid", "formic-acid-zinc-chloride", "sulphuric-acid-75", "microscopy", "wet-strength"]) expect(ids).toContain(`bench-test:${t}`);
    for (const t of ["dye-bleed", "spot-ph", "moisture", "ultraviolet"]) expect(ids).not.toContain(`bench-test:${t}`);
    const byLoss = worths.some((w) => w.drop >= WORTH_ASKING.drop);
    const values = worths.map((w) => (byLoss ? w.drop : w.bits) / w.trouble);
    expect(values).toEqual([...values].sort((a, b) => b - a));
  });
  it("proposes no more than two tests, and leaves room for questions and photos", () => {
    const kinds = nextQuestions(read, decision, asking).map((q) => q.kind);
    expect(kinds.filter((k) => k === "bench-test").length).toBeGreaterThan(0);
    expect(kinds.filter((k) => k === "bench-test").length).toBeLessThanOrEqual(2);
    expect(kinds.filter((k) => k !== "bench-test").length).toBeGreaterThan(1);
  });
});

describe("worthOfAsking, what it is ranked by", () => {
  const of = (rug: RugAnswers, enquiry: EnquiryAnswers) => {
    const told = findingsFromAnswers(rug, enquiry);
    const { told: read, decision } = decisionOf(told, defaultSettings(), AS_OF);
    return worthOfAsking(read, decision, believe(told, defaultSettings(), AS_OF));
  };
  it("is the drop in loss where some answer may change what is done, and the bits where none does", () => {
    expect(of({}, {}).some((w) => w.drop >= WORTH_ASKING.drop)).toBe(true);
    const settled = of({
      labelFound: "none", sellerSaid: "art-silk", boughtWhere: "online", boughtYear: 2023, price: 310, currency: "EUR", widthCm: 160, lengthCm: 230, shine: "two-tone", footprints: "stay", touch: "cool-slippery",
      back: "loomed", fringe: "sewn-on", fringeKind: "cottony", incidents: ["wear"], changes: ["flat", "dirty"], treatments: ["nothing"], room: "busy", household: ["children"], age: "2-5",
    }, { wetNow: "no", reason: "routine" });
    expect(settled.every((w) => w.drop < WORTH_ASKING.drop)).toBe(true);
    expect(settled.some((w) => w.bits > 0)).toBe(true);
  });
});
