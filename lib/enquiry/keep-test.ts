import "server-only";
import * as z from "zod/mini";
import type { Prisma, Tx } from "../store/database";
import { audit, type AuditAction } from "./audit";
import { NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Refusal, type Result } from "./caller";
import { reconsider } from "./reconsider";

/** A form's own id, made where the form is made: the same form sent twice is kept once. */
export const formIdSchema = z.uuid();
export interface Kept { enquiryId: string }

interface NewRow { id: string; rugId: string; test: string; yarn: string; response: Prisma.InputJsonObject }

/** Writes the row of a test or a report, who did it, and what follows from it. Kept already: nothing is written twice. */
export async function keepTest(tx: Tx, caller: Caller & { kind: "staff" }, { row, action, now }: { row: NewRow; action: AuditAction; now: Date }): Promise<Result<Kept>> {
  const { id, rugId, test } = row;
  const rug = await tx.rug.findUnique({ where: { id: rugId }, select: { enquiryId: true } });
  if (!rug) return NOT_THERE;
  const { enquiryId } = rug;
  const earlier = await tx.benchTest.findUnique({ where: { id }, select: { rugId: true } });
  if (earlier) return earlier.rugId === rugId ? ok({ enquiryId }) : NOT_THERE;
  await tx.benchTest.create({ data: { ...row, staffId: caller.staffId, at: now } });
  await audit(tx, caller, { action, enquiryId, at: now, detail: { rugId, test, benchTestId: id } });
  await reconsider(tx, { rugId, enquiryId }, now);
  return ok({ enquiryId });
}

/** What a schema has against what was given, by the name of each field. */
export const refuseFields = (say: string, issues: readonly { path: readonly PropertyKey[]; message: string }[]): Refusal =>
  refuse("invalid", say, Object.fromEntries(issues.map((i) => [i.path.join(".") || "form", i.message])));
