"use client";
import type { Ref } from "react";
import type { FieldErrors } from "../enquiry/step-forms";
import { useSay } from "./browser-words";
import { controlId } from "./form-context";
import styles from "./summary-of-errors.module.css";

/** What is missing or mistyped, after a form was not taken: takes the focus, each line leads to its field. */
export function SummaryOfErrors({ errors, ref }: { errors: FieldErrors; ref: Ref<HTMLDivElement> }) {
  const say = useSay();
  return (
    <div className={styles.summary} role="alert" tabIndex={-1} ref={ref} aria-labelledby="summary-title">
      <h2 id="summary-title">{say("form.again")}</h2>
      <ul>
        {Object.entries(errors).map(([field, message]) => (
          <li key={field}>{field === "form" ? message : <a href={`#${controlId(field)}`}>{message}</a>}</li>
        ))}
      </ul>
    </div>
  );
}
