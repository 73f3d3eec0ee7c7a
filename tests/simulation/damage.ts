import type { AnswerOf } from "../../lib/trade/questions";
import type { Named } from "./tables";
import type { Weights, World } from "./world";

/** How far it comes back: improvement in per cent, 10–50–90, by column. The prose's own table; every cell is off in every world. */
type Column = "wool" | "silk" | "viscose" | "wool-viscose" | "cotton" | "olefin" | "polyamide";
type Cells = Readonly<Record<Column, readonly [number, number, number]>>;
const row = (wool: Cells["wool"], silk: Cells["wool"], viscose: Cells["wool"], blend: Cells["wool"], cotton: Cells["wool"], olefin: Cells["wool"], polyamide: Cells["wool"]): Cells => ({ wool, silk, viscose, "wool-viscose": blend, cotton, olefin, polyamide });
export const COMES_BACK = {
  soil: row([80, 92, 98], [70, 88, 96], [25, 55, 80], [60, 78, 90], [55, 80, 92], [80, 92, 98], [70, 88, 96]),
  foodFresh: row([55, 80, 95], [40, 70, 90], [5, 30, 60], [25, 55, 80], [20, 50, 80], [75, 93, 99], [30, 65, 90]),
  foodOld: row([15, 45, 75], [10, 40, 70], [0, 10, 30], [8, 30, 55], [8, 30, 60], [55, 80, 95], [10, 40, 70]),
  brownedInUse: row([50, 80, 94], [30, 62, 85], [15, 40, 70], [60, 80, 92], [20, 45, 75], [50, 80, 95], [50, 80, 94]),
  brownedByWashFresh: row([50, 80, 94], [25, 55, 80], [20, 50, 80], [30, 60, 85], [25, 55, 80], [50, 80, 95], [50, 80, 95]),
  brownedByWashOld: row([30, 60, 85], [10, 35, 65], [5, 22, 50], [15, 40, 65], [10, 35, 60], [30, 60, 85], [30, 60, 85]),
  burst: row([20, 50, 75], [5, 20, 45], [0, 5, 18], [5, 18, 40], [10, 30, 55], [0, 10, 30], [15, 40, 65]),
  bleached: row([0, 0, 3], [0, 0, 3], [0, 0, 3], [0, 0, 3], [0, 0, 3], [0, 0, 5], [0, 0, 3]),
  bleedDamp: row([30, 60, 88], [20, 50, 80], [2, 15, 40], [10, 35, 65], [15, 40, 70], [50, 80, 95], [25, 55, 85]),
  bleedDry: row([5, 22, 50], [4, 18, 45], [0, 5, 20], [3, 14, 35], [5, 20, 45], [30, 60, 85], [8, 25, 55]),
  urineFresh: row([45, 75, 92], [25, 55, 82], [3, 18, 42], [15, 42, 70], [25, 55, 80], [65, 88, 97], [35, 68, 90]),
  urineOld: row([8, 32, 62], [5, 24, 52], [0, 8, 25], [4, 20, 45], [6, 28, 55], [45, 75, 92], [10, 35, 65]),
  matted: row([20, 48, 75], [10, 30, 55], [0, 7, 20], [8, 22, 45], [10, 28, 50], [4, 16, 35], [20, 50, 75]),
  faded: row([0, 0, 5], [0, 0, 5], [0, 0, 5], [0, 0, 5], [0, 0, 5], [0, 0, 5], [0, 0, 5]),
  mould: row([5, 28, 60], [3, 20, 50], [0, 8, 25], [3, 15, 40], [5, 25, 55], [30, 65, 90], [15, 45, 75]),
} as const satisfies Record<string, Cells>;
export type Cause = keyof typeof COMES_BACK;

const COLUMN: Readonly<Record<Named, Column>> = {
  silk: "silk", wool: "wool", "wool-silk": "silk", viscose: "viscose", "wool-viscose": "wool-viscose", "silk-viscose": "viscose", "cotton-viscose": "viscose", lyocell: "viscose", acetate: "viscose", cotton: "cotton",
  "mercerised-cotton": "cotton", bast: "cotton", "hard-fibre": "cotton", polyamide: "polyamide", polyester: "olefin", polypropylene: "olefin", acrylic: "olefin",
};

