import type { DamageId } from "./damage";
import type { Source } from "./fibres";

/** What a cause does to the smell, apart from the colour: chance that it smells, and that the smell comes back in damp weather after the best method allowed. 0–1. */
export interface OdourRow extends Source { readonly smells: number; readonly returns: number }

const URINE = "that the smell of urine comes back in damp weather is common practice, no published source; chances elicited for this project";
export const ODOUR: Readonly<Partial<Record<DamageId, OdourRow>>> = {
  "urine-fresh": { smells: 0.7, returns: 0.25, how: "elicited", source: URINE },
  "urine-old": { smells: 0.9, returns: 0.55, how: "elicited", source: URINE },
  "food-fresh": { smells: 0.1, returns: 0.1, how: "elicited", source: "Elicited for this project: milk and what was brought up smell, most other drinks do not" },
  "food-old": { smells: 0.15, returns: 0.2, how: "elicited", source: "Elicited for this project: milk and what was brought up smell, most other drinks do not" },
  mould: { smells: 0.8, returns: 0.5, how: "elicited", source: "Elicited for this project: musty while it is damp, again wherever it grows on" },
};
/** A smell that was told and that no cause here explains. */
export const UNEXPLAINED_ODOUR = { returns: 0.3, how: "elicited", source: "Elicited for this project" } as const satisfies Source & { returns: number };
