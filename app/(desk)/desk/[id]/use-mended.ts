"use client";
import { useEffect, useEffectEvent } from "react";

/** Runs once something that was complained of is so no more: what was said of it must not stand beside words that are in order. */
export function useMended(isMended: boolean, then: () => void) {
  const done = useEffectEvent(then);
  useEffect(() => { if (isMended) done(); }, [isMended]);
}
