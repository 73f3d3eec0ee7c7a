/** Numbers in words, as figures. */
const IN_WORDS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, twelve: 12, fifteen: 15, twenty: 20, thirty: 30, forty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90 };
/** Plain words with each number in words before a unit as a figure, also the first of two. `unit`: an expression. */
export const withFigures = (plain: string, unit: string): string =>
  plain.replace(new RegExp(`\\b[a-z]+(?= (?:(?:and|to|or) (?:[a-z]+|[0-9]+) )?${unit})`, "gu"), (word) => String(IN_WORDS[word] ?? word));

const TENS = "twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety";
/** Every number in words as a figure, "twenty-five" and "a hundred" too. */
const allInFigures = (plain: string): string =>
  plain.replace(new RegExp(`\\b(${TENS})[- ](one|two|three|four|five|six|seven|eight|nine)\\b`, "gu"), (_, tens: string, ones: string) => String((IN_WORDS[tens] ?? 0) + (IN_WORDS[ones] ?? 0)))
    .replace(/\b(?:an? |one )?hundred\b/gu, "100").replace(/\bonce\b/gu, "1").replace(/\btwice\b/gu, "2").replace(/\b[a-z]+\b/gu, (word) => String(IN_WORDS[word] ?? word));
const IN_MANY = /\b([0-9]+)(?: [a-z]+){0,2} (?:in|out of) (?:every |any )?([0-9]+)\b/gu;
const OF_MANY = /\bof (?:every |any )?([0-9]+)(?: [a-z]+){0,3},? (?:[a-z]+ )?([0-9]+)(?: (?:or|to) ([0-9]+))?\b/gu;
const PER_CENT = /\b([0-9]+(?:[.,][0-9]+)?) ?(?:%|per ?cent)/gu;
/** Shares of one that are said of many: "one case in a hundred", "of fifty rugs, two or three", "1 %". */
export function ratesIn(plain: string): number[] {
  const flat = allInFigures(plain);
  const many = [...flat.matchAll(IN_MANY)].map(([, some, of]) => Number(some) / Number(of));
  const of = [...flat.matchAll(OF_MANY)].map(([, all, some, more = some]) => Number(more) / Number(all));
  return [...many, ...of, ...[...flat.matchAll(PER_CENT)].map((m) => Number((m[1] as string).replace(",", ".")) / 100)].filter((rate) => rate <= 1);
}

/** The figures that stand before a unit, both of a range. `unit`: an expression. */
export const figuresIn = (plain: string, unit: string): number[] =>
  [...plain.matchAll(new RegExp(`([0-9]+(?:[.,][0-9]+)?)(½)?(?= ?(?:(?:–|-|to|and) ?[0-9]+(?:[.,][0-9]+)?½? ?)?(?:${unit}))`, "gu"))].map((m) => Number((m[1] as string).replace(",", ".")) + (m[2] ? 0.5 : 0));

/** Only the upper end is told. */
export const AT_MOST = /\b(?:up to|at (?:the )?most|(?:no|not) more than|as much as|no longer than)\b/u;

/** The lower end of a stated range may stand so far into the range of the assessment. *elicited* */
const MOST_NARROWED = 0.25;
export const outside = (said: readonly number[], low: number, high: number): boolean => said.length > 0 && (Math.max(...said) > high || Math.min(...said) > Math.max(low, 0) + (high - low) * MOST_NARROWED);