/** A quantile of 10–50–90, straight between them, the tails going on to no less than 0 and no more than 100. */
function quantileOf([low, median, high]: readonly [number, number, number], u: number): number {
  const ends: readonly (readonly [number, number])[] = [[0, Math.max(0, low - (median - low) / 4)], [0.1, low], [0.5, median], [0.9, high], [1, Math.min(100, high + (high - median) / 4)]];
  const i = Math.max(1, ends.findIndex(([p]) => u <= p));
  const [[p0, v0], [p1, v1]] = [ends[i - 1] as readonly [number, number], ends[i] as readonly [number, number]];
  return v0 + ((u - p0) / (p1 - p0)) * (v1 - v0);
}

/** Moved on the scale of odds by up to a factor 1.6 either way, in every cell of every world. Elicited. */
function moved(percent: number, error: number): number {
  if (percent <= 0 || percent >= 100) return percent;
  const odds = (percent / (100 - percent)) * error ** 0.68;
  return (100 * odds) / (1 + odds);
}

/** What really comes back, per cent: where several causes hold, the worst rules. */
export function trueImprovement(world: World, fibre: Named, causes: readonly Cause[]): number {
  const u = world.random();
  const held = causes.length > 0 ? causes : (["soil"] as const);
  return Math.min(...held.map((cause) => moved(quantileOf(COMES_BACK[cause][COLUMN[fibre]], u), world.error(`improvement/${cause}/${COLUMN[fibre]}`))));
}

/** What a person sees of each cause: the chance that they name it. Elicited. */
export const SEEN: Readonly<Record<Cause, Readonly<Partial<Record<AnswerOf<"changes">, number>>>>> = {
  soil: { dirty: 0.5, shaded: 0.05 }, foodFresh: { ring: 0.35, browner: 0.15, stiff: 0.08, smell: 0.05 }, foodOld: { ring: 0.35, browner: 0.3, stiff: 0.15, dirty: 0.1 },
  brownedInUse: { browner: 0.82, ring: 0.25, dirty: 0.12 }, brownedByWashFresh: { browner: 0.85, ring: 0.35, stiff: 0.3 }, brownedByWashOld: { browner: 0.85, ring: 0.35, stiff: 0.35, dirty: 0.08 },
  burst: { rough: 0.62, stiff: 0.42, shaded: 0.3 }, bleached: { paler: 0.8, ring: 0.15 }, bleedDamp: { ran: 0.85 }, bleedDry: { ran: 0.82 }, urineFresh: { smell: 0.5, ring: 0.2, browner: 0.12 },
  urineOld: { smell: 0.5, browner: 0.42, ring: 0.35, paler: 0.22, stiff: 0.2 }, matted: { flat: 0.78, shaded: 0.22, rough: 0.12, stiff: 0.06 }, faded: { faded: 0.85, paler: 0.2 }, mould: { spots: 0.52, smell: 0.6 },
};

/** How far a fibre takes to each harm, 0–1: cellulose drinks, browns, mats and bursts; animal fibre stains; plastic does little. Elicited. */
const CELLULOSE = new Set<Named>(["viscose", "silk-viscose", "cotton-viscose", "lyocell", "acetate"]);
const PLANT = new Set<Named>(["cotton", "mercerised-cotton", "bast", "hard-fibre"]);
const PLASTIC = new Set<Named>(["polyester", "polypropylene", "acrylic", "polyamide"]);
const byKind = (fibre: Named, of: { cellulose: number; blend: number; plant: number; animal: number; plastic: number }): number =>
  CELLULOSE.has(fibre) ? of.cellulose : fibre === "wool-viscose" ? of.blend : PLANT.has(fibre) ? of.plant : PLASTIC.has(fibre) ? of.plastic : of.animal;
export const TAKES_TO = {
  browning: (f: Named) => byKind(f, { cellulose: 0.6, blend: 0.4, plant: 0.45, animal: 0.12, plastic: 0.06 }),
  bursting: (f: Named) => byKind(f, { cellulose: 0.6, blend: 0.4, plant: 0.2, animal: f === "silk" ? 0.3 : 0.06, plastic: 0.05 }),
  matting: (f: Named) => byKind(f, { cellulose: 0.65, blend: 0.4, plant: 0.35, animal: 0.15, plastic: 0.4 }),
  insects: (f: Named) => byKind(f, { cellulose: 0.02, blend: 0.5, plant: 0.01, animal: 0.8, plastic: 0.005 }),
} as const;

/** What brings a person here. Elicited. */
export const OCCASION: Weights = { routine: 24, spill: 21, urine: 13, washed: 12, brownedInUse: 6, traffic: 9, sun: 4, insects: 3, damp: 2, water: 3, question: 3 };
