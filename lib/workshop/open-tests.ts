import { BENCH_TESTS, type BenchTestRow, type TestId } from "../trade/bench-tests";
import type { WorkshopSettings } from "./settings-schema";

type Reagents = WorkshopSettings["reagents"];

/** The bench tests open to a workshop: those that need no reagent, and those whose reagent the owner has switched on. */
export const openTests = (reagents: Reagents): TestId[] =>
  (Object.entries(BENCH_TESTS) as [TestId, BenchTestRow][]).filter(([, { reagent }]) => reagent === null || reagents[reagent] !== undefined).map(([id]) => id);

/** The readings of a test that take a reagent which is switched off. */
export function closedReadings(test: TestId, reagents: Reagents): string[] {
  const { readingReagents = {} }: BenchTestRow = BENCH_TESTS[test];
  return Object.entries(readingReagents).filter(([, reagent]) => reagents[reagent] === undefined).map(([reading]) => reading);
}
