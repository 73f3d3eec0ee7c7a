import { randomBytes } from "node:crypto";
import { existsSync } from "node:fs";
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { inherited, setVariables } from "../config/environment";
import { runCommand, step } from "./command";
import { startMailCatcher, type MailCatcher } from "./mail-catcher";
import type { DemoPerson } from "../../prisma/demo/seed";

/** Where the demo and its caught letters are; PORT moves the first, and a second demo shows its letters at a port that is free. */
const PORT = "3000";
const LETTERS_PORT = 8025;

const folderOf = (root: string): string => path.join(root, "demo-data");

/**
 * The invented workshop: its own data folder, loopback only. Everything the server reads from the environment is set
 * here before any of it is loaded, so that nothing real is touched.
 */
function isolate(root: string, smtpPort: number): void {
  const folder = folderOf(root);
  const port = inherited().PORT ?? PORT;
  setVariables({
    DATA_DIR: folder, DATABASE_URL: `file:${path.join(folder, "plainpile.db")}`, HOST: "127.0.0.1", PORT: port, BASE_URL: `http://127.0.0.1:${port}`, DEMO: "true",
    SMTP_URL: `smtp://127.0.0.1:${smtpPort}`, MAIL_FROM: "Lantern Yard Rug Workshop <desk@lantern-yard.example>", IMAP_URL: "",
  });
}

/** Listening before anything is drawn, so that nobody takes its port meanwhile. */
async function catchMail(folder: string): Promise<MailCatcher> {
  const at = (web: number) => startMailCatcher(path.join(folder, "mail"), { smtp: 0, web });
  return at(LETTERS_PORT).catch((error: NodeJS.ErrnoException) => { if (error.code !== "EADDRINUSE") throw error; return at(0); });
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
  const folder = folderOf(root);
  const done = path.join(folder, "access.json");
  // A first start that was broken off begins again from nothing; before the server's secret is read from there.
  if (!existsSync(done)) await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const catcher = await catchMail(folder);
  try {
    isolate(root, catcher.smtpPort);
    return await show(root, { folder, done, lettersPort: catcher.webPort });
  } finally {
    await catcher.close();
  }
}

/** Draws what is not drawn yet, says where everything is, and serves until it is stopped. */
async function show(root: string, { folder, done, lettersPort }: { folder: string; done: string; lettersPort: number }): Promise<number> {
  const { config } = await import("../config/config");
  const { assertPortFree } = await import("./ready");
  await assertPortFree(config.host, config.port);
  const { prepare, serve } = await import("./start");
  await prepare(root);
  const people = await seedOnce(done);
  console.log(["",
    `A homeowner begins at    ${config.baseUrl}`,
    `The desk is at           ${config.baseUrl}/desk   Sign in as one of`,
    ...people.map((p) => `   ${p.role.padEnd(9)} ${p.email.padEnd(27)} ${p.password}`),
    `Letters it sends are at  http://127.0.0.1:${lettersPort}   (nothing leaves this machine)`,
    `All of it lies in ${path.relative(root, folder)}/; delete that folder to begin afresh.`, ""].join("\n"));
  return serve(root);
}

await runCommand(main);
