import type { FibreId, Source } from "./fibres";

/** `other` has no rows of its own: it takes the prior-weighted mean of the named classes. */
export type NamedFibre = Exclude<FibreId, "other">;

/** Findings that carry the same news; see TEMPER in evidence-caps. */
export type EvidenceGroup = "lustre" | "make" | "claim";

/**
 * P(answer | fibre of the pile). One row per named class, one cell per answer in the order of `answers`; every cell is
 * at least .001 and every row sums to 1. A row has the table's source unless it has its own.
 */
export interface LikelihoodTable {
  /** The `what` of the finding it reads: a question id, or `label`. */
  readonly what: string;
  readonly answers: readonly string[];
  readonly group: EvidenceGroup | null;
  readonly source: Source;
  readonly rows: Readonly<Record<NamedFibre, readonly number[]>>;
  readonly rowSources?: Readonly<Partial<Record<NamedFibre, Source>>>;
}

/** The smallest chance any cell may state: nothing told is impossible. Elicited. */
export const SMALLEST_CELL = 0.001;

/** How many cases a row counts for in the draws of the interval, by how it is known; common practice counts as a judgement. Elicited. */
export const ROW_STRENGTH = { elicited: 8, memory: 15, computed: 15, read: 40 } as const satisfies Partial<Record<Source["how"], number>>;
export const strengthBy = (how: Source["how"]): number => ROW_STRENGTH[how === "common practice" ? "elicited" : how];

export const sourceOfRow = (table: LikelihoodTable, fibre: NamedFibre): Source => table.rowSources?.[fibre] ?? table.source;
export const strengthOfRow = (table: LikelihoodTable, fibre: NamedFibre): number => strengthBy(sourceOfRow(table, fibre).how);
