import type { EnquiryAnswers } from "../trade/questions";
import type { Assessment } from "../triage/assessment";

type Findings = Pick<Assessment, "findings">;
/** What was answered to a question; none where it was not. */
export const answersTo = ({ findings }: Findings, question: "changes" | "incidents" | "liquid" | "reason") => findings.filter((f) => f.what === question).flatMap((f) => f.value);

/**
 * What may be called a change: one that was told in answer to our questions or measured; else a patch seen from one side
 * only, none at all, or no answer. The owner's own words are quoted, not read.
 */
export type Change = "told" | "shading" | "none" | "unanswered";
export function changeIn(assessment: Findings): Change {
  const answers = answersTo(assessment, "changes");
  const isMeasured = assessment.findings.some((f) => f.what === "colour-change" || f.what === "damaged-area");
  if (isMeasured || answers.some((a) => a !== "shaded" && a !== "none")) return "told";
  if (answers.includes("shaded")) return "shading";
  return answers.length > 0 ? "none" : "unanswered";
}

/** Answers by which nothing is known to have happened to it. */
const NOTHING_HAPPENED: readonly unknown[] = ["nothing", "unknown"];
/** Whether there is damage to judge: a change, or something that happened to it. */
const isDamageTold = (assessment: Findings): boolean =>
  changeIn(assessment) === "told" || answersTo(assessment, "incidents").some((a) => !NOTHING_HAPPENED.includes(a));

/** They ask what it is, and for no work. */
const ASKS_NO_WORK: readonly unknown[] = ["what-is-it", "mis-sold"] satisfies EnquiryAnswers["reason"][];
/**
 * The chance that it is beyond economic repair, 0–1, as letters, the desk and the reports tell it: null too where no damage was told or
 * measured and the client asks for no work, for then there is nothing to weigh against a cost.
 */
export const beyondTold = (assessment: Pick<Assessment, "findings" | "beyondRepair">): number | null => (isWorthAsked(assessment) ? assessment.beyondRepair : null);
/** Whether there is damage, or work that is asked for, of which to say whether it is worth its cost. */
export const isWorthAsked = (assessment: Findings): boolean =>
  isDamageTold(assessment) || !answersTo(assessment, "reason").some((a) => ASKS_NO_WORK.includes(a));
