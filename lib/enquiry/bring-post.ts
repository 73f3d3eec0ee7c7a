import "server-only";
import { database } from "../store/database";
import type { Caller, Result } from "./caller";
import { ok } from "./caller";
import { keepPost } from "./keep-post";
import { sortPost } from "./sort-post";

/** What became of a message that somebody brought. */
export interface Brought {
  postId: string;
  /** In a sentence. */
  says: string;
  enquiry: { id: string; reference: string } | null;
}

/** Takes in a message that a person here saved as a file, by the way of every message. */
export async function bringPost(caller: Caller, stream: AsyncIterable<Uint8Array | string>, now: Date): Promise<Result<Brought>> {
  const kept = await keepPost(caller, stream, now);
  if (!kept.ok) return kept;
  const { postId, isNew } = kept.value;
  await sortPost(postId, now);
  const post = await database().post.findUniqueOrThrow({ where: { id: postId }, include: { enquiry: { select: { id: true, reference: true } } } });
  return ok({ postId, says: isNew ? sayBrought(post) : "It was here already.", enquiry: post.enquiry });
}

function sayBrought({ state, kind, says }: { state: string; kind: string | null; says: string | null }): string {
  if (state === "received") return "It is kept and will be read in a moment.";
  if (state === "aside") return `It was put aside. ${says ?? ""}`.trim();
  if (state === "waiting") return `It waits for you. ${says ?? ""}`.trim();
  if (kind === "bounce") return `${says ?? ""} It lies with its enquiry.`.trim();
  if (kind === "automatic") return `A machine wrote it, so nobody answers it. ${says ?? ""} It lies with its enquiry.`;
  return kind === "letter" ? "It is an enquiry now." : `It lies with its enquiry; it is your turn. ${says ?? ""}`.trim();
}
