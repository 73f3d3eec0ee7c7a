"use client";
import { useId, useState } from "react";
import type { ChosenTime } from "@/lib/enquiry/send-at";
import css from "./letter-desk.module.css";

/** Approves the letter to leave at a chosen time on the workshop's clock. What was chosen stays where it was refused. */
export function SendAt({ first, error, isBusy, send }: { first: ChosenTime; error: string | null; isBusy: boolean; send: (at: ChosenTime) => void }) {
  const [at, setAt] = useState(first);
  const id = useId();
  const wrong = { "aria-invalid": error !== null || undefined, "aria-describedby": error ? `${id}-error` : undefined };
  return (
    <details className={`${css.later} no-print`}>
      <summary>Send it at a chosen time</summary>
      <form onSubmit={(e) => { e.preventDefault(); send(at); }}>
        {error && <p className="error" role="alert" id={`${id}-error`}>{error}</p>}
        <div className={css.when}>
          <div className="field"><label htmlFor={`${id}-day`}>Day</label><input id={`${id}-day`} type="date" value={at.day} {...wrong} onChange={(e) => setAt({ ...at, day: e.target.value })} /></div>
          <div className="field"><label htmlFor={`${id}-hour`}>Hour, at the workshop</label><input id={`${id}-hour`} type="time" value={at.hour} {...wrong} onChange={(e) => setAt({ ...at, hour: e.target.value })} /></div>
        </div>
        <p className="small">It can be taken back until then.</p>
        <button className="button quiet" disabled={isBusy}>Approve for then</button>
      </form>
    </details>
  );
}
