import type { PlanMarks } from "../../enquiry/mark-schema";
import type { Corners, Point } from "../../photo/homography";
import { sidesIn } from "../../photo/rug-sides";
import { heldPoint, type Handle } from "./handle";

/**
 * A rug's corners and damaged places as they are being marked. `touched`: corners that a person put; `isSideChosen`: a
 * person said which edge is the width, so the program no longer does.
 */
export interface PlanDraft { corners: Corners; touched: readonly number[]; isSideChosen: boolean; outlines: readonly (readonly Point[])[] }

export const FRESH_PLAN: PlanDraft = { corners: [{ x: 0.15, y: 0.15 }, { x: 0.85, y: 0.15 }, { x: 0.85, y: 0.85 }, { x: 0.15, y: 0.85 }], touched: [], isSideChosen: false, outlines: [] };
export const keptPlan = ({ corners, damaged }: Pick<PlanMarks, "corners" | "damaged">): PlanDraft => ({ corners, touched: [0, 1, 2, 3], isSideChosen: true, outlines: damaged });

/** An outline with fewer points encloses nothing yet. */
const LEAST_POINTS = 3;
export const closedOutlines = ({ outlines }: PlanDraft): PlanMarks["damaged"] => outlines.filter((o) => o.length >= LEAST_POINTS).map((o) => [...o]);
export const isRoundTheRug = ({ touched }: PlanDraft): boolean => touched.length === 4;
/** The corner that is due, 0 to 3; null once all are put. */
export const dueCorner = ({ touched }: PlanDraft): number | null => [0, 1, 2, 3].find((i) => !touched.includes(i)) ?? null;

const CORNER = "corner", POINT = "point";
const cornerKey = (i: number) => `${CORNER}:${i}`;
export const pointKey = (outline: number, point: number) => `${POINT}:${outline}:${point}`;
const partsOf = (key: string) => { const [what, first = "0", second = "0"] = key.split(":"); return { what, first: Number(first), second: Number(second) }; };
/** The outline a handle belongs to; null for a corner. */
export const outlineOf = (key: string | null): number | null => { const p = key === null ? null : partsOf(key); return p?.what === POINT ? p.first : null; };

export const cornerHandles = ({ corners, touched }: PlanDraft): Handle[] =>
  corners.map((p, i) => ({ key: cornerKey(i), name: `Corner ${i + 1}`, tag: String(i + 1), ...p, isWaiting: !touched.includes(i), canGo: false }));
export const pointHandles = ({ outlines }: PlanDraft): Handle[] => outlines.flatMap((outline, i) =>
  outline.map((p, k) => ({ key: pointKey(i, k), name: `Damaged place ${i + 1}, point ${k + 1}`, tag: null, ...p, isWaiting: false, canGo: true })));

/** The draft after a handle was moved. */
export function movePlanHandle(draft: PlanDraft, key: string, to: Point): PlanDraft {
  const { what, first, second } = partsOf(key);
  const at = heldPoint(to);
  if (what === CORNER) return { ...draft, corners: draft.corners.map((p, i) => (i === first ? at : p)) as unknown as Corners, touched: [...new Set([...draft.touched, first])].sort() };
  return { ...draft, outlines: draft.outlines.map((o, i) => (i === first ? o.map((p, k) => (k === second ? at : p)) : o)) };
}

/** Puts the corner that is due there, or the one that is active. */
export const putCorner = (draft: PlanDraft, active: string | null, at: Point): PlanDraft => {
  const due = dueCorner(draft);
  return due === null && active === null ? draft : movePlanHandle(draft, due === null ? (active as string) : cornerKey(due), at);
};

/** A point more at the end of an outline; a new outline where there is none of that number. */
export const addPoint = (draft: PlanDraft, outline: number, at: Point): PlanDraft => {
  const outlines = draft.outlines.length > outline ? draft.outlines : [...draft.outlines, []];
  return { ...draft, outlines: outlines.map((o, i) => (i === outline ? [...o, heldPoint(at)] : o)) };
};

/** One point goes; the last of an outline takes it along. */
export function removePoint(draft: PlanDraft, key: string): PlanDraft {
  const { what, first, second } = partsOf(key);
  if (what !== POINT) return draft;
  return { ...draft, outlines: draft.outlines.map((o, i) => (i === first ? o.filter((_, k) => k !== second) : o)).filter((o) => o.length > 0) };
}
export const removeOutline = (draft: PlanDraft, outline: number): PlanDraft => ({ ...draft, outlines: draft.outlines.filter((_, i) => i !== outline) });

const turned = (draft: PlanDraft): PlanDraft => ({ ...draft, corners: [draft.corners[1], draft.corners[2], draft.corners[3], draft.corners[0]] });

/** Width and length change places because a person says so: what was corner 2 becomes corner 1. */
export const swapped = (draft: PlanDraft): PlanDraft => ({ ...turned(draft), isSideChosen: true });

/** The draft with its width along the edges that fit the stated size, where the photo tells and no person chose. */
export const seated = (draft: PlanDraft, photo: { width: number; height: number }, size: { widthCm: number; lengthCm: number }): PlanDraft =>
  isRoundTheRug(draft) && !draft.isSideChosen && sidesIn(photo, draft.corners, size) === "swapped" ? turned(draft) : draft;
