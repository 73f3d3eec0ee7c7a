import "server-only";
import { randomUUID } from "node:crypto";
import type { Prisma, Tx } from "../store/database";
import { SEEN_IN_A_PHOTO } from "../trade/questions";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStepOfMany } from "./one-step";
import type { IntakeAnswers } from "./questionnaire";
import { reconsider } from "./reconsider";
import { parseStep } from "./step-forms";
import { isCorrectable, type FormValues } from "./step-schemas";
import { stepRow } from "./steps";
import { enquiryAnswersOf, SEEN } from "./stored";
import { takeTurnOutdated } from "./take-turn-outdated";
import { toJson } from "./to-json";

export interface Correction { rugId: string; step: string; values: FormValues; /** Staff saw it in a photo with their own eyes. */ seen: boolean }

/**
 * Staff correct an answer or add one that was given since, on the telephone say: the newest answer holds, the earlier ones
 * stay as history. What the whole enquiry was asked (wet now, the reason) is told of every rug, so every rug is judged anew. Where a letter that left no longer holds by that, it is our turn.
 */
export async function correctAnswer(caller: Caller, { rugId, step, values, seen }: Correction, now: Date): Promise<Result<{ enquiryId: string }>> {
  const no = authorise(caller, "correct-answer");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  if (!isCorrectable(step)) return NOT_THERE;
  const parsed = parseStep(step, values);
  if (!parsed.ok) return refuse("invalid", "Please look at the answer again.", parsed.errors);
  return inOneStepOfMany(async (tx) => {
    const rug = await tx.rug.findUnique({ where: { id: rugId }, select: { enquiryId: true, enquiry: { select: { answers: true } } } });
    if (!rug) return NOT_THERE;
    const { enquiryId } = rug;
    const { question } = stepRow(step);
    const mayBeSeen = question !== undefined && SEEN_IN_A_PHOTO.includes(question);
    await keepRugAnswers(tx, rugId, [
      ...Object.entries(parsed.patch.rug ?? {}).flatMap(([key, value]): Kept[] => (value === undefined ? [] : [[key, value]])),
      ...parsed.cleared.map((key): Kept => [key.replace("rug.", ""), EMPTIED]),
      ...(mayBeSeen ? [[`${SEEN}${question}`, seen] as const] : []),
    ], { from: caller.staffId, at: now });
    await audit(tx, caller, { action: "answer-corrected", enquiryId, at: now, detail: { rugId, step } });
    for (const id of await keepWhole(tx, { enquiryId, rugId, patch: parsed.patch, stored: rug.enquiry.answers })) await reconsider(tx, { rugId: id, enquiryId }, now);
    await takeTurnOutdated(tx, enquiryId, now);
    return ok({ enquiryId });
  });
}

type Kept = readonly [question: string, value: Prisma.InputJsonValue];
/** A field that was emptied: newer than what stood there, and no answer to any question. */
const EMPTIED = "";

async function keepRugAnswers(tx: Tx, rugId: string, answers: readonly Kept[], by: { from: string; at: Date }): Promise<void> {
  for (const [question, value] of answers) await tx.answer.create({ data: { id: randomUUID(), rugId, question, value, ...by } });
}

/** Keeps what is told of the whole enquiry, and gives the rugs it bears on. */
async function keepWhole(tx: Tx, { enquiryId, rugId, patch: { wetNow, reason }, stored }: { enquiryId: string; rugId: string; patch: IntakeAnswers; stored: unknown }): Promise<string[]> {
  if (wetNow === undefined && reason === undefined) return [rugId];
  const { answers, consent } = enquiryAnswersOf(stored);
  await tx.enquiry.update({ where: { id: enquiryId }, data: { answers: toJson({ ...answers, ...(wetNow ? { wetNow } : {}), ...(reason ? { reason } : {}), consent }) } });
  return (await tx.rug.findMany({ where: { enquiryId }, select: { id: true }, orderBy: { position: "asc" } })).map((r) => r.id);
}
