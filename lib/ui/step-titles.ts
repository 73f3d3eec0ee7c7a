import type { IntakeAnswers } from "../enquiry/questionnaire";
import { stepRow, type StepId } from "../enquiry/steps";
import { wordingOf } from "./wording";

/** What heads the pages that ask no question of the table. `trade`: where it reads differently for a colleague. */
const TITLES: Partial<Record<StepId, { title: string; trade?: string }>> = {
  "first-aid": { title: "First, before anything else" },
  "call-us": { title: "Please ring us first" },
  photos: { title: "Now a few photos" },
  label: { title: "Is there a label, and what does it say?" },
  price: { title: "When was it bought, and for how much?" },
  size: { title: "How big is it?" },
  story: { title: "Is there anything else we should know?", trade: "What happened, in your own words?" },
  contact: { title: "Who are you, and how can we reach you?", trade: "Your name, and how we reach you quickest" },
  send: { title: "One last look, then send it" },
};

/** The heading of a page, and its title. */
export function titleOf(step: StepId, answers: IntakeAnswers): string {
  const { question } = stepRow(step);
  if (question) return wordingOf(question, answers).ask;
  const row = TITLES[step];
  if (!row) throw new Error(`Expected a step with a title but received ${step}`);
  return (answers.reason === "trade" ? row.trade : undefined) ?? row.title;
}
