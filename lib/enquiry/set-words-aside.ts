import "server-only";
import { randomUUID } from "node:crypto";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { inOneStep } from "./one-step";
import { urgenciesOfRugs, WORDS_PARTS, WORDS_READ } from "./unread-letters";
import { worstUrgency } from "./urgency";

/**
 * Somebody has read what the client wrote: the enquiry goes where its answers put it, and a draft nobody has touched no
 * longer begins with what the words called for. `why`: the reason they saw, so that words which came meanwhile are not set
 * aside unread.
 */
export async function setWordsAside(caller: Caller, { enquiryId, why }: { enquiryId: string; why: string }, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "set-words-aside");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  return inOneStep(async (tx) => {
    const row = await tx.enquiry.findUnique({ where: { id: enquiryId }, include: WORDS_PARTS });
    const [first] = row?.rugs ?? [];
    if (!row || !first) return NOT_THERE;
    const byAnswers = worstUrgency(urgenciesOfRugs(row.rugs));
    const moved = await tx.enquiry.updateMany({ where: { id: enquiryId, urgencyWhy: why, NOT: { urgencyWhy: byAnswers.why } }, data: { urgency: byAnswers.urgency, urgencyWhy: byAnswers.why } });
    if (moved.count !== 1) return refuse("changed-meanwhile", "It stands somewhere else by now: somebody set it aside, or the client wrote again. Read it once more.");
    await tx.answer.create({ data: { id: randomUUID(), rugId: first.id, question: WORDS_READ, value: true, from: caller.staffId, at: now } });
    await audit(tx, caller, { action: "words-set-aside", enquiryId, at: now, detail: { from: row.urgency, to: byAnswers.urgency } });
    await beginFreshDraft(tx, enquiryId, now);
    return ok(null);
  });
}
