import { COLUMNS, COLUMNS_OF, type Column } from "./columns";
import type { DamageId } from "./damage";
import type { FibreId, Source } from "./fibres";

/**
 * How far a mark comes back with the best method the pile allows: improvement in per cent, 100·(1 − ΔE00 after / ΔE00 before)
 * of the affected spot, as the 10th, 50th and 90th percentile over rugs. Columns in the order of COLUMNS.
 * All rows elicited (no cleaner's trial by pile fibre is published); split of fresh and aged browning after
 * Dupont, Restaurator 17 (1996) 1–21: fresh lines respond, aged ones become insoluble.
 */
export interface Quantiles { readonly low: number; readonly median: number; readonly high: number }
export type RowId =
  | "soil" | "food-fresh" | "food-old" | "browning-use" | "browning-days" | "browning-older" | "pile-distortion" | "bleaching"
  | "dye-damp" | "dye-dry" | "urine-fresh" | "urine-old" | "matting" | "fading" | "mould";
export interface ImprovementRow extends Source {
  readonly name: string;
  readonly cells: Readonly<Record<Column, Quantiles>>;
}

const ROW_SOURCE: Source = { how: "elicited", source: "Elicited for this project: table of improvement by mechanism and pile, to be corrected by outcomes" };
/** Seven cells "low–median–high", in the order of COLUMNS. */
const row = (name: string, cells: string): ImprovementRow => {
  const parsed = cells.split(" ").map((cell) => {
    const [low = NaN, median = NaN, high = NaN] = cell.split("-").map(Number);
    return { low, median, high };
  });
  return { name, cells: Object.fromEntries(COLUMNS.map((c, i) => [c, parsed[i]])) as Record<Column, Quantiles>, ...ROW_SOURCE };
};

//                                                      wool     silk     viscose  wool-vis cotton   olefin   polyamide
export const IMPROVEMENT: Readonly<Record<RowId, ImprovementRow>> = {
  soil: row("plain soil",                              "80-92-98 70-88-96 25-55-80 60-78-90 55-80-92 80-92-98 70-88-96"),
  "food-fresh": row("food or drink, under 3 days",     "55-80-95 40-70-90 5-30-60 25-55-80 20-50-80 75-93-99 30-65-90"),
  "food-old": row("food or drink, older",              "15-45-75 10-40-70 0-10-30 8-30-55 8-30-60 55-80-95 10-40-70"),
  "browning-use": row("browning in use",               "50-80-94 30-62-85 15-40-70 60-80-92 20-45-75 50-80-95 50-80-94"),
  "browning-days": row("browning or a ring, days old", "50-80-94 25-55-80 20-50-80 30-60-85 25-55-80 50-80-95 50-80-95"),
  "browning-older": row("browning or a ring, older",   "30-60-85 10-35-65 5-22-50 15-40-65 10-35-60 30-60-85 30-60-85"),
  "pile-distortion": row("burst or distorted pile",    "20-50-75 5-20-45 0-5-18 5-18-40 10-30-55 0-10-30 15-40-65"),
  bleaching: row("bleached",                           "0-0-3 0-0-3 0-0-3 0-0-3 0-0-3 0-0-5 0-0-3"),
  "dye-damp": row("a colour that ran, still damp",     "30-60-88 20-50-80 2-15-40 10-35-65 15-40-70 50-80-95 25-55-85"),
  "dye-dry": row("a colour that ran, dry",             "5-22-50 4-18-45 0-5-20 3-14-35 5-20-45 30-60-85 8-25-55"),
  "urine-fresh": row("urine, under 2 days",            "45-75-92 25-55-82 3-18-42 15-42-70 25-55-80 65-88-97 35-68-90"),
  "urine-old": row("urine, older",                     "8-32-62 5-24-52 0-8-25 4-20-45 6-28-55 45-75-92 10-35-65"),
  matting: row("matting",                              "20-48-75 10-30-55 0-7-20 8-22-45 10-28-50 4-16-35 20-50-75"),
  fading: row("fading",                                "0-0-5 0-0-5 0-0-5 0-0-5 0-0-5 0-0-5 0-0-5"),
  mould: row("mould marks",                            "5-28-60 3-20-50 0-8-25 3-15-40 5-25-55 30-65-90 15-45-75"),
};
export const ROW_IDS = Object.keys(IMPROVEMENT) as readonly RowId[];

