import "server-only";
import { ALLOWANCES, takeOne } from "../staff/rate-limit";
import { database, NO_JSON } from "../store/database";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { framedLabelSchema, type FramedLabel } from "./frame-schema";
import { agreedOf, isOpenToClient, labelReadingView } from "./label-reading";
import { labelToldTo, WITH_TOLD_LABEL } from "./label-told";
import type { LabelReadingView } from "./label-view";
import { workOnLabel } from "./label-work";
import { inOneStepOfMany } from "./one-step";
import { readingDue } from "./read-photo-label";
import { toJson } from "./to-json";
import { wrong } from "./wrong";

/**
 * A person shows where in a photo the label lies: that part is read anew, whatever was read before. What was agreed on counts
 * until somebody agrees to the new reading, or says that there is none; so nothing is judged anew here. Staff may frame a label in any photo; a client in one of the label, as long as staff have not settled it.
 */
export async function frameLabel(caller: Caller, given: FramedLabel, now: Date): Promise<Result<LabelReadingView>> {
  const parsed = framedLabelSchema.safeParse(given);
  if (!parsed.success) return refuse("invalid", parsed.error.issues[0]?.message ?? "");
  const { photoId, frame } = parsed.data;
  const photo = await database().photo.findUnique({ where: { id: photoId }, include: WITH_TOLD_LABEL });
  const no = authorise(caller, "read-label", { enquiryId: photo?.rug?.enquiryId ?? null, intakeId: photo?.intakeId ?? null });
  if (no) return no;
  if (!photo) return NOT_THERE;
  if (caller.kind !== "staff" && photo.kind !== "label") return refuse("invalid", wrong("refusal.label-only"));
  if (caller.kind !== "staff" && !(await takeOne(`label-frame:${photoId}`, ALLOWANCES.labelFrame, now))) return refuse("too-many", wrong("refusal.many-frames"));
  const framed = await inOneStepOfMany(async (tx) => {
    const before = await tx.labelReading.findUnique({ where: { photoId } });
    if (caller.kind !== "staff" && before && !isOpenToClient(before)) return refuse("changed-meanwhile", wrong("refusal.label-settled"));
    const due = readingDue(frame);
    const agreed = before && agreedOf(before);
    const row = await tx.labelReading.upsert({ where: { photoId }, create: { ...due, photoId }, update: { ...due, agreed: agreed ? toJson(agreed) : NO_JSON } });
    if (photo.rug) await audit(tx, caller, { action: "label-framed", enquiryId: photo.rug.enquiryId, at: now, detail: { photoId } });
    return ok(labelReadingView(row, photo, labelToldTo(caller, photo)));
  });
  if (framed.ok) void workOnLabel(photoId);
  return framed;
}
