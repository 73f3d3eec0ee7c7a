import type { ActionId, MechanismId } from "../../triage/assessment";

/** Harm to the rug itself, beside which its worth may be set against the cost of the work; soil, shading, wear and what is still fresh are none. */
export const HARM: readonly MechanismId[] = [
  "bleaching", "pile-distortion", "dye-bleed", "browning-cleaning", "urine-old", "food-old", "mould", "insects", "backing-failure", "shrinkage",
];
/** What we offer to do for a price: beside it a letter does not say that the work is not worth it. */
export const OFFERED: readonly ActionId[] = ["routine-clean", "inspect-and-test", "quote-with-limits", "first-aid"];
