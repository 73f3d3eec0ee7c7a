import { CHANGES, CHANGE_IDS, DAMAGE_IDS, MEASURED_CHANGE, SILENCE_COUNTS, type ChangeId, type ChangeRow } from "../trade/damage";
import { SIGNS, SIGN_IDS, type SignId } from "../trade/signs";
import { normalBelow } from "./price-evidence";
import type { Told } from "./told";

/** A row of changes or signs made ready: `lets[m]` is the chance that mechanism m, by its place in DAMAGE_IDS, does not show it. */
export interface Clue { readonly none: number; readonly lets: Float64Array; readonly logLets: Float64Array; /** The mechanisms that show it, as bits. */ readonly mask: number }

const clueOf = (row: ChangeRow): Clue => {
  const lets = Float64Array.from(DAMAGE_IDS, (m) => 1 - (row.by[m] ?? 0));
  return { none: row.none, lets, logLets: lets.map(Math.log), mask: DAMAGE_IDS.reduce((mask, m, i) => (row.by[m] ? mask | (1 << i) : mask), 0) };
};
const OF_CHANGE = Object.fromEntries(CHANGE_IDS.map((c) => [c, clueOf(CHANGES[c])])) as Record<ChangeId, Clue>;
const OF_SIGN = Object.fromEntries(SIGN_IDS.map((s) => [s, clueOf(SIGNS[s])])) as Record<SignId, Clue>;

/** A clue with how much it counts, 0–1: a thing shown by its sureness, a thing absent as a power of its likelihood. */
export interface Counted { readonly clue: Clue; readonly weight: number }
export interface Report { readonly shown: readonly Counted[]; readonly absent: readonly Counted[] }

/** The change a photo measured and how sure it is to be there, 0–1; null where none was measured that we know. */
export function measuredChange(told: Told): { change: ChangeId; sure: number } | null {
  const measured = told.value("colour-change");
  if (!measured || typeof measured !== "object" || Array.isArray(measured)) return null;
  const { deltaE, direction, uncertainty } = measured as Record<string, unknown>;
  const change = MEASURED_CHANGE.shows[String(direction)];
  if (!change || typeof deltaE !== "number" || !Number.isFinite(deltaE)) return null;
  const own = typeof uncertainty === "number" && uncertainty > 0 ? uncertainty : 0;
  return { change, sure: normalBelow((deltaE - MEASURED_CHANGE.middleDeltaE) / Math.hypot(own, MEASURED_CHANGE.pileNoise)) };
}

/** Changes reported or measured, changes that a person who answered did not name, and what tests of places showed or did not. */
export function reportOf(told: Told): Report {
  const measured = measuredChange(told);
  const answered = told.answered("changes");
  const shown: Counted[] = told.signs.shown.map((s) => ({ clue: OF_SIGN[s], weight: 1 }));
  const absent: Counted[] = told.signs.absent.map((s) => ({ clue: OF_SIGN[s], weight: 1 }));
  for (const c of CHANGE_IDS) {
    const sure = told.has(`changes:${c}`) ? 1 : measured?.change === c ? measured.sure : 0;
    if (sure > 0) shown.push({ clue: OF_CHANGE[c], weight: sure });
    if (sure < 1 && answered) absent.push({ clue: OF_CHANGE[c], weight: SILENCE_COUNTS.value * (1 - sure) });
  }
  return { shown, absent };
}
