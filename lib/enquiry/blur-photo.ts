import "server-only";
import type { Area } from "../photo/area";
import { blurKept } from "../photo/server/blur";
import { database, type Photo, type Prisma } from "../store/database";
import { photoFolder, removePhotoFiles } from "../store/photo-files";
import { forgetLabel, keepRemeasured, remeasured } from "./after-blur";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { areasSchema } from "./blur-schema";
import { markPlans, redrawn, replaceDocuments } from "./blurred-documents";
import { ok, refuse, type Caller, type Result } from "./caller";
import { cutFromPost } from "./cut-from-post";
import { workOnLabel } from "./label-work";
import { inOneStep } from "./one-step";
import { byOf } from "./record-measurement";
import { reconsider } from "./reconsider";
import { toJson } from "./to-json";

const MEANWHILE = refuse("changed-meanwhile", "Somebody has changed this photo, or what was made of it, meanwhile. Look at it again before you blur more.");
const REPLACED = "A photo in it was blurred in part after it was made, and is blurred here too.";
const REPLACED_AND_GONE = `${REPLACED} What was measured in that part no longer counts.`;
const PLAN_GONE = "The plan it shows no longer counts: part of the photo it was drawn on was blurred after it was made.";

/**
 * Blurs parts of a photo for good: people and papers. The photo gets a new id with its new files, in one step with the history and
 * with everything that was drawn from it, so that no size of the old picture is ever shown beside the new one: measurements are
 * measured anew or withdrawn, a label that was read there is forgotten, documents show the new picture. The old files go, at the
 * latest with the next sweep; a message that brought the picture loses it first.
 */
export async function blurPhoto(caller: Caller, { photoId, areas: marked }: { photoId: string; areas: readonly Area[] }, now: Date): Promise<Result<{ photoId: string }>> {
  const no = authorise(caller, "blur-photo");
  if (no) return no;
  const parsed = areasSchema.safeParse(marked);
  if (!parsed.success) return refuse("invalid", parsed.error.issues[0]?.message ?? "");
  const areas = parsed.data;
  const photo = await database().photo.findFirst({ where: { id: photoId, rugId: { not: null } }, include: { rug: { select: { id: true, enquiryId: true } } } });
  if (!photo?.rug) return NOT_THERE;
  const { id: rugId, enquiryId } = photo.rug;
  const blurred = await blurKept(photoFolder(), photoId, areas);
  const done = await keepBlurred(caller, { photo, rugId, enquiryId, areas, blurredId: blurred.id, measured: toJson({ ...(photo.measured as object), ...blurred.measured }) }, now).catch(async (error: unknown) => {
    await removePhotoFiles(blurred.id);
    throw error;
  });
  await removePhotoFiles(done.ok ? photoId : blurred.id);
  if (done.ok) void workOnLabel(blurred.id);
  return done;
}

interface Blurred { photo: Photo; rugId: string; enquiryId: string; areas: readonly Area[]; blurredId: string; measured: Prisma.InputJsonValue }

/** Works out what follows of the blurred picture, then writes all of it in one step. */
async function keepBlurred(caller: Caller, { photo, rugId, enquiryId, areas, blurredId, measured }: Blurred, now: Date): Promise<Result<{ photoId: string }>> {
  const photoId = photo.id;
  const results = await remeasured({ photoId, blurredId, areas, photo });
  const documents = await redrawn({ rugId, instead: new Map([[photoId, blurredId]]) });
  await cutFromPost({ enquiryId, sha256: photo.sha256 });
  return inOneStep(async (tx) => {
    const changed = await tx.photo.updateMany({ where: { id: photoId }, data: { id: blurredId, measured } });
    if (changed.count !== 1) return MEANWHILE;
    const gone = await keepRemeasured(tx, results, { photoId: blurredId, by: byOf(caller), now });
    if (!gone) return MEANWHILE;
    if (!(await replaceDocuments(tx, documents, { rugId, photoIds: [photoId], why: gone.length > 0 ? REPLACED_AND_GONE : REPLACED, now }))) return MEANWHILE;
    await markPlans(tx, gone, { rugId, why: PLAN_GONE, now });
    await forgetLabel(tx, blurredId, areas);
    await reconsider(tx, { rugId, enquiryId }, now);
    // What a letter carried can still be told by the hash its file had.
    const were = documents.map((d) => `${d.id} was ${d.was}`).join(", ");
    await audit(tx, caller, { action: "photo-blurred", enquiryId, at: now, detail: { photoId: blurredId, areas: areas.length, withdrawn: gone.length, documents: were } });
    return ok({ photoId: blurredId });
  });
}
