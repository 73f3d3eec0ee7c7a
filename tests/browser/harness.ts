import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import net from "node:net";
import os from "node:os";
import path from "node:path";
import { simpleParser, type ParsedMail } from "mailparser";
import { SMTPServer } from "smtp-server";
import { POSTGRES_SERVER, postgresql, sqlite, type Kind } from "../scratch";

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

const kindOf = (database: Kind["name"]): Kind => {
  if (database === "sqlite") return sqlite;
  if (!POSTGRES_SERVER) throw new Error("PLAINPILE_TEST_POSTGRES names no server.");
  return postgresql(POSTGRES_SERVER);
};

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

/** Starts what `npm start` starts. `env` is added to its environment; SMTP_URL "" means no mail server. */
export async function startDesk(database: Kind["name"], env: Record<string, string> = {}): Promise<Desk> {
  const scratch = await kindOf(database).empty();
  const dataDir = await mkdtemp(path.join(os.tmpdir(), "plainpile-desk-"));
  const mail = await startMailServer();
  const port = await freePort();
  const url = `http://${HOST}:${port}`;
  const parts: Buffer[] = [];
  const log = () => Buffer.concat(parts).toString();
  const { PATH = "", HOME = "", TMPDIR = os.tmpdir() } = process.env;
  const child = spawn(process.execPath, ["--conditions=react-server", "--import", "tsx", "lib/commands/start.ts"], {
    stdio: ["ignore", "pipe", "pipe"],
    env: {
      NODE_ENV: "production", PATH, HOME, TMPDIR, DATABASE_URL: scratch.url, DATA_DIR: dataDir, HOST, PORT: String(port), BASE_URL: url,
      SMTP_URL: mail.url, MAIL_FROM: "Lantern Yard Rug Workshop <desk@lantern-yard.example>", ...env,
    },
  });
  child.stdout.on("data", (part: Buffer) => parts.push(part));
  child.stderr.on("data", (part: Buffer) => parts.push(part));
  const stop = async () => {
    if (child.exitCode === null && child.signalCode === null) {
      child.kill("SIGTERM");
      await once(child, "exit");
    }
    await mail.stop();
    await scratch.drop();
    await rm(dataDir, { recursive: true, force: true });
  };
  try {
    await answers(url, child, log);
    const [ownerLink] = /http:\/\/\S+\/invitation\S+/.exec(log()) ?? [];
    if (ownerLink === undefined) throw new Error(`The server printed no link for the owner:\n${log()}`);
    return { url, databaseUrl: scratch.url, dataDir, ownerLink, mails: mail.caught, log, pid: child.pid ?? 0, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}
