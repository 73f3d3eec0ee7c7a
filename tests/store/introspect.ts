import Database from "better-sqlite3";
import pg from "pg";
import { sqliteFile } from "../../lib/store/connection";
import type { Table } from "./models-file";

/** What the tables of a database really are, in the words of models-file.ts; types are the database's own. */
export function introspectSqlite(url: string): Record<string, Table> {
  const db = new Database(sqliteFile(url), { readonly: true });
  try {
    const names = db.prepare(`SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE '\\_%' ESCAPE '\\' AND name NOT LIKE 'sqlite_%'`).pluck().all() as string[];
    const ask = <T>(pragma: string) => db.pragma(pragma) as T[];
    return Object.fromEntries(names.map((table) => {
      const columns = ask<{ name: string; type: string; notnull: number }>(`table_info("${table}")`).map((c) => ({ name: c.name, type: c.type, optional: c.notnull === 0 }));
      const indexes = ask<{ name: string; unique: number; origin: string }>(`index_list("${table}")`).filter((i) => i.origin === "c")
        .map((i) => ({ unique: i.unique === 1, fields: ask<{ name: string }>(`index_info("${i.name}")`).map((f) => f.name).join(", ") }));
      const foreignKeys = ask<{ from: string; table: string; to: string; on_delete: string }>(`foreign_key_list("${table}")`)
        .map((f) => `${f.from} > ${f.table}.${f.to}, delete ${f.on_delete}`);
      return [table, { columns, foreignKeys, uniques: indexes.filter((i) => i.unique).map((i) => i.fields), indexes: indexes.filter((i) => !i.unique).map((i) => i.fields) }];
    }));
  } finally {
    db.close();
  }
}

const COLUMNS = `SELECT table_name AS t, column_name AS name, is_nullable = 'YES' AS optional, CASE data_type WHEN 'USER-DEFINED' THEN udt_name ELSE data_type END AS type
  FROM information_schema.columns WHERE table_schema = 'public' AND table_name NOT LIKE '\\_%' ORDER BY ordinal_position`;
const INDEXES = `SELECT c.relname AS t, i.indisunique AS "unique", (SELECT string_agg(a.attname, ', ' ORDER BY k.n) FROM unnest(i.indkey::int[]) WITH ORDINALITY k(att, n)
  JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum = k.att) AS fields FROM pg_index i JOIN pg_class c ON c.oid = i.indrelid
  JOIN pg_namespace s ON s.oid = c.relnamespace WHERE s.nspname = 'public' AND NOT i.indisprimary AND c.relname NOT LIKE '\\_%'`;
const KEYS = `SELECT c.conrelid::regclass::text AS t, a.attname AS "from", c.confrelid::regclass::text AS "to", b.attname AS field, c.confdeltype AS del FROM pg_constraint c
  JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = c.conkey[1] JOIN pg_attribute b ON b.attrelid = c.confrelid AND b.attnum = c.confkey[1] WHERE c.contype = 'f'`;
const ON_DELETE: Record<string, string> = { c: "CASCADE", r: "RESTRICT", n: "SET NULL", a: "NO ACTION" };

export async function introspectPostgres(url: string): Promise<{ tables: Record<string, Table>; enums: Record<string, string[]> }> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const tables: Record<string, Table> = {};
    const of = (t: string) => (tables[t.replaceAll('"', "")] ??= { columns: [], uniques: [], indexes: [], foreignKeys: [] });
    for (const r of (await client.query<{ t: string; name: string; optional: boolean; type: string }>(COLUMNS)).rows) of(r.t).columns.push({ name: r.name, type: r.type, optional: r.optional });
    for (const r of (await client.query<{ t: string; unique: boolean; fields: string }>(INDEXES)).rows) of(r.t)[r.unique ? "uniques" : "indexes"].push(r.fields);
    for (const r of (await client.query<{ t: string; from: string; to: string; field: string; del: string }>(KEYS)).rows) {
      of(r.t).foreignKeys.push(`${r.from} > ${r.to.replaceAll('"', "")}.${r.field}, delete ${ON_DELETE[r.del]}`);
    }
    const values = await client.query<{ name: string; label: string }>(`SELECT t.typname AS name, e.enumlabel AS label FROM pg_enum e JOIN pg_type t ON t.oid = e.enumtypid ORDER BY e.enumsortorder`);
    const enums: Record<string, string[]> = {};
    for (const r of values.rows) (enums[r.name] ??= []).push(r.label);
    return { tables, enums };
  } finally {
    await client.end();
  }
}
