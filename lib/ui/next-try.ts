import type { LetterView } from "../enquiry/views";
import { dayAndClock, type Place } from "./time";

/** When a letter that did not get through is tried again, in a sentence; nothing where it is not. */
export function nextTryInWords({ nextTry }: Pick<LetterView, "nextTry">, now: string, place: Place): string {
  if (nextTry === null) return "";
  return `Next try ${Date.parse(nextTry) <= Date.parse(now) ? "in a moment" : dayAndClock(nextTry, now, place)}.`;
}
