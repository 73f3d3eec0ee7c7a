import "server-only";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { inOneStep } from "./one-step";
import { mayMove, STATE_NAMES } from "./states";
import type { EnquiryStateId } from "./views";

/** Moves an enquiry by hand, from the state the person saw. Where it becomes our turn, there is a draft to answer with. */
export async function moveEnquiry(
  caller: Caller,
  { enquiryId, from, to }: { enquiryId: string; from: EnquiryStateId; to: EnquiryStateId },
  now: Date = new Date(),
): Promise<Result<null>> {
  const no = authorise(caller, "move");
  if (no) return no;
  if (!Object.hasOwn(STATE_NAMES, from) || !mayMove(from, to, "staff")) return refuse("invalid", "An enquiry cannot go that way.");
  return inOneStep(async (tx) => {
    const moved = await tx.enquiry.updateMany({ where: { id: enquiryId, state: from }, data: { state: to, stateSince: now } });
    if (moved.count !== 1) {
      const enquiry = await tx.enquiry.findUnique({ where: { id: enquiryId }, select: { state: true } });
      return enquiry ? refuse("changed-meanwhile", `Somebody has moved this meanwhile: it is now “${STATE_NAMES[enquiry.state]}”.`) : NOT_THERE;
    }
    await beginFreshDraft(tx, enquiryId, now);
    await audit(tx, caller, { action: "moved", enquiryId, at: now, detail: { from, to } });
    return ok(null);
  });
}
