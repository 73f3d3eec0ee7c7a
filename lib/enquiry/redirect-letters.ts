import "server-only";
import { headerText } from "../mail/address";
import { ARRIVED_PERHAPS, NO_MAIL } from "../mail/last-word";
import { threadAnew } from "../mail/thread";
import type { Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { ok, refuse, type Caller, type Result } from "./caller";
import type { Contact } from "./client-schema";
import { fileFailure } from "./file-failure";
import { postAcknowledgement, postReadOut, type Posted } from "./post-read-out";
import { TO_BE_READ_OUT } from "./to-be-read-out";
import { wrong } from "./wrong";

export interface Redirected extends Posted {
  /** Letters that had not left and go to the new address, or wait to be read out where there is none. */
  redirected: number;
  /** Letters that may have reached the old address and are not tried again. */
  inDoubt: number;
}

const NOTHING_TO_READ_OUT: Posted = { posted: 0, overtaken: 0 };

interface Correction { clientId: string; was: Contact; is: Contact; areLinksEnded: boolean }

/**
 * Points what has not left at a client's corrected address and name; what was to be read out goes to a first address. A letter that was tried without an answer may lie at the old
 * address: it is given up, and the turn is ours. An acknowledgement whose link is ended does not leave at all. Refused while one is being sent: nobody knows yet where it ends.
 */
export async function redirectLetters(tx: Tx, caller: Caller, { clientId, was, is, areLinksEnded }: Correction, now: Date): Promise<Result<Redirected>> {
  const named = { toName: headerText(is.name) };
  const unsent = { enquiry: { clientId }, state: { in: ["held", "waiting"] as ("held" | "waiting")[] } };
  if (was.email === is.email) {
    await tx.letter.updateMany({ where: unsent, data: named });
    return ok({ redirected: 0, inDoubt: 0, ...NOTHING_TO_READ_OUT });
  }
  if (was.email === null) {
    const reachable = { clientId, to: { ...named, toAddress: is.email ?? NO_MAIL } };
    const posted = { redirected: await postAcknowledgement(tx, reachable, now), inDoubt: 0, ...(await postReadOut(tx, caller, reachable, now)) };
    await threadAnew(tx, { clientId, address: reachable.to.toAddress });
    return ok(posted);
  }
  const old = { enquiry: { clientId }, toAddress: was.email };
  if ((await tx.letter.count({ where: { ...old, state: "sending", leaseUntil: { gt: now } } })) > 0) return refuse("changed-meanwhile", wrong("refusal.letter-leaving"));
  if (areLinksEnded) await tx.letter.updateMany({ where: { ...old, automatic: true, state: "waiting" }, data: { state: "taken_back" } });
  const toAddress = is.email ?? NO_MAIL;
  const held = await tx.letter.updateMany({ where: { ...old, state: "held" }, data: { ...named, toAddress } });
  // What another server put off says nothing about this one: it goes at once.
  const waiting = await tx.letter.updateMany({ where: { ...old, state: "waiting" }, data: { ...named, toAddress, attempts: 0, notBefore: now, lastResponse: null } });
  if (is.email === null) await keepTurn(tx, clientId, now);
  const inDoubt = await giveUpDoubtful(tx, old, now);
  await threadAnew(tx, { clientId, address: toAddress });
  return ok({ redirected: held.count + waiting.count, inDoubt, ...NOTHING_TO_READ_OUT });
}

/** What was on its way waits to be read out, and that is ours to do. */
async function keepTurn(tx: Tx, clientId: string, now: Date): Promise<void> {
  await tx.enquiry.updateMany({ where: { clientId, state: "their_turn", letters: { some: TO_BE_READ_OUT } }, data: { state: "our_turn", stateSince: now } });
}

async function giveUpDoubtful(tx: Tx, old: { enquiry: { clientId: string }; toAddress: string }, now: Date): Promise<number> {
  const doubtful = await tx.letter.findMany({ where: { ...old, state: { in: ["unknown", "sending"] } }, orderBy: NEWEST_FIRST.createdAt, select: { id: true, enquiryId: true, automatic: true } });
  const lastResponse = `The address was corrected, so it is not tried there again. ${ARRIVED_PERHAPS}`;
  await tx.letter.updateMany({ where: { id: { in: doubtful.map((l) => l.id) } }, data: { state: "failed", leaseOwner: null, leaseUntil: null, lastResponse } });
  for (const letter of doubtful) await fileFailure(tx, { ...letter, mayHaveArrived: true }, now);
  return doubtful.length;
}
