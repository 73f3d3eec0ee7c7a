import type { SpotMarks } from "../../enquiry/mark-schema";
import type { Point } from "../../photo/homography";
import type { Spot } from "../../photo/spot";
import { held, heldPoint, type Handle } from "./handle";

export type Which = keyof SpotMarks;
export const WHICH = ["untouched", "affected"] as const satisfies readonly Which[];

/** Two spots as they are being marked; `touched`: those that a person put or confirmed. */
export interface SpotDraft { marks: SpotMarks; touched: readonly Which[]; isProposed: boolean }

/** Of the longer side: a fingertip on a phone. Elicited. */
export const FINGER_RADIUS = 0.025;
export const RADIUS_LIMITS = { least: 0.01, most: 0.12 } as const;
/** The least side of a rectangle, in shares. */
const LEAST_SIDE = 0.015;
const spotAt = (x: number, y: number): Spot => ({ shape: "circle", x, y, radius: FINGER_RADIUS });

export const FRESH_SPOTS: SpotDraft = { marks: { untouched: spotAt(0.3, 0.5), affected: spotAt(0.7, 0.5) }, touched: [], isProposed: false };
/** Spots that stand already. */
export const keptSpots = (marks: SpotMarks): SpotDraft => ({ marks, touched: WHICH, isProposed: false });

export const centreOf = (s: Spot): Point => (s.shape === "circle" ? { x: s.x, y: s.y } : { x: s.x + s.width / 2, y: s.y + s.height / 2 });
const GRIP = "-corner";
const whichOf = (key: string): Which => (key.startsWith("untouched") ? "untouched" : "affected");

/** Spots this near, in shares, would have one tag over the other on a phone. By eye. */
const NEAR = { x: 0.28, y: 0.12 } as const;
function areNear({ untouched, affected }: SpotMarks): boolean {
  const [one, other] = [centreOf(untouched), centreOf(affected)];
  return Math.abs(one.x - other.x) < NEAR.x && Math.abs(one.y - other.y) < NEAR.y;
}

/** A handle in the middle of each spot, and one at the corner of a rectangle. */
export function spotHandles({ marks, touched }: SpotDraft, names: Readonly<Record<Which, { name: string; tag: string }>>, cornerOf: (name: string) => string): Handle[] {
  return WHICH.flatMap((which) => {
    const spot = marks[which];
    const { name, tag } = names[which];
    const middle: Handle = { key: which, name, tag, ...centreOf(spot), isWaiting: !touched.includes(which), canGo: false, isBare: true, isTagBelow: which === "affected" && areNear(marks) };
    if (spot.shape === "circle") return [middle];
    return [middle, { key: `${which}${GRIP}`, name: cornerOf(name), tag: null, x: spot.x + spot.width, y: spot.y + spot.height, isWaiting: false, canGo: false, outside: { width: spot.width, height: spot.height } }];
  });
}

function movedSpot(spot: Spot, to: Point): Spot {
  if (spot.shape === "circle") return { ...spot, ...heldPoint(to) };
  const within = (at: number, size: number) => Math.min(1 - size, Math.max(0, at - size / 2));
  return { ...spot, x: within(to.x, spot.width), y: within(to.y, spot.height) };
}
function stretched(spot: Spot, to: Point): Spot {
  if (spot.shape === "circle") return spot;
  return { ...spot, width: Math.max(LEAST_SIDE, held(to.x) - spot.x), height: Math.max(LEAST_SIDE, held(to.y) - spot.y) };
}

/** Shares below this are a rounding, and no movement. */
const STILL = 1e-9;
const isSameSize = (one: Spot, other: Spot): boolean =>
  one.shape === "circle" || (other.shape === "rectangle" && Math.abs(one.width - other.width) < STILL && Math.abs(one.height - other.height) < STILL);

const withSpot = (draft: SpotDraft, which: Which, spot: Spot): SpotDraft =>
  ({ marks: { ...draft.marks, [which]: spot }, touched: [...new Set([...draft.touched, which])], isProposed: false });

/**
 * The draft after a handle was moved. A proposal that a person moves is theirs, the other spot with it. A grip that was touched
 * and not moved agrees to nothing: it stands beside its spot, where somebody may have meant the photo.
 */
export function moveHandle(draft: SpotDraft, key: string, to: Point): SpotDraft {
  const which = whichOf(key);
  const spot = draft.marks[which];
  const next = key.endsWith(GRIP) ? stretched(spot, to) : movedSpot(spot, to);
  if (key.endsWith(GRIP) && isSameSize(spot, next)) return draft;
  const moved = withSpot(draft, which, next);
  return draft.isProposed ? { ...moved, touched: WHICH } : moved;
}

/** Where a touch of the photo goes: to the spot that is due, else to the active one. */
export const dueSpot = ({ touched }: SpotDraft, active: Which): Which => WHICH.find((w) => !touched.includes(w)) ?? active;

/** Both spots round, or both rectangles about the same middle and of about the same size. `ratio`: width of the photo by its height. */
export function reshape(draft: SpotDraft, shape: Spot["shape"], ratio: number): SpotDraft {
  const long = Math.max(1, ratio), short = Math.min(1, ratio);
  const shaped = (spot: Spot): Spot => {
    if (spot.shape === shape) return spot;
    const { x, y } = centreOf(spot);
    if (spot.shape === "rectangle") return { shape: "circle", x, y, radius: Math.min(RADIUS_LIMITS.most, Math.max(RADIUS_LIMITS.least, Math.max(spot.width, spot.height) / 2)) };
    const [width, height] = ratio >= 1 ? [2 * spot.radius, 2 * spot.radius * long] : [(2 * spot.radius) / short, 2 * spot.radius];
    return movedSpot({ shape: "rectangle", x: 0, y: 0, width, height }, { x, y });
  };
  return { ...draft, marks: { untouched: shaped(draft.marks.untouched), affected: shaped(draft.marks.affected) } };
}

/** Both round spots of one radius. */
export function resize(draft: SpotDraft, radius: number): SpotDraft {
  const sized = (spot: Spot): Spot => (spot.shape === "circle" ? { ...spot, radius } : spot);
  return { ...draft, marks: { untouched: sized(draft.marks.untouched), affected: sized(draft.marks.affected) } };
}
