"use client";
import { useState } from "react";
import type { DocumentView } from "@/lib/enquiry/views";

/** A document and the judgement that overtook it: said of one judgement, it is not said of the next. */
const nameOf = (d: DocumentView): string => `${d.id} ${d.judgedSince ?? ""}`;

/** Which documents with the letter were overtaken by a judgement, and of which of them the person says that they go as they are. */
export function useAsItIs(enclosed: readonly DocumentView[]) {
  const [said, setSaid] = useState<readonly string[]>([]);
  const overtaken = enclosed.filter((d) => d.judgedSince !== null);
  const isSent = (d: DocumentView) => said.includes(nameOf(d));
  return {
    overtaken, isSent,
    say: (d: DocumentView, is: boolean) => setSaid((before) => (is ? [...before, nameOf(d)] : before.filter((name) => name !== nameOf(d)))),
    sent: overtaken.filter(isSent).map((d) => ({ documentId: d.id, judgedAt: d.judgedSince ?? "" })),
  };
}
