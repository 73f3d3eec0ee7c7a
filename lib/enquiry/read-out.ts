import "server-only";
import * as z from "zod/mini";
import { ARRIVED_PERHAPS, mayHaveArrived, NO_MAIL, READ_OUT, READ_OUT_BESIDES, wasReadOut } from "../mail/last-word";
import type { Letter, Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { audit, type AuditAction } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { beginFreshDraft } from "./fresh-draft";
import { isByClient } from "./heard";
import { inOneStep } from "./one-step";
import { WAITING_FOR_US } from "./states";
import { isToBeReadOut, isToldInstead } from "./to-be-read-out";
import { isToBeTried, NOT_TO_BE_TRIED } from "./to-be-tried";

const MINUTE_MS = 60_000;

/** Whether a letter may be told on the telephone: it waits for that, did not get through by mail so far, or failed and nothing was written in its place. */
const mayBeTold = (letter: Letter, isLast: boolean): boolean => isToBeReadOut(letter) || isToBeTried(letter) || (isLast && isToldInstead(letter));

/** Whether its mail may have come as well. */
const isInDoubt = ({ state, lastResponse }: Letter): boolean => state === "unknown" || (state === "failed" && mayHaveArrived(lastResponse ?? ""));

/**
 * Records that somebody rang the client and read our letter out, where there is no address, or it did not get through by mail. From
 * then on it counts as told, is not tried any more, and it is their turn. Of a letter that failed, the words that came back to be sent once more are closed again,
 * unless somebody has changed them, or the client did something since, to which the turn stays ours.
 */
export async function recordReadOut(caller: Caller, letterId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "record-read-out");
  if (no) return no;
  return inOneStep(async (tx) => {
    const letter = await tx.letter.findUnique({ where: { id: letterId } });
    if (!letter || letter.automatic || (letter.toAddress !== NO_MAIL && letter.attempts === 0)) return NOT_THERE;
    const { enquiryId, toAddress, state, attempts, lastResponse } = letter;
    const isLast = await isNewest(tx, { enquiryId, letterId });
    const data = { state: "sent", sentAt: now, lastResponse: isInDoubt(letter) ? READ_OUT_BESIDES : READ_OUT } as const;
    const told = mayBeTold(letter, isLast) ? await tx.letter.updateMany({ where: { id: letterId, toAddress, state, attempts, lastResponse }, data }) : null;
    if (told?.count !== 1) return refuse("changed-meanwhile", toAddress === NO_MAIL ? "Somebody has said so already, or took the letter back." : NOT_TO_BE_TRIED);
    const instead = state === "failed" ? await toldInstead(tx, letter, now) : isLast ? await passTurn(tx, enquiryId, now) : {};
    await audit(tx, caller, { action: "letter-read-out", enquiryId, at: now, detail: { letterId, ...instead } });
    return ok(null);
  });
}

/** What follows where a letter that failed was told: the turn passes, unless the client did something since, and what was to be sent in its place is closed. What it was before, to be kept with what was done. */
async function toldInstead(tx: Tx, { enquiryId, createdAt, lastResponse }: Letter, now: Date): Promise<Record<string, string | number | null>> {
  const since = await tx.audit.findMany({ where: { enquiryId, at: { gt: createdAt } }, select: { actorKind: true, action: true } });
  if (since.some(isByClient)) return { failed: lastResponse };
  const turn = await passTurn(tx, enquiryId, now);
  return { failed: lastResponse, ...turn, ...(turn["turn"] ? await closeDraft(tx, enquiryId, createdAt) : {}) };
}

/** Closes the draft as if it had been sent, where nobody here wrote in it since. */
async function closeDraft(tx: Tx, enquiryId: string, since: Date): Promise<Record<string, number | null>> {
  const draft = await tx.draft.findUnique({ where: { enquiryId }, select: { number: true, approvedNumber: true, waitingNumber: true } });
  if (!draft || draft.waitingNumber !== null || draft.approvedNumber === draft.number) return {};
  const { number, approvedNumber } = draft;
  if ((await tx.revision.count({ where: { draft: { enquiryId }, authorId: { not: null }, createdAt: { gt: since } } })) > 0) return {};
  const closed = await tx.draft.updateMany({ where: { enquiryId, number, approvedNumber, waitingNumber: null }, data: { approvedNumber: number } });
  return closed.count === 1 ? { closed: number, wasApproved: approvedNumber } : {};
}

/** It is the client's turn where it was ours; what it was before, to be kept with what was done. */
async function passTurn(tx: Tx, enquiryId: string, now: Date): Promise<Record<string, string>> {
  const { state, stateSince } = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiryId }, select: { state: true, stateSince: true } });
  const passed = await tx.enquiry.updateMany({ where: { id: enquiryId, state: { in: [...WAITING_FOR_US] } }, data: { state: "their_turn", stateSince: now } });
  return passed.count === 1 ? { turn: state, since: stateSince.toISOString() } : {};
}

