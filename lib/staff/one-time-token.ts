import "server-only";
import { createHash, randomBytes } from "node:crypto";

/** What stands in a link or a cookie: 32 random bytes in base64url, 43 characters. Only `hash` (SHA-256, hex) is ever stored. */
export function newToken(): { token: string; hash: string } {
  const token = randomBytes(32).toString("base64url");
  return { token, hash: hashToken(token) };
}

/** A plain SHA-256 is enough: the token has 256 bits of chance, so there is nothing to guess from. */
export const hashToken = (token: string): string => createHash("sha256").update(token).digest("hex");
