import { execFile } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { promisify } from "node:util";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { applyMigrations } from "../../lib/store/migrate";
import { openStore, type Store } from "../../lib/store/open-store";
import { pendingOf } from "../../lib/store/pending-migrations";
import { DATABASES, sqlite, type Scratch } from "../scratch";
import { migrated, MIGRATIONS } from "./databases";
import { writeOneOfEach } from "./every-model";
import { introspectPostgres, introspectSqlite } from "./introspect";
import { tablesOf, type Table } from "./models-file";

const run = promisify(execFile);
const sorted = (t: Table): Table => ({
  columns: [...t.columns].sort((a, b) => a.name.localeCompare(b.name)),
  uniques: [...t.uniques].sort(), indexes: [...t.indexes].sort(), foreignKeys: [...t.foreignKeys].sort(),
});
const TYPES = {
  sqlite: { String: "TEXT", Int: "INTEGER", Float: "REAL", BigInt: "BIGINT", Boolean: "BOOLEAN", DateTime: "DATETIME", Json: "JSONB", enum: () => "TEXT" },
  postgresql: { String: "text", Int: "integer", Float: "double precision", BigInt: "bigint", Boolean: "boolean", DateTime: "timestamp without time zone", Json: "jsonb", enum: (name: string) => name },
};

let scratch: Scratch | undefined;
let folder: string;
let store: Store | undefined;
beforeEach(() => { folder = mkdtempSync(path.join(os.tmpdir(), "plainpile-migrations-")); });
afterEach(async () => {
  await store?.close();
  store = undefined;
  await scratch?.drop();
  scratch = undefined;
  rmSync(folder, { recursive: true, force: true });
});

/** The project's migrations and one more. */
function migrationsAnd(provider: string, name: string, sql: string): string {
  cpSync(MIGRATIONS, folder, { recursive: true });
  const another = path.join(folder, provider, name);
  mkdirSync(another);
  writeFileSync(path.join(another, "migration.sql"), sql);
  return folder;
}

describe.each(DATABASES)("migrations on $name", (kind) => {
  const withAnother = (name: string, sql: string) => migrationsAnd(kind.name, name, sql);

  it("make the tables, columns, indexes and keys that models.prisma asks for", async () => {
    const { url } = (scratch = await migrated(kind));
    const { tables, enums } = tablesOf("prisma/schema/models.prisma");
    const types = TYPES[kind.name];
    const typed = (t: Table): Table => sorted({
      ...t,
      columns: t.columns.map((c) => ({ ...c, type: c.type in enums ? types.enum(c.type) : types[c.type as Exclude<keyof typeof types, "enum">] })),
    });
    const asked = Object.fromEntries(Object.entries(tables).map(([name, t]) => [name, typed(t)]));
    const found = kind.name === "sqlite" ? { tables: introspectSqlite(url), enums } : await introspectPostgres(url);
    expect(Object.keys(asked).length).toBeGreaterThan(20);
    expect(Object.fromEntries(Object.entries(found.tables).map(([name, t]) => [name, sorted(t)]))).toEqual(asked);
    expect(found.enums).toEqual(enums);
  });

  it("are applied once, by one of two processes that start together", async () => {
    const { url } = (scratch = await kind.empty());
    const child = () => run(process.execPath, ["--conditions=react-server", "--import", "tsx", "tests/store/migrate-child.ts"], { env: { ...process.env, DATABASE_URL: url } });
    const said = (await Promise.all([child(), child(), child()])).map(({ stdout }) => JSON.parse(stdout) as string[]);
    const applied = said.filter((names) => names.length > 0);
    expect(applied).toHaveLength(1);
    expect(await applyMigrations(url, MIGRATIONS)).toEqual([]);
  });

  it("leave nothing of a migration that fails half way, and go on once it is mended", async () => {
    const { url } = (scratch = await migrated(kind));
    const good = `CREATE TABLE "Extra" ("id" TEXT NOT NULL PRIMARY KEY);`;
    const root = withAnother("9000_extra", `${good} INSERT INTO "Nowhere" VALUES (1);`);
    await expect(applyMigrations(url, root)).rejects.toThrow(/nowhere/i);
    store = openStore(url);
    await expect(store.client.$queryRawUnsafe(`SELECT * FROM "Extra"`)).rejects.toThrow();
    writeFileSync(path.join(root, kind.name, "9000_extra", "migration.sql"), good);
    expect(await applyMigrations(url, root)).toEqual(["9000_extra"]);
    expect(await store.client.$queryRawUnsafe(`SELECT * FROM "Extra"`)).toEqual([]);
  });

  it("refuse a database that is newer than the program, and a migration that was changed afterwards", async () => {
    const { url } = (scratch = await kind.empty());
    const root = withAnother("9000_extra", `CREATE TABLE "Extra" ("id" TEXT NOT NULL PRIMARY KEY);`);
    await applyMigrations(url, root);
    await expect(applyMigrations(url, MIGRATIONS)).rejects.toThrow("older than the database");
    writeFileSync(path.join(root, kind.name, "9000_extra", "migration.sql"), "SELECT 1;");
    await expect(applyMigrations(url, root)).rejects.toThrow("changed after it was applied");
  });
});

