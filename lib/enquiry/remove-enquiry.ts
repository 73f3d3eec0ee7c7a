import "server-only";
import type { Prisma, Tx } from "../store/database";
import { removePhotoFiles } from "../store/photo-files";
import { removePostFile } from "../store/post-files";
import { addressesOf } from "./addresses-of";
import { audit } from "./audit";
import { refuse, type Caller, type Refusal } from "./caller";
import { wrong } from "./wrong";

/** Files whose rows are gone: to be removed once the transaction holds. */
export interface Leftover {
  readonly photoIds: readonly string[];
  readonly postIds: readonly string[];
}

const PARTS = {
  client: { select: { email: true } },
  letters: { where: { state: "sending" }, select: { leaseUntil: true } },
  post: { select: { id: true } },
  rugs: { select: { photos: { select: { id: true } } } },
} as const satisfies Prisma.EnquiryInclude;
const LEAVING: Refusal = refuse("changed-meanwhile", wrong("refusal.letter-leaving"));

/**
 * Removes an enquiry with everything that hangs on it: rugs, photos, answers, letters, messages, documents, its questionnaires and, where
 * this was its client's only one, the client and what else came from their addresses. Who did what stays, without a word of what was said;
 * one row more names the reference and the id, so that a restored backup can be freed of it again. null: it is not there.
 */
export async function removeEnquiry(tx: Tx, caller: Caller, enquiryId: string, now: Date): Promise<Leftover | Refusal | null> {
  const enquiry = await tx.enquiry.findUnique({ where: { id: enquiryId }, include: PARTS });
  if (!enquiry) return null;
  if (enquiry.letters.some((l) => l.leaseUntil && l.leaseUntil > now)) return LEAVING;
  const questionnaires = await questionnairesOf(tx, enquiryId);
  const unsent = questionnaires.flatMap((q) => q.photos);
  const addresses = await addressesOf(tx, { enquiryId, email: enquiry.client.email });
  await tx.audit.updateMany({ where: { enquiryId }, data: { detail: {} } });
  await tx.enquiry.delete({ where: { id: enquiryId } });
  await tx.client.deleteMany({ where: { id: enquiry.clientId, enquiries: { none: {} } } });
  const loose = await postOfNobody(tx, addresses);
  await tx.post.deleteMany({ where: { id: { in: loose.map((p) => p.id) } } });
  await tx.photo.deleteMany({ where: { id: { in: unsent.map((p) => p.id) } } });
  await tx.intake.deleteMany({ where: { id: { in: questionnaires.map((q) => q.id) } } });
  await audit(tx, caller, { action: "erased", enquiryId: null, at: now, detail: { erasedId: enquiryId, reference: enquiry.reference } });
  return { photoIds: [...enquiry.rugs.flatMap((r) => r.photos), ...unsent].map((p) => p.id), postIds: [...enquiry.post, ...loose].map((p) => p.id) };
}

/** The questionnaire that made it, those that added a rug to it, and those begun for one that were not sent; with their photos of no rug. */
async function questionnairesOf(tx: Tx, enquiryId: string): Promise<{ id: string; photos: { id: string }[] }[]> {
  const where = { OR: [{ enquiry: { id: enquiryId } }, { addsToId: enquiryId, enquiry: null }] };
  return tx.intake.findMany({ where, select: { id: true, photos: { where: { rugId: null }, select: { id: true } } } });
}

/** Messages of no enquiry from those addresses that no client has. */
async function postOfNobody(tx: Tx, addresses: readonly string[]): Promise<{ id: string }[]> {
  const had = await tx.client.findMany({ where: { email: { in: [...addresses] } }, select: { email: true } });
  const nobodys = addresses.filter((address) => !had.some((c) => c.email === address));
  return tx.post.findMany({ where: { enquiryId: null, fromAddress: { in: nobodys.map((a) => a.toLowerCase()) } }, select: { id: true } });
}

export const isRefusal = (removed: Leftover | Refusal): removed is Refusal => "code" in removed;

/** A file that cannot be removed now goes with the next sweep, since no row speaks for it. */
export async function removeLeftover({ photoIds, postIds }: Leftover): Promise<void> {
  await Promise.all([...photoIds.map(removePhotoFiles), ...postIds.map(removePostFile)]);
}
