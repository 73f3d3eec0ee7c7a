import { runCommand } from "./command";
import { ensureBuilt } from "./build";
import { assertPortFree, readyDatabase, whereOf } from "./ready";
import { nextBin, runInFront } from "./run-program";

/** Everything the server needs before it can serve: clients, pages, data folder, migrated database. */
export async function prepare(root: string): Promise<void> {
  await readyDatabase(root);
  await ensureBuilt(root);
}

/** Serves on HOST and PORT until it is stopped. Returns the exit code. */
export async function serve(root: string): Promise<number> {
  const { config } = await import("../config/config");
  await assertPortFree(config.host, config.port);
  const { closeDatabase } = await import("../store/database");
  await closeDatabase();
  return runInFront(root, [nextBin(root), "start", "-H", config.host, "-p", String(config.port)], { NODE_ENV: "production" });
}

async function main(): Promise<number> {
  const root = process.cwd();
  const { config } = await import("../config/config");
  await assertPortFree(config.host, config.port);
  await prepare(root);
  const { firstOwnerLink } = await import("../staff/invitations");
  const link = await firstOwnerLink();
  const { smtp } = config;
  console.log([
    "",
    `The desk will be at   ${config.baseUrl}/desk`,
    `Clients begin at      ${config.baseUrl}`,
    `The data lie in       ${whereOf(config)}`,
    `Mail                  ${smtp ? `goes out through ${new URL(smtp.url).host}` : "no mail server is set up: approved letters wait, marked not sent (set SMTP_URL in .env)"}`,
    ...(link ? ["", "Nobody owns this desk yet. Open this link once, to set the owner's name and password:", `   ${link}`] : []),
    "",
  ].join("\n"));
  return serve(root);
}

if (import.meta.filename === process.argv[1]) await runCommand(main);