describe("migrations on SQLite", () => {
  const withAnother = (name: string, sql: string) => migrationsAnd("sqlite", name, sql);

  it("keep the rows that point at a table which Prisma rebuilds", async () => {
    const { url } = (scratch = await migrated(sqlite));
    store = openStore(url);
    await store.transact(writeOneOfEach);
    await store.close();
    const rebuild = `PRAGMA defer_foreign_keys=ON; PRAGMA foreign_keys=OFF;
      CREATE TABLE "new_Rug" ("id" TEXT NOT NULL PRIMARY KEY, "enquiryId" TEXT NOT NULL, "position" INTEGER NOT NULL, "title" TEXT NOT NULL DEFAULT '',
        CONSTRAINT "Rug_enquiryId_fkey" FOREIGN KEY ("enquiryId") REFERENCES "Enquiry" ("id") ON DELETE CASCADE ON UPDATE CASCADE);
      INSERT INTO "new_Rug" SELECT "id", "enquiryId", "position", "title" FROM "Rug"; DROP TABLE "Rug"; ALTER TABLE "new_Rug" RENAME TO "Rug";
      PRAGMA foreign_keys=ON; PRAGMA defer_foreign_keys=OFF;`;
    expect(await applyMigrations(url, withAnother("9000_rebuild", rebuild))).toEqual(["9000_rebuild"]);
    store = openStore(url);
    expect(await store.client.rug.count()).toBe(1);
    expect(await store.client.answer.count()).toBe(1);
    expect(await store.client.photo.count()).toBe(1);
  });

  it("refuse to leave rows that point at nothing", async () => {
    const { url } = (scratch = await migrated(sqlite));
    store = openStore(url);
    await store.transact(writeOneOfEach);
    await store.close();
    await expect(applyMigrations(url, withAnother("9000_drop", `DELETE FROM "Rug";`))).rejects.toThrow("point at nothing");
    store = openStore(url);
    expect(await store.client.rug.count()).toBe(1);
  });
});

describe("pendingOf", () => {
  const migration = (name: string) => ({ name, sql: "", checksum: `sum of ${name}` });
  const applied = (name: string, finished = true) => ({ name, checksum: `sum of ${name}`, finished });

  it("is everything on an empty database, the rest on a known one, in order", () => {
    const all = [migration("1"), migration("2"), migration("3")];
    expect(pendingOf(all, []).map((m) => m.name)).toEqual(["1", "2", "3"]);
    expect(pendingOf(all, [applied("1")]).map((m) => m.name)).toEqual(["2", "3"]);
    expect(pendingOf(all, all.map((m) => applied(m.name)))).toEqual([]);
  });

  it("names the migration that failed earlier under another tool", () => {
    expect(() => pendingOf([migration("1")], [applied("1", false)])).toThrow("The migration 1 failed earlier");
  });
});
