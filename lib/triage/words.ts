import { CHANCE_WORDS, type ChanceWord } from "../trade/words-for-chance";

const holds = (word: ChanceWord, share: number) => share * 100 >= word.from && share * 100 <= word.to;
const byWidth = (a: ChanceWord, b: ChanceWord) => a.to - a.from - (b.to - b.from);

/**
 * The word for a probability with its interval (all 0–1). The probability decides which words apply; where several do
 * ("very likely" lies within "likely"), the narrowest that contains the interval's lower end, so that a shaky 95 % is
 * "likely" only. Where none contains it, the widest that applies.
 */
export function wordsForChance(chance: { probability: number; low: number }): string {
  const apply = CHANCE_WORDS.filter((w) => holds(w, chance.probability)).sort(byWidth);
  const word = apply.find((w) => holds(w, chance.low)) ?? apply[apply.length - 1];
  if (!word) throw new RangeError(`Expected a probability from 0 to 1 but received ${chance.probability}.`);
  return word.words;
}
