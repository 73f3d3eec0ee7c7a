import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import type { LongCheck } from "./check";

/** Every file beside this one that exports `checks`; of those only the ones named, by `npm run long -- labels mail`. */
async function allChecks(named: readonly string[]): Promise<LongCheck[]> {
  const files = readdirSync(import.meta.dirname).filter((f) => f.endsWith(".ts") && f !== "run.ts" && f !== "check.ts" && (named.length === 0 || named.includes(path.basename(f, ".ts")))).sort();
  const modules = await Promise.all(files.map((f) => import(pathToFileURL(path.join(import.meta.dirname, f)).href) as Promise<{ checks?: LongCheck[] }>));
  return modules.flatMap((m) => m.checks ?? []);
}

const shown = (text: string) => { if (process.stderr.isTTY) process.stderr.write(`\r\x1b[K${text}`); };

let failed = 0;
for (const check of await allChecks(process.argv.slice(2))) {
  const outcomes = await check.run((share) => shown(`${check.name}: ${Math.floor(share * 100)} %`));
  shown("");
  console.log(check.name);
  for (const { name, measured, required, holds } of outcomes) {
    if (holds === false) failed += 1;
    console.log(`  ${holds === null ? "     " : holds ? "holds" : "FAILS"}  ${name.padEnd(58)} ${measured.padEnd(40)} ${required}`);
  }
}
if (failed > 0) console.error(`${failed} ${failed === 1 ? "requirement does" : "requirements do"} not hold.`);
process.exit(failed > 0 ? 1 : 0);
