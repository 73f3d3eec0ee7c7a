import "server-only";
import type { Db, Tx } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { refuse, type Refusal } from "./caller";
import { isEnded } from "./client-standing";
import { enquiriesOfAddress } from "./enquiries-of-address";
import { holdBack } from "./hold-back";

/** A letter from a client's address of which nobody has said yet where it belongs. */
export interface WaitingInPost { readonly id: string; readonly subject: string }

/** What waits in the Post from an address, oldest first. Addresses of mail are kept there in small letters. */
export async function waitingInPost(db: Pick<Db, "post">, address: string | null): Promise<WaitingInPost[]> {
  if (!address) return [];
  const rows = await db.post.findMany({ where: { state: "waiting", fromAddress: address.toLowerCase() }, orderBy: OLDEST_FIRST.arrivedAt, select: { id: true, subject: true } });
  return rows.map(({ id, subject }) => ({ id, subject: subject ?? "" }));
}

/** Refuses to approve what would leave past a letter from the client's own address that nobody has sorted yet: it may belong here. */
export async function unlessSorted(tx: Tx, enquiryId: string): Promise<Refusal | null> {
  const enquiry = await tx.enquiry.findUnique({ where: { id: enquiryId }, select: { client: { select: { name: true, email: true } } } });
  const waiting = await waitingInPost(tx, enquiry?.client.email ?? null);
  if (!enquiry || waiting.length === 0) return null;
  const [which, where] = waiting.length === 1 ? ["A letter", "waits in the Post. Say first where it belongs"] : [`${waiting.length} letters`, "wait in the Post. Say first where they belong"];
  return refuse("changed-meanwhile", `${which} from ${enquiry.client.name}’s address ${where}. Nothing was sent, and your words are kept.`);
}

/** Holds back whatever of ours is about to leave to an address from which a letter waits in the Post from now on; `address` empty or null: nobody's. */
export async function holdForPost(tx: Tx, address: string | null, now: Date): Promise<void> {
  if (!address) return;
  for (const { id, state } of await enquiriesOfAddress(tx, address)) if (!isEnded(state)) await holdBack(tx, id, now);
}
