import "server-only";
import type { Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { beginFreshDraft } from "./fresh-draft";
import { reopenDraft } from "./reopen-draft";
import { nextStates } from "./states";

/**
 * Makes it our turn again where a letter that a person wrote did not reach its client, with the words that were approved, and what was
 * enclosed, to be sent once more; what the program wrote it writes anew from what is known by now. Nothing moves where a newer letter is
 * on its way or has gone, or where the enquiry has gone on meanwhile. Call it after the letter itself is marked as failed.
 */
export async function takeTurnBack(tx: Tx, { id: letterId, enquiryId }: { id: string; enquiryId: string }, now: Date): Promise<void> {
  const ours = { enquiryId, automatic: false, state: { not: "taken_back" } } as const;
  const newest = await tx.letter.findFirst({ where: ours, orderBy: NEWEST_FIRST.createdAt, select: { state: true } });
  if (newest?.state !== "failed") return;
  const { state } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  const [to] = nextStates(state, "undelivered");
  if (!to) return;
  const moved = await tx.enquiry.updateMany({ where: { id: enquiryId, state }, data: { state: to, stateSince: now } });
  if (moved.count !== 1) return;
  await reopenDraft(tx, { letterId, enquiryId, now });
  await beginFreshDraft(tx, enquiryId, now);
}
