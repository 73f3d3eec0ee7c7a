import "server-only";
import type { Area } from "../photo/area";
import { blurKept } from "../photo/server/blur";
import { database } from "../store/database";
import { photoFolder, removePhotoFiles } from "../store/photo-files";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { areasSchema } from "./blur-schema";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { toJson } from "./to-json";

/**
 * Blurs parts of a photo for good: people and papers. The photo gets a new id with its new files, in one step with the history,
 * so that no size of the old picture is ever shown beside the new one; the old files go, at the latest with the next sweep.
 */
export async function blurPhoto(caller: Caller, { photoId, areas: marked }: { photoId: string; areas: readonly Area[] }, now: Date): Promise<Result<{ photoId: string }>> {
  const no = authorise(caller, "blur-photo");
  if (no) return no;
  const areas = areasSchema.safeParse(marked);
  if (!areas.success) return refuse("invalid", areas.error.issues[0]?.message ?? "");
  const photo = await database().photo.findFirst({ where: { id: photoId, rugId: { not: null } }, select: { measured: true, rug: { select: { enquiryId: true } } } });
  if (!photo?.rug) return NOT_THERE;
  const { enquiryId } = photo.rug;
  const blurred = await blurKept(photoFolder(), photoId, areas.data);
  const measured = toJson({ ...(photo.measured as object), ...blurred.measured });
  const done = await inOneStep(async (tx) => {
    const changed = await tx.photo.updateMany({ where: { id: photoId }, data: { id: blurred.id, measured } });
    if (changed.count !== 1) return refuse("changed-meanwhile", "Somebody has changed this photo meanwhile. Look at it again before you blur more.");
    await audit(tx, caller, { action: "photo-blurred", enquiryId, at: now, detail: { photoId: blurred.id, areas: areas.data.length } });
    return ok({ photoId: blurred.id });
  }).catch(async (error: unknown) => {
    await removePhotoFiles(blurred.id);
    throw error;
  });
  await removePhotoFiles(done.ok ? photoId : blurred.id);
  return done;
}
