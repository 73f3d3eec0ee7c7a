import type { Source } from "./fibres";
import type { AnswerOf } from "./questions";

/**
 * First aid is one set, whatever the fibre: a wrong guess about the pile must not hurt anybody or the rug.
 * Shown at once where something is wet now, sent with the acknowledgement, read out on the telephone.
 * No product, no recipe, no dose stands in it.
 */
export interface ShortLine { readonly text: string; readonly fits: ShortFit }
/**
 * When a line of the short list stands: in every case; where there was much water or a heated floor; where a product was
 * used; where it is foul or mouldy; where it may be touched; where one may stay in the room. Where nobody has said what happened, all stand but that of products.
 */
export type ShortFit = "always" | "much-water" | "product" | "foul" | "may-touch" | "may-stay";
/** Answers of which one is enough. */
export type AnyAnswer = { readonly [Q in "incidents" | "liquid" | "treatments" | "household" | "changes"]?: readonly AnswerOf<Q>[] };

/** What is said before all else, in place of the sentence with the emergency number and with the number, where bleach and something it can give off gas with were told together. */
export interface GasAid extends Source {
  /** With the emergency number of the workshop's settings. */
  readonly line: (number: string) => string;
  readonly bleach: AnyAnswer;
  /** An acid, ammonia, or a product of which nobody here knows whether it holds one. */
  readonly beside: AnyAnswer;
  readonly urine: AnyAnswer;
  /** When it was, where urine is no longer taken for fresh; of an age nobody told it is. */
  readonly notFresh: readonly AnswerOf<"since">[];
}

export interface FirstAid extends Source {
  readonly lead: string;
  /** What to do, in order. */
  readonly steps: readonly string[];
  /** When to keep off altogether. */
  readonly dangers: readonly string[];
  /** Instead of the steps where nobody may touch it: to press a cloth on waste water or mould would undo the warning. */
  readonly handsOff: readonly string[];
  /** Where mould may be in it, wet or dry. */
  readonly mould: string;
  /** Where nobody could read what happened, in plain words: true whether it is wet or dry, and of waste water as of clean. */
  readonly unread: readonly string[];
  /** The same for a letter that also answers, in the order of harm. The whole set went out before it. */
  readonly inShort: readonly ShortLine[];
  /** What was told where a line fits that does not stand everywhere. */
  readonly fits: Readonly<Record<Exclude<ShortFit, "always" | "may-touch" | "may-stay">, AnyAnswer>>;
  readonly gas: GasAid;
  /** What can hurt somebody by itself: there the emergency number leads. */
  readonly harmful: AnyAnswer;
  /** The sentence with the emergency number of the workshop's settings. */
  readonly emergency: (number: string) => string;
}

/** What is seen that may be mould. */
export const MOULD_SEEN = { changes: ["spots"] } as const satisfies AnyAnswer;

