import { COMPOUND_ENDINGS, LABEL_CODES, LABEL_NAMES, ON_WORDS, WITH_WORDS, type LabelMeaning, type LabelPart } from "../trade/label-names";
import { labelWords, wordKey, wordOf, type Gap, type LabelWord } from "./label-text";

/** A way a run of words can be read. Short names of four letters and less are too like other words to stand alone. */
export interface DictionaryEntry { readonly meaning: LabelMeaning; readonly words: readonly string[]; readonly gaps: readonly Gap[]; readonly exact: readonly string[]; readonly short: boolean }

const SHORT_LETTERS = 3;
const UNSPACED = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;

const entries: DictionaryEntry[] = LABEL_NAMES.map(({ name, meaning }) => {
  const words = labelWords(name);
  const short = words.length === 1 && !UNSPACED.test(name) && (words[0] as LabelWord).lower.length <= SHORT_LETTERS;
  return { meaning, words: words.map((w) => w.key), gaps: words.map((w) => w.gap), exact: words.map((w) => w.lower), short };
});

function grouped<T>(items: readonly T[], key: (item: T) => string): Map<string, T[]> {
  const map = new Map<string, T[]>();
  for (const item of items) map.set(key(item), [...(map.get(key(item)) ?? []), item]);
  return map;
}

const byFirstWord = new Map([...grouped(entries.filter((e) => e.words.length > 0), (e) => e.words[0] as string)]
  .map(([word, list]) => [word, list.sort((a, b) => b.words.length - a.words.length)] as const));
const unspaced = grouped(entries.filter((e) => e.exact.length === 1 && UNSPACED.test(e.exact[0] as string)), (e) => (e.exact[0] as string).charAt(0));
const codes = new Map(LABEL_CODES.map((c) => [c.code, c.meaning]));

/** A name may run over the end of a line, but not over a comma that is not its own: "silk, viscose" are two. */
const mayStand = (gap: Gap | undefined, own: Gap | undefined) => gap === "none" || gap === "line" || gap === own;

/** The readings of the words from `at`: those of the longest match, more than one where a word means different things. */
export function readingsAt(words: readonly LabelWord[], at: number): readonly DictionaryEntry[] {
  const first = words[at] as LabelWord;
  const fits = (e: DictionaryEntry) => (e.short ? e.exact[0] === first.lower : e.words.every((w, k) => words[at + k]?.key === w && (k === 0 || mayStand(words[at + k]?.gap, e.gaps[k]))));
  const found = (byFirstWord.get(first.key) ?? []).filter(fits);
  return found.filter((e) => e.words.length === found[0]?.words.length);
}

/** What a printed word means as a code; codes are read only beside a percentage and as printed. */
export const codeMeaning = (printed: string): LabelMeaning | null => codes.get(printed) ?? null;

const endings = Object.entries(COMPOUND_ENDINGS).map(([ending, part]) => ({ tail: wordKey(ending), part }));

/** "Wollflor", "Seidenfransen": the fibre and the part, where both are known. */
export function compound(word: LabelWord): { meaning: LabelMeaning; part: Exclude<LabelPart, "whole"> | null } | null {
  for (const { tail, part } of endings) {
    if (!word.key.endsWith(tail) || word.key.length - tail.length < 3) continue;
    const head = word.key.slice(0, -tail.length);
    const name = [head, `${head}e`, head.replace(/[ns]$/u, "")].flatMap((h) => byFirstWord.get(h) ?? []).find((e) => e.words.length === 1 && !e.short);
    if (name) return { meaning: name.meaning, part };
  }
  return null;
}

export const joinWord = (word: LabelWord): "on" | "with" | null => (ON_WORDS.includes(word.lower) ? "on" : WITH_WORDS.includes(word.lower) ? "with" : null);

/** Words without spaces (Chinese, Japanese) cut into the longest known names; what is not known stays one character a piece. */
export function cutUnspaced(word: LabelWord): LabelWord[] {
  if (!UNSPACED.test(word.lower)) return [word];
  const pieces: string[] = [];
  for (let i = 0; i < word.lower.length;) {
    const known = (unspaced.get(word.lower.charAt(i)) ?? []).map((e) => e.exact[0] as string).filter((n) => word.lower.startsWith(n, i));
    const piece = known.sort((a, b) => b.length - a.length)[0] ?? word.lower.charAt(i);
    pieces.push(piece);
    i += piece.length;
  }
  return pieces.map((printed, k) => wordOf(printed, k === 0 ? word.gap : "none"));
}
