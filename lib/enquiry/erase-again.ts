import "server-only";
import * as z from "zod/mini";
import { database, transact } from "../store/database";
import { audit } from "./audit";
import type { Caller } from "./caller";
import { isRefusal, removeEnquiry, removeLeftover } from "./remove-enquiry";

const BY: Caller = { kind: "system", what: "restore" };
const detailSchema = z.object({ erasedId: z.string() });

/** The ids of all enquiries that were ever erased here. */
export async function erasedIds(): Promise<string[]> {
  const rows = await database().audit.findMany({ where: { action: "erased" }, select: { detail: true } });
  return rows.flatMap(({ detail }) => detailSchema.safeParse(detail).data?.erasedId ?? []);
}

/** Erases what a restored backup has brought back, and keeps in mind what it knew nothing of. Returns how many enquiries were erased. */
export async function eraseAgain(ids: readonly string[], now: Date): Promise<number> {
  const known = new Set(await erasedIds());
  let erased = 0;
  for (const id of ids) {
    const removed = await transact(async (tx) => {
      // Nobody sends while a backup is put in place: a lease in it is one of long ago.
      await tx.letter.updateMany({ where: { enquiryId: id, state: "sending" }, data: { leaseUntil: null } });
      const gone = await removeEnquiry(tx, BY, id, now);
      if (gone === null && !known.has(id)) await audit(tx, BY, { action: "erased", enquiryId: null, at: now, detail: { erasedId: id } });
      return gone;
    });
    if (removed === null || isRefusal(removed)) continue;
    await removeLeftover(removed);
    erased += 1;
  }
  return erased;
}
