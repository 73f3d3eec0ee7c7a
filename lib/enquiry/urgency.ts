import type { UrgencyLevel } from "../triage/assessment";
import type { UrgencyId } from "./views";

/** Most urgent first; triage writes the levels with hyphens, the database without. */
const LEVELS = { hours: "hours", "two-days": "two_days", "a-week": "a_week", "can-wait": "can_wait" } as const satisfies Record<
  UrgencyLevel,
  UrgencyId
>;
const ORDER = Object.values(LEVELS) as UrgencyId[];

export const urgencyId = (level: UrgencyLevel): UrgencyId => LEVELS[level];
/** 0 for what loses most by waiting. */
export const urgencyRank = (urgency: UrgencyId): number => ORDER.indexOf(urgency);

/** The worst of an enquiry's rugs and of words nobody has read, with its reason; of equals the first. Waiting does not change it: time waited is sorted by on its own. */
export function worstUrgency(all: readonly { level: UrgencyLevel; why: string }[]): { urgency: UrgencyId; why: string } {
  const ranked = all.map((r) => ({ urgency: urgencyId(r.level), why: r.why })).sort((a, b) => urgencyRank(a.urgency) - urgencyRank(b.urgency));
  const worst = ranked[0];
  if (!worst) throw new Error("Expected at least one rug but received none");
  return worst;
}
