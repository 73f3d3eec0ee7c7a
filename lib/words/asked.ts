import type { QuestionId } from "../trade/questions";
import { WORDING_FOR_TRADE } from "../trade/wording-for-trade";
import type { Words } from "./words";

/** Of whom a question is asked: somebody who cleans rugs reads some of them otherwise. */
export interface Asked { readonly isTrade: boolean }

const own = (question: QuestionId, { isTrade }: Asked) => (isTrade ? WORDING_FOR_TRADE[question] : undefined);

/** The key of an answer's words, and of its hint's under it. `id`: one of the question's answers, not `unsure`. */
export const answerKey = (question: QuestionId, id: string, asked: Asked) =>
  `${own(question, asked)?.answers?.[id] ? "trade." : ""}question.${question}.answer.${id}` as const;

/** A question as this person reads it. */
export const askIn = (words: Words, question: QuestionId, asked: Asked): string =>
  words.table(`${own(question, asked)?.ask === undefined ? "" : "trade."}question.${question}.ask`);

/** An answer as this person chose it; `unsure` is one of every question. */
export const answerIn = (words: Words, question: QuestionId, { id, isTrade }: Asked & { readonly id: string }): string =>
  (id === "unsure" ? words.say("ask.unsure") : words.table(answerKey(question, id, { isTrade })));
