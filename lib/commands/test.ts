import { mkdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { inherited } from "../config/environment";
import { ensureBrowser } from "./browser";
import { ensureBuilt } from "./build";
import { CommandError, runCommand } from "./command";
import { ensureClients } from "./generate";
import { nextBin, runInFront } from "./run-program";
import { sum, summaryLine, tallyOf, tallyOfPlaywright, tallyOfVitest, type Tally } from "./tally";

const REPORTS = "test-results/reports";
const bin = (root: string, file: string) => path.join(root, "node_modules", file);

/** One program whose end is one check. */
async function check(root: string, programs: string[][]): Promise<Tally> {
  for (const args of programs) {
    if (await runInFront(root, args, {}) !== 0) return { passed: 0, failed: 1, skipped: 0 };
  }
  return { passed: 1, failed: 0, skipped: 0 };
}

async function counted<R>(root: string, args: string[], report: string, read: (report: R) => Tally): Promise<Tally> {
  const file = path.join(root, REPORTS, report);
  rmSync(file, { force: true });
  const code = await runInFront(root, args, { NODE_ENV: "test" });
  let tally: Tally | null = null;
  try {
    tally = read(JSON.parse(readFileSync(file, "utf8")) as R);
  } catch {
    console.error(`${report} could not be read, so this step counts as failed.`);
  }
  return tallyOf(tally, code);
}

const STEPS = {
  types: (root: string) => check(root, [[nextBin(root), "typegen"], [bin(root, "typescript/bin/tsc"), "--noEmit"]]),
  lint: (root: string) => check(root, [[bin(root, "eslint/bin/eslint.js"), ".", "--max-warnings", "0"]]),
  unit: (root: string) => counted(root, [bin(root, "vitest/vitest.mjs"), "run", "--reporter=default", "--reporter=json", `--outputFile.json=${REPORTS}/unit.json`], "unit.json", tallyOfVitest),
  browser: async (root: string) => {
    await ensureBrowser(root);
    await ensureBuilt(root);
    return counted(root, [bin(root, "@playwright/test/cli.js"), "test"], "browser.json", tallyOfPlaywright);
  },
};
type Step = keyof typeof STEPS;
/** What runs one after the other; the two that keep only one processor busy run beside each other. */
const TURNS: readonly (readonly Step[])[] = [["types", "lint"], ["unit"], ["browser"]];
const isStep = (word: string): word is Step => word in STEPS;

/** Runs every step, or those named; a step that fails does not keep the next from running. */
async function main(): Promise<number> {
  const root = process.cwd();
  const words = process.argv.slice(2);
  const unknown = words.find((w) => !isStep(w));
  if (unknown !== undefined) throw new CommandError(`There is no step "${unknown}". The steps are ${Object.keys(STEPS).join(", ")}.`);
  const turns = TURNS.map((turn) => turn.filter((name) => words.length === 0 || words.includes(name)));
  mkdirSync(path.join(root, REPORTS), { recursive: true });
  await ensureClients(root);
  const tallies: Tally[] = [];
  const lines: string[] = [];
  const run = async (name: Step) => {
    console.log(`\n=== ${name}`);
    const started = Date.now();
    const tally = await STEPS[name](root).catch((error: Error): Tally => {
      console.error(error.message);
      return { passed: 0, failed: 1, skipped: 0 };
    });
    tallies.push(tally);
    lines.push(`${name.padEnd(8)} ${summaryLine(tally)}${tally.skipped > 0 ? `, ${tally.skipped} left out` : ""} in ${Math.round((Date.now() - started) / 1_000)} s`);
    console.log(`=== ${lines.at(-1)}`);
  };
  for (const turn of turns) await Promise.all(turn.map(run));
  if (!inherited().PLAINPILE_TEST_POSTGRES) lines.push("PostgreSQL was not tested: PLAINPILE_TEST_POSTGRES names no server.");
  for (const said of tallies.flatMap((t) => t.failures ?? [])) console.log(`\nFAILED ${said.replaceAll(`${root}${path.sep}`, "")}`);
  const total = sum(tallies);
  console.log(`\n${lines.join("\n")}\n${summaryLine(total)}`);
  return total.failed === 0 ? 0 : 1;
}

if (import.meta.filename === process.argv[1]) await runCommand(main);