/** Until when it can be taken back that a letter was read out: as long as an approved letter is held. null where it was not read out, or that is over. */
export function readOutUntil({ state, lastResponse, sentAt }: Pick<Letter, "state" | "lastResponse" | "sentAt">, { holdMinutes, now }: { holdMinutes: number; now: Date }): Date | null {
  if (state !== "sent" || !wasReadOut(lastResponse) || sentAt === null) return null;
  const until = new Date(sentAt.getTime() + holdMinutes * MINUTE_MS);
  return until > now ? until : null;
}

/** What a letter is again once it was not read out after all; what the last try ended with is forgotten, and the next one comes at its time. */
function untold({ lastResponse, toAddress, notBefore }: Letter, now: Date): Pick<Letter, "state" | "lastResponse"> {
  if (lastResponse === READ_OUT_BESIDES) return { state: "unknown", lastResponse: ARRIVED_PERHAPS };
  return { state: toAddress === NO_MAIL && notBefore > now ? "held" : "waiting", lastResponse: null };
}

const toldSchema = z.object({ letterId: z.string(), turn: z.optional(z.enum(WAITING_FOR_US)), since: z.optional(z.string()), failed: z.optional(z.nullable(z.string())), closed: z.optional(z.number()), wasApproved: z.optional(z.nullable(z.number())) });

/** What it was, when this letter was told last. */
async function whenTold(tx: Tx, { id, enquiryId }: Letter): Promise<Omit<z.infer<typeof toldSchema>, "letterId">> {
  const deeds = await tx.audit.findMany({ where: { enquiryId, action: "letter-read-out" satisfies AuditAction }, orderBy: NEWEST_FIRST.at, select: { detail: true } });
  return deeds.map((d) => toldSchema.safeParse(d.detail).data).find((d) => d?.letterId === id) ?? {};
}

/** It is our turn again since when it was, with the words that were to be sent, unless the enquiry has gone on meanwhile. */
async function backToUs(tx: Tx, { enquiryId, told }: { enquiryId: string; told: Awaited<ReturnType<typeof whenTold>> & { sentAt: Date } }, now: Date): Promise<void> {
  const { turn, since, closed, wasApproved = null, sentAt } = told;
  if (!turn || !since) return;
  const moved = await tx.enquiry.updateMany({ where: { id: enquiryId, state: "their_turn", stateSince: sentAt }, data: { state: turn, stateSince: new Date(since) } });
  if (moved.count !== 1 || closed === undefined) return;
  await tx.draft.updateMany({ where: { enquiryId, number: closed, approvedNumber: closed }, data: { approvedNumber: wasApproved } });
  await beginFreshDraft(tx, enquiryId, now);
}

/**
 * Takes back that a letter was read out, where somebody pressed that by mistake and it is not long ago: it is to be read out still,
 * tried again, or counts as failed as it did, and our turn since when it was, unless the enquiry has gone on meanwhile. Later on nobody can know any more what the client was told.
 */
export async function takeReadOutBack(caller: Caller, letterId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "record-read-out");
  if (no) return no;
  return inOneStep(async (tx) => {
    const letter = await tx.letter.findUnique({ where: { id: letterId } });
    if (!letter || letter.automatic || (letter.toAddress !== NO_MAIL && !wasReadOut(letter.lastResponse))) return NOT_THERE;
    const { enquiryId, sentAt, lastResponse } = letter;
    if (sentAt === null) return refuse("changed-meanwhile", "Somebody has taken that back already.");
    if (!readOutUntil(letter, { ...(await readSettings(tx)), now })) return refuse("changed-meanwhile", "It is too long ago to be taken back. If nobody rang, ring now; what is to be said otherwise goes into a second letter.");
    const told = await whenTold(tx, letter);
    const before = told.failed === undefined ? untold(letter, now) : { state: "failed" as const, lastResponse: told.failed };
    const back = await tx.letter.updateMany({ where: { id: letterId, state: "sent", lastResponse, sentAt }, data: { ...before, sentAt: null } });
    if (back.count !== 1) return refuse("changed-meanwhile", "Somebody has taken that back already.");
    await backToUs(tx, { enquiryId, told: { ...told, sentAt } }, now);
    await audit(tx, caller, { action: "read-out-taken-back", enquiryId, at: now, detail: { letterId } });
    return ok(null);
  });
}

async function isNewest(tx: Tx, { enquiryId, letterId }: { enquiryId: string; letterId: string }): Promise<boolean> {
  const newest = await tx.letter.findFirst({ where: { enquiryId, automatic: false, state: { not: "taken_back" } }, orderBy: NEWEST_FIRST.createdAt, select: { id: true } });
  return newest?.id === letterId;
}
