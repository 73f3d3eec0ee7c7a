import "server-only";
import { HELD_BACK, NO_MAIL } from "../mail/last-word";
import type { Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { audit } from "./audit";
import type { Caller } from "./caller";
import { reopenDraft } from "./reopen-draft";
import { stateBefore } from "./state-before";
import { nextStates } from "./states";

const BY: Caller = { kind: "system", what: "hold" };

/**
 * Takes back what was approved and has not left, because its client has just written: nobody here had read that when they approved it. Only
 * the outbox or this can have a letter: whichever changes its state first. What the client may have seen on their own page is left
 * alone, and so is a letter of an enquiry that has gone on by hand to where a client's words give us no turn.
 * The enquiry stands as before the letter and the draft is open again. Returns whether anything was held back.
 */
export async function holdBack(tx: Tx, enquiryId: string, now: Date): Promise<boolean> {
  const enquiry = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  if (nextStates(enquiry.state, "client")[0] !== "our_turn") return false;
  const isUnseen = { OR: [{ notBefore: { gt: now } }, { toAddress: { not: NO_MAIL } }] };
  const held = await tx.letter.findMany({ where: { enquiryId, automatic: false, state: "held", ...isUnseen }, orderBy: NEWEST_FIRST.createdAt, select: { id: true } });
  let isHeldBack = false;
  for (const { id: letterId } of held) {
    const taken = await tx.letter.updateMany({ where: { id: letterId, state: "held" }, data: { state: "taken_back", lastResponse: HELD_BACK } });
    if (taken.count !== 1) continue;
    isHeldBack = true;
    await reopenDraft(tx, { letterId, enquiryId, now });
    await audit(tx, BY, { action: "letter-held-back", enquiryId, at: now, detail: { letterId } });
  }
  if (isHeldBack) await tx.enquiry.updateMany({ where: { id: enquiryId, state: "their_turn" }, data: await stateBefore(tx, enquiryId, now) });
  return isHeldBack;
}
