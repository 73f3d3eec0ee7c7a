import "server-only";
import * as z from "zod/mini";
import { UNSAID_PHOTO, type ShownKind } from "../trade/questions";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStepOfMany } from "./one-step";
import { shownKindSchema } from "./photo-view";
import { reconsider } from "./reconsider";

export const namedPhotoSchema = z.strictObject({ photoId: z.string().check(z.minLength(1), z.maxLength(64)), from: shownKindSchema, to: shownKindSchema });
export interface NamedPhoto { photoId: string; /** What it counted as when the person looked. */ from: ShownKind; to: ShownKind }

/**
 * Staff say what a photo shows that came by mail, or was sent in place of another. Which photos there are bears on what is asked
 * for, so the rug is judged anew.
 */
export async function namePhoto(caller: Caller, { photoId, from, to }: NamedPhoto, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "correct-answer");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  if (to === UNSAID_PHOTO) return refuse("invalid", "Choose what it shows.");
  return inOneStepOfMany(async (tx) => {
    const photo = await tx.photo.findUnique({ where: { id: photoId }, select: { rug: { select: { id: true, enquiryId: true } } } });
    if (!photo?.rug) return NOT_THERE;
    const named = await tx.photo.updateMany({ where: { id: photoId, kind: from }, data: { kind: to } });
    if (named.count !== 1) return refuse("changed-meanwhile", "Somebody has said meanwhile what this photo shows. Look at it again.");
    const { id: rugId, enquiryId } = photo.rug;
    await audit(tx, caller, { action: "photo-named", enquiryId, at: now, detail: { photoId, from, to } });
    await reconsider(tx, { rugId, enquiryId }, now);
    return ok(null);
  });
}
