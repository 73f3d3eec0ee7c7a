import type { ReagentId } from "./bench-test-row";
import type { Source } from "./fibres";

/** What a bench test is done with, and what its owner must have seen to before it is switched on. */
export interface ReagentRow extends Source {
  readonly name: string;
  /** What the workshop's own written assessment must have settled. */
  readonly assessed: readonly string[];
  readonly cautions: readonly string[];
  readonly waste: string;
  /** What it must never meet, its waste included. */
  readonly neverWith: readonly ReagentId[];
}

const USUAL: Source = { how: "common practice",
  source: "The usual cautions of a bench: common practice, no published source. The supplier’s safety sheet and local rules decide" };
const ASSESSED = [
  "Who may use it, how they were trained, and the written instruction they follow.",
  "Its safety sheet is at hand, and where it is kept is locked, labelled and ventilated.",
  "Fume cupboard or ventilation, goggles, gloves, eye wash and first aid are there.",
  "Local rules for buying, keeping and using it are met.",
] as const;
const ACID_WASTE = "Into its own labelled acid container, to a licensed carrier. Never into the drain, never with hypochlorite.";
const ACID_CAUTION = "Burns skin and eyes; its vapour burns the lungs.";

export const REAGENTS = {
  flame: {
    ...USUAL, name: "open flame",
    assessed: [ASSESSED[0], "The place is bare, fireproof, and away from solvents, lint and rugs.",
      "Water and an extinguisher are at hand; insurer and local fire rules allow it."],
    cautions: ["Fire and burns.", "Smoke of unknown fibres and finishes: ventilate."], waste: "Cold, wetted ash in a metal bin.", neverWith: ["acetone"],
  },
  hypochlorite: {
    ...USUAL, name: "alkaline hypochlorite", assessed: ASSESSED,
    cautions: ["Caustic, bleaches.", "With any acid or with ammonia it gives off poisonous gas."],
    waste: "Into its own labelled alkaline container, to a licensed carrier. Never with an acid, with ammonia or with waste of another test.",
    neverWith: ["formic-acid", "formic-acid-zinc-chloride", "sulphuric-acid-75", "dye-test-acid", "dye-test-alkali", "acetone"],
  },
  acetone: {
    ...USUAL, name: "acetone", assessed: ASSESSED,
    cautions: ["Very flammable, its vapour travels along the floor.", "Makes drowsy, dries the skin."],
    waste: "Into a closed container for solvents, to a licensed carrier.", neverWith: ["flame", "hypochlorite", "sulphuric-acid-75"],
  },
  "formic-acid": { ...USUAL, name: "formic acid, 80 %", assessed: ASSESSED, cautions: [ACID_CAUTION], waste: ACID_WASTE, neverWith: ["hypochlorite",
    "sulphuric-acid-75", "dye-test-alkali"] },
  "formic-acid-zinc-chloride": {
    ...USUAL, name: "formic acid and zinc chloride", assessed: ASSESSED, cautions: [ACID_CAUTION, "Used warm. Zinc salts harm water life."], waste: ACID_WASTE,
    neverWith: ["hypochlorite", "sulphuric-acid-75", "dye-test-alkali"],
  },
  "sulphuric-acid-75": {
    ...USUAL, name: "sulphuric acid, 75 %", assessed: ASSESSED, cautions: ["Burns through skin and cloth.", "Grows very hot when water is added."], waste: ACID_WASTE,
    neverWith: ["hypochlorite", "formic-acid", "formic-acid-zinc-chloride", "acetone", "dye-test-alkali"],
  },
  "dye-test-acid": { ...USUAL, name: "mild acid for dye tests", assessed: ASSESSED, cautions: ["Irritates eyes and skin."], waste: ACID_WASTE,
    neverWith: ["hypochlorite"] },
  "dye-test-alkali": {
    ...USUAL, name: "mild alkali for dye tests", assessed: ASSESSED, cautions: ["Irritates eyes and skin.", "Where it is ammonia: poisonous gas with hypochlorite."],
    waste: "Into its own labelled container, to a licensed carrier; never with hypochlorite or an acid.",
    neverWith: ["hypochlorite", "formic-acid", "formic-acid-zinc-chloride", "sulphuric-acid-75"],
  },
} as const satisfies Readonly<Record<ReagentId, ReagentRow>>;

export type { ReagentId } from "./bench-test-row";
