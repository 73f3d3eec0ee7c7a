import { quotedInside } from "../words/quoted";
import { agreedLabels } from "../enquiry/label-view";
import type { IntakeAnswers } from "../enquiry/questionnaire";
import { isAnswered, stepRow, stepsFor, type StepId } from "../enquiry/steps";
import { length, money, size, type AreaUnit, type Figures } from "../words/measures";
import type { MessageKey, Words } from "../words/words";
import { wordingOf } from "./wording";

/** One line of the last look: what was asked, what was told, and the page to change it on. */
export interface ReviewLine {
  step: StepId;
  asked: string;
  told: string;
}

/** In which words, and in which unit sizes are said first. `labels`: those in its photos that were agreed on, each as it is told. `sinceToldOn`: the day on which it was told when it happened, once that day may be over. */
export interface ToldIn { readonly words: Words; readonly areaUnit: AreaUnit; readonly labels?: readonly string[]; readonly sinceToldOn?: string | null }

/** The labels in a client's photos that were agreed on: the words, and that they were read there. */
export const labelsRead = (photos: Parameters<typeof agreedLabels>[0], { say }: Words): string[] => agreedLabels(photos).map(({ text, by }) => say("review.label-read", { words: text, by }));

type Head = Extract<MessageKey, `review.${string}` | "story.words">;
/** Short heads of the lines whose page asks no question of the table. */
const HEADS: Partial<Record<StepId, Exclude<Head, "review.photo-count" | "review.label-read" | "review.quoted" | "review.wide" | "review.long" | "review.change-what">>> = {
  photos: "review.photos", label: "review.label", price: "review.price", size: "review.size", story: "story.words", contact: "review.contact",
};
const joined = (parts: readonly (string | number | undefined | false)[]) => parts.filter(Boolean).join(", ");

function toldInChoice(step: StepId, answers: IntakeAnswers, words: Words): string {
  const question = stepRow(step).question;
  if (!question) return "";
  const kept = question === "wetNow" || question === "reason" ? answers[question] : answers.rug?.[question];
  const labels = new Map(wordingOf(question, answers, words).options.map((o) => [o.id, o.label]));
  return [kept ?? []].flat().map((id) => labels.get(id) ?? id).join("; ");
}

/** A size as it was understood: in the workshop's unit, and in the other, because it may have been given in either. */
function sizeTold({ widthCm, lengthCm }: NonNullable<IntakeAnswers["rug"]>, { words, areaUnit }: ToldIn): string {
  const inUnit = (unit: AreaUnit): string => {
    const figures: Figures = { locale: words.locale, areaUnit: unit };
    if (widthCm && lengthCm) return size(widthCm, lengthCm, figures);
    return joined([widthCm && words.say("review.wide", { length: length(widthCm, figures) }), lengthCm && words.say("review.long", { length: length(lengthCm, figures) })]);
  };
  const first = inUnit(areaUnit);
  return first && `${first} (${inUnit(areaUnit === "m2" ? "sqft" : "m2")})`;
}

/** What was read in a photo answers the question, whatever was told beside it. */
function labelTold({ labelFound, labelText }: NonNullable<IntakeAnswers["rug"]>, { words: { say }, labels = [] }: ToldIn): string {
  if (labels.length > 0) return labels.join("; ");
  return labelFound === "none" ? say("review.no-label") : labelFound === "unsure" ? say("ask.unsure") : (labelText ?? "");
}

/** What was answered on a page, in words; empty where nothing was. */
export function toldOn(step: StepId, answers: IntakeAnswers, photos: number, told: ToldIn): string {
  const rug = answers.rug ?? {};
  const { words: { say, locale } } = told;
  const chosen = () => toldInChoice(step, answers, told.words);
  switch (step) {
    case "photos": return photos === 0 ? say("review.no-photos") : say("review.photo-count", { count: say("count.begins", { n: photos }), n: photos });
    case "label": return labelTold(rug, told);
    case "price": return joined([rug.boughtYear, rug.price !== undefined && (rug.currency ? money(rug.price, rug.currency, locale) : String(rug.price))]);
    case "size": return sizeTold(rug, told);
    case "story": return rug.story ?? "";
    case "contact": return joined([answers.contact?.name, answers.contact?.email, answers.contact?.telephone]);
    case "seller": return joined([chosen(), rug.sellerWords && say("review.quoted", { words: quotedInside(rug.sellerWords) })]);
    case "bought": return joined([chosen(), rug.boughtPlace]);
    case "since": return told.sinceToldOn ? say("report.since", { since: chosen(), day: told.sinceToldOn }) : chosen();
    default: return chosen();
  }
}

/** Everything that was answered and still applies, in the order it was asked. Photos and contact always stand there. */
export function reviewOf(answers: IntakeAnswers, photos: number, told: ToldIn): ReviewLine[] {
  const shown = stepsFor(answers).filter((step) => step === "photos" || step === "contact" || isAnswered(step, answers, photos) || (step === "label" && (told.labels?.length ?? 0) > 0));
  return shown.map((step) => {
    const { question } = stepRow(step);
    const head = HEADS[step];
    const asked = head ? told.words.say(head) : question ? wordingOf(question, answers, told.words).ask : step;
    return { step, asked, told: toldOn(step, answers, photos, told) || told.words.say("review.nothing") };
  });
}
