import "server-only";
import { randomUUID } from "node:crypto";
import { ALLOWANCES, takeOne } from "../staff/rate-limit";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { clientActed } from "./client-acted";
import { messageSchema } from "./client-message";
import { inOneStep } from "./one-step";
import { MESSAGE } from "./stored";
import { wrong } from "./wrong";

/** Keeps what a client wrote on their own page, beside what they told before; it is our turn again. */
export async function sendFromClient(caller: Caller, given: { message: string }, now: Date = new Date()): Promise<Result<null>> {
  const no = authorise(caller, "write-to-workshop");
  if (no || caller.kind !== "client") return no ?? NOT_THERE;
  const parsed = messageSchema.safeParse(given);
  if (!parsed.success) return refuse("invalid", parsed.error.issues[0]?.message ?? "", { message: parsed.error.issues[0]?.message ?? "" });
  const { enquiryId } = caller;
  if (!(await takeOne(`message:${enquiryId}`, ALLOWANCES.clientMessage, now)))
    return refuse("too-many", wrong("refusal.many-messages"));
  return inOneStep(async (tx) => {
    const rug = await tx.rug.findFirst({ where: { enquiryId }, orderBy: { position: "asc" }, select: { id: true } });
    if (!rug) return NOT_THERE;
    await tx.answer.create({ data: { id: randomUUID(), rugId: rug.id, question: MESSAGE, value: parsed.data.message, from: "client", at: now } });
    await audit(tx, caller, { action: "client-wrote", enquiryId, at: now });
    await clientActed(tx, { enquiryId, rugId: rug.id, now });
    return ok(null);
  });
}
