import { COLUMNS_OF } from "../trade/columns";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { ofFibres } from "./of-fibres";

/** Fibres that share their columns share every figure of damage and improvement: worked out once a kind, the first fibre of it standing for all. */
const key = (fibre: FibreId): string => COLUMNS_OF[fibre].join();
export const KINDS: readonly FibreId[] = FIBRE_IDS.filter((f, i) => FIBRE_IDS.findIndex((g) => key(g) === key(f)) === i);
/** The place in KINDS of a fibre's kind. */
export const KIND_OF: Readonly<Record<FibreId, number>> = ofFibres((f) => KINDS.findIndex((k) => key(k) === key(f)));

/** A value for every fibre from one for every kind. */
export const spread = <T>(values: readonly T[]): Record<FibreId, T> => ofFibres((f) => values[KIND_OF[f]] as T);

/** Probabilities of the fibres added up by kind. */
export function byKind(fibres: Readonly<Record<FibreId, number>>): Float64Array {
  const out = new Float64Array(KINDS.length);
  for (const f of FIBRE_IDS) out[KIND_OF[f]] = (out[KIND_OF[f]] as number) + fibres[f];
  return out;
}
