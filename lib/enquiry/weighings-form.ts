import * as z from "zod/mini";
import { SCHEMES, type SchemeId } from "../trade/quantitative";
import { parseDecimal } from "./amounts";
import type { FormValues } from "./step-schemas";
import { percentsOfWeighings, SCHEME_IDS, weighedEntrySchema, type WeighedEntry } from "./weighings-schema";

/** The fields of the form, counted from 1 as a person does. */
export const fibreField = (n: number): string => `fibre-${n}`;
export const methodField = (n: number): string => `method-${n}`;
export const specimenField = (n: number): string => `specimen-${n}`;
export const residueField = (n: number): string => `residue-${n}`;
export const MOST_FIBRES = 3;
export const MOST_WEIGHINGS = 2;

type Fields = Readonly<Record<string, unknown>>;
const textOf = (value: unknown): string => (typeof value === "string" ? value.trim() : "");
const massOf = (value: unknown): number => parseDecimal(textOf(value).replace(/\s*g$/, "")) ?? Number.NaN;
const isScheme = (text: string): text is SchemeId => SCHEME_IDS.some((id) => id === text);

/** The weighings that the chosen way of analysis asks for; a specimen weighed once need not be written twice. */
function weighingsIn(values: Fields): unknown {
  const scheme = textOf(values["scheme"]);
  if (!isScheme(scheme)) return { scheme, fibres: [], weighings: [] };
  const { fibres, removes, oneSpecimen } = SCHEMES[scheme];
  const specimen = (n: number) => massOf(values[specimenField(oneSpecimen && textOf(values[specimenField(n)]) === "" ? 1 : n)]);
  return {
    scheme,
    fibres: Array.from({ length: fibres }, (_, at) => textOf(values[fibreField(at + 1)])),
    weighings: removes.map((_, at) => ({
      method: Number(textOf(values[methodField(at + 1)]) || Number.NaN), specimenMassG: specimen(at + 1), residueMassG: massOf(values[residueField(at + 1)]),
    })),
  };
}

const FIELDS: Readonly<Record<string, (n: number) => string>> = { method: methodField, specimenMassG: specimenField, residueMassG: residueField };

/** Where an error is shown. */
function fieldOf([head, part, at, what]: readonly PropertyKey[]): string {
  if (head !== "weighings") return String(head ?? "form");
  if (part === "fibres") return fibreField(Number(at) + 1);
  return part === "weighings" ? (FIELDS[String(what)]?.(Number(at) + 1) ?? "form") : String(part ?? "form");
}

const form = z.pipe(z.record(z.string(), z.any()), z.transform((values, ctx): WeighedEntry => {
  const { laboratory, reportedOn, reference, sample } = values;
  const parsed = weighedEntrySchema.safeParse({ laboratory, reportedOn, reference: textOf(reference), sample: textOf(sample), weighings: weighingsIn(values) });
  const say = (message: string, field: string) => ctx.issues.push({ code: "custom", message, path: [field], input: values });
  if (!parsed.success) {
    for (const { path, message } of parsed.error.issues) say(message, fieldOf(path));
    return z.NEVER;
  }
  const found = percentsOfWeighings(parsed.data.weighings);
  if (!found.ok) say(found.say, "form");
  return parsed.data;
}));
/** A laboratory's weighings: from what stands in the fields to what is kept; masses that cannot be are refused. */
export const weighingsForm = form as unknown as z.ZodMiniType<WeighedEntry, FormValues>;
