import "server-only";
import type { Db } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";

/** A letter from a client's address of which nobody has said yet where it belongs. */
export interface WaitingInPost { readonly id: string; readonly subject: string }

/** What waits in the Post from an address, oldest first. Addresses of mail are kept there in small letters. */
export async function waitingInPost(db: Pick<Db, "post">, address: string | null): Promise<WaitingInPost[]> {
  if (!address) return [];
  const rows = await db.post.findMany({ where: { state: "waiting", fromAddress: address.toLowerCase() }, orderBy: OLDEST_FIRST.arrivedAt, select: { id: true, subject: true } });
  return rows.map(({ id, subject }) => ({ id, subject: subject ?? "" }));
}
