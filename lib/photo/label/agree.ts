import type { LabelLines, LabelWord, Seen, SeenLine, SeenWord } from "./seen";

/**
 * Several readings of one label made into one. Readers trained on different languages slip on different letters, so where
 * they differ the choice is between few words.
 */

/** Below it a word is a guess. Elicited on drawn labels. */
const GUESS = 0.6;
/** So many ways to put the words together are looked at. */
const MOST_WAYS = 96;

interface Choice { readonly text: string; readonly votes: number; readonly confidence: number }
/** The words that stand at one place, the likeliest first. */
type Place = readonly Choice[];

/** The ways to put the words of these readings together, the likeliest first; the first reading says how many words a line has. */
export function waysToRead(readings: readonly Seen[]): LabelLines[] {
  const [first = [], ...others] = readings;
  const lines = first.map((line) => {
    const same = [line, ...others.flatMap((o) => alongside(line, o))];
    return line.map((_, at) => choicesOf(same.map((l) => l[at] as SeenWord)));
  });
  return combinations(lines);
}

/** The line of another reading that stands where this one does and has as many words. */
function alongside(line: SeenLine, other: Seen): SeenLine[] {
  const [top, bottom] = [Math.min(...line.map((w) => w.top)), Math.max(...line.map((w) => w.bottom))];
  return other.filter((o) => {
    const middle = o.reduce((sum, w) => sum + w.top + w.bottom, 0) / (2 * o.length);
    return o.length === line.length && middle > top && middle < bottom;
  }).slice(0, 1);
}

function choicesOf(words: readonly SeenWord[]): Place {
  const by = new Map<string, Choice>();
  for (const { text, confidence } of words) {
    const known = by.get(text);
    by.set(text, { text, votes: (known?.votes ?? 0) + 1, confidence: Math.max(known?.confidence ?? 0, confidence) });
  }
  const read = [...by.values()].sort((a, b) => b.votes * b.confidence - a.votes * a.confidence);
  return [...read, ...strokedNoughts(read)];
}

/** A nought with a stroke through it is read as 6, 8 or 9 by all readers alike: last of all, figures are taken with noughts for those. */
function strokedNoughts(read: readonly Choice[]): Choice[] {
  const texts = read.flatMap(({ text }) => (/^\d{2,3} ?%?$/u.test(text) ? [text.replace(/(?<=\d)[689]/gu, "0"), text.replace(/(?<=\d)[689](?=\d)/u, "0"), text.replace(/(?<=\d)[689](?!\d)/u, "0")] : []));
  return [...new Set(texts)].filter((text) => read.every((c) => c.text !== text)).map((text) => ({ text, votes: 0, confidence: 0 }));
}

/** The likeliest word everywhere, then with ever more places read otherwise, as far as MOST_WAYS reaches. */
function combinations(lines: readonly (readonly Place[])[]): LabelLines[] {
  const places = lines.flat();
  let ways: number[][] = [places.map(() => 0)];
  places.forEach((choices, at) => {
    const more = choices.slice(1).flatMap((_, n) => ways.map((way) => way.with(at, n + 1)));
    ways = [...ways, ...more].slice(0, MOST_WAYS);
  });
  return ways.map((way) => {
    let at = 0;
    return lines.map((line) => line.map((choices) => wordOf(choices, way[at++] as number)));
  });
}

const wordOf = (choices: Place, n: number): LabelWord => {
  const { text, confidence } = choices[n] as Choice;
  const doubted = choices.some((c, at) => at !== n && c.votes > 0) || confidence < GUESS;
  return { text, confidence, unsure: doubted };
};
