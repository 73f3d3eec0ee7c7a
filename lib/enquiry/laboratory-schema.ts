import * as z from "zod/mini";
import { SINGLE_FIBRES, type SingleFibre } from "../trade/single-fibres";
import { sampleSchema } from "./bench-test-schema";
import { hasCome, isOfOurTime, TOO_LONG_AGO } from "./day-schema";

/** A laboratory's report as it is kept: what it says the sample is made of, in per cent by mass. */
export const LABORATORY = "laboratory";
/** The form for a report that gives masses; kept as a report all the same. */
export const WEIGHINGS = "weighings";
export const LABORATORY_LIMITS = { nameChars: 120, referenceChars: 80 } as const;

export type ReportedFibre = SingleFibre | "other";
export const REPORTED_FIBRES: readonly [...SingleFibre[], "other"] = [...SINGLE_FIBRES, "other"];
export type Percents = Partial<Record<ReportedFibre, number>>;

/** Published methods report to a whole per cent, so a sum may be off by this much. Elicited. */
export const SUM_TOLERANCE_PERCENT = 1;
export const sumOf = (percents: Percents): number => Object.values(percents).reduce((sum: number, p) => sum + (p ?? 0), 0);

const line = (max: number) => z.string().check(z.trim(), z.maxLength(max, `At most ${max} characters.`));
const percent = z.number("Write a number.").check(z.minimum(0, "Not below zero."), z.maximum(100, "At most 100."));
const addsUp = (percents: Percents) => Math.abs(sumOf(percents) - 100) <= SUM_TOLERANCE_PERCENT;
const NOT_A_HUNDRED = "The per cents must add up to 100, give or take one.";

export const percentsSchema = z.partialRecord(z.enum(REPORTED_FIBRES), percent).check(z.refine(addsUp, NOT_A_HUNDRED));

/** Whose report it is. */
export const reportHeadSchema = z.strictObject({
  laboratory: line(LABORATORY_LIMITS.nameChars).check(z.minLength(1, "Write the laboratory's name.")),
  /** The day on the report, YYYY-MM-DD. */
  reportedOn: z.iso.date("Write the date of the report.").check(z.refine(hasCome, "That day has not come yet."), z.refine(isOfOurTime, TOO_LONG_AGO)),
  reference: line(LABORATORY_LIMITS.referenceChars),
});
/** A report that gives per cents, with what its sample was taken from. */
export const laboratoryEntrySchema = z.extend(reportHeadSchema, { sample: sampleSchema, percents: percentsSchema });
export type LaboratoryEntry = z.infer<typeof laboratoryEntrySchema>;
