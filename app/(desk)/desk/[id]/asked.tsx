import { useEffect, useId, useRef } from "react";
import { answeredBy, type AskedOfUs } from "@/lib/reply/questions-asked";
import desk from "./letter-desk.module.css";
import css from "./since.module.css";

/** What the client asked in their own words, above the letter that has to answer it, and what in the letter does. `text`: of the letter; null above a question of ours, which answers nothing. */
export function Asked({ asked: { questions, ...written }, text }: { asked: AskedOfUs; text: string | null }) {
  if (questions.length === 0) return null;
  return (
    <section className={css.since} aria-label="What they ask">
      <h3 className={css.heading}>They ask</h3>
      <ul className={css.questions}>
        {questions.map((asked) => {
          const by = text === null ? null : answeredBy(asked, { ...written, text });
          return (
            <li key={asked.question}>
              <p className={css.words} dir="auto">{asked.question}</p>
              {text !== null && <p className="small">{by ? answeredSay(by) : <b>See that the letter answers it, or says when we will.</b>}</p>}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

const answeredSay = (by: readonly string[]): string => (by.length === 0 ? "Answered by your own words" : `Answered by: ${by.join("; ")}`);

/** Where the letter does not plainly answer something they ask: whoever approves it says, once for all of it, that they have looked. A refusal leads them there. */
export function AskedLook({ open, isLooked, look, errors }: { open: readonly string[]; isLooked: boolean; look: (isLooked: boolean) => void; /** What was refused last, by its field. */ errors: Readonly<Record<string, string | undefined>> }) {
  const id = useId();
  const tick = useRef<HTMLInputElement>(null);
  const { asked: error } = errors;
  useEffect(() => { if (errors["asked"]) tick.current?.focus(); }, [errors]);
  if (open.length === 0) return null;
  const isWrong = error !== undefined && !isLooked;
  return (
    <div className={`${desk.open} no-print`} role="group" aria-labelledby={`${id}-why`}>
      <p id={`${id}-why`}><b>They ask, and no paragraph of the letter plainly answers:</b> {open.map((question, i) => <span key={question}>{i > 0 && " "}<q><bdi>{question}</bdi></q></span>)}</p>
      {isWrong && <p className="error" id={`${id}-error`}>{error}</p>}
      <label className={desk.tick}>
        <input ref={tick} type="checkbox" checked={isLooked} aria-invalid={isWrong || undefined} aria-describedby={isWrong ? `${id}-error` : undefined} onChange={(e) => look(e.target.checked)} />
        <span>I have read what they ask; the letter answers it or says when we will</span>
      </label>
    </div>
  );
}
