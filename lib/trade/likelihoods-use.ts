import type { LikelihoodTable } from "./likelihood-table";

/**
 * Age of a rug somebody still writes about: a fibre that lives five years is seldom seen at thirty. Says nothing of how
 * long this rug will live; that is another table.
 */
export const AGE: LikelihoodTable = {
  what: "age", group: null,
  source: { how: "elicited", source: "Median lives of the fibres and how long each has been in fashion as a rug pile, put into numbers for this project" },
  answers: ["under-2", "2-5", "5-10", "10-25", "25-80", "antique"],
  rows: {
    silk: [0.05, 0.1, 0.15, 0.27, 0.31, 0.12],
    wool: [0.1, 0.14, 0.18, 0.23, 0.23, 0.12],
    "wool-silk": [0.12, 0.18, 0.22, 0.28, 0.17, 0.03],
    viscose: [0.34, 0.37, 0.22, 0.065, 0.004, 0.001],
    "wool-viscose": [0.245, 0.33, 0.27, 0.14, 0.013, 0.002],
    "silk-viscose": [0.23, 0.315, 0.27, 0.165, 0.017, 0.003],
    "cotton-viscose": [0.32, 0.36, 0.23, 0.084, 0.005, 0.001],
    lyocell: [0.445, 0.385, 0.15, 0.018, 0.001, 0.001],
    acetate: [0.25, 0.33, 0.27, 0.13, 0.017, 0.003],
    cotton: [0.2, 0.24, 0.22, 0.2, 0.11, 0.03],
    "mercerised-cotton": [0.06, 0.1, 0.16, 0.29, 0.31, 0.08],
    bast: [0.25, 0.28, 0.22, 0.17, 0.06, 0.02],
    "hard-fibre": [0.28, 0.32, 0.23, 0.14, 0.025, 0.005],
    polyamide: [0.2, 0.26, 0.27, 0.22, 0.048, 0.002],
    polyester: [0.34, 0.34, 0.21, 0.09, 0.018, 0.002],
    polypropylene: [0.34, 0.34, 0.21, 0.095, 0.013, 0.002],
    acrylic: [0.18, 0.24, 0.25, 0.24, 0.088, 0.002],
  },
};

/**
 * What changed in a rug that met water, food, urine or a wet clean. It reads the finding `changes` only where the other
 * findings say that the rug got wet; the priors are therefore never moved by the trouble itself.
 */
export const WET_BEHAVIOUR: LikelihoodTable = {
  what: "changes", group: null,
  source: { how: "elicited", source: "Regenerated cellulose is weak when wet, mats, stiffens and browns; synthetics hardly drink: common knowledge of the trade, put into numbers for this project" },
  answers: ["stiffened", "browned", "unharmed", "otherwise"],
  rows: {
    silk: [0.08, 0.14, 0.33, 0.45],
    wool: [0.06, 0.13, 0.36, 0.45],
    "wool-silk": [0.1, 0.15, 0.3, 0.45],
    viscose: [0.46, 0.3, 0.04, 0.2],
    "wool-viscose": [0.32, 0.24, 0.14, 0.3],
    "silk-viscose": [0.34, 0.26, 0.1, 0.3],
    "cotton-viscose": [0.32, 0.33, 0.08, 0.27],
    lyocell: [0.28, 0.24, 0.2, 0.28],
    acetate: [0.3, 0.22, 0.2, 0.28],
    cotton: [0.14, 0.34, 0.18, 0.34],
    "mercerised-cotton": [0.14, 0.24, 0.26, 0.36],
    bast: [0.15, 0.36, 0.17, 0.32],
    "hard-fibre": [0.08, 0.54, 0.1, 0.28],
    polyamide: [0.06, 0.1, 0.46, 0.38],
    polyester: [0.1, 0.07, 0.48, 0.35],
    polypropylene: [0.05, 0.08, 0.52, 0.35],
    acrylic: [0.12, 0.09, 0.42, 0.37],
  },
};

/** Answers that mean the rug got wet, by question. Common practice, no published source. */
export const WETTING_ANSWERS: Readonly<Record<string, readonly string[]>> = {
  wetNow: ["wet", "damp"],
  incidents: ["spill", "pet-urine", "vomit", "water", "flood", "washed-professional", "washed-home", "spotted"],
  treatments: ["plain-water", "household-cleaner", "soap", "vinegar-soda", "bleach", "steam-heat", "machine", "professional-wet"],
};
