import "server-only";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { draftToday } from "./draft-today";
import { addWritten } from "./fresh-draft";
import { inOneStep } from "./one-step";
import { addRevision, changedMeanwhile, NOT_WAITING } from "./save-draft";
import { isWaitingForUs } from "./states";

/**
 * Somebody has looked at what changed in the assessment, or in the paragraphs, since a draft was written, and leaves the draft as it is. What the
 * program would write by now is kept as a revision, and theirs again after it: from then on the draft is held against that.
 * `mark`: what they looked at, so that a change that came meanwhile is not passed over.
 */
export async function standByDraft(caller: Caller, { enquiryId, from, mark }: { enquiryId: string; from: number; mark: string }, now: Date): Promise<Result<{ number: number }>> {
  const no = authorise(caller, "edit-draft");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  return inOneStep(async (tx) => {
    const draft = await tx.draft.findUnique({ where: { enquiryId }, select: { enquiry: { select: { state: true } }, revisions: { where: { number: from } } } });
    const [mine] = draft?.revisions ?? [];
    if (!draft || !mine) return NOT_THERE;
    if (!isWaitingForUs(draft.enquiry.state)) return refuse("changed-meanwhile", "A letter was approved meanwhile, or the enquiry was moved.");
    const today = await draftToday(tx, { enquiryId, number: from });
    if (today?.mark !== mark) return refuse("changed-meanwhile", "It has changed once more meanwhile. Look at what changed again.");
    const number = from + 2;
    const taken = await tx.draft.updateMany({ where: { enquiryId, number: from }, data: { number, ...NOT_WAITING } });
    if (taken.count !== 1) return changedMeanwhile(tx, enquiryId, caller.staffId);
    await addWritten(tx, { enquiryId, number: from + 1, composed: today.next.composed, assessmentId: null, now });
    await addRevision(tx, { enquiryId, number, subject: mine.subject, text: mine.text, authorId: caller.staffId, now });
    await audit(tx, caller, { action: "draft-stood-by", enquiryId, at: now, detail: { number } });
    return ok({ number });
  });
}
