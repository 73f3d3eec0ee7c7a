import "server-only";
import type { Tx } from "../store/database";
import { audit } from "./audit";
import type { Caller } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { outdatedLetter } from "./outdated-letter";
import { nextStates } from "./states";

const BY: Caller = { kind: "system", what: "hold" };

/**
 * Makes it our turn where somebody else is awaited and goes by a letter of ours that no longer holds, with the draft of one that follows it. What is
 * agreed, or here, stays where it stands, and so does what our own tests say otherwise: the desk says so there. Call it after the rugs of a corrected answer were judged anew.
 */
export async function takeTurnOutdated(tx: Tx, enquiryId: string, now: Date): Promise<void> {
  const { state } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  const [to] = nextStates(state, "outdated");
  const letter = to ? await outdatedLetter(tx, enquiryId) : null;
  if (!to || !letter) return;
  const moved = await tx.enquiry.updateMany({ where: { id: enquiryId, state }, data: { state: to, stateSince: now } });
  if (moved.count !== 1) return;
  await beginFreshDraft(tx, enquiryId, now);
  await audit(tx, BY, { action: "letter-outdated", enquiryId, at: now, detail: { letterId: letter.id } });
}
