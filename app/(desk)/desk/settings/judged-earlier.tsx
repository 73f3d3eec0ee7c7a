"use client";
import { useRef, useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { judgeOpen } from "./actions";
import tables from "./tables.module.css";

/** Says how many open enquiries still stand on earlier settings, and judges them anew. With none left it keeps what it answered. */
export function JudgedEarlier({ count }: { count: number }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const press = () => start(async () => {
    const done = await reach(judgeOpen);
    setSaid(done.ok ? `${enquiries(done.value.judged)} judged anew.${done.value.left > 0 ? ` ${done.value.left} still wait: press again.` : ""}` : done.say);
    status.current?.focus();
  });
  if (count === 0 && said === "" && !isBusy) return null;
  return (
    <section className={tables.earlier} aria-label="Judged with earlier settings">
      {count > 0 && (
        <>
          <p><strong>{enquiries(count)}, judged with earlier settings.</strong> Their amounts stay in the currency of that day, and their drafts keep it, until they are judged anew. Drafts that nobody has changed are then written anew; please read the others again.</p>
          <button className="button quiet" type="button" onClick={press} disabled={isBusy}>Judge them anew</button>
        </>
      )}
      <p ref={status} role="status" tabIndex={-1} className={tables.said}>{isBusy ? "Judging …" : said}</p>
    </section>
  );
}

const enquiries = (n: number) => (n === 1 ? "One open enquiry" : `${n} open enquiries`);
