import "server-only";
import { createHmac } from "node:crypto";
import { config } from "../config/config";

/** Written by lib/staff/socket-address over whatever the sender put there. */
export const SOCKET_HEADER = "x-plainpile-address";

/**
 * Where a request comes from: the entry of X-Forwarded-For that our outermost trusted proxy wrote, else the socket's.
 * What a sender adds on the left is never believed. null where neither is known.
 */
export function senderAddress(headers: Headers, trustProxy: number = config.trustProxy): string | null {
  if (trustProxy > 0) {
    const entries = (headers.get("x-forwarded-for") ?? "")
      .split(",")
      .map((e) => e.trim())
      .filter(Boolean);
    return entries.at(-trustProxy) ?? entries[0] ?? null;
  }
  return headers.get(SOCKET_HEADER) || null;
}

/** Keyed by the server's secret, so that nobody can try a stored or logged value back to what it stands for. */
export const keyedHash = (text: string): string => createHmac("sha256", config.authSecret).update(text).digest("hex").slice(0, 32);

/** For quotas only. */
export function addressHash(headers: Headers): string | null {
  const address = senderAddress(headers);
  return address === null ? null : keyedHash(`address:${address}`);
}
