import type { FineFibre } from "../trade/label-fibres";
import { LABEL_NAMES } from "../trade/label-names";
import { readingsAt } from "./label-dictionary";
import { normalText } from "./label-normal";
import { labelTokens, type LabelToken } from "./label-tokens";

/** What a printed word of a label is to the dictionary. */
export interface LabelMark {
  /** The fibre that it names, alone or as part of a name of several words ("art silk"); null where it names none. */
  readonly fibre: FineFibre | null;
  /** It belongs to the name that the word before it began. */
  readonly goesOn: boolean;
  /** The dictionary knows it, or it is neither a word nor a figure. */
  readonly isKnown: boolean;
}

/** Words of the longest name of the table. */
const MOST_WORDS = Math.max(...LABEL_NAMES.map(({ name }) => name.split(" ").length));

interface Placed { readonly text: string; readonly line: number }

/** What each word of a label's lines is: names as long as the dictionary has them, over the end of a line too. */
export function markWords(lines: readonly (readonly string[])[]): LabelMark[][] {
  const words = lines.flatMap((line, n) => line.map((text): Placed => ({ text, line: n })));
  const marks: LabelMark[] = [];
  while (marks.length < words.length) marks.push(...nameAt(words, marks.length));
  let at = 0;
  return lines.map((line) => line.map(() => marks[at++] as LabelMark));
}

function nameAt(words: readonly Placed[], at: number): LabelMark[] {
  for (let count = Math.min(MOST_WORDS, words.length - at); count > 1; count -= 1) {
    const run = words.slice(at, at + count);
    const name = onlyName(run);
    if (name) return run.map((_, n) => ({ fibre: name.kind === "fibre" ? name.fibre : null, goesOn: n > 0, isKnown: true }));
  }
  return [oneWord((words[at] as Placed).text)];
}

/** The one name that begins with the first of these words and ends in the last; null where there is none, or more than one. */
function onlyName(run: readonly Placed[]): LabelToken | null {
  const { words, tokens } = tokensOf(run.map((w, n) => (n === 0 ? "" : w.line === run[n - 1]?.line ? " " : "\n") + w.text).join(""));
  const [only, ...more] = tokens;
  const last = tokensOf(run.at(-1)?.text ?? "").words.length;
  return only && more.length === 0 && (only.kind === "fibre" || only.kind === "look") && only.at === 0 && only.end > words.length - last ? only : null;
}
const tokensOf = (text: string) => labelTokens(normalText(text).text);

function oneWord(text: string): LabelMark {
  const { words, tokens } = tokensOf(text);
  const fibre = tokens.find((t) => t.kind === "fibre")?.fibre ?? null;
  return { fibre, goesOn: false, isKnown: tokens.length > 0 || !/[\p{L}\p{N}]/u.test(text) || words.some((_, at) => readingsAt(words, at).length > 0) };
}
