import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { config } from "../../lib/config/config";
import { deliverDue } from "../../lib/mail/outbox";
import { closeDatabase, database } from "../../lib/store/database";
import { DATABASES, type Scratch } from "../scratch";
import { migrated } from "../store/databases";
import { OUR_ADDRESS, makeEnquiry, minutes, NOW } from "../unit/mail/make";
import { startMailServer, type MailServer } from "./mail-server";

const LETTERS = 10;
/** The child is killed while it is busy with these letters; the next child goes on after them. */
const KILLED_AT = [4, 8];
const POINTS = [
  "before the decision is committed", "after it is committed, before a claim", "when the connection has begun", "after the final dot, before the server's reply", "at the server's reply, before it is recorded",
] as const;
type Point = (typeof POINTS)[number];

describe.each(DATABASES)("kill -9 while letters are sent, on $name", (kind) => {
  let scratch: Scratch;
  let server: MailServer;

  beforeAll(async () => {
    scratch = await migrated(kind);
    config.databaseUrl = scratch.url;
    await closeDatabase();
  });
  afterAll(async () => {
    await closeDatabase();
    await scratch.drop();
  });
  beforeEach(async () => {
    server = await startMailServer();
    config.smtp = { url: server.url, from: OUR_ADDRESS };
    await database().letter.deleteMany({});
  });
  afterEach(async () => {
    config.smtp = null;
    await server.close();
  });

  function start(job: { enquiryId: string; address: string; first: number; last: number }): ChildProcess {
    return spawn(process.execPath, ["--conditions=react-server", "--import", "tsx", "tests/faults/mail-kill-child.ts", JSON.stringify({ ...job, now: NOW.toISOString() })],
      { env: { ...process.env, DATABASE_URL: scratch.url, TEST_SMTP_URL: server.url }, stdio: ["pipe", "pipe", "inherit"] });
  }

  /** Runs one child from letter `first` until it is killed at `point` of letter `victim`, or to its end. */
  async function run(point: Point, victim: number | null, job: { enquiryId: string; address: string; first: number; last: number }): Promise<NodeJS.Signals | null> {
    const child = start(job);
    const ended = once(child, "exit") as Promise<[number | null, NodeJS.Signals | null]>;
    let at = job.first;
    const kill = (here: Point) => {
      if (here !== point || at !== victim) return false;
      child.kill("SIGKILL");
      return true;
    };
    server.onRcpt = () => {
      kill(POINTS[2]);
      return null;
    };
    server.afterDot = () => {
      if (kill(POINTS[3])) return "hang";
      setImmediate(() => kill(POINTS[4]));
      return "accept";
    };
    for await (const line of createInterface({ input: child.stdout! })) {
      const [where, n] = line.split(" ");
      at = Number(n);
      if (!kill(where === "written" ? POINTS[0] : POINTS[1])) child.stdin!.write("go\n");
    }
    return (await ended)[1];
  }

  it.each(POINTS)(`loses and doubles nothing beyond the kills: %s`, async (point) => {
    const { enquiryId, to } = await makeEnquiry();
    const job = { enquiryId, address: to.address, last: LETTERS };
    let first = 1;
    for (const victim of KILLED_AT) {
      expect(await run(point, victim, { ...job, first })).toBe("SIGKILL");
      first = victim + 1;
    }
    expect(await run(point, null, { ...job, first })).toBeNull();
    server.onRcpt = () => null;
    server.afterDot = () => "accept";
    await deliverDue(minutes(30));

    const rows = await database().letter.findMany({ orderBy: { createdAt: "asc" } });
    const rolledBack = point === POINTS[0] ? KILLED_AT : [];
    const committed = Array.from({ length: LETTERS }, (_, at) => at + 1).filter((n) => !rolledBack.includes(n));
    expect(rows.map((r) => r.subject).sort()).toEqual(committed.map((n) => `Letter ${n}`).sort());
    expect(rows.every((r) => r.state === "sent")).toBe(true);
    expect(new Set(rows.map((r) => r.messageId)).size).toBe(rows.length);

    const copies = new Map<string, number>();
    for (const { mail } of server.received) copies.set(mail.messageId ?? "", (copies.get(mail.messageId ?? "") ?? 0) + 1);
    expect([...copies.keys()].sort()).toEqual(rows.map((r) => r.messageId).sort());
    expect(server.received.length - rows.length).toBeLessThanOrEqual(KILLED_AT.length);
    const doubled = rows.filter((r) => (copies.get(r.messageId) ?? 0) > 1);
    for (const row of doubled) expect(row.lastResponse).toContain("It may have arrived twice.");
    if (point === POINTS[3]) expect(doubled).toHaveLength(KILLED_AT.length);
  }, 240_000);
});
