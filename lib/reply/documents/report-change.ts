import type { Assessment } from "../../triage/assessment";
import type { Words } from "../../words/words";
import { paragraph, type Block } from "./blocks";

type Findings = Pick<Assessment, "findings">;
/** What was answered to a question; none where it was not. */
export const answersTo = ({ findings }: Findings, question: "changes" | "incidents") => findings.filter((f) => f.what === question).flatMap((f) => f.value);

/**
 * What a report may call a change: one that was told in answer to our questions or measured; else a patch seen from one side
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

/** Whether there is damage to judge: a change, or something that happened to it. */
export const isDamageTold = (assessment: Findings): boolean =>
  changeIn(assessment) === "told" || answersTo(assessment, "incidents").some((a) => a !== "nothing");

/** Pile that lies another way is no damage; where no change was told, no damage is stated. */
export function changeBlocks(assessment: Findings, { say }: Words): Block[] {
  const change = changeIn(assessment);
  const said = [
    ...(answersTo(assessment, "changes").includes("shaded") ? [say("report.shading")] : []),
    ...(change === "told" ? [] : [say("report.no-change", { change }), say("report.only-weighed")]),
  ];
  return said.length > 0 ? [paragraph(said.join(" "))] : [];
}
