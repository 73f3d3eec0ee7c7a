import { RESPONSE_VOTES } from "./bench-responses";
import type { Source } from "./fibres";
import { LABEL_CODES, LABEL_NAMES } from "./label-names";
import type { FactTable, PartId } from "./table";
import { DECISION_TABLES } from "./tables-decision";
import { FIBRE_TABLES, PRICE_TABLES } from "./tables-fibre";
import { HAPPENED_TABLES } from "./tables-happened";
import { LABEL_TABLES } from "./tables-labels";
import { OUTLOOK_TABLES } from "./tables-outlook";
import { TEST_TABLES } from "./tables-tests";

const ORDER: readonly PartId[] = ["fibre", "labels", "tests", "happened", "prospects", "life", "money", "decision", "words"];
const ALL = [...FIBRE_TABLES, ...LABEL_TABLES, ...TEST_TABLES, ...HAPPENED_TABLES, ...OUTLOOK_TABLES, ...PRICE_TABLES, ...DECISION_TABLES];

/** Every table that triage reads, in the order of the reasoning. */
export const TABLES: readonly FactTable[] = ORDER.flatMap((part) => ALL.filter((t) => t.part === part));

/** The tables of some parts, without those whose readings are for the workshop only. */
export const publicTables = (...parts: readonly PartId[]): FactTable[] => TABLES.filter((t) => t.for === "everybody" && parts.includes(t.part));

/** Rows by how they are known, the most first. */
export function rowsByHow(tables: readonly FactTable[]): { readonly how: Source["how"]; readonly rows: number }[] {
  const counts = new Map<Source["how"], number>();
  for (const t of tables) for (const { how } of t.rows) counts.set(how, (counts.get(how) ?? 0) + 1);
  return [...counts].map(([how, rows]) => ({ how, rows })).sort((a, b) => b.rows - a.rows);
}

/** Every published source that was read, once, in alphabetical order: of rows, of statements they are worked out from, and of names on labels. */
export function publishedSources(tables: readonly FactTable[]): string[] {
  const rows: readonly Source[] = [...tables.flatMap((t) => t.rows), ...RESPONSE_VOTES.flatMap((v) => v.votes), ...LABEL_NAMES.map((n) => n.source), ...LABEL_CODES.map((c) => c.source)];
  return [...new Set(rows.filter((r) => r.how === "read").map((r) => r.source))].sort((a, b) => a.localeCompare(b, "en"));
}
