import "server-only";
import { randomUUID } from "node:crypto";
import { hashToken } from "../staff/one-time-token";
import { database, type Tx } from "../store/database";
import { clientToken } from "../workshop/client-link";
import { refuse, ok, type Caller, type Result } from "./caller";
import { wrong } from "./wrong";

/** How long a client's link opens their page. Elicited: an enquiry is rarely spoken of after half a year. */
export const LINK_DAYS = 180;
const DAY_MS = 86_400_000;

/**
 * What a client's link stands for. Reads only, so that a mail scanner may open it as often as it likes. The same words for an
 * unknown, an expired and a revoked link.
 */
export async function openClientLink(token: string, now: Date = new Date()): Promise<Result<{ enquiryId: string; linkId: string; expiresAt: Date }>> {
  const link = await database().clientLink.findUnique({ where: { tokenHash: hashToken(token) } });
  if (!link || link.revokedAt || link.expiresAt <= now) {
    return refuse("expired", wrong("refusal.dead-link"));
  }
  return ok({ enquiryId: link.enquiryId, linkId: link.id, expiresAt: link.expiresAt });
}

/** Who the cookie of a client's link stands for; asked anew with every request, so that a revoked link closes at once. */
export async function callerFromLink(token: string | undefined, now: Date = new Date()): Promise<(Caller & { kind: "client" }) | null> {
  if (!token) return null;
  const link = await openClientLink(token, now);
  return link.ok ? { kind: "client", enquiryId: link.value.enquiryId, linkId: link.value.linkId } : null;
}

/** Makes a link of an enquiry. Its row keeps the hash alone. */
export async function addClientLink(tx: Tx, enquiryId: string, now: Date): Promise<{ linkId: string; token: string }> {
  const linkId = randomUUID();
  const token = clientToken(linkId);
  await tx.clientLink.create({
    data: { id: linkId, enquiryId, tokenHash: hashToken(token), createdAt: now, expiresAt: new Date(now.getTime() + LINK_DAYS * DAY_MS) },
  });
  return { linkId, token };
}
