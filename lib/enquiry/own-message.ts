import "server-only";
import { readMessage } from "../mail/incoming/read-message";
import { database } from "../store/database";
import { readPostFile } from "../store/post-files";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { leftOutColumn } from "./left-out";
import { fromPost, ownedDetail } from "./messages";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";
import { withSoundPictures } from "./sound-pictures";
import { MESSAGE } from "./stored";
import { addPictures, dropPictures, takePictures } from "./take-pictures";

/**
 * A person here says that a message from an address we do not know is the client's own: its words stand on their page from then on, and
 * its photos come to the enquiry. Where our letters go does not change.
 */
export async function ownMessage(caller: Caller, postId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "sort-post");
  if (no) return no;
  const post = await database().post.findUnique({ where: { id: postId }, select: { enquiryId: true } });
  if (!post?.enquiryId) return NOT_THERE;
  const { enquiryId } = post;
  const incoming = await withSoundPictures(await readMessage(await readPostFile(postId)));
  if (incoming.kind !== "letter") return NOT_THERE;
  const { message } = incoming;
  const { taken, leftOut } = await takePictures(message.pictures);
  // A transaction may run again; only what its last run wrote counts.
  let refused = taken;
  try {
    const done = await inOneStep(async (tx) => {
      refused = taken;
      const where = { question: MESSAGE, from: fromPost(postId), rug: { enquiryId } };
      const words = await tx.answer.findFirst({ where, select: { id: true, rugId: true } });
      if (!words) return refuse("changed-meanwhile", "Somebody has said so already.");
      const owned = await tx.answer.updateMany({ where: { ...where, id: words.id }, data: { from: "client" } });
      if (owned.count !== 1) return refuse("changed-meanwhile", "Somebody has said so already.");
      const added = await addPictures(tx, words.rugId, taken, now);
      await tx.post.update({ where: { id: postId }, data: { leftOut: leftOutColumn(message, [...leftOut, ...added.leftOut]) } });
      await audit(tx, caller, { action: "message-owned", enquiryId, at: now, detail: { photos: added.hashes.length, ...ownedDetail({ postId, answerId: words.id, pictures: added.hashes }) } });
      await reconsider(tx, { rugId: words.rugId, enquiryId }, now);
      return ok(added.refused);
    });
    if (done.ok) refused = done.value;
    return done.ok ? ok(null) : done;
  } finally {
    await dropPictures(refused);
  }
}
