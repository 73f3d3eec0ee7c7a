import { CommandError, runCommand } from "./command";
import { readyDatabase } from "./ready";

const USAGE = "Say whose: npm run password -- ADDRESS";

async function main(): Promise<void> {
  const [address, ...more] = process.argv.slice(2);
  if (address === undefined || address.startsWith("-") || more.length > 0) throw new CommandError(USAGE);
  await readyDatabase(process.cwd());
  const { newPasswordLink } = await import("../staff/invitations");
  const { closeDatabase } = await import("../store/database");
  const made = await newPasswordLink({ kind: "system", what: "password" }, address);
  await closeDatabase();
  if (!made.ok) throw new CommandError(made.say);
  console.log(`Open this link within ten minutes, once, to set a new password for ${address}:\n   ${made.value.link}`);
}

if (import.meta.filename === process.argv[1]) await runCommand(main, USAGE);
