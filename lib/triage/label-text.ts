import { PERCENT_WORDS } from "../trade/label-names";
import { normalText } from "./label-normal";

/** What stands between a word and the one before it: nothing but space, the end of a line, a mark that divides, or a colon. */
export type Gap = "none" | "line" | "break" | "colon";

/** One word of a label: as printed, and as it is compared. */
export interface LabelWord {
  readonly gap: Gap;
  readonly printed: string;
  readonly lower: string;
  /** Without accents and with what a reader of pictures confuses made one (0 and o; 1, i and l; 5 and s; rn and m; vv and w). */
  readonly key: string;
  /** Printed as one with the word before it. */
  readonly unspaced: boolean;
}

const PLAIN_LETTERS: Readonly<Record<string, string>> = { ł: "l", ø: "o", đ: "d", æ: "ae", œ: "oe", ß: "ss", ð: "d", þ: "th", ħ: "h", ı: "i" };
const CONFUSED: Readonly<Record<string, string>> = { "0": "o", "1": "l", i: "l", "5": "s", rn: "m", vv: "w" };

/** Lower case without accents. */
export const plainLetters = (word: string): string =>
  word.toLowerCase().normalize("NFD").replace(/[\u0300-\u036f]/gu, "").replace(/[łøđæœßðþħı]/gu, (c) => PLAIN_LETTERS[c] ?? c).normalize("NFC");

/** The form in which words are compared. Digits count as letters only in a word that has at least two letters. */
export function wordKey(word: string): string {
  const plain = plainLetters(word);
  const letters = plain.match(/\p{L}/gu)?.length ?? 0;
  return plain.replace(letters >= 2 ? /[0i15]|rn|vv/gu : /i/gu, (c) => CONFUSED[c] ?? c);
}

export const wordOf = (printed: string, gap: Gap = "none", unspaced = false): LabelWord =>
  ({ gap, printed, lower: printed.replace(/İ/gu, "i").toLowerCase(), key: wordKey(printed), unspaced });

/** Marks that stand for what divides words; normal text holds none of them. */
const COLON = "\u0001";
const BREAK = "\u0002";
const LINE = "\u0003";
const UNSPACED = "\u0004";
/** Joins the ends of a range into one word: "70–80". */
const TO = "\u0005";

const MARKS: Readonly<Record<string, Gap>> = { [COLON]: "colon", [BREAK]: "break", [LINE]: "line" };
const WIDTH: Readonly<Record<Gap, number>> = { none: 0, line: 1, break: 2, colon: 3 };
const FIGURE = String.raw`\d{1,3}(?:\.\d{1,2})?`;
/** Where a figure meets a script that has no spaces. */
const UNSPACED_SCRIPT = /(?<=[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}])(?=\d)|(?<=\d)(?=[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}])/gu;
const RANGE = new RegExp(`(?<![\\d.])(${FIGURE}) ?[-–—] ?(${FIGURE})(?= ?%)`, "gu");

/** A figure below nothing, as printed; where all figures make 100, the strokes are those of a list. */
const BELOW_ZERO = new RegExp(String.raw`(?<=^|[\s(:;,])[-−–](${FIGURE})(?= ?%)`, "gu");
const FIGURES = new RegExp(String.raw`(?<![\d.])${FIGURE}(?= ?%)`, "gu");
const withoutNegatives = (text: string): string =>
  [...text.matchAll(FIGURES)].reduce((sum, [figure]) => sum + Number(figure), 0) === 100 ? text : text.replace(BELOW_ZERO, " ");

/** Words of a text that is normal already. A decimal point or comma between digits stays. */
export function wordsOf(normal: string): LabelWord[] {
  const spaced = withoutNegatives(normal.replace(/(\d)[.,](?=\d)/gu, "$1."))
    .replace(RANGE, (all, from: string, to: string) => (Number(from) < Number(to) ? `${from}${TO}${to}` : all))
    .replace(/[<>≤≥≈~±]/gu, " about ")
    .replace(UNSPACED_SCRIPT, " ")
    .replace(/(?<=\p{L}\p{L})(?=\d{1,3}(?:\.\d{1,2})? ?%)/gu, ` ${UNSPACED} `)
    .replace(/%/gu, " % ")
    .replace(/:/gu, ` ${COLON} `)
    .replace(/\n+/gu, ` ${LINE} `)
    .replace(/[;,()[\]{}|/+&。、，；]|\s[-–—](?=\s)|(?<!\d)\.|\.(?!\d)/gu, ` ${BREAK} `)
    .replace(/[^\p{L}\p{M}\p{N}%.\u0001-\u0005]+/gu, " ")
    .replace(/(?<![\p{L}\p{M}\p{N}.])(\d{2,3})(?=\p{L}{2})/gu, `$1 ${UNSPACED} `);
  const words: LabelWord[] = [];
  let gap: Gap = "none";
  let unspaced = false;
  for (const piece of spaced.split(" ")) {
    const mark = MARKS[piece];
    if (mark) gap = WIDTH[mark] > WIDTH[gap] ? mark : gap;
    else if (piece === UNSPACED) unspaced = true;
    else if (piece !== "") {
      words.push(wordOf(PERCENT_WORDS.includes(piece.toLowerCase()) ? "%" : piece, gap, unspaced));
      [gap, unspaced] = ["none", false];
    }
  }
  return words;
}

/** What counts as one word of any text: letters with their marks and digits. */
export const labelWords = (text: string): LabelWord[] => wordsOf(normalText(text).text);

/** A number of a percentage, slips of reading allowed ("1OO"); null where the word is none or is over 100. */
export function percentNumber(word: string): number | null {
  if (!/^[\dOoIl]{1,3}(\.[\dOo]{1,2})?$/u.test(word)) return null;
  const value = Number(word.replace(/[Oo]/gu, "0").replace(/[Il]/gu, "1"));
  return Number.isFinite(value) && value <= 100 ? value : null;
}

/** A range of percentages as printed, "70–80"; null where the word is none. */
export const percentRange = (word: string): string | null => (word.includes(TO) ? word.replace(TO, "–") : null);
