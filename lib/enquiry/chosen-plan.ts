import "server-only";
import type { Measurement } from "../store/database";
import type { PlanMarks } from "./mark-schema";
import { measuredIn } from "./measurement-result";

type Marked = { measurements: readonly Measurement[] };

/** The newest standing plan of a rug on which a way of cutting it down was chosen; null where none was. */
export function chosenPlan(photos: readonly Marked[]): PlanMarks | null {
  const standing = photos.flatMap((p) => p.measurements).filter((m) => m.withdrawnAt === null && m.kind === "plan").sort((a, b) => b.at.getTime() - a.at.getTime());
  const newest = standing[0] && measuredIn(standing[0]);
  return newest?.kind === "plan" && newest.result.chosen ? newest.marks : null;
}
