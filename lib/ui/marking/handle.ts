import type { Point } from "../../photo/homography";
import type { SayInBrowser } from "../browser-words";

/** A place on a photo that a person moves, in shares of its width and height. */
export interface Handle extends Point {
  key: string;
  /** What it marks, as it is read out: "Untouched spot". */
  name: string;
  /** In a word beside it; none for a small grip. */
  tag: string | null;
  /** Nobody has put it there yet. */
  isWaiting: boolean;
  /** Can be taken away with the Delete key. */
  canGo: boolean;
  /** Its outline shows where it is: no dot hides what lies there. */
  isBare?: boolean;
  /** Its tag stands below it: another's stands above, close by. */
  isTagBelow?: boolean;
  /** Sides, in shares of the photo, of what it is the lower right corner of: it is drawn outside of that. */
  outside?: { width: number; height: number };
}

/** How far an arrow key moves a handle, in shares; with Shift, ten times as far. Elicited. */
export const KEY_STEP = 0.004;
const LONG_STEPS = 10;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

export const held = (share: number): number => Math.min(1, Math.max(0, share));
export const heldPoint = ({ x, y }: Point): Point => ({ x: held(x), y: held(y) });

/** Where an arrow key takes a handle, held on the photo; null for any other key. */
export function keyTarget(from: Point, key: string, isLong: boolean): Point | null {
  const way = ARROWS[key];
  if (!way) return null;
  const step = KEY_STEP * (isLong ? LONG_STEPS : 1);
  return heldPoint({ x: from.x + way[0] * step, y: from.y + way[1] * step });
}

/** "34 % from the left, 52 % from the top". */
export const placeInWords = ({ x, y }: Point, say: SayInBrowser): string => say("mark.place", { left: Math.round(100 * x), top: Math.round(100 * y) });
