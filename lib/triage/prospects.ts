import { DAMAGE_IDS, type DamageId } from "../trade/damage";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { BROUGHT_BACK, improvementCell, ROW_IDS, ROWS_OF, type RowId } from "../trade/improvement";
import type { Range } from "./assessment";
import { chanceAtMost, ladderOf, mixtureAtStep, mixtureQuantile, quantilePoints, STEPS_PER_CENT } from "./improvement-quantiles";
import { byKind, KIND_OF, KINDS } from "./kinds";
import { freshChance } from "./mechanism-priors";
import type { Component } from "./mechanism-sets";
import type { Told } from "./told";
import { chanceWithout, type WhatHappened } from "./what-happened";

const K = KINDS.length;
const R = ROW_IDS.length;
/** The place in a row of chances that stands for no row at all: nothing holds, or only repairs. */
const NO_ROW = R;
const SOIL = ROW_IDS.indexOf("soil");

/** The quantile points of every kind × row. */
const POINTS = KINDS.flatMap((f) => ROW_IDS.map((r) => quantilePoints(improvementCell(r, f))));
const LADDER = ladderOf(POINTS);

/** Chance that a row brings back under the least that counts, on one fibre. */
export const failsOn = (fibre: FibreId, row: RowId): number =>
  chanceAtMost(POINTS[(KIND_OF[fibre]) * R + ROW_IDS.indexOf(row)] as number[], BROUGHT_BACK.leastPerCent);

/** The rows of each kind by median, then 90th, then 10th percentile, the worst first, as places in ROW_IDS. */
const WORST_FIRST = KINDS.map((f) => {
  const cell = (r: number) => improvementCell(ROW_IDS[r] as RowId, f);
  return ROW_IDS.map((_, i) => i).sort((a, b) => cell(a).median - cell(b).median || cell(a).high - cell(b).high || cell(a).low - cell(b).low);
});

/** `rows[fibre][row]`: P(this row rules | fibre, told); sums to 1 for each fibre. */
export type RulingRows = Readonly<Record<FibreId, Readonly<Record<RowId, number>>>>;

/** For one ageing of browning and of dye: how bad each mechanism is on each kind, 0 the worst, `ranks[m·K + k]`. */
function ranksFor(fresh: { browning: boolean; dye: boolean }): Uint8Array {
  return Uint8Array.from(DAMAGE_IDS.flatMap((m) => {
    const rows = ROWS_OF[m];
    const row = rows === null ? null : rows[(m === "dye-bleed" ? fresh.dye : fresh.browning) ? "fresh" : "old"];
    return KINDS.map((_, k) => (row === null ? NO_ROW : (WORST_FIRST[k] as number[]).indexOf(ROW_IDS.indexOf(row))));
  }));
}
/** The four ageings, `2·browning + dye`, 1 where fresh. */
const RANKS = [0, 1].flatMap((browning) => [0, 1].map((dye) => ranksFor({ browning: browning === 1, dye: dye === 1 })));
const bitsWhere = (holds: (m: DamageId) => boolean) => DAMAGE_IDS.reduce((mask, m, i) => (holds(m) ? mask | (1 << i) : mask), 0);
const isAged = (m: DamageId) => ROWS_OF[m] !== null && ROWS_OF[m].fresh !== ROWS_OF[m].old;
/** The mechanisms whose row depends on the age of browning, and on that of dye. */
const BROWNING_AGES = bitsWhere((m) => isAged(m) && m !== "dye-bleed");
const DYE_AGES = bitsWhere((m) => isAged(m) && m === "dye-bleed");

/** Working space of every call in turn. */
let worst = new Uint8Array(4096);

/** Multiplies P(a component brings no row worse than rank r) into `out[k·(R + 1) + r]`, for every kind. */
function timesNoWorse(out: Float64Array, c: Component, ranks: Uint8Array): void {
  const own = c.masks.length === 2 ? null : noWorse(c, ranks);
  if (own) {
    for (let i = 0; i < out.length; i += 1) out[i] = (out[i] as number) * (own[i] as number);
    return;
  }
  const m = (c.added[1] as number) * K;
  for (let k = 0; k < K; k += 1) {
    const absent = c.chances[k] as number;
    for (let at = k * (R + 1) + (ranks[m + k] as number) + 1; at <= k * (R + 1) + R; at += 1) out[at] = (out[at] as number) * absent;
  }
}

/** P(a component brings no row worse than rank r), for every kind: its sets by their worst row, added up from the mildest. */
function noWorse(c: Component, ranks: Uint8Array): Float64Array {
  const sets = c.masks.length;
  if (worst.length < sets * K) worst = new Uint8Array(sets * K);
  const out = new Float64Array(K * (R + 1));
  for (let k = 0; k < K; k += 1) {
    worst[k] = NO_ROW;
    out[k * (R + 1) + NO_ROW] = c.chances[k] as number;
  }
  for (let i = 1; i < sets; i += 1) {
    const [parent, m, here] = [(c.parents[i] as number) * K, (c.added[i] as number) * K, i * K];
    for (let k = 0; k < K; k += 1) {
      const rank = Math.min(worst[parent + k] as number, ranks[m + k] as number);
      worst[here + k] = rank;
      const at = k * (R + 1) + rank;
      out[at] = (out[at] as number) + (c.chances[here + k] as number);
    }
  }
  for (let k = 0; k < K; k += 1) for (let at = k * (R + 1) + R - 1; at >= k * (R + 1); at -= 1) out[at] = (out[at] as number) + (out[at + 1] as number);
  return out;
}

