import path from "node:path";
import { buildSync } from "esbuild";
import type { FactTable, TableRow } from "../../lib/trade/table";
import { TABLES } from "../../lib/trade/tables";
import { DECISION_TABLES } from "../../lib/trade/tables-decision";
import { FIBRE_TABLES, PRICE_TABLES } from "../../lib/trade/tables-fibre";
import { HAPPENED_TABLES } from "../../lib/trade/tables-happened";
import { LABEL_TABLES } from "../../lib/trade/tables-labels";
import { OUTLOOK_TABLES } from "../../lib/trade/tables-outlook";
import { TEST_TABLES } from "../../lib/trade/tables-tests";
import type { Assessment, TriageSettings } from "../../lib/triage/assessment";
import type { Finding } from "../../lib/triage/finding";
import type { LongCheck } from "./check";
import { CASES, type Case } from "./covering-cases";

/**
 * Changing any row of any table moves some output of `assess`; a row that moves nothing is dead. Much is worked out from
 * the tables when they are loaded, so all modules are packed into one program that can be begun anew with a changed table.
 */
const AS_OF = "2026-03-01T09:00:00Z";
interface Program {
  readonly tables: Readonly<Record<string, () => readonly FactTable[]>>;
  readonly assess: (findings: readonly Finding[], settings: TriageSettings, asOf: string) => Assessment;
  readonly defaultSettings: (partial: Partial<TriageSettings>) => TriageSettings;
  /** A label's wording as it is read, and the findings it makes. */
  readonly read: (labelText: string) => readonly [reading: unknown, findings: readonly Finding[]];
}
/** The registry, file by file: a program loads no more of it than the change asks for. */
const FILES: Readonly<Record<string, readonly FactTable[]>> = {
  "tables-fibre.ts:FIBRE_TABLES": FIBRE_TABLES, "tables-fibre.ts:PRICE_TABLES": PRICE_TABLES, "tables-labels.ts:LABEL_TABLES": LABEL_TABLES, "tables-tests.ts:TEST_TABLES": TEST_TABLES,
  "tables-happened.ts:HAPPENED_TABLES": HAPPENED_TABLES, "tables-outlook.ts:OUTLOOK_TABLES": OUTLOOK_TABLES, "tables-decision.ts:DECISION_TABLES": DECISION_TABLES,
};
const loader = (name: string) => { const [file, tables] = name.split(":") as [string, string]; return `${JSON.stringify(name)}: () => require("./lib/trade/${file}").${tables}`; };
const entry = `module.exports = (file, change) => {
  const tables = { ${Object.keys(FILES).map(loader).join(", ")} };
  if (file) change(tables[file]());
  const { assess, defaultSettings } = require("./lib/triage/assess.ts");
  const read = (labelText) => [require("./lib/triage/read-label.ts").readLabel(labelText), require("./lib/triage/findings-from-answers.ts").findingsFromAnswers({ labelText }, {})];
  return { assess, defaultSettings, read, tables };
};`;
const packed = buildSync({ stdin: { contents: entry, resolveDir: path.join(import.meta.dirname, "../..") }, bundle: true, format: "cjs", platform: "node", write: false }).outputFiles[0]?.text ?? "";
/** Few draws serve: whether an interval moves, not how wide it is. */
const SOURCE = replaced(packed, "DRAWS = 300", "DRAWS = 3");

function replaced(source: string, what: string, by: string): string {
  if (!source.includes(what)) throw new Error(`Expected the packed program to hold “${what}”`);
  return source.replace(what, by);
}
type Begin = (file: string | null, change: (tables: readonly FactTable[]) => void) => Program;
function programOf(source: string): Begin {
  const begin = new Function("module", source) as (module: { exports: Begin | null }) => void;
  return (file, change) => {
    const begun: { exports: Begin | null } = { exports: null };
    begin(begun);
    return (begun.exports as unknown as Begin)(file, change);
  };
}
const beginAnew = programOf(SOURCE);
const nothing = () => undefined;
const PLAIN = beginAnew(null, nothing);

