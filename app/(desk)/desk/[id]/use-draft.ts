"use client";
import { useCallback, useEffect, useEffectEvent, useRef, useState } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnquiryView } from "@/lib/enquiry/views";
import { keepDraft } from "./keep-draft";
import { holdTyped, typedBefore, type Typed } from "./typed";

type Draft = NonNullable<EnquiryView["draft"]>;
/** The number of the newest revision, or why what is written was not kept. */
export type Kept = { number: number } | { say: string; isConflict: boolean };
export type Words = { subject: string; text: string };
type Version = Words & { number: number };
const same = (a: Words, b: Words): boolean => a.subject === b.subject && a.text === b.text;
const versionOf = ({ number, subject, text }: Version): Version => ({ number, subject, text });

/**
 * The reply while it is written. `keep` sends what is written; each time it names the revision it started from. Where another
 * version was kept meanwhile, `theirs` holds it and what was typed here stays until the person has chosen; words of this very
 * window that arrived without its knowing (it was read anew while they were on their way) are no other version. What was typed
 * and not kept stands here again after the page was read anew.
 */
export function useDraft(enquiryId: string, draft: Draft) {
  const [words, setWords] = useState<Words>({ subject: draft.subject, text: draft.text });
  const [kept, setKept] = useState(versionOf(draft));
  // Sent from the version `kept`, and not known to have arrived.
  const [sent, setSent] = useState<Words[]>([]);
  const now = useRef({ words, kept });
  const inFlight = useRef<Promise<unknown>>(Promise.resolve());

  // Handlers that run after an await read what stands now, not what stood when they were made.
  useEffect(() => {
    now.current = { words, kept };
  });

  const write = useCallback((next: Words) => {
    now.current.words = next;
    setWords(next);
  }, []);
  const take = useCallback((next: Version) => {
    now.current.kept = next;
    setKept(next);
    setSent([]);
  }, []);

  /** Keeps what is written, one request after the other. The number of the newest revision, or why it was not kept. */
  const keep = useCallback((): Promise<Kept> => {
    const attempt = async () => {
      const { words: mine, kept: last } = now.current;
      if (same(mine, last)) return { number: last.number };
      setSent((before) => [...before, mine]);
      const result = await reach(() => keepDraft({ enquiryId, from: last.number, ...mine }));
      if (!result.ok) return { say: result.say, isConflict: result.code === "changed-meanwhile" };
      take({ ...mine, number: result.value.number });
      return { number: result.value.number };
    };
    const next = inFlight.current.then(attempt);
    inFlight.current = next;
    return next;
  }, [enquiryId, take]);

  const isDirty = !same(words, kept);
  const isBehind = draft.number > kept.number;
  const isOwn = sent.some((s) => same(s, draft));
  if (isBehind && (!isDirty || isOwn)) {
    // Nothing typed here is at stake: follow the newer version at once.
    setKept(versionOf(draft));
    setSent([]);
    if (!isDirty) setWords({ subject: draft.subject, text: draft.text });
  }

  const resume = useEffectEvent((typed: Typed) => {
    setKept(typed.kept);
    setSent(typed.sent);
    write(typed.words);
  });
  const again = useEffectEvent(() => {
    const typed = typedBefore(enquiryId);
    if (typed && !same(typed.words, draft)) queueMicrotask(() => resume(typed));
  });
  // Read before the next effect takes away what is held.
  useEffect(() => again(), []);
  useEffect(() => holdTyped(enquiryId, isDirty ? { words, kept, sent } : null), [enquiryId, isDirty, words, kept, sent]);
  const leave = useEffectEvent(() => {
    if (!isDirty) return;
    holdTyped(enquiryId, { words, kept, sent: [...sent, words] });
    void reach(() => keepDraft({ enquiryId, from: kept.number, ...words }));
  });
  useEffect(() => {
    const leaving = () => leave();
    window.addEventListener("pagehide", leaving);
    return () => window.removeEventListener("pagehide", leaving);
  }, []);
  return { words, write, keep, take, isDirty, number: kept.number, theirs: isBehind && isDirty && !isOwn ? draft : null };
}
