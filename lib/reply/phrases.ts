import type { Range } from "../triage/assessment";
import { figuresOf } from "../words/locales";
import { estimate, roughly } from "../words/measures";
import { wordsIn, type MessageKey, type Words } from "../words/words";
import { wordsForChance } from "../triage/words";
import { HARDLY_WORTH, TELLS_NOTHING } from "./paragraphs/troubles";

const ENGLISH = wordsIn("en-GB");
const JOINTS = { and: "conjunction", or: "disjunction" } as const;

/** "a", "a and b", "a, b and c"; as the locale joins them. Empty list: "". */
export const listed = (items: readonly string[], joint: "and" | "or" = "and", words: Words = ENGLISH): string =>
  new Intl.ListFormat(figuresOf(words.locale), { type: JOINTS[joint] }).format(items);

/** The strongest word a letter uses: it never says "certain". On the published scale it holds from 0.90 to 1. */
const STRONGEST_WORD = "very likely";
export const cappedWord = (words: string): string => (words.includes("certain") ? STRONGEST_WORD : words);

const CHANCES: Readonly<Record<string, Extract<MessageKey, `chance-word.${string}`>>> = {
  "virtually certain": "chance-word.virtually-certain", "very likely": "chance-word.very-likely", likely: "chance-word.likely",
  "about as likely as not": "chance-word.about-as-likely", unlikely: "chance-word.unlikely", "very unlikely": "chance-word.very-unlikely",
};
/** A word of the published scale, as an assessment holds it, in the words of a letter. */
export function chanceWord(word: string, { say }: Words = ENGLISH): string {
  const key = CHANCES[word];
  return key === undefined ? word : say(key);
}

/** A probability from 0 to 1 in words on the published scale, for a letter. */
export const likelihood = (probability: number, words: Words = ENGLISH): string => chanceWord(cappedWord(wordsForChance({ probability, low: probability })), words);

/** How likely it is not worth its cost, at the desk and in letters: where two bands of the scale meet, the word of the upper one, for from there on the answer begins with it. */
export const beyondLikely = (chance: number, words: Words = ENGLISH): string => (chance === HARDLY_WORTH.beyondRepair ? chanceWord("likely", words) : likelihood(chance, words));

/**
 * Shares in words, from the whole per cent on at which each may be said, in rising order: never one that is more than its figure, so that no
 * word promises more than was worked out, and none of a tenth or more is ten points short of it. Elicited: which fractions people know.
 */
const SHARES = [
  [0, "nothing"], [3, "very-little"], [5, "twentieth"], [10, "tenth"], [17, "sixth"], [20, "fifth"], [25, "quarter"], [30, "three-tenths"], [33, "third"], [40, "two-fifths"],
  [50, "half"], [60, "three-fifths"], [67, "two-thirds"], [70, "seven-tenths"], [75, "three-quarters"], [80, "four-fifths"], [90, "nine-tenths"], [97, "nearly-all"],
] as const;
const shareWord = (percent: number, { say }: Words) => say(`share.${SHARES.findLast(([from]) => from <= percent)?.[1] ?? "nothing"}`);

/** Keeps a number and its unit on one line. */
const NBSP = "\u00a0";
/** Whole per cent, the sign after a space that does not break (ISO 80000-1, from memory). */
export const percent = (n: number | string): string => `${n}${NBSP}%`;
const percents = (low: number, high: number) => percent(low === high ? low : `${low}–${high}`);
/** An improvement in figures, the same in a letter, in the queue and beside the evidence: "0–32 %". Per cent 0–100; ends are rounded to whole per cent. */
export const improvementFigures = ({ low, high }: Pick<Range, "low" | "high">): string => percents(Math.round(low), Math.round(high));

/** Whether a range of improvement tells anything: from next to nothing to nearly all says only that it is not known. */
export const improvementTells = ({ low, high }: Pick<Range, "low" | "high">): boolean => high - low < TELLS_NOTHING.improvementWidth;

/**
 * A range of an improvement in words and numbers, to stand before "of …":
 * "between a quarter and a half (25–50 %)". Per cent 0–100; ends are rounded to whole per cent.
 */
export function improvementPhrase({ low, high }: Range, words: Words = ENGLISH): string {
  const { say } = words;
  const [from, to] = [Math.round(low), Math.round(high)];
  const [first, last] = [shareWord(from, words), shareWord(to, words)];
  const numbers = `(${improvementFigures({ low, high })})`;
  if (to <= 5) return say("improvement.none", { numbers });
  if (first === last) return say("improvement.about", { share: last, numbers });
  return from <= 2 ? say("improvement.up-to", { share: last, numbers }) : say("improvement.between", { low: first, high: last, numbers });
}

/** Years told by one number, rounded down: months under a year, half years under five, whole years above. */
function yearsParts(years: number): { number: string; unit: "month" | "year" } {
  if (years < 1) return { number: String(Math.floor(years * 12)), unit: "month" };
  if (years >= 5) return { number: String(Math.floor(years)), unit: "year" };
  const halves = Math.floor(years * 2);
  return { number: `${Math.floor(halves / 2)}${halves % 2 ? "½" : ""}`, unit: "year" };
}
const told = ({ number, unit }: ReturnType<typeof yearsParts>, { say }: Words) => say(`years.${unit}s`, { figure: number, n: number === "1" ? 1 : 2 });

/** One end of a range of years: "8 years", "10 months". Either end is rounded down: neither may promise more than was worked out. */
export const yearsEnd = (years: number, words: Words = ENGLISH): string => told(yearsParts(years), words);

