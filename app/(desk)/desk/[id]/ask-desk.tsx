"use client";
import { useRouter } from "next/navigation";
import { useEffect, useRef, useState, useTransition, type ReactNode } from "react";
import { flushSync } from "react-dom";
import { reach } from "@/app/(desk)/_parts/reach";
import { readingOf } from "@/lib/reply/reading";
import { WritingSheet } from "@/lib/ui/desk-sheet";
import { selectWords } from "./open-place";
import { PromiseNotes, SendingReason } from "@/lib/ui/promise-notes";
import { REASON_CHARS } from "@/lib/enquiry/reason-limits";
import type { EnquiryView } from "@/lib/enquiry/views";
import { ask } from "./actions";
import { Arrival } from "./arrival";
import { Asked } from "./asked";
import css from "./letter-desk.module.css";
import { useMended } from "./use-mended";
import { usePromises } from "./use-promises";
import { WAITS } from "./use-sending";

/** A question to the client on a sheet of its own. The reply stays where it was, untouched. */
export function AskDesk({ view, begin, to, done, back, tell }: {
  view: Pick<EnquiryView, "id" | "rugs" | "sender" | "heard" | "client" | "asked">; begin: { subject: string; text: string }; to: ReactNode;
  done: (say: string) => void; back: () => void; tell: (say: string, focus?: boolean) => void;
}) {
  const [subject, setSubject] = useState(begin.subject);
  const [text, setText] = useState(begin.text);
  const promises = usePromises(view, text, "question");
  const [missing, setMissing] = useState<string | null>(null);
  const [isSending, start] = useTransition();
  const router = useRouter();
  const head = useRef<HTMLHeadingElement>(null);
  const field = useRef<HTMLTextAreaElement>(null);
  useEffect(() => head.current?.focus(), []);
  useMended(missing !== null && promises.found.length === 0, () => { setMissing(null); tell(""); });
  const send = () => start(async () => {
    const result = await reach(() => ask({ enquiryId: view.id, subject, text, heard: view.heard, ...(promises.found.length > 0 ? { reason: promises.reason } : {}) }));
    setMissing(result.ok ? null : (result.fields?.["reason"] ?? null));
    if (!result.ok) {
      if (result.code === "changed-meanwhile") router.refresh();
      return tell(result.say, true);
    }
    done(result.value.waitsForSecond ? WAITS : view.client.email ? "Approved. It is their turn now." : "Approved. Ring them, and read it out.");
  });
  return (
    <>
      <h3 ref={head} tabIndex={-1} className={css.heading}>Ask for more</h3>
      {view.asked && <Asked asked={view.asked} text={null} />}
      <WritingSheet to={to} label="question" subject={subject} text={text} onSubject={setSubject} onText={setText} describedBy="question-state" field={field} />
      <p id="question-state" className={`small num ${css.state}`}>{readingOf(text).words} words. No judgement in it, only questions.</p>
      <PromiseNotes found={promises.found} unjudged={promises.unjudged} written={{ text, write: (changed, instead) => { flushSync(() => setText(changed)); selectWords(field.current, changed, instead); } }}>
        <SendingReason value={promises.reason} most={REASON_CHARS.most} write={promises.write} error={missing} />
      </PromiseNotes>
      <div className={`${css.bar} ${css.stays} no-print`}>
        <button type="button" className="button" onClick={send} disabled={isSending}>{isSending ? "One moment" : "Send the question"}</button>
        <button type="button" className="button quiet" onClick={back} disabled={isSending}>Back to the reply</button>
      </div>
      <Arrival view={view} kind="question" words={{ subject, text }} enclosures={[]} tell={tell} />
    </>
  );
}
