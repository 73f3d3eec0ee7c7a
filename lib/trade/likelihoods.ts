import { AGE, WET_BEHAVIOUR } from "./likelihoods-use";
import { BACK, FRINGE, FRINGE_KIND } from "./likelihoods-make";
import { LABEL } from "./likelihoods-label";
import { FOOTPRINTS, SHINE, TOUCH } from "./likelihoods-look";
import type { LikelihoodTable } from "./likelihood-table";
import { BOUGHT_WHERE, SELLER_SAID } from "./seller-words";

/** Every table of evidence that is a choice among answers; the price has its own (`prices`). */
export const LIKELIHOODS: readonly LikelihoodTable[] = [
  SHINE, FOOTPRINTS, TOUCH, BACK, FRINGE, FRINGE_KIND, SELLER_SAID, BOUGHT_WHERE, AGE, WET_BEHAVIOUR, LABEL,
];
