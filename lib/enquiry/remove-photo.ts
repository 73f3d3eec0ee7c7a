import "server-only";
import { database } from "../store/database";
import { removePhotoFiles } from "../store/photo-files";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";

/** Takes a photo out of a questionnaire that was not sent yet. The row goes first: a file without a row is swept up later. */
export async function removePhoto(caller: Caller, photoId: string): Promise<Result<null>> {
  const no = authorise(caller, "fill-intake");
  if (no || caller.kind !== "intake") return no ?? NOT_THERE;
  const gone = await database().photo.deleteMany({ where: { id: photoId, intakeId: caller.intakeId, rugId: null } });
  if (gone.count !== 1) return NOT_THERE;
  await removePhotoFiles(photoId);
  return ok(null);
}
