import type { FineFibre } from "../trade/label-fibres";
import { CLAIM_FIBRE, type LabelClaim, type LabelLook, type LabelMeaning, type LabelPart } from "../trade/label-names";
import { codeMeanings, compound, cutUnspaced, glued, isRough, joinWord, nearest, readingsAt, type DictionaryEntry } from "./label-dictionary";
import { LabelSlips } from "./label-slips";
import { percentNumber, percentRange, wordsOf, type LabelWord } from "./label-text";

/** What a name says beside its fibre: a claim with a rule of its own, "pure", or that it is only a code. */
export type FibreSays = LabelClaim | "pure" | "code";

/** What a label says, piece by piece. `at` and `end` count words; `led`: a word that could not be read stands just before the percentage. */
export type LabelToken = { readonly at: number; readonly end: number } & (
  | { kind: "percent"; value: number | null; led: boolean }
  | { kind: "fibre"; fibre: FineFibre; says: readonly FibreSays[] }
  | { kind: "part"; part: LabelPart }
  | { kind: "join"; word: "on" | "with" }
  | { kind: "look"; look: LabelLook }
  | { kind: "pure" });

const isPart = (m: LabelMeaning): m is LabelPart => m === "pile" || m === "ground" || m === "fringe" || m === "whole";
const isLook = (m: LabelMeaning): m is LabelLook => m === "no-fibre" || m.endsWith("-look");
const isClaim = (m: LabelMeaning): m is LabelClaim => Object.hasOwn(CLAIM_FIBRE, m);

function tokenOf(meaning: LabelMeaning, at: number, end: number, code: readonly FibreSays[] = []): LabelToken {
  if (isPart(meaning)) return { kind: "part", part: meaning, at, end };
  if (isLook(meaning)) return { kind: "look", look: meaning, at, end };
  if (meaning === "pure") return { kind: "pure", at, end };
  if (isClaim(meaning)) return { kind: "fibre", fibre: CLAIM_FIBRE[meaning], says: [meaning, ...code], at, end };
  return { kind: "fibre", fibre: meaning, says: code, at, end };
}

/** A percentage at `at`: "80 %", "% 80"; of a range, "70–80 %", no figure is taken. */
function percentAt(words: readonly LabelWord[], at: number): Extract<LabelToken, { kind: "percent" }> | null {
  const printed = (i: number) => words[i]?.printed ?? "";
  const valueAt = (i: number) => (percentRange(printed(i)) === null ? percentNumber(printed(i)) : "range");
  const after = printed(at + 1) === "%" ? valueAt(at) : null;
  const before = after === null && printed(at) === "%" && printed(at + 2) !== "%" ? valueAt(at + 1) : null;
  const value = after ?? before;
  return value === null ? null : { kind: "percent", value: value === "range" ? null : value, led: false, at, end: at + 2 };
}

/** Bare numbers that stand for percentages: only where the label has no per cent sign and they add up to 100. */
function bareNumbers(words: readonly LabelWord[]): ReadonlySet<number> {
  if (words.some((w) => w.printed === "%")) return new Set();
  const at = words.map((_, i) => i).filter((i) => /^\d{1,3}(\.\d{1,2})?$/u.test((words[i] as LabelWord).printed));
  const sum = at.reduce((total, i) => total + Number((words[i] as LabelWord).printed), 0);
  return Math.abs(sum - 100) < 1e-9 ? new Set(at) : new Set();
}

/** In a label of few words a short name stands for itself; elsewhere it needs a percentage or a part beside it. */
const FEW_WORDS = 3;

/** Whether a short name may be one without a percentage beside it: only as printed, and never the commonest word of all. */
const standsAlone = (name: DictionaryEntry, word: LabelWord) => name.exact[0] === word.lower && word.lower !== "in";

/** Of several meanings: with a percentage before it the fibre, otherwise the part of the rug; of fibres the name that says more. */
function chosen(readings: readonly DictionaryEntry[], besidePercent: boolean): DictionaryEntry {
  const part = readings.find((r) => isPart(r.meaning));
  const fibre = readings.find((r) => isClaim(r.meaning)) ?? readings.find((r) => !isPart(r.meaning));
  return (besidePercent ? fibre ?? part : part ?? fibre) as DictionaryEntry;
}

