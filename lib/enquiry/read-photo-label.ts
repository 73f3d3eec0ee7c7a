import "server-only";
import { randomUUID } from "node:crypto";
import { readLabelPhoto } from "../photo/server/read-label-photo";
import { database, isTaken } from "../store/database";
import { photoPath } from "../store/photo-files";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { labelReadingView } from "./label-reading";
import { labelSense } from "./label-sense";
import { toJson } from "./to-json";
import type { LabelReadingView } from "./label-view";

const NOTHING = { text: "", lines: [], crop: { x: 0, y: 0, width: 1, height: 1 }, degrees: 0 };

/**
 * Reads the label in a photo, once: what was read stays beside the photo until a person says what it is, and a second call
 * gives the same. It takes a second or some, in a thread of its own; nothing is believed of it yet.
 */
export async function readPhotoLabel(caller: Caller, photoId: string): Promise<Result<LabelReadingView>> {
  const photo = await database().photo.findUnique({ where: { id: photoId }, include: { label: true, rug: { select: { enquiryId: true } } } });
  const no = authorise(caller, "read-label", { enquiryId: photo?.rug?.enquiryId ?? null, intakeId: photo?.intakeId ?? null });
  if (no) return no;
  if (!photo) return NOT_THERE;
  if (photo.label) return ok(labelReadingView(photo.label, photo));
  if (photo.kind !== "label") return refuse("invalid", "Only a photo of the label is read.");
  const read = await readLabelPhoto(photoPath(photoId, "full"), { sense: labelSense }).catch((error: Error) => {
    console.error(JSON.stringify({ level: "error", event: "label not read", photo: photoId, message: error.message }));
  });
  if (read === undefined) return refuse("unavailable", "We could not read the label just now. Your photo is with us; we shall read it ourselves.");
  const { text, lines, crop, degrees } = read ?? NOTHING;
  const data = { id: randomUUID(), photoId, text, words: toJson(lines), crop: toJson(crop), degrees, state: isReadable(text) ? "read" : "unreadable" };
  const row = await database().labelReading.create({ data }).catch(async (error: unknown) => {
    if (isTaken(error)) return database().labelReading.findUnique({ where: { photoId } });
    throw error;
  });
  return row ? ok(labelReadingView(row, photo)) : NOT_THERE;
}

/** Some letters that make a word; specks of a weave make none. */
const isReadable = (text: string): boolean => labelSense(text, 1) >= SOME_SENSE && /\p{L}{3}/u.test(text);
const SOME_SENSE = 0.3;
