import "server-only";
import { randomUUID } from "node:crypto";
import type { ComposedDraft } from "../reply/draft";
import type { Tx } from "../store/database";
import { readSettings } from "../workshop/settings";
import { composeStored, LETTER_PARTS } from "./compose-stored";
import { readLibrary } from "./library";
import { isWaitingForUs } from "./states";
import { toJson } from "./to-json";

const PARTS = { ...LETTER_PARTS, draft: { include: { revisions: { orderBy: { number: "desc" }, take: 1 } } } } as const;
const rowOf = (tx: Tx, enquiryId: string) => tx.enquiry.findUnique({ where: { id: enquiryId }, include: PARTS });

/**
 * Lets the program write the next revision from the newest assessments, where it is our turn and nothing of anybody's is
 * lost by it: the last revision became a letter, or the program wrote it and nobody has approved or changed it since.
 */
export async function beginFreshDraft(tx: Tx, enquiryId: string, now: Date): Promise<void> {
  const row = await rowOf(tx, enquiryId);
  const [newest] = row?.draft?.revisions ?? [];
  if (!row?.draft || !newest || !isWaitingForUs(row.state)) return;
  const isLetter = row.draft.approvedNumber === row.draft.number;
  const isUntouched = newest.authorId === null && row.draft.waitingNumber === null;
  if (!isLetter && !isUntouched) return;
  const composed = composeStored(row, { workshop: await readSettings(tx), library: await readLibrary(tx) });
  const saysTheSame = composed?.subject === newest.subject && composed.text === newest.text;
  if (!composed || (saysTheSame && !isLetter)) return;
  await addFreshRevision(tx, { draft: row.draft, composed, assessmentId: row.rugs[0]?.assessments[0]?.id ?? null, now });
}

/** The next revision, unless somebody wrote one since. */
async function addFreshRevision(
  tx: Tx,
  { draft, composed, assessmentId, now }: { draft: { id: string; number: number }; composed: ComposedDraft; assessmentId: string | null; now: Date },
): Promise<void> {
  const number = draft.number + 1;
  const taken = await tx.draft.updateMany({ where: { id: draft.id, number: draft.number }, data: { number } });
  if (taken.count !== 1) return;
  const { subject, text, paragraphs } = composed;
  await tx.revision.create({
    data: { id: randomUUID(), draftId: draft.id, number, subject, text, paragraphs: paragraphs.map(toJson), assessmentId, createdAt: now },
  });
}
