import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import type { NamedFibre } from "../trade/likelihood-table";

/**
 * Sums over the classes run on plain arrays. A `NamedVector` has a number for each class with rows of its own, in the
 * order of NAMED; a `ClassVector` the same and, last, `other`.
 */
export const NAMED: readonly NamedFibre[] = FIBRE_IDS.filter((f): f is NamedFibre => f !== "other");
export const CLASSES: readonly FibreId[] = [...NAMED, "other"];
export const OTHER = NAMED.length;

export type NamedVector = readonly number[];
export type ClassVector = readonly number[];

export const classIndex = (fibre: FibreId): number => CLASSES.indexOf(fibre);

export const vectorOf = (byFibre: Readonly<Record<FibreId, number>>): number[] => CLASSES.map((f) => byFibre[f]);
export function recordOf(vector: ClassVector): Record<FibreId, number> {
  const out = {} as Record<FibreId, number>;
  for (let i = 0; i < CLASSES.length; i += 1) out[CLASSES[i] as FibreId] = vector[i] as number;
  return out;
}

/** Mean of a vector over the named classes, weighted by a prior over all classes. */
export function weightedMean(vector: NamedVector, prior: ClassVector): number {
  let sum = 0;
  let weight = 0;
  for (let i = 0; i < OTHER; i += 1) {
    sum += (prior[i] as number) * (vector[i] as number);
    weight += prior[i] as number;
  }
  return sum / weight;
}
