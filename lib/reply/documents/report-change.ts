import type { Assessment } from "../../triage/assessment";
import type { Words } from "../../words/words";
import { answersTo, changeIn } from "../damage-told";
import { paragraph, type Block } from "./blocks";

/** Pile that lies another way is no damage; where no change was told, no damage is stated. */
export function changeBlocks(assessment: Pick<Assessment, "findings">, { say }: Words): Block[] {
  const change = changeIn(assessment);
  const said = [
    ...(answersTo(assessment, "changes").includes("shaded") ? [say("report.shading")] : []),
    ...(change === "told" ? [] : [say("report.no-change", { change }), say("report.only-weighed")]),
  ];
  return said.length > 0 ? [paragraph(said.join(" "))] : [];
}
