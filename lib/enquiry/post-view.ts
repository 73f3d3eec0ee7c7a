import type { Post } from "../store/database";
import type { PostView } from "./views";

type Row = Post & { enquiry: { id: string; reference: string; title: string } | null };

/** A message as staff read it. */
export function postView(row: Row, nameOf: (staffId: string | null) => string): PostView {
  const { id, state, kind, says, fromName, fromAddress, subject, text, quoted, pictures, leftOut, arrivedAt, sentAt, broughtById, enquiry } = row;
  return {
    id, state, kind, says, quoted, pictures,
    from: fromAddress === null ? null : { name: fromName ?? "", address: fromAddress },
    subject: subject ?? "",
    text: text ?? "",
    leftOut: leftOut?.split("\n") ?? [],
    arrivedAt: arrivedAt.toISOString(),
    sentAt: sentAt?.toISOString() ?? null,
    broughtBy: broughtById === null ? null : nameOf(broughtById),
    enquiry: enquiry && { id: enquiry.id, reference: enquiry.reference, title: enquiry.title },
  };
}
