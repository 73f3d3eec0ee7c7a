import type { LabelReadingView, LabelState, LabelWord } from "../enquiry/label-view";
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

/** The question stands until somebody has answered it. */
export const isAsked = (state: LabelState): boolean => state === "read" || state === "unsure";
/** A word that the reader guessed, and that is neither a fibre nor a figure, by which it could be known again. */
const isScrap = ({ text, unsure, isFibre }: LabelWord): boolean => unsure && !isFibre && !/\p{Nd}/u.test(text);
/** From more scraps than other words on, there is nothing that somebody could be asked to agree to. Elicited. */
const MOST_SCRAPS = 0.5;
/** Whether what was read is mostly guessed: it is not shown, but asked for. What a person agreed to or wrote never is. */
export function isGuess({ state, lines }: Stands): boolean {
  const words = lines.flat();
  return isAsked(state) && words.filter(isScrap).length > MOST_SCRAPS * words.length;
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
