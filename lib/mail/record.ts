import "server-only";
import type { Letter, Prisma, Tx } from "../store/database";
import { ARRIVED_BEFORE, ARRIVED_PERHAPS, TWICE } from "./last-word";
import type { Outcome } from "./outcome";
import { retryAfterMs } from "./retry";
import { suppress } from "./suppression";

type Changes = Prisma.LetterUpdateManyMutationInput;

/** A letter under our claim. `mayBeThere`: an earlier attempt ended without an answer. */
export interface Claimed { letter: Letter; mayBeThere: boolean }
/** A letter that failed for good. `mayHaveArrived`: some try of it ended without an answer. */
export interface FailedLetter { id: string; enquiryId: string; automatic: boolean; mayHaveArrived: boolean }
/** What follows from a failure beyond the outbox, in the transaction that marks the letter: reads and writes through `tx`, nothing else. */
export type OnFailed = (tx: Tx, letter: FailedLetter, now: Date) => Promise<void>;
interface Ended extends Claimed { outcome: Outcome; now: Date }

function again({ letter, mayBeThere, outcome: { kind, said }, now }: Ended): Changes {
  const doubtful = kind === "unknown" || mayBeThere;
  const lastResponse = doubtful ? `${said} ${ARRIVED_PERHAPS}` : said;
  const wait = retryAfterMs(letter.attempts);
  if (wait === null) return { state: "failed", lastResponse: `Given up after four days. ${lastResponse}` };
  return { state: doubtful ? "unknown" : "waiting", lastResponse, notBefore: new Date(now.getTime() + wait) };
}

/** What an outcome makes of the letter's row. */
function changes(ended: Ended): Changes {
  const { outcome: { kind, said }, mayBeThere, now } = ended;
  if (kind === "accepted") return { state: "sent", sentAt: now, lastResponse: mayBeThere ? `${said} ${TWICE}` : said };
  if (kind === "refused") return { state: "failed", lastResponse: mayBeThere ? `${said} ${ARRIVED_BEFORE}` : said };
  return again(ended);
}

/**
 * Writes down what became of a letter we had claimed. Where the claim was lost meanwhile, only an acceptance still
 * counts: the letter did go out, whoever has it now. An address that is refused for good is not tried again. Of a letter that
 * failed `onFailed` is told, once.
 */
export async function record(tx: Tx, ended: Ended, onFailed: OnFailed): Promise<void> {
  const { letter, mayBeThere, outcome, now } = ended;
  const ours = { id: letter.id, state: "sending" as const, leaseOwner: letter.leaseOwner };
  const data = { ...changes(ended), leaseOwner: null, leaseUntil: null };
  const { count } = await tx.letter.updateMany({ where: ours, data });
  if (count === 0 && outcome.kind === "accepted") {
    await tx.letter.updateMany({ where: { id: letter.id, state: "unknown" }, data: { ...data, lastResponse: `${outcome.said} ${TWICE}` } });
  }
  if (count === 1 && data.state === "failed") {
    const { id, enquiryId, automatic } = letter;
    await onFailed(tx, { id, enquiryId, automatic, mayHaveArrived: mayBeThere || outcome.kind === "unknown" }, now);
  }
  if (outcome.kind === "refused" && outcome.addressRefused) {
    await suppress(tx, { address: letter.toAddress, why: outcome.said, now });
  }
}
