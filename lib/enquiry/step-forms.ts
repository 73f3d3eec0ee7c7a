import * as z from "zod/mini";
import { QUESTIONS, type Currency, type RugAnswers } from "../trade/questions";
import { feetAndInches, type AreaUnit } from "../words/measures";
import { intakeAnswersSchema, type IntakeAnswers } from "./questionnaire";
import { stepSchema, type FormStepId, type FormValues } from "./step-schemas";
import { stepRow } from "./steps";

/** Sentences by field name. */
export type FieldErrors = Record<string, string>;

/** A page's fields as answers to keep, and which earlier answers were emptied ("rug.price"); or what is wrong with them. */
export type ParsedStep = { ok: true; patch: IntakeAnswers; cleared: string[] } | { ok: false; errors: FieldErrors };

const emptied = (part: "rug" | "contact", answers: IntakeAnswers): string[] =>
  Object.entries(answers[part] ?? {}).filter(([, value]) => value === undefined).map(([key]) => `${part}.${key}`);

/** Checks what stands in a page's fields. One sentence a field, the first that applies. */
export function parseStep(step: FormStepId, values: FormValues): ParsedStep {
  const result = z.safeParse(stepSchema(step), values);
  if (result.success) {
    const cleared = [...emptied("rug", result.data), ...emptied("contact", result.data)];
    return { ok: true, patch: z.parse(intakeAnswersSchema, result.data), cleared };
  }
  const errors: FieldErrors = {};
  for (const issue of result.error.issues) errors[String(issue.path[0] ?? "answer")] ??= issue.message;
  return { ok: false, errors };
}

const text = (value: string | number | undefined) => (value === undefined ? "" : String(value));

/** A size in the fields of the workshop's unit. */
function sizeValues({ widthCm, lengthCm }: RugAnswers, areaUnit: AreaUnit): FormValues {
  if (areaUnit === "m2") return { unit: "cm", widthCm: text(widthCm), lengthCm: text(lengthCm) };
  const side = (name: "width" | "length", cm: number | undefined): FormValues => {
    if (cm === undefined) return { [`${name}Ft`]: "", [`${name}In`]: "" };
    const { feet, inches } = feetAndInches(cm);
    return { [`${name}Ft`]: String(feet), [`${name}In`]: String(inches) };
  };
  return { unit: "ft", ...side("width", widthCm), ...side("length", lengthCm) };
}

/** The unit in which sizes are asked first, and the currency in which a price is, as the workshop has them. */
interface AskedIn { areaUnit?: AreaUnit; currency?: Currency }

/** What stands in a page's fields when it is opened: the answers kept so far. */
export function valuesOf(step: FormStepId, answers: IntakeAnswers, { areaUnit = "m2", currency }: AskedIn = {}): FormValues {
  const rug = answers.rug ?? {};
  const question = stepRow(step).question;
  const kept = question === "wetNow" || question === "reason" ? answers[question] : question ? rug[question] : undefined;
  const answer = kept === undefined ? {} : { answer: kept };
  switch (step) {
    case "seller": return { ...answer, sellerWords: text(rug.sellerWords) };
    case "bought": return { ...answer, boughtPlace: text(rug.boughtPlace) };
    case "label": return { ...(rug.labelFound ? { answer: rug.labelFound } : {}), labelText: text(rug.labelText) };
    case "price": {
      const askedIn = rug.currency ?? currency;
      return { boughtYear: text(rug.boughtYear), price: text(rug.price), ...(askedIn ? { currency: askedIn } : {}) };
    }
    case "size": return sizeValues(rug, areaUnit);
    case "story": return { story: text(rug.story) };
    case "contact": return { name: text(answers.contact?.name), email: text(answers.contact?.email), telephone: text(answers.contact?.telephone) };
    default: return answer;
  }
}

/** A page's fields left empty, as "I'm not sure" sends them where no list of answers offers it. */
export const emptyValues = (step: FormStepId): FormValues => (step === "size" ? { unit: "cm" } : {});

/** The fields of a page out of a sent form: several of one name become a list where the page takes a list. */
export function valuesFromForm(step: FormStepId, form: FormData): FormValues {
  const question = stepRow(step).question;
  const takesMany = question !== undefined && QUESTIONS[question].kind === "many";
  const values: FormValues = {};
  for (const [name, value] of form) {
    if (typeof value !== "string") continue;
    values[name] = name === "answer" && takesMany ? form.getAll(name).filter((v) => typeof v === "string") : value;
  }
  return values;
}
