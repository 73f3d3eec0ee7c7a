import "server-only";
import { database, isTaken } from "../../store/database";

/** A claim on a mailbox holds this long after its last renewal. Milliseconds. *elicited* */
const LEASE_MS = 2 * 60_000;

/** How far a mailbox was read: UIDs up to `lastUid` are kept here, under this UIDVALIDITY. */
export interface ReadSoFar { readonly uidValidity: string | null; readonly lastUid: number }

const mine = (id: string, owner: string) => ({ id, leaseOwner: owner });

/** Takes the mailbox for one reader by a conditional update; null while another has it. */
export async function claimMailbox(id: string, owner: string, now: Date): Promise<ReadSoFar | null> {
  const { mailbox } = database();
  await mailbox.create({ data: { id } }).catch((error: unknown) => { if (!isTaken(error)) throw error; });
  const free = { id, OR: [{ leaseUntil: null }, { leaseUntil: { lt: now } }, { leaseOwner: owner }] };
  const { count } = await mailbox.updateMany({ where: free, data: { leaseOwner: owner, leaseUntil: new Date(now.getTime() + LEASE_MS) } });
  if (count !== 1) return null;
  const { uidValidity, lastUid } = await mailbox.findUniqueOrThrow({ where: { id } });
  return { uidValidity, lastUid: Number(lastUid) };
}

/** Renews the claim, with how far it was read; false where another has the mailbox now, and this reader must leave it. */
export async function noteRead(id: string, owner: string, { uidValidity, lastUid }: { uidValidity: string; lastUid: number }, now: Date): Promise<boolean> {
  const data = { uidValidity, lastUid: String(lastUid), leaseUntil: new Date(now.getTime() + LEASE_MS), lookedAt: now, trouble: null, troubleSince: null };
  return (await database().mailbox.updateMany({ where: mine(id, owner), data })).count === 1;
}

/** Writes down why the mailbox cannot be read; the moment it began stays. */
export async function noteTrouble(id: string, owner: string, trouble: string, now: Date): Promise<void> {
  const { mailbox } = database();
  await mailbox.updateMany({ where: { ...mine(id, owner), troubleSince: null }, data: { troubleSince: now } });
  await mailbox.updateMany({ where: mine(id, owner), data: { trouble } });
}

export async function leaveMailbox(id: string, owner: string): Promise<void> {
  await database().mailbox.updateMany({ where: mine(id, owner), data: { leaseOwner: null, leaseUntil: null } });
}
