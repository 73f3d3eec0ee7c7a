import "server-only";
import { randomUUID } from "node:crypto";
import { database, isTaken } from "../store/database";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { labelReadingView } from "./label-reading";
import { labelToldTo, WITH_TOLD_LABEL } from "./label-told";
import type { LabelReadingView, LabelState } from "./label-view";
import { WHOLE_PHOTO, workOnLabel } from "./label-work";
import { toJson } from "./to-json";
import { wrong } from "./wrong";

/** A reading that is still to be made, of the whole photo or of the part a person framed. Its id is its own, so that an earlier one that ends late changes nothing. */
export const readingDue = (crop = WHOLE_PHOTO) =>
  ({ id: randomUUID(), text: "", corrected: null, words: [], crop: toJson(crop), degrees: 0, state: "reading" satisfies LabelState, answeredBy: null, answeredAt: null });

/**
 * How the label in a photo reads so far; begins to read it where nobody has. Answers at once: reading takes a second or some, in
 * a thread of its own, and whoever asks again later is told more. Nothing is believed of it until a person says what it is.
 */
export async function readPhotoLabel(caller: Caller, photoId: string): Promise<Result<LabelReadingView>> {
  const photo = await database().photo.findUnique({ where: { id: photoId }, include: { label: true, ...WITH_TOLD_LABEL } });
  const no = authorise(caller, "read-label", { enquiryId: photo?.rug?.enquiryId ?? null, intakeId: photo?.intakeId ?? null });
  if (no) return no;
  if (!photo) return NOT_THERE;
  if (!photo.label && photo.kind !== "label") return refuse("invalid", wrong("refusal.label-only"));
  const row = photo.label ?? (await database().labelReading.create({ data: { ...readingDue(), photoId } }).catch(async (error: unknown) => {
    if (isTaken(error)) return database().labelReading.findUnique({ where: { photoId } });
    throw error;
  }));
  if (!row) return NOT_THERE;
  if (row.state === ("reading" satisfies LabelState)) void workOnLabel(photoId);
  return ok(labelReadingView(row, photo, labelToldTo(caller, photo)));
}
