import type { ActionId, Verdict } from "../triage/assessment";
import type { Strength } from "../triage/finding";

/** What staff read for the ids of an assessment where the trade's tables have no name. The sentences come with the assessment. */
export const VERDICT_NAMES: Record<Verdict, string> = {
  suitable: "suitable", "needs-testing-first": "test first", "ruled-out": "ruled out",
};
export const ACTION_NAMES: Record<ActionId, string> = {
  "leave-alone": "Leave it alone", "routine-clean": "Clean it as usual", "first-aid": "Answer with first aid", "ask-for-more": "Ask for more",
  "inspect-and-test": "Invite it for inspection and testing", "quote-with-limits": "Quote, with limits",
  "advise-cut-down": "Advise cutting it down", "advise-claim-or-replacement": "Advise against cleaning: keep it, replace it or claim",
  refer: "Refer to somebody else", "not-our-work": "Not our work",
};
/** Where a finding comes from, as a small word behind it. */
export const STRENGTH_NAMES: Record<Strength, string> = {
  told: "told", "label-typed": "label, as typed", photo: "from a photo", "label-photo": "label, seen", bench: "bench test", laboratory: "laboratory",
};
