import type { IntakeAnswers } from "../enquiry/questionnaire";
import { offeredAnswers } from "../enquiry/steps";
import type { AnswerRow, QuestionRow } from "../trade/question-row";
import { QUESTIONS, type QuestionId } from "../trade/questions";
import { WORDING_FOR_TRADE } from "../trade/wording-for-trade";
import { answerIn, answerKey, askIn } from "../words/asked";
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
  const isTrade = answers.reason === "trade";
  const trade = isTrade ? WORDING_FOR_TRADE[question] : undefined;
  const hint = trade?.hint !== undefined ? words.table(`trade.question.${question}.hint`) : row.hint !== undefined ? words.table(`question.${question}.hint`) : undefined;
  const option = (id: string) => {
    const { hint: more } = trade?.answers?.[id] ?? (row.answers[id] as AnswerRow);
    return { id, label: answerIn(words, question, { id, isTrade }), hint: more === undefined ? undefined : words.table(`${answerKey(question, id, { isTrade })}.hint`) };
  };
  return {
    kind: row.kind,
    ask: askIn(words, question, { isTrade }),
    hint,
    options: [...offeredAnswers(question, answers).map(option), { id: "unsure", label: words.say("ask.unsure"), hint: undefined }],
  };
}
