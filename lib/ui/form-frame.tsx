"use client";
import { useEffect, useRef, type FormEventHandler, type ReactNode } from "react";
import { useSay } from "./browser-words";
import { FormContext, type FormContextValue } from "./form-context";
import styles from "./form-frame.module.css";
import { SummaryOfErrors } from "./summary-of-errors";

/** The form element with what stands above its fields: the summary of errors, which takes the focus after `attempt` changes. */
export function FormFrame({ fields, title, attempt, done, isSending, send, onSubmit, onInput, children }: {
  fields: FormContextValue;
  title: string;
  /** Changes with every answer to an attempt, of the browser or the server. */
  attempt: string;
  done: string | undefined;
  isSending: boolean;
  send: (form: FormData) => void;
  onSubmit?: FormEventHandler<HTMLFormElement>;
  onInput?: FormEventHandler<HTMLFormElement>;
  children: ReactNode;
}) {
  const hasErrors = Object.keys(fields.errors).length > 0;
  const say = useSay();
  const summary = useRef<HTMLDivElement>(null);
  useEffect(() => summary.current?.focus(), [attempt]);
  return (
    <FormContext value={fields}>
      <title>{hasErrors ? say("form.error-title", { title }) : title}</title>
      <form action={send} onSubmit={onSubmit} onInput={onInput} noValidate aria-busy={isSending} className={styles.form}>
        {hasErrors && <SummaryOfErrors errors={fields.errors} ref={summary} />}
        <p role="status" className={styles.done}>{hasErrors ? undefined : done}</p>
        {children}
      </form>
    </FormContext>
  );
}
