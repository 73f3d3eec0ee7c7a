/** Minutes to wait after the first, second … attempt that did not get through; then the last again and again. Elicited, within RFC 5321 §4.5.4.1. */
const PAUSES_MIN = [1, 5, 15, 30, 60] as const;
/** A letter is tried for this long: four days, RFC 5321 §4.5.4.1 ("at least 4-5 days"). */
const GIVE_UP_MIN = 4 * 24 * 60;

const LAST = PAUSES_MIN[PAUSES_MIN.length - 1] as number;
const pauseMin = (attempt: number) => PAUSES_MIN[attempt - 1] ?? LAST;

/** Milliseconds until the next attempt after `attempts` (≥ 1) that did not get through; null: four days are over. */
export function retryAfterMs(attempts: number): number | null {
  const rampMin = PAUSES_MIN.slice(0, attempts).reduce<number>((sum, p) => sum + p, 0);
  const triedMin = rampMin + Math.max(0, attempts - PAUSES_MIN.length) * LAST;
  return triedMin > GIVE_UP_MIN ? null : pauseMin(attempts) * 60_000;
}
