import type { Metadata } from "next";
import { clientWords } from "@/app/_server/client-words";
import { StepFrame } from "../step-frame";
import { Photos } from "./photos";

export const metadata: Metadata = { title: null };

/** The step that takes photos: a page of its own, so that questions do not carry its code, nor it theirs. */
export default async function PhotosPage() {
  const words = await clientWords();
  return <StepFrame step="photos">{(intake) => <Photos intake={intake} words={words} />}</StepFrame>;
}
