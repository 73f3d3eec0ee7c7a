"use client";
import { useEffect, useId, useRef, useState, useTransition, type FormEvent } from "react";
import type { Result } from "../enquiry/caller";
import type { LabelReadingView } from "../enquiry/label-view";
import css from "./label-reading.module.css";

export type LabelAnswerId = "right" | "corrected" | "no-label";
/** What a page can do with a label: have it read, and say what it says. */
export interface LabelDeeds {
  read(photoId: string): Promise<Result<LabelReadingView>>;
  answer(given: { photoId: string; answer: LabelAnswerId; text?: string }): Promise<Result<LabelReadingView>>;
}

const LOST = "The connection was lost. What you wrote is still here; please try again.";
const SAYS = {
  confirmed: "This is what the label says. Thank you.",
  corrected: "This is what the label says, put right by hand. Thank you.",
  refused: "There is no label in this photo. Thank you.",
} as const;

/** What was read of a label, and the question whether it is right. A photo that was not read yet is read now. */
export function LabelReading({ photoId, kept, deeds, mayAnswer = true }: { photoId: string; kept: LabelReadingView | null; deeds: LabelDeeds; mayAnswer?: boolean }) {
  const [reading, setReading] = useState(kept);
  const [trouble, setTrouble] = useState("");
  const [isWriting, setIsWriting] = useState(false);
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const asked = useRef(kept !== null);
  const take = async (call: () => Promise<Result<LabelReadingView>>) => {
    const result = await call().catch(() => null);
    if (result?.ok) { setReading(result.value); setIsWriting(false); setTrouble(""); } else setTrouble(result?.say ?? LOST);
    return result?.ok === true;
  };
  useEffect(() => {
    if (asked.current) return;
    asked.current = true;
    start(async () => { await take(() => deeds.read(photoId)); });
  }, [deeds, photoId]);
  // What says that it is kept shows only after the next drawing, and so can only then be focused.
  const [answers, setAnswers] = useState(0);
  useEffect(() => { if (answers > 0) status.current?.focus(); }, [answers]);
  const answer = (given: LabelAnswerId, text?: string) => start(async () => {
    if (await take(() => deeds.answer({ photoId, answer: given, ...(text === undefined ? {} : { text }) }))) setAnswers((n) => n + 1);
  });
  const isSettled = reading !== null && reading.state in SAYS;
  return (
    <div className={css.reading}>
      {reading && reading.state !== "unreadable" && reading.state !== "refused" && <Words reading={reading} />}
      <p ref={status} role="status" tabIndex={-1} className={css.status}>
        {reading === null && trouble === "" && "Reading the label …"}
        {reading?.state === "unreadable" && "We could not make out any words. Could you take it again from closer, so that the label fills the picture, by a window? Or write below what stands on it."}
        {isSettled && SAYS[reading.state as keyof typeof SAYS]}
      </p>
      {trouble && <p role="alert" className={css.trouble}>{trouble}</p>}
      {reading && mayAnswer && (isWriting || reading.state === "unreadable"
        ? <Write reading={reading} isBusy={isBusy} keep={(text) => answer("corrected", text)} />
        : <Ask isSettled={isSettled} isBusy={isBusy} answer={answer} write={() => setIsWriting(true)} />)}
    </div>
  );
}

/** The label, cut out of its photo, and its words; the names of fibres stand out, what is unsure is dotted. */
function Words({ reading }: { reading: LabelReadingView }) {
  const { x, y, width, height } = reading.crop;
  const unsure = reading.lines.flat().some((w) => w.unsure);
  return (
    <>
      <div className={css.crop} role="img" aria-label="The label, cut out of the photo" style={{ aspectRatio: `${width * reading.photo.width} / ${height * reading.photo.height}` }}>
        <img src={`/photos/${reading.photoId}/1600`} alt="" style={{ width: `${100 / width}%`, left: `${(-100 * x) / width}%`, top: `${(-100 * y) / height}%` }} />
      </div>
      <p className={css.words} dir="auto">
        {reading.lines.map((line, n) => (
          <span key={n} className={css.line}>
            {line.map((w, k) => <span key={k}>{k > 0 && " "}{w.isFibre ? <mark className={w.unsure ? css.unsure : undefined}>{w.text}</mark> : <span className={w.unsure ? css.unsure : undefined}>{w.text}</span>}</span>)}
          </span>
        ))}
      </p>
      {unsure && reading.state === "read" && <p className="small">Please look twice at the dotted words: they were hard to read.</p>}
    </>
  );
}

function Ask({ isSettled, isBusy, answer, write }: { isSettled: boolean; isBusy: boolean; answer: (given: LabelAnswerId) => void; write: () => void }) {
  if (isSettled) return <p><button type="button" className={css.plain} onClick={write} disabled={isBusy}>Correct the words</button></p>;
  return (
    <div role="group" aria-label="Is this right?">
      <p className={css.question}>Is this right?</p>
      <div className={css.answers}>
        <button type="button" className="button" onClick={() => answer("right")} disabled={isBusy}>Yes, that is what it says</button>
        <button type="button" className="button quiet" onClick={write} disabled={isBusy}>No, I will correct it</button>
        <button type="button" className={css.plain} onClick={() => answer("no-label")} disabled={isBusy}>This is not a label</button>
      </div>
    </div>
  );
}

function Write({ reading, isBusy, keep }: { reading: LabelReadingView; isBusy: boolean; keep: (text: string) => void }) {
  const field = useId();
  // Scraps of a label that could not be read are nothing to put right.
  const isUnreadable = reading.state === "unreadable";
  const lines = isUnreadable ? [] : reading.lines;
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    keep(String(new FormData(event.currentTarget).get("text")));
  };
  return (
    <form onSubmit={submit} className={css.write}>
      <label htmlFor={field}>What stands on the label</label>
      <textarea id={field} name="text" rows={Math.max(3, lines.length + 1)} maxLength={2_000} defaultValue={isUnreadable ? "" : reading.text} />
      <button className="button" disabled={isBusy}>Keep these words</button>
    </form>
  );
}
