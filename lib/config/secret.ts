import { randomBytes, randomUUID } from "node:crypto";
import { existsSync, linkSync, mkdirSync, readFileSync, unlinkSync, writeFileSync } from "node:fs";
import path from "node:path";

/**
 * The secret kept in `<dataDir>/secret` (mode 600), made on first use: 32 random bytes in base64url.
 * Two processes that start together agree on one: the file appears whole or not at all.
 */
export function keptSecret(dataDir: string): string {
  const file = path.join(dataDir, "secret");
  if (!existsSync(file)) {
    mkdirSync(dataDir, { recursive: true });
    const draft = `${file}.${randomUUID()}`;
    writeFileSync(draft, randomBytes(32).toString("base64url"), { mode: 0o600, flag: "wx" });
    try {
      linkSync(draft, file);
    } catch (e) {
      if ((e as NodeJS.ErrnoException).code !== "EEXIST") throw e;
    } finally {
      unlinkSync(draft);
    }
  }
  const secret = readFileSync(file, "utf8").trim();
  if (secret.length < 32) throw new Error(`${file} does not hold a secret of at least 32 characters; remove it to have a new one made.`);
  return secret;
}
