import "server-only";
import * as z from "zod/mini";
import type { Answer, Post } from "../store/database";
import type { MessageView } from "./draft-types";
import { MESSAGE } from "./stored";

const BY_POST = "post:";
/** In place of "client": the words of a message that answers a letter of ours from an address we do not know, until a person says whose they are. */
export const fromPost = (postId: string): string => `${BY_POST}${postId}`;
export const isFromPost = (from: string): boolean => from.startsWith(BY_POST);

/** What somebody wrote after the enquiry. `other`: the message by which it came from another address than the client's; null: the client wrote it. */
export interface Message { at: Date; text: string; other: { postId: string; address: string } | null }

/** The client's messages, and those from other addresses, oldest first. `posts`: messages that came by mail. */
export function messagesIn(answers: readonly Pick<Answer, "question" | "value" | "at" | "from">[], posts: readonly Pick<Post, "id" | "fromAddress">[]): Message[] {
  const otherOf = (from: string) => (isFromPost(from) ? { postId: from.slice(BY_POST.length), address: posts.find((p) => fromPost(p.id) === from)?.fromAddress ?? "" } : null);
  return answers
    .filter((a) => a.question === MESSAGE)
    .map((a) => ({ at: a.at, text: z.string().parse(a.value), other: otherOf(a.from) }))
    .sort((a, b) => a.at.getTime() - b.at.getTime());
}

export const messageView = ({ at, text, other }: Message): MessageView => ({ at: at.toISOString(), text, other });
