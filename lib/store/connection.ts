import "server-only";
import { mkdirSync } from "node:fs";
import path from "node:path";
import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import { PrismaPg } from "@prisma/adapter-pg";
import type Database from "better-sqlite3";
import { providerOf } from "../config/database-url";
import { PrismaClient as PostgresClient } from "./generated/postgresql/client";
import { PrismaClient as SqliteClient } from "./generated/sqlite/client";

/** The client everybody sees. SQLite's is the narrower of the two, so what compiles runs on both. */
export type PlainClient = SqliteClient;

/** How long one connection waits for another process's write lock before it gives up. */
const BUSY_MS = 10_000;
const RETRY_MS = 10;
const POOL_CONNECTIONS = 10;

export const sqliteFile = (url: string): string => url.replace(/^file:/, "");

/** What every connection of ours to a SQLite file is told first. The journal mode is kept in the file, by the migration. */
export function prepareSqlite(db: Database.Database): void {
  db.pragma("synchronous = FULL");
  db.pragma("foreign_keys = ON");
  // What is erased is overwritten with zeros, not left in a free page of the file.
  db.pragma("secure_delete = ON");
  db.pragma(`busy_timeout = ${BUSY_MS}`);
}

/** Tries again, without holding up the event loop as SQLite's own busy timeout would, until another process let go. */
async function takeWriteLock(client: Database.Database): Promise<void> {
  for (const giveUp = Date.now() + BUSY_MS; ;) {
    client.pragma("busy_timeout = 0");
    try {
      client.exec("BEGIN IMMEDIATE");
      return;
    } catch (error) {
      if ((error as { code?: unknown }).code !== "SQLITE_BUSY" || Date.now() > giveUp) throw error;
    } finally {
      client.pragma(`busy_timeout = ${BUSY_MS}`);
    }
    await new Promise((resume) => setTimeout(resume, RETRY_MS * (0.5 + Math.random())));
  }
}

/**
 * A transaction of the adapter starts with a plain BEGIN, which takes no lock and fails later (P1008) when a second writer
 * was quicker; ours takes the write lock first. A snapshot only reads, and must not keep writers out.
 */
class PlainpileSqlite extends PrismaBetterSqlite3 {
  readonly #writes: boolean;
  constructor(url: string, writes: boolean) {
    super({ url, timeout: BUSY_MS });
    this.#writes = writes;
  }
  override async connect() {
    const adapter = await super.connect();
    const { client } = adapter as unknown as { client: Database.Database };
    prepareSqlite(client);
    if (!this.#writes) return adapter;
    const start = adapter.startTransaction.bind(adapter);
    const prepare = client.prepare.bind(client);
    const begun = { run: () => undefined };
    client.prepare = ((sql: string) => (sql === "BEGIN" ? begun : prepare(sql))) as typeof client.prepare;
    adapter.startTransaction = async (isolation) => {
      await takeWriteLock(client);
      return start(isolation);
    };
    return adapter;
  }
}

export interface ConnectionOptions {
  /** Told when an idle connection is lost; the pool opens another. */
  onLost?: (error: Error) => void;
  /** Transactions take the write lock when they begin. SQLite only; PostgreSQL locks rows. */
  writes: boolean;
}

/** A Prisma client on the database of `url`. Opens nothing before its first query. */
export function connect(url: string, { onLost, writes }: ConnectionOptions): PlainClient {
  if (providerOf(url) === "postgresql") {
    const adapter = new PrismaPg(
      { connectionString: url, max: writes ? POOL_CONNECTIONS : 1, connectionTimeoutMillis: BUSY_MS },
      { onPoolError: (e) => onLost?.(e), onConnectionError: (e) => onLost?.(e) },
    );
    return new PostgresClient({ adapter }) as unknown as PlainClient;
  }
  mkdirSync(path.dirname(sqliteFile(url)), { recursive: true });
  return new SqliteClient({ adapter: new PlainpileSqlite(url, writes) });
}
