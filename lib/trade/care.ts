import { WORTH_SAYING } from "./damage";
import type { FibreId, Source } from "./fibres";

/**
 * What may be done to which pile. Common practice, no published source, except where a row says more; regular viscose
 * is weak, unstable and apt to shrink or stretch when wet (fibre handbooks; Dupont 1996 for browning).
 */
export const METHOD_IDS = ["immersion-wash", "wet-hand-clean", "low-moisture", "solvent-dry", "dusting", "none", "at-home"] as const;
export type MethodId = (typeof METHOD_IDS)[number];
export type Verdict = "ruled-out" | "needs-testing-first" | "suitable";
/** The ways of washing. What is ruled out in a bath is ruled out by hand with water too, since “we will not wash it” is said of both: the rows below keep to that. */
export const WASHING: readonly MethodId[] = ["immersion-wash", "wet-hand-clean"];
export const VERDICTS_STRICT_FIRST: readonly Verdict[] = ["ruled-out", "needs-testing-first", "suitable"];

export const CARE_COLUMNS = ["wool-knotted", "wool-tufted", "silk", "viscose", "wool-viscose", "cotton", "jute", "synthetics", "unclear"] as const;
export type CareColumn = (typeof CARE_COLUMNS)[number];

export interface MethodRow extends Source {
  readonly name: string;
  /** In the middle of a sentence after "because". */
  readonly forbidden: string;
  readonly test: string;
  readonly fine: string;
  readonly water: boolean;
  /** How it can make a pile worse, a column of WORSE; null: it does not clean a mark, so nothing is weighed. */
  readonly risk: "wet" | "gentle" | null;
  readonly cells: Readonly<Record<CareColumn, Verdict>>;
  /** The columns where the colours are all that asks for a test: once every one has held, the method is suitable. */
  readonly dyeTestOnly: readonly CareColumn[];
}

const LETTERS: Readonly<Record<string, Verdict>> = { r: "ruled-out", t: "needs-testing-first", d: "needs-testing-first", s: "suitable" };
/** One letter a column, in the order of CARE_COLUMNS: r ruled out, t needs testing first, d needs a dye test only, s suitable. */
const cells = (letters: string): Pick<MethodRow, "cells" | "dyeTestOnly"> => ({
  cells: Object.fromEntries(CARE_COLUMNS.map((c, i) => [c, LETTERS[letters[i] as string]])) as Record<CareColumn, Verdict>,
  dyeTestOnly: CARE_COLUMNS.filter((_, i) => letters[i] === "d"),
});
const practice: Source = { how: "common practice", source: "Common practice, no published source" };

export const METHODS: Readonly<Record<MethodId, MethodRow>> = {
  "immersion-wash": { name: "washing in a bath", water: true, risk: "wet", ...cells("dtt" + "rrt" + "rst"), ...practice,
    forbidden: "the pile may be one that browns, mats or loses its strength in water",
    test: "every colour has to be tested for running first, and the back has to be sound",
    fine: "this pile stands a bath, once every colour has been tested" },
  "wet-hand-clean": { name: "wet cleaning by hand", water: true, risk: "wet", ...cells("dtt" + "rrt" + "rst"), ...practice,
    forbidden: "the pile may be one that browns, mats or loses its strength in water",
    test: "every colour has to be tested for running first, in a hidden corner",
    fine: "this pile stands water, once every colour has been tested" },
  "low-moisture": { name: "cleaning with very little moisture", water: false, risk: "gentle", ...cells("sst" + "ttt" + "tst"), ...practice,
    forbidden: "even a little moisture may mark it for good",
    test: "a hidden corner has to show first that it neither browns nor changes its shine, and the limits are agreed in writing",
    fine: "this pile takes it well" },
  "solvent-dry": { name: "dry cleaning with a solvent", water: false, risk: "gentle", ...cells("ttt" + "ttt" + "ttt"), ...practice,
    forbidden: "a solvent may soften the glue in the back or the pile itself",
    test: "a solvent can move some dyes and soften latex, where the back has any",
    fine: "this pile takes it well" },
  dusting: { name: "dusting", water: false, risk: null, ...cells("sss" + "sss" + "sss"), ...practice,
    forbidden: "handling alone may do harm",
    test: "the state of the pile has to be seen first",
    fine: "it takes out dry soil and wets nothing" },
  none: { name: "leaving it as it is", water: false, risk: null, ...cells("sss" + "sss" + "sss"), ...practice,
    forbidden: "what is wrong goes on by itself",
    test: "what is wrong has to be seen first",
    fine: "it harms nothing and costs nothing; what is there stays" },
  "at-home": { name: "cleaning at home or by machine", water: true, risk: null, ...cells("rrr" + "rrr" + "rtr"), ...practice,
    forbidden: "home cleaning sets more marks than it takes out, and on some piles the harm stays",
    test: "only what the maker's own care label allows",
    fine: "the maker's care label allows it" },
};