/** P(no row worse than rank r) by the product over components, for these ranks. */
function productOf(components: readonly Component[], ranks: Uint8Array): Float64Array {
  const out = new Float64Array(K * (R + 1)).fill(1);
  for (const c of components) timesNoWorse(out, c, ranks);
  return out;
}

const times = (a: Float64Array, b: Float64Array): Float64Array => {
  const out = new Float64Array(a.length);
  for (let i = 0; i < a.length; i += 1) out[i] = (a[i] as number) * (b[i] as number);
  return out;
};

/** Adds what one ageing says to the chances of the rows: P(none worse) falls from rank to rank by the chance of the row there. */
function addRows(sums: Float64Array, chance: number, none: Float64Array): void {
  for (let k = 0; k < K; k += 1) {
    const [at, ranked] = [k * (R + 1), WORST_FIRST[k] as number[]];
    for (let r = 0; r < R; r += 1) {
      const row = k * R + (ranked[r] as number);
      sums[row] = (sums[row] as number) + chance * Math.max(0, (none[at + r] as number) - (none[at + r + 1] as number));
    }
    sums[k * R + SOIL] = (sums[k * R + SOIL] as number) + chance * (none[at + NO_ROW] as number);
  }
}

/**
 * Which row of the improvement table rules: of all mechanisms that hold, each taken fresh or older, the worst; plain soil
 * where none has a row. Components are independent, so P(none worse) is their product; those that no age touches are
 * multiplied once. Exact.
 */
export function rulingRows(happened: WhatHappened, told: Told): RulingRows {
  const sums = new Float64Array(K * R);
  const touched = (c: Component) => ((c.group & BROWNING_AGES) !== 0 ? 2 : 0) + ((c.group & DYE_AGES) !== 0 ? 1 : 0);
  const [none, dyed, browned, both] = [0, 1, 2, 3].map((t) => happened.components.filter((c) => touched(c) === t)) as [Component[], Component[], Component[], Component[]];
  const steady = productOf(none, RANKS[0] as Uint8Array);
  const byDye = [0, 1].map((d) => times(steady, productOf(dyed, RANKS[d] as Uint8Array)));
  const byBrowning = [0, 1].map((b) => productOf(browned, RANKS[2 * b] as Uint8Array));
  const [browning, dye] = [freshChance("browning", told), freshChance("dye", told)];
  for (const b of [0, 1] as const) {
    for (const d of [0, 1] as const) {
      const chance = (b ? browning : 1 - browning) * (d ? dye : 1 - dye);
      if (chance === 0) continue;
      const apart = times(byDye[d] as Float64Array, byBrowning[b] as Float64Array);
      addRows(sums, chance, both.length > 0 ? times(apart, productOf(both, RANKS[2 * b + d] as Uint8Array)) : apart);
    }
  }
  return recordsOf(sums);
}

/** The same as records; fibres of one kind share one. */
function recordsOf(sums: Float64Array): RulingRows {
  const kinds = KINDS.map((_, k) => {
    const rows = {} as Record<RowId, number>;
    for (let r = 0; r < R; r += 1) rows[ROW_IDS[r] as RowId] = sums[k * R + r] as number;
    return rows;
  });
  const out = {} as Record<FibreId, Record<RowId, number>>;
  for (const f of FIBRE_IDS) out[f] = kinds[KIND_OF[f]] as Record<RowId, number>;
  return out;
}

type Fibres = Readonly<Record<FibreId, number>>;

/** Weight of every kind × row, in the order of the ladder; sums to 1. */
function weightsOf(fibres: Fibres, rows: RulingRows): Float64Array {
  const shares = byKind(fibres);
  const out = new Float64Array(K * R);
  let total = 0;
  KINDS.forEach((f, k) => {
    const own = rows[f];
    for (let r = 0; r < R; r += 1) total += out[k * R + r] = (shares[k] as number) * own[ROW_IDS[r] as RowId];
  });
  for (let i = 0; i < out.length; i += 1) out[i] = (out[i] as number) / total;
  return out;
}

/** 10th, 50th and 90th percentile of the improvement, in per cent, mixed over fibres and ruling rows. */
export function improvementRange(fibres: Fibres, rows: RulingRows): Range {
  const weights = weightsOf(fibres, rows);
  const at = (chance: number) => mixtureQuantile(LADDER, weights, chance);
  return { low: at(0.1), median: at(0.5), high: at(0.9) };
}

/** Chance that the best method still allowed brings back under 40 per cent. */
export const chanceOfFailing = (fibres: Fibres, rows: RulingRows): number =>
  mixtureAtStep(LADDER, weightsOf(fibres, rows), BROUGHT_BACK.leastPerCent * STEPS_PER_CENT);

const CLEANED = DAMAGE_IDS.filter((m) => ROWS_OF[m] !== null);

/** Chance that only repairs are needed: mechanisms hold, and none of them is one that cleaning answers. */
export const chanceOfRepairOnly = (happened: WhatHappened, fibres: Fibres): number =>
  Math.max(0, chanceWithout(happened, fibres, CLEANED) - chanceWithout(happened, fibres, DAMAGE_IDS));
