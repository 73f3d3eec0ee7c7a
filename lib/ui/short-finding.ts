import { QUESTIONS, type QuestionId } from "../trade/questions";
import type { Finding } from "../triage/finding";
import { tellFinding } from "../triage/say-finding";
import { lowerFirst, sentenceCase } from "./figures";
import { QUESTION_HEADS } from "./heads";
import { labelOf } from "./told";

const isQuestion = (what: string): what is QuestionId => Object.hasOwn(QUESTIONS, what);

/** A finding in a few words, for a list: "Shine: light from one end, dark from the other". Its weight stands beside it. */
export function shortFinding(finding: Finding): string {
  const { what, value } = finding;
  if (!isQuestion(what)) return sentenceCase(tellFinding(finding).staff);
  return `${QUESTION_HEADS[what]}: ${[value].flat().map((a) => lowerFirst(labelOf(what, String(a)))).join("; ")}`;
}
