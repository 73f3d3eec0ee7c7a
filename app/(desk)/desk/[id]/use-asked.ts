"use client";
import { useState } from "react";
import { openQuestions, type AskedOfUs } from "@/lib/reply/questions-asked";

/** What the client asked and the letter, as it is written here, does not plainly answer; and whether the person says that they have read just that. */
export function useAsked(asked: AskedOfUs | null, text: string) {
  const [looked, setLooked] = useState<readonly string[]>([]);
  const open = asked ? openQuestions(asked, text) : [];
  return { open, isLooked: open.length > 0 && open.every((q) => looked.includes(q)), look: (is: boolean) => setLooked(is ? open : []) };
}
