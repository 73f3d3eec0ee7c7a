import "server-only";
import type { ComposedDraft } from "../reply/draft";
import type { Draft, Revision } from "../store/database";
import type { DraftToday } from "./draft-today";
import { messageView } from "./messages";
import type { DraftView, LetterNow, SinceView } from "./draft-types";

type Newest = Pick<Revision, "subject" | "text" | "createdAt" | "authorId"> & { author: { name: string } | null };
type Row = Pick<Draft, "number" | "approvedNumber"> & { revisions: readonly Newest[] };

/** Whether a reply is being written: not once the newest revision has become a letter, since the next one begins with what the client answers. */
export const hasDraft = (draft: Row | null): boolean => draft !== null && draft.revisions.length > 0 && draft.approvedNumber !== draft.number;

/** The reply as it is written, for the person who looks at it; null where none is. */
export function draftView(draft: Row | null, today: DraftToday | null, staffId: string): DraftView | null {
  const newest = draft?.revisions[0];
  if (!draft || !newest || !hasDraft(draft)) return null;
  return {
    number: draft.number,
    subject: newest.subject,
    text: newest.text,
    by: newest.author?.name ?? "the program",
    isByYou: newest.authorId === staffId,
    at: newest.createdAt.toISOString(),
    words: newest.text.split(/\s+/).filter(Boolean).length,
    today: today && todayView(today),
  };
}

const letterOf = ({ subject, text }: ComposedDraft): LetterNow => ({ subject, text });

function todayView({ next, changes, subject, mark }: DraftToday): NonNullable<DraftView["today"]> {
  return { letter: letterOf(next.composed), whole: next.follows && letterOf(next.follows.whole), changes, subject, mark };
}

/** What came since our last letter with an answer; before the first one, what the client wrote since they asked. null where they wrote nothing and none went out. */
export function sinceView(today: DraftToday | null): SinceView | null {
  if (!today) return null;
  const { follows, words } = today.next;
  if (!follows && words.length === 0) return null;
  const messages = words.map(messageView);
  return { at: follows?.at.toISOString() ?? null, leftAt: follows?.leftAt?.toISOString() ?? null, hasLeft: follows?.hasLeft ?? false, messages, answers: follows?.came.answers ?? false, photos: follows?.came.photos ?? 0 };
}
