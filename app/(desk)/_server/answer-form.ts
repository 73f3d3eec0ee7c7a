import "server-only";
import type * as z from "zod/mini";
import type { Result } from "@/lib/enquiry/caller";
import type { FieldErrors } from "@/lib/enquiry/step-forms";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { notTaken, type FormState } from "@/lib/ui/form-state";

/** What is never sent back to a page, not even to fill a field in again. */
const SECRETS = ["password"];

/** The text fields of a sent form; a name in `many` becomes a list. Files are left out. */
export function fieldsOf(form: FormData, many: readonly string[] = []): FormValues {
  const values: FormValues = {};
  for (const [name, value] of form) {
    if (typeof value !== "string" || name.startsWith("$ACTION")) continue;
    values[name] = many.includes(name) ? form.getAll(name).filter((v) => typeof v === "string") : value;
  }
  return values;
}

/** One sentence a field, the first that applies; what belongs to no field stands under `form`. */
export function errorsOf(issues: readonly { path: PropertyKey[]; message: string }[]): FieldErrors {
  const errors: FieldErrors = {};
  for (const issue of issues) errors[String(issue.path[0] ?? "form")] ??= issue.message;
  return errors;
}

/** The answer to a form: parse, run one operation, say what came of it. What was typed is given back, secrets excepted. */
export async function answerForm<I, T>(previous: FormState, values: FormValues, schema: z.ZodMiniType<I, FormValues>, run: {
  operation: (input: I) => Promise<Result<T>>; done: (value: T) => string;
}): Promise<FormState> {
  const kept = Object.fromEntries(Object.entries(values).filter(([name]) => !SECRETS.includes(name)));
  const parsed = schema.safeParse(values);
  if (!parsed.success) return notTaken(previous, errorsOf(parsed.error.issues), kept);
  const result = await run.operation(parsed.data);
  if (!result.ok) return notTaken(previous, result.fields ?? { form: result.say }, kept);
  return { attempt: previous.attempt + 1, errors: {}, values: kept, done: run.done(result.value) };
}
