import * as z from "zod/mini";
import { BENCH_TESTS, type BenchTestRow, type Reading, type TestId } from "../trade/bench-tests";
import { WITHDRAWAL_CHARS } from "./reason-limits";
import { SAMPLE_IDS, type SampleId } from "./samples";

/** What may be recorded of a bench test, made from its row: shared by the browser, the server and the command line. */
export const BENCH_LIMITS = { nameChars: 60 } as const;

export type Readings = Record<string, string | number>;
export interface BenchTestEntry { sample: SampleId; readings: Readings }

export const TEST_IDS = Object.keys(BENCH_TESTS) as [TestId, ...TestId[]];
export const isTestId = (text: string): text is TestId => Object.hasOwn(BENCH_TESTS, text);
/** A test's row, as wide as every row is. */
export const testRow = (test: TestId): BenchTestRow => BENCH_TESTS[test];

export const sampleSchema = z.enum(SAMPLE_IDS, "Say what the sample was taken from.");
export const reasonSchema = z.string("Say why.").check(
  z.trim(), z.minLength(1, "Say why."), z.maxLength(WITHDRAWAL_CHARS, `At most ${WITHDRAWAL_CHARS} characters.`));

/** A reading that says where or what was tested; without it the others mean nothing. */
export const isNeeded = (id: string, reading: Reading): boolean => reading.kind === "name" || id === "place";

const NONE_READ = "Record at least one reading.";

function readingSchema(reading: Reading): z.ZodMiniType<string | number> {
  if (reading.kind === "choice") return z.enum(Object.keys(reading.answers) as [string, ...string[]], "Choose one of the answers.");
  if (reading.kind === "name")
    return z.string("Write which.").check(z.trim(), z.minLength(1, "Write which."), z.maxLength(BENCH_LIMITS.nameChars, `At most ${BENCH_LIMITS.nameChars} characters.`));
  const { least, most, unit } = reading;
  const bounds = `It lies between ${least} and ${most}${unit ? ` ${unit}` : ""}.`;
  return z.number("Write a number.").check(z.minimum(least, bounds), z.maximum(most, bounds));
}

/** The readings of one test: each may be left out, except what they hang on; at least one says something. */
export function readingsSchema(test: TestId) {
  const { readings } = testRow(test);
  const shape = Object.fromEntries(Object.entries(readings).map(([id, r]) => [id, isNeeded(id, r) ? readingSchema(r) : z.optional(readingSchema(r))]));
  const says = (given: Record<string, unknown>) => Object.entries(readings).some(([id, r]) => !isNeeded(id, r) && given[id] !== undefined);
  return z.strictObject(shape).check(z.refine(says, NONE_READ));
}

/** A test as it is recorded: what the sample was taken from, and the readings. */
export const benchTestSchema = (test: TestId) => z.strictObject({ sample: sampleSchema, readings: readingsSchema(test) });

/** The readings as they are kept: nothing stands for what was not read. */
export const readingsOf = (parsed: Readonly<Record<string, string | number | undefined>>): Readings =>
  Object.fromEntries(Object.entries(parsed).filter((e): e is [string, string | number] => e[1] !== undefined));
