import "server-only";
import { database } from "../store/database";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { agreedLabels } from "./label-view";
import { clientSpots } from "./measurement-view";
import { photoViews } from "./photo-view";
import { intakeAnswersSchema, type IntakeAnswers } from "./questionnaire";
import { sentAs } from "./sent-as";
import type { StepId } from "./steps";
import type { ClientSpots } from "./measured-views";
import type { PhotoView } from "./views";

export interface IntakeView {
  answers: IntakeAnswers;
  photos: PhotoView[];
  spots: ClientSpots;
  /** The reference it was submitted under; null while it is being filled in. */
  submittedReference: string | null;
  /** Whether it is about another rug of a person who has sent one: who they are is known. */
  isAnother: boolean;
}

/** Steps whose question is answered already, though not on their page: a label read in a photo, once its words were agreed to; who somebody is that has sent a rug before. */
export function knownOf({ answers, photos, isAnother }: Pick<IntakeView, "answers" | "photos" | "isAnother">): StepId[] {
  const isLabelKnown = answers.rug?.labelFound === undefined && agreedLabels(photos).length > 0;
  return [...(isLabelKnown ? ["label" as const] : []), ...(isAnother && answers.contact ? ["contact" as const] : [])];
}

/** What a person has told so far, on the device they told it on. */
export async function readIntake(caller: Caller): Promise<Result<IntakeView>> {
  const no = authorise(caller, "fill-intake");
  if (no || caller.kind !== "intake") return no ?? NOT_THERE;
  const row = await database().intake.findUnique({
    where: { id: caller.intakeId },
    include: { photos: { orderBy: { position: "asc" }, include: { measurements: true, label: true } } },
  });
  if (!row) return NOT_THERE;
  const answers = intakeAnswersSchema.parse(row.answers);
  return ok({
    answers,
    photos: photoViews(row.photos, answers.rug?.labelText),
    spots: clientSpots(row.photos),
    submittedReference: (await sentAs(database(), row.id))?.reference ?? null,
    isAnother: row.addsToId !== null,
  });
}
