import type { Source } from "./fibres";
import type { LikelihoodTable } from "./likelihood-table";

const SOURCE: Source = {
  how: "elicited",
  source: "How a pile shows itself, common knowledge of rug workshops, put into numbers for this project; to be corrected by outcomes",
};

/** Shading by direction does not separate silk from viscose; only lasting footprints do a little. */
export const SHINE: LikelihoodTable = {
  what: "shine", group: "lustre", source: SOURCE,
  answers: ["none", "two-tone", "satin", "mixed"],
  rows: {
    silk: [0.02, 0.78, 0.15, 0.05],
    wool: [0.8, 0.12, 0.03, 0.05],
    "wool-silk": [0.08, 0.22, 0.05, 0.65],
    viscose: [0.02, 0.66, 0.27, 0.05],
    "wool-viscose": [0.08, 0.17, 0.05, 0.7],
    "silk-viscose": [0.02, 0.7, 0.21, 0.07],
    "cotton-viscose": [0.06, 0.4, 0.22, 0.32],
    lyocell: [0.1, 0.5, 0.33, 0.07],
    acetate: [0.03, 0.45, 0.47, 0.05],
    cotton: [0.86, 0.06, 0.04, 0.04],
    "mercerised-cotton": [0.12, 0.28, 0.54, 0.06],
    bast: [0.6, 0.1, 0.25, 0.05],
    "hard-fibre": [0.75, 0.04, 0.18, 0.03],
    polyamide: [0.45, 0.25, 0.25, 0.05],
    polyester: [0.22, 0.28, 0.44, 0.06],
    polypropylene: [0.45, 0.12, 0.36, 0.07],
    acrylic: [0.66, 0.16, 0.12, 0.06],
  },
};

export const FOOTPRINTS: LikelihoodTable = {
  what: "footprints", group: "lustre", source: SOURCE,
  answers: ["stay", "brush", "none"],
  rows: {
    silk: [0.3, 0.6, 0.1],
    wool: [0.06, 0.3, 0.64],
    "wool-silk": [0.12, 0.45, 0.43],
    viscose: [0.62, 0.33, 0.05],
    "wool-viscose": [0.32, 0.42, 0.26],
    "silk-viscose": [0.48, 0.44, 0.08],
    "cotton-viscose": [0.45, 0.38, 0.17],
    lyocell: [0.48, 0.42, 0.1],
    acetate: [0.5, 0.4, 0.1],
    cotton: [0.25, 0.35, 0.4],
    "mercerised-cotton": [0.28, 0.4, 0.32],
    bast: [0.2, 0.25, 0.55],
    "hard-fibre": [0.04, 0.06, 0.9],
    polyamide: [0.12, 0.48, 0.4],
    polyester: [0.25, 0.5, 0.25],
    polypropylene: [0.1, 0.3, 0.6],
    acrylic: [0.22, 0.38, 0.4],
  },
};

export const TOUCH: LikelihoodTable = {
  what: "touch", group: "lustre", source: SOURCE,
  answers: ["cool-slippery", "warm-fine", "springy", "cottony", "plastic", "coarse", "two-textures"],
  rows: {
    silk: [0.3, 0.58, 0.02, 0.03, 0.02, 0.01, 0.04],
    wool: [0.01, 0.05, 0.82, 0.04, 0.01, 0.05, 0.02],
    "wool-silk": [0.05, 0.17, 0.32, 0.03, 0.01, 0.02, 0.4],
    viscose: [0.66, 0.14, 0.02, 0.08, 0.05, 0.01, 0.04],
    "wool-viscose": [0.14, 0.05, 0.3, 0.03, 0.02, 0.02, 0.44],
    "silk-viscose": [0.48, 0.34, 0.02, 0.05, 0.02, 0.01, 0.08],
    "cotton-viscose": [0.32, 0.07, 0.02, 0.36, 0.02, 0.03, 0.18],
    lyocell: [0.56, 0.17, 0.03, 0.15, 0.04, 0.01, 0.04],
    acetate: [0.52, 0.14, 0.02, 0.07, 0.2, 0.01, 0.04],
    cotton: [0.05, 0.05, 0.06, 0.72, 0.02, 0.07, 0.03],
    "mercerised-cotton": [0.32, 0.1, 0.03, 0.48, 0.02, 0.02, 0.03],
    bast: [0.15, 0.04, 0.04, 0.4, 0.02, 0.32, 0.03],
    "hard-fibre": [0.005, 0.005, 0.02, 0.03, 0.02, 0.9, 0.02],
    polyamide: [0.1, 0.1, 0.33, 0.09, 0.32, 0.03, 0.03],
    polyester: [0.26, 0.15, 0.08, 0.06, 0.38, 0.02, 0.05],
    polypropylene: [0.05, 0.03, 0.14, 0.05, 0.62, 0.08, 0.03],
    acrylic: [0.03, 0.15, 0.5, 0.1, 0.15, 0.04, 0.03],
  },
};
