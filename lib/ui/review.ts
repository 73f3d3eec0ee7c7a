import type { IntakeAnswers } from "../enquiry/questionnaire";
import { isAnswered, stepRow, stepsFor, type StepId } from "../enquiry/steps";
import { countInWords, sentenceCase } from "./figures";
import { wordingOf } from "./wording";

/** One line of the last look: what was asked, what was told, and the page to change it on. */
export interface ReviewLine {
  step: StepId;
  asked: string;
  told: string;
}

const LABEL_WORDS = { typed: "", none: "No label", unsure: "I’m not sure" } as const;
/** Short heads of the lines whose page asks no question of the table. */
const HEADS: Partial<Record<StepId, string>> = {
  photos: "Photos", label: "The label", price: "Bought", size: "Size", story: "In your own words", contact: "How to reach you",
};
const joined = (parts: readonly (string | number | undefined | false)[]) => parts.filter(Boolean).join(", ");

const quoted = (words: string | undefined) => words && `“${words}”`;

function toldInChoice(step: StepId, answers: IntakeAnswers): string {
  const question = stepRow(step).question;
  if (!question) return "";
  const kept = question === "wetNow" || question === "reason" ? answers[question] : answers.rug?.[question];
  const labels = new Map(wordingOf(question, answers).options.map((o) => [o.id, o.label]));
  return [kept ?? []].flat().map((id) => labels.get(id) ?? id).join("; ");
}

/** What was answered on a page, in words; empty where nothing was. */
export function toldOn(step: StepId, answers: IntakeAnswers, photos = 0): string {
  const rug = answers.rug ?? {};
  switch (step) {
    case "photos": return photos === 0 ? "None yet" : sentenceCase(`${countInWords(photos)} ${photos === 1 ? "photo" : "photos"}`);
    case "label": return (rug.labelFound ? LABEL_WORDS[rug.labelFound] : "") || (rug.labelText ?? "");
    case "price": return joined([rug.boughtYear, rug.price !== undefined && `${rug.price.toLocaleString("en")} ${rug.currency ?? ""}`.trim()]);
    case "size": return rug.widthCm && rug.lengthCm ? `${rug.widthCm} × ${rug.lengthCm} cm` : joined([rug.widthCm && `${rug.widthCm} cm wide`, rug.lengthCm && `${rug.lengthCm} cm long`]);
    case "story": return rug.story ?? "";
    case "contact": return joined([answers.contact?.name, answers.contact?.email, answers.contact?.telephone]);
    case "seller": return joined([toldInChoice(step, answers), quoted(rug.sellerWords)]);
    case "bought": return joined([toldInChoice(step, answers), rug.boughtPlace]);
    default: return toldInChoice(step, answers);
  }
}

/** Everything that was answered and still applies, in the order it was asked. Photos and contact always stand there. */
export function reviewOf(answers: IntakeAnswers, photos: number): ReviewLine[] {
  const shown = stepsFor(answers).filter((step) => step === "photos" || step === "contact" || isAnswered(step, answers, photos));
  return shown.map((step) => {
    const { question } = stepRow(step);
    return { step, asked: HEADS[step] ?? (question ? wordingOf(question, answers).ask : step), told: toldOn(step, answers, photos) || "Nothing yet" };
  });
}
