import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { BenchRow } from "./measure";

/** Every file beside this one that exports `rows` adds to the table; of those only the ones named, by `npm run bench -- label receiving`. */
async function allRows(named: readonly string[]): Promise<BenchRow[]> {
  const files = readdirSync(import.meta.dirname).filter((f) => f.endsWith(".ts") && f !== "run.ts" && f !== "measure.ts" && (named.length === 0 || named.includes(path.basename(f, ".ts")))).sort();
  const modules = await Promise.all(files.map((f) => import(pathToFileURL(path.join(import.meta.dirname, f)).href) as Promise<{ rows?: BenchRow[] }>));
  return modules.flatMap((m) => m.rows ?? []);
}

const ms = (value: number | null) => (value === null ? "" : value < 0.1 ? `${(value * 1000).toFixed(1)} µs` : `${value.toFixed(2)} ms`);
const WIDTHS = [58, 12, 12, 9, 9, 0] as const;
const line = (cells: readonly string[]) => cells.map((c, i) => (i === 0 ? c.padEnd(WIDTHS[0]) : c.padStart(WIDTHS[i] ?? 0))).join(" ");

console.log(line(["", "taken", "floor", "ratio", "limit", ""]));
let failed = 0;
for (const row of await allRows(process.argv.slice(2))) {
  if (process.stderr.isTTY) process.stderr.write(`${row.name} …\r`);
  const { ms: taken, floorMs } = await row.measure();
  const ratio = floorMs === null ? null : taken / floorMs;
  const isOver = ratio !== null && row.limit !== null && !(ratio <= row.limit);
  if (isOver) failed += 1;
  console.log(line([row.name, ms(taken), ms(floorMs), ratio === null ? "" : `${ratio.toFixed(1)} ×`, row.limit === null ? "" : `${row.limit} ×`, isOver ? "OVER" : ""]));
  if (row.floor) console.log(`  floor: ${row.floor}`);
}
if (failed > 0) console.error(`${failed} of the binding ratios ${failed === 1 ? "is" : "are"} over the limit.`);
process.exit(failed > 0 ? 1 : 0);
