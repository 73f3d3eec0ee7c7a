import { LABEL_NAMES } from "../trade/label-names";
import { markWords, type LabelMark } from "./label-marks";
import { plainLetters } from "./label-text";

/** A word as it was read. `unsure`: it may be another; `missed`: straight before it stands print that was not read. */
export interface ReadWord { readonly text: string; readonly unsure: boolean; readonly missed?: boolean | undefined }
interface Marked extends ReadWord, LabelMark {}

/** Of so many letters one may be read amiss before a word is no longer known again. Elicited on drawn labels. */
const LETTERS_A_SLIP = 3;
/** Fewer letters say nothing of the word they are left of. Elicited. */
const LEAST_LETTERS = 2;

const namesOf = (meaning: string): string[] => LABEL_NAMES.filter((n) => n.meaning === meaning).map((n) => plainLetters(n.name).replace(/\./gu, ""));
const SILK = new Set(namesOf("silk"));
/** What stands before silk, or after it, in names of imitation silk of two words and more: "art", "artificielle" … */
const BESIDE = namesOf("art-silk").map((name) => name.split(" ")).filter((words) => words.length > 1);
const BEFORE = [...new Set(BESIDE.filter((words) => SILK.has(words.at(-1) as string)).map((words) => words[0] as string))];
const AFTER = [...new Set(BESIDE.filter((words) => SILK.has(words[0] as string)).map((words) => words.at(-1) as string))];

const marked = (lines: readonly (readonly ReadWord[])[]): Marked[][] => {
  const marks = markWords(lines.map((line) => line.map((w) => w.text)));
  return lines.map((line, n) => line.map((word, k) => ({ ...word, ...(marks[n]?.[k] as LabelMark) })));
};
const isSilk = ({ fibre }: Marked): boolean => fibre === "silk";

/** Whether a word that the dictionary does not know stands straight before "silk" on its line: "AHT SILK". */
export const hasStrangerBeforeSilk = (lines: readonly (readonly string[])[]): boolean =>
  marked(lines.map((line) => line.map((text) => ({ text, unsure: false })))).some((line) => line.some((w, k) => isSilk(w) && line[k - 1]?.isKnown === false));

/**
 * Whether "silk" on a label may be the rest of another name ("ART SILK"): print before it was not read, the word before it was
 * guessed, or silk itself was and nothing known stands before it, or what stands beside it looks like a word of imitation silk. A label that names no silk: no.
 */
export const maySilkBeLessThanRead = (lines: readonly (readonly ReadWord[])[]): boolean => {
  const words = marked(lines);
  return words.some((line, n) => line.some((word, k) => isSilk(word) && !word.goesOn && isInDoubt(word, { before: line[k - 1], above: words[n - 1]?.at(-1), after: afterName(line, k) })));
};

interface Neighbours { before: Marked | undefined; above: Marked | undefined; after: Marked | undefined }
const isInDoubt = (silk: Marked, { before, above, after }: Neighbours): boolean =>
  silk.missed === true || isLike(after, AFTER) || (before ? !before.isKnown && (before.unsure || silk.unsure || isLike(before, BEFORE)) : silk.unsure || isLike(above, BEFORE));

const afterName = (line: readonly Marked[], at: number): Marked | undefined => line.slice(at + 1).find((w) => !w.goesOn);

function isLike(word: Marked | undefined, names: readonly string[]): boolean {
  if (!word || word.isKnown) return false;
  const read = plainLetters(word.text).replace(/[^\p{L}\p{N}]/gu, "");
  return read.length >= LEAST_LETTERS && names.some((name) => slipsBetween(read, name) <= Math.floor(name.length / LETTERS_A_SLIP));
}

/** Letters put in, left out or exchanged between two words (Levenshtein 1966). */
function slipsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, n) => n);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (const [j, other] of [...b].entries()) next.push(Math.min((row[j] as number) + (letter === other ? 0 : 1), (row[j + 1] as number) + 1, (next[j] as number) + 1));
    row = next;
  }
  return row[b.length] as number;
}
