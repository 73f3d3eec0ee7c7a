import type { LabelMeaning } from "../trade/label-names";
import type { Slip } from "./label-dictionary";
import { percentRange, type LabelWord } from "./label-text";

/** So many corrections are spelled out; the rest are counted. Elicited. */
const MOST_SPELLED = 8;

/** Keeps every correction made in reading a label, each as a sentence, so that none is silent. */
export class LabelSlips {
  private readonly said = new Set<string>();
  constructor(private readonly words: readonly LabelWord[]) {}

  private printed(at: number, end: number): string {
    return this.words.slice(at, end).map((w) => w.printed).join(" ");
  }
  name(at: number, count: number, slip: Slip): void {
    const why = slip.kind === "accents" ? "its accents are missing or differ" : "letters or figures that look alike were exchanged";
    this.said.add(`“${this.printed(at, at + count)}” was read as “${slip.meant}”: ${why}.`);
  }
  /** A word with several meanings; the first is the one taken. */
  meanings(at: number, count: number, [taken, ...others]: readonly LabelMeaning[]): void {
    if (taken !== undefined && others.length > 0) this.said.add(`“${this.printed(at, at + count)}” may be ${[taken, ...others].join(" or ")}; it was taken for ${taken}.`);
  }
  percent(at: number, value: number | null, how: { bare: boolean; rough: boolean }): void {
    const number = this.printed(at, at + 2).replace("%", "").trim();
    if (value === null) this.said.add(`A share is given as a range (${percentRange(number) ?? number} %), so no figure is taken.`);
    else if (how.bare) this.said.add("The figures stand without a per cent sign; they were read as per cent because they add up to 100.");
    else if (/\p{L}/u.test(number)) this.said.add(`“${number}” was read as ${value}: letters stand where figures belong.`);
    if (how.rough) this.said.add(`A share is given only roughly (“${this.printed(at - 1, at)} ${number} %”).`);
  }
  signAlone(): void {
    this.said.add("A per cent sign stands without a figure from 0 to 100.");
  }
  /** Words from `at` to `end` that were printed as one with the word before them. */
  spaces(at: number, end: number): void {
    for (let i = Math.max(1, at); i < end; i += 1) {
      const [before, word] = [this.words[i - 1], this.words[i]];
      if (before && word?.unspaced) this.said.add(`“${before.printed}${word.printed}” was read as “${before.printed} ${word.printed}”: a space is missing.`);
    }
  }
  glued(printed: string, parts: readonly string[]): void {
    this.said.add(`“${printed}” was read as “${parts.join(" ")}”: a space is missing.`);
  }
  clash(code: string, meanings: readonly LabelMeaning[]): void {
    const named = meanings.map((m) => (m === "rare" ? "a rare fibre" : m));
    this.said.add(`“${code}” is ${named.join(" in one list of codes and ")} in another, so it was not decoded.`);
  }
  doubts(): readonly string[] {
    const all = [...this.said];
    return all.length <= MOST_SPELLED ? all : [...all.slice(0, MOST_SPELLED), `${all.length - MOST_SPELLED} more corrections of this kind were made.`];
  }
}
