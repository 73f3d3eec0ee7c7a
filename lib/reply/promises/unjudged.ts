import { LETTER_ENGLISH } from "../../trade/letter-language";
import { isOtherLanguage } from "../../triage/letter-language";
import { isQuotedLine, ownLines } from "../../words/quoted-lines";

/** Our own words in another language: the letter where it is as a whole, else its lines. */
export function foreignIn(text: string): string[] {
  const own = ownLines(text);
  return isOtherLanguage(own) && (wordsOf(own).length >= LONG_ENOUGH || isForeignLine(own)) ? [own.trim()] : own.split("\n").filter(isForeignLine);
}
/**
 * A line is judged by itself from so many words on: a greeting with a name in other letters is none. In Latin letters it must hold not one
 * common English word: an English line may hold few. *elicited*
 */
const LEAST_LINE_WORDS = { otherLetters: 5, latin: 10 } as const;
/** Words from which on the share of common English ones tells by itself. *elicited* */
const LONG_ENOUGH = 25;
const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}[\p{L}\p{M}'’]*/gu) ?? [];
const ENGLISH = new Set(LETTER_ENGLISH.words);
function isForeignLine(line: string): boolean {
  const words = wordsOf(line);
  if (!words.every((w) => /\p{Script=Latin}/u.test(w))) return words.length >= LEAST_LINE_WORDS.otherLetters && isOtherLanguage(line);
  return words.length >= LEAST_LINE_WORDS.latin && !words.some((w) => ENGLISH.has(w));
}

/** What of a letter the check cannot judge. `nothing`: why nothing of it can be; else `notes`: what was left out, a sentence each. */
export interface Unjudged { readonly nothing: string | null; readonly notes: readonly string[] }

const lines = (count: number, one: string, more: string): string[] => (count === 0 ? [] : [count === 1 ? one : `${count} ${more}`]);

/** That lines repeat somebody else's words and were left out, in a sentence; null where none do. */
export function quotedNote(text: string): string | null {
  const quoted = text.split(/\r?\n/u).filter(isQuotedLine).length;
  return lines(quoted, "One quoted line (“>”) is somebody else’s and was not judged.", "quoted lines (“>”) are somebody else’s and were not judged.")[0] ?? null;
}

/** Told beside what the check finds: a letter that could not be judged has not passed. */
export function unjudgedOf(text: string): Unjudged {
  const own = ownLines(text);
  const quoted = quotedNote(text);
  if (!/\p{L}/u.test(own)) return { nothing: quoted ? "it holds only quoted lines" : "it holds no words", notes: [] };
  if (isOtherLanguage(own)) return { nothing: "it is not in English, and the check knows English only", notes: [] };
  return {
    nothing: null,
    notes: [
      ...(quoted ? [quoted] : []),
      ...lines(foreignIn(text).length, "One line is not in English, and what it says cannot be judged.", "lines are not in English, and what they say cannot be judged."),
    ],
  };
}
