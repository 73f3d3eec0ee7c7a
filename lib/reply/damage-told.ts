import { CHANGE_IDS, CHANGES, HANDLED_AS, type ChangeId, type MechanismId } from "../trade/damage";
import type { EnquiryAnswers } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import { SPOILT_PHOTO } from "../triage/finding";
import { handledAs } from "../triage/methods";
import { readTold } from "../triage/told";
import { holdsIn } from "../triage/urgency";

type Findings = Pick<Assessment, "findings">;
/** What was answered to a question; none where it was not. */
export const answersTo = ({ findings }: Findings, question: "changes" | "incidents" | "liquid" | "reason" | "wetNow") => findings.filter((f) => f.what === question).flatMap((f) => f.value);

/**
 * What may be called a change: one that was told in answer to our questions or measured; else a patch seen from one side
 * only, none at all, or no answer. The owner's own words are quoted, not read.
 */
export type Change = "told" | "shading" | "none" | "unanswered";
const isMeasured = ({ findings }: Findings): boolean => findings.some((f) => f.what === "colour-change" || f.what === "damaged-area");
export function changeIn(assessment: Findings): Change {
  const answers = answersTo(assessment, "changes");
  if (isMeasured(assessment) || answers.some((a) => a !== "shaded" && a !== "none")) return "told";
  if (answers.includes("shaded")) return "shading";
  return answers.length > 0 ? "none" : "unanswered";
}

/** Answers by which nothing is known to have happened to it. */
const NOTHING_HAPPENED: readonly unknown[] = ["nothing", "unknown"];
const hasSomethingHappened = (assessment: Findings): boolean => answersTo(assessment, "incidents").some((a) => !NOTHING_HAPPENED.includes(a));
/** Answers by which nothing has changed but soil, which is no damage, or how the pile lies. */
const NO_HARM: readonly unknown[] = ["dirty", "shaded", "none"];
/** Changes that are mended, and no cleaning takes out. */
const MENDED: readonly unknown[] = ["bare", "wavy", "crumbles"] satisfies ChangeId[];
const SPOKEN_OF = ["dirty", "shaded", "smell", "spots", "bare", "crumbles", "wavy"] as const satisfies readonly ChangeId[];
type Unspoken = Exclude<ChangeId, (typeof SPOKEN_OF)[number]>;
const UNSPOKEN = CHANGE_IDS.filter((id): id is Unspoken => !SPOKEN_OF.some((s) => s === id));
/** Of what soil is a share where soil is what most likely shows: of the soil, where it was told or nothing else was; beside what is mended, of the rest; else of whatever is to be seen, and of what is wet only once it is dry. */
export function soilIn(assessment: Findings): "soil" | "rest" | "dried" | "seen" {
  const changes = answersTo(assessment, "changes");
  if (changes.includes("dirty")) return "soil";
  if (changes.some((c) => MENDED.includes(c))) return "rest";
  if (answersTo(assessment, "wetNow").some((a) => a === "wet" || a === "damp")) return "dried";
  return hasSomethingHappened(assessment) || answersTo(assessment, "liquid").length > 0 || changes.some((c) => !NO_HARM.includes(c)) ? "seen" : "soil";
}
/** What they saw of it that nothing which probably happened explains, by the table of what people see: soil explains none of it. Smell, spots, bare patches, a back that crumbles, its shape, how the pile lies and whatever is handled as the work of one cause have words of their own. `likely`: what probably happened. */
export function unexplainedChanges(assessment: Findings, likely: readonly MechanismId[]): Unspoken[] {
  const handled: readonly (MechanismId | undefined)[] = handledAs(readTold(assessment.findings));
  return UNSPOKEN.filter((id) => answersTo(assessment, "changes").includes(id) && !handled.includes(HANDLED_AS[id]) && !likely.some((m) => m !== "soil-only" && m in CHANGES[id].by));
}
/** Whether there is damage to judge: a change, or something that happened to it. */
const isDamageTold = (assessment: Findings): boolean => changeIn(assessment) === "told" || hasSomethingHappened(assessment);

/** Whether there is harm of which to say that it is, or is not, beyond economic repair: one that was told or measured, or where nobody said what has changed, something that happened. */
export function isHarmTold(assessment: Findings): boolean {
  const changes = answersTo(assessment, "changes");
  return isMeasured(assessment) || changes.some((a) => !NO_HARM.includes(a)) || (changes.length === 0 && isDamageTold(assessment));
}

/** Whether soil is all that was told: no change of another kind, and none was measured. */
export function isOnlySoilTold(assessment: Findings): boolean {
  const changes = answersTo(assessment, "changes");
  return !isMeasured(assessment) && changes.includes("dirty") && changes.every((a) => NO_HARM.includes(a));
}

/** Answers by which there is nothing to see. */
const UNSEEN: readonly unknown[] = ["smell", "none"];
/** Whether they told us how it changed, and nothing of it is to be seen: a photo would show nothing. */
export function isNothingSeen(assessment: Findings): boolean {
  const changes = answersTo(assessment, "changes");
  return !isMeasured(assessment) && changes.length > 0 && changes.every((a) => UNSEEN.includes(a));
}
/** What leaves a mark, seen or not: something got on it, or it was wetted. */
const LEAVES_A_MARK = ["spilt:yes", "incidents:flood", "incidents:spotted", "incidents:washed-professional", "incidents:washed-home"];
const isMarked = ({ findings }: Findings): boolean => LEAVES_A_MARK.some((condition) => holdsIn(readTold(findings), condition));
/** Whether a smell is all that they told: of what cannot be seen no share comes back. */
export const isOnlySmellTold = (assessment: Findings): boolean =>
  isNothingSeen(assessment) && answersTo(assessment, "changes").includes("smell") && !isMarked(assessment);

/** That a photo is there, or will not do: of a letter that nobody has asked anything about yet there is no more. */
const OF_PHOTOS: readonly string[] = ["photo", SPOILT_PHOTO];
const isNothingAnswered = ({ findings }: Findings): boolean => findings.every((f) => OF_PHOTOS.includes(f.what));

/** They ask what it is, and for no work. */
const ASKS_NO_WORK: readonly unknown[] = ["what-is-it", "mis-sold"] satisfies EnquiryAnswers["reason"][];
/**
 * The chance that it is beyond economic repair, 0–1, as letters, the desk and the reports tell it: null too where no damage was told or
 * measured and the client asks for no work, or has answered nothing, for then there is nothing to weigh against a cost. Without harm
 * (`isHarmTold`) it is the chance that the work is not worth its cost, and called so.
 */
export const beyondTold = (assessment: Pick<Assessment, "findings" | "beyondRepair">): number | null => (isWorthAsked(assessment) ? assessment.beyondRepair : null);
/** Whether there is damage, or work that is asked for, of which to say whether it is worth its cost. */
export const isWorthAsked = (assessment: Findings): boolean =>
  isDamageTold(assessment) || (!isNothingAnswered(assessment) && !answersTo(assessment, "reason").some((a) => ASKS_NO_WORK.includes(a)));
