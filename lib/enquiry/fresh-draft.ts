import "server-only";
import { randomUUID } from "node:crypto";
import type { ComposedDraft } from "../reply/draft";
import type { Tx } from "../store/database";
import { readSettings } from "../workshop/settings";
import { draftFor } from "./assess-answers";
import { isWaitingForUs } from "./states";
import { assessmentOf, enquiryAnswersOf, rugAnswersOf } from "./stored";
import { toJson } from "./to-json";

const PARTS = {
  draft: { include: { revisions: { orderBy: { number: "desc" }, take: 1 } } },
  client: true,
  rugs: { orderBy: { position: "asc" }, include: { answers: true, assessments: { orderBy: { createdAt: "desc" }, take: 1 } } },
} as const;
const rowOf = (tx: Tx, enquiryId: string) => tx.enquiry.findUnique({ where: { id: enquiryId }, include: PARTS });
type Row = NonNullable<Awaited<ReturnType<typeof rowOf>>>;

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
  const composed = await composedFor(tx, row);
  const saysTheSame = composed?.subject === newest.subject && composed.text === newest.text;
  if (!composed || (saysTheSame && !isLetter)) return;
  await addFreshRevision(tx, { draft: row.draft, composed, assessmentId: row.rugs[0]?.assessments[0]?.id ?? null, now });
}

async function composedFor(tx: Tx, row: Row): Promise<ComposedDraft | null> {
  const rugs = row.rugs.flatMap((r) =>
    r.assessments[0] ? [{ title: r.title, answers: rugAnswersOf(r.answers), assessment: assessmentOf(r.assessments[0].result) }] : [],
  );
  if (rugs.length === 0) return null;
  return draftFor({ client: row.client, workshop: await readSettings(tx), enquiry: enquiryAnswersOf(row.answers).answers, rugs }, rugs);
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
