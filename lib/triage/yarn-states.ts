import { YARNS, YARNS_SOURCE, type YarnId } from "../trade/yarns";
import { strengthBy, SMALLEST_CELL } from "../trade/likelihood-table";
import { NAMED, OTHER, type NamedVector } from "./classes";
import { drawDirichlet } from "./dirichlet";
import type { Random } from "./random";

/**
 * What a sample of the pile is: a single fibre, or both fibres of a blend mixed in it. The states have the names and the
 * order of the named classes. P(state | class, yarn) is a row per class.
 */
type StateRow = NamedVector;

const listedOf = (fibre: (typeof NAMED)[number], yarn: YarnId) => Object.entries(YARNS[fibre][yarn]) as [(typeof NAMED)[number], number][];

/** A whole row from its listed shares: what they leave is spread evenly over the states not listed. */
function stateRow(listed: readonly (readonly [(typeof NAMED)[number], number])[]): StateRow {
  const left = 1 - listed.reduce((sum, [, p]) => sum + p, 0);
  const row: number[] = NAMED.map(() => left / (OTHER - listed.length));
  for (const [state, p] of listed) row[NAMED.indexOf(state)] = p;
  return row;
}

const rowsOf = (yarn: YarnId): readonly StateRow[] => NAMED.map((f) => stateRow(listedOf(f, yarn)));
const ROWS: Readonly<Record<YarnId, readonly StateRow[]>> = { whole: rowsOf("whole"), field: rowsOf("field"), accent: rowsOf("accent") };

/** P(state | class) for each named class, in the order of NAMED; every row sums to 1 and no cell is 0. */
export const stateRows = (yarn: YarnId): readonly StateRow[] => ROWS[yarn];

/** The same rows drawn anew: the listed shares and the remainder as one, which stays evenly spread. */
export const drawStateRows = (yarn: YarnId, random: Random): readonly StateRow[] =>
  NAMED.map((fibre) => {
    const listed = listedOf(fibre, yarn);
    const left = 1 - listed.reduce((sum, [, p]) => sum + p, 0);
    const drawn = drawDirichlet(random, [...listed.map(([, p]) => p), left], strengthBy(YARNS_SOURCE.how));
    const kept = drawn.map((p) => (p * (1 - SMALLEST_CELL * drawn.length)) + SMALLEST_CELL);
    return stateRow(listed.map(([state], i) => [state, kept[i] as number]));
  });

const dot = (row: StateRow, a: NamedVector, b: NamedVector | null): number => {
  let sum = 0;
  for (let s = 0; s < OTHER; s += 1) sum += (row[s] as number) * (a[s] as number) * (b === null ? 1 : (b[s] as number));
  return sum;
};

/**
 * P(new evidence | class, earlier evidence of the same yarn), by class: the yarn is one thing, so what it showed before
 * changes what it is expected to show next. Over all evidence of a yarn these multiply to the exact joint likelihood.
 */
export const likelihoodByClass = (rows: readonly StateRow[], before: NamedVector, now: NamedVector): number[] =>
  rows.map((row) => dot(row, before, now) / dot(row, before, null));

/** P(state | class, evidence of the yarn), by class. */
export const stateGivenClass = (yarn: YarnId, likelihood: NamedVector): readonly NamedVector[] =>
  ROWS[yarn].map((row) => {
    const total = dot(row, likelihood, null);
    return row.map((p, s) => (p * (likelihood[s] as number)) / total);
  });
