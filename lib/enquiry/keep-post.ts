import "server-only";
import { database, isTaken } from "../store/database";
import { keepPostFile, removePostFile } from "../store/post-files";
import { actorOf } from "./audit";
import { authorise } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";

/** Bytes of one message that are kept. *elicited*: more than any mail server passes on. */
export const MOST_KEPT_BYTES = 200 * 1024 * 1024;
export interface KeptPost {
  postId: string;
  /** false: the very same message was here already. */
  isNew: boolean;
}

/**
 * Keeps a message as it came, before anybody looks at what is in it: first its bytes on the disk, then its row. From here on it
 * is not lost, whatever it holds. The same bytes are kept once, however often they come.
 */
export async function keepPost(caller: Caller, stream: AsyncIterable<Uint8Array | string>, now: Date): Promise<Result<KeptPost>> {
  const no = authorise(caller, "bring-post");
  if (no) return no;
  const file = await keepPostFile(stream, MOST_KEPT_BYTES);
  if (!file) return refuse("too-large", `This message is larger than ${MOST_KEPT_BYTES / 1024 / 1024} MB.`);
  if (file.bytes === 0) {
    await removePostFile(file.id);
    return refuse("unreadable", "This message is empty.");
  }
  const broughtById = caller.kind === "staff" ? actorOf(caller) : null;
  try {
    await database().post.create({ data: { ...file, state: "received", broughtById, arrivedAt: now } });
    return ok({ postId: file.id, isNew: true });
  } catch (error) {
    await removePostFile(file.id);
    if (!isTaken(error)) throw error;
    const { id } = await database().post.findUniqueOrThrow({ where: { sha256: file.sha256 }, select: { id: true } });
    return ok({ postId: id, isNew: false });
  }
}
