import "server-only";
import { randomUUID } from "node:crypto";
import type { Wording } from "../reply/library";
import { isTaken, type Prisma, type Tx } from "../store/database";
import { audit, type AuditAction } from "./audit";
import { refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { rewriteDrafts } from "./rewrite-drafts";
import { toJson } from "./to-json";

const SOMEBODY_ELSE = "Somebody else has changed this paragraph meanwhile. Yours is still here: read theirs in another window, then keep yours again.";
type Newest = Prisma.ParagraphVersionGetPayload<{ select: { version: true; wording: true } }>;

/**
 * Works on a paragraph where its newest version is still the one that was seen (0: none); of two people at once one is refused.
 * Afterwards the drafts that nobody has touched say what it says by then.
 */
export async function onNewest<T>({ id, seen, now }: { id: string; seen: number; now: Date }, work: (tx: Tx, newest: Newest | null) => Promise<Result<T>>): Promise<Result<T>> {
  const done = await workedOn({ id, seen }, work);
  if (done.ok) await rewriteDrafts(now);
  return done;
}

async function workedOn<T>({ id, seen }: { id: string; seen: number }, work: (tx: Tx, newest: Newest | null) => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await inOneStep(async (tx) => {
      const newest = await tx.paragraphVersion.findFirst({ where: { paragraphId: id }, orderBy: { version: "desc" }, select: { version: true, wording: true } });
      return (newest?.version ?? 0) === seen ? work(tx, newest) : refuse("changed-meanwhile", SOMEBODY_ELSE);
    });
  } catch (error) {
    if (isTaken(error)) return refuse("changed-meanwhile", SOMEBODY_ELSE);
    throw error;
  }
}

interface NewVersion { id: string; version: number; wording: Wording | null; reason: string | null; action: AuditAction; at: Date }

/** Adds a version and says so in the audit. Rows of before are never touched. */
export async function addVersion(tx: Tx, caller: Caller & { kind: "staff" }, { id, version, wording, reason, action, at }: NewVersion): Promise<void> {
  const row = { id: randomUUID(), paragraphId: id, version, reason, staffId: caller.staffId, at };
  await tx.paragraphVersion.create({ data: wording ? { ...row, wording: toJson(wording) } : row });
  await audit(tx, caller, { action, enquiryId: null, at, detail: { paragraphId: id, version, ...(reason ? { reason } : {}) } });
}
