"use client";
import { useRouter } from "next/navigation";
import { useEffect, useState, useTransition, type ReactNode } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnquiryView } from "@/lib/enquiry/views";
import { overlong } from "@/lib/reply/length";
import { readingOf } from "@/lib/reply/reading";
import { DeskSheet, WritingSheet } from "@/lib/ui/desk-sheet";
import { Enclosed } from "@/lib/ui/enclosed";
import { LengthNote } from "@/lib/ui/length-note";
import { PromiseNotes, SendingReason } from "@/lib/ui/promise-notes";
import { REASON_CHARS } from "@/lib/enquiry/reason-limits";
import type { ChosenTime } from "@/lib/enquiry/send-at";
import { useStayWhile } from "@/lib/ui/use-stay-while";
import { approve } from "./actions";
import { Arrival } from "./arrival";
import { enclosedOf } from "./enclosed-of";
import css from "./letter-desk.module.css";
import { SendAt } from "./send-at";
import { useDraft, type Words } from "./use-draft";
import { usePromises } from "./use-promises";

export const WAITS = "Approved. It waits for a second person to read it before it leaves.";

/** The reply on its sheet: written, kept, approved. `tell` says what came of it and takes the focus where the person has to be told. */
export function ReplyDesk({ view, draft, to, tomorrow, children, tell, unkept }: {
  view: EnquiryView; draft: NonNullable<EnquiryView["draft"]>; to: ReactNode; tomorrow: ChosenTime; children: ReactNode; tell: (say: string, focus?: boolean) => void;
  /** Told of words that could not be kept, and of none once some were. */
  unkept: (words: Words | null) => void;
}) {
  const { words, write, keep, take, isDirty, theirs } = useDraft(view.id, draft);
  const promises = usePromises(view, words.text, "reply");
  const [missing, setMissing] = useState<string | null>(null);
  const [longReason, setLongReason] = useState("");
  const [refusedLength, setRefusedLength] = useState<string | null>(null);
  const [isSending, start] = useTransition();
  const router = useRouter();
  useStayWhile(isDirty);

  const onLeave = async () => {
    if (!isDirty) return;
    const kept = await keep();
    if (!("number" in kept)) return notKept(kept);
    unkept(null);
    tell("Kept.");
  };
  const over = overlong(words.text, view.rugs.length);
  const refused = ({ say, isConflict }: { say: string; isConflict: boolean }) => {
    tell(say, true);
    if (isConflict) router.refresh();
  };
  const notKept = (why: { say: string; isConflict: boolean }) => {
    unkept(words);
    refused(why);
  };
  const enclosed = enclosedOf(view);
  const [refusedTime, setRefusedTime] = useState<string | null>(null);
  const send = (sendAt: ChosenTime | null) => start(async () => {
    const kept = await keep();
    if (!("number" in kept)) return notKept(kept);
    unkept(null);
    const result = await reach(() => approve({ enquiryId: view.id, number: kept.number, sendAt, documents: enclosed.map((d) => d.id), ...(promises.found.length > 0 ? { reason: promises.reason } : {}), ...(longReason && over ? { longReason } : {}) }));
    setMissing(result.ok ? null : (result.fields?.["reason"] ?? null));
    setRefusedLength(result.ok ? null : (result.fields?.["longReason"] ?? null));
    setRefusedTime(result.ok ? null : (result.fields?.["sendAt"] ?? null));
    if (!result.ok) return refused({ say: result.say, isConflict: result.code === "changed-meanwhile" });
    tell(result.value.waitsForSecond ? WAITS : "Approved.", true);
    router.refresh();
  });

  const { words: count, grade } = readingOf(words.text);
  return (
    <>
      {theirs && <Theirs theirs={theirs} to={to} mine={() => take(theirs)} take={() => { take(theirs); write(theirs); }} />}
      <WritingSheet to={to} label="reply" subject={words.subject} text={words.text} describedBy="reply-state" readOnly={!view.may.edit}
        onSubject={(subject) => write({ ...words, subject })} onText={(text) => write({ ...words, text })} onLeave={onLeave} />
      <p id="reply-state" className={`small num ${css.state}`}>
        {count} words, reading grade {Math.round(grade)}. {isDirty ? "Not kept yet." : `Version ${draft.number}, by ${draft.by}.`}
      </p>
      {over && <LengthNote over={over} rugs={view.rugs.length} value={longReason} most={REASON_CHARS.most} write={view.may.approve ? setLongReason : null} error={refusedLength} />}
      <Enclosed enclosures={enclosed} />
      <PromiseNotes found={promises.found}>
        {view.may.approve && <SendingReason value={promises.reason} most={REASON_CHARS.most} write={promises.write} error={missing} />}
      </PromiseNotes>
      <noscript><p className="small">Writing and sending here need JavaScript.</p></noscript>
      <div className={`${css.bar} no-print`}>
        {view.may.approve && <button type="button" className="button" onClick={() => send(null)} disabled={isSending || theirs !== null}>{isSending ? "One moment" : "Approve and send"}</button>}
        {children}
      </div>
      <Arrival view={view} kind="reply" words={words} to={to} enclosures={enclosed} tell={tell} />
      {view.may.approve && <SendAt first={tomorrow} error={refusedTime} isBusy={isSending || theirs !== null} send={send} />}
    </>
  );
}

/** Somebody else kept another version while this one was being written: both are shown, nothing is lost, the person chooses. */
function Theirs({ theirs, to, mine, take }: { theirs: NonNullable<EnquiryView["draft"]>; to: ReactNode; mine: () => void; take: () => void }) {
  return (
    <div className={css.theirs} role="group" aria-label="Another version">
      <p><b>{theirs.by} kept another version while you were writing.</b> Yours is below, as you left it.</p>
      <details><summary>Read the other version</summary><DeskSheet to={to} subject={theirs.subject} text={theirs.text} label="The other version" /></details>
      <div className={css.bar}>
        <button type="button" className="button quiet" onClick={mine}>Go on with mine</button>
        <button type="button" className="button quiet" onClick={take}>Take the other</button>
      </div>
    </div>
  );
}

/** Fires `then` once when an instant has passed; never when it already had. */
export function useOnceAt(instant: string | null, then: () => void) {
  const [served, setServed] = useState<string | null>(null);
  useEffect(() => {
    if (!instant || served === instant) return;
    const ms = Date.parse(instant) - Date.now();
    if (ms <= 0) return;
    const timer = setTimeout(() => { setServed(instant); then(); }, Math.min(ms, 2 ** 31 - 1));
    return () => clearTimeout(timer);
  }, [instant, served, then]);
}
