import type { FibreId } from "../../lib/trade/fibres";
import type { Weights } from "./world";

/**
 * How rugs show themselves, in figures of this simulation's own: a second reading, by somebody who had not seen the
 * model's tables, of the same account of the trade in prose. Elicited, all of it. Weights need not sum to 1.
 */
export type Named = Exclude<FibreId, "other">;
export type Table = Readonly<Record<Named, readonly number[]>>;
export type Construction = "knotted" | "tufted" | "loomed" | "machine" | "flat";

export const ORDER: readonly Named[] = ["silk", "wool", "wool-silk", "viscose", "wool-viscose", "silk-viscose", "cotton-viscose", "lyocell", "acetate", "cotton", "mercerised-cotton", "bast", "hard-fibre", "polyamide", "polyester", "polypropylene", "acrylic"];

/** Who writes in, in per cent; the fibres outside the classes (5 %) are drawn apart. */
export const WHO_WRITES: Readonly<Record<Named, number>> = {
  wool: 26.2, viscose: 20, "wool-viscose": 12, polyester: 7, polypropylene: 6, silk: 4, polyamide: 4, "wool-silk": 3, cotton: 3, "hard-fibre": 2.5, "silk-viscose": 2,
  "cotton-viscose": 2, acrylic: 2, lyocell: 1.5, "mercerised-cotton": 1, bast: 0.5, acetate: 0.3,
};

const table = (answers: readonly string[], rows: Table) => ({ answers, rows });
const rowOf = ({ answers, rows }: { answers: readonly string[]; rows: Table }, fibre: Named): Weights => Object.fromEntries(answers.map((a, i) => [a, rows[fibre][i] as number]));

const MADE = table(["knotted", "tufted", "loomed", "machine", "flat"], {
  silk: [92, 1, 3, 2, 2], wool: [42, 22, 10, 18, 8], "wool-silk": [80, 10, 7, 2, 1], viscose: [18, 30, 32, 18, 2], "wool-viscose": [15, 42, 24, 18, 1], "silk-viscose": [60, 12, 25, 2, 1],
  "cotton-viscose": [8, 25, 40, 22, 5], lyocell: [8, 18, 62, 10, 2], acetate: [5, 20, 35, 38, 2], cotton: [6, 20, 14, 15, 45], "mercerised-cotton": [70, 5, 15, 4, 6], bast: [8, 10, 30, 7, 45],
  "hard-fibre": [2, 3, 20, 10, 65], polyamide: [1, 35, 3, 58, 3], polyester: [1, 22, 8, 65, 4], polypropylene: [0.5, 5, 2, 85, 7.5], acrylic: [1, 14, 5, 77, 3],
});
const SHINE = table(["none", "two-tone", "satin", "mixed"], {
  silk: [3, 80, 12, 5], wool: [85, 8, 2, 5], "wool-silk": [12, 23, 5, 60], viscose: [5, 65, 22, 8], "wool-viscose": [12, 18, 5, 65], "silk-viscose": [3, 72, 15, 10], "cotton-viscose": [12, 25, 15, 48],
  lyocell: [12, 42, 38, 8], acetate: [5, 35, 55, 5], cotton: [82, 8, 5, 5], "mercerised-cotton": [15, 22, 55, 8], bast: [60, 18, 14, 8], "hard-fibre": [80, 5, 8, 7], polyamide: [42, 20, 28, 10],
  polyester: [12, 20, 56, 12], polypropylene: [35, 12, 43, 10], acrylic: [62, 13, 17, 8],
});
const FOOTPRINTS = table(["stay", "brush", "none"], {
  silk: [30, 58, 12], wool: [10, 30, 60], "wool-silk": [20, 48, 32], viscose: [66, 27, 7], "wool-viscose": [38, 40, 22], "silk-viscose": [50, 40, 10], "cotton-viscose": [40, 40, 20],
  lyocell: [42, 44, 14], acetate: [48, 40, 12], cotton: [15, 35, 50], "mercerised-cotton": [22, 48, 30], bast: [14, 30, 56], "hard-fibre": [4, 10, 86], polyamide: [24, 46, 30], polyester: [22, 46, 32],
  polypropylene: [12, 34, 54], acrylic: [18, 42, 40],
});
const TOUCH = table(["cool-slippery", "warm-fine", "springy", "cottony", "plastic", "coarse", "two-textures"], {
  silk: [28, 60, 3, 3, 2, 1, 3], wool: [1, 5, 78, 5, 1, 7, 3], "wool-silk": [6, 22, 25, 2, 1, 2, 42], viscose: [72, 12, 2, 6, 4, 1, 3], "wool-viscose": [14, 6, 24, 3, 1, 2, 50], "silk-viscose": [52, 34, 2, 3, 2, 1, 6],
  "cotton-viscose": [32, 6, 3, 28, 2, 2, 27], lyocell: [55, 22, 3, 14, 3, 1, 2], acetate: [52, 18, 3, 5, 20, 1, 1], cotton: [5, 5, 5, 76, 1, 5, 3], "mercerised-cotton": [26, 10, 4, 54, 2, 2, 2],
  bast: [14, 2, 5, 34, 1, 41, 3], "hard-fibre": [1, 1, 4, 5, 1, 86, 2], polyamide: [8, 14, 28, 10, 34, 3, 3], polyester: [20, 16, 9, 8, 42, 2, 3], polypropylene: [7, 4, 14, 8, 58, 6, 3], acrylic: [4, 15, 50, 12, 15, 2, 2],
});
const SAID = table(["silk", "wool-and-silk", "art-silk", "viscose", "silk-look", "wool", "cotton", "other", "nothing"], {
  silk: [75, 3, 0.3, 0.1, 1, 0.3, 0.3, 3, 17], wool: [1, 2, 0.2, 0.2, 0.5, 68, 1, 4, 23], "wool-silk": [10, 60, 0.5, 0.3, 1, 11, 0.2, 3, 14], viscose: [30, 3, 30, 25, 4, 0.8, 0.8, 2, 12],
  "wool-viscose": [4, 35, 7, 12, 3, 21, 0.4, 2.6, 15], "silk-viscose": [55, 4, 14, 8, 3, 0.3, 0.3, 3, 12.4], "cotton-viscose": [12, 2, 16, 20, 5, 1, 20, 4, 20], lyocell: [12, 1, 18, 8, 8, 0.5, 2, 30, 20.5],
  acetate: [16, 1, 18, 10, 14, 0.5, 1, 14, 25.5], cotton: [1, 0.2, 0.5, 0.4, 0.8, 1, 68, 5, 23], "mercerised-cotton": [40, 1, 6, 1, 7, 1, 25, 4, 15], bast: [1, 0.2, 1, 0.5, 1, 1, 8, 62, 25.3],
  "hard-fibre": [0.2, 0.1, 0.3, 0.3, 0.3, 0.5, 1, 70, 27.3], polyamide: [1, 0.3, 1, 1, 5, 3, 1, 42, 45.7], polyester: [5, 0.5, 5, 2, 24, 2, 1.5, 30, 30], polypropylene: [1, 0.3, 1, 1, 13, 3, 1, 38, 41.7],
  acrylic: [1, 0.5, 1, 0.5, 4, 18, 1, 34, 40],
});
const FRINGE_KIND = table(["cottony", "shiny", "woolly"], {
  silk: [45, 52, 3], wool: [72, 3, 25], "wool-silk": [70, 20, 10], viscose: [62, 36, 2], "wool-viscose": [80, 12, 8], "silk-viscose": [50, 47, 3], "cotton-viscose": [80, 18, 2], lyocell: [72, 26, 2], acetate: [70, 28, 2],
  cotton: [94, 3, 3], "mercerised-cotton": [68, 30, 2], bast: [92, 5, 3], "hard-fibre": [92, 3, 5], polyamide: [78, 17, 5], polyester: [68, 28, 4], polypropylene: [76, 18, 6], acrylic: [74, 9, 17],
});
export const TABLES = { made: MADE, shine: SHINE, footprints: FOOTPRINTS, touch: TOUCH, said: SAID, fringeKind: FRINGE_KIND } as const;
export const weightsOf = (name: keyof typeof TABLES, fibre: Named): Weights => rowOf(TABLES[name], fibre);

