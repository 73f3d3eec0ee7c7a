import "server-only";
import { intakeCaller } from "@/app/_server/caller";
import type { Caller } from "@/lib/enquiry/caller";
import { readIntake, type IntakeView } from "@/lib/enquiry/read-intake";
import type { ColourShare, PhotoView } from "@/lib/enquiry/views";

const NOTHING_YET: IntakeView = { answers: {}, photos: [], spots: {}, submittedReference: null, isAnother: false };

/** What was told on this device so far, and who tells it; nothing where the device is new to us. */
export async function intakeOfDevice(): Promise<{ caller: Caller | null; intake: IntakeView }> {
  const caller = await intakeCaller();
  const read = caller ? await readIntake(caller) : null;
  return read?.ok ? { caller, intake: read.value } : { caller: null, intake: NOTHING_YET };
}

/** The strip of a questionnaire: the colours of the whole rug where it was photographed, else of the first photo that has any. */
export function coloursOfPhotos(photos: readonly PhotoView[]): ColourShare[] {
  const found = photos.find((p) => p.kind === "whole") ?? photos.find((p) => p.kind === "trouble" || p.kind === "pile") ?? photos[0];
  return found?.colours ?? [];
}
