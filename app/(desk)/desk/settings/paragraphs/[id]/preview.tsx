"use client";
import { useEffect, useRef, useState } from "react";
import type { ParagraphPreview } from "@/lib/enquiry/paragraph-views";
import { DeskSheet } from "@/lib/ui/desk-sheet";
import { PromiseNotes } from "@/lib/ui/promise-notes";
import css from "../paragraphs.module.css";

/** What keeping the paragraph would do: what is wrong with it, how hard it is to read, and how past letters would change. */
export function Preview({ found, say, isTrying }: { found: ParagraphPreview | null; say: string; isTrying: boolean }) {
  return (
    <section className={css.preview} aria-label="On past enquiries" aria-busy={isTrying}>
      <h2>On past enquiries</h2>
      <p role="status" className={css.count}>{say || (found ? countOf(found) : "One moment")}</p>
      {found && (
        <>
          <p className="small num">{found.words} {found.words === 1 ? "word" : "words"}, reading grade {Math.round(found.grade)}.</p>
          {found.faults.length > 0 && <ul className={css.faults}>{found.faults.map((f) => <li key={f.field + f.say}>{f.say}</li>)}</ul>}
          <PromiseNotes found={found.over} />
          <Letters letters={found.letters} />
        </>
      )}
    </section>
  );
}

function countOf({ tried, used, faults, letters }: ParagraphPreview): string {
  if (faults.length > 0) return "It is tried on past letters once what is named below is put right.";
  if (tried === 0) return "There are no past enquiries to try it on.";
  const of = tried === 1 ? "the one past enquiry" : `the last ${tried} enquiries`;
  if (used === 0) return `No letter to ${of} would use it.`;
  return `Used in ${used} of ${of}${used > letters.length ? `; the newest ${letters.length} are shown` : ""}.`;
}

function Letters({ letters }: { letters: ParagraphPreview["letters"] }) {
  const [chosen, setChosen] = useState("");
  const letter = letters.find((l) => l.enquiryId === chosen) ?? letters[0];
  if (!letter) return null;
  return (
    <>
      <div className="field">
        <label htmlFor="past-letter">How the letter reads to</label>
        <select id="past-letter" value={letter.enquiryId} onChange={(e) => setChosen(e.target.value)}>
          {letters.map((l) => <option key={l.enquiryId} value={l.enquiryId}>{`${l.client}: ${l.title}`}</option>)}
        </select>
      </div>
      <p className="small">Marked: this paragraph. {letter.isChanged ? "With it the letter reads otherwise than it would today." : "Nothing in this letter changes."}</p>
      <Letter letter={letter} />
    </>
  );
}

/** Of what stands above a paragraph, so much of the box is shown, so that it is read where it stands. By eye. */
const ABOVE = 0.25;

/** A letter in a box of its own that stands at the paragraph, wherever in the letter that is; the page stays where it is. */
function Letter({ letter: { client, reference, after, says } }: { letter: ParagraphPreview["letters"][number] }) {
  const box = useRef<HTMLDivElement>(null);
  const passage = says.join("\n\n");
  useEffect(() => {
    const [at, mark] = [box.current, box.current?.querySelector("mark")];
    if (at && mark) at.scrollTop += mark.getBoundingClientRect().top - at.getBoundingClientRect().top - ABOVE * at.clientHeight;
  }, [reference, after, passage]);
  return (
    <div ref={box} className={css.box} role="group" tabIndex={0} aria-label="The letter, from this paragraph on">
      <DeskSheet to={<bdi>{client}</bdi>} subject={reference} text={after} marked={says} label="The letter as it would read" />
    </div>
  );
}
