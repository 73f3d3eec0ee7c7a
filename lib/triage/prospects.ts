import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { BROUGHT_BACK, improvementCell, ROW_IDS, ROWS_OF, type Quantiles, type RowId } from "../trade/improvement";
import { DAMAGE_IDS, type DamageId } from "../trade/damage";
import type { Range } from "./assessment";
import { byKind, KINDS, spread } from "./kinds";
import { ofFibres } from "./of-fibres";
import type { Told } from "./told";
import { freshChance, type WhatHappened } from "./what-happened";

/** A piecewise-linear quantile function: improvement in per cent at chances 0, .1, .5, .9 and 1. */
const AT = [0, 0.1, 0.5, 0.9, 1] as const;

/**
 * The ends go on with the slope of the neighbouring piece, held within 0 and 100 per cent. A row whose 10th (or 50th)
 * percentile is 0 has an atom of that chance at zero.
 */
export function quantilePoints(q: Quantiles): number[] {
  return [Math.max(0, q.low - (q.median - q.low) / 4), q.low, q.median, q.high, Math.min(100, q.high + (q.high - q.median) / 4)];
}

/** The quantile function of one row at chance u, 0–1. */
export function quantileAt(points: readonly number[], u: number): number {
  for (let i = 1; i < AT.length; i += 1) {
    const [from, to] = [AT[i - 1] as number, AT[i] as number];
    if (u <= to) return (points[i - 1] as number) + (((points[i] as number) - (points[i - 1] as number)) * (u - from)) / (to - from);
  }
  return points[points.length - 1] as number;
}

/** P(improvement ≤ x) of one row; the atom at zero is included from x = 0 on. */
export function chanceAtMost(points: readonly number[], x: number): number {
  if (x < (points[0] as number)) return 0;
  for (let i = AT.length - 1; i > 0; i -= 1) {
    const [low, high] = [points[i - 1] as number, points[i] as number];
    if (x >= high) return AT[i] as number;
    if (x >= low) return (AT[i - 1] as number) + (((AT[i] as number) - (AT[i - 1] as number)) * (x - low)) / (high - low);
  }
  return 0;
}

/** One row of a fibre: its quantile points, and its chance to bring back too little. */
interface Cell { readonly points: readonly number[]; readonly fails: number }

/** Every fibre × row, worked out once. */
const CELLS: Readonly<Record<FibreId, Readonly<Record<RowId, Cell>>>> = ofFibres((f) => Object.fromEntries(ROW_IDS.map((r) => {
  const points = quantilePoints(improvementCell(r, f));
  const cell: [RowId, Cell] = [r, { points, fails: chanceAtMost(points, BROUGHT_BACK.leastPerCent) }];
  return cell;
})) as unknown as Record<RowId, Cell>);

/** The rows of each fibre by median, then 90th, then 10th percentile: the worst first. */
const WORST_FIRST: Readonly<Record<FibreId, readonly RowId[]>> = ofFibres((f) => {
  const cell = (r: RowId) => improvementCell(r, f);
  return [...ROW_IDS].sort((a, b) => cell(a).median - cell(b).median || cell(a).high - cell(b).high || cell(a).low - cell(b).low);
});

/** Chance that a row brings back under the least that counts, on one fibre. */
export const failsOn = (fibre: FibreId, row: RowId): number => CELLS[fibre][row].fails;

/** `rows[fibre][row]`: P(this row rules | fibre, told); sums to 1 for each fibre. */
export type RulingRows = Readonly<Record<FibreId, Readonly<Record<RowId, number>>>>;

/** Every combination of browning and dye being fresh or not, with its chance. */
function ageings(told: Told): { chance: number; rowOf: (m: DamageId) => RowId | null }[] {
  const [browning, dye] = [freshChance("browning", told), freshChance("dye", told)];
  return [true, false].flatMap((freshBrown) => [true, false].map((freshDye) => ({
    chance: (freshBrown ? browning : 1 - browning) * (freshDye ? dye : 1 - dye),
    rowOf: (m: DamageId): RowId | null => ROWS_OF[m]?.[(m === "dye-bleed" ? freshDye : freshBrown) ? "fresh" : "old"] ?? null,
  }))).filter((a) => a.chance > 0);
}

/**
 * Which row of the improvement table rules: of a set's mechanisms, each taken fresh or older, the worst. Repairs have no
 * row; a set of none or only repairs is judged as plain soil.
 */
