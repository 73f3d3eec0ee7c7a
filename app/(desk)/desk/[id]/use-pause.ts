"use client";
import { useEffect, useEffectEvent } from "react";

/** How long nothing is typed before it is kept. Elicited. */
const PAUSE_MS = 2_000;

/**
 * Runs `then` once nothing was typed for a moment, and once more after each further pause, or where what was typed goes on from
 * another version meanwhile; not while there is nothing to keep.
 */
export function usePause({ typed, from, isNeeded }: { typed: unknown; from: number; isNeeded: boolean }, then: () => void): void {
  const run = useEffectEvent(then);
  useEffect(() => {
    if (!isNeeded) return;
    const timer = setTimeout(() => run(), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [typed, from, isNeeded]);
}
