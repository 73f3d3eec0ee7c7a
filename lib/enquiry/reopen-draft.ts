import "server-only";
import type { Tx } from "../store/database";
import { backToDraft } from "./enclosures";

/**
 * The words of a reply, and what was enclosed, as they were before its approval, where nothing was written since. A question was put in
 * place of the reply and does not become one: its words stay with the letter.
 */
export async function reopenDraft(tx: Tx, { letterId, enquiryId, now }: { letterId: string; enquiryId: string; now: Date }): Promise<void> {
  const { kind } = await tx.letter.findUniqueOrThrow({ where: { id: letterId }, select: { kind: true } });
  const draft = await tx.draft.findUnique({ where: { enquiryId }, select: { number: true } });
  if (kind !== "reply" || !draft) return;
  const { number } = draft;
  const open = await tx.draft.updateMany({ where: { enquiryId, number, approvedNumber: number }, data: { approvedNumber: null } });
  if (open.count === 1) await backToDraft(tx, { enquiryId, letterId, now });
}
