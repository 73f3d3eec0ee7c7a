import "server-only";
import type { DocumentKind } from "../reply/documents/offered";
import type { LabelReading, Photo, Tx } from "../store/database";
import type { RugAnswers } from "../trade/questions";
import { refuse, type Refusal } from "./caller";
import { labelReadingView } from "./label-reading";
import { isGuess, type LabelReadingView } from "./label-view";
import { WITH_TOLD_LABEL } from "./label-told";
import { rugAnswersOf } from "./stored";

/** Nobody has said which words are right, or that they cannot tell, where a photo names other fibres than were typed. */
const isUnsettled = (label: LabelReadingView): boolean => label.told !== null && label.agreed === null && label.state === "read" && !isGuess(label);
const oneLine = (words: string): string => words.replace(/\s+/gu, " ").trim();

/** A label whose typed words and photo name different fibres: which photo, and what is to be done, in sentences. */
export interface UnsettledLabel { readonly photoId: string; readonly says: string }
type LabelPhoto = Pick<Photo, "id" | "width" | "height"> & { label: LabelReading | null };

/** The first label of a rug that nobody has settled; null where there is none. */
function unsettledIn(photos: readonly LabelPhoto[], { labelText }: RugAnswers): UnsettledLabel | null {
  const open = photos.flatMap((photo) => (photo.label ? [labelReadingView(photo.label, photo, labelText?.trim() || null)] : [])).find(isUnsettled);
  return open ? { photoId: open.photoId, says: `The label was typed as “${oneLine(open.told ?? "")}”, and its photo reads “${oneLine(open.text)}”. Say first which words are right, beside the label in the photo.` } : null;
}

/** Documents in which the words of a label stand as what it says. */
const QUOTES_LABEL: readonly DocumentKind[] = ["condition-report", "letter-to-seller"];
/** The label that such a document of a rug would quote while nobody has settled it; null for any other document, and where there is none. */
export const unsettledFor = (kind: DocumentKind, { photos, answers }: { readonly photos: readonly LabelPhoto[]; readonly answers: RugAnswers }): UnsettledLabel | null =>
  (QUOTES_LABEL.includes(kind) ? unsettledIn(photos, answers) : null);

/** Refuses a letter that goes by a label's typed words while a photo of it, read and not yet answered, names other fibres. */
export async function unlessLabelsSettled(tx: Tx, enquiryId: string): Promise<Refusal | null> {
  const photos = await tx.photo.findMany({ where: { rug: { enquiryId }, label: { isNot: null } }, include: { label: true, ...WITH_TOLD_LABEL } });
  const [open] = photos.flatMap((photo) => unsettledIn([photo], rugAnswersOf(photo.rug?.answers ?? [])) ?? []);
  return open ? refuse("changed-meanwhile", `${open.says} Nothing was sent, and your words are kept.`) : null;
}
