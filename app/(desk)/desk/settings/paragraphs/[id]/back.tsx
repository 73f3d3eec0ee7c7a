"use client";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { backToShipped } from "../actions";
import css from "../paragraphs.module.css";

/**
 * Goes back to the shipped text; what was written stays among the versions. `shippedText` is null where it is that text already,
 * or where none is shipped. What was done is said until the paragraph is changed again.
 */
export function Back({ id, seen, shippedText }: { id: string; seen: number; shippedText: string | null }) {
  const [said, setSaid] = useState({ say: "", isDone: false });
  const [isGoing, start] = useTransition();
  const go = () => start(async () => {
    const result = await reach(() => backToShipped({ id, seen }));
    setSaid(result.ok ? { say: result.value, isDone: true } : { say: result.say, isDone: false });
  });
  return (
    <>
      {shippedText !== null && (
        <div className={css.shipped}>
          <p className="small">We ship it as:</p>
          <p className="letter">{shippedText}</p>
          <button type="button" className="button quiet" onClick={go} disabled={isGoing}>Back to the shipped text</button>
        </div>
      )}
      <p role="status">{said.isDone === (shippedText === null) ? said.say : ""}</p>
    </>
  );
}
