"use client";
import { zodResolver } from "@hookform/resolvers/zod";
import { startTransition, useActionState, type FormEvent, type ReactNode } from "react";
import { useForm } from "react-hook-form";
import type * as z from "zod/mini";
import type { FieldErrors } from "../enquiry/step-forms";
import type { FormValues } from "../enquiry/step-schemas";
import { FormFrame } from "./form-frame";
import { FRESH, type FormAction } from "./form-state";

/**
 * A form checked with the same schema here and on the server. Works without JavaScript: then only the server
 * checks. A button named `skip` sends without checking. What was typed stays; the title says when it failed.
 */
export function CheckedForm({ schema, action, values, title, children }: {
  schema: z.ZodMiniType<unknown, FormValues>;
  action: FormAction;
  values: FormValues;
  title: string;
  children: ReactNode;
}) {
  const [state, send, isSending] = useActionState(action, FRESH);
  const { register, setValue, handleSubmit, formState } = useForm<FormValues, unknown, unknown>({ resolver: zodResolver(schema), shouldFocusError: false });
  const found: FieldErrors = Object.fromEntries(Object.entries(formState.errors).map(([name, e]) => [name, String(e?.message ?? "")]));

  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (isSending) return;
    const submitter = (event.nativeEvent as SubmitEvent).submitter;
    const data = new FormData(event.currentTarget, submitter);
    const go = () => startTransition(() => send(data));
    if (submitter?.getAttribute("name") === "skip") go();
    else void handleSubmit(go)(event);
  };

  const fields = {
    register, choose: (name: string, chosen: string[]) => setValue(name, chosen),
    errors: Object.keys(found).length > 0 ? found : state.errors,
    initial: state.attempt > 0 ? state.values : values,
  };
  return (
    <FormFrame fields={fields} title={title} attempt={`${formState.submitCount}/${state.attempt}`} done={state.done} isSending={isSending} send={send} onSubmit={submit}>
      {children}
    </FormFrame>
  );
}
