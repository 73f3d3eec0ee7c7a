import "server-only";
import type { ComposedDraft } from "../reply/draft";
import { database } from "../store/database";
import { readSettings } from "../workshop/settings";
import { draftFor } from "./assess-answers";
import { assessmentOf, enquiryAnswersOf, rugAnswersOf } from "./stored";

/** A new draft and the revision after which it may stand. */
export interface FreshDraft {
  after: number;
  composed: ComposedDraft;
  assessmentId: string | null;
}

/**
 * The draft to begin with once the last one became a letter, from the newest assessments; null while a draft is still
 * being written. Composed before the transaction that stores it.
 */
export async function freshDraft(enquiryId: string): Promise<FreshDraft | null> {
  const row = await database().enquiry.findUnique({
    where: { id: enquiryId },
    include: {
      draft: true,
      client: true,
      rugs: { orderBy: { position: "asc" }, include: { answers: true, assessments: { orderBy: { createdAt: "desc" }, take: 1 } } },
    },
  });
  if (!row?.draft || row.draft.approvedNumber !== row.draft.number) return null;
  const rugs = row.rugs.flatMap((r) =>
    r.assessments[0] ? [{ title: r.title, answers: rugAnswersOf(r.answers), assessment: assessmentOf(r.assessments[0].result) }] : [],
  );
  if (rugs.length === 0) return null;
  const composed = draftFor({ client: row.client, workshop: await readSettings(), enquiry: enquiryAnswersOf(row.answers).answers, rugs }, rugs);
  return { after: row.draft.number, composed, assessmentId: row.rugs[0]?.assessments[0]?.id ?? null };
}
