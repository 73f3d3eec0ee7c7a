import { Link } from "@/lib/ui/link";
import { redirect } from "next/navigation";
import type { ReactNode } from "react";
import { clientWords } from "@/app/_server/client-words";
import { knownOf, type IntakeView } from "@/lib/enquiry/read-intake";
import { applies, FIRST_STEP, previousStep, resumeAt, type StepId } from "@/lib/enquiry/steps";
import { Shell } from "../_parts/shell";
import { coloursOfPhotos, intakeOfDevice } from "./intake";

/** The frame of a step: sends on who has no business here, and shows the way back and the strip of the photos sent so far. */
export async function StepFrame({ step, children }: { step: StepId; children: (intake: IntakeView) => ReactNode }) {
  const { caller, intake } = await intakeOfDevice();
  if (intake.submittedReference) redirect("/ask/sent");
  if (!caller && step !== FIRST_STEP) redirect(`/ask/${FIRST_STEP}`);
  const known = knownOf(intake);
  if (!applies(step, intake.answers)) redirect(`/ask/${resumeAt(intake.answers, intake.photos.length, known)}`);
  const words = await clientWords();
  const back = previousStep(step, intake.answers, known);
  return (
    <Shell
      words={words}
      start={<Link href={back ? `/ask/${back}` : "/"}>{words.say("ask.back")}</Link>}
      end={caller ? words.say("ask.saved") : undefined}
      colours={coloursOfPhotos(intake.photos)}
    >
      {children(intake)}
    </Shell>
  );
}
