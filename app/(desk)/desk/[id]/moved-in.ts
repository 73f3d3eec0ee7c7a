import type { DraftView } from "@/lib/enquiry/draft-types";
import { openIn, wasIn, type Change } from "@/lib/reply/changes";
import type { Words } from "./use-draft";

type Today = NonNullable<DraftView["today"]>;

/** What a draft still says that the program would word otherwise by now. */
export function movedIn({ subject, changes }: Today, words: Words): { subject: Today["subject"]; changes: Change[] } | null {
  const open = { subject: subject?.was === words.subject ? subject : null, changes: openIn(changes, words.text).map((c) => ({ ...c, was: wasIn(c, words.text) })) };
  return open.subject || open.changes.length > 0 ? open : null;
}
