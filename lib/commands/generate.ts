import { spawnSync } from "node:child_process";
import path from "node:path";

const PROVIDER_URLS = ["file:./generate.db", "postgresql://127.0.0.1/generate"];

/**
 * Writes both Prisma clients. `prisma generate` needs no schema engine, only the name of an existing file,
 * so nobody's install has to download one.
 */
export function generateClients(root: string, log: (line: string) => void): void {
  for (const url of PROVIDER_URLS) {
    const run = spawnSync(process.execPath, [path.join(root, "node_modules/prisma/build/index.js"), "generate"], {
      cwd: root,
      env: { ...process.env, DATABASE_URL: url, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, PRISMA_HIDE_UPDATE_MESSAGE: "1", CHECKPOINT_DISABLE: "1" },
      encoding: "utf8",
    });
    if (run.status !== 0) throw new Error(`Prisma could not write its client:\n${run.stdout}${run.stderr}`);
  }
  log("Wrote the database clients.");
}

if (import.meta.filename === process.argv[1]) generateClients(process.cwd(), console.log);
