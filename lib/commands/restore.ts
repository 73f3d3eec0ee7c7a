import path from "node:path";
import { placeOf } from "./backup";
import { CommandError, runCommand, step } from "./command";
import { readyDatabase } from "./ready";

const USAGE = "Say which backup: npm run restore -- FILE.tar.gz [--replace]";

async function main(): Promise<void> {
  const words = process.argv.slice(2);
  const replace = words.includes("--replace");
  const [name, ...more] = words.filter((w) => w !== "--replace");
  if (name === undefined || name.startsWith("-") || more.length > 0) throw new CommandError(USAGE);
  await readyDatabase(process.cwd());
  const { restore } = await import("../store/backup");
  const { closeDatabase } = await import("../store/database");
  const { eraseAgain, erasedIds } = await import("../enquiry/erase-again");
  const place = await placeOf();
  const erased = await erasedIds();
  await closeDatabase();
  const { manifest, before } = await step("Checking the backup, and putting it in place", () => restore(place, path.resolve(name), replace));
  const again = await eraseAgain(erased, new Date());
  await closeDatabase();
  console.log(`Restored ${manifest.rows.enquiry} enquiries as they were at ${manifest.madeAt}. Everybody signs in again.`);
  if (again > 0) console.log(`${again} of them had been erased since, and were erased again.`);
  if (before !== null) console.log(`What was here before is in ${before}; remove it when you are sure.`);
}

if (import.meta.filename === process.argv[1]) await runCommand(main, USAGE);
