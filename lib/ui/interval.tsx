import { DoubtLine } from "./doubt-line";
import { chancePercent, chanceRange } from "./figures";

/**
 * A chance with its doubt, all 0–1 of the line. `of` says what is measured, e.g. "Viscose", and `words` what it comes to,
 * e.g. "very likely".
 */
export function Interval({ low, mid, high, of, words }: { low: number; mid: number; high: number; of: string; words?: string | undefined }) {
  return <DoubtLine low={low} mid={mid} high={high} label={`${of}: ${words ? `${words}, ` : ""}between ${chanceRange(low, high)}, middle ${chancePercent(mid)}`} />;
}
