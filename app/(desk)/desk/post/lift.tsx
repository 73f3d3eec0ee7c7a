"use client";
import { useRouter } from "next/navigation";
import { useId, useRef, useState, useTransition, type FormEvent } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { lift } from "./actions";
import css from "./post.module.css";

/** Lets letters go to an address again, with a reason. What was typed stays where it was refused. */
export function Lift({ address }: { address: string }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const field = useId();
  const router = useRouter();
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const reason = String(new FormData(event.currentTarget).get("reason"));
    start(async () => {
      const result = await reach(() => lift({ address, reason }));
      setSaid(result.ok ? "Letters go there again." : result.say);
      status.current?.focus();
      router.refresh();
    });
  };
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
