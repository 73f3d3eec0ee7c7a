import "server-only";
import type { Bounce } from "../mail/incoming/bounce";
import { suppress } from "../mail/suppression";
import type { Tx } from "../store/database";
import { audit } from "./audit";
import type { Caller } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { nextStates } from "./states";

interface OurLetter { id: string; enquiryId: string; toAddress: string; automatic: boolean }
interface Report { bounce: Bounce; letter: OurLetter; postId: string }

/**
 * Whether a report says that the address itself takes no mail: 5.1.x or 5.2.1, disabled (RFC 3463, sections 3.2 and 3.3), or a
 * failure without a reason. A full mailbox, a policy or a fault of the content says nothing against the address.
 */
export const isAddressDead = ({ action, status }: Pick<Bounce, "action" | "status">): boolean =>
  action === "failed" && (status === null || status === "5.0.0" || status === "5.2.1" || status.startsWith("5.1."));

const wordsOf = ({ status, says }: Bounce): string => [says.includes(status ?? "") ? null : status, says].filter(Boolean).join(" ") || "no reason was given";

/** What a report means, in a sentence for staff. */
export function sayBounce(bounce: Bounce): string {
  if (bounce.action === "failed") return `Our letter came back: ${wordsOf(bounce)}.`;
  return bounce.action === "delayed" ? `Our letter is late and still being tried: ${wordsOf(bounce)}.` : "Our letter was passed on.";
}

/**
 * Marks the letter a report is about. One that came back is no longer "sent", its address takes no more letters where the
 * address is at fault, and it is our turn again, since the client has not heard from us.
 */
export async function fileBounce(tx: Tx, caller: Caller, { bounce, letter, postId }: Report, now: Date): Promise<void> {
  const lastResponse = sayBounce(bounce);
  const gone = { id: letter.id, state: { in: ["sent", "unknown"] as ("sent" | "unknown")[] } };
  if (bounce.action === "delayed") await tx.letter.updateMany({ where: gone, data: { lastResponse } });
  if (bounce.action !== "failed") return;
  await tx.letter.updateMany({ where: gone, data: { state: "failed", lastResponse } });
  if (isAddressDead(bounce)) await suppress(tx, { address: letter.toAddress, why: wordsOf(bounce), now });
  await audit(tx, caller, { action: "letter-came-back", enquiryId: letter.enquiryId, at: now, detail: { letterId: letter.id, postId } });
  if (!letter.automatic) await takeTurnBack(tx, letter.enquiryId, now);
}

async function takeTurnBack(tx: Tx, enquiryId: string, now: Date): Promise<void> {
  const { state } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true } });
  const [to] = nextStates(state, "taken-back");
  if (!to) return;
  await tx.enquiry.update({ where: { id: enquiryId }, data: { state: to, stateSince: now } });
  await beginFreshDraft(tx, enquiryId, now);
}
