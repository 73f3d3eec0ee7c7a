import "server-only";
import { readMessage, type IncomingMessage, type OurLetters } from "../mail/incoming/read-message";
import { database, type Post } from "../store/database";
import { readPostFile } from "../store/post-files";
import { readSettings } from "../workshop/settings";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { reachableSchema, type Contact } from "./client-schema";
import { openLetter } from "./open-letter";
import { ourLetters } from "./our-letters";
import { unlessOwn } from "./own-address";
import { SORTED_ALREADY } from "./take-reply";

/** The states from which a person may sort a message. */
export const SORTABLE = ["waiting", "aside"] as const;

/** A message that a person may still sort, read once more; its pictures are nowhere but in its file. `ours`: finds the letters of ours that it may repeat. */
export async function readSortable(postId: string, ours: OurLetters = ourLetters): Promise<Result<{ post: Post; message: IncomingMessage | null }>> {
  const post = await database().post.findUnique({ where: { id: postId } });
  if (!post) return NOT_THERE;
  if (!SORTABLE.some((s) => s === post.state)) return SORTED_ALREADY;
  const incoming = await readMessage(await readPostFile(postId), ours);
  return ok({ post, message: incoming.kind === "unreadable" ? null : incoming.message });
}

/**
 * Makes an enquiry of a message that waits. Its sender is told that it has come, unless a machine wrote it. `sender`: who sent one that names
 * nobody, as a person here found out; what a message itself names is not overwritten.
 */
export async function openPost(caller: Caller, { postId, sender = null }: { postId: string; sender?: Contact | null }, now: Date): Promise<Result<{ enquiryId: string; reference: string }>> {
  const no = authorise(caller, "sort-post");
  if (no) return no;
  const found = await readSortable(postId);
  if (!found.ok) return found;
  const { post, message } = found.value;
  if (!message) return refuse("unreadable", "This message cannot be read. Open its file in a mail program, and take the enquiry in by hand.");
  if (sender && message.from) return refuse("invalid", "This message names its sender; correct the name or the address once it is an enquiry.");
  const typed = sender && reachableSchema.safeParse({ name: sender.name, email: sender.email ?? "", telephone: sender.telephone ?? "" });
  if (typed?.success === false) return refuse("invalid", typed.error.issues[0]?.message ?? "", Object.fromEntries(typed.error.issues.map((i) => [String(i.path[0]), i.message])));
  const own = unlessOwn(typed?.data?.email, await readSettings(), "email");
  if (own) return own;
  const kind = post.kind ?? "letter";
  return openLetter(caller, { postId, from: SORTABLE, kind, message, sender: typed?.data ?? null, isAnswered: kind === "letter" }, now);
}
