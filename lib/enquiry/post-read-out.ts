import "server-only";
import { NO_MAIL } from "../mail/last-word";
import type { Tx } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { audit } from "./audit";
import type { Caller } from "./caller";
import { TO_BE_READ_OUT } from "./to-be-read-out";
import { reopenDraft } from "./reopen-draft";
import { afterHolding } from "./send-at";
import { isWaitingForUs, WAITING_FOR_US } from "./states";

/** A client who had no address, and has one now. */
export interface Reachable { clientId: string; to: { toName: string; toAddress: string } }
export interface Posted {
  /** Letters that were to be read out and go by mail, once they have been held. */
  posted: number;
  /** Letters that were to be read out and are taken back: a newer draft stands, or the enquiry has gone on. */
  overtaken: number;
}

const WAITED = { orderBy: OLDEST_FIRST.createdAt, where: TO_BE_READ_OUT, select: { id: true, kind: true, notBefore: true } } as const;

/**
 * Lets the letters that wait to be read out go to the address that their client has now. Each is held first, so that it can be taken back: it
 * was approved to be told. One that something newer has taken the place of does not go to anybody and is taken back.
 */
export async function postReadOut(tx: Tx, caller: Caller, { clientId, to }: Reachable, now: Date): Promise<Posted> {
  const holding = afterHolding(await readSettings(tx), now);
  const enquiries = await tx.enquiry.findMany({ where: { clientId, letters: { some: TO_BE_READ_OUT } }, select: { id: true, state: true, draft: { select: { number: true, approvedNumber: true } }, letters: WAITED } });
  const done = { posted: 0, overtaken: 0 };
  for (const { id: enquiryId, state, draft, letters } of enquiries) {
    const stands = isWaitingForUs(state) && draft?.approvedNumber === draft?.number;
    const newest = letters.findLast((l) => l.kind === "reply");
    for (const { id, kind, notBefore } of letters) {
      const goes = stands && (kind === "question" || id === newest?.id);
      const leaves = notBefore > holding ? notBefore : holding;
      const data = goes ? { ...to, state: leaves > now ? "held" as const : "waiting" as const, notBefore: leaves } : { state: "taken_back" as const };
      const { count } = await tx.letter.updateMany({ where: { id, ...TO_BE_READ_OUT }, data });
      if (count !== 1) continue;
      done[goes ? "posted" : "overtaken"] += 1;
      if (!goes) await reopenDraft(tx, { letterId: id, enquiryId, now });
      await audit(tx, caller, { action: goes ? "letter-posted" : "letter-taken-back", enquiryId, at: now, detail: { letterId: id } });
    }
    if (stands) await tx.enquiry.updateMany({ where: { id: enquiryId, state: { in: [...WAITING_FOR_US] } }, data: { state: "their_turn", stateSince: now } });
  }
  return done;
}

/** Lets an acknowledgement go that waited for want of an address. How many there were. */
export async function postAcknowledgement(tx: Tx, { clientId, to }: Reachable, now: Date): Promise<number> {
  const { count } = await tx.letter.updateMany({ where: { enquiry: { clientId }, automatic: true, toAddress: NO_MAIL, state: "waiting" }, data: { ...to, notBefore: now } });
  return count;
}
