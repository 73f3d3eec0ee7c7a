import "server-only";
import { randomUUID } from "node:crypto";
import * as z from "zod/mini";
import type { Tx } from "../store/database";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Refusal, type Result } from "./caller";
import { baseOfBefore, takenInWhole } from "./draft-today";
import { addWritten } from "./fresh-draft";
import { inOneStep } from "./one-step";
import { isWaitingForUs } from "./states";

/** A subject is one line; a letter is far shorter than its limit. */
export const LETTER_LIMITS = { subjectChars: 200, textChars: 20_000 } as const;

export const letterSchema = z.object({
  subject: z
    .string()
    .check(
      z.trim(),
      z.minLength(1, "Write a subject."),
      z.maxLength(LETTER_LIMITS.subjectChars, "That subject is too long."),
      z.regex(/^[^\r\n]*$/, "A subject is one line."),
    ),
  text: z.string().check(z.minLength(1, "The letter is empty."), z.maxLength(LETTER_LIMITS.textChars, "That letter is too long.")),
});

/**
 * Keeps an edit as a new revision. `from` is the number the edit began with: when somebody saved in between, this one is
 * refused and nothing of theirs is lost. The same words sent twice by one person are kept once: a page that was left while
 * they were on their way sends them again. An edit ends the waiting for a second person, who must see the words that go out.
 * Once it has taken in all that moved since it was begun, what the program would write by now is kept before it, as where somebody stands by
 * a draft: the next change, and the next letter, are held against that. Words that go back to what stood before are held against what they were then.
 */
export async function saveDraft(
  caller: Caller,
  given: { enquiryId: string; from: number; subject: string; text: string },
  now: Date = new Date(),
): Promise<Result<{ number: number }>> {
  const no = authorise(caller, "edit-draft");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const letter = readLetter(given);
  if (!letter.ok) return letter;
  return inOneStep(async (tx) => {
    const enquiry = await tx.enquiry.findUnique({ where: { id: given.enquiryId }, select: { state: true } });
    if (!enquiry) return NOT_THERE;
    if (!isWaitingForUs(enquiry.state))
      return refuse(
        "changed-meanwhile",
        "A letter was approved meanwhile, or the enquiry was moved. What you wrote is not lost: copy it, then look at the enquiry again.",
      );
    const edit = { enquiryId: given.enquiryId, number: given.from, ...letter.value };
    const base = (await baseOfBefore(tx, edit)) ?? (await takenInWhole(tx, edit))?.next.composed ?? null;
    const number = given.from + (base ? 2 : 1);
    const { count } = await tx.draft.updateMany({ where: { enquiryId: given.enquiryId, number: given.from }, data: { number, ...NOT_WAITING } });
    if (count !== 1) return (await keptAlready(tx, { enquiryId: given.enquiryId, ...letter.value, authorId: caller.staffId })) ?? changedMeanwhile(tx, given.enquiryId, caller.staffId);
    if (base) await addWritten(tx, { enquiryId: given.enquiryId, number: number - 1, composed: base, assessmentId: null, now });
    await addRevision(tx, { enquiryId: given.enquiryId, number, ...letter.value, authorId: caller.staffId, now });
    await audit(tx, caller, { action: "draft-saved", enquiryId: given.enquiryId, at: now, detail: { number } });
    return ok({ number });
  });
}

export const NOT_WAITING = { waitingNumber: null, waitingKind: null, waitingById: null, waitingSince: null, waitingSendAt: null } as const;

export function readLetter(given: { subject: string; text: string }): Result<{ subject: string; text: string }> {
  const parsed = letterSchema.safeParse({ subject: given.subject, text: given.text });
  return parsed.success
    ? ok(parsed.data)
    : refuse("invalid", parsed.error.issues[0]?.message ?? "", Object.fromEntries(parsed.error.issues.map((i) => [String(i.path[0]), i.message])));
}

export async function addRevision(
  tx: Tx,
  r: { enquiryId: string; number: number; subject: string; text: string; authorId: string; now: Date },
): Promise<void> {
  const { id } = await tx.draft.findUniqueOrThrow({ where: { enquiryId: r.enquiryId }, select: { id: true } });
  await tx.revision.create({
    data: { id: randomUUID(), draftId: id, number: r.number, subject: r.subject, text: r.text, authorId: r.authorId, createdAt: r.now },
  });
}

const newestOf = (tx: Tx, enquiryId: string) =>
  tx.revision.findFirst({ where: { draft: { enquiryId } }, orderBy: { number: "desc" }, select: { number: true, subject: true, text: true, authorId: true, author: { select: { name: true } } } });

/** The newest revision, where it has these very words by this person; else null. */
async function keptAlready(tx: Tx, r: { enquiryId: string; subject: string; text: string; authorId: string }): Promise<Result<{ number: number }> | null> {
  const newest = await newestOf(tx, r.enquiryId);
  const isTheSame = newest !== null && newest.authorId === r.authorId && newest.subject === r.subject && newest.text === r.text;
  return isTheSame ? ok({ number: newest.number }) : null;
}

/** Says who was quicker: it may have been oneself, elsewhere. */
export async function changedMeanwhile(tx: Tx, enquiryId: string, staffId: string): Promise<Refusal> {
  const newest = await newestOf(tx, enquiryId);
  if (newest?.author && newest.authorId === staffId)
    return refuse("changed-meanwhile", "You have changed this draft meanwhile, in another window. Look at the newest one first; what you wrote here is still here.");
  const who = newest?.author?.name;
  return refuse("changed-meanwhile", who
    ? `${who} has changed this draft meanwhile. Look at the newest one first; what you wrote is still here.`
    : "Something came or was recorded meanwhile, and the program has written this draft anew. Nothing was sent: look at what came first; what you wrote is still here.");
}
