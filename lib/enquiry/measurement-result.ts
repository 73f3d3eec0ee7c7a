import "server-only";
import * as z from "zod/mini";
import { DIRECTIONS } from "../photo/compare";
import { CUT_KINDS } from "../photo/cut-down";
import { measureSpots } from "../photo/server/measure";
import { photoPath } from "../store/photo-files";
import type { Measurement } from "../store/database";
import { KEPT_WHOLE } from "../triage/finding";
import { marksSchema, planMarksSchema, spotMarksSchema, type Marks, type PlanMarks, type SpotMarks } from "./mark-schema";
import { measurePlan } from "./measured-plan";

const lab = z.object({ L: z.number(), a: z.number(), b: z.number() });
const colour = z.object({ mean: lab, error: lab, pixels: z.number(), clipped: z.number() });
const spotResultSchema = z.object({
  deltaE: z.number(), lightness: z.number(), chroma: z.number(), hue: z.number(), uncertainty: z.number(), yellowness: z.number(), grade: z.number(),
  direction: z.enum(DIRECTIONS), sureness: z.number(), untouched: colour, affected: colour, says: z.string(),
});
export type SpotResult = z.infer<typeof spotResultSchema>;
const planResultSchema = z.object({
  damagedCm2: z.number(), damagedSdCm2: z.number(), share: z.number(),
  chosen: z.nullable(z.object({ kind: z.enum(CUT_KINDS), bindingM: z.number(), shareKept: z.number() })),
});
export type PlanResult = z.infer<typeof planResultSchema>;

/** What was marked and measured, as it stands in a row. */
export type Measured = { kind: "spots"; marks: SpotMarks; result: SpotResult } | { kind: "plan"; marks: PlanMarks; result: PlanResult };

/** Measures a kept photo anew, on the copy of 1600 pixels. A string says in words why it cannot. */
export async function measureMarks(photoId: string, marked: Marks): Promise<SpotResult | PlanResult | string> {
  if (marked.kind === "spots") return measureSpots(photoPath(photoId, "1600"), marked.marks);
  const made = measurePlan(marked.marks);
  if (typeof made === "string") return made;
  if (marked.marks.chosen && marked.marks.chosen !== KEPT_WHOLE && !made.chosen) return "The way that was chosen is no longer among those that are left. Choose again.";
  const { damagedCm2, damagedSdCm2, share, chosen } = made;
  return { damagedCm2, damagedSdCm2, share, chosen: chosen && { kind: chosen.kind, bindingM: chosen.bindingM, shareKept: chosen.shareKept } };
}

/** A row as the program understands it today; null where it no longer does. */
export function measuredIn({ kind, marks, result }: Pick<Measurement, "kind" | "marks" | "result">): Measured | null {
  if (kind === "spots") {
    const [m, r] = [spotMarksSchema.safeParse(marks), spotResultSchema.safeParse(result)];
    return m.success && r.success ? { kind, marks: m.data, result: r.data } : null;
  }
  const [m, r] = [planMarksSchema.safeParse(marks), planResultSchema.safeParse(result)];
  return kind === "plan" && m.success && r.success ? { kind, marks: m.data, result: r.data } : null;
}

/** What a form sent, as marks; or the first thing that is wrong with it. */
export function marksIn(input: unknown): Marks | string {
  const parsed = marksSchema.safeParse(input);
  return parsed.success ? parsed.data : (parsed.error.issues[0]?.message ?? "The marks could not be read.");
}
