import "server-only";
import type { Letter, Prisma, Tx } from "../store/database";
import type { Outcome } from "./outcome";
import { retryAfterMs } from "./retry";
import { suppress } from "./suppression";

type Changes = Prisma.LetterUpdateManyMutationInput;
const TWICE = "It may have arrived twice.";

/** A letter under our claim. `mayBeThere`: an earlier attempt ended without an answer. */
export interface Claimed { letter: Letter; mayBeThere: boolean }
interface Ended extends Claimed { outcome: Outcome; now: Date }

function again({ letter, mayBeThere, outcome: { kind, said }, now }: Ended): Changes {
  const doubtful = kind === "unknown" || mayBeThere;
  const lastResponse = doubtful ? `${said} It may have arrived.` : said;
  const wait = retryAfterMs(letter.attempts);
  if (wait === null) return { state: "failed", lastResponse: `Given up after four days. ${lastResponse}` };
  return { state: doubtful ? "unknown" : "waiting", lastResponse, notBefore: new Date(now.getTime() + wait) };
}

/** What an outcome makes of the letter's row. */
function changes(ended: Ended): Changes {
  const { outcome: { kind, said }, mayBeThere, now } = ended;
  if (kind === "accepted") return { state: "sent", sentAt: now, lastResponse: mayBeThere ? `${said} ${TWICE}` : said };
  if (kind === "refused") return { state: "failed", lastResponse: mayBeThere ? `${said} An earlier try may have arrived.` : said };
  return again(ended);
}

/**
 * Writes down what became of a letter we had claimed. Where the claim was lost meanwhile, only an acceptance still
 * counts: the letter did go out, whoever has it now. An address that is refused for good is not tried again.
 */
export async function record(tx: Tx, ended: Ended): Promise<void> {
  const { letter, outcome, now } = ended;
  const ours = { id: letter.id, state: "sending" as const, leaseOwner: letter.leaseOwner };
  const data = { ...changes(ended), leaseOwner: null, leaseUntil: null };
  const { count } = await tx.letter.updateMany({ where: ours, data });
  if (count === 0 && outcome.kind === "accepted") {
    await tx.letter.updateMany({ where: { id: letter.id, state: "unknown" }, data: { ...data, lastResponse: `${outcome.said} ${TWICE}` } });
  }
  if (outcome.kind === "refused" && outcome.addressRefused) {
    await suppress(tx, { address: letter.toAddress, why: outcome.said, now });
  }
}
