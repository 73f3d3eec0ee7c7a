import type { Assessment } from "../../triage/assessment";
import type { Words } from "../../words/words";
import { answersTo } from "../damage-told";
import { likelyMechanisms } from "../facts";
import { likelihood } from "../phrases";
import { heading, list, type Block } from "./blocks";

/** Whether flood or waste water was told of: nobody touches it, so nothing is said of what comes back, of work or of years. */
export const isFlooded = (a: Assessment): boolean => answersTo(a, "incidents").includes("flood");
/** Whether mould is likely enough to be spoken of, as in the letters. */
const isMouldLikely = (a: Assessment): boolean => likelyMechanisms(a).includes("mould");

/** What can harm whoever handles it, before anything else: a report goes from hand to hand, and so may the rug. */
export function cautionBlocks(a: Assessment, words: Words): readonly Block[] {
  const { say } = words;
  const likely = (mechanism: "mould" | "insects") => likelihood(a.mechanisms.find((m) => m.mechanism === mechanism)?.probability ?? 0, words);
  const mould = isMouldLikely(a) ? [say("report.caution-mould", { likely: likely("mould") })] : answersTo(a, "changes").includes("spots") ? [say("report.caution-spots")] : [];
  const cautions = [
    ...(isFlooded(a) ? [say("report.caution-flood")] : []), ...mould,
    ...(likelyMechanisms(a).includes("insects") ? [say("report.caution-insects", { likely: likely("insects") })] : []),
  ];
  return cautions.length > 0 ? [heading(say("report.cautions")), ...list(cautions)] : [];
}
