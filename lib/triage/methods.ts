import { CARE_COLUMNS_OF, CAUTIONS, METHODS, METHOD_IDS, VERDICT_LIMITS, VERDICTS_STRICT_FIRST, type CareColumn, type Construction, type MethodId, type Verdict } from "../trade/care";
import { FIBRE_IDS, fibreName, type FibreId } from "../trade/fibres";
import { WORSE, WORSE_OLD_LATEX } from "../trade/improvement";
import { COLUMNS_OF } from "../trade/columns";
import type { Assessment } from "./assessment";
import { constructionShares } from "./life";
import type { Told } from "./told";

type Fibres = Readonly<Record<FibreId, number>>;
type Chance = (mechanism: string) => number;

/** Chance of each verdict for one method over fibres and constructions, before what was found on the rug itself. */
function verdictChances(method: MethodId, fibres: Fibres, shares: Readonly<Record<Construction, number>>): Record<Verdict, number> {
  const out: Record<Verdict, number> = { "ruled-out": 0, "needs-testing-first": 0, suitable: 0 };
  for (const f of FIBRE_IDS) {
    const tufted = shares.tufted;
    for (const [share, wool] of [[tufted, "wool-tufted"], [1 - tufted, "wool-knotted"]] as const) {
      const columns = CARE_COLUMNS_OF[f].map((c): CareColumn => (c === "wool" ? wool : c));
      const verdict = strictest(columns.map((c) => METHODS[method].cells[c]));
      out[verdict] += fibres[f] * share;
    }
  }
  return out;
}

const strictest = (verdicts: readonly Verdict[]): Verdict => VERDICTS_STRICT_FIRST.find((v) => verdicts.includes(v)) ?? "needs-testing-first";

/** Chance that the pile is one for which this method is forbidden. */
export const forbiddenChance = (method: MethodId, fibres: Fibres, told: Told): number => verdictChances(method, fibres, constructionShares(told))["ruled-out"];

/** By the fibres alone: ruled out from .20 of a forbidden pile, suitable only where neither a ban nor a test is asked for by 2 % or more. */
export function verdictByFibre(chances: Readonly<Record<Verdict, number>>): Verdict {
  if (chances["ruled-out"] >= VERDICT_LIMITS.ruledOutFrom) return "ruled-out";
  const asks = chances["ruled-out"] >= VERDICT_LIMITS.suitableBelow || chances["needs-testing-first"] >= VERDICT_LIMITS.suitableBelow;
  return asks ? "needs-testing-first" : "suitable";
}

const percent = (p: number) => `${Math.round(p * 100)} %`;

/** The likeliest pile that a method is forbidden for, for the sentence. */
function likeliestForbidden(method: MethodId, fibres: Fibres): FibreId {
  const banned = FIBRE_IDS.filter((f) => CARE_COLUMNS_OF[f].some((c) => c !== "wool" && METHODS[method].cells[c] === "ruled-out"));
  return (banned.length > 0 ? banned : FIBRE_IDS).reduce((a, b) => (fibres[b] > fibres[a] ? b : a));
}

function whyOf(method: MethodId, verdict: Verdict, fibres: Fibres, forbidden: number): string {
  const row = METHODS[method];
  if (verdict === "suitable") return `Suitable: ${row.fine}.`;
  if (verdict === "needs-testing-first") return `Only after a test: ${row.test}.`;
  if (method === "at-home") return `Ruled out: ${row.forbidden}.`;
  return `Ruled out: ${row.forbidden} (${fibreName(likeliestForbidden(method, fibres))} is the likeliest of those; together ${percent(forbidden)}).`;
}

/** Every method with its verdict and a sentence that says why. `chance` gives the marginal chance of a mechanism. */
export function judgeMethods(told: Told, fibres: Fibres, chance: Chance): Assessment["methods"] {
  const shares = constructionShares(told);
  const holds = (when: string): number => {
    if (when === "antique") return told.has("age:antique") ? 1 : 0;
    if (when === "wet-now") return told.has("wetNow:wet") || told.has("wetNow:damp") ? 1 : 0;
    return chance(when);
  };
  return METHOD_IDS.map((method) => {
    const chances = verdictChances(method, fibres, shares);
    let verdict = verdictByFibre(chances);
    let why = whyOf(method, verdict, fibres, chances["ruled-out"]);
    for (const c of CAUTIONS) {
      if (!c.methods.includes(method) || holds(c.when) < c.from || strictest([verdict, c.atMost]) === verdict) continue;
      verdict = c.atMost;
      why = `${verdict === "ruled-out" ? "Ruled out" : "Only after it was seen"}: ${c.why}.`;
    }
    return { method, verdict, why };
  });
}

/** True where a wet method is still open: neither ruled out nor with 2 % or more of a pile it is forbidden for. */
const wetIsOpen = (told: Told, fibres: Fibres): boolean => forbiddenChance("wet-hand-clean", fibres, told) < VERDICT_LIMITS.suitableBelow;

/** Chance, 0–1, that the best method still allowed makes it worse, for each fibre. A tufted back with old latex is the riskier of the two. */
export function worseByFibre(told: Told, fibres: Fibres): Record<FibreId, number> {
  const kind = wetIsOpen(told, fibres) ? "wet" : "gentle";
  const oldLatex = ["age:5-10", "age:10-25", "age:25-80"].some((a) => told.has(a)) ? constructionShares(told).tufted : 0;
  return Object.fromEntries(FIBRE_IDS.map((f) => {
    const pile = Math.max(...COLUMNS_OF[f].map((c) => WORSE[c][kind]));
    return [f, pile + oldLatex * Math.max(0, WORSE_OLD_LATEX.chance - pile)];
  })) as Record<FibreId, number>;
}
