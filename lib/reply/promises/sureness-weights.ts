/**
 * How much each mark of sureness-marks.ts speaks for a sentence that promises too much, in decibans. Computed: a logistic
 * regression with a ridge over the tables of sentences in tests/unit/reply/promises, which fits it again in its tests.
 */
export const SURENESS_START = -4;
export const SURENESS_WEIGHTS: Readonly<Record<string, number>> = {
  MUST: 4, SURELY: 3, WHOLLY: 3, IDIOM: 5, OATH: 2, PERFECT: 1, FORMER: 1, RESTORE: 3, COMES: 1, TROUBLE: 2, RUGPART: 1, AGENT: 1, PRODUCT: 3,
  HEAT: 0, HARMACT: 3, PARTY: 1, MISDEED: 2, LEGAL: 0, DECIDES: 3, BABY: 1, FIBRE: 2, CAUSE: 0, ORIGIN: 2, NUMBER: 0, PROCESS: 1, SUCCESS: -1,
  FULL: 3, please: -5, would: -5, should: 0, may: -1, can: -1, "we-will": -2, "you-will": 1, "it-will": 1, if: -3, test: -2, photo: -2, asks: 0,
  sorry: -2, thanks: -2, i: 0, we: -2, you: 0, your: 2, our: 2, is: 2, was: 0, has: 1, not: 0, no: 3, never: 2, cannot: 0, only: -1, just: 1, all: 1,
  some: 0, because: 0, so: 0, but: -2, risk: 2, money: -1, percent: 0, often: -2, than: 0, before: -1, again: 0, out: 0, good: -1, bad: 1, know: -1,
  need: 3, quoted: -2, asked: 0, whether: -4, like: -1, "it-is": 0, loud: 0, forbids: -3, "safe-act": -4, "you-will-hear": -1, "nobody-can": 0,
  "will-not": 0, "only-after": -3, "when-it": 0, "made-of": -1, "a-warning": -4, "of-any": -5, practice: -1, "i-did": -1, "in-general": -1,
  "bad-news": -2, "of-the-house": -3, "is-negated": 1, "is-hedged": -8, "is-undecided": -4, "is-reported": -3, "is-ranged": -3, "is-ours": -2,
  "is-warned": -2, "nothing-holds-it-back": 5,
};
