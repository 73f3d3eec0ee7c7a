import { improvementFigures } from "../reply/phrases";
import type { Range } from "../triage/assessment";
import { DoubtLine } from "./doubt-line";

/** How much of the trouble comes back, as a length with its doubt. */
export function ComesBackLine({ improvement: r }: { improvement: Range }) {
  const middle = improvementFigures({ low: r.median, high: r.median });
  return <DoubtLine low={r.low / 100} mid={r.median / 100} high={r.high / 100} label={`Comes back: ${improvementFigures(r)}, middle ${middle}`} />;
}
