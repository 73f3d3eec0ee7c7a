"use client";
import { useDeferredValue, useMemo, useState } from "react";
import type { EnquiryView } from "@/lib/enquiry/views";
import { checkLetter, checkSentences, knownOf, type Overpromise } from "@/lib/reply/promises/check";
import { quotedNote } from "@/lib/reply/promises/unjudged";

/** What the check says of a letter, and the reason for sending it all the same. `unjudged`: that some of it was left out; null where nothing was. */
interface Promises { found: readonly Overpromise[]; unjudged: string | null; reason: string; write: (reason: string) => void }

/** Replies that the client has, or will have: what they caution against need not stand again. */
const had = ({ letters = [] }: Partial<Pick<EnquiryView, "letters">>): string[] =>
  letters.filter((l) => l.kind === "reply" && !["taken_back", "failed"].includes(l.state) && !l.isToBeReadOut).map((l) => l.text);

/** The same check that the server makes when the letter is sent, while it is written. */
export function usePromises(view: Pick<EnquiryView, "rugs"> & Partial<Pick<EnquiryView, "letters">>, text: string, kind: "reply" | "question"): Promises {
  const [reason, write] = useState("");
  const settled = useDeferredValue(text);
  const { rugs } = view;
  const before = useMemo(() => had(view), [view]);
  const found = useMemo(() => (kind === "reply" ? checkLetter(settled, knownOf(rugs), before) : checkSentences(settled, knownOf(rugs))), [settled, rugs, before, kind]);
  return { found, unjudged: quotedNote(settled), reason, write };
}
