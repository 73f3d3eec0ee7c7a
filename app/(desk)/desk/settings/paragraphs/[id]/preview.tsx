"use client";
import { useState } from "react";
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

function countOf({ tried, used, faults }: ParagraphPreview): string {
  if (faults.length > 0) return "It is tried on past letters once what is named below is put right.";
  if (tried === 0) return "There are no past enquiries to try it on.";
  const of = tried === 1 ? "the one past enquiry" : `the last ${tried} enquiries`;
  return used === 0 ? `No letter to ${of} would use it.` : `Used in ${used} of ${of}.`;
}

function Letters({ letters }: { letters: ParagraphPreview["letters"] }) {
  const [chosen, setChosen] = useState("");
  const letter = letters.find((l) => l.enquiryId === chosen) ?? letters[0];
  if (!letter) return null;
  const before = new Set(letter.before.split("\n\n"));
  const changed = new Set(letter.after.split("\n\n").filter((block) => !before.has(block)));
  return (
    <>
      <div className="field">
        <label htmlFor="past-letter">How the letter reads to</label>
        <select id="past-letter" value={letter.enquiryId} onChange={(e) => setChosen(e.target.value)}>
          {letters.map((l) => <option key={l.enquiryId} value={l.enquiryId}>{`${l.client}: ${l.title}`}</option>)}
        </select>
      </div>
      <DeskSheet to={<bdi>{letter.client}</bdi>} subject={letter.reference} text={letter.after} marked={changed} label="The letter as it would read"
        foot={changed.size > 0 ? "Marked: what your words change." : "Nothing in this letter changes."} />
    </>
  );
}