/**
 * A range of years as people say it: "between 8 months and 3½ years", its ends as `yearsEnd` has them. Ends within the same
 * step: "about 2 years"; an upper end under a month: "less than a month".
 */
export function yearsPhrase({ low, high }: Range, words: Words = ENGLISH): string {
  const { say } = words;
  if (high * 12 < 1) return say("years.under-month");
  const [from, to] = [yearsParts(low), yearsParts(high)];
  if (from.number === to.number && from.unit === to.unit) return say("years.about", { time: told(to, words) });
  if (from.number === "0") return say("years.up-to", { time: told(to, words) });
  return say("years.between", { low: from.unit === to.unit ? from.number : told(from, words), high: told(to, words) });
}

/** From this many years on the upper end of a life is told as decades: a figure would sound as if it were known. Elicited. */
export const DECADES = 40;
/** A range of years left as a letter says it: as `yearsPhrase`, but "between 8 years and some decades" where its upper end is that far off. */
export function lifePhrase(range: Range, words: Words = ENGLISH): string {
  if (range.high < DECADES || range.low * 12 < 1 || range.low >= DECADES) return yearsPhrase(range, words);
  return words.say("years.between", { low: yearsEnd(range.low, words), high: words.say("years.decades") });
}

/** From this many times the lower end on, a range of years is wide. Elicited. */
const TOO_WIDE = 6;
/** Which end of a wide range still tells something: a lower end of some years, or an upper end of few. Years; elicited. */
const TELLING_YEARS = { low: 2, high: 10 } as const;

/** What a range of years tells: a narrow one both its ends; a wide one most by its lower end, by its upper one, or nothing. */
export type LifeTold = "both" | "at-least" | "at-most" | "nothing";
export function lifeTold({ low, high }: Range): LifeTold {
  if (high < low * TOO_WIDE || high < 1) return "both";
  if (low >= TELLING_YEARS.low) return "at-least";
  return high <= TELLING_YEARS.high ? "at-most" : "nothing";
}

/** A life told with a lower end under the one, or an upper end of no more than the other, may be nearly over. Years; elicited. */
const SHORT_LIFE = { low: 1, high: 5 } as const;
/** Whether a range of years says that the rug may be nearly worn out. */
export const isLifeShort = ({ low, high }: Pick<Range, "low" | "high">): boolean => low < SHORT_LIFE.low || high <= SHORT_LIFE.high;
/** Whether it says so, and as well that it may serve for years: a wide range from months to more years than few. */
export const isLifeMonthsOrYears = (range: Range): boolean => lifeTold(range) === "at-most" && range.low < SHORT_LIFE.low && range.high > SHORT_LIFE.high;

/** How many weeks work usually takes: "3 to 6 weeks", "about 3 weeks". Whole weeks from 1. */
export const weeksPhrase = ({ low, high }: { low: number; high: number }, { say }: Words = ENGLISH): string =>
  (low === high ? say("weeks.about", { n: high }) : say("weeks.between", { low, high }));

/** A range of money whose upper end is this many times its lower one tells nobody what a thing costs. Elicited. */
const PRICE_TOO_WIDE = 4;
export const isTellingPrice = ({ low, high }: Range): boolean => high < low * PRICE_TOO_WIDE;

/** A range of money as an estimate: "£120 to £180". `currency` ISO 4217; ends rounded to two significant figures. */
export function moneyPhrase({ low, high }: Range, currency: string, words: Words = ENGLISH): string {
  const say = (amount: number) => estimate(amount, currency, words.locale);
  return say(low) === say(high) ? say(high) : words.say("money.range", { low: say(low), high: say(high) });
}

/** The same where nothing stands before it that says it is an estimate: "£120 to £180", "about £130". */
export function moneyEstimate(range: Range, currency: string, words: Words = ENGLISH): string {
  const said = moneyPhrase(range, currency, words);
  return said === estimate(range.high, currency, words.locale) ? words.say("money.about", { amount: said }) : said;
}

/** A range of money that is known only roughly, rounded outward: "£90 to £200". `currency` ISO 4217. */
export function roughMoneyPhrase({ low, high }: Range, currency: string, words: Words = ENGLISH): string {
  const [from, to] = [roughly(low, "low", currency, words.locale), roughly(high, "high", currency, words.locale)];
  return from === to ? to : words.say("money.range", { low: from, high: to });
}

/** What our own work costs is known better than what a market asks: how each amount of an assessment is written, at the desk, in letters and in documents. */
export const AMOUNT_PHRASES = { clean: moneyPhrase, cutDown: moneyPhrase, replace: roughMoneyPhrase, valueToday: roughMoneyPhrase } as const;

/** A chance of harm is told by so much to either side of it, as wide as the ranges from whose middles it is worked out (`WORSE` in lib/trade/improvement.ts), an end of ten in 100 or more to the nearest five. Elicited. */
const HARM_BAND = { share: 1 / 3, step: 5, fineBelow: 10 } as const;
/** A chance of harm, 0–1, as the range it is told by: 0.22 is 0.15 to 0.3. Ends from 0.01 to 0.99. */
export function harmRange(chance: number): { low: number; high: number } {
  const end = (side: number) => {
    const at = chance * 100 * (1 + side * HARM_BAND.share);
    const step = at < HARM_BAND.fineBelow ? 1 : HARM_BAND.step;
    return Math.min(99, Math.max(1, Math.round(at / step) * step)) / 100;
  };
  return { low: end(-1), high: end(1) };
}
/** The same in figures, for the desk: "15–30 %". */
export function harmFigures(chance: number): string {
  const { low, high } = harmRange(chance);
  return improvementFigures({ low: low * 100, high: high * 100 });
}
