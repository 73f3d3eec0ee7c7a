import "server-only";
import { readMessage } from "../mail/incoming/read-message";
import { database, type Tx } from "../store/database";
import { removePhotoFiles } from "../store/photo-files";
import { readPostFile } from "../store/post-files";
import { OLDEST_FIRST } from "../store/row-order";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { markPlans, redrawn, replaceDocuments } from "./blurred-documents";
import { ok, refuse, type Caller, type Refusal, type Result } from "./caller";
import { leftOutColumn } from "./left-out";
import { fromPost, OWNED_DEEDS, ownedIn } from "./messages";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";
import { MESSAGE } from "./stored";
import { heldPictures } from "./take-reply";

const MEANWHILE: Refusal = refuse("changed-meanwhile", "Somebody has taken that back already, or works with its photos. Look at the page again.");
const PHOTO_GONE = "A photo in it came from somebody else than the client, and was taken out.";
const PLAN_GONE = "The plan it shows no longer counts: the photo it was drawn on came from somebody else than the client.";

/**
 * A person here takes back that a message from another address is the client's own: its words stand as that address's again and on no
 * page of the client's, and its photos leave the enquiry, with what was marked in them, and the documents that show them. They stay with
 * the message, unless part of one was blurred: that is gone for good.
 */
export async function disownMessage(caller: Caller, postId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "sort-post");
  if (no) return no;
  const found = await ownedBy(postId);
  if (!found) return NOT_THERE;
  const { enquiryId, answerId, rugId, photoIds } = found;
  const incoming = await readMessage(await readPostFile(postId));
  if (incoming.kind === "unreadable") return NOT_THERE;
  const documents = await redrawn({ rugId, instead: new Map(photoIds.map((id) => [id, null])) });
  const done = await inOneStep<null>(async (tx) => {
    const disowned = await tx.answer.updateMany({ where: { id: answerId, question: MESSAGE, from: "client" }, data: { from: fromPost(postId) } });
    if (disowned.count !== 1) return MEANWHILE;
    if (!(await replaceDocuments(tx, documents, { rugId, photoIds, why: PHOTO_GONE, now }))) return MEANWHILE;
    await markPlans(tx, await tx.measurement.findMany({ where: { photoId: { in: photoIds }, withdrawnAt: null } }), { rugId, why: PLAN_GONE, now });
    if ((await tx.photo.deleteMany({ where: { id: { in: photoIds } } })).count !== photoIds.length) return MEANWHILE;
    await tx.post.update({ where: { id: postId }, data: { leftOut: leftOutColumn(incoming.message, heldPictures(incoming.message).leftOut) } });
    await audit(tx, caller, { action: "message-disowned", enquiryId, at: now, detail: { postId, photos: photoIds.length } });
    await reconsider(tx, { rugId, enquiryId }, now);
    return ok(null);
  });
  if (done.ok) await Promise.all(photoIds.map(removePhotoFiles));
  return done;
}

/** What a message brought as the client's own; null where it does not count as theirs, or came from their own address. */
async function ownedBy(postId: string) {
  const post = await database().post.findUnique({ where: { id: postId }, select: { enquiryId: true } });
  if (!post?.enquiryId) return null;
  const { enquiryId } = post;
  const audits = await database().audit.findMany({ where: { enquiryId, ...OWNED_DEEDS }, orderBy: OLDEST_FIRST.at, select: { action: true, detail: true } });
  const owned = ownedIn(audits).find((o) => o.postId === postId);
  const words = owned && (await database().answer.findUnique({ where: { id: owned.answerId }, select: { rugId: true } }));
  return words ? { enquiryId, answerId: owned.answerId, rugId: words.rugId, photoIds: await photosOf(database(), words.rugId, owned.pictures) } : null;
}

const photosOf = async (db: Pick<Tx, "photo">, rugId: string, hashes: readonly string[]): Promise<string[]> =>
  (await db.photo.findMany({ where: { rugId, sha256: { in: [...hashes] } }, select: { id: true } })).map((p) => p.id);
