import "server-only";
import type { Bounce } from "../mail/incoming/bounce";
import { READ_OUT, READ_OUT_BESIDES } from "../mail/last-word";
import { suppress } from "../mail/suppression";
import type { Prisma, Tx } from "../store/database";
import { audit } from "./audit";
import type { Caller } from "./caller";
import { takeTurnBack } from "./take-turn-back";

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

/** What `fileBounce` does with it, in a sentence for staff. */
export function sayFiledBounce(bounce: Bounce, { automatic }: Pick<OurLetter, "automatic">): string {
  if (bounce.action !== "failed") return "Nothing needs doing.";
  const dead = isAddressDead(bounce) ? ", nothing more is sent to its address until somebody says why" : "";
  return `That letter counts as not delivered${dead}${automatic ? "" : `${dead ? "," : ""} and it is your turn again`}.`;
}

/** A letter that was read out has been told, whatever became of what was mailed of it. */
const UNTOLD = { OR: [{ lastResponse: null }, { lastResponse: { notIn: [READ_OUT, READ_OUT_BESIDES] } }] } satisfies Prisma.LetterWhereInput;

/**
 * Marks the letter a report is about. One that came back is no longer "sent", its address takes no more letters where the
 * address is at fault, and it is our turn again, since the client has not heard from us. Of one that is still to go nothing is believed.
 */
export async function fileBounce(tx: Tx, caller: Caller, { bounce, letter, postId }: Report, now: Date): Promise<void> {
  const lastResponse = sayBounce(bounce);
  if (bounce.action === "delayed") await tx.letter.updateMany({ where: { id: letter.id, ...UNTOLD, state: { in: ["sent", "unknown"] } }, data: { lastResponse } });
  if (bounce.action !== "failed") return;
  const marked = await tx.letter.updateMany({ where: { id: letter.id, ...UNTOLD, state: { in: ["sent", "unknown", "failed"] } }, data: { state: "failed", lastResponse } });
  if (marked.count !== 1) return;
  if (isAddressDead(bounce)) await suppress(tx, { address: letter.toAddress, why: wordsOf(bounce), now });
  await audit(tx, caller, { action: "letter-came-back", enquiryId: letter.enquiryId, at: now, detail: { letterId: letter.id, postId } });
  if (!letter.automatic) await takeTurnBack(tx, letter, now);
}
