import "server-only";
import { randomUUID } from "node:crypto";

/** A new Message-ID with its angle brackets (RFC 5322 §3.6.4). `domain` in ASCII. */
export const newMessageId = (domain: string): string => `<${randomUUID()}@${domain}>`;

/** How many ids a References header carries; of more, the first and the newest are kept. Elicited; long headers are cut by some servers. */
const MAX_REFERENCES = 20;

export interface Thread { inReplyTo: string | null; references: string | null }

/** The threading of a letter that follows `earlier`, the newest letter of the conversation before it (RFC 5322 §3.6.4). */
export function threadAfter(earlier: { messageId: string; references: string | null } | null): Thread {
  if (!earlier) return { inReplyTo: null, references: null };
  const ids = [...(earlier.references?.split(/\s+/).filter(Boolean) ?? []), earlier.messageId];
  const kept = ids.length > MAX_REFERENCES ? [ids[0] as string, ...ids.slice(1 - MAX_REFERENCES)] : ids;
  return { inReplyTo: earlier.messageId, references: kept.join(" ") };
}