export const BACK: Readonly<Record<Construction, Weights>> = {
  knotted: { knots: 84, cloth: 2, loomed: 8, machine: 4, flat: 2, felt: 0.5 }, tufted: { knots: 1, cloth: 84, loomed: 5, machine: 5, flat: 1, felt: 4 },
  loomed: { knots: 6, cloth: 12, loomed: 66, machine: 12, flat: 3, felt: 1 }, machine: { knots: 4, cloth: 5, loomed: 12, machine: 69, flat: 3, felt: 7 }, flat: { knots: 4, cloth: 3, loomed: 12, machine: 5, flat: 74, felt: 2 },
};
export const FRINGE: Readonly<Record<Construction, Weights>> = {
  knotted: { "part-of-rug": 82, "sewn-on": 6, none: 12 }, tufted: { "part-of-rug": 3, "sewn-on": 30, none: 67 }, loomed: { "part-of-rug": 28, "sewn-on": 22, none: 50 },
  machine: { "part-of-rug": 9, "sewn-on": 36, none: 55 }, flat: { "part-of-rug": 42, "sewn-on": 8, none: 50 },
};
export const WHERE: Readonly<Record<Construction, Weights>> = {
  knotted: { specialist: 36, furniture: 7, online: 9, bazaar: 18, auction: 8, secondhand: 8, gift: 14 }, tufted: { specialist: 18, furniture: 32, online: 33, bazaar: 3, auction: 1, secondhand: 6, gift: 7 },
  loomed: { specialist: 24, furniture: 30, online: 30, bazaar: 4, auction: 1, secondhand: 5, gift: 6 }, machine: { specialist: 9, furniture: 38, online: 37, bazaar: 3, auction: 0.5, secondhand: 6, gift: 6.5 },
  flat: { specialist: 15, furniture: 32, online: 32, bazaar: 8, auction: 2, secondhand: 5, gift: 6 },
};
/** How often a rug of this make still has a label of its composition. */
export const HAS_LABEL: Readonly<Record<Construction, number>> = { knotted: 0.25, tufted: 0.65, loomed: 0.6, machine: 0.72, flat: 0.55 };
