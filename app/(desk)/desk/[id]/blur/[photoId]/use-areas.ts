"use client";
import { useRef, useState, type KeyboardEvent, type PointerEvent } from "react";
import { areaBetween, moved, resized, type Area } from "@/lib/photo/area";

/** Shares of the picture one press of an arrow key moves by, and with Alt. */
const STEP = { usual: 0.02, fine: 0.002 } as const;
const ARROWS: Readonly<Record<string, readonly [right: number, down: number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
/** Where an area begins that is added without pointing at a place. */
const MIDDLE: Area = { left: 0.4, top: 0.4, width: 0.2, height: 0.2 };

interface Drag { at: number; from: { x: number; y: number }; was: Area | null }

/** The areas marked in a picture: drawn or moved by pointer, moved and sized by arrow keys, or typed as figures. */
export function useAreas() {
  const [areas, setAreas] = useState<readonly Area[]>([]);
  const drag = useRef<Drag | null>(null);
  const set = (at: number, to: (area: Area) => Area) => setAreas((all) => all.map((a, i) => (i === at ? to(a) : a)));

  const placeOf = (event: PointerEvent<HTMLElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    return { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
  };
  const picture = {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      if (event.button !== 0) return;
      const from = placeOf(event), on = (event.target as HTMLElement).dataset["area"];
      event.currentTarget.setPointerCapture(event.pointerId);
      drag.current = { at: on === undefined ? areas.length : Number(on), from, was: on === undefined ? null : (areas[Number(on)] ?? null) };
      if (on === undefined) setAreas([...areas, areaBetween(from, from)]);
    },
    onPointerMove(event: PointerEvent<HTMLElement>) {
      const now = placeOf(event), held = drag.current;
      if (!held) return;
      const { was, from } = held;
      set(held.at, () => (was ? moved(was, now.x - from.x, now.y - from.y) : areaBetween(from, now)));
    },
    onPointerUp: () => { drag.current = null; },
    onPointerCancel: () => { drag.current = null; },
  };
  const onKey = (at: number) => (event: KeyboardEvent) => {
    const [right, down] = ARROWS[event.key] ?? [];
    if (right === undefined || down === undefined) return;
    event.preventDefault();
    const step = event.altKey ? STEP.fine : STEP.usual;
    set(at, (area) => (event.shiftKey ? resized : moved)(area, right * step, down * step));
  };
  return {
    areas, picture, onKey, set,
    add: () => setAreas((all) => [...all, MIDDLE]),
    takeAway: (at: number) => setAreas((all) => all.filter((_, i) => i !== at)),
  };
}