export function rulingRows(happened: WhatHappened, told: Told): RulingRows {
  const groups = new Map<number, number>();
  const parts = ageings(told).map(({ chance, rowOf }) => {
    const rowBits = Int32Array.from(DAMAGE_IDS, (m) => { const row = rowOf(m); return row ? 1 << ROW_IDS.indexOf(row) : 0; });
    return { chance, groupOf: happened.masks.map((mask) => groupOf(rowsOfMask(mask, rowBits), groups)) };
  });
  const bitsOfGroup = [...groups.keys()];
  return spread(KINDS.map((f) => {
    const sums = new Float64Array(groups.size);
    const given = happened.given[f];
    for (const part of parts) {
      for (let i = 0; i < given.length; i += 1) sums[part.groupOf[i] as number] = (sums[part.groupOf[i] as number] as number) + part.chance * (given[i] as number);
    }
    const out = new Float64Array(ROW_IDS.length);
    bitsOfGroup.forEach((rows, group) => { const row = worstOf(f, rows); out[row] = (out[row] as number) + (sums[group] as number); });
    return Object.fromEntries(ROW_IDS.map((r, i) => [r, out[i]])) as Record<RowId, number>;
  }));
}

/** The rows of a set of mechanisms: bits to bits. */
function rowsOfMask(mask: number, rowBits: Int32Array): number {
  let rows = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) rows |= rowBits[31 - Math.clz32(rest & -rest)] as number;
  return rows;
}

/** The number of a group of rows, the next one where it is new. */
function groupOf(rows: number, groups: Map<number, number>): number {
  const known = groups.get(rows);
  if (known !== undefined) return known;
  groups.set(rows, groups.size);
  return groups.size - 1;
}

/** The places of each fibre's rows in ROW_IDS, the worst first. */
const WORST: Readonly<Record<FibreId, Int32Array>> = ofFibres((f) => Int32Array.from(WORST_FIRST[f], (r) => ROW_IDS.indexOf(r)));
const SOIL = ROW_IDS.indexOf("soil");

/** The worst of the rows whose bits are set, on a fibre, as its place in ROW_IDS; plain soil where there is none. */
function worstOf(fibre: FibreId, rows: number): number {
  const places = WORST[fibre];
  for (let i = 0; i < places.length; i += 1) if ((rows & (1 << (places[i] as number))) !== 0) return places[i] as number;
  return SOIL;
}

type Fibres = Readonly<Record<FibreId, number>>;
/** Rows of less weight than this move no percentile that is shown. */
const LEAST_WEIGHT = 1e-5;
interface Weighted { readonly weight: number; readonly points: readonly number[] }

function components(fibres: Fibres, rows: RulingRows): Weighted[] {
  const shares = byKind(fibres);
  return KINDS.flatMap((f, k) => ROW_IDS.map((r) => ({ weight: (shares[k] as number) * rows[f][r], points: CELLS[f][r].points }))).filter((c) => c.weight > LEAST_WEIGHT);
}

/** The smallest x in 0–100 with P(improvement ≤ x) ≥ chance, of a mixture, by bisection to 0.01 per cent. */
function mixtureQuantile(parts: readonly Weighted[], chance: number): number {
  const below = (x: number) => parts.reduce((sum, c) => sum + c.weight * chanceAtMost(c.points, x), 0);
  const target = chance * parts.reduce((sum, c) => sum + c.weight, 0);
  if (below(0) >= target) return 0;
  let [low, high] = [0, 100];
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (below(middle) >= target) high = middle;
    else low = middle;
  }
  return high;
}

/** 10th, 50th and 90th percentile of the improvement, in per cent, mixed over fibres and ruling rows. */
export function improvementRange(fibres: Fibres, rows: RulingRows): Range {
  const parts = components(fibres, rows);
  return { low: mixtureQuantile(parts, 0.1), median: mixtureQuantile(parts, 0.5), high: mixtureQuantile(parts, 0.9) };
}

/** Chance that the best method still allowed brings back under 40 per cent. */
export const chanceOfFailing = (fibres: Fibres, rows: RulingRows): number =>
  FIBRE_IDS.reduce((sum, f) => sum + fibres[f] * ROW_IDS.reduce((s, r) => s + rows[f][r] * CELLS[f][r].fails, 0), 0);

/** Chance that only repairs are needed: mechanisms hold, and none of them is one that cleaning answers. */
export const chanceOfRepairOnly = (happened: WhatHappened, fibres: Fibres): number =>
  happened.sets.reduce((sum, set, i) =>
    set.length > 0 && set.every((m) => ROWS_OF[m] === null) ? sum + FIBRE_IDS.reduce((s, f) => s + fibres[f] * (happened.given[f][i] as number), 0) : sum, 0);
