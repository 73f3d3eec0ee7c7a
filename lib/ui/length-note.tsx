"use client";
import { useId } from "react";
import css from "./promise-notes.module.css";

/** Said while a letter is longer than people read to the end; a reason can be given and need not be. `write` null: this person sends no letter. */
export function LengthNote({ over, rugs, value, most, write, error }: { over: { words: number; most: number }; /** How many the letter is about. */ rugs: number; value: string; most: number; write: ((reason: string) => void) | null; error: string | null }) {
  const id = useId();
  return (
    <section className={`${css.notes} no-print`} aria-label="A long letter">
      <h3>{over.words} words: longer than most people read</h3>
      <p>Few read more than about {over.most} words to the end{rugs > 1 && ` of a letter about ${rugs} rugs`}. What can wait may go into a second letter.</p>
      {write && (
        <div className="field">
          <label htmlFor={id}>Why it has to be this long, if you like</label>
          <small id={`${id}-hint`}>Kept in the history of this enquiry. You can send it without.</small>
          {error && <span className="error" id={`${id}-error`}>{error}</span>}
          <input id={id} type="text" value={value} maxLength={most} autoComplete="off" aria-invalid={error !== null || undefined}
            aria-describedby={`${id}-hint${error ? ` ${id}-error` : ""}`} onChange={(e) => write(e.target.value)} />
        </div>
      )}
    </section>
  );
}
