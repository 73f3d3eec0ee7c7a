"use client";
import { useDeferredValue, useMemo, useState } from "react";
import type { EnquiryView } from "@/lib/enquiry/views";
import { checkLetter, checkSentences, knownOf, type Overpromise } from "@/lib/reply/promises/check";

/** The same check that the server makes when the letter is sent, while it is written. */
export function usePromises(view: Pick<EnquiryView, "rugs">, text: string, kind: "reply" | "question"): { found: readonly Overpromise[]; reason: string; write: (reason: string) => void } {
  const [reason, write] = useState("");
  const settled = useDeferredValue(text);
  const { rugs } = view;
  const found = useMemo(() => (kind === "reply" ? checkLetter : checkSentences)(settled, knownOf(rugs)), [settled, rugs, kind]);
  return { found, reason, write };
}
