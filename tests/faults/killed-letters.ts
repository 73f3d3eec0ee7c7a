import { spawn } from "node:child_process";
import { createHash, randomBytes, randomUUID } from "node:crypto";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { deliverDue } from "../../lib/mail/outbox";
import { database, type Letter } from "../../lib/store/database";
import { makeEnquiry, minutes, NOW } from "../unit/mail/make";
import type { AfterDot, Received } from "./mail-server";
import type { RawMailServer } from "./raw-mail-server";

export const POINTS = [
  "before the decision is committed", "after it is committed, before a claim", "when the connection has begun", "after the final dot, before the server's reply", "at the server's reply, before it is recorded",
] as const;
export type Point = (typeof POINTS)[number];

/** What a server does to one letter at its first try. `late` and `refused` come after the dot; the letter is held only by `dropped` and `hung`. */
export type Fault = "none" | "not-now" | "broken" | "late" | "refused" | "dropped" | "hung";
/** The n-th letter's fault: one in three has some. */
const CYCLE: readonly Fault[] = ["none", "not-now", "none", "none", "late", "none", "none", "broken", "none", "none", "dropped", "none", "none", "refused", "none", "none", "hung", "none"];
export const faultOf = (n: number): Fault => CYCLE[n % CYCLE.length] as Fault;
const LEAVES_DOUBT: readonly Fault[] = ["broken", "dropped", "hung"];

/** Names that have to do with headers: each letter has one of them. */
const NAMES = ["Ana Example", "Ana\r\nBcc: evil@example.com", "Ana, evil@example.com, Bo", "Ana ".repeat(200), "דנה \u202eلیلی", "Ana 🧵👩‍🔧", 'Ana "x" <evil@example.com>'] as const;
export const nameOf = (n: number): string => NAMES[n % NAMES.length] as string;
/** Every second letter has the document with it. */
export const enclosedWith = (n: number, documentId: string): string[] => (n % 2 === 0 ? [documentId] : []);

export interface KillJob { enquiryId: string; address: string; documentId: string; first: number; last: number; now: string; silenceMs: number }
export interface Killing { point: Point; letters: number; killedAt: readonly number[]; server: RawMailServer | Omit<RawMailServer, "breaksInData">; databaseUrl: string; isFaulty: boolean; progress?: (share: number) => void }
/** What came of it. `wrong`: every breach, in words. */
export interface Proof { wrong: string[]; rows: number; sent: number; refused: number; copies: number; extra: number; kills: number; doubts: number }

const FILE = randomBytes(60_000);
const SHA = createHash("sha256").update(FILE).digest("hex");

/** An enquiry with a document that can go with its letters. */
async function somebody(): Promise<Pick<KillJob, "enquiryId" | "address" | "documentId">> {
  const { enquiryId, to } = await makeEnquiry();
  const [rugId, documentId] = [randomUUID(), randomUUID()];
  await database().rug.create({ data: { id: rugId, enquiryId, position: 1, title: "A rug" } });
  await database().document.create({ data: { id: documentId, enquiryId, rugId, kind: "care-card", version: 1, title: "Living with a rug", filled: {}, content: {}, pdf: FILE.toString("base64"), sha256: SHA, bytes: FILE.length } });
  return { enquiryId, address: to.address, documentId };
}

