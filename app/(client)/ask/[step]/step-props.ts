import type { IntakeAnswers } from "@/lib/enquiry/questionnaire";
import type { StepId } from "@/lib/enquiry/steps";

/** What the fields of a page need to know. */
export interface StepProps {
  step: StepId;
  answers: IntakeAnswers;
}
