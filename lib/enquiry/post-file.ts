import "server-only";
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
