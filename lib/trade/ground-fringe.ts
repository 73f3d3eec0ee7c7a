import type { Source } from "./fibres";
import type { SingleFibre } from "./single-fibres";

export const GROUND_SOURCE: Source = { how: "elicited",
  source: "What grounds, backs and fringes are made of by construction, as a workshop sees them: judged for this project, no published count found" };

/** Chances of the likely fibres; what is left is spread over all others, `other` among them. */
export type ComponentRow = Readonly<Partial<Record<SingleFibre, number>>>;

/** P(fibre of the ground | construction), by the answers of `back`; `unknown`: the back was not described. */
export const GROUNDS = {
  knots: { cotton: 0.78, wool: 0.14, silk: 0.03 },
  cloth: { cotton: 0.5, polyester: 0.2, polypropylene: 0.18, "hard-fibre": 0.04 },
  loomed: { cotton: 0.82, polyester: 0.06, wool: 0.04, "hard-fibre": 0.03 },
  machine: { "hard-fibre": 0.4, polypropylene: 0.22, polyester: 0.18, cotton: 0.14 },
  flat: { cotton: 0.5, wool: 0.3, "hard-fibre": 0.1, bast: 0.04 },
  felt: { polyester: 0.4, polypropylene: 0.35, cotton: 0.08 },
  unknown: { cotton: 0.58, "hard-fibre": 0.11, polypropylene: 0.1, polyester: 0.1, wool: 0.07 },
} as const satisfies Readonly<Record<string, ComponentRow>>;
export type GroundKey = keyof typeof GROUNDS;

/** The ground of a hand-knotted rug whose pile is silk: silk on silk is common there. */
export const GROUND_UNDER_SILK: ComponentRow = { cotton: 0.6, silk: 0.35, viscose: 0.02 };

/** A fringe sewn on afterwards, or of no known making. One that is part of the rug is the end of its warp. */
export const SEWN_FRINGE: ComponentRow = { cotton: 0.66, polyester: 0.1, viscose: 0.09, acrylic: 0.05, "mercerised-cotton": 0.04, wool: 0.03 };

/** P(answer of `fringeKind` | fibre of the fringe): cottony, shiny, woolly. Elicited; `other` says nothing. */
export const FRINGE_FEELS: Readonly<Record<SingleFibre, Readonly<Record<"cottony" | "shiny" | "woolly", number>>>> = {
  silk: { cottony: 0.12, shiny: 0.86, woolly: 0.02 }, wool: { cottony: 0.16, shiny: 0.04, woolly: 0.8 }, viscose: { cottony: 0.12, shiny: 0.85, woolly: 0.03 },
  lyocell: { cottony: 0.27, shiny: 0.7, woolly: 0.03 }, acetate: { cottony: 0.08, shiny: 0.9, woolly: 0.02 }, cotton: { cottony: 0.93, shiny: 0.03, woolly: 0.04 },
  "mercerised-cotton": { cottony: 0.38, shiny: 0.6, woolly: 0.02 }, bast: { cottony: 0.84, shiny: 0.1, woolly: 0.06 }, "hard-fibre": { cottony: 0.86,
    shiny: 0.06, woolly: 0.08 },
  polyamide: { cottony: 0.3, shiny: 0.6, woolly: 0.1 }, polyester: { cottony: 0.36, shiny: 0.56, woolly: 0.08 }, polypropylene: { cottony: 0.4, shiny: 0.5,
    woolly: 0.1 }, acrylic: { cottony: 0.28, shiny: 0.22, woolly: 0.5 },
};

/** How often a label that names the ground or the fringe names its fibre rightly; nobody gains by lying about it. Elicited. */
export const COMPONENT_LABEL_RIGHT = 0.9;
