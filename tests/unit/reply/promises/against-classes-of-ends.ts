import { WOOL_METHODS, assessmentOf, range } from "../make";
import type { AgainstClass } from "./against-classes";

/** Cleaning makes it worse in 21 of 100 cases. */
const RISKY = assessmentOf({ fibres: { wool: 0.9 }, methods: WOOL_METHODS, rest: { worse: 0.21 } });
/** Cleaning costs £100 to £160 and cutting down £77 to £380. */
const PRICED = assessmentOf({ fibres: { wool: 0.9 }, methods: WOOL_METHODS, rest: { money: { currency: "GBP", clean: range(100, 125, 160), cutDown: range(77, 190, 380), replace: null, valueToday: null } } });

/** Written before the check was widened for each class. Invented for this project. */
export const END_CLASSES: readonly AgainstClass[] = [
  {
    meaning: "a chance of harm in words, below the assessment's", rule: "number", assessment: RISKY,
    over: [
      "Cleaning may make it worse in one case in a hundred.",
      "One in a hundred rugs comes out worse.",
      "It gets worse in 1 in 100.",
      "About 1 % come out worse.",
      "In two cases out of a hundred cleaning makes it worse.",
      "Cleaning harms perhaps one rug in fifty.",
      "One rug in twenty is worse afterwards.",
      "There is one chance in a hundred that it gets worse.",
      "The risk that cleaning harms it is about one per cent.",
      "Once in a hundred times a clean does harm.",
      "Some 5 % are damaged by it.",
      "One in ten comes out worse.",
      "Of a hundred such rugs, two or three are worse afterwards.",
      "It may come out worse, by a chance of one in twenty-five.",
      "The chance that cleaning makes it worse is small, one in a hundred at most.",
      "In fewer than one case in a hundred it gets worse.",
    ],
    honest: [
      "Cleaning may make it worse in one case in five.",
      "One in five comes out worse.",
      "About 21 in 100 come out worse.",
      "Twenty in a hundred are worse afterwards.",
      "There is a chance of about one in four that cleaning makes it worse.",
      "Between 15 and 25 % come out worse.",
      "One rug in a hundred has two labels.",
      "It may make it worse; how often, we cannot say.",
      "The chance that it gets worse is greater than one in ten.",
      "You wrote that your cleaner spoke of one in a hundred that come out worse.",
      "In about one case in five cleaning makes it worse.",
      "A damp night makes it worse, in one room or another.",
      "More than one rug in ten comes out worse.",
      "Nobody should tell you that one in a hundred comes out worse.",
    ],
  },
  {
    meaning: "one figure at the lowest end of what it may cost", rule: "number", assessment: PRICED,
    over: [
      "Cutting off 40 cm at one side would cost about £77.",
      "Cutting it down would cost about £80.",
      "To cut it down we would ask some £90.",
      "Cutting the damaged end off comes to about £77.",
      "Cutting it down may cost £40.",
      "The cutting down should cost no more than £100.",
      "A new edge after cutting it down would cost about £85.",
      "Shortening it would cost about £77.",
      "For cutting it down the price is perhaps £95.",
      "Cleaning would cost about £100.",
      "A wash may cost about £100.",
      "Cutting it down would cost between £77 and £110.",
    ],
    honest: [
      "Cutting it down would cost about £77 to £380.",
      "Cutting it down would cost about £77, or up to £380 if all its edges have to be new.",
      "Cutting it down would cost between £80 and £380.",
      "Cutting it down would cost up to £380.",
      "Cutting it down would cost about £200.",
      "Cutting it down would cost from £77, and more if its edges have to be new.",
      "Cutting it down would cost at least £77.",
      "We could not cut it down for £77.",
      "You asked if cutting it down costs £77.",
      "Cutting off 40 cm would leave about 200 cm.",
      "The inspection before cutting it down costs £30.",
      "Cutting it down would cost more than £77.",
      "A wash may cost about £120.",
    ],
  },
];
