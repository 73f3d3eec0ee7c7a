import "server-only";
import * as z from "zod/mini";
import { hidesPerhaps } from "../mail/incoming/quoted";
import type { Answer, Audit, Post } from "../store/database";
import type { MessageView } from "./draft-types";
import { readLeftOut } from "./left-out";
import { MESSAGE } from "./stored";

const BY_POST = "post:";
/** In place of "client": the words of a message that answers a letter of ours from an address we do not know, until a person says whose they are. */
export const fromPost = (postId: string): string => `${BY_POST}${postId}`;
export const isFromPost = (from: string): boolean => from.startsWith(BY_POST);

/** The message by which words came from another address than the client's. */
interface ByPost { postId: string; address: string }
/** What somebody wrote after the enquiry. `at`: since when it is with the enquiry. `cameAt`: when it came by mail; null where it did not, or that is not known. `other`: it came from another address, and nobody has said that it is the client's own. `owned`: it did too, and somebody has. Both null: the client wrote it. `enclosed`: what came with it and is no photo of the enquiry; null where nothing did. `hidesPerhaps`: the id of its mail, where words of theirs may be among what was folded. */
export interface Message { at: Date; cameAt: Date | null; text: string; other: ByPost | null; owned: ByPost | null; enclosed: MessageView["enclosed"]; hidesPerhaps: MessageView["hidesPerhaps"] }

/** What is kept in the history of a message from another address that counts as the client's own: its words, and the photos that came in with it. */
const OWNED = ["message-owned", "mail-taken"];
const ownedSchema = z.object({ postId: z.string(), answerId: z.string(), pictures: z.string() });
export interface Owned { postId: string; answerId: string; /** SHA-256 of each photo's bytes as they came. */ pictures: string[] }
/** As it is kept. */
export const ownedDetail = ({ postId, answerId, pictures }: Owned) => ({ postId, answerId, pictures: pictures.join(" ") });
/** What the database is asked for. */
export const OWNED_DEEDS = { action: { in: OWNED } };

/** Those of a history, the newest of each message. `audit`: the oldest first. */
export function ownedIn(audit: readonly Pick<Audit, "action" | "detail">[]): Owned[] {
  const all = audit.filter((a) => OWNED.includes(a.action)).flatMap((a) => ownedSchema.safeParse(a.detail).data ?? []);
  return [...new Map(all.map((o) => [o.postId, { ...o, pictures: o.pictures.split(" ").filter(Boolean) }])).values()];
}

const takenSchema = z.object({ postId: z.string(), answerId: z.string() });
/** The messages that were taken in, with when and the answer that holds their words. `audit`: the oldest first. */
export const takenIn = <A extends Pick<Audit, "action" | "detail">>(audit: readonly A[]) =>
  audit.flatMap((a) => (OWNED.includes(a.action) ? [takenSchema.safeParse(a.detail).data ?? []].flat().map((taken) => ({ ...a, ...taken })) : []));
/** `audit`: the oldest first. */
interface From { posts: readonly Pick<Post, "id" | "fromAddress" | "arrivedAt" | "leftOut" | "quoted">[]; audit: readonly Pick<Audit, "action" | "detail">[] }

/** The client's messages, and those from other addresses, oldest first. `posts`: messages that came by mail. */
export function messagesIn(answers: readonly Pick<Answer, "id" | "question" | "value" | "at" | "from">[], { posts, audit }: From): Message[] {
  const owned = ownedIn(audit);
  const taken = takenIn(audit);
  const postOf = (a: Pick<Answer, "id" | "from">) => posts.find((p) => p.id === (isFromPost(a.from) ? a.from.slice(BY_POST.length) : taken.find((t) => t.answerId === a.id)?.postId));
  const byPost = (postId: string | undefined): ByPost | null => (postId === undefined ? null : { postId, address: posts.find((p) => p.id === postId)?.fromAddress ?? "" });
  return answers
    .filter((a) => a.question === MESSAGE && (a.value !== "" || isFromPost(a.from) || enclosedWith(postOf(a)) !== null))
    .map((a) => ({
      at: a.at, cameAt: postOf(a)?.arrivedAt ?? null, text: z.string().parse(a.value), enclosed: enclosedWith(postOf(a)), hidesPerhaps: hidingIn(postOf(a)),
      other: byPost(isFromPost(a.from) ? a.from.slice(BY_POST.length) : undefined),
      owned: byPost(isFromPost(a.from) ? undefined : owned.find((o) => o.answerId === a.id)?.postId),
    }))
    .sort((a, b) => a.at.getTime() - b.at.getTime());
}

function enclosedWith(post: Pick<Post, "id" | "leftOut"> | undefined): Message["enclosed"] {
  return post?.leftOut ? { id: post.id, ...readLeftOut(post.leftOut) } : null;
}

const hidingIn = (post: Pick<Post, "id" | "quoted"> | undefined): string | null => (post && hidesPerhaps(post.quoted ?? "") ? post.id : null);

export const messageView = ({ at, cameAt, ...message }: Message): MessageView => ({ at: at.toISOString(), cameAt: cameAt?.toISOString() ?? null, ...message });
