import type { IntakeAnswers } from "../enquiry/questionnaire";
import type { StepId } from "../enquiry/steps";
import type { Words } from "../words/words";

/** What the fields of a page need to know. */
export interface StepProps {
  step: StepId;
  answers: IntakeAnswers;
  words: Words;
}
