"use client";
import { useState } from "react";
import type { Words } from "./use-draft";

/** Puts other words in place of what is written, all at once, and back; nothing that was written is lost by it. */
export function useSwap({ words, write, settle }: { words: Words; write: (next: Words) => void; /** Keeps what is written now. */ settle: () => void }) {
  const [before, setBefore] = useState<Words | null>(null);
  const put = (next: Words, last: Words | null) => {
    setBefore(last);
    write(next);
    settle();
  };
  return { swap: (next: Words) => put(next, words), back: before && (() => put(before, null)) };
}
