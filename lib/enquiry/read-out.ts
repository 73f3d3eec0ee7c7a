import "server-only";
import * as z from "zod/mini";
import { ARRIVED_PERHAPS, NO_MAIL, READ_OUT, READ_OUT_BESIDES, wasReadOut } from "../mail/last-word";
import type { Letter, Prisma, Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { audit, type AuditAction } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { WAITING_FOR_US } from "./states";
import { isToBeTried, NOT_TO_BE_TRIED } from "./to-be-tried";

const MINUTE_MS = 60_000;

/** A letter that a person approved for a client without an address, and that nobody has told them yet. */
export const TO_BE_READ_OUT = { automatic: false, toAddress: NO_MAIL, state: { in: ["held", "waiting"] } } satisfies Prisma.LetterWhereInput;
/** The same of a letter that was read. */
export const isToBeReadOut = ({ automatic, toAddress, state }: Pick<Letter, "automatic" | "toAddress" | "state">): boolean =>
  !automatic && toAddress === NO_MAIL && (state === "held" || state === "waiting");

/** Whether a letter may be told on the telephone: it waits for that, or did not get through by mail so far. */
const mayBeTold = (letter: Letter): boolean => isToBeReadOut(letter) || isToBeTried(letter);

/**
 * Records that somebody rang the client and read our letter out, where there is no address or it did not get through by mail so far. From
 * then on it counts as told, is not tried any more, and it is their turn.
 */
export async function recordReadOut(caller: Caller, letterId: string, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "record-read-out");
  if (no) return no;
  return inOneStep(async (tx) => {
    const letter = await tx.letter.findUnique({ where: { id: letterId } });
    if (!letter || letter.automatic || (letter.toAddress !== NO_MAIL && letter.attempts === 0)) return NOT_THERE;
    const { toAddress, state, attempts } = letter;
    const told = mayBeTold(letter) ? await tx.letter.updateMany({ where: { id: letterId, toAddress, state, attempts }, data: { state: "sent", sentAt: now, lastResponse: state === "unknown" ? READ_OUT_BESIDES : READ_OUT } }) : null;
    if (told?.count !== 1) return refuse("changed-meanwhile", toAddress === NO_MAIL ? "Somebody has said so already, or took the letter back." : NOT_TO_BE_TRIED);
    const { enquiryId } = letter;
    const turn = (await isNewest(tx, { enquiryId, letterId })) ? await passTurn(tx, enquiryId, now) : {};
    await audit(tx, caller, { action: "letter-read-out", enquiryId, at: now, detail: { letterId, ...turn } });
    return ok(null);
  });
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

const turnSchema = z.object({ letterId: z.string(), turn: z.optional(z.enum(WAITING_FOR_US)), since: z.optional(z.string()) });

/**
 * Takes back that a letter was read out, where somebody pressed that by mistake and it is not long ago: it is to be read out still, or
 * tried again, and our turn since when it was, unless the enquiry has gone on meanwhile. Later on nobody can know any more what the client was told.
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
    const back = await tx.letter.updateMany({ where: { id: letterId, state: "sent", lastResponse, sentAt }, data: { ...untold(letter, now), sentAt: null } });
    if (back.count !== 1) return refuse("changed-meanwhile", "Somebody has taken that back already.");
    const deeds = await tx.audit.findMany({ where: { enquiryId, action: "letter-read-out" satisfies AuditAction }, orderBy: NEWEST_FIRST.at, select: { detail: true } });
    const { turn, since } = deeds.map((d) => turnSchema.safeParse(d.detail).data).find((d) => d?.letterId === letterId) ?? {};
    if (turn && since) await tx.enquiry.updateMany({ where: { id: enquiryId, state: "their_turn", stateSince: sentAt }, data: { state: turn, stateSince: new Date(since) } });
    await audit(tx, caller, { action: "read-out-taken-back", enquiryId, at: now, detail: { letterId } });
    return ok(null);
  });
}

async function isNewest(tx: Tx, { enquiryId, letterId }: { enquiryId: string; letterId: string }): Promise<boolean> {
  const newest = await tx.letter.findFirst({ where: { enquiryId, automatic: false, state: { not: "taken_back" } }, orderBy: NEWEST_FIRST.createdAt, select: { id: true } });
  return newest?.id === letterId;
}
