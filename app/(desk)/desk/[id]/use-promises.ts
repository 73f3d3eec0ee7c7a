"use client";
import { useDeferredValue, useMemo, useState } from "react";
import type { EnquiryView } from "@/lib/enquiry/views";
import { checkLetter, checkSentences, knownOf, type Overpromise } from "@/lib/reply/promises/check";
import { quotedNote } from "@/lib/reply/promises/unjudged";

/** What the check says of a letter, and the reason for sending it all the same. `unjudged`: that some of it was left out; null where nothing was. */
interface Promises { found: readonly Overpromise[]; unjudged: string | null; reason: string; write: (reason: string) => void }

/** The same check that the server makes when the letter is sent, while it is written. */
export function usePromises(view: Pick<EnquiryView, "rugs">, text: string, kind: "reply" | "question"): Promises {
  const [reason, write] = useState("");
  const settled = useDeferredValue(text);
  const { rugs } = view;
  const found = useMemo(() => (kind === "reply" ? checkLetter : checkSentences)(settled, knownOf(rugs)), [settled, rugs, kind]);
  return { found, unjudged: quotedNote(settled), reason, write };
}
