import path from "node:path";
import { runCommand, step } from "./command";
import { ensureClients } from "./generate";
import { fingerprint, isMadeFrom, markMadeFrom } from "./made-from";
import { nextBin, runQuietly } from "./run-program";

const SOURCES = {
  of: ["app", "lib", "public", "prisma/schema", "instrumentation.ts", "proxy.ts", "next.config.mjs", "tsconfig.json", "package.json", "package-lock.json"],
  except: ["lib/store/generated", "lib/commands"],
};
const mark = (root: string) => path.join(root, ".next/plainpile-build.json");

/** Builds the pages, and notes what they were built from as it was when the build began. */
export async function buildPages(root: string): Promise<void> {
  await ensureClients(root);
  const print = fingerprint(root, SOURCES);
  await step("Building the pages", () => runQuietly(root, [nextBin(root), "build"], { NODE_ENV: "production" }, "The pages could not be built:"));
  markMadeFrom(mark(root), print);
}

/** Builds where there is no build, or one of something else. */
export async function ensureBuilt(root: string): Promise<void> {
  if (!isMadeFrom(mark(root), fingerprint(root, SOURCES))) await buildPages(root);
}

if (import.meta.filename === process.argv[1]) await runCommand(() => buildPages(process.cwd()));
