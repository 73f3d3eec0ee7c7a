import "server-only";
import { database } from "../store/database";
import { photoPath } from "../store/photo-files";
import { isPhotoId, PHOTO_SIZES, type PhotoSize } from "../store/photo-layout";
import { stat } from "node:fs/promises";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";

/** Where a picture lies, for those who may see it: staff, the client of its enquiry, the questionnaire it was sent with. */
export async function photoFile(caller: Caller, photoId: string, size: string): Promise<Result<{ path: string; type: "image/jpeg"; bytes: number }>> {
  if (!isPhotoId(photoId) || !isSize(size)) return NOT_THERE;
  const photo = await database().photo.findUnique({ where: { id: photoId }, select: { intakeId: true, rug: { select: { enquiryId: true } } } });
  const no = authorise(caller, "see-photo", { enquiryId: photo?.rug?.enquiryId ?? null, intakeId: photo?.intakeId ?? null });
  if (no) return no;
  if (!photo) return NOT_THERE;
  const path = photoPath(photoId, size);
  const file = await stat(path).catch(() => null);
  return file ? ok({ path, type: "image/jpeg", bytes: file.size }) : NOT_THERE;
}

const isSize = (text: string): text is PhotoSize => (PHOTO_SIZES as readonly string[]).includes(text);
