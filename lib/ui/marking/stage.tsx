"use client";
import { useEffect, useRef, useState, type KeyboardEvent, type PointerEvent, type ReactNode } from "react";
import type { Point } from "../../photo/homography";
import { useSay } from "../browser-words";
import { held, keyTarget, placeInWords, type Handle } from "./handle";
import { Loupe } from "./loupe";
import css from "./stage.module.css";

interface Props {
  photo: { id: string; width: number; height: number };
  /** What the photo shows, and what is to be done with it. */
  alt: string;
  describedBy: string;
  handles: readonly Handle[];
  /** The handle that a touch of the photo moves. */
  active: string | null;
  onActive: (key: string) => void;
  /** `isBegun`: the first of a drag, or a step of its own. */
  onMove: (key: string, to: Point, isBegun: boolean) => void;
  /** The photo itself was touched. */
  onTouch: (at: Point) => void;
  onRemove?: (key: string) => void;
  onUndo: () => void;
  onPicture?: (image: HTMLImageElement) => void;
  /** Drawn over the photo, in its pixels. */
  children: ReactNode;
}

/** Pixels of the screen within which a touch is a tap, and not a drag or a scroll. Elicited. */
const TAP_PX = 8;

/** A photo with places on it that are moved by finger, mouse and keyboard. A touch of the photo brings the active place there. */
export function Stage({ photo, alt, describedBy, handles, active, onActive, onMove, onTouch, onRemove, onUndo, onPicture, children }: Props) {
  const say = useSay();
  const box = useRef<HTMLDivElement>(null);
  const image = useRef<HTMLImageElement>(null);
  const pressed = useRef<{ x: number; y: number } | null>(null);
  const [dragged, setDragged] = useState<string | null>(null);
  const given = useRef(false);
  const give = () => {
    if (given.current || !image.current?.complete || image.current.naturalWidth === 0) return;
    given.current = true;
    onPicture?.(image.current);
  };
  // A picture may have come before its listener did.
  useEffect(give);
  const at = (e: PointerEvent): Point => {
    const { left, top, width, height } = (box.current as HTMLDivElement).getBoundingClientRect();
    return { x: held((e.clientX - left) / width), y: held((e.clientY - top) / height) };
  };
  const tap = (e: PointerEvent) => {
    const from = pressed.current;
    pressed.current = null;
    if (from && e.button === 0 && Math.hypot(e.clientX - from.x, e.clientY - from.y) < TAP_PX) onTouch(at(e));
  };
  const grip = (h: Handle) => ({
    onPointerDown: (e: PointerEvent<HTMLButtonElement>) => {
      if (e.button !== 0) return;
      e.stopPropagation();
      e.currentTarget.setPointerCapture(e.pointerId);
      onActive(h.key);
      // One that waits is wider than a corner is exact: it comes to where it was touched.
      onMove(h.key, h.isWaiting ? at(e) : h, true);
      setDragged(h.key);
    },
    onPointerMove: (e: PointerEvent) => { if (dragged === h.key) onMove(h.key, at(e), false); },
    onLostPointerCapture: () => setDragged(null),
    onFocus: () => onActive(h.key),
    onKeyDown: (e: KeyboardEvent) => {
      const to = keyTarget(h, e.key, e.shiftKey);
      if (to) { e.preventDefault(); onMove(h.key, to, true); }
      if (h.canGo && (e.key === "Delete" || e.key === "Backspace")) { e.preventDefault(); onRemove?.(h.key); }
      if ((e.ctrlKey || e.metaKey) && e.key === "z") { e.preventDefault(); onUndo(); }
    },
  });
  const shown = handles.find((h) => h.key === dragged);
  return (
    <div ref={box} className={css.stage} role="group" aria-label={alt} aria-describedby={describedBy} style={{ aspectRatio: `${photo.width} / ${photo.height}`, ["--ratio" as string]: photo.width / photo.height }}
      onPointerDown={(e) => { pressed.current = { x: e.clientX, y: e.clientY }; }} onPointerUp={tap} onPointerCancel={() => { pressed.current = null; }}>
      <img ref={image} src={`/photos/${photo.id}/1600`} alt={alt} width={photo.width} height={photo.height} draggable={false} onLoad={give} />
      <svg className={css.drawn} viewBox={`0 0 ${photo.width} ${photo.height}`} aria-hidden="true" focusable="false">{children}</svg>
      {handles.map((h) => (
        <button key={h.key} type="button" className={css.handle} data-waiting={h.isWaiting || undefined} data-active={h.key === active || undefined} data-grip={h.tag === null || undefined}
          style={{ left: `${100 * h.x}%`, top: `${100 * h.y}%` }} aria-label={say("mark.named-place", { name: h.name, place: placeInWords(h, say) })} aria-roledescription={say("mark.role")} {...grip(h)}>
          {h.tag !== null && <span className={css.tag} data-low={h.y < 0.12 || undefined} aria-hidden="true">{h.tag}</span>}
        </button>
      ))}
      {shown && <Loupe image={image} at={shown} />}
    </div>
  );
}
