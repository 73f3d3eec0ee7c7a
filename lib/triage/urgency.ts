import { WORTH_SAYING, type MechanismId } from "../trade/damage";
import { CONDITIONS, URGENCY } from "../trade/urgency";
import { FIRST_AID, firstAidSentences, MOULD_SEEN, type AnyAnswer } from "../trade/first-aid";
import type { Assessment } from "./assessment";
import type { Told } from "./told";

/** Whether an answer, or a named condition over answers, holds. */
export function holdsIn(told: Told, condition: string): boolean {
  const named = CONDITIONS[condition];
  if (!named) return told.has(condition);
  return named.anyOf.some((a) => told.has(a)) && (named.andAnyOf?.some((a) => told.has(a)) ?? true);
}

/** What is lost by waiting: the first row of the table that holds. `chance` gives the marginal chance of a mechanism, `needsAid` whether first aid is due. */
export function judgeUrgency(told: Told, chance: (mechanism: string) => number, needsAid = needsFirstAid(told)): Assessment["urgency"] {
  const row = URGENCY.find((r) =>
    (!r.mayBeWet || needsAid) && (!r.mayBeGas || (needsAid && isGasTold(told))) && (r.all ?? []).every((c) => holdsIn(told, c)) && (r.unanswered ?? []).every((q) => !told.answered(q)) && (!r.likely || chance(r.likely.mechanism) >= r.likely.from));
  if (!row) throw new Error("Expected the last row of the urgency table to hold always.");
  return { level: row.level, why: row.why };
}

/** Wet or damp now, or a liquid got on it within the day. */
export const wasWet = (told: Told): boolean =>
  told.has("wetNow:wet") || told.has("wetNow:damp") || (holdsIn(told, "today:yes") && holdsIn(told, "spilt:yes"));

/** Whether one of these answers was told. */
const hasAny = (told: Told, any: AnyAnswer): boolean => Object.entries(any).some(([question, ids]) => ids.some((id) => told.has(`${question}:${id}`)));

/** Bleach and something it can give off gas with were told together: an acid, ammonia, a cleaner that may hold one, or urine not said to be old. */
export function isGasTold(told: Told): boolean {
  const { bleach, beside, urine, notFresh } = FIRST_AID.gas;
  const isUrine = hasAny(told, urine) && !notFresh.some((since) => told.has(`since:${since}`));
  return hasAny(told, bleach) && (isUrine || hasAny(told, beside));
}

/**
 * Whether it was answered that it is dry, so that first aid for what is wet is over: not for flood water, nor where the meter shows otherwise.
 * `isLater`: it was told later than the rest; something of the last hour is taken for wet all the same where both were told at once.
 */
const isDry = (told: Told, isLater: boolean): boolean =>
  told.has("wetNow:no") && !told.has("incidents:flood") && !told.has("sign:still-wet") && (isLater || !told.has("since:hour"));

/**
 * What may be gas may still rise: it is wet, or it was today, for what was put on it was wet, whatever else got on it and however dry it is called.
 * `isDayLater`: that it is dry was told more than a day after that, which ends it as it ends what was wet.
 */
export const isGasNow = (told: Told, isDayLater = false): boolean =>
  isGasTold(told) && (told.has("wetNow:wet") || told.has("wetNow:damp") || (holdsIn(told, "today:yes") && !(isDayLater && isDry(told, true))));

/** Whether first aid is due, for letter, desk and decision alike: it was wet within the day and nobody has answered since that it is dry, or what may be gas may still rise. `isLater`, `isDayLater`: as of being dry, and of gas. */
export const needsFirstAid = (told: Told, isLater = false, isDayLater = false): boolean => isGasNow(told, isDayLater) || (wasWet(told) && !isDry(told, isLater));

/** Mould that is seen, or likely enough to be warned of: a firm that treats it comes before any work. `chance` gives the marginal chance of a mechanism. */
export const isMouldy = (told: Told, chance: (mechanism: MechanismId) => number): boolean => hasAny(told, MOULD_SEEN) || chance("mould") >= WORTH_SAYING;
/** What nobody may touch, not even to blot it: flood or waste water, or mould. `chance` as of `isMouldy`. */
export const isFoul = (told: Told, chance: (mechanism: MechanismId) => number): boolean => hasAny(told, FIRST_AID.fits.foul) || isMouldy(told, chance);

/** What first aid goes by: `chance` gives the marginal chance of a mechanism, `emergencyNumber` is the workshop's, `needsAid` whether first aid is due. */
interface Aid { readonly chance: (mechanism: MechanismId) => number; readonly emergencyNumber: string | undefined; readonly needsAid?: boolean }

/** The one set of first aid, the same for every fibre, or null. */
export function judgeFirstAid(told: Told, { chance, emergencyNumber, needsAid = needsFirstAid(told) }: Aid): string[] | null {
  return needsAid ? firstAidSentences(emergencyNumber, isFoul(told, chance)) : null;
}
