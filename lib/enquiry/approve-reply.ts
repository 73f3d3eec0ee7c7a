import "server-only";
import { database, type Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { readSettings, type WorkshopSettings } from "../workshop/settings";
import { unlessAsked, type Looked } from "./asked";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { unlessMoved } from "./draft-today";
import { emptyDraft, enclosedWithDraft, unlessAsSeen } from "./enclosures";
import { ok, refuse, type Caller, type Refusal, type Result } from "./caller";
import { unlessHeard, unlessRead } from "./heard";
import { inOneStep } from "./one-step";
import { lengthOf, type Length } from "./letter-length";
import { unlessOutdated, type AsItIs, type SentOutdated } from "./outdated";
import { holdToPromises, type Allowed } from "./promises";
import { changedMeanwhile, NOT_WAITING } from "./save-draft";
import { unlessLabelsSettled } from "./unsettled-label";
import { chosenInstant, isBeforeHoldingEnds, leavesAt, type ChosenTime } from "./send-at";
import { isWaitingForUs, WAITING_FOR_US } from "./states";
import { unlessSorted } from "./waiting-in-post";
import { pokeOutbox, writeLetter } from "./write-letter";

export type StaffCaller = Caller & { kind: "staff" };
/** Empty `letterId` where the letter waits for a second person and is not written yet. */
export interface Approved {
  letterId: string;
  waitsForSecond: boolean;
  /** The chosen time came before the end of the holding: it leaves once that is over. */
  isHeldLonger: boolean;
}

export interface Approval {
  enquiryId: string;
  number: number;
  /** Needed where the letter says more than is known. */
  reason?: string | null | undefined;
  /** Why the letter is longer than people read; kept where it is, and never required. */
  longReason?: string | null | undefined;
  /** Absent or null: as soon as the holding time is over. */
  sendAt?: ChosenTime | null | undefined;
  /** Ids of the documents that the person saw with it; absent: not looked at, so not compared. */
  documents?: readonly string[] | undefined;
  /** What the client had done last when the person looked (`heard` of the enquiry's view); absent: not looked at, so not compared. */
  heard?: string | null | undefined;
  /** Whether the person says that they have read what the client wrote since the draft was begun. */
  read?: boolean | undefined;
  /** The questions of the client which the letter on the page did not plainly answer, and that the person says they have read. */
  asked?: readonly string[] | undefined;
  /** The documents with it that the person says go as they are, though they would say otherwise by now. */
  asItIs?: readonly AsItIs[] | undefined;
}

/**
 * Approves the draft as it stands in revision `number`. Of any number of people at once exactly one succeeds; the others
 * are told who was first. A trainee's approval is kept and waits for a second person; no letter is written for it.
 * Words that promise more than is known go out only with a `reason`, which is kept. The documents that lie with the draft go with it.
 * Nothing goes out past a letter from the client's address that nobody has sorted, nor past a message that came after the person looked, nor past one that the draft has no place for and nobody says to have read,
 * nor past a question that the letter does not plainly answer and nobody says to have looked at,
 * nor by a label whose typed words and photo name different fibres and nobody has said which are right,
 * nor with a document that would say otherwise since its rug was judged anew and nobody says to go as it is.
 */
export async function approveReply(
  caller: Caller,
  { enquiryId, number, reason = null, longReason = null, sendAt = null, documents, heard, read = false, asked = [], asItIs = [] }: Approval,
  now: Date,
): Promise<Result<Approved>> {
  const no = authorise(caller, "approve");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const settings = await readSettings(database());
  const chosen = chosenInstant(sendAt, settings, now);
  if (!chosen.ok) return chosen;
  const done = await inOneStep<Approved>(async (tx) => {
    const changed = (await unlessSorted(tx, enquiryId)) ?? (await unlessHeard(tx, enquiryId, heard)) ?? (await unlessAsSeen(tx, enquiryId, documents));
    if (changed) return changed;
    const held = await holdRevision(tx, { enquiryId, number, kind: "reply", reason, longReason, readUntil: read ? now : null, isFirstLook: asked.length === 0, hasLookedAt: (open) => open.every((q) => asked.includes(q)), asItIs });
    if (!held.ok) return held;
    if (caller.role === "trainee") return waitForSecond(tx, caller, { enquiryId, number, kind: "reply", allowed: held.value, said: saidOnApproving(chosen.value, read), sendAt: chosen.value, now });
    const sent = await sendRevision(tx, caller, {
      enquiryId,
      number,
      kind: "reply",
      approvedById: caller.staffId,
      secondedById: null,
      notBefore: leavesAt(chosen.value, settings, now),
      settings,
      now,
    });
    if (!sent.ok) return sent;
    await audit(tx, caller, { action: "reply-approved", enquiryId, at: now, detail: { number, letterId: sent.value, ...saidOnApproving(chosen.value, read), ...held.value } });
    return ok({ letterId: sent.value, waitsForSecond: false, isHeldLonger: isBeforeHoldingEnds(chosen.value, settings, now) });
  });
  if (done.ok) pokeOutbox();
  return done;
}

/** What somebody said beside approving a letter: when it is to leave, and that they have read what its client wrote. */
const saidOnApproving = (sendAt: Date | null, read: boolean): Record<string, string> => ({ ...(sendAt ? { sendAt: sendAt.toISOString() } : {}), ...(read ? { read: "yes" } : {}) });

/** What stands in the audit beside a letter that may go. */
type Passed = Allowed & Length & Looked & SentOutdated;

/** A revision against what is known, also since it was written, and how long it is. One that is not there, or that a letter was sent of already, is left to the step that sends it: that says so. */
export async function holdRevision(tx: Tx, r: { enquiryId: string; number: number; kind: "reply" | "question"; reason: string | null; longReason: string | null; /** Until when somebody has read what the client wrote. */ readUntil: Date | null; /** Whether somebody says that they have read these questions, which the letter does not plainly answer. */ hasLookedAt: (open: readonly string[]) => boolean; /** Nobody has said it of any. */ isFirstLook: boolean; /** The documents that somebody says go as they are. */ asItIs: readonly AsItIs[] }): Promise<Result<Passed>> {
  const revision = await tx.revision.findFirst({ where: { number: r.number, draft: { enquiryId: r.enquiryId } }, select: { subject: true, text: true, draft: { select: { enquiry: { select: { state: true } } } } } });
  if (!revision || !isWaitingForUs(revision.draft.enquiry.state)) return ok({ promises: null, reason: null });
  const moved = r.kind === "reply" ? ((await unlessMoved(tx, { ...r, ...revision })) ?? (await unlessRead(tx, r)) ?? (await unlessLabelsSettled(tx, r.enquiryId))) : null;
  if (moved) return moved;
  const held = await holdToPromises(tx, { ...r, text: revision.text });
  if (!held.ok || r.kind === "question") return held;
  const outdated = await unlessOutdated(tx, r);
  if (!outdated.ok) return outdated;
  const length = await lengthOf(tx, { enquiryId: r.enquiryId, text: revision.text, reason: r.longReason });
  if (!length.ok) return length;
  const looked = await unlessAsked(tx, { ...r, text: revision.text });
  return looked.ok ? ok({ ...held.value, ...outdated.value, ...length.value, ...looked.value }) : looked;
}

interface Sending {
  enquiryId: string;
  number: number;
  kind: "reply" | "question";
  approvedById: string | null;
  secondedById: string | null;
  notBefore: Date;
  settings: WorkshopSettings;
  now: Date;
}

/** The turn passes to a client who gets the letter by mail; to one without an address only once somebody has read it out. False where it was not ours. */
async function passTurn(tx: Tx, { enquiryId, now }: Sending): Promise<boolean> {
  const isOurs = { id: enquiryId, state: { in: [...WAITING_FOR_US] } };
  const moved = await tx.enquiry.updateMany({ where: { ...isOurs, client: { email: { not: null } } }, data: { state: "their_turn", stateSince: now } });
  return moved.count === 1 || (await tx.enquiry.count({ where: { ...isOurs, client: { email: null } } })) === 1;
}

/** Turns a revision into a letter: state, draft and letter move together, each only from where it was expected to be. */
export async function sendRevision(tx: Tx, caller: StaffCaller, s: Sending): Promise<Result<string>> {
  if (!(await passTurn(tx, s))) return alreadyDone(tx, caller, s.enquiryId);
  const spent = await tx.draft.updateMany({
    where: { enquiryId: s.enquiryId, number: s.number, OR: [{ approvedNumber: null }, { approvedNumber: { lt: s.number } }] },
    data: { approvedNumber: s.number, ...NOT_WAITING },
  });
  if (spent.count !== 1) {
    const isSpent = await tx.draft.count({ where: { enquiryId: s.enquiryId, approvedNumber: { gte: s.number } } });
    return isSpent > 0 ? alreadyDone(tx, caller, s.enquiryId) : changedMeanwhile(tx, s.enquiryId, caller.staffId);
  }
  const revision = await tx.revision.findFirstOrThrow({
    where: { number: s.number, draft: { enquiryId: s.enquiryId } },
    select: { subject: true, text: true },
  });
  const documentIds = s.kind === "reply" ? await enclosedWithDraft(tx, s.enquiryId) : [];
  const letterId = await writeLetter(tx, { ...s, ...revision, documentIds });
  if (s.kind === "reply") await emptyDraft(tx, s.enquiryId);
  return ok(letterId);
}

/** A trainee's approval of the newest revision. */
export async function waitForSecond(
  tx: Tx,
  caller: StaffCaller,
  w: { enquiryId: string; number: number; kind: "reply" | "question"; allowed: Passed; said?: Record<string, string>; sendAt: Date | null; now: Date },
): Promise<Result<Approved>> {
  const enquiry = await tx.enquiry.findUnique({ where: { id: w.enquiryId }, select: { state: true } });
  if (!enquiry || !isWaitingForUs(enquiry.state)) return alreadyDone(tx, caller, w.enquiryId);
  const kept = await tx.draft.updateMany({
    where: { enquiryId: w.enquiryId, number: w.number, waitingNumber: null, OR: [{ approvedNumber: null }, { approvedNumber: { lt: w.number } }] },
    data: { waitingNumber: w.number, waitingKind: w.kind, waitingById: caller.staffId, waitingSince: w.now, waitingSendAt: w.sendAt },
  });
  if (kept.count !== 1) {
    const draft = await tx.draft.findUnique({
      where: { enquiryId: w.enquiryId },
      select: { waitingNumber: true, waitingBy: { select: { name: true } } },
    });
    if (draft?.waitingNumber != null)
      return refuse("changed-meanwhile", `${draft.waitingBy?.name ?? "Somebody"} has approved this already; it waits for a second person.`);
    return changedMeanwhile(tx, w.enquiryId, caller.staffId);
  }
  await audit(tx, caller, {
    action: w.kind === "reply" ? "reply-waits" : "question-waits",
    enquiryId: w.enquiryId,
    at: w.now,
    detail: { number: w.number, ...w.said, ...w.allowed },
  });
  return ok({ letterId: "", waitsForSecond: true, isHeldLonger: false });
}

/** Says who was first. */
export async function alreadyDone(tx: Tx, caller: StaffCaller, enquiryId: string): Promise<Refusal> {
  const enquiry = await tx.enquiry.findUnique({
    where: { id: enquiryId },
    select: {
      letters: {
        where: { automatic: false, state: { not: "taken_back" } },
        orderBy: NEWEST_FIRST.createdAt,
        take: 1,
        select: { secondedBy: true, approvedBy: true },
      },
    },
  });
  if (!enquiry) return NOT_THERE;
  const first = enquiry.letters[0]?.secondedBy ?? enquiry.letters[0]?.approvedBy;
  if (!first) return refuse("changed-meanwhile", "Somebody has moved this enquiry meanwhile. Nothing was sent.");
  return refuse(
    "changed-meanwhile",
    `${first.id === caller.staffId ? "You have" : `${first.name} has`} approved a letter here already. Nothing more was sent.`,
  );
}
