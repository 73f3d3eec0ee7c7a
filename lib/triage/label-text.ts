import { PERCENT_WORDS } from "../trade/label-names";

/** What stands between a word and the one before it: nothing but space, the end of a line, a mark that divides, or a colon. */
export type Gap = "none" | "line" | "break" | "colon";

/** One word of a label: as printed, and as it is compared. */
export interface LabelWord {
  readonly gap: Gap;
  readonly printed: string;
  readonly lower: string;
  /** Without accents and with the letters a reader of pictures confuses made one (0 and o; 1, i and l; 5 and s). */
  readonly key: string;
}

const PLAIN_LETTERS: Readonly<Record<string, string>> = { ł: "l", ø: "o", đ: "d", æ: "ae", œ: "oe", ß: "ss", ð: "d", þ: "th", ħ: "h", ı: "i" };
const CONFUSED: Readonly<Record<string, string>> = { "0": "o", "1": "l", i: "l", "5": "s" };

/** The form in which words are compared. Digits count as letters only in a word that has at least two letters. */
export function wordKey(word: string): string {
  const plain = word.toLowerCase().normalize("NFD").replace(/[\u0300-\u036f]/gu, "").replace(/[łøđæœßðþħı]/gu, (c) => PLAIN_LETTERS[c] ?? c).normalize("NFC");
  const letters = plain.match(/\p{L}/gu)?.length ?? 0;
  return plain.replace(letters >= 2 ? /[0i15]/gu : /i/gu, (c) => CONFUSED[c] ?? c);
}

export const wordOf = (printed: string, gap: Gap = "none"): LabelWord => ({ gap, printed, lower: printed.toLowerCase(), key: wordKey(printed) });

/** Digits of other scripts and their per cent signs as ours. */
function westernDigits(text: string): string {
  const zeros = ["٠", "۰", "०", "０"];
  return text.replace(/[٠-٩۰-۹०-९０-９]/gu, (d) => {
    const zero = zeros.find((z) => d >= z && d.charCodeAt(0) <= z.charCodeAt(0) + 9) as string;
    return String(d.charCodeAt(0) - zero.charCodeAt(0));
  }).replace(/[٪％﹪]/gu, "%").replace(/٫/gu, ".");
}

/** Marks that stand for what divides words; no keyboard types them, and they are taken out of what comes in. */
const COLON = "\u0001";
const BREAK = "\u0002";
const LINE = "\u0003";

const MARKS: Readonly<Record<string, Gap>> = { [COLON]: "colon", [BREAK]: "break", [LINE]: "line" };
const WIDTH: Readonly<Record<Gap, number>> = { none: 0, line: 1, break: 2, colon: 3 };

/** What counts as one word: letters with their marks and digits; a decimal point or comma between digits stays. */
export function labelWords(text: string): LabelWord[] {
  const spaced = westernDigits(text.normalize("NFC").replace(/[\u0001-\u0003]/gu, " "))
    .replace(/(\d)\s*[.,]\s*(?=\d)/gu, "$1.")
    .replace(/%/gu, " % ")
    .replace(/\s*[:：]\s*/gu, ` ${COLON} `)
    .replace(/[\r\n]+/gu, ` ${LINE} `)
    .replace(/[;,()[\]{}|/+&。、，；]|\s[-–—]\s|(?<!\d)\.|\.(?!\d)/gu, ` ${BREAK} `)
    .replace(/[^\p{L}\p{M}\p{N}%.\u0001-\u0003]+/gu, " ")
    .replace(/(?<![\p{L}\p{M}\p{N}])(\d{2,3})(?=\p{L}{2})/gu, "$1 ")
    .replace(/(?<=[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}])(?=\d)/gu, " ");
  const words: LabelWord[] = [];
  let gap: Gap = "none";
  for (const piece of spaced.split(" ")) {
    const mark = MARKS[piece];
    if (mark) gap = WIDTH[mark] > WIDTH[gap] ? mark : gap;
    else if (piece !== "") {
      words.push(wordOf(PERCENT_WORDS.includes(piece.toLowerCase()) ? "%" : piece, gap));
      gap = "none";
    }
  }
  return words;
}

/** A number of a percentage, OCR slips allowed ("1OO"); null where the word is none or is over 100. */
export function percentNumber(word: string): number | null {
  if (!/^[\dOoIl]{1,3}(\.[\dOo]{1,2})?$/u.test(word)) return null;
  const value = Number(word.replace(/[Oo]/gu, "0").replace(/[Il]/gu, "1"));
  return Number.isFinite(value) && value <= 100 ? value : null;
}
