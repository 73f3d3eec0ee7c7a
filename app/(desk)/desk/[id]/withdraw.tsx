"use client";
import { useRouter } from "next/navigation";
import { useId, useRef, useState, useTransition, type FormEvent } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { Result } from "@/lib/enquiry/caller";
import { WITHDRAWAL_CHARS } from "@/lib/enquiry/reason-limits";
import css from "./bench-tests.module.css";

/** Takes something out of account that was recorded in error, with a reason. What was typed stays where it was refused. */
export function Withdraw({ id, isWithdrawn, withdraw, done }: { id: string; isWithdrawn: boolean; withdraw: (input: { id: string; reason: string }) => Promise<Result<null>>; done: string }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const field = useId();
  const router = useRouter();
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const reason = String(new FormData(event.currentTarget).get("reason"));
    start(async () => {
      const result = await reach(() => withdraw({ id, reason }));
      setSaid(result.ok ? done : result.say);
      status.current?.focus();
      router.refresh();
    });
  };
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
