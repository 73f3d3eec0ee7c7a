import "server-only";
import type { Tx } from "../store/database";
import { readsOtherwise } from "./draft-today";
import { heldLetters, takeHeldBack } from "./hold-back";
import { approvalOf } from "./last-letter";
import { outdatedOf } from "./outdated";
import { isWaitingForUs, nextStates } from "./states";

/**
 * Takes back a reply that was approved and has not left, where a rug was judged anew and the reply, or a document with it, would say otherwise by
 * now. One that would read the same leaves. A question says nothing of the judgement, and an enquiry that has gone on by hand to where a
 * client's words give us no turn is left alone. Call it after the assessment is kept, and before a new draft is begun.
 */
export async function holdOvertaken(tx: Tx, enquiryId: string, now: Date): Promise<void> {
  const { state } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  // Where the letter is to be read out, it is our turn still.
  if (!isWaitingForUs(state) && nextStates(state, "client")[0] !== "our_turn") return;
  const letters: { id: string }[] = [];
  for (const { id, kind } of await heldLetters(tx, enquiryId, now)) if (kind === "reply" && (await isOvertaken(tx, { enquiryId, letterId: id }))) letters.push({ id });
  await takeHeldBack(tx, { enquiryId, letters, why: "judgement", now });
}

/** One whose approval is not known cannot be compared, and comes back too. */
async function isOvertaken(tx: Tx, of: { enquiryId: string; letterId: string }): Promise<boolean> {
  const approval = await approvalOf(tx, of);
  if (!approval || (await readsOtherwise(tx, { ...of, number: approval.number }))) return true;
  const enclosed = await outdatedOf(tx, { enclosures: { some: { letterId: of.letterId } } });
  return enclosed.some((d) => !approval.asItIs.includes(d.id));
}
