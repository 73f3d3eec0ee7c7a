import { SMALLEST_CELL } from "../trade/likelihood-table";
import { OTHER, type NamedVector } from "./classes";
import { seededRandom, type Random } from "./random";

/** Draws of all tables for one interval. 300 put the ends of an 80 % interval within about .02. */
export const DRAWS = 300;

/**
 * What is drawn from a table hangs on the seed and the table alone, never on the findings: it is drawn once and kept, the
 * longest unused let go first. Each has a stream of its own, so that keeping changes no number.
 */
const kept = new Map<string, Float64Array>();
/** One takes some 40 kB. */
const MOST_KEPT = 512;

export function drawnOnce(seed: number, what: string, draw: (random: Random) => Float64Array): Float64Array {
  const key = `${seed}/${what}`;
  const known = kept.get(key);
  if (known) {
    kept.delete(key);
    kept.set(key, known);
    return known;
  }
  const made = draw(seededRandom(seed, what));
  kept.set(key, made);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value as string);
  return made;
}

/** DRAWS vectors over the named classes, one after another, as logarithms; no cell under the smallest that a table may state. */
export function drawnLogs(seed: number, what: string, draw: (random: Random) => NamedVector): Float64Array {
  return drawnOnce(seed, what, (random) => {
    const out = new Float64Array(DRAWS * OTHER);
    for (let d = 0; d < DRAWS; d += 1) {
      const vector = draw(random);
      for (let i = 0; i < OTHER; i += 1) out[d * OTHER + i] = Math.log(Math.max(vector[i] as number, LEAST));
    }
    return out;
  });
}
/** Products of several readings may be far smaller than one cell. */
const LEAST = SMALLEST_CELL ** 6;
