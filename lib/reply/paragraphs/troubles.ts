import type { ActionId, MechanismId, MethodId } from "../../triage/assessment";
import type { NumberFact } from "../condition";

/** Harm to the rug itself, beside which its worth may be set against the cost of the work; soil, shading, wear and what is still fresh are none. */
export const HARM: readonly MechanismId[] = [
  "bleaching", "pile-distortion", "dye-bleed", "browning-cleaning", "urine-old", "food-old", "mould", "insects", "backing-failure", "shrinkage",
];
/** Loss of looks, not of use: the rug still serves. */
export const LOOKS: readonly MechanismId[] = ["fading", "matting", "bleaching", "browning-use", "pile-distortion", "water-mark", "food-old"];
/** What takes its use, or makes it unfit to live with: of such a rug no letter says that only its looks are gone. */
export const LOST_USE: readonly MechanismId[] = ["urine-old", "mould", "insects", "backing-failure", "shrinkage"];
/** No mark, but a pile that lies flat, hard or matted. */
export const PILE_TROUBLE: readonly MechanismId[] = ["matting", "pile-distortion"];
/** No mark either, but colour that is gone: cleaning does not bring it back, whatever of the change it takes. */
export const COLOUR_LOST: readonly MechanismId[] = ["fading", "bleaching"];
/** What is mended, not cleaned away. */
export const REPAIRS: readonly MechanismId[] = ["insects", "backing-failure", "shrinkage"];
/** What leaves a mark that people are tempted to treat at home. */
export const MARKS: readonly MechanismId[] = ["bleaching", "dye-bleed", "browning-cleaning", "browning-use", "urine-fresh", "urine-old", "food-fresh", "food-old", "water-mark"];
/** The ways that clean. */
export const CLEANING: readonly MethodId[] = ["immersion-wash", "wet-hand-clean", "low-moisture", "solvent-dry"];
/** What we offer to do for a price. */
export const OFFERED: readonly ActionId[] = ["routine-clean", "inspect-and-test", "quote-with-limits", "first-aid"];
/** What an inspection of ours can have found. */
export const INSPECTED: readonly string[] = ["not-beyond", "beyond"];
/** From here on the answer begins with it: likely not worth the cost on the published scale of words (IPCC), 66 to 100 in 100. */
export const HARDLY_WORTH = { beyondRepair: 0.66 } as const satisfies Partial<Record<NumberFact, number>>;
/** From here on the answer says that it may not be worth the cost: the lower end of "about as likely as not" on the same scale. */
export const PERHAPS_NOT_WORTH = { beyondRepair: 0.33 } as const satisfies Partial<Record<NumberFact, number>>;
/** An improvement whose upper end is below this is little: letters are sorry for it. Per cent, elicited. */
export const LITTLE = { improvementHigh: 25 } as const satisfies Partial<Record<NumberFact, number>>;
/** From this many points on, a range of improvement tells neither that little comes back nor that most does: a letter says so, and not the range. Elicited. */
export const TELLS_NOTHING = { improvementWidth: 80 } as const satisfies Partial<Record<NumberFact, number>>;
