import "server-only";
import { safeFileName } from "../mail/enclosures";
import { readMessage } from "../mail/incoming/read-message";
import { database } from "../store/database";
import { readPostFile } from "../store/post-files";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";

/** A message as it came, as a file that mail programs open (.eml), for staff. */
export async function postFile(caller: Caller, postId: string): Promise<Result<{ bytes: Buffer; type: "message/rfc822" }>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const post = await database().post.findUnique({ where: { id: postId }, select: { id: true } });
  return post ? ok({ bytes: await readPostFile(post.id), type: "message/rfc822" }) : NOT_THERE;
}

/** One file that came with a message and is no photo, for staff, read out of the message as it is kept. `at`: its place among those, from 0. Its type is its sender's word and is not given on. */
export async function enclosedFile(caller: Caller, { postId, at }: { postId: string; at: number }): Promise<Result<{ bytes: Buffer; fileName: string }>> {
  const whole = await postFile(caller, postId);
  if (!whole.ok) return whole;
  const incoming = await readMessage(whole.value.bytes);
  const file = incoming.kind === "unreadable" ? undefined : incoming.message.otherEnclosures[at];
  return file ? ok({ bytes: file.content, fileName: safeFileName(file.name) }) : NOT_THERE;
}
