import "server-only";
import { createHash } from "node:crypto";
import { changesBetween, openIn, type Change } from "../reply/changes";
import type { ComposedDraft } from "../reply/draft";
import { piecesOf } from "../reply/pieces";
import type { Db, Tx } from "../store/database";
import { refuse, type Refusal } from "./caller";
import { writtenFrom } from "./last-letter";
import { nextLetter, type NextLetter } from "./next-letter";

/** A draft held against what the program would write today. */
export interface DraftToday {
  next: NextLetter;
  /** What the program would word otherwise than when the draft was begun, or was last looked at. */
  changes: Change[];
  subject: { was: string; now: string } | null;
  /** Names what the program would write now, so that nobody stands by a draft against what they have not seen. */
  mark: string;
}

/** null where nothing was assessed yet or there is no draft of the program. `letterId`: the letter that the draft has become. */
export async function draftToday(db: Db | Tx, { enquiryId, number, letterId }: { enquiryId: string; number: number; letterId?: string }): Promise<DraftToday | null> {
  const before = await writtenFrom(db, enquiryId, number);
  const next = before && (await nextLetter(db, enquiryId, letterId));
  if (!next) return null;
  const { composed, input, follows } = next;
  return {
    next,
    changes: changesBetween(before, composed, piecesOf(input, follows?.came ?? null).readsToday),
    subject: before.subject === composed.subject ? null : { was: before.subject, now: composed.subject },
    mark: createHash("sha256").update(JSON.stringify([composed.subject, composed.text])).digest("hex"),
  };
}

type Words = { subject: string; text: string };
/** The places at which words read otherwise than the program would write them by now; empty where every change was taken in. */
const openAt = ({ changes, subject }: DraftToday, { subject: mine, text }: Words): string[] =>
  [...(subject?.was === mine ? ["Subject"] : []), ...new Set(openIn(changes, text).map((c) => c.place))];

/**
 * What the program would write by now, where something changed since a draft was begun and its words have taken all of that in: from then on
 * they stand for it. null where nothing changed, or something of it is still open.
 */
export async function takenInWhole(tx: Tx, r: Words & { enquiryId: string; number: number }): Promise<DraftToday | null> {
  const today = await draftToday(tx, r);
  const isMoved = today !== null && (today.changes.length > 0 || today.subject !== null);
  return isMoved && openAt(today, r).length === 0 ? today : null;
}

/**
 * What the program wrote that a draft's words were held against when they stood there before, where somebody goes back to them after a change was
 * taken in. null where they are new, or are held against the same still.
 */
export async function baseOfBefore(tx: Tx, { enquiryId, number, subject, text }: Words & { enquiryId: string; number: number }): Promise<ComposedDraft | null> {
  const before = await tx.revision.findFirst({ where: { draft: { enquiryId }, authorId: { not: null }, subject, text, number: { lt: number } }, orderBy: { number: "desc" }, select: { number: true } });
  const [then, now] = before ? await Promise.all([writtenFrom(tx, enquiryId, before.number), writtenFrom(tx, enquiryId, number)]) : [null, null];
  return then && now && then.number !== now.number ? { subject: then.subject, text: then.text, paragraphs: [...then.paragraphs], leftOut: [] } : null;
}

/** Whether a letter reads otherwise than the program would write it by now. `number`: the revision that it was made of. */
export async function readsOtherwise(tx: Tx, r: { enquiryId: string; number: number; letterId: string }): Promise<boolean> {
  const today = await draftToday(tx, r);
  const revision = await tx.revision.findFirst({ where: { draft: { enquiryId: r.enquiryId }, number: r.number }, select: { subject: true, text: true } });
  return today !== null && revision !== null && openAt(today, revision).length > 0;
}

/** Refuses to let a draft go that reads otherwise than the program would write it by now, until somebody has taken the change in or stood by the draft. */
export async function unlessMoved(tx: Tx, r: Words & { enquiryId: string; number: number }): Promise<Refusal | null> {
  const today = await draftToday(tx, r);
  const places = today ? openAt(today, r) : [];
  if (places.length === 0) return null;
  return refuse("changed-meanwhile", `Since this draft was written, the assessment or the paragraphs changed. It would now read otherwise at: ${places.join("; ")}. Nothing was sent: look at what changed first.`);
}
