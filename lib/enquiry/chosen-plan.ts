import "server-only";
import type { CutDecision } from "../reply/documents/cut-down-plan";
import type { Measurement, Photo } from "../store/database";
import { UNSAID_PHOTO } from "../trade/questions";
import { KEPT_WHOLE } from "../triage/finding";
import type { PlanMarks } from "./mark-schema";
import { measuredIn } from "./measurement-result";
import type { PlanLack } from "./measured-views";

type Marked = { measurements: readonly Measurement[] };

/** The newest standing plan of a rug and the photo it was marked in; null where there is none. */
function standingPlan(photos: readonly Marked[]) {
  const standing = photos.flatMap((p) => p.measurements).filter((m) => m.withdrawnAt === null && m.kind === "plan").sort((a, b) => b.at.getTime() - a.at.getTime());
  const newest = standing[0] && measuredIn(standing[0]);
  return standing[0] && newest?.kind === "plan" ? { ...newest, photoId: standing[0].photoId } : null;
}

/** The newest standing plan of a rug on which a way of cutting it down was chosen; null where none was. */
export function chosenPlan(photos: readonly Marked[]): PlanMarks | null {
  const plan = standingPlan(photos);
  return plan?.result.chosen ? plan.marks : null;
}

/** What was decided of cutting a rug down on its newest plan; null where no plan of its damage stands. */
export function cutDecision(photos: readonly Marked[]): CutDecision | null {
  const plan = standingPlan(photos);
  if (!plan) return null;
  if (plan.result.chosen) return plan.result.chosen.kind;
  if (plan.marks.chosen === KEPT_WHOLE) return "against";
  return plan.marks.damaged.length > 0 ? "open" : null;
}

/** What a cut-down plan of this rug still needs, and the photo in which to mark it; null where it can be made. */
export function planLack(photos: readonly (Marked & Pick<Photo, "id" | "kind">)[]): PlanLack | null {
  const plan = standingPlan(photos);
  if (plan) return plan.result.chosen ? null : { lacks: plan.marks.chosen === KEPT_WHOLE ? "decision" : plan.marks.damaged.length === 0 ? "damage" : "way", photoId: plan.photoId };
  const from = photos.find((p) => p.kind === "whole") ?? photos.find((p) => p.kind === "trouble") ?? photos.find((p) => p.kind === UNSAID_PHOTO);
  return from ? { lacks: "corners", photoId: from.id } : { lacks: "photo", photoId: null };
}
