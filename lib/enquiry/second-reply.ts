import "server-only";
import { database } from "../store/database";
import { readSettings } from "../workshop/settings";
import { alreadyDone, holdRevision, sendRevision } from "./approve-reply";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { unlessAsSeen } from "./enclosures";
import { unlessHeard } from "./heard";
import { inOneStep } from "./one-step";
import { reasonsGiven } from "./promises";
import { leavesAt } from "./send-at";
import { unlessSorted } from "./waiting-in-post";
import { pokeOutbox } from "./write-letter";

/** The second person's approval of what a trainee approved: the very revision they approved goes out, at the time they chose where that lies ahead. */
export async function secondReply(caller: Caller, { enquiryId, documents, heard }: { enquiryId: string; documents?: readonly string[] | undefined; heard?: string | null | undefined }, now: Date): Promise<Result<{ letterId: string }>> {
  const no = authorise(caller, "second");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const settings = await readSettings(database());
  const done = await inOneStep<{ letterId: string }>(async (tx) => {
    const draft = await tx.draft.findUnique({ where: { enquiryId }, select: { waitingNumber: true, waitingKind: true, waitingById: true, waitingSince: true, waitingSendAt: true } });
    if (draft?.waitingNumber == null || draft.waitingKind === "acknowledgement" || !draft.waitingKind) return alreadyDone(tx, caller, enquiryId);
    if (draft.waitingById === caller.staffId) return refuse("not-allowed", "You approved this yourself. A second person must read it.");
    const changed = (await unlessSorted(tx, enquiryId)) ?? (await unlessHeard(tx, enquiryId, heard)) ?? (await unlessAsSeen(tx, enquiryId, documents));
    if (changed) return changed;
    const number = draft.waitingNumber;
    const { asked, ...reasons } = await reasonsGiven(tx, { enquiryId, number });
    // The same revision as the first person looked at: what they had read of it counts, and no more than that.
    const held = await holdRevision(tx, { enquiryId, number, kind: draft.waitingKind, ...reasons, readUntil: draft.waitingSince, isFirstLook: asked === 0, hasLookedAt: (open) => open.length <= asked });
    if (!held.ok) return held;
    const sent = await sendRevision(tx, caller, {
      enquiryId,
      number,
      kind: draft.waitingKind,
      approvedById: draft.waitingById,
      secondedById: caller.staffId,
      notBefore: leavesAt(draft.waitingSendAt, settings, now),
      settings,
      now,
    });
    if (!sent.ok) return sent;
    const action = draft.waitingKind === "reply" ? "reply-seconded" : "question-seconded";
    await audit(tx, caller, { action, enquiryId, at: now, detail: { number, letterId: sent.value, ...held.value } });
    return ok({ letterId: sent.value });
  });
  if (done.ok) pokeOutbox();
  return done;
}
