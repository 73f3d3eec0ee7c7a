import "server-only";
import type { Db, Tx } from "../store/database";
import type { EnquiryStateId } from "./views";

export interface EnquiryOfAddress { id: string; reference: string; title: string; state: EnquiryStateId }

/** Enquiries of whoever has this address, the newest first. Capitals are compared here and not by the database: SQLite and PostgreSQL do not agree on them. */
export async function enquiriesOfAddress(db: Db | Tx, address: string): Promise<EnquiryOfAddress[]> {
  const all = await db.enquiry.findMany({
    where: { client: { email: { not: null } } }, orderBy: { submittedAt: "desc" }, select: { id: true, reference: true, title: true, state: true, client: { select: { email: true } } },
  });
  return all.filter((e) => e.client.email?.toLowerCase() === address.toLowerCase()).map(({ id, reference, title, state }) => ({ id, reference, title, state }));
}
