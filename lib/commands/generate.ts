import path from "node:path";
import { runCommand, step } from "./command";
import { fingerprint, isMadeFrom, markMadeFrom } from "./made-from";
import { runQuietly } from "./run-program";

const PROVIDER_URLS = ["file:./generate.db", "postgresql://127.0.0.1/generate"];
const SOURCES = { of: ["prisma/schema", "prisma.config.ts", "node_modules/prisma/package.json"] };
const mark = (root: string) => path.join(root, "lib/store/generated/made-from.json");

/**
 * Writes both Prisma clients. `prisma generate` needs no schema engine, only the name of an existing file,
 * so nobody's install has to download one.
 */
export async function generateClients(root: string): Promise<void> {
  const print = fingerprint(root, SOURCES);
  for (const url of PROVIDER_URLS) {
    await runQuietly(root, [path.join(root, "node_modules/prisma/build/index.js"), "generate"], {
      DATABASE_URL: url, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, PRISMA_HIDE_UPDATE_MESSAGE: "1", CHECKPOINT_DISABLE: "1",
    }, "Prisma could not write its client:");
  }
  markMadeFrom(mark(root), print);
}

/** Writes the clients where they are missing or were made from another schema. */
export async function ensureClients(root: string): Promise<void> {
  if (!isMadeFrom(mark(root), fingerprint(root, SOURCES))) await step("Writing the database clients", () => generateClients(root));
}

if (import.meta.filename === process.argv[1]) await runCommand(() => step("Writing the database clients", () => generateClients(process.cwd())));
