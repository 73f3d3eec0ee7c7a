import "server-only";
import { randomUUID } from "node:crypto";
import { hashToken, newToken } from "../staff/one-time-token";
import { ALLOWANCES, takeOne } from "../staff/rate-limit";
import { database } from "../store/database";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { intakeAnswersSchema, type IntakeAnswers } from "./questionnaire";
import { sentAs } from "./sent-as";
import { wrong } from "./wrong";

/** How long a questionnaire can be left and taken up again on the same device. Elicited. */
export const INTAKE_DAYS = 30;
const DAY_MS = 86_400_000;

export interface Opened { intakeId: string; token: string; expiresAt: Date }

/** Begins a questionnaire on one device. The token belongs in that device's cookie; only its hash is stored. */
export const openIntake = (caller: Caller, now: Date): Promise<Result<Opened>> => begin(caller, { answers: {}, addsToId: null }, now);

/**
 * Begins one about another rug on the device whose questionnaire was sent; its rug may be added to the same enquiry. Their name and how to reach
 * them are taken along, so that nothing is asked twice.
 */
export async function openAnother(caller: Caller, now: Date): Promise<Result<Opened>> {
  const no = authorise(caller, "fill-intake");
  if (no || caller.kind !== "intake") return no ?? NOT_THERE;
  const [row, sent] = await Promise.all([database().intake.findUnique({ where: { id: caller.intakeId }, select: { answers: true } }), sentAs(database(), caller.intakeId)]);
  if (!row || !sent) return refuse("expired", wrong("refusal.no-intake"));
  const { contact } = intakeAnswersSchema.parse(row.answers);
  return begin(caller, { answers: contact ? { contact } : {}, addsToId: sent.id }, now);
}

async function begin(caller: Caller, first: { answers: IntakeAnswers; addsToId: string | null }, now: Date): Promise<Result<Opened>> {
  const no = authorise(caller, "open-intake");
  if (no) return no;
  const addressHash = "addressHash" in caller ? caller.addressHash : null;
  if (addressHash && !(await takeOne(`intake:${addressHash}`, ALLOWANCES.intakeAddress, now))) {
    return refuse("too-many", wrong("refusal.many-begun"));
  }
  const { token, hash } = newToken();
  const expiresAt = new Date(now.getTime() + INTAKE_DAYS * DAY_MS);
  const { id } = await database().intake.create({ data: { id: randomUUID(), tokenHash: hash, ...first, addressHash, createdAt: now, expiresAt } });
  return ok({ intakeId: id, token, expiresAt });
}

/** Who a questionnaire's cookie stands for; null when it is unknown or too old. */
export async function callerFromIntake(
  token: string | undefined,
  addressHash: string | null,
  now: Date,
): Promise<(Caller & { kind: "intake" }) | null> {
  if (!token) return null;
  const row = await database().intake.findUnique({ where: { tokenHash: hashToken(token) }, select: { id: true, expiresAt: true } });
  return row && row.expiresAt > now ? { kind: "intake", intakeId: row.id, addressHash } : null;
}
