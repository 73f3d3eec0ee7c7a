"use client";
import dynamic from "next/dynamic";
import { useId, useRef, useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { sendTest } from "./actions";
import css from "./arrival.module.css";
import type { LetterToSee } from "./arrival-seen";

// Only where somebody looks: most letters are sent without.
const Seen = dynamic(() => import("./arrival-seen").then((m) => m.Seen));

/** The letter in the very form in which it will arrive, in a window of its own; and a copy of it to oneself. */
export function Arrival({ tell, ...letter }: LetterToSee & { tell: (say: string, focus?: boolean) => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [isOpen, setOpen] = useState(false);
  const [isBusy, start] = useTransition();
  const title = useId();
  const { view, kind, words } = letter;
  const open = () => { setOpen(true); dialog.current?.showModal(); };
  const test = () => start(async () => {
    const result = await reach(() => sendTest({ enquiryId: view.id, kind, ...words }));
    tell(result.ok ? `A test went to ${result.value.to}. The client got nothing.` : result.say, true);
  });
  return (
    <div className={`${css.ways} no-print`}>
      <button type="button" className={css.plain} onClick={open}>See it as it will arrive</button>
      <button type="button" className={css.plain} disabled={isBusy} onClick={test}>{isBusy ? "Sending a test" : "Send myself a test"}</button>
      <dialog ref={dialog} className={css.dialog} aria-labelledby={title} onClose={() => setOpen(false)}>
        <div className={css.head}>
          <h2 id={title}>As it will arrive</h2>
          <form method="dialog"><button className="button quiet">Close</button></form>
        </div>
        {isOpen && <Seen {...letter} />}
      </dialog>
    </div>
  );
}
