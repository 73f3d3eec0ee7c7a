import type { Condition } from "@/lib/reply/condition";

/** A line of the form: a fact with values, or a number with a bound that is typed in per cent. */
export interface Line { fact: string; how: "is" | "not" | "atLeast" | "below"; values: readonly string[]; percent: string }

/** What a hundred per cent of each number is. */
type Largest = Readonly<Record<string, number>>;

/** The lines a condition begins with. */
export function linesOf(json: string, largest: Largest): Line[] {
  const { is = {}, not = {}, atLeast = {}, below = {} } = JSON.parse(json) as Condition;
  const words = (how: "is" | "not", rule: Condition["is"]) => Object.entries(rule ?? {}).map(([fact, values]) => ({ fact, how, values, percent: "" }));
  const numbers = (how: "atLeast" | "below", rule: Condition["atLeast"]) =>
    Object.entries(rule ?? {}).map(([fact, bound]) => ({ fact, how, values: [], percent: String(Math.round((bound / (largest[fact] ?? 1)) * 1000) / 10) }));
  return [...words("is", is), ...words("not", not), ...numbers("atLeast", atLeast), ...numbers("below", below)];
}

/** The condition that the lines say. What is no number is kept as one that the server refuses. */
export function conditionOf(lines: readonly Line[], largest: Largest): object {
  const of = (how: Line["how"]) => lines.filter((l) => l.how === how);
  const words = (how: "is" | "not") => Object.fromEntries(of(how).map(({ fact }) => [fact, [...new Set(of(how).filter((l) => l.fact === fact).flatMap((l) => l.values))]]));
  const numbers = (how: "atLeast" | "below") => Object.fromEntries(of(how).map(({ fact, percent }) => [fact, bound(percent, largest[fact] ?? 1)]));
  const all = { is: words("is"), not: words("not"), atLeast: numbers("atLeast"), below: numbers("below") };
  return Object.fromEntries(Object.entries(all).filter(([, rule]) => Object.keys(rule).length > 0));
}

const bound = (percent: string, largest: number): number => {
  const typed = percent.trim() === "" ? Number.NaN : Number(percent.replace(",", "."));
  return Number.isFinite(typed) ? Math.round(typed * largest * 10) / 1000 : -1;
};
