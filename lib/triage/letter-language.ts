import { LETTER_ENGLISH } from "../trade/letter-language";

const WORD = /\p{L}[\p{L}\p{M}'’]*/gu;
const LATIN = /\p{Script=Latin}/u;
const ENGLISH = new Set(LETTER_ENGLISH.words);

/**
 * Whether a letter is written in another language than the words that are looked for in letters: in another script, or long
 * enough to tell and with hardly an English word in it. A letter of a few words in Latin letters counts as English.
 */
export function isOtherLanguage(text: string): boolean {
  const words = (text.match(WORD) ?? []).map((w) => w.toLowerCase().replaceAll("’", "'"));
  if (words.length === 0) return false;
  const foreign = words.filter((w) => !LATIN.test(w)).length;
  if (foreign * 2 > words.length) return true;
  if (words.length < LETTER_ENGLISH.leastWords) return false;
  return words.filter((w) => ENGLISH.has(w)).length < words.length * LETTER_ENGLISH.leastShare;
}
