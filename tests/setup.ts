import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import fc from "fast-check";
import { afterAll } from "vitest";

// Properties are tried on the same examples every time, so that a red run is a change's fault; `npm run long -- properties` tries others.
const SEED = 20_261_125;
fc.configureGlobal({ seed: process.env.PLAINPILE_TEST_SEED ? Number(process.env.PLAINPILE_TEST_SEED) : SEED });

// Every test file has a data folder of its own, and so a database of its own: `await migrateDatabase()` makes it.
const folder = mkdtempSync(path.join(os.tmpdir(), "plainpile-test-"));
for (const name of ["DATABASE_URL", "HOST", "PORT", "BASE_URL", "AUTH_SECRET", "SMTP_URL", "MAIL_FROM", "DKIM_DOMAIN", "DKIM_SELECTOR", "DKIM_KEY_FILE", "IMAP_URL", "TRUST_PROXY", "DEMO", "LOG_LEVEL"]) {
  delete process.env[name];
}
process.env.DATA_DIR = folder;

afterAll(async () => {
  const kept = globalThis as { plainpileStore?: { close(): Promise<void> } };
  await kept.plainpileStore?.close();
  rmSync(folder, { recursive: true, force: true });
});