export const FIRST_AID: FirstAid = {
  how: "common practice",
  source:
    "Common practice, no published source, for steps; drying within 24 to 48 hours after wetting: EPA and FEMA flood guidance, from memory; " +
    "that any edge between wet and dry cellulose may brown: Dupont, Restaurator 17 (1996) 1–21",
  lead: "Do this first. It is right for every rug, whatever it is made of.",
  steps: [
    "Keep people, children and pets off it.",
    "Lay a plain white cloth on the wet place and press straight down. Do not rub. Change to a dry part of the cloth and press again until it comes up dry.",
    "Put nothing on it: no cleaner, no soap, no powder, and no more water.",
    "Give it air: open a window. No heat: no hairdryer, no iron, no radiator, and turn the underfloor heating off.",
    "Leave a soaked rug lying where it is. It is heavy, and lifting or dragging can tear it.",
    "Take one photo in daylight before and after you blot.",
  ],
  dangers: [
    "A wet plug, socket, cable or heated floor: keep off it. Switch off at the fuse board only if you can reach that with dry hands and dry feet.",
    "Sewage, flood water, broken glass, chemicals or mould: do not touch it. Keep everybody out of the room.",
    "Never mix cleaning products, on a rug or anywhere. Where two have met, or one has met urine, a harmful gas can rise: leave the room and do not blot.",
    "Moths or beetles: once the rug is dry, keep it apart in a closed bag. No insecticide.",
  ],
  handsOff: ["Keep people, children and pets off it, and out of the room.", "Do not blot it, lift it or roll it up."],
  mould: "Mould can harm your health: please do not touch, brush or vacuum it, and keep everybody out of the room, children and anyone with weak lungs above all.",
  inShort: [
    { fits: "much-water", text: "A wet plug, socket or heated floor: keep off, and touch nothing." },
    { fits: "foul", text: "Sewage, chemicals or mould: do not touch it, and keep everybody out of the room." },
    { fits: "product", text: "Never mix cleaning products." },
    { fits: "always", text: "Keep people, children and pets off it." },
    { fits: "may-touch", text: "Press a plain white cloth straight down, and do not rub." },
    { fits: "may-stay", text: "Put nothing on it, and no more water. Give it air but no heat." },
    { fits: "much-water", text: "Leave a soaked rug lying: it is heavy, and lifting can tear it." },
  ],
  unread: [
    "A wet plug, socket, cable or heated floor, sewage, flood water, chemicals or mould: keep off, and touch nothing.",
    "Keep people, children and pets off the rug. Only on clean water or a drink: press a plain white cloth straight down, and do not rub.",
    "Put nothing on it, and do not clean it at home. Give it air but no heat, and leave a soaked rug lying.",
  ],
  fits: {
    "much-water": {
      incidents: ["water", "flood", "washed-home", "washed-professional", "unknown"], liquid: ["water"], treatments: ["machine", "professional-wet", "plain-water"], household: ["floor-heating"],
    },
    product: { liquid: ["cleaner"], treatments: ["household-cleaner", "bleach", "solvent", "vinegar-soda"] },
    foul: { incidents: ["flood"], ...MOULD_SEEN },
  },
  gas: {
    how: "common practice",
    source: "Common practice, no published source. The makers’ safety data sheets and local advice come first. That urine counts as fresh for a week, and an “oxygen” stain remover as bleach, because one answer names both: elicited",
    line: (number) =>
      "Leave the room, put nothing more on the rug and do not lean over it: with vinegar or another acid, ammonia, urine or another cleaner, bleach can give off a harmful gas. " +
      `Air the room only if you need not go back in. If anybody coughs, has sore eyes, feels ill, has swallowed something or is hurt, call ${number} now.`,
    bleach: { treatments: ["bleach"] },
    beside: { liquid: ["cleaner"], treatments: ["vinegar-soda", "household-cleaner", "solvent"] },
    urine: { incidents: ["pet-urine"], liquid: ["urine"] },
    notFresh: ["month", "longer"],
  },
  harmful: { incidents: ["flood"], liquid: ["cleaner", "ink"], treatments: ["household-cleaner", "bleach", "solvent"] },
  emergency: (number) => `If somebody has swallowed something, has it in the eyes or is hurt, call ${number} now. The rug can wait.`,
};

/**
 * The whole set as a list of sentences for an assessment or a letter: people first, then what to keep off, then what to
 * do, so that nobody presses a cloth beside a wet plug they have not read about yet. `handsOff`: it was flood or waste water, or mould is seen.
 * `isGas`: bleach and something it can give off gas with were told together, and nobody bends over it to blot.
 */
export const firstAidSentences = (emergencyNumber = "your emergency number", handsOff = false, isGas = false): string[] =>
  [(isGas ? FIRST_AID.gas.line : FIRST_AID.emergency)(emergencyNumber), ...FIRST_AID.dangers, ...(handsOff || isGas ? FIRST_AID.handsOff : FIRST_AID.steps)];

/** What is told at once to somebody whose words nobody could read: people first here too. */
export const firstAidUnread = (emergencyNumber = "your emergency number"): string[] => [FIRST_AID.emergency(emergencyNumber), ...FIRST_AID.unread];
