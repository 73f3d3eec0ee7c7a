import type { Verdict } from "../triage/assessment";
import type { Strength } from "../triage/finding";

/** What staff read for the ids of an assessment where the trade's tables have no name. The sentences come with the assessment. */
export const VERDICT_NAMES: Record<Verdict, string> = {
  suitable: "suitable", "needs-testing-first": "test first", "ruled-out": "ruled out",
};
/** Where a finding comes from, as a small word behind it. */
export const STRENGTH_NAMES: Record<Strength, string> = {
  told: "told", "label-typed": "label, as typed", photo: "from a photo", "label-photo": "label, seen", bench: "bench test", laboratory: "laboratory",
};
