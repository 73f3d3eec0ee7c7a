import type { ReactNode } from "react";
import type { Change } from "@/lib/reply/changes";
import css from "./moved.module.css";
import type { movedIn } from "./moved-in";

/** Where the assessment moved after somebody wrote: what would read otherwise, then and now. `takeSubject` and `take` are absent where it may only be read. */
export function Moved({ moved, take, takeSubject, children }: {
  moved: NonNullable<ReturnType<typeof movedIn>>; take?: (change: Change) => void; takeSubject?: (subject: string) => void; children?: ReactNode;
}) {
  const { subject, changes } = moved;
  return (
    <div className={css.moved} role="group" aria-label="What changed since this draft was written">
      <p><b>Since this draft was written, the assessment or the paragraphs changed.</b> By now it would read otherwise here:</p>
      <ul>
        {subject && <Line place="Subject" was={subject.was} now={subject.now} take={takeSubject && (() => takeSubject(subject.now))} />}
        {changes.map((c) => <Line key={`${c.of?.rug} ${c.was}${c.now}`} {...c} take={take && (() => take(c))} />)}
      </ul>
      {children}
    </div>
  );
}

/** One thing that would read otherwise: what was said, and what would be by now. */
export function Line({ place, was, now, of, take }: Change & { take?: (() => void) | undefined }) {
  const name = of ? `${place}, rug ${of.rug + 1}` : place;
  return (
    <li>
      <p className={css.place}>{name}</p>
      <dl className={css.pair}>
        <dt className="small">was</dt><dd dir="auto">{was ?? "Nothing was said."}</dd>
        <dt className="small">now</dt><dd dir="auto">{now ?? "Nothing would be said."}</dd>
      </dl>
      {take && <button type="button" className="button quiet" aria-label={`${now === null ? "Take it out" : "Take it in"}: ${name}`} onClick={take}>{now === null ? "Take it out" : "Take it in"}</button>}
    </li>
  );
}
