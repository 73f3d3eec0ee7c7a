import "server-only";
import type { Tx } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import { threadAfter, type Thread } from "./message-id";

interface Threaded {
  enquiryId: string;
  /** Where the letter goes. */
  address: string;
  automatic: boolean;
  /** When it was written. Default: it is the newest. */
  writtenAt?: Date;
}

/**
 * What a letter follows: the newest of ours to the same address that has gone there or may still, and what the client wrote by mail
 * since. What another address got, what was read out and what failed its reader never had. An acknowledgement follows the client's words alone.
 */
export async function threadOf(tx: Tx, { enquiryId, address, automatic, writtenAt }: Threaded): Promise<Thread> {
  const before = writtenAt ? { lt: writtenAt } : {};
  const ours = automatic ? [] : await tx.letter.findMany({
    where: { enquiryId, state: { notIn: ["taken_back", "failed"] }, createdAt: before }, orderBy: NEWEST_FIRST.createdAt, select: { toAddress: true, messageId: true, references: true, createdAt: true },
  });
  const earlier = ours.find((l) => l.toAddress.toLowerCase() === address.toLowerCase()) ?? null;
  const theirs = await tx.post.findFirst({
    where: { enquiryId, kind: { in: ["letter", "reply"] }, messageId: { not: null }, arrivedAt: { ...before, ...(earlier ? { gt: earlier.createdAt } : {}) } }, orderBy: NEWEST_FIRST.arrivedAt, select: { messageId: true },
  });
  return threadAfter(earlier, theirs?.messageId);
}

/** Threads anew what has not left for a client's new address: it was to follow what went to the old one. */
export async function threadAnew(tx: Tx, { clientId, address }: { clientId: string; address: string }): Promise<void> {
  const unsent = await tx.letter.findMany({ where: { enquiry: { clientId }, toAddress: address, state: { in: ["held", "waiting"] } }, orderBy: OLDEST_FIRST.createdAt, select: { id: true, enquiryId: true, automatic: true, createdAt: true } });
  for (const { id, createdAt, ...letter } of unsent) await tx.letter.update({ where: { id }, data: await threadOf(tx, { ...letter, address, writtenAt: createdAt }) });
}