/**
 * The row of each mechanism while fresh and when older; null: a repair, which cleaning does not answer.
 * A water mark is a tide line and takes the rows of browning after cleaning (elicited).
 */
export const ROWS_OF: Readonly<Record<DamageId, { fresh: RowId; old: RowId } | null>> = {
  "browning-cleaning": { fresh: "browning-days", old: "browning-older" },
  "browning-use": { fresh: "browning-use", old: "browning-use" },
  "water-mark": { fresh: "browning-days", old: "browning-older" },
  "pile-distortion": { fresh: "pile-distortion", old: "pile-distortion" },
  bleaching: { fresh: "bleaching", old: "bleaching" },
  "dye-bleed": { fresh: "dye-damp", old: "dye-dry" },
  "urine-fresh": { fresh: "urine-fresh", old: "urine-fresh" },
  "urine-old": { fresh: "urine-old", old: "urine-old" },
  "food-fresh": { fresh: "food-fresh", old: "food-fresh" },
  "food-old": { fresh: "food-old", old: "food-old" },
  matting: { fresh: "matting", old: "matting" },
  fading: { fresh: "fading", old: "fading" },
  insects: null,
  mould: { fresh: "mould", old: "mould" },
  "backing-failure": null,
  shrinkage: null,
};

/** The cell of a class: its column, or the lowest of its components, percentile by percentile. */
export function improvementCell(row: RowId, fibre: FibreId): Quantiles {
  const cells = COLUMNS_OF[fibre].map((c) => IMPROVEMENT[row].cells[c]);
  const lowest = (of: keyof Quantiles) => Math.min(...cells.map((c) => c[of]));
  return { low: lowest("low"), median: lowest("median"), high: lowest("high") };
}

/** Under this improvement a mark counts as not brought back: the reader still sees it at once. */
export const BROUGHT_BACK = { leastPerCent: 40, how: "elicited", source: "Elicited for this project: below 40 % of the colour difference the owner still calls it the same mark" } as const satisfies Source & { leastPerCent: number };

/**
 * Chance that a method makes it worse, 0–1: `gentle` for low moisture or solvent named "test first", `wet` for any wet method,
 * midpoints of the elicited ranges. `passedTest`: what remains of it once a hidden corner has been tested.
 */
export interface WorseRow extends Source { readonly gentle: number; readonly wet: number }
const worse = (gentle: number, wet: number, source: string): WorseRow => ({ gentle, wet, how: "elicited", source: `Elicited for this project: ${source}` });
export const WORSE: Readonly<Record<Column, WorseRow>> = {
  wool: worse(0.035, 0.035, ".02–.05"),
  silk: worse(0.115, 0.115, ".08–.15"),
  viscose: worse(0.225, 0.5, ".15–.30, wet .5 and more"),
  "wool-viscose": worse(0.12, 0.35, "between wool and viscose"),
  cotton: worse(0.06, 0.1, "shrinkage and browning"),
  olefin: worse(0.02, 0.02, "as wool at its best"),
  polyamide: worse(0.035, 0.035, "as wool"),
};
/** Tufted with latex of this many years or more. */
export const WORSE_OLD_LATEX = { chance: 0.175, fromYears: 5, how: "elicited", source: "Elicited for this project: tufted with old latex, .1–.25" } as const satisfies Source & { chance: number; fromYears: number };
export const WORSE_AFTER_TEST = { share: 0.3, how: "elicited", source: "Elicited for this project: silk .08–.15 falls to .02–.05 after a passed test; the same share for every pile" } as const satisfies Source & { share: number };