interface Output extends Assessment { readonly reading: unknown }
function judged(p: Program, c: Case): Output {
  const [reading, read] = c.labelText === undefined ? [null, []] : p.read(c.labelText);
  return { ...p.assess([...c.findings, ...read], p.defaultSettings(c.settings), AS_OF), reading };
}
const plain = new Map<Case, string>();
function before(c: Case): string {
  const known = plain.get(c) ?? JSON.stringify(judged(PLAIN, c));
  plain.set(c, known);
  return known;
}

type Holder = Record<string, unknown>;
/** Years are the names of rows, and stay. */
const FIXED = new Set(["year"]);
const changeNumbers = (times: number) => function change(holder: Holder, key: string): boolean {
  const value = holder[key];
  if (typeof value === "number" && !FIXED.has(key)) holder[key] = value === 0 ? 0.2 : value * times;
  if (typeof value !== "object" || value === null) return typeof value === "number";
  return Object.keys(value).map((k) => change(value as Holder, k)).some(Boolean);
};
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
/** A row of ids becomes as another that differs, or is emptied where there is none; `which` of the others, 0–1. */
const changeIds = (which: number) => (holder: Holder, key: string): boolean => {
  const own = JSON.stringify(holder[key]);
  const others = [...new Set(Object.values(holder).filter((v) => v !== null && typeof v === typeof holder[key]).map((v) => JSON.stringify(v)))].filter((v) => v !== own);
  const other = others[Math.round(which * (others.length - 1))];
  if (other !== undefined) holder[key] = JSON.parse(other);
  else if (Array.isArray(holder[key])) holder[key] = [];
  else delete holder[key];
  return true;
};
const CHANGES = [changeNumbers(0.6), changeNumbers(2.2), changeWords, changeIds(0), changeIds(0.5), changeIds(1)] as const;
type Change = (typeof CHANGES)[number];

interface Row { readonly table: FactTable; readonly row: TableRow; readonly file: string; readonly at: readonly [table: number, row: number] }
const ROWS: readonly Row[] = Object.entries(FILES).flatMap(([file, tables]) => tables.flatMap((table, t) => table.rows.map((row, r): Row => ({ table, row, file, at: [t, r] }))));
const placeIn = (tables: readonly FactTable[], { at: [t, r] }: Row) => tables[t]?.rows[r]?.at as { in: Holder | null; key: string };

