import type { Source } from "./fibres";
import type { NamedFibre } from "./likelihood-table";

/** Constructions are the answers of the question `back`. */
export type Make = "knots" | "cloth" | "loomed" | "machine" | "flat" | "felt";

/** Shop price new, per m², pounds of 2024: log-normal with this median and standard deviation of the logarithm. */
export interface PriceRow {
  readonly fibre: NamedFibre;
  /** Null: every construction without a row of its own. */
  readonly make: Make | null;
  readonly median: number;
  readonly logSd: number;
}

export const PRICE_SOURCE: Source = {
  how: "elicited",
  source: "Shop prices new as workshops hear them from clients, judged for this project; no published prices by pile fibre were found (customs figures do not separate silk from viscose)",
};
export const PRICE_STRENGTH = 8;

export const PRICES: readonly PriceRow[] = [
  { fibre: "silk", make: null, median: 1800, logSd: 0.8 },
  { fibre: "wool-silk", make: null, median: 900, logSd: 0.7 },
  { fibre: "silk-viscose", make: null, median: 600, logSd: 0.8 },
  { fibre: "wool", make: "knots", median: 450, logSd: 0.8 },
  { fibre: "wool", make: "cloth", median: 180, logSd: 0.7 },
  { fibre: "wool", make: "machine", median: 110, logSd: 0.6 },
  { fibre: "wool", make: null, median: 200, logSd: 0.8 },
  { fibre: "wool-viscose", make: null, median: 260, logSd: 0.8 },
  { fibre: "lyocell", make: null, median: 250, logSd: 0.7 },
  { fibre: "mercerised-cotton", make: null, median: 200, logSd: 0.7 },
  { fibre: "viscose", make: "knots", median: 450, logSd: 0.8 },
  { fibre: "viscose", make: null, median: 180, logSd: 0.95 },
  { fibre: "cotton-viscose", make: null, median: 110, logSd: 0.8 },
  { fibre: "acetate", make: null, median: 120, logSd: 0.9 },
  { fibre: "bast", make: null, median: 120, logSd: 0.8 },
  { fibre: "polyamide", make: null, median: 90, logSd: 0.6 },
  { fibre: "cotton", make: null, median: 70, logSd: 0.7 },
  { fibre: "polyester", make: null, median: 60, logSd: 0.6 },
  { fibre: "acrylic", make: null, median: 60, logSd: 0.6 },
  { fibre: "hard-fibre", make: null, median: 60, logSd: 0.6 },
  { fibre: "polypropylene", make: null, median: 40, logSd: 0.6 },
];

export const priceRow = (fibre: NamedFibre, make: Make | null): PriceRow =>
  (PRICES.find((r) => r.fibre === fibre && r.make === make) ?? PRICES.find((r) => r.fibre === fibre && r.make === null)) as PriceRow;

/** Places (answers of `boughtWhere`) whose prices tell little, and the log-sd they widen every row to. Elicited. */
export const LOOSE_PLACES: readonly string[] = ["bazaar", "auction", "secondhand", "gift"];
export const LOOSE_LOG_SD = 1.3;
/** Added to the log-variance as a square where the year is not told: a price of some years ago, taken as today's. Elicited. */
export const UNKNOWN_YEAR_LOG_SD = 0.3;

/**
 * Price is one-sided evidence: a very low one speaks against silk, a high one says next to nothing. Decibans of a class
 * against viscose are clipped to these bounds. Elicited.
 */
export const PRICE_CLIP_DB = { least: -15, most: 12, mostWithSilk: 3 } as const;
export const CLASSES_WITH_SILK: readonly NamedFibre[] = ["silk", "wool-silk", "silk-viscose"];
