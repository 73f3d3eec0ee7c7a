import type { Frame } from "../../enquiry/label-view";
import type { Point } from "../../photo/homography";
import { held, type Handle } from "./handle";

/** The corners of a frame by which it is stretched, and its middle, by which it is moved. */
export type Grip = "upper-left" | "lower-right" | "middle";
/** A frame as it is being drawn; `touched`: the corners that a person put. */
export interface FrameDraft { frame: Frame; touched: readonly Grip[] }

/** The least side, in shares of the photo: a label of less than a fingertip holds no words. Elicited. */
export const LEAST_SIDE = 0.03;
const FRESH: Frame = { x: 0.2, y: 0.3, width: 0.6, height: 0.4 };

/** Around what was found; where that is all of the photo, somewhere in its middle, to be put right. */
export const frameAround = (found: Frame): FrameDraft => ({ frame: found.width < 1 || found.height < 1 ? withinPhoto(found) : FRESH, touched: [] });

function withinPhoto({ x, y, width, height }: Frame): Frame {
  const [w, h] = [Math.min(1, Math.max(LEAST_SIDE, width)), Math.min(1, Math.max(LEAST_SIDE, height))];
  return { x: Math.min(1 - w, Math.max(0, x)), y: Math.min(1 - h, Math.max(0, y)), width: w, height: h };
}

const placeOf = ({ x, y, width, height }: Frame, grip: Grip): Point =>
  grip === "upper-left" ? { x, y } : grip === "lower-right" ? { x: x + width, y: y + height } : { x: x + width / 2, y: y + height / 2 };

/** The three grips, small ones without a tag, each by its name in the words of the page. */
export const frameHandles = ({ frame }: FrameDraft, nameOf: (grip: Grip) => string): Handle[] =>
  (["upper-left", "lower-right", "middle"] as const).map((key) => ({ key, name: nameOf(key), tag: null, ...placeOf(frame, key), isWaiting: false, canGo: false }));

/** The draft after one of its handles was moved. A corner taken past the other one pushes it along, so that the frame never turns over. */
export function moveFrame({ frame, touched }: FrameDraft, grip: Grip, to: Point): FrameDraft {
  const { x, y, width, height } = frame;
  const put = { touched: [...new Set([...touched, grip])] };
  if (grip === "middle") return { ...put, frame: withinPhoto({ x: to.x - width / 2, y: to.y - height / 2, width, height }) };
  const [left, right] = stretched({ from: x, to: x + width }, grip, held(to.x));
  const [top, bottom] = stretched({ from: y, to: y + height }, grip, held(to.y));
  return { ...put, frame: { x: left, y: top, width: right - left, height: bottom - top } };
}

/** One side of the frame with one of its ends moved, at least LEAST_SIDE long and within 0 to 1. */
function stretched({ from, to }: { from: number; to: number }, grip: Grip, at: number): [number, number] {
  if (grip === "upper-left") { const begin = Math.min(at, 1 - LEAST_SIDE); return [begin, Math.max(to, begin + LEAST_SIDE)]; }
  const end = Math.max(at, LEAST_SIDE);
  return [Math.min(from, end - LEAST_SIDE), end];
}

/** The corner that a touch of the photo puts: the upper left first, then the lower right, then whichever was used last. */
export const dueGrip = ({ touched }: FrameDraft, active: Grip): Grip =>
  !touched.includes("upper-left") ? "upper-left" : !touched.includes("lower-right") ? "lower-right" : active;
