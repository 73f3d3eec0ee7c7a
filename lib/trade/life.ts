import type { FibreId, Source } from "./fibres";
import type { Construction } from "./care";

/**
 * Life from new in ordinary domestic use: median years until the owner would replace the rug, or restoring it would
 * cost more than it is worth. Weibull; shape about 2.5 where the pile fails, 1.8 for the durable. Elicited throughout
 * (no survival curve or replacement survey for rugs is published; deposit adjudicators' carpet lives, 2–15 years, are of the same order).
 */
export interface LifeRow extends Source { readonly medianYears: number; readonly shape: number }
const life = (medianYears: number, shape: number): LifeRow => ({ medianYears, shape, how: "elicited", source: "Elicited for this project: median life of a living-room rug" });
const PILE = 2.5;
const DURABLE = 1.8;

/** `by make` only where it matters. */
export const LIFE: Readonly<Record<FibreId, LifeRow | Readonly<Record<Construction, LifeRow>>>> = {
  silk: life(40, DURABLE),
  wool: { knotted: life(40, DURABLE), tufted: life(11, DURABLE), machine: life(15, DURABLE) },
  "wool-silk": life(35, DURABLE),
  viscose: life(5, PILE),
  "wool-viscose": life(8, PILE),
  "silk-viscose": life(8, PILE),
  "cotton-viscose": life(5, PILE),
  lyocell: life(6, PILE),
  acetate: life(5, PILE),
  cotton: life(7, PILE),
  "mercerised-cotton": life(8, PILE),
  bast: life(7, PILE),
  "hard-fibre": life(6, PILE),
  polyamide: life(11, DURABLE),
  polyester: life(6, PILE),
  polypropylene: life(6, PILE),
  acrylic: life(7, PILE),
  other: life(7, DURABLE),
};

/** What shortens or lengthens every life, by the client's answer (`question:answer`). `only`: the piles it applies to. */
export interface LifeFactorRow extends Source { readonly when: string; readonly times: number; readonly only?: readonly FibreId[] }
const factor = (when: string, times: number, only?: readonly FibreId[]): LifeFactorRow =>
  ({ when, times, ...(only ? { only } : {}), how: "elicited", source: "Elicited for this project" });
export const LIFE_FACTORS: readonly LifeFactorRow[] = [
  factor("room:little", 1.7),
  factor("room:busy", 0.55),
  factor("room:furniture", 1.4),
  factor("household:pets", 0.8),
  factor("household:floor-heating", 0.85, ["viscose", "wool-viscose", "silk-viscose", "cotton-viscose", "lyocell", "acetate"]),
];

/** Wear seen now outweighs age: the share of a new rug's median life that is left, at most. The smallest that applies rules. */
export const WEAR_LEFT: readonly (Source & { readonly change: string; readonly share: number })[] = [
  { change: "bare", share: 0.1, how: "elicited", source: "Elicited for this project: bare or matted through, little left" },
  { change: "crumbles", share: 0.3, how: "elicited", source: "Elicited for this project: latex that sheds is near its end, though a new back can be laid" },
  { change: "flat", share: 0.35, how: "elicited", source: "Elicited for this project: worn flat" },
];

/** Ages in years behind each answer, equally likely; `unknown`: elicited shares among rugs people write in about. */
export interface AgeRow extends Source { readonly years: readonly (readonly [years: number, share: number])[] }
const ages = (years: readonly (readonly [number, number])[], source: string): AgeRow => ({ years, how: "elicited", source });
export const AGES: Readonly<Record<"under-2" | "2-5" | "5-10" | "10-25" | "25-80" | "unknown", AgeRow>> = {
  "under-2": ages([[0.5, 1], [1.5, 1]], "midpoints of the answer"),
  "2-5": ages([[2.5, 1], [3.5, 1], [4.5, 1]], "midpoints of the answer"),
  "5-10": ages([[6, 1], [7.5, 1], [9, 1]], "midpoints of the answer"),
  "10-25": ages([[12, 1], [17, 1], [22, 1]], "midpoints of the answer"),
  "25-80": ages([[30, 2], [45, 1], [65, 1]], "midpoints of the answer, more of the younger"),
  unknown: ages([[1, 3], [3, 3], [7, 2], [15, 1], [35, 1]], "Elicited for this project: ages of the rugs people write in about"),
};

/** Power to which the chance of having survived to this age is raised before it reweights the fibres: half, since the model of life is itself uncertain. */
export const SURVIVAL_TEMPER = { power: 0.5, how: "elicited", source: "Elicited for this project" } as const satisfies Source & { power: number };
