import * as z from "zod/mini";
import { CUT_KINDS } from "../photo/cut-down";
import { PLAN_LIMITS } from "../photo/plan";
import { KEPT_WHOLE } from "../triage/finding";

/** How many damaged places, points round one, and pairs of spots a photo can carry; the widest border in cm. Elicited. */
export const MARK_LIMITS = { places: 12, points: 40, spotPairs: 12, borderCm: 200 } as const;

const share = z.number().check(z.minimum(0), z.maximum(1));
const point = z.strictObject({ x: share, y: share });
const spot = z.discriminatedUnion("shape", [
  z.strictObject({ shape: z.literal("circle"), x: share, y: share, radius: z.number().check(z.minimum(0.002), z.maximum(0.25)) }),
  z.strictObject({ shape: z.literal("rectangle"), x: share, y: share, width: share, height: share }),
]);
const centimetres = z.number("Write both sides in centimetres.").check(
  z.minimum(PLAN_LIMITS.leastCm, `A side has at least ${PLAN_LIMITS.leastCm} cm.`), z.maximum(PLAN_LIMITS.mostCm, `A side has at most ${PLAN_LIMITS.mostCm} cm.`));

/** An untouched and an affected spot, in shares of the photo's width and height. */
export const spotMarksSchema = z.strictObject({ untouched: spot, affected: spot });
export type SpotMarks = z.infer<typeof spotMarksSchema>;

/** Corners, stated size and damaged places of a rug, and the way of cutting it down that was chosen. Points in shares of the photo. */
export const planMarksSchema = z.strictObject({
  corners: z.tuple([point, point, point, point]),
  widthCm: centimetres,
  lengthCm: centimetres,
  damaged: z.array(z.array(point).check(z.minLength(3), z.maxLength(MARK_LIMITS.points))).check(z.maxLength(MARK_LIMITS.places)),
  /** Width of a border that is to be kept; 0 where none was marked. */
  borderCm: z.number("Write the border’s width in centimetres, or 0.").check(z.minimum(0, "A border has 0 cm or more."), z.maximum(MARK_LIMITS.borderCm, `A border has at most ${MARK_LIMITS.borderCm} cm.`)),
  isSymmetric: z.boolean(),
  /** `kept-whole` where it was decided not to cut it down; null until somebody has decided. */
  chosen: z.nullable(z.enum([...CUT_KINDS, KEPT_WHOLE])),
});
export type PlanMarks = z.infer<typeof planMarksSchema>;

export const marksSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("spots"), marks: spotMarksSchema }),
  z.strictObject({ kind: z.literal("plan"), marks: planMarksSchema }),
]);
export type Marks = z.infer<typeof marksSchema>;
export type MeasurementKind = Marks["kind"];
