import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { tallyOfVitest } from "../../lib/commands/tally";
import type { LongCheck, Outcome } from "./check";

/** Seeds tried, one after another from that of the day, so that each day tries others and each can be had again. */
const SEEDS = 5;
const DAY_MS = 86_400_000;

const withProperties = (): string[] =>
  readdirSync("tests", { recursive: true, encoding: "utf8" }).map((name) => path.join("tests", name))
    .filter((file) => file.endsWith(".test.ts") && !file.includes(path.join("unit", "ui")) && readFileSync(file, "utf8").includes("fast-check"));

function trySeed(seed: number): Outcome {
  const folder = mkdtempSync(path.join(tmpdir(), "plainpile-properties-")), report = path.join(folder, "report.json");
  try {
    spawnSync(process.execPath, ["node_modules/vitest/vitest.mjs", "run", "--reporter=json", `--outputFile.json=${report}`, ...withProperties()], { env: { ...process.env, NODE_ENV: "test", NODE_OPTIONS: "--conditions=react-server", PLAINPILE_TEST_SEED: String(seed) }, stdio: "ignore" });
    const { passed, failed, failures = [] } = tallyOfVitest(JSON.parse(readFileSync(report, "utf8")) as Parameters<typeof tallyOfVitest>[0]);
    return { name: `seed ${seed}`, measured: [`${passed} hold, ${failed} do not`, ...failures].join("\n"), required: "all", holds: failed === 0 && passed > 0 };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const checks: LongCheck[] = [{
  name: "Every property, on examples that were not tried before",
  run(progress) {
    const first = Math.floor(Date.now() / DAY_MS) * SEEDS;
    return Array.from({ length: SEEDS }, (_, n) => { progress(n / SEEDS); return trySeed(first + n); });
  },
}];
