import { CONDITIONS, URGENCY } from "../trade/urgency";
import { firstAidSentences } from "../trade/first-aid";
import type { Assessment } from "./assessment";
import type { Told } from "./told";

/** Whether an answer, or a named condition over answers, holds. */
export function holdsIn(told: Told, condition: string): boolean {
  const named = CONDITIONS[condition];
  if (!named) return told.has(condition);
  return named.anyOf.some((a) => told.has(a)) && (named.andAnyOf?.some((a) => told.has(a)) ?? true);
}

/** What is lost by waiting: the first row of the table that holds. `chance` gives the marginal chance of a mechanism. */
export function judgeUrgency(told: Told, chance: (mechanism: string) => number): Assessment["urgency"] {
  const row = URGENCY.find((r) =>
    (r.all ?? []).every((c) => holdsIn(told, c)) && (r.unanswered ?? []).every((q) => !told.answered(q)) && (!r.likely || chance(r.likely.mechanism) >= r.likely.from));
  if (!row) throw new Error("Expected the last row of the urgency table to hold always.");
  return { level: row.level, why: row.why };
}

/** Wet or damp now, or a liquid got on it within the day. */
export const needsFirstAid = (told: Told): boolean =>
  told.has("wetNow:wet") || told.has("wetNow:damp") ||
  ((told.has("since:hour") || told.has("since:day")) && holdsIn(told, "spilt:yes"));

/** What nobody may touch, not even to blot it: flood or waste water, or growth that is seen. */
const handsOff = (told: Told): boolean => told.has("incidents:flood") || told.has("changes:spots");

/** The one set of first aid, the same for every fibre, or null. `emergencyNumber` is the workshop's. */
export function judgeFirstAid(told: Told, emergencyNumber: string | undefined): string[] | null {
  if (!needsFirstAid(told)) return null;
  return firstAidSentences(emergencyNumber, handsOff(told));
}