/**
 * The columns that speak for a class; several: the strictest cell rules. `wool` is knotted or tufted by its back.
 * "Other or unclear" is tested first, always.
 */
export const CARE_COLUMNS_OF: Readonly<Record<FibreId, readonly (CareColumn | "wool")[]>> = {
  silk: ["silk"], wool: ["wool"], "wool-silk": ["wool", "silk"], viscose: ["viscose"], "wool-viscose": ["wool-viscose"],
  "silk-viscose": ["silk", "viscose"], "cotton-viscose": ["cotton", "viscose"], lyocell: ["viscose"], acetate: ["viscose"],
  cotton: ["cotton"], "mercerised-cotton": ["cotton"], bast: ["cotton"], "hard-fibre": ["jute"],
  polyamide: ["synthetics"], polyester: ["synthetics"], polypropylene: ["synthetics"], acrylic: ["synthetics"], other: ["unclear"],
};

/**
 * Ruled out from this chance of a pile it is forbidden for: at the losses of the table it costs as much to try as to refuse.
 * Suitable only below the second, and when no pile that is at least as likely asks for a test.
 */
export const VERDICT_LIMITS = { ruledOutFrom: 0.2, suitableBelow: 0.02, how: "elicited", source: "Elicited for this project, from the loss table" } as const satisfies Source & { ruledOutFrom: number; suitableBelow: number };

/** What is found on the rug itself and asks for a stricter verdict, from that chance on. */
export interface CautionRow extends Source {
  readonly when: "flood" | "backing-failure" | "dye-bleed" | "mould" | "insects" | "antique" | "wet-now" | "latex-back" | "dye-moved" | "dye-doubtful";
  readonly methods: readonly MethodId[];
  readonly atMost: Verdict;
  readonly from: number;
  readonly why: string;
}
/** A back counts as held by latex from this chance on. Elicited. */
export const LATEX_BACK_FROM = 0.5;
/** How a label names it, in the languages that write it so. Common practice, no published source. */
export const LATEX_WORD = /(?<!\p{L})l[aá]tex(?!\p{L})/iu;
export const CAUTIONS: readonly CautionRow[] = [
  { when: "backing-failure", methods: ["immersion-wash"], atMost: "ruled-out", from: WORTH_SAYING, why: "the back may come away in a bath", ...practice },
  { when: "backing-failure", methods: ["wet-hand-clean"], atMost: "ruled-out", from: WORTH_SAYING, why: "water may loosen what still holds the back", ...practice },
  { when: "backing-failure", methods: ["solvent-dry"], atMost: "ruled-out", from: WORTH_SAYING, why: "a solvent may soften what is left of the latex in the back", ...practice },
  { when: "backing-failure", methods: ["wet-hand-clean", "low-moisture", "solvent-dry", "dusting"], atMost: "needs-testing-first", from: 0.2, why: "the back has to be seen before anything is done", ...practice },
  { when: "dye-moved", methods: ["immersion-wash", "wet-hand-clean"], atMost: "ruled-out", from: 1, why: "a colour moved in the dye test", ...practice },
  { when: "dye-moved", methods: ["low-moisture", "solvent-dry"], atMost: "needs-testing-first", from: 1, why: "a colour moved in the dye test; with less moisture it is tried again in a hidden corner", ...practice },
  { when: "dye-doubtful", methods: ["immersion-wash", "wet-hand-clean", "low-moisture"], atMost: "needs-testing-first", from: 1, why: "a trace of colour moved in the dye test, or water was not tried", ...practice },
  { when: "dye-bleed", methods: ["immersion-wash", "wet-hand-clean", "low-moisture"], atMost: "needs-testing-first", from: 0.05, why: "a colour may already have run", ...practice },
  { when: "mould", methods: ["dusting", "low-moisture", "wet-hand-clean", "immersion-wash"], atMost: "needs-testing-first", from: 0.2, why: "mould must not be stirred up: it is seen first, by someone protected against it", ...practice },
  { when: "insects", methods: ["dusting"], atMost: "needs-testing-first", from: 0.5, why: "it has to be treated for insects before it is handled among other rugs", ...practice },
  { when: "antique", methods: ["immersion-wash", "wet-hand-clean", "low-moisture", "solvent-dry", "dusting"], atMost: "needs-testing-first", from: 0.5, why: "an antique is seen by a conservator first, and may carry old pesticide", ...practice },
  { when: "latex-back", methods: ["immersion-wash", "wet-hand-clean", "solvent-dry"], atMost: "needs-testing-first", from: LATEX_BACK_FROM, why: "latex seems to hold the back; it weakens with age, in water and in solvents, and has to be found sound first", ...practice },
  { when: "wet-now", methods: ["dusting", "low-moisture", "wet-hand-clean", "immersion-wash", "solvent-dry"], atMost: "needs-testing-first", from: 0.5, why: "it has to be dry and seen before anything is tried", ...practice },
  { when: "flood", methods: ["dusting"], atMost: "ruled-out", from: 0.5, why: "dusting spreads what flood or waste water left in it, so not before a flood-damage firm has cleared it", ...practice },
  { when: "flood", methods: ["low-moisture", "wet-hand-clean", "immersion-wash", "solvent-dry"], atMost: "needs-testing-first", from: 0.5, why: "flood or waste water can make people ill, so a flood-damage firm clears it first", ...practice },
];

