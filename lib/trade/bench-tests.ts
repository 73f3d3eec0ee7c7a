import type { BenchTestRow } from "./bench-test-row";
import { SOLUBILITY_TESTS } from "./bench-tests-solubility";
import { SPOT_TESTS } from "./bench-tests-spot";
import { YARN_TESTS } from "./bench-tests-yarn";

export type { BenchTestRow, ChoiceReading, NameReading, NumberReading, Reading, ReagentId } from "./bench-test-row";

/** Every bench test, in the order a desk offers them: what harms least and tells most first. Minutes are elicited. */
export const BENCH_TESTS = { ...YARN_TESTS, ...SOLUBILITY_TESTS, ...SPOT_TESTS } as const satisfies Readonly<Record<string, BenchTestRow>>;
export type TestId = keyof typeof BENCH_TESTS;
