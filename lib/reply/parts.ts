/** One sentence of a paragraph, or one line of a list. `glue`: what stands before it there. */
export interface Part { readonly text: string; readonly glue: "" | " " | "\n" }

/** Where a sentence ends and another begins; an opening quotation mark or an open place may begin one. */
const SENTENCE_ENDS = /(?<=[.!?][”’)]?) (?=[\p{Lu}“{])/u;

/** A text sentence by sentence and line by line; joined with their glue the parts are the text again. */
export const partsOf = (text: string): Part[] =>
  text.split("\n").flatMap((line, row) => line.split(SENTENCE_ENDS).map((sentence, at): Part => ({ text: sentence, glue: at > 0 ? " " : row > 0 ? "\n" : "" })));

/** The parts as one text; what stood before the first of them is gone. */
export const joinedParts = (parts: readonly Part[]): string => parts.map(({ text, glue }, at) => (at === 0 ? "" : glue) + text).join("");

const LINE = /^– /u;
export const isLine = ({ text }: Part): boolean => LINE.test(text);
export const withoutDash = (line: string): string => line.replace(LINE, "");

/** Whether a letter says a paragraph: as it is, or sentence by sentence where some of them are said once of several rugs. */
export const says = (letter: string, paragraph: string): boolean =>
  letter.includes(paragraph) || partsOf(paragraph).every(({ text }) => letter.includes(withoutDash(text)));
