import "server-only";
import { HELD_BACK, NO_MAIL, OVERTAKEN } from "../mail/last-word";
import type { Letter, Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { audit, type AuditAction } from "./audit";
import type { Caller } from "./caller";
import { reopenDraft } from "./reopen-draft";
import { stateBefore } from "./state-before";
import { nextStates, WAITING_FOR_US } from "./states";

const BY: Caller = { kind: "system", what: "hold" };

/** Why letters are held back: their last word, and what stands in the history. */
const WHY = {
  client: { lastResponse: HELD_BACK, action: "letter-held-back" },
  judgement: { lastResponse: OVERTAKEN, action: "letter-overtaken" },
} as const satisfies Record<string, { lastResponse: string; action: AuditAction }>;

/**
 * Takes back what was approved and has not left, because its client has just written: nobody here had read that when they approved it.
 * A letter of an enquiry that has gone on by hand to where a client's words give us no turn is left alone.
 */
export async function holdBack(tx: Tx, enquiryId: string, now: Date): Promise<void> {
  const enquiry = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  if (nextStates(enquiry.state, "client")[0] !== "our_turn") return;
  await takeHeldBack(tx, { enquiryId, letters: await heldLetters(tx, enquiryId, now), why: "client", now });
}

/** Letters of people here that were approved and have not left, the newest first; not what the client may have seen on their own page. */
export async function heldLetters(tx: Tx, enquiryId: string, now: Date): Promise<Pick<Letter, "id" | "kind">[]> {
  const isUnseen = { OR: [{ notBefore: { gt: now } }, { toAddress: { not: NO_MAIL } }] };
  return tx.letter.findMany({ where: { enquiryId, automatic: false, state: "held", ...isUnseen }, orderBy: NEWEST_FIRST.createdAt, select: { id: true, kind: true } });
}

/**
 * Takes those back. Only the outbox or this can have a letter: whichever changes its state first. Where any was taken, the enquiry stands as
 * before the letter, and its draft is open again.
 */
export async function takeHeldBack(tx: Tx, { enquiryId, letters, why, now }: { enquiryId: string; letters: readonly { id: string }[]; why: keyof typeof WHY; now: Date }): Promise<void> {
  const { lastResponse, action } = WHY[why];
  let isHeldBack = false;
  for (const { id: letterId } of letters) {
    const taken = await tx.letter.updateMany({ where: { id: letterId, state: "held" }, data: { state: "taken_back", lastResponse } });
    if (taken.count !== 1) continue;
    isHeldBack = true;
    await reopenDraft(tx, { letterId, enquiryId, now });
    await audit(tx, BY, { action, enquiryId, at: now, detail: { letterId } });
  }
  if (isHeldBack) await tx.enquiry.updateMany({ where: { id: enquiryId, state: { notIn: [...WAITING_FOR_US] } }, data: await stateBefore(tx, enquiryId, now) });
}
