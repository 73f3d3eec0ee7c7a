import path from "node:path";
import { buildSync } from "esbuild";
import { describe, expect, it } from "vitest";
import { TABLES } from "../../../lib/trade/tables";
import type { FactTable, TableRow } from "../../../lib/trade/table";
import type { Assessment, TriageSettings } from "../../../lib/triage/assessment";
import type { Finding } from "../../../lib/triage/finding";
import { CASES, type Case } from "./covering-cases";

/**
 * Changing any row of any table moves some output of `assess`; a row that moves nothing is dead. Much is worked out from
 * the tables when they are loaded, so all modules are packed into one program that can be begun anew with a changed table.
 */
const AS_OF = "2026-03-01T09:00:00Z";
interface Program {
  readonly TABLES: readonly FactTable[];
  readonly assess: (findings: readonly Finding[], settings: TriageSettings, asOf: string) => Assessment;
  readonly defaultSettings: (partial: Partial<TriageSettings>) => TriageSettings;
}
const entry = `module.exports = (change) => { const { TABLES } = require("./lib/trade/tables.ts"); change(TABLES); return { ...require("./lib/triage/assess.ts"), TABLES }; };`;
const packed = buildSync({ stdin: { contents: entry, resolveDir: path.join(import.meta.dirname, "../../..") }, bundle: true, format: "cjs", platform: "node", write: false }).outputFiles[0]?.text ?? "";
/** Few draws serve: whether an interval moves, not how wide it is. */
const SOURCE = replaced(packed, "DRAWS = 300", "DRAWS = 3");

function replaced(source: string, what: string, by: string): string {
  expect(source, what).toContain(what);
  return source.replace(what, by);
}
function programOf(source: string): (change?: (tables: readonly FactTable[]) => void) => Program {
  const begin = new Function("module", source) as (module: { exports: (change: (tables: readonly FactTable[]) => void) => Program }) => void;
  return (change = () => undefined) => {
    const module = { exports: (): Program => { throw new Error("Expected the program to have been begun."); } };
    begin(module);
    return module.exports(change);
  };
}
const beginAnew = programOf(SOURCE);
const KEPT = beginAnew();
const PLAIN = beginAnew();

const judged = (p: Program, c: Case): Assessment => p.assess(c.findings, p.defaultSettings(c.settings), AS_OF);
const plain = new Map<Case, { all: string; steady: string }>();
/** Without what is drawn: draws are kept, so that they would show an earlier change of the same program. */
const steady = (a: Assessment): string => JSON.stringify({ ...a, fibres: a.fibres.map((f) => [f.fibre, f.probability]), model: null });
function before(c: Case): { all: string; steady: string } {
  const known = plain.get(c);
  if (known) return known;
  const a = judged(PLAIN, c);
  const made = { all: JSON.stringify(a), steady: steady(a) };
  plain.set(c, made);
  return made;
}

type Holder = Record<string, unknown>;
/** Years are the names of rows, and stay. */
const FIXED = new Set(["year"]);
function changeNumbers(holder: Holder, key: string): boolean {
  const value = holder[key];
  if (typeof value === "number" && !FIXED.has(key)) holder[key] = value === 0 ? 0.2 : value * 0.6;
  if (typeof value !== "object" || value === null) return typeof value === "number";
  return Object.keys(value).map((k) => changeNumbers(value as Holder, k)).some(Boolean);
}
const SAID = new Set(["why", "say", "to", "fine", "forbidden", "test", "name", "words"]);
function changeWords(holder: Holder, key: string): boolean {
  const value = holder[key];
  if (typeof value !== "object" || value === null) return false;
  return Object.entries(value as Holder).map(([k, v]) => {
    if (!SAID.has(k) || typeof v !== "string") return false;
    (value as Holder)[k] = `${v} *`;
    return true;
  }).some(Boolean);
}
/** A row of ids takes the place of another that differs, or is emptied where there is none. */
function changeIds(holder: Holder, key: string): boolean {
  const own = JSON.stringify(holder[key]);
  const other = Object.values(holder).find((v) => JSON.stringify(v) !== own && v !== null && typeof v === typeof holder[key]);
  if (other !== undefined) holder[key] = structuredClone(other);
  else if (Array.isArray(holder[key])) holder[key] = [];
  else delete holder[key];
  return true;
}
const CHANGES = [changeNumbers, changeWords, changeIds] as const;
type Change = (typeof CHANGES)[number];

