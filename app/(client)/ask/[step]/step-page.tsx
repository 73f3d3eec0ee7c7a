import type { IntakeView } from "@/lib/enquiry/read-intake";
import { valuesOf } from "@/lib/enquiry/step-forms";
import { isFormStep, type FormStepId } from "@/lib/enquiry/step-schemas";
import { stepRow, type StepId } from "@/lib/enquiry/steps";
import { BoughtFields, LabelFields, PriceFields, SellerFields, SizeFields, StoryFields, ContactFields } from "./fields";
import { ChoiceFields } from "./choice-fields";
import { CallUs } from "./call-us";
import { FirstAidFirst } from "./first-aid-first";
import { Send } from "./send";
import { GoOn } from "./go-on";
import { StepForm } from "./step-form";
import { titleOf } from "./titles";
import type { StepProps } from "./step-props";

/** The pages that are more than one choice out of a list. */
const OWN_FIELDS: Partial<Record<FormStepId, (props: StepProps) => React.ReactNode>> = {
  label: LabelFields, seller: SellerFields, bought: BoughtFields, price: PriceFields, size: SizeFields, story: StoryFields, contact: ContactFields,
};
/** Pages without a list of answers: "I'm not sure" is a button of its own there. */
const UNSURE_BUTTON: Partial<Record<StepId, string>> = { price: "I’m not sure", size: "I’m not sure", story: "Nothing to add" };

/** What stands on the page of a step; the photos have a page of their own. */
export function StepPage({ step, intake }: { step: StepId; intake: IntakeView }) {
  const { answers } = intake;
  if (step === "first-aid") return <FirstAidFirst answers={answers} />;
  if (step === "call-us") return <CallUs answers={answers} />;
  if (step === "send") return <Send intake={intake} />;
  if (!isFormStep(step)) throw new Error(`Expected a step with a form but received ${step}`);
  const Fields = OWN_FIELDS[step];
  const question = stepRow(step).question;
  return (
    <StepForm step={step} title={titleOf(step, answers)} values={valuesOf(step, answers)}>
      {Fields ? <Fields step={step} answers={answers} /> : question && <ChoiceFields step={step} question={question} answers={answers} />}
      <GoOn step={step} answers={answers} unsure={UNSURE_BUTTON[step]} />
    </StepForm>
  );
}
