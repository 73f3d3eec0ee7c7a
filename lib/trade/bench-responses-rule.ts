import type { Source } from "./fibres";
import { SMALLEST_CELL, type LikelihoodTable, type NamedFibre } from "./likelihood-table";
import { SINGLE_FIBRES, type SingleFibre } from "./single-fibres";

/**
 * One published statement of how fibres respond: an answer, several where its words cover several (they share its vote
 * evenly), or shares that sum to 1. Statements that contradict each other all vote, so the row widens.
 */
export interface Vote extends Source {
  readonly fibres: readonly SingleFibre[];
  readonly says: readonly string[] | Readonly<Record<string, number>>;
}

/** What a sample of two fibres mixed gives: either fibre's answer; `partly` where one dissolves and the other stays; or a row of its own. */
export type MixedRule = "either" | "partly" | readonly number[];

export interface ResponseVotes {
  readonly test: string;
  readonly reading: string;
  readonly answers: readonly string[];
  /** The chance that a careful person reads another answer than the fibre's own, 0–1, and where such readings fall. */
  readonly error: number;
  readonly strays: readonly number[];
  /** Fibres without a statement answer as their kin. */
  readonly kin: Readonly<Partial<Record<SingleFibre, SingleFibre>>>;
  /** Groups this test is published not to tell apart within, and the share (0–1) of each row that is the mean of its group. */
  readonly alike?: { readonly groups: readonly (readonly SingleFibre[])[]; readonly share: number };
  readonly mixed: MixedRule;
  readonly votes: readonly Vote[];
  readonly source: Source;
}

/** P(answer | what the sample is): single fibres, and for the blends an intimate mixture of both. Rows sum to 1, cells at least .001. */
export interface ResponseTable extends LikelihoodTable {
  readonly test: string;
  readonly reading: string;
  readonly rowSources: Readonly<Record<NamedFibre, Source>>;
}

/** The two constituents of each blend. */
export const CONSTITUENTS = {
  "wool-silk": ["wool", "silk"], "wool-viscose": ["wool", "viscose"], "silk-viscose": ["silk", "viscose"], "cotton-viscose": ["cotton", "viscose"],
} as const satisfies Record<Exclude<NamedFibre, SingleFibre>, readonly [SingleFibre, SingleFibre]>;
export type Blend = keyof typeof CONSTITUENTS;
export const BLEND_IDS = Object.keys(CONSTITUENTS) as Blend[];

/** The weight of one statement: a published text counts for two that are only remembered or of the trade. Elicited. */
export const VOTE_WEIGHT: Readonly<Record<Source["how"], number>> = { read: 1, computed: 1, memory: 0.5, "common practice": 0.5, elicited: 0.5 };

/** At least the smallest cell each; sums to 1. */
function bounded(row: readonly number[]): number[] {
  const lifted = row.map((p) => Math.max(p, 1.5 * SMALLEST_CELL));
  const sum = lifted.reduce((a, b) => a + b, 0);
  return lifted.map((p) => p / sum);
}

const votesFor = (table: ResponseVotes, fibre: SingleFibre): readonly Vote[] => {
  const own = table.votes.filter((v) => v.fibres.includes(fibre));
  const kin = table.kin[fibre];
  return own.length > 0 || kin === undefined ? own : votesFor(table, kin);
};

const isList = (says: Vote["says"]): says is readonly string[] => Array.isArray(says);
/** The part of one vote that an answer gets. */
const shareOf = (says: Vote["says"], answer: string): number => (isList(says) ? Number(says.includes(answer)) / says.length : (says[answer] ?? 0));

/** Shares of the weighted votes; a fibre nobody speaks of may give any answer. */
function shares(table: ResponseVotes, votes: readonly Vote[]): number[] {
  if (votes.length === 0) return table.answers.map(() => 1 / table.answers.length);
  const total = votes.reduce((sum, v) => sum + VOTE_WEIGHT[v.how], 0);
  const share = ({ says, how }: Vote, answer: string) => VOTE_WEIGHT[how] * shareOf(says, answer);
  return table.answers.map((a) => votes.reduce((sum, v) => sum + share(v, a), 0) / total);
}

