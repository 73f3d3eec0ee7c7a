import { FIBRE_IDS, type FibreId } from "./fibres";

/** The classes of one fibre alone: what a single yarn, a ground or a fringe may be. Blends are classes of a whole pile only. */
const BLENDS = ["wool-silk", "wool-viscose", "silk-viscose", "cotton-viscose"] as const satisfies readonly FibreId[];

export type SingleFibre = Exclude<FibreId, (typeof BLENDS)[number] | "other">;
export const SINGLE_FIBRES: readonly SingleFibre[] = FIBRE_IDS.filter((f): f is SingleFibre => f !== "other" && !(BLENDS as readonly FibreId[]).includes(f));
