import { BENCH_RESPONSES, LEADING_READING } from "../trade/bench-responses";
import type { TestId } from "../trade/bench-tests";
import { NAMED, type NamedVector } from "./classes";
import { WHOLE_PILE } from "./distinct-findings";
import type { Finding } from "./finding";
import { likelihoodByClass, stateRows } from "./yarn-states";

/**
 * What a test would be recorded as, answer by answer of its leading reading, with P(answer | class of the pile): over the
 * answers a class's chances sum to 1. None for tests that speak of no fibre.
 */
export function possibleTestFindings(test: TestId): { finding: Finding; column: NamedVector }[] {
  const table = BENCH_RESPONSES.find((t) => t.test === test && t.reading === LEADING_READING[test]);
  if (!table) return [];
  const nothing = NAMED.map(() => 1);
  return table.answers.map((answer, a) => ({
    finding: { what: `test:${test}`, value: { [table.reading]: answer }, strength: "bench", from: "bench:possible", of: WHOLE_PILE },
    column: likelihoodByClass(stateRows("whole"), nothing, NAMED.map((s) => table.rows[s][a] as number)),
  }));
}
