/**
 * When a paragraph is used: a small readable record over named facts, so that a workshop can change it in a form.
 * Every line of it must hold. No code stands in it.
 */

/** Facts that are words. Each has none, one or several values at a time. The text is what a form shows. */
export const WORD_FACTS = {
  leading: "The most probable fibre",
  rival: "The fibre that comes next",
  certainty: "How sure we are of the fibre",
  label: "What the label says of that fibre",
  strongest: "The strongest evidence there is",
  soldAs: "What the seller called it",
  cameFrom: "Where the rug came from",
  reason: "Why the client writes",
  wet: "Wet now",
  who: "Who writes",
  advice: "What we would do",
  inspection: "What an inspection of ours found",
  urgency: "What waiting costs",
  mechanisms: "What may have happened",
  handled: "What it is handled as: that, or a change that was told",
  top: "The most probable of what happened",
  treated: "What somebody treats before any work on it",
  offered: "Cleaning that may be done",
  ruledOut: "Cleaning that is ruled out",
  incidents: "What the client says happened",
  changes: "How the client says it changed",
  matters: "What matters to the client",
  age: "Age of the rug",
  life: "What the range of the years left tells",
  has: "What there is to say",
  rugs: "How many rugs the letter is about",
} as const;
export type WordFact = keyof typeof WORD_FACTS;

/** Facts that are numbers: chances from 0 to 1, improvement in per cent. Absent where the assessment has none. */
export const NUMBER_FACTS = {
  waterShy: "Chance that the pile holds viscose or a fibre like it",
  beyondRepair: "Chance that it is beyond economic repair",
  worse: "Chance that cleaning makes it worse",
  improvementHigh: "Upper end of the improvement",
  improvementWidth: "Width of the improvement’s range, upper end less lower end",
} as const;
export type NumberFact = keyof typeof NUMBER_FACTS;

export interface Facts {
  words: Record<WordFact, readonly string[]>;
  numbers: Partial<Record<NumberFact, number>>;
}

export interface Condition {
  /** One of these values must be there. */
  readonly is?: Partial<Record<WordFact, readonly string[]>>;
  /** None of these values may be there. */
  readonly not?: Partial<Record<WordFact, readonly string[]>>;
  /** The number is known and at least this. */
  readonly atLeast?: Partial<Record<NumberFact, number>>;
  /** The number is known and below this. */
  readonly below?: Partial<Record<NumberFact, number>>;
}

const words = (rule: Condition["is"]) => Object.entries(rule ?? {}) as [WordFact, readonly string[]][];
const numbers = (rule: Condition["atLeast"]) => Object.entries(rule ?? {}) as [NumberFact, number][];

/** Whether the facts meet the condition. An empty condition always holds; a number that is not known meets neither bound. */
export function holds(condition: Condition, facts: Facts): boolean {
  const some = (fact: WordFact, values: readonly string[]) => facts.words[fact].some((v) => values.includes(v));
  return words(condition.is).every(([fact, values]) => some(fact, values))
    && words(condition.not).every(([fact, values]) => !some(fact, values))
    && numbers(condition.atLeast).every(([fact, bound]) => (facts.numbers[fact] ?? -Infinity) >= bound)
    && numbers(condition.below).every(([fact, bound]) => (facts.numbers[fact] ?? Infinity) < bound);
}
