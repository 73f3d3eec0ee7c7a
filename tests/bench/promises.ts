import { execFile } from "node:child_process";
import path from "node:path";
import { promisify } from "node:util";
import type { BenchRow } from "./measure";

/** So many processes are asked; the least counts, which is what the code costs where nothing else runs. */
const PROCESSES = 5;
const CHECK = path.join(import.meta.dirname, "../../lib/reply/promises/check.ts");
const SENTENCE = "We clean nothing before a test in a hidden corner, and we would send you the result.";
const FIRST_CHECK = `import(${JSON.stringify(CHECK)}).then(({ rulesBroken }) => {
  const from = performance.now();
  rulesBroken(${JSON.stringify(SENTENCE)});
  process.stdout.write(String(performance.now() - from));
});`;

/** Milliseconds of the first sentence that a process checks: what a person waits for who begins to type. */
async function firstCheck(): Promise<number> {
  const taken: number[] = [];
  for (let n = 0; n < PROCESSES; n += 1) {
    const { stdout } = await promisify(execFile)(process.execPath, ["--conditions=react-server", "--import", "tsx", "--input-type=module", "--eval", FIRST_CHECK]);
    taken.push(Number(stdout));
  }
  return Math.min(...taken);
}

export const rows: BenchRow[] = [
  { name: "the first sentence a process checks for promises", floor: null, limit: null, measure: async () => ({ ms: await firstCheck(), floorMs: null }) },
];
