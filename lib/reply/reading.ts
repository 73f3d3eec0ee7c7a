/**
 * How hard a letter is to read. Kincaid et al. 1975, "Derivation of new readability formulas", Research Branch Report
 * 8-75: grade = 0.39 · words/sentence + 11.8 · syllables/word − 15.59 (coefficients from memory).
 */
export interface Reading {
  words: number;
  sentences: number;
  /** School grade of the United States, not below 0; 0 for an empty text. */
  grade: number;
}

const WORD = /[\p{L}\p{M}\p{N}’'½%-]+/gu;
const hasLetter = /\p{L}/u;

/** A silent e: before an ending, at the end (not "table", "fibre"), in -es (not "pieces", "fibres") and in -ed (not "wanted"). */
const SILENT_E = [/(?<=[^aeiouyl])e(?=(?:ment|ful|less|ly)s?$)/, /(?<![^aeiouy][lr])e$/, /(?<![cgsxz]|[cs]h|[^aeiouy][lr])e(?=s$)/, /(?<=[^td])e(?=d$)/];

/** Syllables of one English word by vowel groups, without silent e; at least 1. A rule of thumb: within one on ordinary words. */
export function syllables(word: string): number {
  const plain = word.toLowerCase().normalize("NFD").replace(/[^a-z]/g, "");
  const core = SILENT_E.reduce((word, silent) => word.replace(silent, ""), plain);
  return Math.max(1, core.match(/[aeiouy]+/g)?.length ?? 1);
}

/** The words of a text, in their order; a figure by itself is none. */
export const wordsIn = (text: string): string[] => (text.match(WORD) ?? []).filter((w) => hasLetter.test(w));

/** Words, sentences and grade of a text. A line break ends a sentence too: list lines are read one by one. */
export function readingOf(text: string): Reading {
  const sentences = text.split(/[.!?…]+(?=\s|$)|\n+/u).filter((s) => wordsIn(s).length > 0).length;
  const words = wordsIn(text);
  if (words.length === 0) return { words: 0, sentences: 0, grade: 0 };
  const spoken = words.reduce((sum, w) => sum + syllables(w), 0);
  const grade = 0.39 * (words.length / sentences) + 11.8 * (spoken / words.length) - 15.59;
  return { words: words.length, sentences, grade: Math.max(0, grade) };
}
