import * as z from "zod/mini";
import { ANALYSED_FIBRES, SCHEMES, type SchemeId } from "../trade/quantitative";
import { compositionFromWeighings } from "../triage/quantitative";
import { sampleSchema } from "./bench-test-schema";
import { percentsSchema, reportHeadSchema, type Percents } from "./laboratory-schema";

/** What a laboratory weighed, where its report gives the masses: which fibres, by which methods, in grams. */
export const SCHEME_IDS = Object.keys(SCHEMES) as [SchemeId, ...SchemeId[]];
const FIBRES = ANALYSED_FIBRES.map((f) => f.fibre) as [string, ...string[]];

const CHOOSE = "Choose a fibre.";
const mass = z.number("Write the mass in grams.").check(z.minimum(0, "Not below zero."));
const weighingSchema = z.strictObject({ method: z.int("Choose a method."), specimenMassG: mass, residueMassG: mass });

export const weighingsSchema = z.strictObject({
  scheme: z.enum(SCHEME_IDS, "Choose how it was analysed."),
  fibres: z.array(z.enum(FIBRES, CHOOSE)),
  weighings: z.array(weighingSchema),
});
export type Weighings = z.infer<typeof weighingsSchema>;

export const weighedEntrySchema = z.extend(reportHeadSchema, { sample: sampleSchema, weighings: weighingsSchema });
export type WeighedEntry = z.infer<typeof weighedEntrySchema>;

/** A report as it is kept, with the weighings its per cents come from, where it gave those. */
export const laboratoryReportSchema = z.extend(reportHeadSchema, { percents: percentsSchema, weighings: z.optional(weighingsSchema) });
export type LaboratoryReport = z.infer<typeof laboratoryReportSchema>;

const classOf = new Map(ANALYSED_FIBRES.map((f) => [f.fibre, f.single]));

/** The composition by triage's fibres, with agreed allowances, as labels state it; or why these masses cannot be. */
export function percentsOfWeighings(weighings: Weighings): { ok: true; percents: Percents } | { ok: false; say: string } {
  const found = compositionFromWeighings(weighings);
  if (!found.ok) return found;
  const percents: Percents = {};
  for (const { fibre, withAllowances } of found.percents) {
    const single = classOf.get(fibre) ?? "other";
    percents[single] = (percents[single] ?? 0) + withAllowances;
  }
  return { ok: true, percents };
}