interface Row { readonly table: FactTable; readonly row: TableRow; readonly at: readonly [table: number, row: number] }
const ROWS: readonly Row[] = TABLES.flatMap((table, t) => table.rows.map((row, r): Row => ({ table, row, at: [t, r] })));
const placeIn = (tables: readonly FactTable[], { at: [t, r] }: Row) => tables[t]?.rows[r]?.at as { in: Holder | null; key: string };

/** The cases that moved with earlier rows of a table, and then those that speak of the row. */
const helped = new Map<string, Case[]>();
function inOrder({ table, row }: Row): readonly Case[] {
  const raw = row.at.in === null ? "" : JSON.stringify((row.at.in as Holder)[row.at.key]);
  const tokens = [...new Set(`${row.id} ${raw}`.match(/[a-z0-9][\w-]+(:[\w-]+)?/giu) ?? [])].flatMap((w) => w.split(":")).filter((w) => w.length > 2);
  const score = (c: Case) => tokens.reduce((n, w) => (c.words.includes(`"${w}"`) || c.words.includes(`:${w}"`) || c.words.includes(`:${w},`) ? n + 1 : n), 0);
  const known = helped.get(table.id) ?? [];
  return [...known.slice(0, 3), ...CASES.slice(0, 2), ...CASES.map((c) => ({ c, s: score(c) })).sort((a, b) => b.s - a.s).map(({ c }) => c)].slice(0, MOST_CASES);
}
const MOST_CASES = 60;
function note({ table }: Row, c: Case): true {
  helped.set(table.id, [c, ...(helped.get(table.id) ?? []).filter((k) => k !== c)]);
  return true;
}

/** Changes the row in a program that goes on, and puts it back. */
function movesInPlace(row: Row, change: Change): boolean {
  const { in: holder, key } = placeIn(KEPT.TABLES, row);
  if (holder === null) return false;
  const saved = structuredClone(holder[key]);
  const original = holder[key];
  if (!change(holder, key)) return false;
  const moved = inOrder(row).slice(0, 8).find((c) => steady(judged(KEPT, c)) !== before(c).steady);
  if (typeof original === "object" && original !== null) {
    Object.assign(original, saved);
    holder[key] = original;
  } else holder[key] = saved;
  return moved !== undefined && note(row, moved);
}

const isMoved = (p: Program, row: Row): boolean => {
  const moved = inOrder(row).find((c) => JSON.stringify(judged(p, c)) !== before(c).all);
  return moved !== undefined && note(row, moved);
};
function movesAnew(row: Row, change: Change): boolean {
  let changed = false;
  const program = beginAnew((tables) => { const { in: holder, key } = placeIn(tables, row); changed = holder !== null && change(holder, key); });
  return changed && isMoved(program, row);
}
/** A number with a name of its own is changed in the text of the program. */
function movesAsText(row: Row): boolean {
  const [, name] = row.row.at.key.split(".") as [string, string];
  const value = Number(row.row.cells[0]);
  return isMoved(programOf(replaced(SOURCE, `${name} = ${value};`, `${name} = ${value * 0.6};`))(), row);
}

/** Whether it moves, tried first in the way that moved the row before it. */
const WAYS = CHANGES.flatMap((change) => [movesInPlace, movesAnew].map((way) => (row: Row) => way(row, change)));
const served = new Map<string, (typeof WAYS)[number]>();
function moves(row: Row): boolean {
  if (row.row.at.in === null) return movesAsText(row);
  const first = served.get(row.table.id);
  const way = [...(first ? [first] : []), ...WAYS.filter((w) => w !== first)].find((w) => w(row));
  if (way) served.set(row.table.id, way);
  return way !== undefined;
}

/** Tables that are not read by `assess`: they are read before it, or worked into others, and have tests of their own. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  "label-names": "read by the label reader", "label-codes": "read by the label reader", "label-rules": "said by the label reader", "label-limits": "used by the label reader",
  "vote-weights": "worked into the response tables as they are loaded",
};

describe("changing any row of a table", () => {
  it.each(TABLES.map((t) => t.id).filter((id) => !Object.hasOwn(ELSEWHERE, id)))("of %s moves some output", (id) => {
    const t0 = performance.now();
    const dead = ROWS.filter((r) => r.table.id === id && !moves(r)).map((r) => r.row.id);
    console.log(id, (performance.now() - t0).toFixed(0));
    expect(dead).toEqual([]);
  }, 600_000);
});
