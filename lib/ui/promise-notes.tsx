"use client";
import { useId, type ReactNode } from "react";
import type { Overpromise } from "../reply/promises/check";
import { notesOf } from "../reply/promises/notes";
import css from "./promise-notes.module.css";

/** The letter that is written, and how to change it; `instead`: the words that stand in it now in place of others. */
interface Written { readonly text: string; readonly write: (text: string, instead: string) => void }

/**
 * What a letter says beyond what is known, sentence by sentence while it is written, and which of its lines nobody judged; null where
 * there is nothing to say. `written`: where the person may change it, so that another sentence can take the place of one.
 */
export function PromiseNotes({ found, unjudged = null, written = null, children }: { found: readonly Overpromise[]; unjudged?: string | null; written?: Written | null; children?: ReactNode }) {
  if (found.length === 0) return unjudged && <p className={`small ${css.unjudged} no-print`}>{unjudged}</p>;
  const notes = notesOf(found);
  return (
    <section className={`${css.notes} no-print`} aria-label="Says more than we know">
      <h3>{notes.length === 1 ? "One thing says more than we know" : `${notes.length} things say more than we know`}</h3>
      <ul>
        {notes.map(({ sentence, reasons, instead }, i) => (
          <li key={i}>
            {sentence && <q>{sentence}</q>}
            {reasons.map(({ why, suggestion }) => (
              <div key={why} className={css.reason}>
                <p>{why}</p>
                <p className={css.suggestion}>{suggestion}</p>
              </div>
            ))}
            {written && instead && written.text.includes(sentence) && <Instead sentence={sentence} instead={instead} written={written} />}
          </li>
        ))}
      </ul>
      {unjudged && <p className={`small ${css.unjudged}`}>{unjudged}</p>}
      {children}
    </section>
  );
}

/** Puts the other sentence where the first stands; a function as replacement, because a “$” in it is a dollar. */
const Instead = ({ sentence, instead, written: { text, write } }: { sentence: string; instead: string; written: Written }) => (
  <button type="button" className={css.instead} onClick={() => write(text.replace(sentence, () => instead), instead)} aria-label={`Write this instead: ${instead}`}>Write this instead</button>
);

/** Why the letter goes out as it is. */
export function SendingReason({ value, most, write, error }: { value: string; most: number; write: (reason: string) => void; error: string | null }) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>To send it as it is, say why</label>
      <small id={`${id}-hint`}>Kept in the history of this enquiry.</small>
      {error && <span className="error" id={`${id}-error`}>{error}</span>}
      <input id={id} type="text" value={value} maxLength={most} autoComplete="off" aria-invalid={error !== null || undefined}
        aria-describedby={`${id}-hint${error ? ` ${id}-error` : ""}`} onChange={(e) => write(e.target.value)} />
    </div>
  );
}
