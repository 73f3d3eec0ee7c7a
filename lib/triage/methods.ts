import {
  CARE_COLUMNS_OF, CAUTIONS, LEFT_AS_IT_IS, METHODS, METHOD_IDS, METHOD_SENTENCES, VERDICT_LIMITS, VERDICTS_STRICT_FIRST, type CareColumn, type MethodId, type Verdict,
} from "../trade/care";
import { CARE_WORDS, MAY_BE_FROM } from "../trade/care-words";
import { CHANGE_IDS, HANDLED_AS, type DamageId } from "../trade/damage";
import { FIBRE_IDS, fibreName, type FibreId } from "../trade/fibres";
import type { Assessment } from "./assessment";
import { constructionShares, latexBackChance } from "./construction";
import type { Told } from "./told";

type Fibres = Readonly<Record<FibreId, number>>;
type Chance = (mechanism: string) => number;

const strictest = (verdicts: readonly Verdict[]): Verdict => VERDICTS_STRICT_FIRST.find((v) => verdicts.includes(v)) ?? "needs-testing-first";

/** The verdict of one column, where the colours have been tested or not. */
const cellOf = (method: MethodId, column: CareColumn, dyesHeld: boolean): Verdict =>
  (dyesHeld && METHODS[method].dyeTestOnly.includes(column) ? "suitable" : METHODS[method].cells[column]);

/** Chance of each verdict for one method over fibres and constructions, before what was found on the rug itself. */
function verdictChances(method: MethodId, fibres: Fibres, told: Told): Record<Verdict, number> {
  const out: Record<Verdict, number> = { "ruled-out": 0, "needs-testing-first": 0, suitable: 0 };
  const { tufted } = constructionShares(told);
  const held = told.signs.dyes === "held";
  for (const f of FIBRE_IDS) {
    for (const [share, wool] of [[tufted, "wool-tufted"], [1 - tufted, "wool-knotted"]] as const) {
      const columns = CARE_COLUMNS_OF[f].map((c): CareColumn => (c === "wool" ? wool : c));
      out[strictest(columns.map((c) => cellOf(method, c, held)))] += fibres[f] * share;
    }
  }
  return out;
}

/** Chance that the pile is one for which this method is forbidden. */
export const forbiddenChance = (method: MethodId, fibres: Fibres, told: Told): number => verdictChances(method, fibres, told)["ruled-out"];

/** By the fibres alone: ruled out from .20 of a forbidden pile, suitable only where neither a ban nor a test is asked for by 2 % or more. */
export function verdictByFibre(chances: Readonly<Record<Verdict, number>>): Verdict {
  if (chances["ruled-out"] >= VERDICT_LIMITS.ruledOutFrom) return "ruled-out";
  const asks = chances["ruled-out"] >= VERDICT_LIMITS.suitableBelow || chances["needs-testing-first"] >= VERDICT_LIMITS.suitableBelow;
  return asks ? "needs-testing-first" : "suitable";
}

/** Never all: a chance is not certainty. */
const percent = (p: number) => `${Math.min(99, Math.round(p * 100))} %`;

/** The likeliest pile that a method is forbidden for, for the sentence. */
function likeliestForbidden(method: MethodId, fibres: Fibres): FibreId {
  const banned = FIBRE_IDS.filter((f) => CARE_COLUMNS_OF[f].some((c) => c !== "wool" && METHODS[method].cells[c] === "ruled-out"));
  return (banned.length > 0 ? banned : FIBRE_IDS).reduce((a, b) => (fibres[b] > fibres[a] ? b : a));
}

const mayBe = (fibres: Fibres) => (ids: readonly FibreId[]): boolean => ids.reduce((sum, f) => sum + fibres[f], 0) >= MAY_BE_FROM.chance;
/** What is said for a verdict, with the care that fibres ask for which may be in the pile. */
const inWords = (method: MethodId, verdict: "suitable" | "needs-testing-first", fibres: Fibres): string =>
  CARE_WORDS.find((w) => w.method === method && w.verdict === verdict && w.of.every(mayBe(fibres)))?.say ?? METHODS[method][verdict === "suitable" ? "fine" : "test"];

function whyOf(method: MethodId, verdict: Verdict, fibres: Fibres, forbidden: number): string {
  const row = METHODS[method];
  if (verdict === "suitable") return METHOD_SENTENCES.suitable(inWords(method, verdict, fibres));
  if (verdict === "needs-testing-first") return METHOD_SENTENCES.test(inWords(method, verdict, fibres));
  if (method === "at-home") return METHOD_SENTENCES["ruled-out"](row.forbidden);
  return METHOD_SENTENCES["ruled-out-pile"](row.forbidden, fibreName(likeliestForbidden(method, fibres)), percent(forbidden));
}

/** What the told changes are handled as, however likely that is; a colour that ran no more once every colour has held in a dye test. */
export const handledAs = (told: Told): DamageId[] =>
  CHANGE_IDS.flatMap((id) => (told.has(`changes:${id}`) ? (HANDLED_AS[id] ?? []) : [])).filter((id) => id !== "dye-bleed" || told.signs.dyes !== "held");

/** How far what a caution or a note names holds, 0–1. */
function holdsBy(told: Told, chance: Chance): (when: string) => number {
  const known: Readonly<Record<string, number>> = {
    antique: Number(told.has("age:antique")), flood: Number(told.has("incidents:flood")), "latex-back": latexBackChance(told),
    "wet-now": Number(told.has("wetNow:wet") || told.has("wetNow:damp") || told.has("sign:still-wet")),
    "dye-moved": Number(told.signs.dyes === "moved"), "dye-doubtful": Number(told.signs.dyes === "doubt"),
  };
  const handled: readonly string[] = handledAs(told);
  return (when) => {
    const share = known[when];
    if (share !== undefined) return share;
    if (handled.includes(when)) return 1;
    return when === "dye-bleed" && told.signs.dyes === "held" ? 0 : chance(when);
  };
}

/** Whether nothing need be done at all, and what that leaves. */
function leftAsItIs(holds: (when: string) => number): Assessment["methods"][number] {
  const row = LEFT_AS_IT_IS.find((r) => holds(r.when) >= r.from);
  if (!row) return { method: "none", verdict: "suitable", why: METHOD_SENTENCES.left(METHODS.none.fine) };
  return { method: "none", verdict: row.verdict, why: METHOD_SENTENCES[row.verdict === "ruled-out" ? "left-not" : "left-but"](row.say) };
}

/** Every method with its verdict and a sentence that says why. `chance` gives the marginal chance of a mechanism. */
export function judgeMethods(told: Told, fibres: Fibres, chance: Chance): Assessment["methods"] {
  const holds = holdsBy(told, chance);
  return METHOD_IDS.map((method) => {
    if (method === "none") return leftAsItIs(holds);
    const chances = verdictChances(method, fibres, told);
    let verdict = verdictByFibre(chances);
    let why = whyOf(method, verdict, fibres, chances["ruled-out"]);
    for (const c of CAUTIONS) {
      if (!c.methods.includes(method) || holds(c.when) < c.from || strictest([verdict, c.atMost]) === verdict) continue;
      verdict = c.atMost;
      why = METHOD_SENTENCES[verdict === "ruled-out" ? "ruled-out" : "seen"](c.why);
    }
    return { method, verdict, why };
  });
}
