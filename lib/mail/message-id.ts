import "server-only";
import { randomUUID } from "node:crypto";

/** A new Message-ID with its angle brackets (RFC 5322 §3.6.4). `domain` in ASCII. */
export const newMessageId = (domain: string): string => `<${randomUUID()}@${domain}>`;

/** How many ids a References header carries; of more, the first and the newest are kept. Elicited; long headers are cut by some servers. */
const MAX_REFERENCES = 20;

export interface Thread { inReplyTo: string | null; references: string | null }

interface Earlier { messageId: string; references: string | null }

/**
 * The threading of a letter that follows `earlier`, the newest letter of ours in the conversation, and `theirs`, the Message-ID
 * of what the client wrote since (RFC 5322 §3.6.4).
 */
export function threadAfter(earlier: Earlier | null, theirs: string | null = null): Thread {
  const ids = [...(earlier?.references?.split(/\s+/).filter(Boolean) ?? []), earlier?.messageId, theirs].filter((id) => id != null);
  if (ids.length === 0) return { inReplyTo: null, references: null };
  const kept = ids.length > MAX_REFERENCES ? [ids[0] as string, ...ids.slice(1 - MAX_REFERENCES)] : ids;
  return { inReplyTo: ids.at(-1) ?? null, references: kept.join(" ") };
}
