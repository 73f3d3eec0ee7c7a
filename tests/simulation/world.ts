/**
 * Chance for the simulation: a generator of its own and worlds in which every likelihood is off. Nothing of the model is
 * used here. mulberry32 (Tommy Ettinger, public domain; from memory).
 */
export type Random = () => number;

export function mulberry32(seed: number): Random {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** 32-bit FNV-1a (Fowler, Noll & Vo), so that a named row has the same error all through one world. */
function hashed(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

/** Log-uniform between 1/most and most. */
export const logUniform = (random: Random, most: number): number => Math.exp((2 * random() - 1) * Math.log(most));

/** Standard normal, Box & Muller 1958. */
export const normal = (random: Random): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

export type Weights = Readonly<Record<string, number>>;

export function pickFrom(random: Random, weights: Weights): string {
  const entries = Object.entries(weights);
  let left = random() * entries.reduce((sum, [, w]) => sum + w, 0);
  for (const [name, weight] of entries) {
    left -= weight;
    if (left < 0) return name;
  }
  return (entries.at(-1) as [string, number])[0];
}

/** How far a likelihood, and a prior, may be off: the factors of the requirement. */
export const MOST_OFF = { likelihood: 2, prior: 3 } as const;

/** A world: the same tables, each cell multiplied once and for all by an error of its own. */
export interface World {
  readonly random: Random;
  /** Between 1/2 and 2, the same for the same name. */
  error(name: string): number;
  /** One of the answers of a row, each weight with its error. */
  pick(row: string, weights: Weights): string;
  /** True with about this chance, its odds with their error. */
  happens(row: string, chance: number): boolean;
}

export function makeWorld(seed: number, random: Random): World {
  const errors = new Map<string, number>();
  const error = (name: string) => {
    const known = errors.get(name) ?? logUniform(mulberry32(hashed(`${seed}/${name}`)), MOST_OFF.likelihood);
    errors.set(name, known);
    return known;
  };
  return {
    random, error,
    pick: (row, weights) => pickFrom(random, Object.fromEntries(Object.entries(weights).map(([answer, w]) => [answer, w * error(`${row}/${answer}`)]))),
    happens: (row, chance) => {
      const odds = (chance / (1 - chance)) * error(row);
      return random() < odds / (1 + odds);
    },
  };
}
