"use client";
import { useRouter } from "next/navigation";
import { useEffect, useRef, useState, type ReactNode } from "react";
import { flushSync } from "react-dom";
import type { EnquiryView } from "@/lib/enquiry/views";
import { overlong } from "@/lib/reply/length";
import { openPlacesSay } from "@/lib/reply/open-places";
import { readingOf } from "@/lib/reply/reading";
import { DeskSheet, WritingSheet } from "@/lib/ui/desk-sheet";
import { Enclosed } from "@/lib/ui/enclosed";
import { LengthNote } from "@/lib/ui/length-note";
import { PromiseNotes, SendingReason } from "@/lib/ui/promise-notes";
import { REASON_CHARS } from "@/lib/enquiry/reason-limits";
import type { ChosenTime } from "@/lib/enquiry/send-at";
import { useStayWhile } from "@/lib/ui/use-stay-while";
import { Arrival } from "./arrival";
import { Asked, AskedLook } from "./asked";
import { enclosedOf } from "./enclosed-of";
import { EnclosedNotes } from "./enclosed-notes";
import css from "./letter-desk.module.css";
import { MovedNote } from "./moved-note";
import { OpenPlaces, selectOpenPlace, selectWords } from "./open-place";
import { ReadIt } from "./read-it";
import { SendAt } from "./send-at";
import { useAsItIs } from "./use-as-it-is";
import { useAsked } from "./use-asked";
import { useDraft, type Words } from "./use-draft";
import { useMended } from "./use-mended";
import { usePause } from "./use-pause";
import { usePromises } from "./use-promises";
import { useSending } from "./use-sending";
import { useSwap } from "./use-swap";

