import type { IntakeView } from "@/lib/enquiry/read-intake";
import { valuesOf } from "@/lib/enquiry/step-forms";
import { isFormStep } from "@/lib/enquiry/step-schemas";
import type { StepId } from "@/lib/enquiry/steps";
import { StepFields } from "@/lib/ui/step-fields";
import { CallUs } from "./call-us";
import { FirstAidFirst } from "./first-aid-first";
import { Send } from "./send";
import { GoOn } from "./go-on";
import { StepForm } from "./step-form";
import { titleOf } from "@/lib/ui/step-titles";

/** Pages without a list of answers: "I'm not sure" is a button of its own there. */
const UNSURE_BUTTON: Partial<Record<StepId, string>> = { price: "I’m not sure", size: "I’m not sure", story: "Nothing to add" };

/** What stands on the page of a step; the photos have a page of their own. */
export function StepPage({ step, intake }: { step: StepId; intake: IntakeView }) {
  const { answers } = intake;
  if (step === "first-aid") return <FirstAidFirst answers={answers} />;
  if (step === "call-us") return <CallUs answers={answers} />;
  if (step === "send") return <Send intake={intake} />;
  if (!isFormStep(step)) throw new Error(`Expected a step with a form but received ${step}`);
  return (
    <StepForm step={step} title={titleOf(step, answers)} values={valuesOf(step, answers)}>
      <StepFields step={step} answers={answers} />
      <GoOn step={step} answers={answers} unsure={UNSURE_BUTTON[step]} />
    </StepForm>
  );
}
