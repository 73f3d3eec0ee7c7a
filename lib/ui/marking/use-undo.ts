"use client";
import { useState } from "react";

interface Past<T> { now: T; before: readonly T[] }
/** So many steps can be taken back. Elicited. */
const STEPS = 100;

/** A value whose changes can be taken back. `begin` marks where a drag starts: the whole drag is one step. */
export function useUndo<T>(initial: T) {
  const [past, setPast] = useState<Past<T>>({ now: initial, before: [] });
  const begin = () => setPast((p) => ({ now: p.now, before: [...p.before, p.now].slice(-STEPS) }));
  /** Changes without a step of its own. */
  const adjust = (to: (now: T) => T) => setPast((p) => ({ ...p, now: to(p.now) }));
  const change = (to: (now: T) => T) => setPast((p) => ({ now: to(p.now), before: [...p.before, p.now].slice(-STEPS) }));
  const undo = () => setPast((p) => ({ now: p.before.at(-1) ?? p.now, before: p.before.slice(0, -1) }));
  const restart = (value: T) => setPast({ now: value, before: [] });
  return { value: past.now, canUndo: past.before.length > 0, begin, adjust, change, undo, restart };
}
