import "server-only";
import type { Tx } from "../store/database";
import { audit, type AuditAction } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { backToDraft } from "./enclosures";
import { inOneStep } from "./one-step";

/**
 * Takes back a letter that is still held. Only the outbox or this can have it: whichever changes its state first. The
 * enquiry is ours again, new where it was new, and the draft is as it was before the approval, with what was enclosed.
 */
export async function takeBackLetter(caller: Caller, letterId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "take-back");
  if (no) return no;
  return inOneStep(async (tx) => {
    const letter = await tx.letter.findUnique({ where: { id: letterId }, select: { enquiryId: true, automatic: true } });
    if (!letter || letter.automatic) return NOT_THERE;
    const taken = await tx.letter.updateMany({
      where: { id: letterId, state: "held", notBefore: { gt: now } },
      data: { state: "taken_back", lastResponse: null },
    });
    if (taken.count !== 1) return refuse("changed-meanwhile", "This letter is no longer held: it is on its way, or somebody took it back already.");
    const { enquiryId } = letter;
    await tx.enquiry.updateMany({ where: { id: enquiryId, state: "their_turn" }, data: await stateBefore(tx, enquiryId, now) });
    await tx.draft.updateMany({ where: { enquiryId }, data: { approvedNumber: null } });
    await backToDraft(tx, { enquiryId, letterId, now });
    await audit(tx, caller, { action: "letter-taken-back", enquiryId, at: now, detail: { letterId } });
    return ok(null);
  });
}

/** An enquiry that no letter and no hand has moved was new, and has waited ever since it came; any other is our turn again. */
async function stateBefore(tx: Tx, enquiryId: string, now: Date): Promise<{ state: "new" | "our_turn"; stateSince: Date }> {
  const ours = await tx.letter.count({ where: { enquiryId, automatic: false, state: { not: "taken_back" } } });
  const moves = await tx.audit.count({ where: { enquiryId, action: "moved" satisfies AuditAction } });
  const { submittedAt } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { submittedAt: true } });
  return ours + moves === 0 ? { state: "new", stateSince: submittedAt } : { state: "our_turn", stateSince: now };
}
