import "server-only";
import { createReadStream } from "node:fs";
import { mkdir, open } from "node:fs/promises";
import path from "node:path";
import { createInterface } from "node:readline";
import { providerOf } from "../config/database-url";
import { connect } from "./connection";
import type { Prisma } from "./generated/sqlite/client";
import type { Tx } from "./open-store";
import { KEPT_TABLES, PASSING_TABLES, POINTS_AT_ITSELF, tableOf, toWrite, type KeptTable, type Row } from "./tables";

/** Rows read or written at once; few of those that hold whole files. */
const pageOf = (key: KeptTable): number => (key === "document" ? 8 : 200);
const LONG_MS = 60 * 60_000;
export type Counts = Partial<Record<KeptTable, number>>;

const fileOf = (folder: string, key: KeptTable) => path.join(folder, `${key}.jsonl`);

/** Reads at one moment: what is written meanwhile is not seen, and is not held up. */
async function atOneMoment<T>(url: string, read: (tx: Tx) => Promise<T>): Promise<T> {
  const client = connect(url, { writes: false });
  // SQLite's client does not know the name; its plain BEGIN is a snapshot by itself.
  const isolation = providerOf(url) === "postgresql" ? { isolationLevel: "RepeatableRead" as Prisma.TransactionIsolationLevel } : {};
  try {
    return await client.$transaction(read, { timeout: LONG_MS, ...isolation });
  } finally {
    await client.$disconnect();
  }
}

async function dumpTable(tx: Tx, key: KeptTable, file: string): Promise<number> {
  const out = await open(file, "wx", 0o600);
  let count = 0;
  const page = pageOf(key);
  try {
    for (let last: string | null = null; ;) {
      const rows: Row[] = await tableOf(tx, key).findMany({ ...(last === null ? {} : { where: { id: { gt: last } } }), orderBy: { id: "asc" }, take: page });
      for (const row of rows) await out.write(`${JSON.stringify(row)}\n`);
      count += rows.length;
      last = rows.at(-1)?.id ?? null;
      if (rows.length < page) return count;
    }
  } finally {
    await out.close();
  }
}

/** Writes every kept table as JSON, one row a line, the same for both databases. Returns how many rows each has. */
export async function dumpTables(url: string, folder: string): Promise<Counts> {
  await mkdir(folder, { recursive: true, mode: 0o700 });
  return atOneMoment(url, async (tx) => {
    const counts: Counts = {};
    for (const key of KEPT_TABLES) counts[key] = await dumpTable(tx, key, fileOf(folder, key));
    return counts;
  });
}

async function* pagesOf(file: string, rows: number): AsyncGenerator<Row[]> {
  let page: Row[] = [];
  for await (const line of createInterface({ input: createReadStream(file), crlfDelay: Infinity })) {
    if (line !== "") page.push(JSON.parse(line) as Row);
    if (page.length === rows) { yield page; page = []; }
  }
  if (page.length > 0) yield page;
}

async function loadTable(tx: Tx, key: KeptTable, file: string): Promise<number> {
  const table = tableOf(tx, key);
  const own = POINTS_AT_ITSELF[key];
  const pointers: { id: string; to: unknown }[] = [];
  let count = 0;
  for await (const rows of pagesOf(file, pageOf(key))) {
    const data = rows.map((row) => {
      const whole = toWrite(key, row);
      if (own === undefined || whole[own] === undefined) return whole;
      const { [own]: to, ...rest } = whole;
      pointers.push({ id: whole.id, to });
      return rest;
    });
    await table.createMany({ data });
    count += rows.length;
  }
  for (const { id, to } of pointers) await table.updateMany({ where: { id }, data: { [own as string]: to } });
  return count;
}

/** How many rows the kept tables have together. */
export async function rowsIn(tx: Tx): Promise<number> {
  let rows = 0;
  for (const key of KEPT_TABLES) rows += await tableOf(tx, key).count();
  return rows;
}

/**
 * Puts what `dumpTables` wrote in the place of everything that is there. A table that did not exist when it was written is left
 * empty: `written` says which did. The caller's transaction makes it whole or nothing.
 */
export async function loadTables(tx: Tx, folder: string, written: (key: KeptTable) => boolean): Promise<Counts> {
  for (const key of [...PASSING_TABLES, ...[...KEPT_TABLES].reverse()]) await tableOf(tx, key).deleteMany();
  const counts: Counts = {};
  for (const key of KEPT_TABLES) counts[key] = written(key) ? await loadTable(tx, key, fileOf(folder, key)) : 0;
  return counts;
}
