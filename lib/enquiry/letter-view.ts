import "server-only";
import type { Letter } from "../store/database";
import { withoutLinks } from "../workshop/client-link";
import { sayLetter } from "./letter-words";
import type { LetterView } from "./views";

type Row = Letter & { approvedBy: { name: string } | null; secondedBy: { name: string } | null };

/** A letter as staff read it; the client's link never shows. */
export function letterView(letter: Row, { now, isMailConfigured }: { now: Date; isMailConfigured: boolean }): LetterView {
  const names = [letter.approvedBy?.name, letter.secondedBy?.name].filter((n) => n !== undefined);
  return {
    id: letter.id,
    kind: letter.kind,
    state: letter.state,
    says: sayLetter(letter, isMailConfigured),
    subject: letter.subject,
    text: withoutLinks(letter.text),
    to: letter.toAddress,
    createdAt: letter.createdAt.toISOString(),
    notBefore: letter.notBefore.toISOString(),
    sentAt: letter.sentAt?.toISOString() ?? null,
    approvedBy: names.length > 0 ? names.join(" and ") : null,
    canTakeBack: !letter.automatic && letter.state === "held" && letter.notBefore > now,
  };
}
