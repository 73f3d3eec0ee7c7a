import { homographyOf, mapped, type Corners, type Point } from "./homography";
import { areaOf, boxOf, crossesItself, type Polygon } from "./polygon";

/**
 * The rug from above, in centimetres: x along its width, y along its length, the first corner at the origin. Made from
 * its four corners in a photo and its stated size. A lens that bends straight lines by one part in a hundred moves a
 * length by about as much; phones straighten their pictures and stay under that (*elicited*).
 */
export interface Plan {
  readonly widthCm: number;
  readonly lengthCm: number;
  /** From the photo (shares of its width and height) to the plan. */
  readonly toPlan: (p: Point) => Point;
  /** And back, to draw a place of the plan on the photo. */
  readonly toPhoto: (p: Point) => Point;
}

/** Sizes a rug may have, in cm. *elicited* */
export const PLAN_LIMITS = { leastCm: 20, mostCm: 1500 } as const;

/**
 * `corners` in shares of the photo's width and height, going round from the corner that is to be the origin along the
 * width. A string says, for people, why there is no plan.
 */
export function planOf(corners: Corners, size: { widthCm: number; lengthCm: number }): Plan | string {
  const { widthCm, lengthCm } = size;
  const isSize = (cm: number) => Number.isFinite(cm) && cm >= PLAN_LIMITS.leastCm && cm <= PLAN_LIMITS.mostCm;
  if (!isSize(widthCm) || !isSize(lengthCm)) return `Give both sides in centimetres, between ${PLAN_LIMITS.leastCm} and ${PLAN_LIMITS.mostCm}.`;
  const there: Corners = [{ x: 0, y: 0 }, { x: widthCm, y: 0 }, { x: widthCm, y: lengthCm }, { x: 0, y: lengthCm }];
  const [forth, back] = [homographyOf(corners, there), homographyOf(there, corners)];
  if (!forth || !back) return "The four corners do not go round a rug: three of them lie on a line, or two are swapped.";
  return { widthCm, lengthCm, toPlan: (p) => mapped(forth, p), toPhoto: (p) => mapped(back, p) };
}

/** The edges of a plan, each from a corner to the next. */
const PLAN_EDGES = ["top", "right", "bottom", "left"] as const;
export type PlanEdge = (typeof PLAN_EDGES)[number];

/** The edge of the plan that lies towards the top of the photo: whose middle stands highest there; of equals the first. */
export function edgeAtTop(corners: Corners): PlanEdge {
  const height = corners.map((p, i) => p.y + (corners[(i + 1) % corners.length] as Point).y);
  return PLAN_EDGES[height.indexOf(Math.min(...height))] ?? "top";
}

/** A damaged place on the plan. */
export interface Damaged {
  readonly outline: Polygon;
  readonly areaCm2: number;
  /** Of the whole rug, 0 to 1. */
  readonly share: number;
  /** From its outermost points to the four edges, in cm. */
  readonly toEdges: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
}

const held = (v: number, most: number) => Math.min(most, Math.max(0, v));
const heldWithin = (plan: Plan, outline: Polygon): Polygon =>
  outline.map(plan.toPlan).map((p) => ({ x: held(p.x, plan.widthCm), y: held(p.y, plan.lengthCm) }));

/** An outline drawn on the photo, brought onto the plan and held within the rug. A string where it is no outline. */
export function damagedPlace(plan: Plan, outline: Polygon): Damaged | string {
  if (outline.length < 3) return "An outline needs three points or more.";
  const onPlan = heldWithin(plan, outline);
  if (crossesItself(onPlan)) return "The outline crosses itself. Draw it round the damage without crossing.";
  const areaCm2 = areaOf(onPlan);
  if (!(areaCm2 > 0)) return "The outline lies outside the rug, or has no area.";
  const box = boxOf(onPlan);
  return {
    outline: onPlan, areaCm2, share: areaCm2 / (plan.widthCm * plan.lengthCm),
    toEdges: { left: box.left, top: box.top, right: plan.widthCm - box.right, bottom: plan.lengthCm - box.bottom },
  };
}

/** How far a finger or a mouse misses the place it means: standard deviation in shares of the photo's width or height. *elicited* */
export const POINTING_SD = 0.004;
/** Step of the derivatives, in the same shares. */
const NUDGE = 1e-4;

/**
 * Standard deviation of a damaged area in cm², from the corners and the outline being pointed at by hand: the law of
 * propagation of uncertainty, first order (JCGM 100:2008, 5.1.2). That of the stated size is not in it. NaN where there is no plan.
 */
export function areaSdCm2(corners: Corners, size: { widthCm: number; lengthCm: number }, outline: Polygon): number {
  const points = [...corners, ...outline];
  const areaAt = (i: number, by: Point): number => {
    const moved = points.map((p, k) => (k === i ? { x: p.x + by.x, y: p.y + by.y } : p));
    const plan = planOf(moved.slice(0, 4) as unknown as Corners, size);
    return typeof plan === "string" ? NaN : areaOf(heldWithin(plan, moved.slice(4)));
  };
  const slope = (i: number, by: Point) => (areaAt(i, by) - areaAt(i, { x: -by.x, y: -by.y })) / (2 * NUDGE);
  const variance = points.reduce((sum, _, i) => sum + slope(i, { x: NUDGE, y: 0 }) ** 2 + slope(i, { x: 0, y: NUDGE }) ** 2, 0);
  return POINTING_SD * Math.sqrt(variance);
}

/** A length on the rug between two places of the photo, in cm. */
export function lengthCm(plan: Plan, from: Point, to: Point): number {
  const [p, q] = [plan.toPlan(from), plan.toPlan(to)];
  return Math.hypot(p.x - q.x, p.y - q.y);
}
