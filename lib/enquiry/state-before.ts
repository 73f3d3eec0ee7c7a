import "server-only";
import type { Tx } from "../store/database";
import type { AuditAction } from "./audit";

/** How an enquiry stood before a letter that has not left: new, and waiting ever since it came, where no letter and no hand has moved it; any other is our turn again. Call it after the letter itself is marked as taken back. */
export async function stateBefore(tx: Tx, enquiryId: string, now: Date): Promise<{ state: "new" | "our_turn"; stateSince: Date }> {
  const ours = await tx.letter.count({ where: { enquiryId, automatic: false, state: { not: "taken_back" } } });
  const moves = await tx.audit.count({ where: { enquiryId, action: "moved" satisfies AuditAction } });
  const { submittedAt } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { submittedAt: true } });
  return ours + moves === 0 ? { state: "new", stateSince: submittedAt } : { state: "our_turn", stateSince: now };
}
