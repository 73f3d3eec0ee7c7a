import type { IntakeAnswers } from "../enquiry/questionnaire";
import type { StepId } from "../enquiry/steps";

/** What the fields of a page need to know. */
export interface StepProps {
  step: StepId;
  answers: IntakeAnswers;
}
