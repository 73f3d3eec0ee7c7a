/** How figures are told to people: counts in words, shares in per cent, weights in decibans. */
const WORDS = [
  "none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
  "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty",
] as const;

/** A count in words up to twenty, in figures beyond. Throws on anything but a whole number from zero. */
export function countInWords(n: number): string {
  if (!Number.isInteger(n) || n < 0) throw new Error(`Expected a whole number from 0 but received ${n}`);
  return WORDS[n] ?? String(n);
}
/** The first letter large, for the head of a sentence; the symbol "pH" stays as it is. */
export const sentenceCase = (s: string): string => /^pH\b/.test(s) ? s : s.charAt(0).toLocaleUpperCase("en") + s.slice(1);
/** The first letter small, to stand inside a sentence; "I" stays large. */
export const lowerFirst = (s: string): string => (/^I\b/.test(s) ? s : s.charAt(0).toLocaleLowerCase("en") + s.slice(1));

const NBSP = "\u00a0";
/** A whole per cent that never claims more than it knows: over 0 is never told as 0, under 1 never as 100. */
function wholePercent(p: number): { prefix: "" | "under " | "over "; figure: number } {
  if (p > 0 && p < 0.005) return { prefix: "under ", figure: 1 };
  if (p < 1 && p >= 0.995) return { prefix: "over ", figure: 99 };
  return { prefix: "", figure: Math.round(p * 100) };
}

/** One share, 0–1, e.g. "12 %", "under 1 %". */
export function percent(p: number): string {
  const { prefix, figure } = wholePercent(p);
  return `${prefix}${figure}${NBSP}%`;
}

/** The most that a chance is told as: what is known by evidence alone is never told as 100 %. */
const MOST_CHANCE = 0.999;
/** One chance, 0–1, e.g. "12 %", "over 99 %". */
export const chancePercent = (p: number): string => percent(Math.min(MOST_CHANCE, p));
/** A range of chances, 0–1, e.g. "96 to over 99 %". */
export const chanceRange = (low: number, high: number): string => percentRange(Math.min(MOST_CHANCE, low), Math.min(MOST_CHANCE, high));

/** A range of shares, 0–1, e.g. "12–47 %", "96 to over 99 %". One figure only where both ends round to the same. */
export function percentRange(low: number, high: number): string {
  const a = wholePercent(low);
  const b = wholePercent(high);
  if (a.figure === b.figure && a.prefix === b.prefix) return percent(low);
  if (a.prefix || b.prefix) return `${a.prefix}${a.figure} to ${b.prefix}${b.figure}${NBSP}%`;
  return `${a.figure}–${b.figure}${NBSP}%`;
}

/** A weight of evidence to a tenth of a deciban with its sign, e.g. "+14.2", "−0.5", "0". */
export function decibans(db: number): string {
  const tenth = Math.round(db * 10) / 10;
  if (tenth === 0) return "0";
  return `${tenth > 0 ? "+" : "−"}${Math.abs(tenth).toFixed(1)}`;
}

/**
 * The odds a sum of decibans comes to, in words a person can picture: 10·log10(odds), so 10 is ten to one.
 * Two figures at most; below zero the odds stand for the rival.
 */
export function oddsInWords(db: number): string {
  const odds = 10 ** (Math.abs(db) / 10);
  if (odds < 1.15) return "about even";
  const rounded = odds < 10 ? Math.round(odds * 2) / 2 : Number(odds.toPrecision(2));
  const figure = rounded.toLocaleString("en", { maximumFractionDigits: 1 });
  return db > 0 ? `about ${figure} to 1` : `about 1 to ${figure}`;
}
