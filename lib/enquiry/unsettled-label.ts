import "server-only";
import type { Tx } from "../store/database";
import { refuse, type Refusal } from "./caller";
import { labelReadingView } from "./label-reading";
import { isGuess, type LabelReadingView } from "./label-view";
import { WITH_TOLD_LABEL } from "./label-told";
import { rugAnswersOf } from "./stored";

/** Nobody has said which words are right, or that they cannot tell, where a photo names other fibres than were typed. */
const isUnsettled = (label: LabelReadingView): boolean => label.told !== null && label.agreed === null && label.state === "read" && !isGuess(label);
const oneLine = (words: string): string => words.replace(/\s+/gu, " ").trim();

/** Refuses a letter that goes by a label's typed words while a photo of it, read and not yet answered, names other fibres. */
export async function unlessLabelsSettled(tx: Tx, enquiryId: string): Promise<Refusal | null> {
  const photos = await tx.photo.findMany({ where: { rug: { enquiryId }, label: { isNot: null } }, include: { label: true, ...WITH_TOLD_LABEL } });
  const labels = photos.flatMap((photo) => (photo.label ? [labelReadingView(photo.label, photo, rugAnswersOf(photo.rug?.answers ?? []).labelText?.trim() || null)] : []));
  const open = labels.find(isUnsettled);
  return open ? refuse("changed-meanwhile", `The label was typed as “${oneLine(open.told ?? "")}”, and its photo reads “${oneLine(open.text)}”. Say first which words are right, beside the label in the photo. Nothing was sent, and your words are kept.`) : null;
}
