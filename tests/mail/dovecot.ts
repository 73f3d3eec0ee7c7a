import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { chownSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import net from "node:net";
import os from "node:os";
import path from "node:path";
import type { ImapBox } from "../../lib/config/imap-url";
import { passedOver } from "../programs";

const DOVECOT = "/usr/sbin/dovecot";
const PASSWORD = "loopback-only";
const START_MS = 20_000;

/** Why there is no Dovecot to test against; null where there is one. Its settings have other names from 2.4 on. */
export function whyNoDovecot(): string | null {
  if (!existsSync(DOVECOT)) return passedOver("Debian's dovecot-imapd is not installed.");
  const version = execFileSync(DOVECOT, ["--version"], { encoding: "utf8" });
  return version.startsWith("2.3.") ? null : passedOver(`this Dovecot is ${version.trim()}, and the tests know 2.3.`);
}

export interface Dovecot {
  box: ImapBox;
  /** Delivers a message as a mail server does: whole, into the inbox. */
  deliver(bytes: Buffer): void;
  /** Names in the inbox by folder of the Maildir; a name ends in ":2," and its flags. */
  names(): { new: string[]; cur: string[] };
  /** Numbers the mailbox anew, as after a restore of the server. */
  renumber(): void;
  stop(): Promise<void>;
}

async function freePort(): Promise<number> {
  const probe = net.createServer().listen(0, "127.0.0.1");
  await once(probe, "listening");
  const { port } = probe.address() as net.AddressInfo;
  probe.close();
  await once(probe, "close");
  return port;
}

/** Dovecot refuses to give mail to root, so root lets it run as nobody. */
const runAs = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534, user: "nobody", group: "nogroup" } : null;

const settings = (folder: string, port: number, user: string, group: string) => `
protocols = imap
listen = 127.0.0.1
base_dir = ${folder}/run
state_dir = ${folder}/state
log_path = ${folder}/log
ssl = no
disable_plaintext_auth = no
default_internal_user = ${user}
default_internal_group = ${group}
default_login_user = ${user}
first_valid_uid = 1
mail_location = maildir:${folder}/mail
passdb {
  driver = static
  args = password=${PASSWORD}
}
userdb {
  driver = static
  args = uid=${user} gid=${group} home=${folder}
}
service imap-login {
  chroot =
  inet_listener imap {
    port = ${port}
  }
  inet_listener imaps {
    port = 0
  }
}
service anvil {
  chroot =
}
`;

/** A Dovecot of its own on the loopback address, with one mailbox in a temporary folder. */
export async function startDovecot(): Promise<Dovecot> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "plainpile-dovecot-"));
  const port = await freePort();
  const own = os.userInfo();
  const group = runAs?.group ?? execFileSync("id", ["-gn"], { encoding: "utf8" }).trim();
  const give = (file: string) => { if (runAs) chownSync(file, runAs.uid, runAs.gid); };
  give(folder);
  for (const part of ["run", "state", "mail", "mail/new", "mail/cur", "mail/tmp"]) {
    mkdirSync(path.join(folder, part));
    give(path.join(folder, part));
  }
  const file = path.join(folder, "dovecot.conf");
  writeFileSync(file, settings(folder, port, runAs?.user ?? own.username, group), { mode: 0o644 });
  const child = spawn(DOVECOT, ["-F", "-c", file], { stdio: "ignore", ...(runAs ? { uid: runAs.uid, gid: runAs.gid } : {}) });
  const mail = (part: string) => path.join(folder, "mail", part);
  let count = 0;
  await answers(port, () => child.exitCode);
  return {
    box: { host: "127.0.0.1", port, isTls: false, user: "desk", password: PASSWORD, folder: "INBOX" },
    deliver(bytes) {
      const name = `${Math.floor(Date.now() / 1000)}.M${++count}P${process.pid}.localhost`;
      writeFileSync(path.join(mail("tmp"), name), bytes);
      give(path.join(mail("tmp"), name));
      renameSync(path.join(mail("tmp"), name), path.join(mail("new"), name));
    },
    names: () => ({ new: readdirSync(mail("new")), cur: readdirSync(mail("cur")) }),
    renumber() {
      const list = readFileSync(mail("dovecot-uidlist"), "utf8");
      for (const name of readdirSync(mail("."))) if (name.startsWith("dovecot")) rmSync(mail(name), { recursive: true });
      writeFileSync(mail("dovecot-uidlist"), list.replace(/^3 V(\d+)/u, (_, validity: string) => `3 V${Number(validity) + 1}`));
      give(mail("dovecot-uidlist"));
    },
    async stop() {
      if (child.exitCode === null) {
        child.kill("SIGTERM");
        await once(child, "exit");
      }
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Until it greets. */
async function answers(port: number, ended: () => number | null): Promise<void> {
  for (const giveUp = Date.now() + START_MS; Date.now() < giveUp && ended() === null;) {
    const greeting = await new Promise<string>((resolve) => {
      const socket = net.connect(port, "127.0.0.1", () => undefined);
      socket.once("data", (data) => { resolve(data.toString()); socket.destroy(); });
      socket.once("error", () => resolve(""));
    });
    if (greeting.startsWith("* OK")) return;
    await new Promise((resume) => setTimeout(resume, 50));
  }
  throw new Error(`Dovecot did not start (it ended with ${ended()}).`);
}
