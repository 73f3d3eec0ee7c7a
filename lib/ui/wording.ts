import type { IntakeAnswers } from "../enquiry/questionnaire";
import { offeredAnswers } from "../enquiry/steps";
import type { AnswerRow, QuestionRow } from "../trade/question-row";
import { QUESTIONS, type QuestionId } from "../trade/questions";
import { WORDING_FOR_TRADE } from "../trade/wording-for-trade";

/** A question as one person reads it. */
export interface Wording {
  kind: "one" | "many";
  ask: string;
  hint: string | undefined;
  options: { id: string; label: string; hint: string | undefined }[];
}

/** The question in the words for this person, with the answers offered to them; "I'm not sure" always closes the list. */
export function wordingOf(question: QuestionId, answers: IntakeAnswers): Wording {
  const row: QuestionRow = QUESTIONS[question];
  const trade = answers.reason === "trade" ? WORDING_FOR_TRADE[question] : undefined;
  const option = (id: string) => {
    const { label, hint } = (trade?.answers?.[id] ?? row.answers[id]) as AnswerRow;
    return { id, label, hint };
  };
  return {
    kind: row.kind,
    ask: trade?.ask ?? row.ask,
    hint: trade?.hint ?? row.hint,
    options: [...offeredAnswers(question, answers).map(option), { id: "unsure", label: "I’m not sure", hint: undefined }],
  };
}
