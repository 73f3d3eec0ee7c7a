"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { EnquiryView } from "@/lib/enquiry/views";
import { save } from "./actions";

type Draft = NonNullable<EnquiryView["draft"]>;
/** The number of the newest revision, or why what is written was not kept. */
export type Kept = { number: number } | { say: string; isConflict: boolean };
export type Words = { subject: string; text: string };
const same = (a: Words, b: Words): boolean => a.subject === b.subject && a.text === b.text;

/**
 * The reply while it is written. Edits are kept when the field is left and before anything is sent; each names the
 * revision it started from. Where somebody else kept another version meanwhile, `theirs` holds it and what was typed
 * here stays until the person has chosen.
 */
export function useDraft(enquiryId: string, draft: Draft) {
  const [words, setWords] = useState<Words>({ subject: draft.subject, text: draft.text });
  const [kept, setKept] = useState({ number: draft.number, subject: draft.subject, text: draft.text });
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
  const take = useCallback((next: Words & { number: number }) => {
    now.current.kept = next;
    setKept(next);
  }, []);

  /** Keeps what is written, one request after the other. The number of the newest revision, or why it was not kept. */
  const keep = useCallback((): Promise<Kept> => {
    const attempt = async () => {
      const { words: mine, kept: last } = now.current;
      if (same(mine, last)) return { number: last.number };
      const result = await reach(() => save({ enquiryId, from: last.number, ...mine }));
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
  if (isBehind && !isDirty) {
    // Nothing typed here is at stake: follow the newer version at once.
    const newer = { number: draft.number, subject: draft.subject, text: draft.text };
    setKept(newer);
    setWords(newer);
  }
  return { words, write, keep, take, isDirty, theirs: isBehind && isDirty ? draft : null };
}
