import "server-only";
import { wasHeldBack } from "../mail/last-word";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { inOneStep } from "./one-step";
import { reopenDraft } from "./reopen-draft";
import { stateBefore } from "./state-before";

/**
 * Takes back a letter that is still held. Only the outbox or this can have it: whichever changes its state first. The
 * enquiry is ours again, new where it was new, and the draft of a reply is as it was before the approval, with what was enclosed; the words
 * of a question stay with the letter.
 */
export async function takeBackLetter(caller: Caller, letterId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "take-back");
  if (no) return no;
  return inOneStep(async (tx) => {
    const letter = await tx.letter.findUnique({ where: { id: letterId }, select: { enquiryId: true, automatic: true, lastResponse: true } });
    if (!letter || letter.automatic) return NOT_THERE;
    const taken = await tx.letter.updateMany({
      where: { id: letterId, state: "held", notBefore: { gt: now } },
      data: { state: "taken_back", lastResponse: null },
    });
    if (taken.count !== 1) return refuse("changed-meanwhile", wasHeldBack(letter.lastResponse) ? letter.lastResponse : "This letter is no longer held: it is on its way, or somebody took it back already.");
    const { enquiryId } = letter;
    await tx.enquiry.updateMany({ where: { id: enquiryId, state: "their_turn" }, data: await stateBefore(tx, enquiryId, now) });
    await reopenDraft(tx, { letterId, enquiryId, now });
    await beginFreshDraft(tx, enquiryId, now);
    await audit(tx, caller, { action: "letter-taken-back", enquiryId, at: now, detail: { letterId } });
    return ok(null);
  });
}
