import type { Rule, Telling } from "./rule";
import { plainOf } from "./sentences";
import { shownBy, signsOf } from "./sureness-signs";
import { SURENESS_START, SURENESS_WEIGHTS } from "./sureness-weights";

/** What is said of a sentence that speaks too surely where it is not clear of what. */
const TOO_SURE: Pick<Rule, "id" | "what" | keyof Telling> = {
  id: "sureness", what: "speaks more surely than words and photos allow",
  why: "This sentence speaks more surely than is known.",
  advise: "Leave it out, or say how you know it and what is still open:",
  instead: "Words and photos alone cannot make us sure.",
};
/** The same with the words of the sentence that weigh most. */
export const tooSure = ({ words }: Pick<Sureness, "words">): typeof TOO_SURE =>
  ({ ...TOO_SURE, why: words.length > 0 ? `${TOO_SURE.why} What weighs most: ${words.map((w) => `“${w}”`).join(", ")}.` : TOO_SURE.why });

/** How surely a sentence speaks. `words`: those that weigh most towards too sure, the heaviest first. */
export interface Sureness { readonly decibans: number; /** In words. */ readonly length: number; readonly words: readonly string[] }

/** The sum of the signs of a sentence, in decibans: above 0 it is more like those that promise too much. */
export function surenessOf(sentence: string): Sureness {
  const plain = plainOf(sentence);
  const signs = signsOf(plain).flatMap((sign) => { const weight = SURENESS_WEIGHTS.get(sign); return weight === undefined ? [] : [{ sign, weight }]; });
  const shown = signs.filter(({ weight }) => weight > 0).sort((a, b) => b.weight - a.weight).flatMap(({ sign }) => shownBy(sign, plain) ?? []);
  return { length: (plain.match(/[a-z]+/gu) ?? []).length, decibans: signs.reduce((sum, { weight }) => sum + weight, SURENESS_START), words: [...new Set(shown)].slice(0, MOST_WORDS) };
}
/** So many words are shown. *elicited* */
const MOST_WORDS = 3;

/**
 * From more than this on a sentence that breaks no rule is shown all the same, and down to the second even one that breaks a
 * rule is not. Both chosen by leaving tables of sentences out in turn, for most caught at no more than 8 alarms in 100; what they do to
 * a table held out is told by sureness.test.ts.
 */
const TOO_SURE_DECIBANS = 2;
const CAREFUL_DECIBANS = -7;
/** So full of care that of the rules only those against harm, and against what claims by denying, are held against it. */
export const speaksWithCare = ({ decibans }: Pick<Sureness, "decibans">): boolean => decibans <= CAREFUL_DECIBANS;
/** Fewer words are a heading or a name. *elicited* */
const LEAST_WORDS = 6;
export const speaksTooSurely = ({ decibans, length }: Pick<Sureness, "decibans" | "length">): boolean => decibans > TOO_SURE_DECIBANS && length >= LEAST_WORDS;
