import { REGENERATED } from "../trade/label-fibres";
import { COMPOUND_ENDINGS, LABEL_CODES, LABEL_NAMES, ON_WORDS, ROUGH_WORDS, WITH_WORDS, type LabelMeaning, type LabelPart } from "../trade/label-names";
import { labelWords, plainLetters, wordKey, wordOf, type Gap, type LabelWord } from "./label-text";

/** A way a run of words can be read. Short Latin names, of three letters and less, are too like other words to stand alone. */
export interface DictionaryEntry {
  readonly meaning: LabelMeaning;
  readonly words: readonly string[];
  readonly gaps: readonly Gap[];
  readonly exact: readonly string[];
  readonly short: boolean;
}

const SHORT_LETTERS = 3;
const MAN_MADE: ReadonlySet<LabelMeaning> = new Set<LabelMeaning>([
  ...REGENERATED, "rayon", "triacetate", "polyamide", "polyester", "polypropylene", "acrylic", "synthetic",
]);
const LATIN = /\p{Script=Latin}/u;
const UNSPACED = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;

const entries: DictionaryEntry[] = LABEL_NAMES.map(({ name, meaning }) => {
  const words = labelWords(name);
  const short = words.length === 1 && LATIN.test(name) && (words[0] as LabelWord).lower.length <= SHORT_LETTERS;
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
const codes = new Map([...grouped(LABEL_CODES, (c) => c.code)].map(([code, rows]) => [code, [...new Set(rows.map((r) => r.meaning))]] as const));

/** "Viscose silk" is one name on one line; at a line's end the first word may be a name of its own. */
const oneLine: ReadonlySet<DictionaryEntry> = new Set(entries.filter((e) => e.words.length === 2 && e.meaning === "art-silk"
  && entries.some((head) => head.words.length === 1 && head.words[0] === e.words[0] && head.meaning !== "bamboo" && MAN_MADE.has(head.meaning))));

/** A name may run over the end of a line, but not over a comma that is not its own: "silk, viscose" are two. */
const mayStand = (gap: Gap | undefined, own: Gap | undefined, overLines: boolean) => gap === "none" || (gap === "line" && overLines) || gap === own;

/** The readings of the words from `at`: those of the longest match, more than one where a word means different things. */
export function readingsAt(words: readonly LabelWord[], at: number): readonly DictionaryEntry[] {
  const first = words[at] as LabelWord;
  const stands = (e: DictionaryEntry, w: string, k: number) => words[at + k]?.key === w && (k === 0 || mayStand(words[at + k]?.gap, e.gaps[k], !oneLine.has(e)));
  const fits = (e: DictionaryEntry) => e.words.every((w, k) => stands(e, w, k));
  const found = (byFirstWord.get(first.key) ?? []).filter(fits);
  return found.filter((e) => e.words.length === found[0]?.words.length);
}

/** What a printed word may mean as a code, more than one where systems differ; codes are read only beside a percentage and as printed. */
export const codeMeanings = (printed: string): readonly LabelMeaning[] => codes.get(printed) ?? [];

/** Greek drops its accents in capitals; a word all in capitals is no slip there. */
const asPrinted = (word: LabelWord, exact: string) =>
  word.lower === exact || word.printed.toUpperCase() === exact.toUpperCase()
  || (/\p{Script=Greek}/u.test(exact) && word.printed === word.printed.toUpperCase() && plainLetters(word.printed) === plainLetters(exact));

export type Slip = { readonly meant: string; readonly kind: "accents" | "letters" };

interface Nearest { readonly readings: readonly DictionaryEntry[]; readonly slip: Slip["kind"] | null }

/** Of the readings of the words from `at` those nearest to what is printed: so printed, but for accents, or but for letters that look alike. */
export function nearest(words: readonly LabelWord[], at: number, readings: readonly DictionaryEntry[]): Nearest {
  const like = (alike: (word: LabelWord, exact: string) => boolean) => readings.filter((e) => e.exact.every((exact, k) => alike(words[at + k] as LabelWord, exact)));
  const printed = like(asPrinted);
  if (printed.length > 0) return { readings: printed, slip: null };
  const unaccented = like((word, exact) => plainLetters(word.lower) === plainLetters(exact));
  return unaccented.length > 0 ? { readings: unaccented, slip: "accents" } : { readings, slip: readings.length > 0 ? "letters" : null };
}

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

const LEAST_LETTERS = 4;
/** No label prints longer words; a longer one is not taken apart. */
const MOST_GLUED_LETTERS = 40;
const oneWord = (key: string) => (byFirstWord.get(key) ?? []).find((e) => e.words.length === 1 && !e.short);

/**
 * "WOOLVISCOSE", "PURESILK": two known words printed as one; null where none or more than one cut makes them. What ends in
 * silk is cut only after a word that is no man-made fibre: "acetate silk" names no silk.
 */
export function glued(word: LabelWord): readonly [DictionaryEntry, DictionaryEntry] | null {
  if (word.key.length > MOST_GLUED_LETTERS) return null;
  const cuts: [DictionaryEntry, DictionaryEntry][] = [];
  for (let cut = LEAST_LETTERS; cut <= word.key.length - LEAST_LETTERS; cut += 1) {
    const [head, tail] = [oneWord(word.key.slice(0, cut)), oneWord(word.key.slice(cut))];
    if (head && tail && !(tail.meaning === "silk" && MAN_MADE.has(head.meaning))) cuts.push([head, tail]);
  }
  return cuts.length === 1 ? (cuts[0] as [DictionaryEntry, DictionaryEntry]) : null;
}

export const isRough = (word: LabelWord | undefined) => word !== undefined && ROUGH_WORDS.includes(word.lower);

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
