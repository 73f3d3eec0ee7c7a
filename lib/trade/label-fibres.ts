import type { FibreId } from "./fibres";
import type { LabelSays } from "./likelihoods-label";

/** The names a label may give a fibre, finer than the classes triage reasons over. */
export type FineFibre =
  | "silk" | "wool" | "hair" | "cotton" | "mercerised-cotton" | "linen" | "hemp" | "ramie" | "jute" | "sisal" | "coir" | "abaca"
  | "viscose" | "modal" | "lyocell" | "cupro" | "acetate" | "triacetate" | "bamboo" | "art-silk"
  | "polyamide" | "polyester" | "polypropylene" | "acrylic" | "modacrylic" | "elastane" | "metal" | "rare" | "synthetic" | "other-fibres";

/**
 * The class of each, for a pile of that fibre alone. Bamboo on a label is nearly always viscose made of bamboo (FTC, "How
 * to avoid bamboozling your customers"). `art-silk` is no legal name. Null: too vague to be a class (synthetic, other
 * fibres). `hair` is that of goat, camel and the like, `rare` every other fibre with a name of its own. Ramie, lyocell, modal and cupro are never viscose. Partition as in `fibres`, elicited.
 */
export const CLASS_OF_FINE: Readonly<Record<FineFibre, LabelSays | null>> = {
  silk: "silk", wool: "wool", hair: "wool", cotton: "cotton", "mercerised-cotton": "mercerised-cotton", linen: "bast", hemp: "bast", ramie: "bast",
  jute: "hard-fibre", sisal: "hard-fibre", coir: "hard-fibre", abaca: "hard-fibre",
  viscose: "viscose", bamboo: "viscose", modal: "lyocell", lyocell: "lyocell", cupro: "lyocell", acetate: "acetate", triacetate: "acetate",
  "art-silk": "art-silk", polyamide: "polyamide", polyester: "polyester", polypropylene: "polypropylene",
  acrylic: "acrylic", modacrylic: "acrylic", elastane: "other", metal: "other", rare: "other", synthetic: null, "other-fibres": null,
};

/** Classes that are a finish of another, which a label may name by either: mercerised cotton is cotton, and mostly called just that. Common practice, no published source. */
const FINISH_OF: Readonly<Partial<Record<FibreId, FibreId>>> = { "mercerised-cotton": "cotton" };
/** Whether two classes are the same fibre, so that a label that names one does not speak against the other. */
export const isSameFibre = (a: FibreId, b: FibreId): boolean => (FINISH_OF[a] ?? a) === (FINISH_OF[b] ?? b);

/** What imitation silk may be by its legal name. */
export const REGENERATED: readonly FineFibre[] = ["viscose", "bamboo", "modal", "lyocell", "cupro", "acetate"];

/** Blends with a class of their own, by their classes in alphabetical order. */
export const BLENDS: Readonly<Record<string, LabelSays>> = {
  "silk+wool": "wool-silk", "viscose+wool": "wool-viscose", "silk+viscose": "silk-viscose", "cotton+viscose": "cotton-viscose",
  viscose: "viscose", "silk+viscose+wool": "wool-viscose",
};
/** A fibre below this share of the pile makes no blend. As in `fibres`. */
export const BLEND_PERCENT = 10;
/** From this share a mixture without a class of its own is handled as its main fibre: 80 % wool with 20 % polyamide. Elicited. */
export const LEADING_PERCENT = 75;
/** From this share viscose rules a mixture without a class of its own: viscose with polyester is handled as viscose. Elicited. */
export const WEAKEST_RULES_PERCENT = 30;
/** Fibres that a label of the whole rug counts in though they are only its foundation. Common practice, no published source. */
export const FOUNDATION_FIBRES: readonly FineFibre[] = ["cotton", "jute"];
/** Above this share of the whole they are no mere foundation: "80% cotton, 20% polyester" is a cotton rug. Elicited. */
export const FOUNDATION_MOST_PERCENT = 50;
