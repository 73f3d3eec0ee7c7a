import { sizeToOffer } from "../enquiry/label-size";
import type { IntakeAnswers } from "../enquiry/questionnaire";
import { valuesOf } from "../enquiry/step-forms";
import type { FormValues } from "../enquiry/step-schemas";
import { size, type AreaUnit } from "../words/measures";
import type { Words } from "../words/words";

/** The size on a label that was typed or agreed to, in the fields of the page that asks for it, and that it comes from there; null where there is none to offer. Nothing is kept until somebody sends the page. */
export function offeredSize({ answers, photos }: { answers: IntakeAnswers; photos: Parameters<typeof sizeToOffer>[1] }, { words, areaUnit }: { words: Words; areaUnit: AreaUnit }): { values: FormValues; known: string[] } | null {
  const offer = sizeToOffer(answers.rug ?? {}, photos);
  if (!offer) return null;
  return { values: valuesOf("size", { rug: offer }, { areaUnit }), known: [words.say("size.on-label", { size: size(offer.widthCm, offer.lengthCm, { locale: words.locale, areaUnit }) })] };
}
