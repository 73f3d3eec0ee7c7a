import { DAMAGE_IDS, FAMILIES } from "../trade/damage";
import type { Clue, Report } from "./clues";
import { KINDS } from "./kinds";

/**
 * Mechanisms that share no clue are independent given all that was told, so their sets are weighed apart: a component is
 * a group of mechanisms joined by what is seen, and the joint posterior is the product over components. Exact.
 */
export interface Component {
  /** Its mechanisms, as bits in the order of DAMAGE_IDS. */
  readonly group: number;
  /** All sets of its mechanisms that can hold together, as bits in the order of DAMAGE_IDS; the empty one first. */
  readonly masks: Int32Array;
  /** From which set each was grown (by its place), and the mechanism added (by its place in DAMAGE_IDS); the empty one has no meaning here. */
  readonly parents: Int32Array;
  readonly added: Uint8Array;
  /** P(set | kind, told), a row a set, a column a kind; each column sums to 1. */
  readonly chances: Float64Array;
}

const K = KINDS.length;
const placeOf = (id: string) => DAMAGE_IDS.findIndex((m) => m === id);
const FAMILY_MASKS = FAMILIES.map((f) => f.reduce((mask, m) => mask | (1 << placeOf(m)), 0));
/** The bit of the one mechanism that cannot hold beside this one, or 0. */
const RIVAL_BIT = DAMAGE_IDS.map((m) => FAMILIES.filter((f) => f.includes(m)).reduce((mask, f) => f.reduce((b, x) => (x === m ? b : b | (1 << placeOf(x))), mask), 0));

/** Groups of mechanisms, as bits, such that no two groups share a clue or a family. */
export function groupsOf(clueMasks: readonly number[]): number[] {
  let groups: number[] = [];
  for (const mask of [...FAMILY_MASKS, ...clueMasks]) {
    let joined = mask;
    const apart: number[] = [];
    for (const g of groups) {
      if ((g & joined) === 0) apart.push(g);
      else joined |= g;
    }
    groups = [...apart, joined];
  }
  const taken = groups.reduce((a, b) => a | b, 0);
  return [...groups, ...DAMAGE_IDS.map((_, i) => 1 << i).filter((bit) => (bit & taken) === 0)];
}

/** How many sets a group makes: a family has three states, every other mechanism two. */
function countSets(group: number): number {
  const families = FAMILY_MASKS.filter((f) => (f & group) !== 0).length;
  let bits = 0;
  for (let rest = group; rest !== 0; rest &= rest - 1) bits += 1;
  return 3 ** families * 2 ** (bits - 2 * families);
}

/** What one mechanism multiplies into a row: its odds on every kind, damped by what is absent, then how it lets each clue pass. */
function factorsOf(mechanism: number, { odds, silence, clues }: { odds: Float64Array; silence: Float64Array; clues: readonly Clue[] }): Float64Array {
  const out = new Float64Array(K + clues.length);
  for (let k = 0; k < K; k += 1) out[k] = (odds[mechanism * K + k] as number) * (silence[mechanism] as number);
  clues.forEach((c, i) => { out[K + i] = c.lets[mechanism] as number; });
  return out;
}

/** Working rows of every call in turn, grown when needed: a fresh buffer each time would cost more than the arithmetic. */
let scratch = new Float64Array(4096);

/** The component of one group. `odds[m·K + k]` against absence; of a family's members against the absence of both. */
function componentOf(group: number, odds: Float64Array, silence: Float64Array, shown: Report["shown"]): Component {
  const here = shown.filter((s) => (s.clue.mask & group) !== 0);
  const clues = here.map((s) => s.clue);
  const width = K + clues.length;
  const room = countSets(group);
  if (scratch.length < room * width) scratch = new Float64Array(room * width);
  const rows = scratch;
  const [masks, parents, added] = [new Int32Array(room), new Int32Array(room), new Uint8Array(room)];
  rows.fill(1, 0, K);
  here.forEach((s, i) => { rows[K + i] = s.weight * (1 - s.clue.none); });
  let count = 1;
  for (let rest = group; rest !== 0; rest &= rest - 1) {
    const m = 31 - Math.clz32(rest & -rest);
    const factors = factorsOf(m, { odds, silence, clues });
    const rival = RIVAL_BIT[m] as number;
    for (let i = 0, n = count; i < n; i += 1) {
      if (((masks[i] as number) & rival) !== 0) continue;
      for (let k = 0, from = i * width, to = count * width; k < width; k += 1) rows[to + k] = (rows[from + k] as number) * (factors[k] as number);
      masks[count] = (masks[i] as number) | (1 << m);
      parents[count] = i;
      added[count] = m;
      count += 1;
    }
  }
  return { group, masks, parents, added, chances: posteriorOf(rows, width, room) };
}

/** Multiplies the chance of what is shown into each set's odds and scales every kind to 1. */
function posteriorOf(rows: Float64Array, width: number, sets: number): Float64Array {
  const chances = new Float64Array(sets * K);
  const totals = new Float64Array(K);
  for (let i = 0; i < sets; i += 1) {
    const at = i * width;
    let seen = 1;
    for (let k = K; k < width; k += 1) seen *= 1 - (rows[at + k] as number);
    for (let k = 0; k < K; k += 1) {
      const weight = (rows[at + k] as number) * seen;
      chances[i * K + k] = weight;
      totals[k] = (totals[k] as number) + weight;
    }
  }
  for (let i = 0; i < chances.length; i += K) for (let k = 0; k < K; k += 1) chances[i + k] = (chances[i + k] as number) / (totals[k] as number);
  return chances;
}

/** How far each mechanism is damped by what is absent: a power of the chance that it would not have shown it. */
function silenceOf(absent: Report["absent"]): Float64Array {
  const logs = new Float64Array(DAMAGE_IDS.length);
  for (const { clue, weight } of absent) for (let m = 0; m < logs.length; m += 1) logs[m] = (logs[m] as number) + weight * (clue.logLets[m] as number);
  return logs.map(Math.exp);
}

/** All components for these odds and this report. */
export function componentsOf(odds: Float64Array, report: Report): Component[] {
  const silence = silenceOf(report.absent);
  return groupsOf(report.shown.map((s) => s.clue.mask)).map((group) => componentOf(group, odds, silence, report.shown));
}

/** P(no mechanism of `mask` holds | kind), for every kind. */
export function chanceOfNone(components: readonly Component[], mask: number): Float64Array {
  const out = new Float64Array(K).fill(1);
  for (const c of components) {
    for (let k = 0; k < K; k += 1) {
      let none = 0;
      for (let i = 0; i < c.masks.length; i += 1) if (((c.masks[i] as number) & mask) === 0) none += c.chances[i * K + k] as number;
      out[k] = (out[k] as number) * none;
    }
  }
  return out;
}
