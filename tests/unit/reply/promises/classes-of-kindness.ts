import type { PromiseClass } from "./classes";

/** What a kind person adds to a letter, and what a kind person says who promises with it. Written before the rules were changed for it. Invented for this project. */
export const KINDNESS_CLASSES: readonly PromiseClass[] = [
  {
    meaning: "sympathy, who said what, and when the workshop is open",
    over: [
      "You could not have known, and it will all be put right.",
      "Do not lose heart: it will look lovely again.",
      "You did right to stop rubbing, so the mark will come out.",
      "It was not your fault, and we will make it as it was.",
      "The label says art silk, but we will bring the shine back.",
      "We are open from 8 on Monday, and by Friday the stain is gone.",
      "You were quick, and so nothing of it will stay.",
      "Please do not worry, your mother's rug will be as good as it was.",
      "Thank you for the clear photos; they show that it will clean up perfectly.",
      "We know how dear it is to you, and you will have it back without a mark.",
      "The shop told you wrong, but we will put it right.",
      "Your daughter's juice will be out in no time.",
    ],
    honest: [
      "You could not have known; the label does not say viscose.",
      "The shop told you it was silk; the label says art silk.",
      "We are here on Monday from 8.",
      "Your daughter's juice is the least of it; the shampoo is what worries us.",
      "You did right to stop rubbing.",
      "You were told it was silk, and the label reads art silk.",
      "Nobody could have known from the name on the label.",
      "It was sold to you as silk, and you had no reason to doubt it.",
      "You are not the first to be told so, and we are sorry that it happened.",
      "The seller called it silk; on the label stands viscose.",
      "We open again on Tuesday at 8.",
      "The coffee troubles us less than the soap that came after it.",
      "You could not have seen it coming.",
      "Thank you for stopping when you did.",
      "We understand how much it means to you.",
      "It is the cleaner from the shop that worries us more than the wine.",
      "We close at 5, and on Saturday we are not here.",
      "The receipt says silk; the care label says nothing of the fibre.",
    ],
  },
];
