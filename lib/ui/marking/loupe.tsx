"use client";
import { useEffect, useRef, type RefObject } from "react";
import type { Point } from "../../photo/homography";
import css from "./stage.module.css";

/** Side in CSS pixels, and how much larger the photo stands in it than on the page. */
const SIDE = 128;
const TIMES = 2.5;
/** Share of the photo’s height above which the glass would leave it. */
const NO_ROOM_ABOVE = 0.35;

/** The photo under the finger, larger and beside it. */
export function Loupe({ image, at }: { image: RefObject<HTMLImageElement | null>; at: Point }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const context = canvas.current?.getContext("2d");
    const photo = image.current;
    if (!context || !photo) return;
    const perPixel = photo.naturalWidth / photo.clientWidth;
    const taken = (SIDE / TIMES) * perPixel;
    context.clearRect(0, 0, 2 * SIDE, 2 * SIDE);
    context.drawImage(photo, at.x * photo.naturalWidth - taken / 2, at.y * photo.naturalHeight - taken / 2, taken, taken, 0, 0, 2 * SIDE, 2 * SIDE);
  });
  // Above the finger; beside it where there is no room above.
  const isHigh = at.y < NO_ROOM_ABOVE;
  const isRight = at.x > 0.5;
  return (
    <div className={css.loupe} aria-hidden="true" style={{ left: `${100 * at.x}%`, top: `${100 * at.y}%`, translate: isHigh ? (isRight ? "calc(-100% - 3rem) -50%" : "3rem -50%") : "-50% calc(-100% - 2.75rem)" }}>
      <canvas ref={canvas} width={2 * SIDE} height={2 * SIDE} />
    </div>
  );
}
