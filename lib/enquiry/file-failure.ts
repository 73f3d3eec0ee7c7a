import "server-only";
import type { FailedLetter } from "../mail/record";
import type { Tx } from "../store/database";
import { audit } from "./audit";
import type { Caller } from "./caller";
import { takeTurnBack } from "./take-turn-back";

const BY: Caller = { kind: "system", what: "outbox" };

/**
 * What follows from a letter that failed for good, in the transaction that marks it: the history says so, and it is our turn again, since
 * the client has not heard from us. An automatic letter gives no turn back; that the address does not work is said all the same.
 */
export async function fileFailure(tx: Tx, { id, enquiryId, automatic, mayHaveArrived }: FailedLetter, now: Date): Promise<void> {
  const ours = mayHaveArrived ? "letter-in-doubt" : "letter-failed";
  await audit(tx, BY, { action: automatic ? "acknowledgement-failed" : ours, enquiryId, at: now, detail: { letterId: id } });
  if (!automatic) await takeTurnBack(tx, { id, enquiryId }, now);
}
