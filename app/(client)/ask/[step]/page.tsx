import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { isStepId } from "@/lib/enquiry/steps";
import { StepFrame } from "../step-frame";
import { StepPage } from "./step-page";

// The title stands in the page itself, because it begins with "Error:" after a failed attempt.
export const metadata: Metadata = { title: null };

/** One question a page. */
export default async function Step({ params }: { params: Promise<{ step: string }> }) {
  const { step } = await params;
  if (!isStepId(step)) notFound();
  return <StepFrame step={step}>{(intake) => <StepPage key={step} step={step} intake={intake} />}</StepFrame>;
}
