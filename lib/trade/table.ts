import type { Source } from "./fibres";

/** The parts of the method that tables belong to, in the order of the reasoning. */
export type PartId = "fibre" | "labels" | "tests" | "happened" | "prospects" | "life" | "money" | "decision" | "words";

/** How a number of a column is told: `chance` is 0–1, `range` a 10th, 50th and 90th percentile in per cent. */
export type Unit = "chance" | "range" | "percent" | "years" | "times" | "pounds" | "cleans" | "decibans" | "minutes" | "number" | "text";
export type Cell = number | string | { readonly low: number; readonly median: number; readonly high: number } | null;
export interface TableColumn { readonly name: string; readonly unit: Unit }

/**
 * Where a row stands: a key of the table that triage reads. `in` null: a single number of its own, and the key is the
 * file of lib/trade and its name there. `under` tells rows of several records apart.
 */
export interface Place<T = unknown> { readonly in: object | null; readonly key: string; readonly row: T; readonly name: string; readonly under?: string }

export interface TableRow extends Source {
  readonly id: string;
  readonly name: string;
  /** In the order of the table's columns; null: says nothing there. */
  readonly cells: readonly Cell[];
  readonly at: Pick<Place, "in" | "key">;
}

/** A table of the trade in a form that can be printed and checked: made from the table itself, never a copy. */
export interface FactTable {
  readonly id: string;
  readonly part: PartId;
  readonly name: string;
  /** One sentence: what it is for. */
  readonly about: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** `workshop`: it speaks of readings and limits of tests that are not for the public. */
  readonly for: "everybody" | "workshop";
}

interface Spec<T> extends Omit<FactTable, "rows" | "for"> {
  readonly rows: readonly Place<T>[];
  readonly cells: (row: T, key: string) => readonly Cell[];
  /** Where the rows do not carry their own. */
  readonly source?: Source | ((row: T, key: string) => Source);
  readonly for?: FactTable["for"];
}

const isSource = (row: unknown): row is Source => typeof row === "object" && row !== null && "how" in row && "source" in row;

function sourceOf<T>({ row, key }: Place<T>, source: Spec<T>["source"]): Source {
  if (typeof source === "function") return source(row, key);
  const found = source ?? (isSource(row) ? row : null);
  if (found === null) throw new Error(`Expected a source for the row ${key}.`);
  return found;
}

/** A table from the places of its rows. @throws where a row has no source. */
export function factTable<T>({ rows, cells, source, for: audience = "everybody", ...table }: Spec<T>): FactTable {
  return {
    ...table, for: audience,
    rows: rows.map((place) => {
      const { how, source: says } = sourceOf(place, source);
      return { id: [table.id, place.under, place.key].filter((part) => part !== undefined).join("/"), name: place.name, cells: cells(place.row, place.key), at: { in: place.in, key: place.key }, how, source: says };
    }),
  };
}

/** Every entry of a record or a list as the place of a row. */
export const placesIn = <T>(of: Readonly<Record<string, T>> | readonly T[], name: (key: string, row: T) => string): Place<T>[] =>
  Object.entries(of).map(([key, row]) => ({ in: of, key, row: row as T, name: name(key, row as T) }));

/** A number with a name of its own: `file` in lib/trade, its name there, and what it means in words. */
export const numberAt = (file: string, name: string, value: number, says: string): Place<number> => ({ in: null, key: `${file}.${name}`, row: value, name: says });

/** The named fields of one object, each a row of its own. */
export const fieldsOf = <K extends string, T>(of: Readonly<Record<NoInfer<K>, T>>, names: Readonly<Record<K, string>>): Place<T>[] =>
  (Object.entries(names) as [K, string][]).map(([key, name]) => ({ in: of, key, row: of[key], name }));

export const chance = (name: string): TableColumn => ({ name, unit: "chance" });
export const text = (name: string): TableColumn => ({ name, unit: "text" });
export const number = (name: string, unit: Unit = "number"): TableColumn => ({ name, unit });

/** The source of tables whose rows carry none: what was judged is said by the table itself. */
export const judged = (what: string): Source => ({ how: "elicited", source: `Elicited for this project: ${what}` });
export const PRACTICE: Source = { how: "common practice", source: "Common practice, no published source" };
