"use client";
import { createContext, useContext, type ChangeEventHandler, type FocusEventHandler, type Ref } from "react";
import type { FieldErrors } from "../enquiry/step-forms";
import type { FormValues } from "../enquiry/step-schemas";

/** What ties a control to its form. A form that only the server checks needs no more than the name. */
interface Registered {
  name: string;
  onChange?: ChangeEventHandler<HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement>;
  onBlur?: FocusEventHandler<HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement>;
  ref?: Ref<HTMLInputElement & HTMLTextAreaElement & HTMLSelectElement>;
}
export interface FormContextValue {
  /** `shouldUnregister`: what was typed is forgotten once the control is shown no more. */
  register: (name: string, options?: { shouldUnregister: boolean }) => Registered;
  /** Sets what is chosen in a group of tick boxes. */
  choose: (name: string, chosen: string[]) => void;
  errors: FieldErrors;
  /** What stands in the fields when the page opens. */
  initial: FormValues;
}
export const FormContext = createContext<FormContextValue | null>(null);

export function useFields(): FormContextValue {
  const value = useContext(FormContext);
  if (!value) throw new Error("Expected a field to stand inside a form of ours");
  return value;
}

/** The id of a field's control, and of the sentences about it. */
export const controlId = (name: string) => `field-${name}`;
export const errorId = (name: string) => `error-${name}`;
export const hintId = (name: string) => `hint-${name}`;

/** Ids of what describes a control, for aria-describedby; undefined for none. */
export const describedBy = (...ids: (string | false | undefined)[]): string | undefined => ids.filter(Boolean).join(" ") || undefined;
