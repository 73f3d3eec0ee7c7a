import type { ReactNode, Ref } from "react";
import css from "./desk-sheet.module.css";

/** A letter at the desk as it will be read: who it goes to, its subject, its paragraphs. `foot` says where it stands. */
export function DeskSheet({ to, subject, text, foot, label, marked = [] }: {
  to: ReactNode; subject: string; text: string; foot?: ReactNode; label: string;
  /** Passages to be seen at a glance. */
  marked?: readonly string[];
}) {
  return (
    <article className={css.sheet} aria-label={label}>
      <div className={css.head}><p className={css.to}>To {to}</p><p className={css.subject} dir="auto">{subject}</p></div>
      <div className={`letter ${css.text}`} dir="auto">
        {text.trim().split(BLOCKS).map((p, i) => <p key={i}>{partedAt(p, marked).map((part, n) => (part.isMarked ? <mark key={n} className={css.marked}>{part.text}</mark> : part.text))}</p>)}
      </div>
      {foot && <div className={css.foot}>{foot}</div>}
    </article>
  );
}

const BLOCKS = /\n{2,}/;

/** A paragraph cut where a passage begins and ends; one of several paragraphs is found in each of them. */
function partedAt(paragraph: string, passages: readonly string[]): { text: string; isMarked: boolean }[] {
  const passage = passages.flatMap((p) => p.trim().split(BLOCKS)).find((p) => p !== "" && paragraph.includes(p));
  if (passage === undefined) return [{ text: paragraph, isMarked: false }];
  const at = paragraph.indexOf(passage);
  const [before, after] = [paragraph.slice(0, at), paragraph.slice(at + passage.length)];
  return [{ text: before, isMarked: false }, { text: passage, isMarked: true }, { text: after, isMarked: false }].filter(({ text }) => text !== "");
}

/** The same sheet to write on. The text grows with what is written and scrolls when it would outgrow the window. */
export function WritingSheet({ to, subject, text, onSubject, onText, onLeave, label, describedBy, readOnly = false, field }: {
  to: ReactNode; subject: string; text: string; onSubject: (s: string) => void; onText: (s: string) => void;
  onLeave?: () => void; label: string; describedBy: string; readOnly?: boolean;
  /** The field of its text. */
  field?: Ref<HTMLTextAreaElement>;
}) {
  return (
    <div className={`${css.sheet} ${css.writing}`}>
      <div className={css.head}>
        <p className={css.to}>To {to}</p>
        <input className={css.subject} aria-label={`Subject of the ${label}`} value={subject} onChange={(e) => onSubject(e.target.value)} onBlur={onLeave}
          maxLength={200} dir="auto" readOnly={readOnly} aria-describedby={describedBy} autoComplete="off" />
      </div>
      <textarea ref={field} className={`letter ${css.text}`} aria-label={`Text of the ${label}`} value={text} onChange={(e) => onText(e.target.value)} onBlur={onLeave}
        rows={rowsFor(text)} dir="auto" readOnly={readOnly} aria-describedby={describedBy} spellCheck />
    </div>
  );
}

/** Characters in a line of the sheet at the desk, for browsers that cannot size a field by its content. */
const LINE_CHARS = 62;
const rowsFor = (text: string): number => Math.max(8, text.split("\n").reduce((n, line) => n + Math.max(1, Math.ceil(line.length / LINE_CHARS)), 1));
