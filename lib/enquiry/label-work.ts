import "server-only";
import { readLabelPhoto, type LabelText } from "../photo/server/read-label-photo";
import { database, transact, type LabelReading } from "../store/database";
import { photoPath } from "../store/photo-files";
import { beginFreshDraft } from "./fresh-draft";
import { cropSchema } from "./label-reading";
import { labelSense } from "./label-sense";
import type { Frame, LabelState } from "./label-view";
import { toJson } from "./to-json";

export const WHOLE_PHOTO: Frame = { x: 0, y: 0, width: 1, height: 1 };

// The built server may load this module once per route; what is at work must be the same for all of them.
const WORK = Symbol.for("enquiry.label-work");
const inWork: Map<string, Promise<void>> = ((globalThis as { [WORK]?: Map<string, Promise<void>> })[WORK] ??= new Map());

/**
 * Reads the label in a photo, if that is still to be done, beside whatever else happens; one reading of a photo at a time. Ends
 * when nothing is left to read there. Nobody has to wait for it: what was read stands in the row.
 */
export function workOnLabel(photoId: string): Promise<void> {
  const known = inWork.get(photoId);
  if (known) return known;
  const work = readWhatIsDue(photoId).catch((error: Error) => note(photoId, error)).finally(() => inWork.delete(photoId));
  inWork.set(photoId, work);
  return work;
}

/** Goes on with what was being read when the server last ended. */
export async function resumeLabels(): Promise<void> {
  const due = await database().labelReading.findMany({ where: { state: "reading" satisfies LabelState }, select: { photoId: true } });
  for (const { photoId } of due) await workOnLabel(photoId);
}

/** Until no reading is due: a person may frame the label anew meanwhile, which makes a row with an id of its own. */
async function readWhatIsDue(photoId: string): Promise<void> {
  for (;;) {
    const row = await database().labelReading.findUnique({ where: { photoId } });
    if (row?.state !== ("reading" satisfies LabelState)) return;
    const data = await readRow(row);
    await database().labelReading.updateMany({ where: { id: row.id, state: "reading" satisfies LabelState }, data });
    if (data.state === "read") await tellInDraft(photoId);
  }
}

/** A draft that nobody has touched says from now on whether the photo shows what was typed of the label. */
async function tellInDraft(photoId: string): Promise<void> {
  const photo = await database().photo.findUnique({ where: { id: photoId }, select: { rug: { select: { enquiryId: true } } } });
  const enquiryId = photo?.rug?.enquiryId;
  if (enquiryId !== undefined) await transact((tx) => beginFreshDraft(tx, enquiryId, new Date()));
}

async function readRow({ photoId, crop }: LabelReading): Promise<Pick<LabelReading, "text" | "degrees"> & { state: LabelState; words: object; crop: object }> {
  const searched = cropSchema.parse(crop);
  const isFramed = searched.width < 1 || searched.height < 1;
  const read = await readLabelPhoto(photoPath(photoId, "full"), { sense: labelSense, ...(isFramed ? { frame: searched } : {}) }).catch((error: Error) => note(photoId, error));
  if (read && isReadable(read)) return { text: read.text, words: toJson(read.lines), crop: toJson(read.crop), degrees: read.degrees, state: "read" };
  // Scraps of words that could not be read are nothing to ask about.
  return { text: "", words: [], crop: toJson(searched), degrees: 0, state: read === undefined ? "failed" : "unreadable" };
}

/** Some letters that make a word; specks of a weave make none. */
const isReadable = ({ text }: LabelText): boolean => labelSense(text, 1) >= SOME_SENSE && /\p{L}{3}/u.test(text);
const SOME_SENSE = 0.3;

function note(photoId: string, error: Error): undefined {
  console.error(JSON.stringify({ level: "error", event: "label not read", photo: photoId, message: error.message }));
}
