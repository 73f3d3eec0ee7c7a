import type { Range } from "../triage/assessment";
import { wordsForChance } from "../triage/words";

/** "a", "a and b", "a, b and c". Empty list: "". */
export function listed(items: readonly string[], joint: "and" | "or" = "and"): string {
  if (items.length < 2) return items[0] ?? "";
  return `${items.slice(0, -1).join(", ")} ${joint} ${items[items.length - 1]}`;
}

/** The strongest word a letter uses: it never says "certain". On the published scale it holds from 0.90 to 1. */
const STRONGEST_WORD = "very likely";
export const cappedWord = (words: string): string => (words.includes("certain") ? STRONGEST_WORD : words);

/** A probability from 0 to 1 in words on the published scale, for a letter. */
export const likelihood = (probability: number): string => cappedWord(wordsForChance({ probability, low: probability }));

/** Shares in words with the per cent they reach up to. Source: elicited, nearest common fraction. */
const SHARES: readonly (readonly [number, string])[] = [
  [2, "nothing"], [7, "a twentieth"], [14, "a tenth"], [22, "a fifth"], [29, "a quarter"], [36, "a third"], [45, "two fifths"],
  [55, "half"], [63, "three fifths"], [71, "two thirds"], [78, "three quarters"], [86, "four fifths"], [93, "nine tenths"], [100, "nearly all"],
];
const shareWord = (percent: number) => (SHARES.find(([upTo]) => percent <= upTo) ?? SHARES[SHARES.length - 1])![1];

/** Keeps a number and its unit on one line. */
const NBSP = "\u00a0";
/** Whole per cent, the sign after a space that does not break (ISO 80000-1, from memory). */
const percents = (low: number, high: number) => (low === high ? `${low}${NBSP}%` : `${low}–${high}${NBSP}%`);

/**
 * A range of an improvement in words and numbers, to stand before "of …":
 * "between a quarter and a half (25–50 %)". Per cent 0–100; ends are rounded to whole per cent.
 */
export function improvementPhrase({ low, high }: Range): string {
  const [from, to] = [Math.round(low), Math.round(high)];
  const [first, last] = [shareWord(from), shareWord(to)];
  const numbers = `(${percents(from, to)})`;
  if (to <= 5) return `next to nothing ${numbers}`;
  if (first === last) return `about ${last} ${numbers}`;
  return from <= 2 ? `anything from nothing to ${last} ${numbers}` : `between ${first} and ${last} ${numbers}`;
}

/** Years told by one number: months under a year, half years under five, whole years above. */
function yearsParts(years: number): { number: string; unit: "month" | "year" } {
  const months = Math.round(years * 12);
  if (months < 12) return { number: String(months), unit: "month" };
  if (years >= 5) return { number: String(Math.round(years)), unit: "year" };
  const halves = Math.round(years * 2);
  return { number: `${Math.floor(halves / 2)}${halves % 2 ? "½" : ""}`, unit: "year" };
}
const told = ({ number, unit }: { number: string; unit: string }) => `${number}${NBSP}${unit}${number === "1" ? "" : "s"}`;

/**
 * A range of years as people say it: "between 8 months and 3½ years". Ends within the same step: "about 2 years";
 * an upper end under a month: "less than a month".
 */
export function yearsPhrase({ low, high }: Range): string {
  if (Math.round(high * 12) < 1) return "less than a month";
  const [from, to] = [yearsParts(low), yearsParts(high)];
  if (from.number === to.number && from.unit === to.unit) return `about ${told(to)}`;
  if (from.number === "0") return `anything up to ${told(to)}`;
  return from.unit === to.unit ? `between ${from.number} and ${told(to)}` : `between ${told(from)} and ${told(to)}`;
}

/** From this many times the lower end on, a range is too wide to tell a client both ends of it. Elicited. */
const TOO_WIDE = 6;
/** Which end of a wide range still tells something: a lower end of some years, or an upper end of few. Years; elicited. */
const TELLING_YEARS = { low: 2, high: 10 } as const;

/** How much of a range of years is worth saying: both ends, the lower or the upper one alone, or nothing. */
export type LifeTold = "both" | "at-least" | "at-most" | "nothing";
export function lifeTold({ low, high }: Range): LifeTold {
  if (high < low * TOO_WIDE || high < 1) return "both";
  if (low >= TELLING_YEARS.low) return "at-least";
  return high <= TELLING_YEARS.high ? "at-most" : "nothing";
}

/** One end of a range of years: "8 years", "10 months". The lower end is rounded down and the upper one up: neither may say more than was worked out. */
export const yearsEnd = (years: number, end: "low" | "high"): string => {
  const round = end === "low" ? Math.floor : Math.ceil;
  return told(yearsParts(years >= 5 ? round(years) : years < 1 ? round(years * 12) / 12 : round(years * 2) / 2));
};

/** A range of money whose upper end is this many times its lower one tells nobody what a thing costs. Elicited. */
const PRICE_TOO_WIDE = 4;
export const isTellingPrice = ({ low, high }: Range): boolean => high < low * PRICE_TOO_WIDE;

/** Two significant figures: an estimate must not look like a price list. */
const roundEstimate = (amount: number) => (amount === 0 ? 0 : Number(amount.toPrecision(2)));

const formats = new Map<string, Intl.NumberFormat>();
function formatOf(currency: string): Intl.NumberFormat {
  const format = formats.get(currency) ?? new Intl.NumberFormat("en-GB", { style: "currency", currency, maximumFractionDigits: 0 });
  formats.set(currency, format);
  return format;
}

/** A range of money as an estimate: "£120 to £180". `currency` ISO 4217; ends rounded to two significant figures. */
export function moneyPhrase({ low, high }: Range, currency: string): string {
  const say = (amount: number) => formatOf(currency).format(roundEstimate(amount));
  return say(low) === say(high) ? say(high) : `${say(low)} to ${say(high)}`;
}

/** A chance from 0 to 1 as "about 22 in 100". */
export const chancePhrase = (chance: number): string => `about ${Math.round(chance * 100)} in 100`;
