import "server-only";
import { overlong } from "../reply/length";
import type { Tx } from "../store/database";
import { ok, refuse, type Result } from "./caller";
import { REASON_CHARS } from "./reason-limits";

/** What stands in the audit beside a letter longer than people read: how many words it has, and the reason, where one was given. Empty otherwise. */
export interface Length { readonly words?: number; readonly longReason?: string }

/** A letter may always be long; the reason is asked for, never required. A reason for a letter that is short enough is not kept. */
export async function lengthOf(tx: Tx, { enquiryId, text, reason }: { enquiryId: string; text: string; reason: string | null }): Promise<Result<Length>> {
  const over = overlong(text, await tx.rug.count({ where: { enquiryId } }));
  if (!over) return ok({});
  const longReason = reason?.trim() ?? "";
  if (longReason.length > REASON_CHARS.most) {
    const say = `At most ${REASON_CHARS.most} characters.`;
    return refuse("invalid", say, { longReason: say });
  }
  return ok({ words: over.words, ...(longReason ? { longReason } : {}) });
}
