import "server-only";
import { database } from "../store/database";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { agreedLabels } from "./label-view";
import { clientSpots } from "./measurement-view";
import { photoViews } from "./photo-view";
import { intakeAnswersSchema, type IntakeAnswers } from "./questionnaire";
import type { StepId } from "./steps";
import type { ClientSpots } from "./measured-views";
import type { PhotoView } from "./views";

export interface IntakeView {
  answers: IntakeAnswers;
  photos: PhotoView[];
  spots: ClientSpots;
  /** The reference it was submitted under; null while it is being filled in. */
  submittedReference: string | null;
}

/** Steps whose question is answered already, though not on their page: a label read in a photo, once its words were agreed to. */
export const knownOf = ({ answers, photos }: Pick<IntakeView, "answers" | "photos">): StepId[] =>
  (answers.rug?.labelFound === undefined && agreedLabels(photos).length > 0 ? ["label"] : []);

/** What a person has told so far, on the device they told it on. */
export async function readIntake(caller: Caller): Promise<Result<IntakeView>> {
  const no = authorise(caller, "fill-intake");
  if (no || caller.kind !== "intake") return no ?? NOT_THERE;
  const row = await database().intake.findUnique({
    where: { id: caller.intakeId },
    include: { photos: { orderBy: { position: "asc" }, include: { measurements: true, label: true } }, enquiry: { select: { reference: true } } },
  });
  if (!row) return NOT_THERE;
  const answers = intakeAnswersSchema.parse(row.answers);
  return ok({
    answers,
    photos: photoViews(row.photos, answers.rug?.labelText),
    spots: clientSpots(row.photos),
    submittedReference: row.enquiry?.reference ?? null,
  });
}
