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

/** A damaged place on the plan. */
export interface Damaged {
  readonly outline: Polygon;
  readonly areaCm2: number;
  /** Of the whole rug, 0 to 1. */
  readonly share: number;
  /** From its outermost points to the four edges, in cm. */
  readonly toEdges: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
}

/** An outline drawn on the photo, brought onto the plan and held within the rug. A string where it is no outline. */
export function damagedPlace(plan: Plan, outline: Polygon): Damaged | string {
  if (outline.length < 3) return "An outline needs three points or more.";
  const within = (v: number, most: number) => Math.min(most, Math.max(0, v));
  const onPlan = outline.map(plan.toPlan).map((p) => ({ x: within(p.x, plan.widthCm), y: within(p.y, plan.lengthCm) }));
  if (crossesItself(onPlan)) return "The outline crosses itself. Draw it round the damage without crossing.";
  const areaCm2 = areaOf(onPlan);
  if (!(areaCm2 > 0)) return "The outline lies outside the rug, or has no area.";
  const box = boxOf(onPlan);
  return {
    outline: onPlan, areaCm2, share: areaCm2 / (plan.widthCm * plan.lengthCm),
    toEdges: { left: box.left, top: box.top, right: plan.widthCm - box.right, bottom: plan.lengthCm - box.bottom },
  };
}

/** A length on the rug between two places of the photo, in cm. */
export function lengthCm(plan: Plan, from: Point, to: Point): number {
  const [p, q] = [plan.toPlan(from), plan.toPlan(to)];
  return Math.hypot(p.x - q.x, p.y - q.y);
}
