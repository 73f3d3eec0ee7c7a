import "server-only";
import { randomUUID } from "node:crypto";
import type { ComposedDraft } from "../reply/draft";
import type { Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { nextLetter } from "./next-letter";
import { storedSaid } from "./said-paragraphs";
import { isWaitingForUs } from "./states";

const DRAFT = { revisions: { orderBy: { number: "desc" }, take: 1 }, enquiry: { select: { state: true, rugs: { orderBy: { position: "asc" }, take: 1, select: { assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1, select: { id: true } } } } } } } as const;

/**
 * Lets the program write the next revision from the newest assessments, where it is our turn and nothing of anybody's is
 * lost by it: the last revision became a letter, or the program wrote it and nobody has approved or changed it since. What
 * follows a letter of ours is short.
 */
export async function beginFreshDraft(tx: Tx, enquiryId: string, now: Date): Promise<void> {
  const draft = await tx.draft.findUnique({ where: { enquiryId }, include: DRAFT });
  const [newest] = draft?.revisions ?? [];
  if (!draft || !newest || !isWaitingForUs(draft.enquiry.state)) return;
  const isLetter = draft.approvedNumber === draft.number;
  const isUntouched = newest.authorId === null && draft.waitingNumber === null;
  if (!isLetter && !isUntouched) return;
  const next = await nextLetter(tx, enquiryId);
  const saysTheSame = next?.composed.subject === newest.subject && next.composed.text === newest.text;
  if (!next || (saysTheSame && !isLetter)) return;
  await addFreshRevision(tx, { draft, composed: next.composed, now });
}

type Draft = { id: string; enquiryId: string; number: number; enquiry: { rugs: readonly { assessments: readonly { id: string }[] }[] } };

/** The next revision, unless somebody wrote one since. */
async function addFreshRevision(tx: Tx, { draft, composed, now }: { draft: Draft; composed: ComposedDraft; now: Date }): Promise<void> {
  const number = draft.number + 1;
  const taken = await tx.draft.updateMany({ where: { id: draft.id, number: draft.number }, data: { number } });
  if (taken.count !== 1) return;
  await addWritten(tx, { enquiryId: draft.enquiryId, number, composed, assessmentId: draft.enquiry.rugs[0]?.assessments[0]?.id ?? null, now });
}

/** Keeps what the program wrote, with what it wrote it from, as the revision of that number. */
export async function addWritten(tx: Tx, { enquiryId, number, composed, assessmentId, now }: { enquiryId: string; number: number; composed: ComposedDraft; assessmentId: string | null; now: Date }): Promise<void> {
  const { subject, text } = composed;
  const { id: draftId } = await tx.draft.findUniqueOrThrow({ where: { enquiryId }, select: { id: true } });
  await tx.revision.create({ data: { id: randomUUID(), draftId, number, subject, text, paragraphs: storedSaid(composed), assessmentId, createdAt: now } });
}
