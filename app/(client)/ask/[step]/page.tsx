import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import { applies, FIRST_STEP, isStepId, previousStep, resumeAt } from "@/lib/enquiry/steps";
import { Shell } from "../../_parts/shell";
import { coloursOfPhotos, intakeOfDevice } from "../intake";
import { StepPage } from "./step-page";

// The title stands in the page itself, because it begins with "Error:" after a failed attempt.
export const metadata: Metadata = { title: null };

/** One question a page. */
export default async function Step({ params }: { params: Promise<{ step: string }> }) {
  const { step } = await params;
  if (!isStepId(step)) notFound();
  const { caller, intake } = await intakeOfDevice();
  if (intake.submittedReference) redirect("/ask/sent");
  if (!caller && step !== FIRST_STEP) redirect(`/ask/${FIRST_STEP}`);
  if (!applies(step, intake.answers)) redirect(`/ask/${resumeAt(intake.answers, intake.photos.length)}`);
  const back = previousStep(step, intake.answers);
  return (
    <Shell
      start={<Link href={back ? `/ask/${back}` : "/"} prefetch={false}>Back</Link>}
      end={caller ? "Saved as you go" : undefined}
      colours={coloursOfPhotos(intake.photos)}
    >
      <StepPage key={step} step={step} intake={intake} />
    </Shell>
  );
}
