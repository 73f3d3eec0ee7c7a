import "server-only";
import { randomUUID } from "node:crypto";
import Database from "better-sqlite3";
import { prepareSqlite } from "./connection";
import { MigrationError, pendingOf, type Applied, type Migration } from "./pending-migrations";

const LOCK_WAIT_MS = 120_000;
const TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" ("id" TEXT PRIMARY KEY NOT NULL, "checksum" TEXT NOT NULL,
  "finished_at" DATETIME, "migration_name" TEXT NOT NULL, "logs" TEXT, "rolled_back_at" DATETIME,
  "started_at" DATETIME NOT NULL DEFAULT current_timestamp, "applied_steps_count" INTEGER UNSIGNED NOT NULL DEFAULT 0)`;

function appliedIn(db: Database.Database): Applied[] {
  const rows = db.prepare(`SELECT migration_name, checksum, finished_at FROM "_prisma_migrations" WHERE rolled_back_at IS NULL`)
    .all() as { migration_name: string; checksum: string; finished_at: unknown }[];
  return rows.map((r) => ({ name: r.migration_name, checksum: r.checksum, finished: r.finished_at !== null }));
}

/**
 * Foreign keys are off before the transaction begins: Prisma rebuilds a table by dropping it, which would delete the rows
 * that point at it, and inside a transaction SQLite ignores the migration's own attempt to switch them off.
 */
function apply(db: Database.Database, { name, sql, checksum }: Migration): void {
  db.pragma("foreign_keys = OFF");
  db.exec("BEGIN IMMEDIATE");
  try {
    db.exec(sql);
    const broken = db.pragma("foreign_key_check") as unknown[];
    if (broken.length > 0) throw new MigrationError(`The migration ${name} would leave ${broken.length} rows that point at nothing.`);
    const now = Date.now();
    db.prepare(`INSERT INTO "_prisma_migrations" ("id", "checksum", "migration_name", "started_at", "finished_at", "applied_steps_count")
      VALUES (?, ?, ?, ?, ?, 1)`).run(randomUUID(), checksum, name, now, now);
    db.exec("COMMIT");
  } catch (error) {
    if (db.inTransaction) db.exec("ROLLBACK");
    throw error;
  } finally {
    db.pragma("foreign_keys = ON");
  }
}

/** The lock is a file of its own, held by an open transaction: the operating system drops it if the holder is killed. */
export function migrateSqlite(file: string, all: readonly Migration[]): string[] {
  const lock = new Database(`${file}.migrate-lock`, { timeout: LOCK_WAIT_MS });
  try {
    lock.exec("BEGIN EXCLUSIVE");
    const db = new Database(file);
    try {
      prepareSqlite(db);
      // In any other mode a reader from outside makes COMMIT fail and leaves the transaction open.
      if (db.pragma("journal_mode", { simple: true }) !== "wal") db.pragma("journal_mode = WAL");
      db.exec(TABLE);
      const pending = pendingOf(all, appliedIn(db));
      for (const migration of pending) apply(db, migration);
      return pending.map((m) => m.name);
    } finally {
      db.close();
    }
  } finally {
    lock.close();
  }
}
