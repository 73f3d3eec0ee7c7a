"use client";
import { useId } from "react";
import { useReason } from "@/app/(desk)/_parts/use-reason";
import type { Result } from "@/lib/enquiry/caller";
import { WITHDRAWAL_CHARS } from "@/lib/enquiry/reason-limits";
import css from "./bench-tests.module.css";

/** Takes something out of account that was recorded in error, with a reason. What was typed stays where it was refused. */
export function Withdraw({ id, isWithdrawn, withdraw, done }: { id: string; isWithdrawn: boolean; withdraw: (input: { id: string; reason: string }) => Promise<Result<null>>; done: string }) {
  const { said, isBusy, status, submit } = useReason((reason) => withdraw({ id, reason }), done);
  const field = useId();
  return (
    <div className="no-print">
      {!isWithdrawn && (
        <details className={css.withdraw}>
          <summary>Recorded in error</summary>
          <form onSubmit={submit}>
            <div className="field">
              <label htmlFor={field}>Why it does not count</label>
              <input id={field} name="reason" type="text" maxLength={WITHDRAWAL_CHARS} autoComplete="off" />
            </div>
            <button className="button quiet" disabled={isBusy}>Withdraw it</button>
          </form>
        </details>
      )}
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
    </div>
  );
}
