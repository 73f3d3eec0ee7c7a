import { ODOUR, UNEXPLAINED_ODOUR, type OdourRow } from "../trade/odour";
import type { OdourOutlook } from "./assessment";
import type { Told } from "./told";

/** Under this chance of a smell, where none was told, it is not spoken of. Elicited. */
const LEAST_SPOKEN_OF = 0.2;

/**
 * Whether it smells, and whether the smell comes back in damp weather after the best method allowed; both 0–1. Causes
 * are taken as independent. Where a smell was told it is there: the causes carry it by
 * their chances, which the smell has moved already, and one that none explains may come back too.
 */
export function judgeOdour(told: Told, chance: (mechanism: string) => number): OdourOutlook | null {
  const rows = Object.entries(ODOUR) as [string, OdourRow][];
  const none = (of: (row: OdourRow) => number) => rows.reduce((p, [mechanism, row]) => p * (1 - chance(mechanism) * of(row)), 1);
  const quiet = none((r) => r.smells);
  if (!told.has("changes:smell")) return 1 - quiet < LEAST_SPOKEN_OF ? null : { now: 1 - quiet, returns: 1 - none((r) => r.smells * r.returns) };
  return { now: 1, returns: 1 - none((r) => r.returns) * (1 - quiet * UNEXPLAINED_ODOUR.returns) };
}