/** Sends letters from a child that is killed at `point` of each letter in `killedAt`, another child going on after each; then lets everything settle on a calm server. */
export async function killedLetters({ point, letters, killedAt, server, databaseUrl, isFaulty, progress = () => {} }: Killing): Promise<Proof> {
  const who = await somebody();
  const held: Received[] = [];
  const silenceMs = isFaulty ? 2_000 : 60_000;
  let at = 0;
  let settling = false;
  const fault = (): Fault => (settling || !isFaulty || killedAt.includes(at) ? "none" : faultOf(at));

  async function runChild(first: number, victim: number | null): Promise<NodeJS.Signals | null> {
    const job: KillJob = { ...who, first, last: letters, now: NOW.toISOString(), silenceMs };
    const child = spawn(process.execPath, ["--conditions=react-server", "--import", "tsx", "tests/faults/mail-kill-child.ts", JSON.stringify(job)],
      { env: { ...process.env, DATABASE_URL: databaseUrl, TEST_SMTP_URL: server.url }, stdio: ["pipe", "pipe", "inherit"] });
    const ended = once(child, "exit") as Promise<[number | null, NodeJS.Signals | null]>;
    const kill = (here: Point, n = at) => here === point && n === victim && child.kill("SIGKILL");
    server.onRcpt = () => {
      kill(POINTS[2]);
      return fault() === "not-now" ? { code: 451, say: "4.3.0 not now" } : null;
    };
    if ("breaksInData" in server) server.breaksInData = () => fault() === "broken";
    server.afterDot = (_, message): AfterDot => {
      const f = fault();
      if (f === "late") return { code: 452, say: "4.3.1 later" };
      if (f === "refused") return { code: 554, say: "5.6.0 not wanted here" };
      held.push(message);
      if (f === "dropped") return "drop";
      if (f === "hung" || kill(POINTS[3])) return "hang";
      // By the letter's own number: a quick child may have begun the next one by then, and is held there.
      setImmediate(() => kill(POINTS[4], numberOf(message.mail.subject)));
      return "accept";
    };
    for await (const line of createInterface({ input: child.stdout })) {
      const [where, n] = line.split(" ");
      at = Number(n);
      progress(at / letters);
      const isToDie = point === POINTS[4] && victim !== null && at > victim;
      if (!kill(where === "written" ? POINTS[0] : POINTS[1]) && !isToDie) child.stdin.write("go\n");
    }
    return (await ended)[1];
  }

  const wrong: string[] = [];
  let first = 1;
  for (const victim of killedAt) {
    if ((await runChild(first, victim)) !== "SIGKILL") wrong.push(`The child was not killed at letter ${victim}.`);
    first = victim + 1;
  }
  if ((await runChild(first, null)) !== null) wrong.push("The last child did not come to its end.");
  settling = true;
  for (const later of [30, 60, 90]) await deliverDue(minutes(later));
  const rows = await database().letter.findMany({ where: { enquiryId: who.enquiryId } });
  const expected = Array.from({ length: letters }, (_, i) => i + 1).filter((n) => point !== POINTS[0] || !killedAt.includes(n));
  return judged({ rows, held, expected, who, wrong, killedAt, isFaulty });
}

interface Seen { rows: Letter[]; held: Received[]; expected: number[]; who: { address: string }; wrong: string[]; killedAt: readonly number[]; isFaulty: boolean }
const numberOf = (subject: string | undefined) => Number(subject?.replace("Letter ", ""));

function judged({ rows, held, expected, who, wrong, killedAt, isFaulty }: Seen): Proof {
  const breach = (isSo: boolean, say: string) => { if (isSo) wrong.push(say); };
  const numbers = rows.map((r) => numberOf(r.subject)).sort((a, b) => a - b);
  const missing = expected.filter((n) => !numbers.includes(n)), unexpected = numbers.filter((n, i) => !expected.includes(n) || numbers.indexOf(n) !== i);
  breach(missing.length + unexpected.length > 0, `Not in the outbox: ${missing.join(", ") || "none"}; there and not expected: ${unexpected.join(", ") || "none"}.`);
  breach(new Set(rows.map((r) => r.messageId)).size !== rows.length, "Two letters have one Message-ID.");
  const copies = new Map<string, number>();
  for (const { mail } of held) copies.set(mail.messageId ?? "", (copies.get(mail.messageId ?? "") ?? 0) + 1);
  breach([...copies.keys()].some((id) => !rows.some((r) => r.messageId === id)), "A letter arrived that was rolled back, or under another Message-ID.");
  for (const row of rows) {
    const n = numberOf(row.subject);
    const arrived = copies.get(row.messageId) ?? 0;
    const mayFail = isFaulty && faultOf(n) === "refused" && !killedAt.includes(n);
    breach(row.state !== (mayFail ? "failed" : "sent"), `Letter ${n} ended as ${row.state}.`);
    breach(row.state === "sent" && arrived === 0, `Letter ${n} counts as sent and never arrived.`);
    breach(row.state === "failed" && arrived > 0, `Letter ${n} counts as refused and arrived.`);
    breach(arrived > 1 && !row.lastResponse?.includes("It may have arrived twice."), `Letter ${n} arrived ${arrived} times and the desk does not say so.`);
  }
  for (const { to, mail } of held) {
    const n = numberOf(mail.subject);
    breach(to.length !== 1 || to[0] !== who.address, `Letter ${n} went to ${to.join(" and ")}.`);
    const files = mail.attachments.map((a) => createHash("sha256").update(a.content).digest("hex"));
    breach(JSON.stringify(files) !== JSON.stringify(enclosedWith(n, SHA)), `Letter ${n} arrived without its document, or with another.`);
  }
  const doubts = isFaulty ? expected.filter((n) => LEAVES_DOUBT.includes(faultOf(n)) && !killedAt.includes(n)).length : 0;
  const extra = held.length - copies.size;
  breach(extra > killedAt.length + doubts, `${extra} copies too many after ${killedAt.length} kills and ${doubts} broken connections.`);
  const inState = (state: Letter["state"]) => rows.filter((r) => r.state === state).length;
  return { wrong, rows: rows.length, sent: inState("sent"), refused: inState("failed"), copies: held.length, extra, kills: killedAt.length, doubts };
}
