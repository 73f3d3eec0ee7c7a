import type { FibreId } from "../trade/fibres";

/** Piles that hold viscose. */
export const VISCOSE_LIKE: readonly FibreId[] = ["viscose", "wool-viscose", "silk-viscose", "cotton-viscose"];

/** Fibres that lose their strength and form in water as viscose does. Source: elicited, from the wet behaviour of regenerated cellulose. */
export const WATER_SHY: readonly FibreId[] = [...VISCOSE_LIKE, "lyocell", "acetate"];
