"use client";
import { useEffect, useRef, useState } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { judgeOpen } from "./actions";
import { judgeInTurns, type Ended, type Judged } from "./judge-in-turns";
import tables from "./tables.module.css";

/** Says how many open enquiries still stand on earlier settings, and judges them anew, turn by turn, until none is left or it is stopped. With none left it keeps what it answered. */
export function JudgedEarlier({ count }: { count: number }) {
  const [so, setSo] = useState<Judged | null>(null);
  const [ended, setEnded] = useState<Ended | null>(null);
  const isStopped = useRef(false);
  const status = useRef<HTMLParagraphElement>(null);
  // Who leaves the page stops it too.
  useEffect(() => () => { isStopped.current = true; }, []);
  // No transition: what is set in one before its first turn would show only after the last.
  const press = async () => {
    isStopped.current = false;
    setEnded(null);
    setSo({ judged: 0, left: count });
    status.current?.focus();
    setEnded(await judgeInTurns(() => reach(judgeOpen), { left: count, told: setSo, isStopped: () => isStopped.current }));
    status.current?.focus();
  };
  const isRunning = so !== null && ended === null;
  if (count === 0 && so === null) return null;
  return (
    <section className={tables.earlier} aria-label="Judged with earlier settings">
      {count > 0 && !isRunning && (
        <>
          <p><strong>{enquiries(count)}, judged with earlier settings.</strong> Their amounts stay in the currency of that day, and their drafts keep it, until they are judged anew. Drafts that nobody has changed are then written anew; please read the others again.</p>
          <button className="button quiet" type="button" onClick={() => void press()}>{ended && ended.left > 0 ? "Go on judging them anew" : "Judge them anew"}</button>
        </>
      )}
      <p ref={status} role="status" tabIndex={-1} className={tables.said}>{isRunning ? soFar(so) : ended && (ended.left > 0 || count === 0) && outcome(ended)}</p>
      {isRunning && (
        <>
          <progress value={so.judged} max={so.judged + so.left} aria-label="Judged anew" />
          <p className="small">Each is kept as soon as it is judged. If you stop, or leave this page, the rest can be done later.</p>
          <button className="button quiet" type="button" onClick={() => { isStopped.current = true; }}>Stop here</button>
        </>
      )}
    </section>
  );
}

const enquiries = (n: number) => (n === 1 ? "One open enquiry" : `${n} open enquiries`);
const soFar = ({ judged, left }: Judged) => `Judging … ${judged} of ${judged + left} done.`;
function outcome({ judged, left, halted }: Ended): string {
  if (left === 0) return `${enquiries(judged)} judged anew.`;
  return [halted ?? "Stopped.", `${judged} of ${judged + left} judged anew, ${left} still to do.`].join(" ");
}
