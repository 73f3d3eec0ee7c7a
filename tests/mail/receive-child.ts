import fs from "node:fs/promises";
import { syncBuiltinESMExports } from "node:module";
import type { ImapBox } from "../../lib/config/imap-url";

// The process that dies: it reads the mailbox once and ends itself by SIGKILL as it gives the `dieAt`th file its name, before
// that or just after. Its clock runs `aheadMs` ahead, so that the claims of the one before it have lapsed.
const { box, aheadMs, dieAt, isAfter } = JSON.parse(process.argv[2] ?? "") as { box: ImapBox; aheadMs: number; dieAt: number | null; isAfter: boolean };
const { rename } = fs;
let count = 0;
fs.rename = async (from, to) => {
  const isLast = ++count === dieAt;
  if (isLast && !isAfter) process.kill(process.pid, "SIGKILL");
  await rename(from, to);
  if (isLast) process.kill(process.pid, "SIGKILL");
};
syncBuiltinESMExports();

const { readMailbox } = await import("../../lib/enquiry/receive-mail");
const { closeDatabase } = await import("../../lib/store/database");
await readMailbox(box, { stop: new AbortController().signal, isOnce: true, clock: () => new Date(Date.now() + aheadMs) });
await closeDatabase();
process.exit(0);
