import "server-only";
import { config } from "../config/config";
import { database, transact, type Db, type Prisma, type Tx } from "../store/database";
import { removePostFile } from "../store/post-files";
import { removePutAside } from "../store/put-aside";
import { readSettings } from "../workshop/settings";
import { addressesOf } from "./addresses-of";
import type { Caller } from "./caller";
import { isRefusal, removeEnquiry, removeLeftover } from "./remove-enquiry";
import type { EnquiryStateId } from "./views";

/** Where nothing is awaited from us any more; what is ours to do, or is in hand, never runs out by itself. */
const AT_REST: readonly EnquiryStateId[] = ["their_turn", "waiting_elsewhere", "quoted", "finished", "declined", "withdrawn", "closed_unanswered"];
/** So many in one go; the rest goes with the next. */
const AT_ONCE = 200;
const BY: Caller = { kind: "system", what: "retention" };

/** The same day and time so many calendar months earlier, in UTC; the last day of a shorter month. */
export function monthsBefore(now: Date, months: number): Date {
  const day = new Date(now);
  day.setUTCDate(1);
  day.setUTCMonth(day.getUTCMonth() - months);
  const lastDay = new Date(Date.UTC(day.getUTCFullYear(), day.getUTCMonth() + 1, 0)).getUTCDate();
  day.setUTCDate(Math.min(now.getUTCDate(), lastDay));
  return day;
}

const outlivedBy = (before: Date) => ({ state: { in: [...AT_REST] }, stateSince: { lte: before } }) satisfies Prisma.EnquiryWhereInput;
/** What waits in the post and lies with no enquiry. */
const WAITING_POST = { enquiryId: null, state: { in: ["received", "waiting"] } } satisfies Prisma.PostWhereInput;

/** How many enquiries would be erased now if they were kept for so many months at rest: those that `eraseOutlived` takes. */
export async function countOutlived(months: number, now: Date): Promise<number> {
  const [db, outlived] = [database(), outlivedBy(monthsBefore(now, months))];
  if ((await db.post.count({ where: WAITING_POST })) === 0) return db.enquiry.count({ where: outlived });
  let count = 0;
  for (const { id } of await db.enquiry.findMany({ where: outlived, select: { id: true } })) if (await mayGo(db, { id, ...outlived })) count += 1;
  return count;
}

/** Erases enquiries that have rested for the months of the settings, and as old ones of messages that were put aside and of copies made before a restore. Returns how many enquiries. */
export async function eraseOutlived(now: Date): Promise<number> {
  const before = monthsBefore(now, (await readSettings()).retentionMonths);
  const outlived = outlivedBy(before);
  let erased = 0;
  for (const { id } of await database().enquiry.findMany({ where: outlived, select: { id: true }, take: AT_ONCE })) {
    const removed = await transact(async (tx) => ((await mayGo(tx, { id, ...outlived })) ? removeEnquiry(tx, BY, id, now) : null));
    if (removed === null || isRefusal(removed)) continue;
    await removeLeftover(removed);
    erased += 1;
  }
  await eraseAside(before);
  await removePutAside(config.dataDir, before);
  return erased;
}

/** Still at rest, and nothing that its client wrote waits to be read. */
async function mayGo(tx: Db | Tx, where: Prisma.EnquiryWhereInput): Promise<boolean> {
  const enquiry = await tx.enquiry.findFirst({ where, select: { id: true, client: { select: { email: true } } } });
  if (!enquiry) return false;
  const theirs = await addressesOf(tx, { enquiryId: enquiry.id, email: enquiry.client.email });
  return (await tx.post.count({ where: { ...WAITING_POST, fromAddress: { in: theirs.map((a) => a.toLowerCase()) } } })) === 0;
}

async function eraseAside(before: Date): Promise<void> {
  const old = { enquiryId: null, state: "aside" as const, arrivedAt: { lte: before } };
  const ids = (await database().post.findMany({ where: old, select: { id: true }, take: AT_ONCE })).map((p) => p.id);
  await database().post.deleteMany({ where: { id: { in: ids }, ...old } });
  const left = new Set((await database().post.findMany({ where: { id: { in: ids } }, select: { id: true } })).map((p) => p.id));
  await Promise.all(ids.filter((id) => !left.has(id)).map(removePostFile));
}