class Scanner {
  readonly tokens: LabelToken[] = [];
  readonly slips: LabelSlips;
  private readonly bare: ReadonlySet<number>;
  constructor(private readonly words: readonly LabelWord[]) {
    this.bare = bareNumbers(words);
    this.slips = new LabelSlips(words);
  }
  private percent(at: number): Extract<LabelToken, { kind: "percent" }> | null {
    if (at >= this.words.length) return null;
    return this.bare.has(at) ? { kind: "percent", value: Number((this.words[at] as LabelWord).printed), led: false, at, end: at + 1 } : percentAt(this.words, at);
  }
  private percentBefore(at: number): boolean {
    const last = this.tokens[this.tokens.length - 1];
    return last?.kind === "percent" && last.end === at;
  }
  /** Whether a percentage stands directly before or after the words from `at` to `end`. */
  private besidePercent(at: number, end: number): boolean {
    return this.percentBefore(at) || this.percent(end) !== null;
  }
  /** Whether a part or another fibre stands directly before or after. */
  private besideName(at: number, end: number): boolean {
    const last = this.tokens[this.tokens.length - 1];
    const after = end < this.words.length ? readingsAt(this.words, end).find((r) => !r.short || standsAlone(r, this.words[end] as LabelWord))?.meaning : undefined;
    return ((last?.kind === "part" || last?.kind === "fibre") && last.end === at) || (after !== undefined && !isLook(after) && after !== "pure");
  }
  private named(at: number): LabelToken | null {
    const readings = readingsAt(this.words, at).filter((r) =>
      !r.short || this.besidePercent(at, at + 1) || (standsAlone(r, this.words[at] as LabelWord) && (this.words.length <= FEW_WORDS || this.besideName(at, at + 1))));
    if (readings.length === 0) return null;
    const near = nearest(this.words, at, readings);
    const entry = chosen(near.readings, this.besidePercent(at, at + (readings[0] as DictionaryEntry).words.length));
    if (near.slip !== null) this.slips.name(at, entry.words.length, { meant: entry.exact.join(" "), kind: near.slip });
    this.slips.meanings(at, entry.words.length, [...new Set([entry, ...near.readings].map((r) => (isClaim(r.meaning) ? CLAIM_FIBRE[r.meaning] : r.meaning)))]);
    return tokenOf(entry.meaning, at, at + entry.words.length);
  }
  private coded(at: number): LabelToken | null {
    const { printed } = this.words[at] as LabelWord;
    const meanings = codeMeanings(printed);
    if (meanings.length === 0 || !this.besidePercent(at, at + 1) || this.roughly(at)) return null;
    if (meanings.length > 1) this.slips.clash(printed, meanings);
    return meanings.length === 1 ? tokenOf(meanings[0] as LabelMeaning, at, at + 1, ["code"]) : null;
  }
  /** "CA. 80 %": about, not a code. */
  private roughly(at: number): boolean {
    return /^ca$/iu.test((this.words[at] as LabelWord).printed) && this.words[at + 1]?.gap === "break" && this.percent(at + 1) !== null;
  }
  private compounded(at: number): LabelToken[] {
    const word = this.words[at] as LabelWord;
    const found = compound(word);
    if (found) return [tokenOf(found.meaning, at, at + 1), ...(found.part ? [tokenOf(found.part, at, at + 1)] : [])];
    const two = glued(word);
    if (two) this.slips.glued(word.printed, two.map((e) => e.exact[0] as string));
    return (two ?? []).map((e) => tokenOf(e.meaning, at, at + 1));
  }
  private percentRead(at: number): LabelToken | null {
    const found = this.percent(at);
    if (!found) return null;
    const rough = at > 0 && (isRough(this.words[at - 1]) || this.roughly(at - 1));
    this.slips.percent(at, found.value, { bare: this.bare.has(at), rough });
    const unread = at > 0 && this.tokens[this.tokens.length - 1]?.end !== at && this.words[at]?.gap === "none";
    return { ...found, led: unread && !rough };
  }
  scan(): LabelToken[] {
    for (let at = 0; at < this.words.length;) {
      const one = this.percentRead(at) ?? this.named(at) ?? this.coded(at);
      const found: LabelToken[] = one ? [one] : this.compounded(at);
      const join = found.length === 0 ? joinWord(this.words[at] as LabelWord) : null;
      if (join) found.push({ kind: "join", word: join, at, end: at + 1 });
      if (found.length === 0 && this.words[at]?.printed === "%") this.slips.signAlone();
      if (found.some((t) => t.kind === "fibre" || t.kind === "percent")) this.slips.spaces(at, found[found.length - 1]?.end ?? at);
      this.tokens.push(...found);
      at = found[found.length - 1]?.end ?? at + 1;
    }
    return this.tokens;
  }
}

/** "Pure" goes to the name it stands beside; elsewhere it is a word like any other. */
function withPure(words: readonly LabelWord[], tokens: readonly LabelToken[]): LabelToken[] {
  const pure = tokens.filter((t) => t.kind === "pure");
  const starts = new Set(pure.map((t) => t.at));
  const ends = new Set(pure.map((t) => t.end));
  const beside = (t: LabelToken) => starts.has(t.at) || (ends.has(t.at) && words[t.at]?.gap === "none") || (starts.has(t.end) && words[t.end]?.gap === "none");
  return tokens.filter((t) => t.kind !== "pure").map((t) => (t.kind === "fibre" && beside(t) ? { ...t, says: [...t.says, "pure"] } : t));
}

/** Reads a normal text into pieces: longest name first, at word boundaries, in every language of the table at once. */
export function labelTokens(text: string): { words: LabelWord[]; tokens: LabelToken[]; doubts: readonly string[] } {
  const words = wordsOf(text).flatMap(cutUnspaced);
  const scanner = new Scanner(words);
  return { words, tokens: withPure(words, scanner.scan()), doubts: scanner.slips.doubts() };
}
