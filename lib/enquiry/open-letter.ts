import "server-only";
import type { IncomingMessage } from "../mail/incoming/read-message";
import type { PostKind, PostState } from "../store/database";
import { refuse, type Caller, type Result } from "./caller";
import { undone, writeEntered } from "./enter-enquiry";
import type { Contact } from "./client-schema";
import { enquiryFileSchema } from "./enquiry-file";
import { leftOutColumn, type WithEnclosures } from "./left-out";
import { nameOf, storyOf } from "./post-text";
import { SORTED_ALREADY } from "./take-reply";
import { takePictures } from "./take-pictures";
import { pokeOutbox } from "./write-letter";

export interface LetterToOpen {
  postId: string;
  from: readonly PostState[];
  kind: PostKind;
  message: IncomingMessage & WithEnclosures;
  /** Who sent it, as a person here found out; needed where the letter itself does not say. */
  sender?: Contact | null;
  /** Whether its sender is told that it has come: never where a machine wrote (RFC 3834). */
  isAnswered: boolean;
}

/** Makes an enquiry of a letter, with its photos: all of it together with the message's own row, or nothing. The caller has been authorised. */
export async function openLetter(caller: Caller, { postId, from, kind, message, sender = null, isAnswered }: LetterToOpen, now: Date): Promise<Result<{ enquiryId: string; reference: string }>> {
  const client = sender ? found(sender) : message.from && { name: nameOf(message.from), email: message.from.address };
  if (!client) return refuse("invalid", "This message names no sender: write down who sent it, so that somebody can be answered.");
  const story = storyOf({ subject: message.subject, text: message.body.own });
  const file = enquiryFileSchema.safeParse({ channel: "email", client, rugs: [story ? { story } : {}] });
  if (!file.success) return refuse("invalid", "Its sender's address is none that we can answer.");
  const { taken, leftOut } = await takePictures(message.pictures);
  try {
    const done = await writeEntered(caller, file.data, [taken], now, {
      from: "client", isAnswered,
      also: async (tx, { enquiryId }) => {
        const data = { state: "filed", kind, enquiryId, leftOut: leftOutColumn(message, leftOut) } as const;
        return (await tx.post.updateMany({ where: { id: postId, state: { in: [...from] } }, data })).count === 1 ? null : SORTED_ALREADY;
      },
    });
    if (done.ok) pokeOutbox();
    return done.ok ? done : await undone([taken], done);
  } catch (error) {
    await undone([taken], null);
    throw error;
  }
}

/** A contact as the file of an enquiry has it. */
const found = ({ name, email, telephone }: Contact) => ({ name, ...(email === null ? {} : { email }), ...(telephone === null ? {} : { telephone }) });
