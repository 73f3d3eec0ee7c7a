import "server-only";
import { randomUUID } from "node:crypto";
import type { DocumentKind } from "../reply/documents/offered";
import type { Prisma, Tx } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { refuse, type Refusal } from "./caller";
import { documentKindSchema } from "./document-view";

/** Ids of what goes with the draft of an enquiry, in the order of their making. */
export async function enclosedWithDraft(tx: Tx, enquiryId: string): Promise<string[]> {
  const rows = await tx.document.findMany({ where: withDraftOf(enquiryId), orderBy: OLDEST_FIRST.createdAt, select: { id: true } });
  return rows.map((r) => r.id);
}

/** Which documents lie with the draft of an enquiry. */
export const withDraftOf = (enquiryId: string) => ({ enclosures: { some: { draft: { enquiryId } } } });

/** That a document lies with the draft of an enquiry. */
export const isEnclosedWith = ({ enquiryId, documentId }: { enquiryId: string; documentId: string }) => ({ documentId, draft: { enquiryId } });

/** Kinds of documents, in the order of their making. */
export async function kindsOf(tx: Pick<Tx, "document">, where: Prisma.DocumentWhereInput): Promise<DocumentKind[]> {
  const rows = await tx.document.findMany({ where, orderBy: OLDEST_FIRST.createdAt, select: { kind: true } });
  return rows.map((r) => documentKindSchema.parse(r.kind));
}

/** What went with a letter lies with the draft no more. */
export async function emptyDraft(tx: Tx, enquiryId: string): Promise<void> {
  await tx.enclosure.deleteMany({ where: { draft: { enquiryId } } });
}

/** Puts what went with a letter that was taken back with the draft again, where nothing lies with it meanwhile. */
export async function backToDraft(tx: Tx, { enquiryId, letterId, now }: { enquiryId: string; letterId: string; now: Date }): Promise<void> {
  const draft = await tx.draft.findUnique({ where: { enquiryId }, select: { id: true, enclosures: { select: { id: true } } } });
  if (!draft || draft.enclosures.length > 0) return;
  const went = await tx.enclosure.findMany({ where: { letterId }, select: { documentId: true } });
  for (const { documentId } of went) await tx.enclosure.create({ data: { id: randomUUID(), documentId, draftId: draft.id, at: now } });
}

/** A refusal where somebody changed what goes with the letter since it was looked at; null where it is as it was seen. */
export async function unlessAsSeen(tx: Tx, enquiryId: string, seen: readonly string[] | undefined): Promise<Refusal | null> {
  if (!seen) return null;
  const now = await enclosedWithDraft(tx, enquiryId);
  const isSame = now.length === seen.length && now.every((id) => seen.includes(id));
  return isSame ? null : refuse("changed-meanwhile", "What goes with this letter was changed meanwhile. Look at it, then approve it again. Nothing was sent.");
}
