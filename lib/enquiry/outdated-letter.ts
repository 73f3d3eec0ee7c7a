import "server-only";
import { openIn, wasIn, type Change } from "../reply/changes";
import { PLACES } from "../reply/paragraphs";
import type { PlaceId } from "../reply/paragraphs/row";
import type { Audit, Db, Tx } from "../store/database";
import type { AuditAction } from "./audit";
import { draftToday } from "./draft-today";
import type { OutdatedLetterView } from "./draft-types";
import { approvalOf, newestAnswer } from "./last-letter";
import { nextLetter } from "./next-letter";
import { isOver, isWaitingForUs } from "./states";
import type { EnquiryStateId } from "./views";

/** A letter with an answer that has left, or is to leave at once, and what it would say otherwise by now: at least one thing. */
export interface OutdatedLetter { id: string; leftAt: Date; changes: Change[] }

/** What a letter only asks takes nothing back where it would ask otherwise. */
const ASKS: readonly PlaceId[] = ["asks", "wet-unknown"];
/** What a letter that follows says of the change. */
const SINCE: PlaceId = "since";

/**
 * The newest letter with an answer, where a rug was judged anew after it and it would say otherwise by now, as an open draft is held against what is
 * known, and a letter that follows it would tell that: the same judgement in other words, or by other evidence, is no news to its client. null
 * where it holds, is held still (hold-overtaken.ts has those), or nobody knows what it was written from.
 */
export async function outdatedLetter(db: Db | Tx, enquiryId: string): Promise<OutdatedLetter | null> {
  const letter = await newestAnswer(db, enquiryId);
  if (!letter || letter.state === "held") return null;
  const of = { enquiryId, letterId: letter.id };
  const judged = await db.assessment.findFirst({ where: { rug: { enquiryId }, createdAt: { gt: letter.createdAt } }, select: { id: true } });
  const approval = judged && (await approvalOf(db, of));
  const revision = approval && (await db.revision.findFirst({ where: { draft: { enquiryId }, number: approval.number }, select: { text: true, number: true } }));
  const today = revision && (await draftToday(db, { ...of, number: revision.number }));
  const following = today && (await nextLetter(db, enquiryId));
  if (!following) return null;
  const told = following.composed.paragraphs.map((p) => p.place);
  const isTold = ({ place, now }: Change): boolean => {
    const id = PLACES.find((p) => p.name === place)?.id;
    return id !== undefined && id !== SINCE && !ASKS.includes(id) && told.includes(now === null ? SINCE : id);
  };
  const changes = openIn(today.changes, revision.text).filter(isTold);
  return changes.length > 0 ? { id: letter.id, leftAt: letter.sentAt ?? letter.createdAt, changes: changes.map((c) => ({ ...c, was: wasIn(c, revision.text) })) } : null;
}

/** Why it is our turn, or what may want a letter wherever else the enquiry stands; null where the letter holds, where our turn has another reason, and once all is over. `audit`: the oldest first. */
export async function outdatedView(db: Db, { id, state, stateSince, audit }: { id: string; state: EnquiryStateId; stateSince: Date; audit: readonly Pick<Audit, "at" | "action">[] }): Promise<OutdatedLetterView | null> {
  const isWhy = audit.some(({ action, at }) => action === ("letter-outdated" satisfies AuditAction) && at >= stateSince);
  if (isOver(state) || (isWaitingForUs(state) && !isWhy)) return null;
  const letter = await outdatedLetter(db, id);
  return letter && { leftAt: letter.leftAt.toISOString(), changes: letter.changes };
}
