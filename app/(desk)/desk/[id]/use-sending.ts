"use client";
import { useRouter } from "next/navigation";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { ChosenTime } from "@/lib/enquiry/send-at";
import { approve } from "./actions";
import type { Kept } from "./use-draft";

export const WAITS = "Approved. It waits for a second person to read it before it leaves.";
type Why = { say: string; isConflict: boolean };
const NONE: Readonly<Record<string, string | undefined>> = {};

/** Approves a reply: keeps it first, then sends it, now or at a time. `errors` names what was refused, by its field. */
export function useSending({ enquiryId, seen, reasons, keep, kept, notKept, refused, tell, approved }: {
  enquiryId: string;
  /** What stands on the page: what goes with it, and what the client did last. */
  seen: { documents: string[]; heard: string | null };
  /** Why it says more than is known, or is long, where it is or does; whether what the client wrote was read, which of their questions were, and which documents go as they are. */
  reasons: { reason?: string; longReason?: string; read?: boolean; asked?: string[]; asItIs?: { documentId: string; judgedAt: string }[] };
  keep: () => Promise<Kept>; kept: () => void; notKept: (why: Why) => void; refused: (why: Why) => void; tell: (say: string, focus?: boolean) => void; approved: (isHeldLonger: boolean) => void;
}) {
  const [errors, setErrors] = useState(NONE);
  const [isSending, start] = useTransition();
  const router = useRouter();
  const send = (sendAt: ChosenTime | null) => start(async () => {
    const now = await keep();
    if (!("number" in now)) return notKept(now);
    kept();
    const result = await reach(() => approve({ enquiryId, number: now.number, sendAt, ...seen, ...reasons }));
    setErrors(result.ok ? NONE : (result.fields ?? NONE));
    // It stands beside the fields of the time, once.
    if (!result.ok && result.fields?.["sendAt"]) return tell("");
    if (!result.ok) return refused({ say: result.say, isConflict: result.code === "changed-meanwhile" });
    if (result.value.waitsForSecond) tell(WAITS, true);
    else approved(result.value.isHeldLonger);
    router.refresh();
  });
  return { send, isSending, errors, settled: () => setErrors(NONE) };
}
