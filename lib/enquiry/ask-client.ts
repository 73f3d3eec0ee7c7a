import "server-only";
import { database } from "../store/database";
import { readSettings } from "../workshop/settings";
import { alreadyDone, sendRevision, waitForSecond, type Approved } from "./approve-reply";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { unlessHeard } from "./heard";
import { inOneStep } from "./one-step";
import { holdToPromises } from "./promises";
import { addRevision, NOT_WAITING, readLetter } from "./save-draft";
import { afterHolding } from "./send-at";
import { isWaitingForUs } from "./states";
import { unlessSorted } from "./waiting-in-post";
import { pokeOutbox } from "./write-letter";

/**
 * Sends the client a question in place of the reply. It takes the way of every letter: a revision of the draft, then a
 * letter; a trainee's waits for a second person (`letterId` is then empty).
 */
export async function askClient(caller: Caller, given: { enquiryId: string; subject: string; text: string; reason?: string | null | undefined; heard?: string | null | undefined }, now: Date): Promise<Result<Approved>> {
  const no = authorise(caller, "approve");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const letter = readLetter(given);
  if (!letter.ok) return letter;
  const { enquiryId } = given;
  const settings = await readSettings(database());
  const done = await inOneStep<Approved>(async (tx) => {
    const enquiry = await tx.enquiry.findUnique({ where: { id: enquiryId }, select: { state: true } });
    if (!enquiry || !isWaitingForUs(enquiry.state)) return alreadyDone(tx, caller, enquiryId);
    const unheard = (await unlessSorted(tx, enquiryId)) ?? (await unlessHeard(tx, enquiryId, given.heard));
    if (unheard) return unheard;
    const held = await holdToPromises(tx, { enquiryId, kind: "question", text: letter.value.text, reason: given.reason ?? null });
    if (!held.ok) return held;
    const { number } = await tx.draft.update({ where: { enquiryId }, data: { number: { increment: 1 }, ...NOT_WAITING }, select: { number: true } });
    await addRevision(tx, { enquiryId, number, ...letter.value, authorId: caller.staffId, now });
    if (caller.role === "trainee") return waitForSecond(tx, caller, { enquiryId, number, kind: "question", allowed: held.value, sendAt: null, now });
    const sent = await sendRevision(tx, caller, {
      enquiryId,
      number,
      kind: "question",
      approvedById: caller.staffId,
      secondedById: null,
      notBefore: afterHolding(settings, now),
      settings,
      now,
    });
    if (!sent.ok) return sent;
    await audit(tx, caller, { action: "question-asked", enquiryId, at: now, detail: { number, letterId: sent.value, ...held.value } });
    return ok({ letterId: sent.value, waitsForSecond: false, isHeldLonger: false });
  });
  if (done.ok) pokeOutbox();
  return done;
}
