import type { Words } from "../../words/words";

/** A chance on paper is never rounded to certainty, nor to none. */
const hundredths = (p: number) => Math.min(99, Math.max(1, Math.round(p * 100)));
/** A chance, 0–1, as "70 in 100". */
export const inHundred = (p: number, { say }: Words): string => say("print.in-hundred", { n: hundredths(p) });

/**
 * A chance by the range it lies in, "between 79 and 95 in 100", ends 0–1. Both ends alike are one number: certainty is never printed, so a
 * laboratory's report leaves 99 and 99.
 */
export const rangeInHundred = ({ low, high }: { readonly low: number; readonly high: number }, words: Words): string =>
  hundredths(low) === hundredths(high) ? inHundred(low, words) : words.say("print.in-hundred-range", { low: hundredths(low), high: hundredths(high) });
