import { isGuess, type LabelReadingView, type LabelWord } from "../enquiry/label-view";
import type { LabelSays } from "../words/label-says";

type Stands = Pick<LabelReadingView, "state" | "lines">;
type Told = Stands & Pick<LabelReadingView, "typed" | "agreed">;

/** How a reading stands, in a sentence; nothing where it is only asked whether it is right. */
export function saysOf(says: LabelSays, reading: Told): string | null {
  const { state } = reading;
  if (state === "failed") return says[isTold(reading) ? "label.failed-told" : "label.failed"];
  if (state === "unreadable" || (state === "read" && isGuess(reading))) return says[isTold(reading) ? "label.unread-told" : state === "read" ? "label.guessed" : "label.unreadable"];
  return state === "read" ? null : says[`label.${state}`];
}

/** There is nothing that could be right, only something to write. */
export const isToWrite = (reading: Stands): boolean => reading.state === "unreadable" || reading.state === "failed" || reading.state === "withdrawn" || isGuess(reading);
/** The photo gives no words, but they were typed already: nobody is asked for them twice. */
export const isTold = (reading: Told): boolean => isToWrite(reading) && reading.typed !== null && reading.agreed === null;

/** A line's words in runs that are shown as one: a fibre's name, of however many words, or one word. */
export function namesIn(line: readonly LabelWord[]): LabelWord[][] {
  const names: LabelWord[][] = [];
  for (const word of line) {
    if (word.isFibre && word.goesOn && names.length > 0) names.at(-1)?.push(word);
    else names.push([word]);
  }
  return names;
}
