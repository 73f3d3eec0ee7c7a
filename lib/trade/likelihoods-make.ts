import type { Source } from "./fibres";
import type { LikelihoodTable } from "./likelihood-table";

const SOURCE: Source = {
  how: "elicited",
  source: "Which constructions each fibre is made up in, as workshops see them come in, put into numbers for this project",
};

/** The answers are the constructions of the price table as well. */
export const BACK: LikelihoodTable = {
  what: "back", group: "make", source: SOURCE,
  answers: ["knots", "cloth", "loomed", "machine", "flat", "felt"],
  rows: {
    silk: [0.92, 0.012, 0.025, 0.01, 0.03, 0.003],
    wool: [0.42, 0.2, 0.08, 0.16, 0.12, 0.02],
    "wool-silk": [0.68, 0.2, 0.06, 0.03, 0.025, 0.005],
    viscose: [0.16, 0.26, 0.36, 0.17, 0.02, 0.03],
    "wool-viscose": [0.22, 0.44, 0.2, 0.09, 0.03, 0.02],
    "silk-viscose": [0.58, 0.18, 0.18, 0.03, 0.025, 0.005],
    "cotton-viscose": [0.03, 0.12, 0.36, 0.36, 0.1, 0.03],
    lyocell: [0.12, 0.27, 0.5, 0.07, 0.02, 0.02],
    acetate: [0.05, 0.2, 0.3, 0.38, 0.03, 0.04],
    cotton: [0.04, 0.1, 0.16, 0.1, 0.56, 0.04],
    "mercerised-cotton": [0.66, 0.08, 0.14, 0.04, 0.06, 0.02],
    bast: [0.1, 0.08, 0.28, 0.06, 0.46, 0.02],
    "hard-fibre": [0.01, 0.01, 0.12, 0.05, 0.61, 0.2],
    polyamide: [0.01, 0.3, 0.04, 0.44, 0.02, 0.19],
    polyester: [0.01, 0.18, 0.04, 0.57, 0.06, 0.14],
    polypropylene: [0.005, 0.06, 0.02, 0.72, 0.125, 0.07],
    acrylic: [0.02, 0.17, 0.06, 0.66, 0.04, 0.05],
  },
};

export const FRINGE: LikelihoodTable = {
  what: "fringe", group: "make", source: SOURCE,
  answers: ["part-of-rug", "sewn-on", "none"],
  rows: {
    silk: [0.82, 0.08, 0.1],
    wool: [0.42, 0.16, 0.42],
    "wool-silk": [0.55, 0.13, 0.32],
    viscose: [0.24, 0.18, 0.58],
    "wool-viscose": [0.22, 0.13, 0.65],
    "silk-viscose": [0.5, 0.14, 0.36],
    "cotton-viscose": [0.16, 0.3, 0.54],
    lyocell: [0.2, 0.1, 0.7],
    acetate: [0.12, 0.28, 0.6],
    cotton: [0.35, 0.18, 0.47],
    "mercerised-cotton": [0.7, 0.12, 0.18],
    bast: [0.2, 0.1, 0.7],
    "hard-fibre": [0.06, 0.06, 0.88],
    polyamide: [0.03, 0.1, 0.87],
    polyester: [0.06, 0.22, 0.72],
    polypropylene: [0.08, 0.27, 0.65],
    acrylic: [0.08, 0.3, 0.62],
  },
};

/** Of those that have a fringe. */
export const FRINGE_KIND: LikelihoodTable = {
  what: "fringeKind", group: "make", source: SOURCE,
  answers: ["cottony", "shiny", "woolly"],
  rows: {
    silk: [0.55, 0.43, 0.02],
    wool: [0.7, 0.04, 0.26],
    "wool-silk": [0.78, 0.16, 0.06],
    viscose: [0.62, 0.34, 0.04],
    "wool-viscose": [0.8, 0.12, 0.08],
    "silk-viscose": [0.6, 0.37, 0.03],
    "cotton-viscose": [0.72, 0.24, 0.04],
    lyocell: [0.65, 0.31, 0.04],
    acetate: [0.5, 0.46, 0.04],
    cotton: [0.9, 0.06, 0.04],
    "mercerised-cotton": [0.72, 0.26, 0.02],
    bast: [0.92, 0.04, 0.04],
    "hard-fibre": [0.93, 0.03, 0.04],
    polyamide: [0.72, 0.22, 0.06],
    polyester: [0.6, 0.36, 0.04],
    polypropylene: [0.66, 0.28, 0.06],
    acrylic: [0.58, 0.18, 0.24],
  },
};
