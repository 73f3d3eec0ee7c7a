import { hidesPerhaps } from "../mail/incoming/quoted";
import type { Post } from "../store/database";
import { letterUrgency } from "../triage/letter-signs";
import { readLeftOut } from "./left-out";
import { storyOf } from "./post-text";
import { urgencyId, urgencyRank } from "./urgency";
import type { PostView } from "./views";

type Row = Post & { enquiry: { id: string; reference: string; title: string } | null };

/** A message as staff read it. */
export function postView(row: Row, nameOf: (staffId: string | null) => string): PostView {
  const { id, state, kind, says, fromName, fromAddress, subject, text, quoted, pictures, leftOut, arrivedAt, sentAt, broughtById, enquiry } = row;
  return {
    id, state, kind, says, quoted, pictures,
    from: fromAddress === null ? null : { name: fromName ?? "", address: fromAddress },
    hidesPerhaps: hidesPerhaps(quoted ?? ""),
    subject: subject ?? "",
    text: text ?? "",
    ...readLeftOut(leftOut),
    arrivedAt: arrivedAt.toISOString(),
    sentAt: sentAt?.toISOString() ?? null,
    broughtBy: broughtById === null ? null : nameOf(broughtById),
    enquiry: enquiry && { id: enquiry.id, reference: enquiry.reference, title: enquiry.title },
    readFirst: readFirst({ state, kind, subject, text }),
  };
}

/** Why a letter that waits is read before others. What a machine wrote never is. */
export function readFirst({ state, kind, subject, text }: Pick<Post, "state" | "kind" | "subject" | "text">): PostView["readFirst"] {
  if (state !== "waiting" || (kind !== "letter" && kind !== "reply")) return null;
  const found = letterUrgency(storyOf({ subject: subject ?? "", text: text ?? "" }), () => false);
  return found && { urgency: urgencyId(found.level), why: found.why };
}

/** The most urgent first, the others after them as they came. */
export const byReadFirst = (a: Pick<PostView, "readFirst">, b: Pick<PostView, "readFirst">): number => rankOf(a) - rankOf(b);
const rankOf = ({ readFirst: r }: Pick<PostView, "readFirst">): number => (r ? urgencyRank(r.urgency) : Number.MAX_SAFE_INTEGER);
