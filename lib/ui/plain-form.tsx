"use client";
import { useActionState, useState, type FormEvent, type ReactNode } from "react";
import type { FormValues } from "../enquiry/step-schemas";
import { FormFrame } from "./form-frame";
import { FRESH, type FormAction } from "./form-state";
import { settledBy, standing } from "./settled-errors";

const BY_NAME = (name: string) => ({ name });
const NOTHING = () => undefined;

const NO_MORE: Readonly<Record<string, readonly string[]>> = {};

/**
 * A short form that only the server checks: it spares the page the schemas. Looks and behaves like a CheckedForm. What was found wrong with a
 * field is no longer said once the field is changed; `settles`: of which others a change of a field puts the error right too.
 */
export function PlainForm({ action, title, values, settles = NO_MORE, children }: { action: FormAction; title: string; values?: FormValues; settles?: Readonly<Record<string, readonly string[]>>; children: ReactNode }) {
  const [state, send, isSending] = useActionState(action, FRESH);
  const [settled, setSettled] = useState<{ attempt: number; names: readonly string[] }>({ attempt: 0, names: [] });
  const errors = settled.attempt === state.attempt ? standing(state.errors, settled.names) : state.errors;
  const changed = ({ target, currentTarget }: FormEvent<HTMLFormElement>) => {
    const names = settledBy((target as HTMLInputElement).name, { errors, settles, isToChange: (name) => isToChange(currentTarget.elements.namedItem(name)) });
    if (names.length > 0) setSettled((before) => ({ attempt: state.attempt, names: [...(before.attempt === state.attempt ? before.names : []), ...names] }));
  };
  const fields = { register: BY_NAME, choose: NOTHING, errors, initial: state.attempt > 0 ? state.values : (values ?? state.values) };
  return (
    <FormFrame fields={fields} title={title} attempt={String(state.attempt)} done={state.done} isSending={isSending} send={send} onInput={changed}>
      {children}
    </FormFrame>
  );
}

/** Whether a person can change it; what stands in a hidden field follows from others. */
const isToChange = (control: Element | RadioNodeList | null): boolean => control !== null && !(control instanceof HTMLInputElement && control.type === "hidden");
