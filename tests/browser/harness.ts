import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { rmSync } from "node:fs";
import { cp, mkdtemp, rm } from "node:fs/promises";
import net from "node:net";
import os from "node:os";
import path from "node:path";
import Database from "better-sqlite3";
import { simpleParser, type ParsedMail } from "mailparser";
import { SMTPServer } from "smtp-server";
import { POSTGRES_SERVER, postgresql, type Kind } from "../scratch";

const HOST = "127.0.0.1";
const START_MS = 90_000;
const POLL_MS = 100;

/** A letter as a mail server of the outside world received it. */
export interface Caught { from: string; to: string[]; mail: ParsedMail; raw: Buffer }

export interface MailServer { url: string; caught: Caught[]; stop(): Promise<void> }

/** Domains whose mailboxes take nothing, and what the server says of them. */
const TAKES_NOTHING: Readonly<Record<string, { code: number; say: string }>> = {
  "exmaple.org": { code: 550, say: "5.1.1 no such mailbox" },
  "busy.example": { code: 451, say: "4.3.0 too many letters, try later" },
};

export async function startMailServer(): Promise<MailServer> {
  const caught: Caught[] = [];
  const server = new SMTPServer({
    authOptional: true, disabledCommands: ["STARTTLS", "AUTH"], logger: false,
    onRcptTo({ address }, _session, done) {
      const no = TAKES_NOTHING[address.slice(address.indexOf("@") + 1)];
      done(no ? Object.assign(new Error(no.say), { responseCode: no.code }) : null);
    },
    onData(stream, session, done) {
      const parts: Buffer[] = [];
      stream.on("data", (part: Buffer) => parts.push(part));
      stream.on("end", () => {
        const raw = Buffer.concat(parts);
        const { mailFrom, rcptTo } = session.envelope;
        simpleParser(raw).then((mail) => {
          caught.push({ from: mailFrom ? mailFrom.address : "", to: rcptTo.map((r) => r.address), mail, raw });
          done();
        }, done);
      });
    },
  });
  server.listen(0, HOST);
  await once(server.server, "listening");
  const { port } = server.server.address() as net.AddressInfo;
  return { url: `smtp://${HOST}:${port}`, caught, stop: () => new Promise((resolve) => server.close(() => resolve())) };
}

export async function freePort(): Promise<number> {
  const probe = net.createServer().listen(0, HOST);
  await once(probe, "listening");
  const { port } = probe.address() as net.AddressInfo;
  probe.close();
  await once(probe, "close");
  return port;
}

/** A server of its own: database, data folder, port and mail server, all of them thrown away afterwards. */
export interface Desk {
  url: string;
  databaseUrl: string;
  dataDir: string;
  /** The one-time link that `npm start` printed. */
  ownerLink: string;
  mails: Caught[];
  /** Everything the server said so far. */
  log(): string;
  pid: number;
  stop(): Promise<void>;
}

/** Waits for the server to answer; it says what the server said where it does not. */
async function answers(url: string, child: ChildProcess, log: () => string): Promise<void> {
  for (const giveUp = Date.now() + START_MS; Date.now() < giveUp;) {
    if (child.exitCode !== null) throw new Error(`The server ended with ${child.exitCode}:\n${log()}`);
    const answered = await fetch(url, { redirect: "manual" }).then((r) => r.status < 500, () => false);
    if (answered) return;
    await new Promise((resume) => setTimeout(resume, POLL_MS));
  }
  throw new Error(`The server did not answer within ${START_MS / 1000} s:\n${log()}`);
}

/** A server that runs: what it said so far, and how to end it. */
interface Running { log(): string; pid: number; end(): Promise<void> }

/** Runs a program of ours that serves at `url`, and waits until it does. */
async function serving(args: readonly string[], env: NodeJS.ProcessEnv, url: string): Promise<Running> {
  const parts: Buffer[] = [];
  const log = () => Buffer.concat(parts).toString();
  const child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "pipe"], env });
  child.stdout.on("data", (part: Buffer) => parts.push(part));
  child.stderr.on("data", (part: Buffer) => parts.push(part));
  const end = async () => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    child.kill("SIGTERM");
    await once(child, "exit");
  };
  try {
    await answers(url, child, log);
  } catch (error) {
    await end();
    throw error;
  }
  return { log, pid: child.pid ?? 0, end };
}

const NPM_START = ["--conditions=react-server", "--import", "tsx", "lib/commands/start.ts"];
/** What `npm start` runs once all is made ready. */
const NEXT_START = (port: number) => ["node_modules/next/dist/bin/next", "start", "-H", HOST, "-p", String(port)];
const INVITATION = /http:\/\/[^\s/]+(\/invitation\S+)/;

