import "server-only";
import { OVERTAKEN, wasHeldBack } from "../mail/last-word";
import type { Audit, Db, Letter } from "../store/database";
import type { MeanwhileView } from "./draft-types";
import { isByClient } from "./heard";
import { cameSince } from "./last-letter";
import { messageView } from "./messages";
import { isWaitingForUs } from "./states";
import type { EnquiryStateId } from "./views";

interface Row { id: string; state: EnquiryStateId; letters: readonly Letter[]; audit: readonly Pick<Audit, "at" | "actorKind" | "action">[] }

/**
 * What happened between the approval of our newest letter and its leaving, while it is our turn: the client did something or the rug was judged
 * anew, and the letter was held back for it; or the client did something, and it was on its way already and went. null where nothing did. `letters`: the oldest first.
 */
export async function meanwhileOf(db: Db, { id, state, letters, audit }: Row): Promise<MeanwhileView | null> {
  const newest = letters.findLast((l) => !l.automatic);
  if (!newest || !isWaitingForUs(state)) return null;
  const { kind, createdAt, sentAt } = newest;
  const isHeldBack = newest.state === "taken_back" && wasHeldBack(newest.lastResponse);
  const crossed = newest.state === "sent" && sentAt !== null && audit.some((a) => isByClient(a) && a.at > createdAt && a.at <= sentAt);
  if (!isHeldBack && !crossed) return null;
  const { messages, answers, photos } = await cameSince(db, id, createdAt);
  return { kind, isHeldBack, isOvertaken: isHeldBack && newest.lastResponse === OVERTAKEN, approvedAt: createdAt.toISOString(), messages: messages.map(messageView), answers, photos };
}
