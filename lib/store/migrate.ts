import "server-only";
import { createHash } from "node:crypto";
import { mkdirSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { providerOf } from "../config/database-url";
import { sqliteFile } from "./connection";
import { migratePostgres } from "./migrate-postgres";
import { migrateSqlite } from "./migrate-sqlite";
import type { Migration } from "./pending-migrations";

async function migrationsIn(folder: string): Promise<Migration[]> {
  const names = (await readdir(folder, { withFileTypes: true })).filter((d) => d.isDirectory()).map((d) => d.name).sort();
  return Promise.all(names.map(async (name) => {
    const sql = await readFile(path.join(folder, name, "migration.sql"), "utf8");
    return { name, sql, checksum: createHash("sha256").update(sql).digest("hex") };
  }));
}

/** Names of the migrations of this version, oldest first. */
export const migrationNames = async (url: string, root: string): Promise<string[]> =>
  (await migrationsIn(path.join(root, providerOf(url)))).map((m) => m.name);

/**
 * Brings the database of `url` up to the newest migration below `root/<provider>`. One process at a time: a second one
 * waits and then finds nothing to do. Each migration is applied wholly or not at all. Returns the names applied.
 */
export async function applyMigrations(url: string, root: string): Promise<string[]> {
  const provider = providerOf(url);
  const all = await migrationsIn(path.join(root, provider));
  if (provider === "postgresql") return migratePostgres(url, all);
  const file = sqliteFile(url);
  mkdirSync(path.dirname(file), { recursive: true });
  return migrateSqlite(file, all);
}
