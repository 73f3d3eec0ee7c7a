import { DEPRECIATION_CLASS, HEAVY_WEAR, TABLES_END, USEFUL_LIVES, type DepreciationClass } from "../trade/depreciation";
import type { FibreId } from "../trade/fibres";
import { priceRow, type Make } from "../trade/prices";
import { LEAST_VALUE_SHARE, PAID_LOG_SD } from "../trade/value";
import { lifetimesOf, type Lifetime } from "./life";
import { normalBelow, type PriceEvidence } from "./price-evidence";
import type { Told } from "./told";

/** One way the price may lie: a log-normal (natural logarithm of pounds of 2024 per m²) and its weight. */
export interface LogNormal { readonly weight: number; readonly logMedian: number; readonly logSd: number }

/** Bisection ends where the quantile is known to a ten-thousandth. */
const LOG_STEP = 1e-4;

/** Quantile of a mixture of log-normals, by bisection on the logarithm. */
export function logNormalQuantile(parts: readonly LogNormal[], chance: number): number {
  const total = parts.reduce((sum, p) => sum + p.weight, 0);
  const below = (x: number) => parts.reduce((sum, p) => sum + (p.weight / total) * normalBelow((x - p.logMedian) / p.logSd), 0);
  let low = Math.min(...parts.map((p) => p.logMedian - 6 * p.logSd));
  let high = Math.max(...parts.map((p) => p.logMedian + 6 * p.logSd));
  while (high - low > LOG_STEP) {
    const middle = (low + high) / 2;
    if (below(middle) >= chance) high = middle;
    else low = middle;
  }
  return Math.exp(high);
}

/** Share of its price new that is left of a thing of this age and useful life in years, by a straight line, 0–1. */
export const shareLeft = (ageYears: number, usefulYears: number): number => Math.min(1, Math.max(0, 1 - ageYears / usefulYears));

const LIVES_OF = new Map(USEFUL_LIVES.map(({ of }) => [of, USEFUL_LIVES.filter((u) => u.of === of)]));

const classOf = (l: Pick<Lifetime, "fibre" | "made">): DepreciationClass => {
  const row = DEPRECIATION_CLASS[l.fibre];
  return typeof row === "string" ? row : row[l.made];
};

/** Price of one like it, new: around what was paid in a shop, else by the pile it may be. */
function priceNew(fibre: FibreId, make: Make | null, paid: PriceEvidence | null): Omit<LogNormal, "weight"> | null {
  if (paid && !paid.loosePlace) return { logMedian: paid.logPounds, logSd: PAID_LOG_SD.value };
  if (fibre === "other") return null;
  const row = priceRow(fibre, make);
  return { logMedian: Math.log(row.median), logSd: row.logSd };
}

export interface Valued { readonly told: Told; readonly fibres: Readonly<Record<FibreId, number>>; readonly yearNow: number; readonly make: Make | null; readonly paid: PriceEvidence | null }

/** Ways of less weight than this move no sum that is shown. */
const LEAST_WEIGHT = 1e-4;

/** What a replacement may cost, one part a fibre. */
export const replacementParts = ({ fibres, make, paid }: Valued): LogNormal[] =>
  (Object.keys(fibres) as FibreId[]).flatMap((f) => {
    const price = priceNew(f, make, paid);
    return price && fibres[f] > LEAST_WEIGHT ? [{ ...price, weight: fibres[f] }] : [];
  });

/** What the rug may be worth today: replacement less depreciation, over fibre, make, age and published table. */
export function valueParts(v: Valued): LogNormal[] {
  const worn = HEAVY_WEAR.changes.some((c) => v.told.has(`changes:${c}`)) ? HEAVY_WEAR.times : 1;
  return lifetimesOf(v.told, v.fibres, v.yearNow).flatMap((l) => {
    const price = priceNew(l.fibre, v.make, v.paid);
    const lives = LIVES_OF.get(classOf(l)) ?? [];
    const weight = l.weight / lives.length;
    if (!price || weight < LEAST_WEIGHT) return [];
    return lives.map(({ years }) => ({ ...price, weight, logMedian: price.logMedian + Math.log(Math.max(LEAST_VALUE_SHARE.share, shareLeft(l.age * worn, years))) }));
  });
}

/** Years that a rug of this kind, age and wear goes on serving: the median of its life, given that it has lived so long. */
function yearsToServe({ life, age, most }: Lifetime): number {
  const lasts = life.medianYears * ((age / life.medianYears) ** life.shape + 1) ** (1 / life.shape) - age;
  return Math.min(lasts, most);
}

/**
 * What the rug is worth to its owner as a rug that serves: replacement times the share of its whole service that is still to
 * come. Depreciation tables are written for tenancies and claims and let a good rug's worth end while it serves; whether a
 * clean is worth its price hangs on the service.
 */
export function servingParts(v: Valued): LogNormal[] {
  return lifetimesOf(v.told, v.fibres, v.yearNow).flatMap((l) => {
    const price = priceNew(l.fibre, v.make, v.paid);
    if (!price || l.weight < LEAST_WEIGHT) return [];
    const left = yearsToServe(l);
    return [{ ...price, weight: l.weight, logMedian: price.logMedian + Math.log(Math.max(LEAST_VALUE_SHARE.share, left / (left + l.age))) }];
  });
}

/** Chance that it is hand-knotted and older than the published tables reach, 0–1. */
export const pastTheTables = (v: Valued): number => {
  const all = lifetimesOf(v.told, v.fibres, v.yearNow);
  return all.reduce((sum, l) => (classOf(l) === "hand-knotted" && l.age > TABLES_END.years ? sum + l.weight : sum), 0);
};
