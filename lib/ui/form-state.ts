import type { FieldErrors } from "../enquiry/step-forms";
import type { FormValues } from "../enquiry/step-schemas";

/** What a form's action gives back when it does not lead away. */
export interface FormState {
  /** How often it was sent; a new number is a new answer of the server. */
  attempt: number;
  errors: FieldErrors;
  /** What was typed, so that it stays without JavaScript too. */
  values: FormValues;
  /** Set when it was taken: a sentence for the person. */
  done?: string;
}
export type FormAction = (previous: FormState, form: FormData) => Promise<FormState>;

export const FRESH: FormState = { attempt: 0, errors: {}, values: {} };

/** The answer to a form that was not taken. The key `form` is for what belongs to no field. */
export const notTaken = (previous: FormState, errors: FieldErrors, values: FormValues): FormState =>
  ({ attempt: previous.attempt + 1, errors, values });
