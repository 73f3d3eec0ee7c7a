import "server-only";
import type { Tx } from "../store/database";
import { refuse, type Refusal } from "./caller";
import { labelReadingView } from "./label-reading";
import { isAsked, isGuess, type LabelReadingView } from "./label-view";
import { WITH_TOLD_LABEL } from "./label-told";
import { rugAnswersOf } from "./stored";

/** Nobody has said which words are right, where a photo names other fibres than were typed. Staff who could not tell have answered; a client who could not leaves it to them. */
const isUnsettled = (label: LabelReadingView): boolean =>
  label.told !== null && label.agreed === null && isAsked(label.state) && !isGuess(label) && !(label.state === "unsure" && label.by === "staff");
const oneLine = (words: string): string => words.replace(/\s+/gu, " ").trim();

/** Refuses a letter that goes by a label's typed words while a photo of it, read and not yet answered, names other fibres. */
export async function unlessLabelsSettled(tx: Tx, enquiryId: string): Promise<Refusal | null> {
  const photos = await tx.photo.findMany({ where: { rug: { enquiryId }, label: { isNot: null } }, include: { label: true, ...WITH_TOLD_LABEL } });
  const labels = photos.flatMap((photo) => (photo.label ? [labelReadingView(photo.label, photo, rugAnswersOf(photo.rug?.answers ?? []).labelText?.trim() || null)] : []));
  const open = labels.find(isUnsettled);
  return open ? refuse("changed-meanwhile", `The label was typed as “${oneLine(open.told ?? "")}”, and its photo reads “${oneLine(open.text)}”. Say first which words are right, beside the label in the photo. Nothing was sent, and your words are kept.`) : null;
}
