import "server-only";
import { audit } from "./audit";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { SORTED_ALREADY } from "./take-reply";
import { holdForPost } from "./waiting-in-post";

/** Puts a message aside that needs nothing, or takes one back out, which holds back what was about to leave past it. Nothing is thrown away. */
export async function putPostAside(caller: Caller, { postId, isBack = false }: { postId: string; isBack?: boolean }, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "sort-post");
  if (no) return no;
  const [from, to] = isBack ? (["aside", "waiting"] as const) : (["waiting", "aside"] as const);
  return inOneStep(async (tx) => {
    const moved = await tx.post.updateMany({ where: { id: postId, state: from }, data: { state: to } });
    if (moved.count !== 1) return SORTED_ALREADY;
    if (isBack) await holdForPost(tx, (await tx.post.findUniqueOrThrow({ where: { id: postId }, select: { fromAddress: true } })).fromAddress, now);
    await audit(tx, caller, { action: isBack ? "mail-back" : "mail-aside", enquiryId: null, at: now, detail: { postId } });
    return ok(null);
  });
}