function surroundings(databaseUrl: string, dataDir: string, port: number, env: Record<string, string>): NodeJS.ProcessEnv {
  const { PATH = "", HOME = "", TMPDIR = os.tmpdir() } = process.env;
  return {
    NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1", PATH, HOME, TMPDIR, DATABASE_URL: databaseUrl, DATA_DIR: dataDir, HOST, PORT: String(port), BASE_URL: `http://${HOST}:${port}`,
    MAIL_FROM: "Lantern Yard Rug Workshop <desk@lantern-yard.example>", ...env,
  };
}

/** The path of the link for the owner that `npm start` printed. */
function invitationIn(log: string): string {
  const [, invitation] = INVITATION.exec(log) ?? [];
  if (invitation === undefined) throw new Error(`The server printed no link for the owner:\n${log}`);
  return invitation;
}

/** What `npm start` makes ready on a data folder that is new, kept to be copied: a folder with its SQLite database, and the path of the owner's link. */
interface MadeReady { folder: string; invitation: string }
const DATABASE_FILE = "plainpile.db";
const fileIn = (folder: string) => `file:${path.join(folder, DATABASE_FILE)}`;

/** Where `global-setup` tells the workers what it made ready. */
const READY = "PLAINPILE_MADE_READY";

/** Makes it ready, once for all tests; what throws it away again. */
export async function makeReady(): Promise<() => void> {
  const folder = await mkdtemp(path.join(os.tmpdir(), "plainpile-ready-"));
  const port = await freePort();
  const server = await serving(NPM_START, surroundings(fileIn(folder), folder, port, { SMTP_URL: "" }), `http://${HOST}:${port}`);
  await server.end();
  process.env[READY] = JSON.stringify({ folder, invitation: invitationIn(server.log()) } satisfies MadeReady);
  return () => rmSync(folder, { recursive: true, force: true });
}

/** The owner's link opens for ten minutes only (`INVITATION_MS` in lib/staff/invitations.ts): in a copy they begin anew. */
function renewLink(file: string): void {
  const database = new Database(file);
  const { changes } = database.prepare("UPDATE Invitation SET expiresAt = strftime('%Y-%m-%dT%H:%M:%fZ', 'now', '+10 minutes') WHERE usedAt IS NULL").run();
  database.close();
  if (changes !== 1) throw new Error(`Expected the link of the owner alone, found ${changes}`);
}

/** A copy of what was made ready once, served as `npm start` serves it: making it ready takes longer than serving. */
async function startCopy(port: number, env: Record<string, string>) {
  const { folder, invitation } = JSON.parse(process.env[READY] ?? "") as MadeReady;
  const dataDir = await mkdtemp(path.join(os.tmpdir(), "plainpile-desk-"));
  await cp(folder, dataDir, { recursive: true });
  renewLink(path.join(dataDir, DATABASE_FILE));
  const databaseUrl = fileIn(dataDir);
  const server = await serving(NEXT_START(port), surroundings(databaseUrl, dataDir, port, env), `http://${HOST}:${port}`);
  return { server, databaseUrl, dataDir, invitation, drop: () => rm(dataDir, { recursive: true, force: true }) };
}

/** `npm start` itself on an empty database of PostgreSQL. */
async function startAnew(port: number, env: Record<string, string>) {
  if (!POSTGRES_SERVER) throw new Error("PLAINPILE_TEST_POSTGRES names no server.");
  const scratch = await postgresql(POSTGRES_SERVER).empty();
  const dataDir = await mkdtemp(path.join(os.tmpdir(), "plainpile-desk-"));
  const server = await serving(NPM_START, surroundings(scratch.url, dataDir, port, env), `http://${HOST}:${port}`);
  return {
    server, databaseUrl: scratch.url, dataDir, invitation: invitationIn(server.log()),
    async drop() {
      await scratch.drop();
      await rm(dataDir, { recursive: true, force: true });
    },
  };
}

/** Starts a desk on an empty database. `env` is added to its environment; SMTP_URL "" means no mail server. */
export async function startDesk(database: Kind["name"], env: Record<string, string> = {}): Promise<Desk> {
  const mail = await startMailServer();
  const port = await freePort();
  const url = `http://${HOST}:${port}`;
  const all = { SMTP_URL: mail.url, ...env };
  const { server, databaseUrl, dataDir, invitation, drop } = await (database === "sqlite" ? startCopy(port, all) : startAnew(port, all))
    .catch(async (error: Error) => {
      await mail.stop();
      throw error;
    });
  return {
    url, databaseUrl, dataDir, ownerLink: `${url}${invitation}`, mails: mail.caught, log: server.log, pid: server.pid,
    async stop() {
      await server.end();
      await mail.stop();
      await drop();
    },
  };
}
