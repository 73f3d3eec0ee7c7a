"use client";
import { useRouter } from "next/navigation";
import { useRef, useState, useTransition, type FormEvent } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { STATE_NAMES } from "@/lib/enquiry/states";
import type { EnquiryStateId } from "@/lib/enquiry/views";
import { move } from "./actions";
import css from "./enquiry.module.css";

/** Moves the enquiry by hand to one of the states it may go to from here. */
export function Move({ enquiryId, from, to }: { enquiryId: string; from: EnquiryStateId; to: EnquiryStateId[] }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const chosen = to.find((s) => s === new FormData(event.currentTarget).get("to"));
    if (!chosen) return setSaid("Choose where it goes.");
    start(async () => {
      const result = await reach(() => move({ enquiryId, from, to: chosen }));
      setSaid(result.ok ? `Moved: ${STATE_NAMES[chosen]}.` : result.say);
      status.current?.focus();
      router.refresh();
    });
  };
  return (
    <section className={`${css.block} no-print`}>
      <h2>Move this enquiry</h2>
      <p className="small">It stands at: {STATE_NAMES[from]}. An approved letter moves it by itself, and so does one that was read out.</p>
      {to.length > 0 && (
        <form onSubmit={submit} key={from}>
          <fieldset className={css.states}>
            <legend className="unseen">Where it goes</legend>
            {to.map((s) => <label key={s}><input type="radio" name="to" value={s} /> {STATE_NAMES[s]}</label>)}
          </fieldset>
          <button className="button quiet" disabled={isBusy}>Move it</button>
        </form>
      )}
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
    </section>
  );
}
