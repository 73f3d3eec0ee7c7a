import type { FineFibre } from "../trade/label-fibres";
import type { LabelLook, LabelMeaning, LabelPart } from "../trade/label-names";
import { codeMeaning, compound, cutUnspaced, joinWord, readingsAt, type DictionaryEntry } from "./label-dictionary";
import { labelWords, percentNumber, type LabelWord } from "./label-text";

/**
 * What a label says, piece by piece. `at` and `end` count words: text between pieces means nothing here.
 */
export type LabelToken = { readonly at: number; readonly end: number } & (
  | { kind: "percent"; value: number }
  | { kind: "fibre"; fibre: FineFibre }
  | { kind: "part"; part: Exclude<LabelPart, "whole"> }
  | { kind: "join"; word: "on" | "with" }
  | { kind: "look"; look: LabelLook });

const isPart = (m: LabelMeaning): m is Exclude<LabelPart, "whole"> => m === "pile" || m === "ground" || m === "fringe";
const isLook = (m: LabelMeaning): m is LabelLook => m === "silk-look" || m === "no-fibre";

function tokenOf(meaning: LabelMeaning, at: number, end: number): LabelToken {
  if (isPart(meaning)) return { kind: "part", part: meaning, at, end };
  if (isLook(meaning)) return { kind: "look", look: meaning, at, end };
  return { kind: "fibre", fibre: meaning, at, end };
}

/** A percentage at `at`: "80 %", "% 80". */
function percentAt(words: readonly LabelWord[], at: number): LabelToken | null {
  const printed = (i: number) => words[i]?.printed ?? "";
  const after = printed(at + 1) === "%" ? percentNumber(printed(at)) : null;
  if (after !== null) return { kind: "percent", value: after, at, end: at + 2 };
  const before = printed(at) === "%" ? percentNumber(printed(at + 1)) : null;
  return before === null || printed(at + 2) === "%" ? null : { kind: "percent", value: before, at, end: at + 2 };
}

/** Bare numbers that stand for percentages: only where the label has no per cent sign and they add up to 100. */
function bareNumbers(words: readonly LabelWord[]): Set<number> {
  if (words.some((w) => w.printed === "%")) return new Set();
  const at = words.map((_, i) => i).filter((i) => /^\d{1,3}(\.\d)?$/u.test((words[i] as LabelWord).printed));
  const sum = at.reduce((total, i) => total + Number((words[i] as LabelWord).printed), 0);
  return sum === 100 ? new Set(at) : new Set();
}

/** In a label of few words a short name stands for itself; elsewhere it needs a percentage or a part beside it. */
const FEW_WORDS = 3;

/** Of several meanings: with a percentage before it the fibre, otherwise the part of the rug. */
function chosen(readings: readonly DictionaryEntry[], besidePercent: boolean): DictionaryEntry {
  const part = readings.find((r) => isPart(r.meaning));
  const fibre = readings.find((r) => !isPart(r.meaning));
  return (besidePercent ? fibre ?? part : part ?? fibre) as DictionaryEntry;
}

class Scanner {
  readonly tokens: LabelToken[] = [];
  private readonly bare: Set<number>;
  constructor(private readonly words: readonly LabelWord[]) {
    this.bare = bareNumbers(words);
  }
  private percent(at: number): LabelToken | null {
    if (at >= this.words.length) return null;
    return this.bare.has(at) ? { kind: "percent", value: Number((this.words[at] as LabelWord).printed), at, end: at + 1 } : percentAt(this.words, at);
  }
  private percentBefore(at: number): boolean {
    const last = this.tokens[this.tokens.length - 1];
    return last?.kind === "percent" && last.end === at;
  }
  /** Whether a percentage stands directly before or after the words from `at` to `end`. */
  private besidePercent(at: number, end: number): boolean {
    return this.percentBefore(at) || this.percent(end) !== null;
  }
  private besidePart(at: number, end: number): boolean {
    const last = this.tokens[this.tokens.length - 1];
    return (last?.kind === "part" && last.end === at) || (end < this.words.length && readingsAt(this.words, end).some((r) => !r.short && isPart(r.meaning)));
  }
  private named(at: number): LabelToken | null {
    const readings = readingsAt(this.words, at).filter((r) =>
      !r.short || this.besidePercent(at, at + 1) || (r.exact[0] !== "in" && (this.words.length <= FEW_WORDS || this.besidePart(at, at + 1))));
    if (readings.length === 0) return null;
    const entry = chosen(readings, this.besidePercent(at, at + (readings[0] as DictionaryEntry).words.length));
    return tokenOf(entry.meaning, at, at + entry.words.length);
  }
  private coded(at: number): LabelToken | null {
    const meaning = codeMeaning((this.words[at] as LabelWord).printed);
    return meaning !== null && this.besidePercent(at, at + 1) ? tokenOf(meaning, at, at + 1) : null;
  }
  private compounded(at: number): LabelToken[] {
    const found = compound(this.words[at] as LabelWord);
    if (!found) return [];
    const fibre = tokenOf(found.meaning, at, at + 1);
    return found.part ? [fibre, { kind: "part", part: found.part, at, end: at + 1 }] : [fibre];
  }
  scan(): LabelToken[] {
    for (let at = 0; at < this.words.length;) {
      const one = this.percent(at) ?? this.named(at) ?? this.coded(at);
      const found: LabelToken[] = one ? [one] : this.compounded(at);
      const join = found.length === 0 ? joinWord(this.words[at] as LabelWord) : null;
      if (join) found.push({ kind: "join", word: join, at, end: at + 1 });
      this.tokens.push(...found);
      at = found[found.length - 1]?.end ?? at + 1;
    }
    return this.tokens;
  }
}

/** Reads a label into pieces: longest name first, at word boundaries, in every language of the table at once. */
export function labelTokens(text: string): { words: LabelWord[]; tokens: LabelToken[] } {
  const words = labelWords(text).flatMap(cutUnspaced);
  return { words, tokens: new Scanner(words).scan() };
}
