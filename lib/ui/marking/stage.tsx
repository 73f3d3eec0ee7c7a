"use client";
import { useEffect, useRef, useState, type KeyboardEvent, type PointerEvent, type ReactNode } from "react";
import type { Point } from "../../photo/homography";
import { useSay } from "../browser-words";
import { heldPoint, keyTarget, placeInWords, type Handle } from "./handle";
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
/** How far outside of a corner its grip stands, how far at least from the middle, so that two fingertips have room, and at most beyond the photo. By eye. */
const [OUTSIDE_PX, APART_PX, BEYOND_PX] = [12, 32, 8];

/** Where a handle is drawn along one side; `outside`: the share of the photo that it is the end of. */
const placed = (at: number, outside: number | undefined): string =>
  (outside === undefined ? `${100 * at}%` : `min(max(${100 * at}% + ${OUTSIDE_PX}px, ${100 * (at - outside / 2)}% + ${APART_PX}px), 100% + ${BEYOND_PX}px)`);

/** Share of the photo's height that a tag above a handle takes. By eye. */
const TAG_ROOM = 0.12;
/** A tag stands above its handle where there is room; one that makes way for another stands on the other side. */
const isLow = ({ y, isTagBelow = false }: Handle): boolean => isTagBelow !== (y < TAG_ROOM);

/** A photo with places on it that are moved by finger, mouse and keyboard. A touch of the photo brings the active place there. */
export function Stage({ photo, alt, describedBy, handles, active, onActive, onMove, onTouch, onRemove, onUndo, onPicture, children }: Props) {
  const say = useSay();
  const box = useRef<HTMLDivElement>(null);
  const image = useRef<HTMLImageElement>(null);
  const pressed = useRef<{ x: number; y: number } | null>(null);
  const [dragged, setDragged] = useState<string | null>(null);
  /** From the place of what is dragged to the finger. */
  const grabbed = useRef<Point>({ x: 0, y: 0 });
  const given = useRef(false);
  const give = () => {
    if (given.current || !image.current?.complete || image.current.naturalWidth === 0) return;
    given.current = true;
    onPicture?.(image.current);
  };
  // A picture may have come before its listener did.
  useEffect(give);
  const under = (e: PointerEvent): Point => {
    const { left, top, width, height } = (box.current as HTMLDivElement).getBoundingClientRect();
    return { x: (e.clientX - left) / width, y: (e.clientY - top) / height };
  };
  const at = (e: PointerEvent): Point => heldPoint(under(e));
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
      const finger = h.isWaiting ? at(e) : under(e);
      const place = h.isWaiting ? finger : h;
      grabbed.current = { x: finger.x - place.x, y: finger.y - place.y };
      onMove(h.key, place, true);
      setDragged(h.key);
    },
    onPointerMove: (e: PointerEvent) => { if (dragged === h.key) onMove(h.key, heldPoint({ x: under(e).x - grabbed.current.x, y: under(e).y - grabbed.current.y }), false); },
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
        <button key={h.key} type="button" className={css.handle} data-waiting={h.isWaiting || undefined} data-active={h.key === active || undefined} data-grip={h.tag === null || undefined} data-bare={h.isBare || undefined}
          style={{ left: placed(h.x, h.outside?.width), top: placed(h.y, h.outside?.height) }} aria-label={say("mark.named-place", { name: h.name, place: placeInWords(h, say) })} aria-roledescription={say("mark.role")} {...grip(h)}>
          {h.tag !== null && <span className={css.tag} data-low={isLow(h) || undefined} aria-hidden="true">{h.tag}</span>}
        </button>
      ))}
      {shown && <Loupe image={image} at={shown} />}
    </div>
  );
}
