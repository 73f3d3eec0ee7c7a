import type { Source } from "./fibres";
import type { LikelihoodTable, NamedFibre } from "./likelihood-table";

const SOURCE: Source = {
  how: "elicited",
  source: "What sellers call each fibre, as workshops hear it from clients, put into numbers for this project; no published survey of rugs exists",
};

/** P(what the seller called it | fibre). "Nothing said" is an answer too. */
export const SELLER_SAID: LikelihoodTable = {
  what: "sellerSaid", group: "claim", source: SOURCE,
  answers: ["silk", "wool-and-silk", "art-silk", "viscose", "silk-look", "wool", "cotton", "other", "nothing"],
  rows: {
    silk: [0.75, 0.03, 0.003, 0.001, 0.01, 0.006, 0.005, 0.025, 0.17],
    wool: [0.01, 0.015, 0.002, 0.002, 0.008, 0.66, 0.006, 0.047, 0.25],
    "wool-silk": [0.08, 0.6, 0.01, 0.005, 0.01, 0.12, 0.003, 0.022, 0.15],
    viscose: [0.3, 0.02, 0.3, 0.25, 0.05, 0.006, 0.009, 0.015, 0.05],
    "wool-viscose": [0.05, 0.35, 0.14, 0.17, 0.03, 0.13, 0.003, 0.027, 0.1],
    "silk-viscose": [0.55, 0.03, 0.14, 0.06, 0.05, 0.01, 0.005, 0.035, 0.12],
    "cotton-viscose": [0.06, 0.005, 0.21, 0.27, 0.07, 0.005, 0.2, 0.05, 0.13],
    lyocell: [0.05, 0.005, 0.15, 0.13, 0.07, 0.005, 0.005, 0.455, 0.13],
    acetate: [0.15, 0.005, 0.25, 0.15, 0.15, 0.005, 0.01, 0.13, 0.15],
    cotton: [0.01, 0.002, 0.01, 0.01, 0.01, 0.008, 0.62, 0.06, 0.27],
    "mercerised-cotton": [0.4, 0.02, 0.05, 0.02, 0.05, 0.01, 0.2, 0.05, 0.2],
    bast: [0.005, 0.002, 0.01, 0.005, 0.008, 0.01, 0.06, 0.7, 0.2],
    "hard-fibre": [0.001, 0.001, 0.002, 0.001, 0.001, 0.004, 0.02, 0.72, 0.25],
    polyamide: [0.005, 0.002, 0.01, 0.005, 0.06, 0.03, 0.01, 0.518, 0.36],
    polyester: [0.05, 0.005, 0.05, 0.01, 0.23, 0.015, 0.02, 0.32, 0.3],
    polypropylene: [0.01, 0.003, 0.015, 0.007, 0.16, 0.025, 0.01, 0.39, 0.38],
    acrylic: [0.01, 0.004, 0.01, 0.006, 0.06, 0.2, 0.01, 0.34, 0.36],
  },
};

/** P(where it was got | fibre). */
export const BOUGHT_WHERE: LikelihoodTable = {
  what: "boughtWhere", group: null,
  source: { how: "elicited", source: "Which shops carry which fibres, as workshops hear it from clients, put into numbers for this project" },
  answers: ["specialist", "furniture", "online", "bazaar", "auction", "secondhand", "gift"],
  rows: {
    silk: [0.3, 0.06, 0.1, 0.26, 0.12, 0.06, 0.1],
    wool: [0.22, 0.2, 0.2, 0.12, 0.07, 0.08, 0.11],
    "wool-silk": [0.36, 0.19, 0.22, 0.09, 0.04, 0.04, 0.06],
    viscose: [0.2, 0.29, 0.31, 0.1, 0.02, 0.03, 0.05],
    "wool-viscose": [0.25, 0.31, 0.3, 0.04, 0.02, 0.03, 0.05],
    "silk-viscose": [0.32, 0.16, 0.2, 0.2, 0.03, 0.03, 0.06],
    "cotton-viscose": [0.08, 0.38, 0.4, 0.05, 0.01, 0.03, 0.05],
    lyocell: [0.28, 0.32, 0.33, 0.02, 0.01, 0.02, 0.02],
    acetate: [0.1, 0.3, 0.35, 0.1, 0.03, 0.06, 0.06],
    cotton: [0.08, 0.34, 0.34, 0.1, 0.02, 0.05, 0.07],
    "mercerised-cotton": [0.22, 0.06, 0.14, 0.34, 0.08, 0.06, 0.1],
    bast: [0.2, 0.34, 0.36, 0.03, 0.01, 0.03, 0.03],
    "hard-fibre": [0.11, 0.43, 0.38, 0.02, 0.01, 0.02, 0.03],
    polyamide: [0.18, 0.46, 0.26, 0.01, 0.01, 0.04, 0.04],
    polyester: [0.06, 0.4, 0.44, 0.03, 0.01, 0.03, 0.03],
    polypropylene: [0.07, 0.43, 0.38, 0.04, 0.01, 0.04, 0.03],
    acrylic: [0.1, 0.4, 0.27, 0.08, 0.02, 0.07, 0.06],
  },
};

/** The fibre that a seller's word claims; words such as "art silk" or "silk touch" claim none. */
export const SELLER_CLAIMS: Readonly<Record<string, NamedFibre>> = {
  silk: "silk", "wool-and-silk": "wool-silk", viscose: "viscose", wool: "wool", cotton: "cotton",
};