/** How the judgement of a method is said. `why` stands after its opening; `chance` in per cent. */
export const METHOD_SENTENCES = {
  "ruled-out-pile": (why: string, fibre: string, chance: string) => `Ruled out: ${why} (${fibre} is the likeliest of those; together ${chance}).`,
  "ruled-out": (why: string) => `Ruled out: ${why}.`,
  test: (why: string) => `Only after a test: ${why}.`,
  seen: (why: string) => `Only after it was seen: ${why}.`,
  suitable: (why: string) => `Suitable: ${why}.`,
  "left-not": (why: string) => `Not suitable: ${why}.`,
  "left-but": (why: string) => `It costs nothing, ${why}.`,
  left: (why: string) => `Always possible: ${why}.`,
} as const;

/**
 * What leaving it as it is means where something goes on by itself: the first row that holds is said. It is ruled out where the
 * trouble harms people, spreads, or is wet; what only sets or smells is theirs to live with.
 */
export interface LeftRow extends Source {
  readonly when: CautionRow["when"] | "urine-fresh" | "urine-old" | "food-fresh";
  readonly from: number;
  readonly verdict: Extract<Verdict, "ruled-out" | "suitable">;
  readonly say: string;
}
const mouldSoon: Source = { how: "memory", source: "EPA and FEMA flood guidance: dry within 24 to 48 hours" };
export const LEFT_AS_IT_IS: readonly LeftRow[] = [
  { when: "flood", from: 0.5, verdict: "ruled-out", say: "flood or waste water can make people ill, and what it left in the rug does not go by itself", ...practice },
  { when: "wet-now", from: 0.5, verdict: "ruled-out", say: "it has to dry first, since mould can start within two days and what forms while it dries may stay", ...mouldSoon },
  { when: "insects", from: 0.33, verdict: "ruled-out", say: "insects go on eating and spread to anything made of wool, so they are dealt with first", ...practice },
  { when: "mould", from: 0.33, verdict: "ruled-out", say: "mould can harm people and goes on while it is damp, so it is dried and seen first", ...practice },
  { when: "urine-fresh", from: 0.33, verdict: "suitable", say: "but fresh urine sets and turns alkaline within days", ...practice },
  { when: "urine-old", from: 0.33, verdict: "suitable", say: "but the smell may come back in damp weather", ...practice },
  { when: "food-fresh", from: 0.33, verdict: "suitable", say: "but a fresh mark comes out best while it is fresh", ...practice },
];

/** How a rug is made, from the look of its back; the share where nobody looked. Elicited. */
export type Construction = "knotted" | "tufted" | "machine";
export const CONSTRUCTIONS: readonly Construction[] = ["knotted", "tufted", "machine"];
export interface ConstructionRow extends Source { readonly share: Readonly<Record<Construction, number>> }
const made = (knotted: number, tufted: number, machine: number): ConstructionRow =>
  ({ share: { knotted, tufted, machine }, how: "elicited", source: "Elicited for this project: a back seen by a layperson" });
export const CONSTRUCTION_BY_BACK: Readonly<Record<"knots" | "cloth" | "loomed" | "machine" | "flat" | "felt" | "unknown", ConstructionRow>> = {
  knots: made(0.92, 0.01, 0.07), cloth: made(0.02, 0.95, 0.03), loomed: made(0.2, 0.1, 0.7), machine: made(0.02, 0.08, 0.9),
  flat: made(0.35, 0.02, 0.63), felt: made(0.01, 0.7, 0.29), unknown: made(0.35, 0.35, 0.3),
};