/** The reply on its sheet: written, kept, approved. `tell` says what came of it and takes the focus where the person has to be told. */
export function ReplyDesk({ view, draft, to, tomorrow, children, tell, unkept, approved }: {
  view: EnquiryView; draft: NonNullable<EnquiryView["draft"]>; to: ReactNode; tomorrow: ChosenTime; children: ReactNode; tell: (say: string, focus?: boolean) => void;
  /** Told of words that could not be kept, and of none once some were. */
  unkept: (words: Words | null) => void;
  /** Told once the letter is approved, and leaves the desk by that. */
  approved: (say: string) => void;
}) {
  const { words, write, keep, take, isDirty, number, theirs } = useDraft(view.id, draft);
  const promises = usePromises(view, words.text, "reply");
  const [longReason, setLongReason] = useState("");
  // Said of what stood on the page then: what comes later has to be read too.
  const [readOf, setReadOf] = useState<string | null>(null);
  const isRead = view.heard !== null && readOf === view.heard;
  const asked = useAsked(view.asked, words.text);
  const field = useRef<HTMLTextAreaElement>(null);
  const router = useRouter();
  useStayWhile(isDirty);

  const refused = ({ say, isConflict }: { say: string; isConflict: boolean }, focus = true) => {
    tell(say, focus);
    if (isConflict) router.refresh();
  };
  const notKept = (why: { say: string; isConflict: boolean }, focus = true) => {
    unkept(words);
    refused(why, focus);
  };
  /** `isTyping`: whoever goes on typing is not led away from the field. */
  const settle = async (isTyping = false) => {
    const kept = await keep();
    if (!("number" in kept)) return notKept(kept, !isTyping);
    unkept(null);
    tell("Kept.");
    if (!isTyping) router.refresh();
  };
  usePause({ typed: words, from: number, isNeeded: isDirty && theirs === null }, () => void settle(true));
  const { swap, back } = useSwap({ words, write, settle: () => void settle() });
  const over = overlong(words.text, view.rugs.length);
  const enclosed = enclosedOf(view);
  const asItIs = useAsItIs(enclosed);
  const reasons = { ...(promises.found.length > 0 ? { reason: promises.reason } : {}), ...(longReason && over ? { longReason } : {}) };
  const { send, isSending, errors, settled } = useSending({ enquiryId: view.id, seen: { documents: enclosed.map((d) => d.id), heard: view.heard }, reasons: { ...reasons, ...(isRead ? { read: true } : {}), ...(asked.isLooked ? { asked: asked.open } : {}), ...(asItIs.sent.length > 0 ? { asItIs: asItIs.sent } : {}) }, keep, kept: () => unkept(null), notKept, refused, tell, approved: (isHeldLonger) => approved(approvedSay(view.client.email !== null, isHeldLonger)) });
  useMended(errors["reason"] !== undefined && promises.found.length === 0, () => { settled(); tell(""); });
  const toOpenPlace = () => selectOpenPlace(field.current, words.text);
  const sendUnlessOpen = (sendAt: ChosenTime | null) => {
    const open = openPlacesSay(words.text);
    if (!open) return send(sendAt);
    tell(open);
    toOpenPlace();
  };

  const { words: count, grade } = readingOf(words.text);
  const { today } = draft;
  const whole = view.may.edit && today?.whole && today.whole.text !== words.text ? today.whole : null;
  return (
    <>
      {theirs && <Theirs theirs={theirs} to={to} mine={() => take(theirs)} take={() => { take(theirs); write(theirs); }} />}
      {view.asked && <Asked asked={view.asked} text={words.text} />}
      {today && !theirs && (
        <MovedNote enquiryId={view.id} today={today} words={words} mayEdit={view.may.edit} keep={keep} swap={swap} refused={refused}
          stood={(number) => { take({ ...words, number }); tell("Looked at. The letter stays as it is written.", true); router.refresh(); }} />
      )}
      <WritingSheet to={to} label="reply" subject={words.subject} text={words.text} describedBy="reply-state" readOnly={!view.may.edit} field={field}
        onSubject={(subject) => write({ ...words, subject })} onText={(text) => write({ ...words, text })} onLeave={() => { if (isDirty) void settle(); }} />
      <p id="reply-state" className={`small num ${css.state}`}>
        {count} words, reading grade {Math.round(grade)}. {isDirty ? "Not kept yet." : `Version ${number}, by ${number > draft.number || draft.isByYou ? "you" : draft.by}.`}
      </p>
      <OpenPlaces text={words.text} write={toOpenPlace} />
      {over && <LengthNote over={over} rugs={view.rugs.length} value={longReason} most={REASON_CHARS.most} write={view.may.approve ? setLongReason : null} error={errors["longReason"] ?? null} />}
      <Enclosed enclosures={enclosed} />
      <EnclosedNotes enclosed={enclosed} asItIs={asItIs} may={view.may} tell={tell} errors={errors} />
      <PromiseNotes found={promises.found} unjudged={promises.unjudged} written={view.may.edit ? { text: words.text, write: (text, instead) => { flushSync(() => write({ ...words, text })); selectWords(field.current, text, instead); } } : null}>
        {view.may.approve && <SendingReason value={promises.reason} most={REASON_CHARS.most} write={promises.write} error={errors["reason"] ?? null} />}
      </PromiseNotes>
      {view.may.approve && <ReadIt name={view.client.name} messages={view.wordsWithoutPlace} others={view.otherWordsWithoutPlace} isRead={isRead} say={(is) => setReadOf(is ? view.heard : null)} error={isRead ? null : (errors["read"] ?? null)} />}
      {view.may.approve && <AskedLook {...asked} errors={errors} />}
      <noscript><p className="small">Writing and sending here need JavaScript.</p></noscript>
      <div className={`${css.bar} ${css.stays} no-print`}>
        {view.may.approve && <button type="button" className="button" onClick={() => sendUnlessOpen(null)} disabled={isSending || theirs !== null}>{isSending ? "One moment" : "Approve and send"}</button>}
        {children}
      </div>
      <Swaps whole={whole && (() => swap(whole))} back={back} />
      <Arrival view={view} kind="reply" words={words} enclosures={enclosed} tell={tell} />
      {view.may.approve && <SendAt first={tomorrow} error={errors["sendAt"] ?? null} isBusy={isSending || theirs !== null} send={sendUnlessOpen} />}
    </>
  );
}

/** To the whole letter instead of the one that only follows, and back. */
function Swaps({ whole, back }: { whole: (() => void) | null; back: (() => void) | null }) {
  if (!whole && !back) return null;
  return (
    <div className={`${css.bar} no-print`}>
      {whole && <button type="button" className="button quiet" onClick={whole}>Begin from the whole letter</button>}
      {back && <button type="button" className="button quiet" onClick={back}>Back to what stood here</button>}
    </div>
  );
}

function approvedSay(hasAddress: boolean, isHeldLonger: boolean): string {
  if (!hasAddress) return "Approved. Ring them, and read it out: it stays your turn until then.";
  return isHeldLonger ? "Approved. The time you chose comes before the end of the holding: it leaves as soon as that is over." : "Approved.";
}

/** Another version was kept while this one was being written: both are shown, nothing is lost, the person chooses. */
function Theirs({ theirs, to, mine, take }: { theirs: NonNullable<EnquiryView["draft"]>; to: ReactNode; mine: () => void; take: () => void }) {
  return (
    <div className={css.theirs} role="group" aria-label="Another version">
      <p><b>{theirs.isByYou ? "You kept another version in another window." : `${theirs.by} kept another version while you were writing.`}</b> {theirs.isByYou ? "What you wrote here" : "Yours"} is below, as you left it.</p>
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
