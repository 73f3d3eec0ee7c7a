import { CHANGES, CHANGE_IDS, FAMILIES, SILENCE_COUNTS, type ChangeId, type DamageId } from "../trade/damage";
import { KINDS } from "./kinds";

/** Which changes are reported or measured, and which a person who answered did not name. */
export interface Report { readonly seen: readonly ChangeId[]; readonly silent: readonly ChangeId[] }

/** A mechanism with its odds on each kind of pile: against absence, of a family's members against the absence of both. */
export interface Weighable { readonly id: DamageId; readonly odds: readonly number[] }

/** Sets as bits over `mechanisms`; a row of `rows` a set, `width` numbers wide: the kinds first, then the changes seen. */
export interface Sets { readonly mechanisms: readonly Weighable[]; readonly bits: Int32Array; readonly rows: Float64Array; readonly width: number }

/** Of more sets than this only those of fewer mechanisms at once are kept. */
const MOST_SETS = 4096;

/** Rows of every call in turn: half a megabyte anew each time would cost more than the arithmetic. */
const SCRATCH = new Float64Array(MOST_SETS * (KINDS.length + CHANGE_IDS.length));

/** How many sets of at most `size` can be made of so many mechanisms. */
function setsUpTo(size: number, of: number): number {
  let [all, ofSize] = [1, 1];
  for (let k = 1; k <= size; k += 1) {
    ofSize = (ofSize * (of - k + 1)) / k;
    all += ofSize;
  }
  return all;
}

/** The greatest size of a set such that all sets up to it are at most MOST_SETS. */
export function mostAtOnce(mechanisms: number): number {
  let size = 0;
  while (size < mechanisms && setsUpTo(size + 1, mechanisms) <= MOST_SETS) size += 1;
  return size;
}

/** The bit of the mechanism that cannot hold beside this one, or 0. */
function rivalBit(id: DamageId, mechanisms: readonly Weighable[]): number {
  const rival = FAMILIES.find((f) => f.includes(id))?.find((m) => m !== id);
  const at = mechanisms.findIndex((m) => m.id === rival);
  return at < 0 ? 0 : 1 << at;
}

/** What one more mechanism multiplies into a row. */
function factorsOf({ id, odds }: Weighable, report: Report): Float64Array {
  const lets = (c: ChangeId) => 1 - (CHANGES[c].by[id] ?? 0);
  const silence = report.silent.reduce((p, c) => p * lets(c), 1) ** SILENCE_COUNTS.value;
  return Float64Array.from([...odds.map((o) => o * silence), ...report.seen.map(lets)]);
}

/**
 * All sets that can hold together, the empty one first, each grown from a smaller one by one multiplication a number: a row
 * holds the odds of the set on every kind times the chance of the silence, then for each change seen the chance that
 * nothing in the set would have shown it. The rows stand in one buffer and hold until the next call.
 */
export function growSets(mechanisms: readonly Weighable[], report: Report): Sets {
  const width = KINDS.length + report.seen.length;
  const most = mostAtOnce(mechanisms.length);
  const room = setsUpTo(most, mechanisms.length);
  const rows = SCRATCH.fill(1, 0, KINDS.length);
  report.seen.forEach((c, i) => { rows[KINDS.length + i] = 1 - CHANGES[c].none; });
  const [bits, sizes] = [new Int32Array(room), new Uint8Array(room)];
  let count = 1;
  mechanisms.forEach((mechanism, m) => {
    const factors = factorsOf(mechanism, report);
    const rival = rivalBit(mechanism.id, mechanisms);
    for (let i = 0, n = count; i < n; i += 1) {
      if ((sizes[i] as number) >= most || ((bits[i] as number) & rival) !== 0) continue;
      for (let k = 0, from = i * width, to = count * width; k < width; k += 1) rows[to + k] = (rows[from + k] as number) * (factors[k] as number);
      bits[count] = (bits[i] as number) | (1 << m);
      sizes[count] = (sizes[i] as number) + 1;
      count += 1;
    }
  });
  return { mechanisms, bits: bits.subarray(0, count), rows: rows.subarray(0, count * width), width };
}

/** Multiplies the chance of what is seen into each set's odds, in place, and gives the sum for every kind. */
export function weighSets({ rows, width }: Sets): Float64Array {
  const kinds = KINDS.length;
  const totals = new Float64Array(kinds);
  for (let at = 0; at < rows.length; at += width) {
    let seen = 1;
    for (let k = kinds; k < width; k += 1) seen *= 1 - (rows[at + k] as number);
    for (let f = 0; f < kinds; f += 1) {
      const weight = (rows[at + f] as number) * seen;
      rows[at + f] = weight;
      totals[f] = (totals[f] as number) + weight;
    }
  }
  return totals;
}

/** The sets that hold at least this share on some kind. */
export function setsWorthKeeping({ rows, width }: Sets, totals: Float64Array, share: number): number[] {
  const least = totals.map((t) => t * share);
  const kept: number[] = [];
  for (let at = 0, i = 0; at < rows.length; at += width, i += 1) {
    let f = 0;
    while (f < least.length && (rows[at + f] as number) < (least[f] as number)) f += 1;
    if (f < least.length) kept.push(i);
  }
  return kept;
}
