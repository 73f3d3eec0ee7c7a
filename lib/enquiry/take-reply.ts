import "server-only";
import { randomUUID } from "node:crypto";
import type { IncomingMessage } from "../mail/incoming/read-message";
import type { PostKind, PostState, Tx } from "../store/database";
import { audit } from "./audit";
import { NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { clientActed } from "./client-acted";
import { leftOutColumn, type WithEnclosures } from "./left-out";
import { fromPost, ownedDetail } from "./messages";
import { inOneStep } from "./one-step";
import { cutToAnswer } from "./post-text";
import { MESSAGE } from "./stored";
import { addPictures, dropPictures, takePictures, type TakenPictures } from "./take-pictures";

/** Words for two people who sort the same message. */
export const SORTED_ALREADY = refuse("changed-meanwhile", "Somebody has sorted this message already.");

export interface ReplyToTake {
  postId: string;
  /** The states in which it may be taken. */
  from: readonly PostState[];
  enquiryId: string;
  kind: PostKind;
  says: string | null;
  message: IncomingMessage & WithEnclosures;
  /** It comes from an address that is not the client's, and nobody has said that it is theirs: its words stand as that address's, and its photos stay with it. */
  notTheirs: boolean;
}

/**
 * Adds a letter to the enquiry it belongs to: its words beside what the client wrote before, its photos to the first rug; it is
 * our turn again. All of it in one transaction with the message's own row, so that no letter is taken twice. The caller has been authorised.
 */
export async function takeReply(caller: Caller, { postId, from, enquiryId, kind, says, message, notTheirs }: ReplyToTake, now: Date): Promise<Result<{ enquiryId: string }>> {
  const { taken, leftOut } = notTheirs ? heldPictures(message) : await takePictures(message.pictures);
  // A transaction may run again; only what its last run wrote counts.
  let refused = taken;
  try {
    const done = await inOneStep(async (tx) => {
      refused = taken;
      const rug = await tx.rug.findFirst({ where: { enquiryId }, orderBy: { position: "asc" }, select: { id: true } });
      if (!rug) return NOT_THERE;
      const filed = await tx.post.updateMany({ where: { id: postId, state: { in: [...from] } }, data: { state: "filed", kind, says, enquiryId } });
      if (filed.count !== 1) return SORTED_ALREADY;
      const text = cutToAnswer(message.body.own);
      const answerId = randomUUID();
      const isElsewhere = message.from?.address !== (await addressOf(tx, enquiryId));
      // What comes with no words, a paper or a photo that does not open, is looked at all the same.
      if (text || notTheirs || isElsewhere || leftOutColumn(message, leftOut)) await tx.answer.create({ data: { id: answerId, rugId: rug.id, question: MESSAGE, value: text, from: notTheirs ? fromPost(postId) : "client", at: now } });
      const added = await addPictures(tx, rug.id, taken, now);
      await tx.post.update({ where: { id: postId }, data: { leftOut: leftOutColumn(message, [...leftOut, ...added.leftOut]) } });
      await audit(tx, caller, { action: "mail-taken", enquiryId, at: now, detail: { photos: added.hashes.length, ...(isElsewhere && !notTheirs ? ownedDetail({ postId, answerId, pictures: added.hashes }) : { postId, answerId }) } });
      await clientActed(tx, { enquiryId, rugId: rug.id, now });
      return ok({ enquiryId, refused: added.refused });
    });
    if (done.ok) refused = done.value.refused;
    return done.ok ? ok({ enquiryId }) : done;
  } finally {
    await dropPictures(refused);
  }
}

/** Where the client is reached, in small letters. */
async function addressOf(tx: Tx, enquiryId: string): Promise<string | undefined> {
  const { client } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { client: { select: { email: true } } } });
  return client.email?.toLowerCase();
}

/** Photos of somebody we do not know are no evidence of the client's rug, and not shown on the client's page. */
export function heldPictures({ pictures }: IncomingMessage): TakenPictures {
  const n = pictures.length;
  return { taken: [], leftOut: n > 0 ? [`${n === 1 ? "one photo" : `${n} photos`}, until somebody says whose message it is`] : [] };
}
