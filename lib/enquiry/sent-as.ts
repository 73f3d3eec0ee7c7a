import "server-only";
import type { Db, Tx } from "../store/database";

/** What of a questionnaire's row tells whether it was sent. */
export const IS_SENT = { addedAt: true, enquiry: { select: { id: true } } } as const;
export const isSent = ({ addedAt, enquiry }: { addedAt: Date | null; enquiry: object | null }): boolean => addedAt !== null || enquiry !== null;

/** The enquiry that a questionnaire made or added its rug to; null while it is not sent, and where there is none. */
export async function sentAs(db: Db | Tx, intakeId: string): Promise<{ id: string; reference: string } | null> {
  const select = { id: true, reference: true } as const;
  const row = await db.intake.findUnique({ where: { id: intakeId }, select: { addedAt: true, addsToId: true, enquiry: { select } } });
  if (!row?.addedAt || !row.addsToId) return row?.enquiry ?? null;
  return db.enquiry.findUnique({ where: { id: row.addsToId }, select });
}
