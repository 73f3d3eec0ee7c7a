import type { IntakeAnswers } from "../enquiry/questionnaire";
import { stepRow, type StepId } from "../enquiry/steps";
import type { MessageKey, Words } from "../words/words";
import { wordingOf } from "./wording";

type PlainKey = Extract<MessageKey, `step.${string}`>;
/** What heads the pages that ask no question of the table. `trade`: where it reads differently for a colleague. */
const TITLES: Partial<Record<StepId, { title: PlainKey; trade?: PlainKey }>> = {
  "first-aid": { title: "step.first-aid" },
  "call-us": { title: "step.call-us" },
  photos: { title: "step.photos" },
  label: { title: "step.label" },
  price: { title: "step.price" },
  size: { title: "step.size" },
  story: { title: "step.story", trade: "step.story-trade" },
  contact: { title: "step.contact", trade: "step.contact-trade" },
  send: { title: "step.send" },
};

/** The heading of a page, and its title. */
export function titleOf(step: StepId, answers: IntakeAnswers, words: Words): string {
  const { question } = stepRow(step);
  if (question) return wordingOf(question, answers, words).ask;
  const row = TITLES[step];
  if (!row) throw new Error(`Expected a step with a title but received ${step}`);
  return words.say((answers.reason === "trade" ? row.trade : undefined) ?? row.title);
}
