import "server-only";
import { withoutEnclosure } from "../mail/incoming/without-enclosure";
import { database } from "../store/database";
import { readPostFile, replacePostFile } from "../store/post-files";

/** Takes a picture, known by the hash of its bytes as they came, out of every message of an enquiry that brought it. The rest of each message stays as it came. */
export async function cutFromPost({ enquiryId, sha256 }: { enquiryId: string; sha256: string }): Promise<void> {
  const posts = await database().post.findMany({ where: { enquiryId, pictures: { gt: 0 } }, select: { id: true } });
  for (const { id } of posts) {
    const cut = withoutEnclosure(await readPostFile(id), sha256);
    if (cut) await replacePostFile(id, cut);
  }
}
