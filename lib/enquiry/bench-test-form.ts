import * as z from "zod/mini";
import type { Reading, TestId } from "../trade/bench-tests";
import { parseDecimal } from "./amounts";
import { readingsOf, readingsSchema, sampleSchema, testRow, type BenchTestEntry } from "./bench-test-schema";
import type { FormValues } from "./step-schemas";

/** The name of a reading's field, and of the answer that leaves it out. */
export const readingField = (id: string): string => `reading-${id}`;
export const NOT_READ = "not-read";

/** What a field holds as the schema of the readings takes it; undefined where nothing was read. */
function typed(reading: Reading, given: unknown): string | number | undefined {
  const text = typeof given === "string" ? given.trim() : "";
  if (text === "" || text === NOT_READ) return undefined;
  return reading.kind === "number" ? (parseDecimal(text) ?? Number.NaN) : text;
}

/** The form of one test: from what stands in its fields to what is recorded, every error beside its field. */
export function benchTestForm(test: TestId): z.ZodMiniType<BenchTestEntry, FormValues> {
  const row = testRow(test);
  const schema = readingsSchema(test);
  const form = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): BenchTestEntry => {
    const given = Object.fromEntries(Object.entries(row.readings).map(([id, r]) => [id, typed(r, values[readingField(id)])]));
    const sample = row.speaksFor === "spot" ? sampleSchema.safeParse("pile:whole") : sampleSchema.safeParse(values["sample"]);
    const readings = schema.safeParse(given);
    const say = (message: string, field: string) => ctx.issues.push({ code: "custom", message, path: [field], input: values });
    if (!sample.success) say(sample.error.issues[0]?.message ?? "", "sample");
    for (const { path, message } of readings.error?.issues ?? []) say(message, path.length > 0 ? readingField(String(path[0])) : "form");
    return sample.success && readings.success ? { sample: sample.data, readings: readingsOf(readings.data) } : z.NEVER;
  }));
  return form as unknown as z.ZodMiniType<BenchTestEntry, FormValues>;
}
