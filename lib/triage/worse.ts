import { METHODS, type MethodId } from "../trade/care";
import { COLUMNS_OF } from "../trade/columns";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { WORSE, WORSE_AFTER_TEST, WORSE_OLD_LATEX } from "../trade/improvement";
import type { Assessment } from "./assessment";
import { constructionShares } from "./construction";
import { agesOf } from "./life";
import { ofFibres } from "./of-fibres";
import type { Told } from "./told";

type Fibres = Readonly<Record<FibreId, number>>;

/** Chance that the rug is tufted with latex old enough to have weakened. */
function oldLatexShare(told: Told, yearNow: number): number {
  const ages = agesOf(told, yearNow);
  const [total, old] = ages.reduce(([t, o], [years, share]) => [t + share, years >= WORSE_OLD_LATEX.fromYears ? o + share : o], [0, 0]);
  return (constructionShares(told).tufted * old) / total;
}

/** Chance, 0–1, that one way of cleaning makes it worse, for each fibre: the pile's own, or that of old latex where it is the greater. */
function worseBy(risk: "wet" | "gentle", told: Told, yearNow: number): Record<FibreId, number> {
  const latex = oldLatexShare(told, yearNow);
  const tested = told.signs.dyes === "held" ? WORSE_AFTER_TEST.share : 1;
  return ofFibres((f) => {
    const pile = Math.max(...COLUMNS_OF[f].map((c) => WORSE[c][risk])) * tested;
    return pile + latex * Math.max(0, WORSE_OLD_LATEX.chance - pile);
  });
}

/** The mean over fibres. */
export const meanOf = (byFibre: Fibres, fibres: Fibres): number => FIBRE_IDS.reduce((sum, f) => sum + fibres[f] * byFibre[f], 0);

/**
 * The least risky way of cleaning that is not ruled out, which is the one the advice would use, and its chance of making
 * each fibre worse. Dry cleaning after a test is never ruled out, so that there always is one.
 */
export function bestMethod(methods: Assessment["methods"], { told, fibres, yearNow }: { told: Told; fibres: Fibres; yearNow: number }): { method: MethodId; worse: Record<FibreId, number> } {
  const open = methods.flatMap(({ method, verdict }) => {
    const { risk } = METHODS[method];
    return risk === null || verdict === "ruled-out" ? [] : [{ method, worse: worseBy(risk, told, yearNow) }];
  });
  const [first, ...others] = open;
  if (!first) throw new Error("Expected a way of cleaning that is not ruled out.");
  return others.reduce((best, m) => (meanOf(m.worse, fibres) < meanOf(best.worse, fibres) ? m : best), first);
}

/** What remains of that chance for the advice, which tests a hidden corner first; a passed dye test has been counted already. */
export const worseOnceTested = (worse: Fibres, told: Told): Fibres => (told.signs.dyes === "held" ? worse : ofFibres((f) => worse[f] * WORSE_AFTER_TEST.share));
