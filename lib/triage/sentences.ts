import { BETWEEN_CLAUSES, LETTER_NEGATIONS, NEGATION_FILLERS } from "../trade/letter-signs";
import { ASKING_VERBS, ASKING_WORDS, NEW_CLAUSE, OF_ANOTHER_RUG, OF_ITS_PATTERN, ONLY_THOUGHT, SUPPOSING } from "../trade/story-words";

/** How far from a word the rest of its clause is looked for, in characters, however long a sentence is. *elicited* */
export const NEAR_CHARS = 200;

const escaped = (word: string) => word.replace(/[.+?^${}()|[\]\\]/gu, "\\$&");
const oneOf = (words: readonly string[]): string => words.map((w) => escaped(w).replaceAll(" ", " +").replaceAll("*", "[\\p{L}']*")).join("|");
/** Any of these words in small letters with plain apostrophes, whole; `*` stands for any ending. */
export const pattern = (words: readonly string[], notBefore: readonly string[] = []): RegExp =>
  new RegExp(`(?<![\\p{L}'])(?:${oneOf(words)})(?![\\p{L}'])${notBefore.length > 0 ? `(?![ -](?:${oneOf(notBefore)})(?![\\p{L}']))` : ""}`, "gu");

const NEGATED = new RegExp(`(?<![\\p{L}'])(?:${oneOf(LETTER_NEGATIONS)})(?: (?:${oneOf(NEGATION_FILLERS)}))* $`, "u");

/** Sentences in small letters with plain apostrophes, as long as the text they were cut from, so that a place in one is a place in the other. */
export interface Sentence { readonly own: string; readonly plain: string }
/** Small letters and plain apostrophes, as long as it was. */
export const inPlainLetters = (text: string): string => [...text].map((c) => (c === "’" ? "'" : /\s/u.test(c) ? " " : c.toLowerCase().length === c.length ? c.toLowerCase() : c)).join("");
export const sentencesOf = (text: string): Sentence[] =>
  (text.replace(/\r?\n[ \t]*\r?\n/gu, ". ").match(/[^.!?;]+[.!?;]*/gu) ?? []).map((part) => part.trim()).filter((part) => part !== "")
    .map((own) => ({ own, plain: inPlainLetters(own) }));

export const isFound = (re: RegExp, text: string): boolean => text.search(re) >= 0;
/** What stands before a place, as far back as it can bear on it. */
export const before = (plain: string, at: number): string => plain.slice(Math.max(0, at - NEAR_CHARS), at);
/** Whether the words at this place are denied in their own clause. */
export const isDenied = (plain: string, at: number): boolean => NEGATED.test(before(plain, at).split(BETWEEN_CLAUSES).at(-1) ?? "");

/** Whether any of these words is said in a text, and not denied in its own clause. */
export const isSaidIn = (text: string, words: RegExp): boolean =>
  sentencesOf(text).some(({ plain }) => [...plain.matchAll(words)].some(({ index }) => !isDenied(plain, index)));


const begins = (words: readonly string[]) => new RegExp(`^\\W*(?:${oneOf(words)})(?![\\p{L}'])`, "u");
const [SUPPOSED, ASKING_VERB, ASKING] = [begins(SUPPOSING), begins(ASKING_VERBS), begins([...ASKING_VERBS, ...ASKING_WORDS])];
const THOUGHT = pattern([...ONLY_THOUGHT, ...OF_ANOTHER_RUG]);
const OWN_LOOK = pattern(OF_ITS_PATTERN);

/** Where each clause of a sentence begins. */
const clausesOf = (plain: string): number[] => [0, ...[...plain.matchAll(NEW_CLAUSE)].map((m) => m.index + m[0].length)];

/** How far a sentence tells: of a question what stands before it asks, of what is only supposed nothing. */
export function tellsUntil(plain: string): number {
  if (SUPPOSED.test(plain) || ASKING_VERB.test(plain)) return 0;
  if (!/[?？]\W*$/u.test(plain)) return plain.length;
  return clausesOf(plain).find((at) => ASKING.test(plain.slice(at, at + NEAR_CHARS))) ?? 0;
}

/**
 * Whether what stands at this place of a sentence in small letters is told as a fact: not denied, asked, supposed or only thought, nor said of
 * another rug or of the pattern. When in doubt it is not: better asked once more than never.
 */
export function isToldAt(plain: string, index: number): boolean {
  const clauses = clausesOf(plain);
  const [from, to] = [clauses.findLast((at) => at <= index) ?? 0, clauses.find((at) => at > index) ?? plain.length];
  return index < tellsUntil(plain) && !isDenied(plain, index) && !isFound(THOUGHT, plain.slice(from, index)) && !isFound(OWN_LOOK, plain.slice(from, to));
}
/** Whether any of these words is told as a fact in a sentence in small letters. */
export const tellsAny = (plain: string, words: RegExp): boolean => [...plain.matchAll(words)].some(({ index }) => isToldAt(plain, index));
