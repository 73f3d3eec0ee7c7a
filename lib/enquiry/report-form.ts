import * as z from "zod/mini";
import { parseDecimal } from "./amounts";
import { laboratoryEntrySchema, REPORTED_FIBRES, type LaboratoryEntry, type Percents } from "./laboratory-schema";
import type { FormValues } from "./step-schemas";

/** The name of the field for one fibre's share. */
export const percentField = (fibre: string): string => `percent-${fibre}`;

const textOf = (value: unknown): string => (typeof value === "string" ? value.trim() : "");

/** The shares typed; an empty field is not reported, one that is no number becomes NaN. */
export const percentsIn = (values: Readonly<Record<string, unknown>>): Percents =>
  Object.fromEntries(REPORTED_FIBRES.flatMap((fibre) => {
    const text = textOf(values[percentField(fibre)]).replace(/\s*%$/, "");
    return text === "" ? [] : [[fibre, parseDecimal(text) ?? Number.NaN]];
  }));

/** Where an error of the report is shown; what is wrong with the sum, at the first fibre. */
const fieldOf = ([head, fibre]: readonly PropertyKey[]): string =>
  head === "percents" ? percentField(String(fibre ?? REPORTED_FIBRES[0])) : String(head ?? "form");

const form = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): LaboratoryEntry => {
  const { laboratory, reportedOn, reference, sample } = values;
  const parsed = laboratoryEntrySchema.safeParse({ laboratory, reportedOn, reference: textOf(reference), sample: textOf(sample), percents: percentsIn(values) });
  if (parsed.success) return parsed.data;
  for (const { path, message } of parsed.error.issues) ctx.issues.push({ code: "custom", message, path: [fieldOf(path)], input: values });
  return z.NEVER;
}));
/** A laboratory's report: from what stands in the fields to what is kept, every error beside its field. */
export const reportForm = form as unknown as z.ZodMiniType<LaboratoryEntry, FormValues>;
