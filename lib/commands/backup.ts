import { stat } from "node:fs/promises";
import path from "node:path";
import { CommandError, runCommand, step } from "./command";
import { readyDatabase } from "./ready";

const USAGE = "Say where the backup goes: npm run backup -- FILE.tar.gz";

export const placeOf = async () => {
  const { config } = await import("../config/config");
  return { databaseUrl: config.databaseUrl, dataDir: config.dataDir, migrations: path.resolve("prisma/migrations") };
};

async function main(): Promise<void> {
  const [name, ...more] = process.argv.slice(2);
  if (name === undefined || name.startsWith("-") || more.length > 0) throw new CommandError(USAGE);
  const file = path.resolve(name);
  await readyDatabase(process.cwd());
  const { backUp } = await import("../store/backup");
  const place = await placeOf();
  const { rows, members, photosMissing } = await step("Backing up, and reading the backup back", () => backUp(place, file));
  const photos = members.filter((m) => m.name.startsWith("photos/")).length;
  console.log(`${file}: ${((await stat(file)).size / 1e6).toFixed(1)} MB, ${rows.enquiry} enquiries, ${rows.letter} letters, ${photos} photo files. It holds personal data; keep it where only you can read it.`);
  if (photosMissing.length > 0) console.log(`${photosMissing.length} photos have no file any more and are not in it: ${photosMissing.join(", ")}`);
}

if (import.meta.filename === process.argv[1]) await runCommand(main, USAGE);
