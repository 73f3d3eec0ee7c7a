import { randomBytes } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { inherited, setVariables } from "../config/environment";
import { runCommand, step } from "./command";
import { startMailCatcher } from "./mail-catcher";
import type { DemoPerson } from "../../prisma/demo/seed";

/** The address of the demo and of its caught letters; PORT moves the first. */
const PORT = "3000";
const MAIL_PORTS = { smtp: 2525, web: 8025 };

/**
 * The invented workshop: its own data folder, loopback only. Everything the server reads from the environment is set
 * here before any of it is loaded, so that nothing real is touched.
 */
function isolate(root: string): string {
  const folder = path.join(root, "demo-data");
  const port = inherited().PORT ?? PORT;
  setVariables({
    DATA_DIR: folder, DATABASE_URL: `file:${path.join(folder, "plainpile.db")}`, HOST: "127.0.0.1", PORT: port, BASE_URL: `http://127.0.0.1:${port}`, DEMO: "true",
    SMTP_URL: `smtp://127.0.0.1:${MAIL_PORTS.smtp}`, MAIL_FROM: "Lantern Yard Rug Workshop <desk@lantern-yard.example>", IMAP_URL: "",
  });
  return folder;
}

/** Draws and fills the demo at its first start, and then writes down who may sign in. */
async function seedOnce(done: string): Promise<DemoPerson[]> {
  if (existsSync(done)) return JSON.parse(await readFile(done, "utf8")) as DemoPerson[];
  const { seedDemo } = await import("../../prisma/demo/seed");
  const password = () => randomBytes(12).toString("base64url");
  const people = await step("Drawing rugs and writing enquiries", () => seedDemo({ password, now: new Date(), log: (line) => console.log(`   ${line}`) }));
  await writeFile(done, JSON.stringify(people, null, 2), { mode: 0o600 });
  return people;
}

async function main(): Promise<number> {
  const root = process.cwd();
  const folder = isolate(root);
  const done = path.join(folder, "access.json");
  // A first start that was broken off begins again from nothing; before the server's secret is read from there.
  if (!existsSync(done)) await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const { config } = await import("../config/config");
  const { assertPortFree } = await import("./ready");
  for (const port of [config.port, MAIL_PORTS.smtp, MAIL_PORTS.web]) await assertPortFree(config.host, port);
  const { prepare, serve } = await import("./start");
  await prepare(root);
  const people = await seedOnce(done);
  const catcher = await startMailCatcher(path.join(folder, "mail"), MAIL_PORTS);
  console.log(["",
    `A homeowner begins at    ${config.baseUrl}`,
    `The desk is at           ${config.baseUrl}/desk   Sign in as one of`,
    ...people.map((p) => `   ${p.role.padEnd(9)} ${p.email.padEnd(27)} ${p.password}`),
    `Letters it sends are at  http://127.0.0.1:${catcher.webPort}   (nothing leaves this machine)`,
    `All of it lies in ${path.relative(root, folder)}/; delete that folder to begin afresh.`, ""].join("\n"));
  try {
    return await serve(root);
  } finally {
    await catcher.close();
  }
}

await runCommand(main);
