import { FIBRE_IDS, type FibreId } from "../trade/fibres";

/** A value for every fibre class, `other` included. */
export const ofFibres = <T>(value: (fibre: FibreId) => T): Record<FibreId, T> =>
  Object.fromEntries(FIBRE_IDS.map((f) => [f, value(f)])) as Record<FibreId, T>;
