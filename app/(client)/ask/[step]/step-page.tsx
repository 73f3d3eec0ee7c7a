import { inForce, isSettled } from "@/lib/enquiry/label-view";
import type { IntakeView } from "@/lib/enquiry/read-intake";
import { valuesOf } from "@/lib/enquiry/step-forms";
import { isFormStep } from "@/lib/enquiry/step-schemas";
import type { StepId } from "@/lib/enquiry/steps";
import { offeredSize } from "@/lib/ui/offered-size";
import { labelsRead } from "@/lib/ui/review";
import { StepFields } from "@/lib/ui/step-fields";
import { titleOf } from "@/lib/ui/step-titles";
import { wordsIn, type MessageKey } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { CallUs } from "./call-us";
import { FirstAidFirst } from "./first-aid-first";
import { GoOn } from "./go-on";
import { Send } from "./send";
import { StepForm } from "./step-form";

/** Pages without a list of answers: "I'm not sure" is a button of its own there. */
const UNSURE_BUTTON: Partial<Record<StepId, Extract<MessageKey, "ask.unsure" | "ask.nothing-to-add">>> = { price: "ask.unsure", size: "ask.unsure", story: "ask.nothing-to-add" };

/** What stands on the page of a step; the photos have a page of their own. */
export async function StepPage({ step, intake }: { step: StepId; intake: IntakeView }) {
  const { answers } = intake;
  if (step === "first-aid") return <FirstAidFirst answers={answers} />;
  if (step === "call-us") return <CallUs answers={answers} />;
  if (step === "send") return <Send intake={intake} />;
  if (!isFormStep(step)) throw new Error(`Expected a step with a form but received ${step}`);
  const { locale, areaUnit, currency } = await readSettings();
  const words = wordsIn(locale);
  const unsure = UNSURE_BUTTON[step];
  const offered = step === "size" ? offeredSize({ answers, photos: intake.photos }, { words, areaUnit }) : null;
  const known = step === "label" ? labelsRead(intake.photos, words) : (offered?.known ?? []);
  return (
    <StepForm step={step} title={titleOf(step, answers, words)} values={{ ...valuesOf(step, answers, { areaUnit, currency }), ...(step === "label" ? agreedLabel(intake) : {}), ...offered?.values }}>
      <StepFields step={step} answers={answers} words={words} areaUnit={areaUnit} known={known} />
      <GoOn step={step} answers={answers} words={words} unsure={unsure && words.say(unsure)} />
    </StepForm>
  );
}

/** The label as the person agreed to it beside its photo, so that nobody is asked twice; nothing once the page was answered. */
function agreedLabel({ answers, photos }: IntakeView): { answer?: string; labelText?: string } {
  const agreed = photos.map((p) => p.label && inForce(p.label)).find((l) => l && isSettled(l.state));
  return answers.rug?.labelFound === undefined && agreed ? { answer: "typed", labelText: agreed.text } : {};
}
