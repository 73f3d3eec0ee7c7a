import type { FieldErrors } from "../enquiry/step-forms";

interface Form {
  readonly errors: FieldErrors;
  /** Of which other fields a change of one puts the error right too. */
  readonly settles: Readonly<Record<string, readonly string[]>>;
  /** Whether a field stands in the form, for a person to change. */
  readonly isToChange: (name: string) => boolean;
}

/**
 * The errors that a change of one field settles until the form is sent again: its own, those it is said to put right, and those of fields that
 * nobody can change by themselves. What is wrong with the whole form stays.
 */
export const settledBy = (changed: string, { errors, settles, isToChange }: Form): string[] =>
  Object.keys(errors).filter((name) => name !== "form" && (name === changed || settles[changed]?.includes(name) === true || !isToChange(name)));

/** The errors without those that are settled. */
export const standing = (errors: FieldErrors, settled: readonly string[]): FieldErrors => Object.fromEntries(Object.entries(errors).filter(([name]) => !settled.includes(name)));
