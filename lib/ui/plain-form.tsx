"use client";
import { useActionState, type ReactNode } from "react";
import type { FormValues } from "../enquiry/step-schemas";
import { FormFrame } from "./form-frame";
import { FRESH, type FormAction } from "./form-state";

const BY_NAME = (name: string) => ({ name });
const NOTHING = () => undefined;

/** A short form that only the server checks: it spares the page the schemas. Looks and behaves like a CheckedForm. */
export function PlainForm({ action, title, values, children }: { action: FormAction; title: string; values?: FormValues; children: ReactNode }) {
  const [state, send, isSending] = useActionState(action, FRESH);
  const fields = { register: BY_NAME, choose: NOTHING, errors: state.errors, initial: state.attempt > 0 ? state.values : (values ?? state.values) };
  return (
    <FormFrame fields={fields} title={title} attempt={String(state.attempt)} done={state.done} isSending={isSending} send={send}>
      {children}
    </FormFrame>
  );
}
