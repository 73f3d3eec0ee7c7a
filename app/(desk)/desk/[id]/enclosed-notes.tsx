"use client";
import { useRouter } from "next/navigation";
import { useEffect, useId, useRef, useTransition, type RefObject } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { insteadOf } from "@/lib/enquiry/instead-of-outdated";
import type { DocumentView } from "@/lib/enquiry/views";
import { capital } from "@/lib/words/capital";
import { enclose, makeItAnew } from "./actions";
import css from "./letter-desk.module.css";
import type { useAsItIs } from "./use-as-it-is";

interface Deeds {
  /** Whether the person may change what goes with the letter, and whether they may send it. */
  may: { enclose: boolean; approve: boolean };
  tell: (say: string, focus?: boolean) => void;
}

/**
 * What is to be said of the documents with a letter: which is no longer as it was made, and which a judgement has overtaken, so that it is made anew where it can be, left out,
 * or sent as it is. A refusal leads to the first of those that is open.
 */
export function EnclosedNotes({ enclosed, asItIs: { overtaken, isSent, say }, errors, ...deeds }: Deeds & {
  enclosed: readonly DocumentView[]; asItIs: ReturnType<typeof useAsItIs>;
  /** What was refused last, by its field. */
  errors: Readonly<Record<string, string | undefined>>;
}) {
  const first = useRef<HTMLInputElement>(null);
  useEffect(() => { if (errors["asItIs"]) first.current?.focus(); }, [errors]);
  const open = overtaken.find((d) => !isSent(d));
  return (
    <>
      {enclosed.map((d) => d.altered && <p key={d.id} className={css.stale}><b><bdi>{d.title}</bdi>:</b> {d.altered.why}</p>)}
      {overtaken.map((d) => (
        <One key={d.id} document={d} {...deeds} isSent={isSent(d)} say={(is) => say(d, is)} tick={d === open ? first : null} isRefused={!isSent(d) && errors["asItIs"] !== undefined} />
      ))}
    </>
  );
}

function One({ document: d, may, tell, isSent, say, tick, isRefused }: Deeds & { document: DocumentView; isSent: boolean; say: (is: boolean) => void; tick: RefObject<HTMLInputElement | null> | null; isRefused: boolean }) {
  const id = useId();
  return (
    <div className={`${css.open} no-print`} role="group" aria-labelledby={`${id}-why`}>
      <p id={`${id}-why`}><b><bdi>{d.title}</bdi></b> was made before its rug was judged anew, and would say otherwise now.</p>
      {isRefused && <p className="error" id={`${id}-error`}>{capital(insteadOf(d))}.</p>}
      {may.enclose && <Instead document={d} tell={tell} />}
      {may.approve && (
        <label className={css.tick}>
          <input ref={tick} type="checkbox" checked={isSent} aria-invalid={isRefused || undefined} aria-describedby={isRefused ? `${id}-error` : undefined} onChange={(e) => say(e.target.checked)} />
          <span>Send it as it is: this is kept in the history</span>
        </label>
      )}
    </div>
  );
}

/** What is written in the letter stays on the page meanwhile. */
function Instead({ document: { id, title, canMakeAnew }, tell }: { document: DocumentView; tell: Deeds["tell"] }) {
  const [isBusy, start] = useTransition();
  const router = useRouter();
  const anew = () => start(async () => {
    const made = await reach(() => makeItAnew(id));
    tell(made.ok ? `Made anew: version ${made.value.version} goes with the letter.` : made.say, true);
    router.refresh();
  });
  const leaveOut = () => start(async () => {
    const left = await reach(() => enclose({ documentId: id, isEnclosed: false }));
    tell(left.ok ? "Taken from the letter." : left.say, true);
    router.refresh();
  });
  return (
    <div className={css.instead}>
      {canMakeAnew && <button type="button" className="button quiet" disabled={isBusy} onClick={anew}>{isBusy ? "One moment" : "Make it anew"}<span className="unseen">: {title}</span></button>}
      <button type="button" className="button quiet" disabled={isBusy} onClick={leaveOut}>Leave it out<span className="unseen">: {title}</span></button>
    </div>
  );
}
