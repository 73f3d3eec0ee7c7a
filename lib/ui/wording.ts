import type { IntakeAnswers } from "../enquiry/questionnaire";
import { offeredAnswers } from "../enquiry/steps";
import type { AnswerRow, QuestionRow } from "../trade/question-row";
import { QUESTIONS, type QuestionId } from "../trade/questions";
import { WORDING_FOR_TRADE } from "../trade/wording-for-trade";
import type { Words } from "../words/words";

/** A question as one person reads it. */
export interface Wording {
  kind: "one" | "many";
  ask: string;
  hint: string | undefined;
  options: { id: string; label: string; hint: string | undefined }[];
}

/** The question in the words for this person, with the answers offered to them; "I'm not sure" always closes the list. */
export function wordingOf(question: QuestionId, answers: IntakeAnswers, words: Words): Wording {
  const row: QuestionRow = QUESTIONS[question];
  const trade = answers.reason === "trade" ? WORDING_FOR_TRADE[question] : undefined;
  const asked = (part: "ask" | "hint") =>
    trade?.[part] !== undefined ? words.table(`trade.question.${question}.${part}`) : row[part] !== undefined ? words.table(`question.${question}.${part}`) : undefined;
  const option = (id: string) => {
    const own = trade?.answers?.[id];
    const { hint } = own ?? (row.answers[id] as AnswerRow);
    const key = `${own ? "trade." : ""}question.${question}.answer.${id}` as const;
    return { id, label: words.table(key), hint: hint === undefined ? undefined : words.table(`${key}.hint`) };
  };
  return {
    kind: row.kind,
    ask: asked("ask") ?? "",
    hint: asked("hint"),
    options: [...offeredAnswers(question, answers).map(option), { id: "unsure", label: words.say("ask.unsure"), hint: undefined }],
  };
}
