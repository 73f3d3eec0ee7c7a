import "server-only";
import { randomUUID } from "node:crypto";
import pg from "pg";
import { pendingOf, type Applied, type Migration } from "./pending-migrations";

/** Any fixed number will do; it only has to be ours. */
const LOCK = 7_204_611;
const TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" ("id" VARCHAR(36) PRIMARY KEY NOT NULL, "checksum" VARCHAR(64) NOT NULL,
  "finished_at" TIMESTAMPTZ, "migration_name" VARCHAR(255) NOT NULL, "logs" TEXT, "rolled_back_at" TIMESTAMPTZ,
  "started_at" TIMESTAMPTZ NOT NULL DEFAULT now(), "applied_steps_count" INTEGER NOT NULL DEFAULT 0)`;

async function appliedIn(client: pg.Client): Promise<Applied[]> {
  const { rows } = await client.query<{ migration_name: string; checksum: string; finished_at: Date | null }>(
    `SELECT migration_name, checksum, finished_at FROM "_prisma_migrations" WHERE rolled_back_at IS NULL`);
  return rows.map((r) => ({ name: r.migration_name, checksum: r.checksum, finished: r.finished_at !== null }));
}

async function apply(client: pg.Client, { name, sql, checksum }: Migration): Promise<void> {
  await client.query("BEGIN");
  try {
    await client.query(sql);
    await client.query(
      `INSERT INTO "_prisma_migrations" ("id", "checksum", "migration_name", "started_at", "finished_at", "applied_steps_count")
       VALUES ($1, $2, $3, now(), now(), 1)`, [randomUUID(), checksum, name]);
    await client.query("COMMIT");
  } catch (error) {
    await client.query("ROLLBACK");
    throw error;
  }
}

/** The lock belongs to the connection: it goes when the connection does, also when the process is killed. */
export async function migratePostgres(url: string, all: readonly Migration[]): Promise<string[]> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    await client.query("SELECT pg_advisory_lock($1)", [LOCK]);
    await client.query(TABLE);
    const pending = pendingOf(all, await appliedIn(client));
    for (const migration of pending) await apply(client, migration);
    return pending.map((m) => m.name);
  } finally {
    await client.end();
  }
}
