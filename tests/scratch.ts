import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import pg from "pg";

/** An empty database of its own for one test, and how to be rid of it. */
export interface Scratch { url: string; drop(): Promise<void> }
export interface Kind { name: "sqlite" | "postgresql"; empty(): Promise<Scratch> }

export const sqlite: Kind = {
  name: "sqlite",
  async empty() {
    const folder = mkdtempSync(path.join(os.tmpdir(), "plainpile-store-"));
    return { url: `file:${path.join(folder, "test.db")}`, async drop() { rmSync(folder, { recursive: true, force: true }); } };
  },
};

async function onServer(server: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: server, connectionTimeoutMillis: 5_000 });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

/** Databases on the server of `server`, where the account may make some. */
export const postgresql = (server: string): Kind => ({
  name: "postgresql",
  async empty() {
    const name = `plainpile_${randomUUID().replaceAll("-", "")}`;
    await onServer(server, `CREATE DATABASE ${name}`);
    const url = new URL(server);
    url.pathname = `/${name}`;
    return { url: url.href, drop: () => onServer(server, `DROP DATABASE ${name} WITH (FORCE)`) };
  },
});

/** SQLite, and PostgreSQL where PLAINPILE_TEST_POSTGRES names a server. */
export const POSTGRES_SERVER = process.env.PLAINPILE_TEST_POSTGRES;
export const DATABASES: Kind[] = POSTGRES_SERVER ? [sqlite, postgresql(POSTGRES_SERVER)] : [sqlite];
