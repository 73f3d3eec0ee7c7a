"use client";
import { useId } from "react";
import { useReason } from "@/app/(desk)/_parts/use-reason";
import { lift } from "./actions";
import css from "./post.module.css";

/** Lets letters go to an address again, with a reason. What was typed stays where it was refused. */
export function Lift({ address }: { address: string }) {
  const { said, isBusy, status, submit } = useReason((reason) => lift({ address, reason }), "Letters go there again.");
  const field = useId();
  return (
    <details className="no-print">
      <summary>Write to it again<span className="unseen">: {address}</span></summary>
      <form onSubmit={submit} className={css.form}>
        <div className="field">
          <label htmlFor={field}>Why letters should go there again</label>
          <input id={field} name="reason" type="text" maxLength={500} autoComplete="off" />
        </div>
        <button className="button quiet" disabled={isBusy}>Let letters go there</button>
        <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
      </form>
    </details>
  );
}
