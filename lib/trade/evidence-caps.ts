import type { EvidenceGroup } from "./likelihood-table";
import type { FibreId, Source } from "./fibres";

/** How sure evidence may make us, by where it came from. A judgement of this project; photos and words never settle a fibre. */
export type EvidenceStrength = "told" | "photo" | "label-typed" | "label-photo" | "bench" | "laboratory";

export const CAPS_SOURCE: Source = { how: "elicited", source: "How far each kind of evidence can be trusted, judged for this project" };

/** Weakest first: a stronger finding of the same kind replaces a weaker one. */
export const STRENGTHS: readonly EvidenceStrength[] = ["told", "photo", "label-typed", "label-photo", "bench", "laboratory"];

/** The greatest probability a fibre may reach when its best supporting evidence is of this strength. */
export const CAPS: Readonly<Record<EvidenceStrength, number>> = {
  told: 0.9, photo: 0.9, "label-typed": 0.95, "label-photo": 0.98, bench: 0.99, laboratory: 0.995,
};

/**
 * The most that any fibre is believed by words, photos and labels once a test of its fibres is made: a label may be of another
 * rug, so a test that contradicts it has to be able to win by itself. Elicited.
 */
export const UNTESTED_MOST = 0.8;

/** Silk alone may not pass this until a bench test or a laboratory agrees: it is the fibre everything else is sold as. */
export const SILK_CEILING = 0.85;

/**
 * Of a rug said to be this old and in use, no fibre that lives some five years is believed further by words and photos than
 * just under "likely", until a label or a test agrees: something that was told must be mistaken. Elicited.
 */
export const OLD_CEILING = 0.65;
export const OLD_AGES: readonly string[] = ["25-80", "antique"];
export const SHORT_LIVED: readonly FibreId[] = ["viscose", "cotton-viscose", "lyocell", "acetate"];

/** ε: the chance that words and photos, taken together, mislead wholly (the wrong rug, a guess, a restored pile). */
export const WHOLLY_MISLEADING = 0.12;

/**
 * The power on a likelihood when 1, 2, 3 … findings of its group are present: shine, touch, footprints and price carry
 * much the same news. The practice of tempering by .4 to .7 is known from memory; these values are elicited.
 * In `claim`, the label keeps its full weight and tempers the seller's word: who mislabels also misnames.
 */
export const TEMPER: Readonly<Record<EvidenceGroup, readonly number[]>> = {
  lustre: [1, 0.8, 0.68, 0.6],
  make: [1, 0.8, 0.7],
  claim: [1, 0.5],
};
/** The member of a group that is never tempered. */
export const ANCHORS: Readonly<Partial<Record<EvidenceGroup, string>>> = { claim: "label" };

/**
 * A claim (label or seller) and another finding contradict each other where the finding is this many times rarer with
 * the claimed fibre than with the fibre it fits best. Elicited.
 */
export const CONFLICT_RATIO = 20;
