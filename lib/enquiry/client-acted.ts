import "server-only";
import type { Tx } from "../store/database";
import { holdBack } from "./hold-back";
import { reconsider } from "./reconsider";
import { nextStates } from "./states";

/**
 * A client wrote or sent a photo: what has not left is held back, and it is our turn again, or the state stays where the table says so; the
 * rug is judged anew and a new draft begins. Call it after the audit of what they did, which is why a letter was held back.
 */
export async function clientActed(tx: Tx, { enquiryId, rugId, now }: { enquiryId: string; rugId: string; now: Date }): Promise<void> {
  await holdBack(tx, enquiryId, now);
  const { state } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  const to = nextStates(state, "client")[0];
  if (to && to !== state) await tx.enquiry.update({ where: { id: enquiryId }, data: { state: to, stateSince: now } });
  await reconsider(tx, { rugId, enquiryId }, now);
}
