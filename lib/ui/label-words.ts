import type { LabelReadingView, LabelState, LabelWord } from "../enquiry/label-view";
import type { LabelSays } from "../words/label-says";

type Stands = Pick<LabelReadingView, "state" | "lines">;

/** How a reading stands, in a sentence; nothing where it is only asked whether it is right. */
export const saysOf = (says: LabelSays, { state, lines }: Stands): string | null =>
  (state !== "read" ? says[`label.${state}`] : isGuess({ state, lines }) ? says["label.guessed"] : null);

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

/** A line's words in runs that are shown as one: a fibre's name, of however many words, or one word. */
export function namesIn(line: readonly LabelWord[]): LabelWord[][] {
  const names: LabelWord[][] = [];
  for (const word of line) {
    if (word.isFibre && word.goesOn && names.length > 0) names.at(-1)?.push(word);
    else names.push([word]);
  }
  return names;
}
