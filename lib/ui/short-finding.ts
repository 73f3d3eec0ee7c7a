import { QUESTIONS, type QuestionId } from "../trade/questions";
import type { Assessment } from "../triage/assessment";
import type { Finding } from "../triage/finding";
import { tellFinding, type Tells } from "../triage/say-finding";
import { money, number, ratePerArea, run, size, smallArea, type Figures } from "../words/measures";
import { lowerFirst, sentenceCase } from "./figures";
import { QUESTION_HEADS } from "./heads";
import { labelOf } from "./told";

const isQuestion = (what: string): what is QuestionId => Object.hasOwn(QUESTIONS, what);

/** Measures and prices in the workshop's own units. */
const tellsIn = (figures: Figures): Tells => ({
  perM2: (amount, currency) => (currency ? ratePerArea(amount, currency, figures) : `${number(amount, figures.locale)} a square metre`),
  total: (amount, currency) => (currency ? money(amount, currency, figures.locale) : number(amount, figures.locale)),
  cm2: (cm2, significant) => smallArea(cm2, figures, significant), run: (metres) => run(metres, figures), size: (widthCm, lengthCm) => size(widthCm, lengthCm, figures),
});

/** A finding in a few words, for a list: "Shine: light from one end, dark from the other". Its weight stands beside it. */
export function shortFinding(finding: Finding, figures: Figures): string {
  const { what, value } = finding;
  if (!isQuestion(what)) return sentenceCase(tellFinding(finding, tellsIn(figures)).staff);
  return `${QUESTION_HEADS[what]}: ${[value].flat().map((a) => lowerFirst(labelOf(what, String(a)))).join("; ")}`;
}

/** What does not fit together, as an assessment says it, with the measures and prices of its findings in the workshop's own units. */
export const conflictIn = ({ staff }: Assessment["conflicts"][number], findings: readonly Finding[], figures: Figures): string =>
  findings.reduce((text, finding) => text.replace(tellFinding(finding).staff, () => tellFinding(finding, tellsIn(figures)).staff), staff);
