import "server-only";
import { readMessage } from "../mail/incoming/read-message";
import { database } from "../store/database";
import { readPostFile } from "../store/post-files";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Refusal, type Result } from "./caller";
import { leftOutColumn } from "./left-out";
import { fromPost } from "./messages";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";
import { withSoundPictures } from "./sound-pictures";
import { MESSAGE } from "./stored";
import { holdForPost } from "./waiting-in-post";

const MEANWHILE: Refusal = refuse("changed-meanwhile", "Somebody has taken it out already, or has said that it is the client’s own.");

/**
 * Takes a message from another address out of the enquiry whose letter it answers, since it belongs elsewhere: its words leave the enquiry,
 * and it waits in the Post as a new letter does, to be opened as an enquiry of its own or put to another. Whose turn it is stays: somebody
 * looks at the enquiry just now. One that counts as the client's own is refused; that is taken back first.
 */
export async function takePostOut(caller: Caller, postId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "sort-post");
  if (no) return no;
  const post = await database().post.findUnique({ where: { id: postId }, select: { fromAddress: true, enquiryId: true, enquiry: { select: { reference: true } } } });
  if (!post) return NOT_THERE;
  const { fromAddress, enquiryId, enquiry } = post;
  if (!enquiryId || !enquiry) return MEANWHILE;
  const incoming = await withSoundPictures(await readMessage(await readPostFile(postId)));
  if (incoming.kind !== "letter") return NOT_THERE;
  return inOneStep(async (tx) => {
    const where = { question: MESSAGE, from: fromPost(postId), rug: { enquiryId } };
    const words = await tx.answer.findFirst({ where, select: { id: true, rugId: true } });
    if (!words || (await tx.answer.deleteMany({ where: { ...where, id: words.id } })).count !== 1) return MEANWHILE;
    const says = `It was taken out of ${enquiry.reference}, where it does not belong.`;
    const out = await tx.post.updateMany({ where: { id: postId, state: "filed", enquiryId }, data: { state: "waiting", kind: "letter", says, enquiryId: null, leftOut: leftOutColumn(incoming.message) } });
    if (out.count !== 1) return MEANWHILE;
    await audit(tx, caller, { action: "mail-taken-out", enquiryId, at: now, detail: { postId } });
    await holdForPost(tx, fromAddress, now);
    await reconsider(tx, { rugId: words.rugId, enquiryId }, now);
    return ok(null);
  });
}