const withError = (table: ResponseVotes, row: readonly number[]) =>
  bounded(row.map((p, i) => (1 - table.error) * p + table.error * (table.strays[i] as number)));

/** A row as its fibre’s votes have it, drawn towards the mean of those it is not told apart from. */
function singleRow(table: ResponseVotes, fibre: SingleFibre): number[] {
  const own = shares(table, votesFor(table, fibre));
  const group = table.alike?.groups.find((g) => g.includes(fibre)) ?? [fibre];
  const share = table.alike?.share ?? 0;
  const rows = group.map((f) => shares(table, votesFor(table, f)));
  return withError(table, own.map((p, i) => (1 - share) * p + share * (rows.reduce((sum, r) => sum + (r[i] as number), 0) / rows.length)));
}

/** A row of one kind of statement keeps it; a row of several is computed from their shares. */
function sourceOf(table: ResponseVotes, fibre: SingleFibre): Source {
  const votes = votesFor(table, fibre);
  if (votes.length === 0) return { how: "elicited", source: "No published answer found: any may come" };
  const names = [...new Set(votes.map((v) => (v.how === "read" ? v.source : `${v.source} (${v.how === "memory" ? "from memory" : v.how})`)))].join("; ");
  const hows = new Set(votes.map((v) => v.how));
  const asKin = table.votes.some((v) => v.fibres.includes(fibre)) ? "" : ` Taken to answer as ${table.kin[fibre] as string} (elicited).`;
  return { how: hows.size === 1 ? (votes[0] as Vote).how : "computed", source: `Shares of what is published, with a chance of misreading (elicited): ${names}.${asKin}` };
}

const ANSWER = { dissolves: 0, partly: 1, stays: 2 } as const;

/** The chance that a mixture is not seen to be one: little of the one fibre in the sample, or it was left too short. Elicited. */
const MIXTURE_MISSED = 0.2;

/** Two constituents that answer each for itself, in the answers dissolves, partly, stays. */
function partlyRow(table: ResponseVotes, a: readonly number[], b: readonly number[]): number[] {
  const dissolves = (row: readonly number[]) => {
    const [yes, no] = [row[ANSWER.dissolves] as number, row[ANSWER.stays] as number];
    return yes / (yes + no);
  };
  const [x, y] = [dissolves(a), dissolves(b)];
  const parted = x * (1 - y) + y * (1 - x);
  return withError(table, [x * y + (parted * MIXTURE_MISSED) / 2, parted * (1 - MIXTURE_MISSED), (1 - x) * (1 - y) + (parted * MIXTURE_MISSED) / 2]);
}

function mixedRow(table: ResponseVotes, a: readonly number[], b: readonly number[]): number[] {
  if (table.mixed === "partly") return partlyRow(table, a, b);
  if (table.mixed === "either") return bounded(a.map((p, i) => (p + (b[i] as number)) / 2));
  return bounded(table.mixed);
}

const MIXED_SOURCE: Source = { how: "elicited", source: "Worked out from the rows of the two fibres, each answering for itself: a judgement of this project" };

/** The response table of one reading, worked out from its votes. */
export function responseTable(table: ResponseVotes): ResponseTable {
  const single = Object.fromEntries(SINGLE_FIBRES.map((f) => [f, singleRow(table, f)])) as Record<SingleFibre, number[]>;
  const mixed = Object.fromEntries(BLEND_IDS.map((b) => [b, mixedRow(table, single[CONSTITUENTS[b][0]], single[CONSTITUENTS[b][1]])])) as Record<Blend, number[]>;
  const rowSources = {
    ...Object.fromEntries(SINGLE_FIBRES.map((f) => [f, sourceOf(table, f)])), ...Object.fromEntries(BLEND_IDS.map((b) => [b, MIXED_SOURCE])),
  } as Record<NamedFibre, Source>;
  return {
    what: `test:${table.test}.${table.reading}`, test: table.test, reading: table.reading, answers: table.answers, group: null, source: table.source,
    rows: { ...single, ...mixed }, rowSources,
  };
}
