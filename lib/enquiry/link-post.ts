import "server-only";
import * as z from "zod/mini";
import { database } from "../store/database";
import { audit } from "./audit";
import { authorise } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { readSortable, SORTABLE } from "./open-post";
import { lettersOf } from "./our-letters";
import { REFERENCE_PATTERN } from "./reference";
import { SORTED_ALREADY, takeReply } from "./take-reply";

/** The number of an enquiry as a person types it: small letters, blanks and a missing hyphen are forgiven. */
export const referenceSchema = z.pipe(
  z.pipe(z.string(), z.transform((typed) => typed.toUpperCase().replace(/[^A-Z0-9]/gu, "").replace(/^(..)(...)$/u, "$1-$2"))),
  z.string().check(z.regex(REFERENCE_PATTERN, "Write the enquiry's number, such as K7-204.")));

/** Puts a message that waits to an enquiry: a letter's words and photos become the client's, anything else is only filed there. */
export async function linkPost(caller: Caller, { postId, reference }: { postId: string; reference: string }, now: Date): Promise<Result<{ enquiryId: string }>> {
  const no = authorise(caller, "sort-post");
  if (no) return no;
  const number = referenceSchema.safeParse(reference);
  const wrong = (say: string) => refuse("invalid", say, { reference: say });
  if (!number.success) return wrong(number.error.issues[0]?.message ?? "");
  const enquiry = await database().enquiry.findUnique({ where: { reference: number.data }, select: { id: true } });
  if (!enquiry) return wrong(`There is no enquiry ${number.data}.`);
  const found = await readSortable(postId, () => lettersOf(enquiry.id));
  if (!found.ok) return found;
  const { post, message } = found.value;
  const enquiryId = enquiry.id;
  if (message && (post.kind === "letter" || post.kind === "automatic")) {
    return takeReply(caller, { postId, from: SORTABLE, enquiryId, kind: post.kind, says: post.says, message, notTheirs: false }, now);
  }
  return inOneStep(async (tx) => {
    const filed = await tx.post.updateMany({ where: { id: postId, state: { in: [...SORTABLE] } }, data: { state: "filed", enquiryId } });
    if (filed.count !== 1) return SORTED_ALREADY;
    await audit(tx, caller, { action: "mail-filed", enquiryId, at: now, detail: { postId } });
    return ok({ enquiryId });
  });
}