/** Words of the cases that a table bears on, where its rows do not name them. */
const HINTS: Readonly<Record<string, string>> = {
  "sign-limits": "spot-ph moisture affected", signs: "affected", "label-limits": "written", "label-rules": "written", "blend-limits": "laboratory", blends: "laboratory", "price-clip": "price-per-m2", "price-spread": "price-per-m2",
  "measured-change": "colour-change", "measured-shows": "colour-change", laboratory: "laboratory", "leading-readings": "benchTests", "bench-tests": "benchTests", misleading: "sellerSaid", wicking: "browner",
};
const PROSE = new Set(["source", "how", "why", "say", "unless", "what", "forbidden", "test", "fine", "note", "broken", "tells", "cautions"]);
/** The words of a row's name and of its ids, whole and in parts; its own name counts most. */
function wordsOf({ table, row }: Row): ReadonlyMap<string, number> {
  const raw = row.at.in === null ? "" : JSON.stringify((row.at.in as Holder)[row.at.key], (key, value: unknown) => (PROSE.has(key) ? undefined : value)) ?? "";
  const found = (text: string) => (text.match(/[a-z0-9][\w-]+/giu) ?? []).filter((w) => w.length > 2);
  const of = (words: readonly string[], weight: number) => words.map((w): [string, number] => [w, weight]);
  const parts = (text: string) => found(text.replaceAll("-", " "));
  return new Map([
    ...of(parts(`${raw} ${row.id}`), 1), ...of(found(raw), 7), ...of(found(row.id), 6), ...of(found(HINTS[table.id] ?? ""), 8), ...of([table.id], 12), ...of([`${table.id}/${row.at.key}`], 24),
  ]);
}
/** The cases that moved with earlier rows of the table, and then those that speak of the row and of little else. */
const helped = new Map<string, Case[]>();
function inOrder(row: Row): readonly Case[] {
  const words = [...wordsOf(row)];
  const score = (c: Case) => words.reduce((n, [w, weight]) => (c.tokens.has(w) ? n + weight : n), 0) - c.tokens.size / 10;
  const known = helped.get(row.table.id) ?? [];
  return [...new Set([...known.slice(0, 1), ...CASES.map((c) => ({ c, s: score(c) })).sort((x, y) => y.s - x.s).map(({ c }) => c)])];
}
function note({ table }: Row, c: Case): true {
  helped.set(table.id, [c, ...(helped.get(table.id) ?? []).filter((k) => k !== c)]);
  return true;
}
/** Whether the output of one of the first cases differs; a table that can no longer be worked with differs too. */
function isMoved(p: Program, row: Row, most: number): boolean {
  const moved = inOrder(row).slice(0, most).find((c) => { try { return JSON.stringify(judged(p, c)) !== before(c); } catch { return true; } });
  return moved !== undefined && note(row, moved);
}
function movesBy(change: Change, row: Row, most: number): boolean {
  let changed = false;
  try {
    const program = beginAnew(row.file, (tables) => { const { in: holder, key } = placeIn(tables, row); changed = holder !== null && change(holder, key); });
    return changed && isMoved(program, row, most);
  } catch {
    return false;
  }
}
/** A number with a name of its own is changed in the text of the program. */
function movesAsText(row: Row, most: number): boolean {
  const [, name] = row.row.at.key.split(".") as [string, string];
  const value = Number(row.row.cells[0]);
  const declared = new RegExp(`\\b${name} = [^;]+;`, "u").exec(SOURCE)?.[0] ?? name;
  return isMoved(programOf(replaced(SOURCE, declared, `${name} = ${value * 0.6};`))(null, nothing), row, most);
}

/** The likeliest cases first, with every way to change the row; all of them before it counts as dead. */
const DEPTHS: readonly number[] = [6, 40, CASES.length];
const moves = (row: Row, changes: readonly Change[], depths: readonly number[]): boolean =>
  depths.some((most) => (row.row.at.in === null ? movesAsText(row, most) : changes.some((change) => movesBy(change, row, most))));

/** Tables of which a change is shown elsewhere. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  "label-names": "counts of names: each name that was read is checked with the label reader", "label-codes": "counts of codes, likewise",
  "vote-weights": "worked into the response tables as they are loaded: checked with the registry",
};
/** The tables that are changed here. */
export const CHANGED_TABLES: readonly string[] = TABLES.map((t) => t.id).filter((id) => !Object.hasOwn(ELSEWHERE, id));

interface How {
  /** Every n-th row is changed, beginning at `from`. */
  readonly every?: number;
  readonly from?: number;
  readonly changes?: readonly Change[];
  readonly depths?: readonly number[];
}
/** The rows of a table that move nothing. */
export function deadRows(tableId: string, { every = 1, from = 0, changes = CHANGES, depths = DEPTHS }: How = {}): { readonly changed: number; readonly dead: readonly string[] } {
  const rows = ROWS.filter((r) => r.table.id === tableId).filter((_, i) => i % every === from % every);
  return { changed: rows.length, dead: rows.filter((r) => !moves(r, changes, depths)).map((r) => r.row.id) };
}

export const checks: LongCheck[] = [{
  name: "Changing any row of a table moves some output",
  run: (progress) => CHANGED_TABLES.map((name, i) => {
    const { changed, dead } = deadRows(name);
    progress((i + 1) / CHANGED_TABLES.length);
    return { name, measured: dead.length === 0 ? `${changed} rows` : `dead: ${dead.join(", ")}`, required: "none dead", holds: dead.length === 0 };
  }),
}];
