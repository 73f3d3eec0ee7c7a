import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { sqliteFile } from "../../lib/store/connection";
import { PrismaClient } from "../../lib/store/generated/sqlite/client";
import { openStore, type Store } from "../../lib/store/open-store";
import { sqlite, type Scratch } from "../scratch";
import { migrated } from "./databases";

/*
 * Three defects of the bare client on SQLite. Each case first shows the loss without our remedy, so that it is known to
 * be able to fail, and then its absence behind the store.
 */
let scratch: Scratch;
let file: string;
let store: Store;
const opened: { $disconnect(): Promise<void> }[] = [];
const readers: Database.Database[] = [];

beforeEach(async () => {
  scratch = await migrated(sqlite);
  file = sqliteFile(scratch.url);
  store = openStore(scratch.url);
});
afterEach(async () => {
  for (const reader of readers.splice(0)) reader.close();
  for (const client of opened.splice(0)) await client.$disconnect();
  await store.close();
  await scratch.drop();
});

function bare(timeout = 200): PrismaClient {
  const client = new PrismaClient({ adapter: new PrismaBetterSqlite3({ url: scratch.url, timeout }) });
  opened.push(client);
  return client;
}
const named = (id: string) => ({ data: { id, name: id } });
const turnOfTheLoop = () => new Promise((resume) => setImmediate(resume));

type Transact = (work: (tx: { client: PrismaClient["client"] }) => Promise<void>) => Promise<void>;
type Client = Pick<PrismaClient, "client">;

/** A request writes plainly while another one's transaction is open, which then rolls back. Which rows are there? */
async function writeBesideRollback(db: Client, transact: Transact): Promise<string[]> {
  let isOpen!: () => void;
  const open = new Promise<void>((resolve) => { isOpen = resolve; });
  const rolledBack = transact(async (tx) => {
    await tx.client.create(named("theirs"));
    isOpen();
    await turnOfTheLoop();
    await turnOfTheLoop();
    throw new Error("rolled back");
  }).catch(() => undefined);
  await open;
  await db.client.create(named("acknowledged"));
  await rolledBack;
  return (await db.client.findMany()).map((c) => c.id);
}

describe("an acknowledged write beside a transaction that rolls back", () => {
  it("is lost by the bare client", async () => {
    const client = bare();
    expect(await writeBesideRollback(client, (work) => client.$transaction(work))).toEqual([]);
  });

  it("is kept by the store", async () => {
    expect(await writeBesideRollback(store.client, (work) => store.transact(work))).toEqual(["acknowledged"]);
  });
});

/** Two transactions read, and then both write. */
async function twoWriters(first: Transact, second: Transact): Promise<PromiseSettledResult<void>[]> {
  let firstHasRead!: () => void;
  const read = new Promise<void>((resolve) => { firstHasRead = resolve; });
  const one = first(async (tx) => {
    await tx.client.count();
    firstHasRead();
    await turnOfTheLoop();
    await turnOfTheLoop();
    await tx.client.create(named("one"));
  });
  const two = read.then(() => second(async (tx) => {
    await tx.client.count();
    await tx.client.create(named("two"));
  }));
  return Promise.allSettled([one, two]);
}

describe("two writers that read before they write", () => {
  it("fail with P1008 behind a plain BEGIN", async () => {
    const [a, b] = [bare(), bare()];
    const ends = await twoWriters((work) => a.$transaction(work), (work) => b.$transaction(work));
    expect(ends.filter((e) => e.status === "rejected").map((e) => (e.reason as { code: string }).code)).toContain("P1008");
  });

  it("both succeed behind the store's BEGIN IMMEDIATE", async () => {
    const other = openStore(scratch.url);
    opened.push({ $disconnect: () => other.close() });
    const ends = await twoWriters((work) => store.transact(work), (work) => other.transact(work));
    expect(ends.map((e) => e.status)).toEqual(["fulfilled", "fulfilled"]);
    expect(await store.client.client.count()).toBe(2);
  });
});

/** A program from outside (a backup, a person with a shell) in the middle of reading. */
function readerFromOutside(): Database.Database {
  const reader = new Database(file);
  readers.push(reader);
  reader.exec("BEGIN");
  reader.prepare(`SELECT count(*) FROM "Client"`).get();
  return reader;
}

describe("a reader from outside while a transaction commits", () => {
  it("leaves the client unusable in SQLite's default journal mode", async () => {
    await store.close();
    const plain = new Database(file);
    plain.pragma("journal_mode = DELETE");
    plain.close();
    const client = bare();
    const reader = readerFromOutside();
    const add = (id: string) => client.$transaction(async (tx) => { await tx.client.create(named(id)); }, { maxWait: 500, timeout: 1_000 });
    await expect(add("first")).rejects.toThrow();
    reader.exec("COMMIT");
    await expect(add("after the reader has gone")).rejects.toThrow();
  });

  it("disturbs nothing behind the store, whose file is in WAL mode", async () => {
    const reader = readerFromOutside();
    await store.transact(async (tx) => { await tx.client.create(named("first")); });
    reader.exec("COMMIT");
    await store.transact(async (tx) => { await tx.client.create(named("second")); });
    expect(await store.client.client.count()).toBe(2);
  });

  it("is answered by settings that hold: WAL, full synchronisation, foreign keys, a busy timeout", async () => {
    const one = async (pragma: string) => Object.values((await store.client.$queryRawUnsafe<Record<string, unknown>[]>(`PRAGMA ${pragma}`))[0] ?? {})[0];
    expect(String(await one("journal_mode"))).toBe("wal");
    expect(Number(await one("synchronous"))).toBe(2);
    expect(Number(await one("foreign_keys"))).toBe(1);
    expect(Number(await one("busy_timeout"))).toBeGreaterThanOrEqual(5_000);
  });
});

describe("BEGIN IMMEDIATE while another process holds the write lock", () => {
  it("waits without stopping everything else, and then goes through", async () => {
    const holder = new Database(file);
    readers.push(holder);
    holder.exec("BEGIN IMMEDIATE");
    const waiting = store.transact(async (tx) => { await tx.client.create(named("after")); });
    let turns = 0;
    while (turns < 50) { await turnOfTheLoop(); turns++; }
    holder.exec("COMMIT");
    await waiting;
    expect(await store.client.client.count()).toBe(1);
  });
});
