import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { fromPoundsOf2024 } from "../trade/price-index";
import { priceRow, type Make } from "../trade/prices";
import { CURRENCIES, type Currency } from "../trade/questions";
import { CLEANING_SPREAD, CUT_DOWN, LEAST_VALUE_SHARE, PAID_LOG_SD } from "../trade/value";
import type { Assessment, Range, TriageSettings } from "./assessment";
import { normalBelow, readPrice } from "./price-evidence";
import type { Told } from "./told";

type Fibres = Readonly<Record<FibreId, number>>;
export interface Size { readonly widthCm: number; readonly lengthCm: number }

/** The rug's size in centimetres, or null where it was not told. */
export function sizeOf(told: Told): Size | null {
  const size = told.value("size");
  if (!size || typeof size !== "object" || Array.isArray(size)) return null;
  const { widthCm, lengthCm } = size as Record<string, unknown>;
  return typeof widthCm === "number" && typeof lengthCm === "number" && widthCm > 0 && lengthCm > 0 ? { widthCm, lengthCm } : null;
}

const areaM2 = (s: Size): number => (s.widthCm * s.lengthCm) / 10_000;
const ranged = (of: (which: keyof Range) => number): Range => ({ low: of("low"), median: of("median"), high: of("high") });

/** Cost of a clean in the workshop's currency: its rate per m² over the size, not under its minimum, and up for hand work. */
export function cleaningCost(size: Size, prices: TriageSettings["prices"]): Range {
  const plain = Math.max(prices.cleanMinimum, prices.cleanPerM2 * areaM2(size));
  return ranged((w) => plain * CLEANING_SPREAD[w]);
}

/** Cost of new edges after a cut-down: from one end to all round. */
export function cutDownCost(size: Size, prices: TriageSettings["prices"]): Range {
  const [short, long] = [Math.min(size.widthCm, size.lengthCm), Math.max(size.widthCm, size.lengthCm)];
  const edges = { low: [short], median: [short, long], high: [short, short, long, long] };
  return ranged((w) => edges[w].reduce((metres, cm) => metres + (cm + CUT_DOWN.turnCm) / 100, 0) * prices.bindingPerM);
}

interface LogNormal { readonly weight: number; readonly logMedian: number; readonly logSd: number }

/** Quantile of a mixture of log-normals, by bisection on the logarithm. */
function logNormalQuantile(parts: readonly LogNormal[], chance: number): number {
  const total = parts.reduce((sum, p) => sum + p.weight, 0);
  const below = (x: number) => parts.reduce((sum, p) => sum + (p.weight / total) * normalBelow((x - p.logMedian) / p.logSd), 0);
  let low = Math.min(...parts.map((p) => p.logMedian - 6 * p.logSd));
  let high = Math.max(...parts.map((p) => p.logMedian + 6 * p.logSd));
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    if (below(middle) >= chance) high = middle;
    else low = middle;
  }
  return Math.exp(high);
}

/** The answers to `back` are the makes of the price table. */
const makeOf = (told: Told): Make | null => told.one("back") as Make | null;

/** Price of one like it, new, in the workshop's currency: around what was paid in a shop, else by the fibres it may be. */
function replacementCost(told: Told, fibres: Fibres, size: Size, place: { currency: Currency; year: number }): Range {
  const paid = readPrice(told.value("price-per-m2") ?? "", { ...place, make: makeOf(told) });
  const parts: LogNormal[] = paid && !paid.loosePlace
    ? [{ weight: 1, logMedian: paid.logPounds, logSd: PAID_LOG_SD.value }]
    : FIBRE_IDS.flatMap((f) => {
      if (f === "other") return [];
      const row = priceRow(f, makeOf(told));
      return [{ weight: fibres[f], logMedian: Math.log(row.median), logSd: row.logSd }];
    });
  const at = (chance: number) => fromPoundsOf2024(logNormalQuantile(parts, chance) * areaM2(size), place.currency);
  return { low: at(0.1), median: at(0.5), high: at(0.9) };
}

/** Share of its price as new that a rug with this life left at this age is still worth. */
const shareLeft = (yearsLeft: number, age: number): number => Math.max(LEAST_VALUE_SHARE.share, Math.min(1, yearsLeft / (yearsLeft + age)));

export interface MoneyContext { readonly settings: TriageSettings; readonly year: number; readonly lifeYears: Range | null; readonly meanAge: number }

/** All sums in the workshop's currency; null with a sentence where they cannot be said. Antiques get no value and no replacement: a valuer does that. */
export function judgeMoney(told: Told, fibres: Fibres, context: MoneyContext): { money: Assessment["money"]; why: string | null } {
  const size = sizeOf(told);
  const { settings, lifeYears } = context;
  if (!size) return { money: null, why: "The size of the rug is not known, and every price goes by the square metre." };
  const currency = CURRENCIES.find((c) => c === settings.currency);
  const antique = told.has("age:antique");
  const replace = antique || !currency ? null : replacementCost(told, fibres, size, { currency, year: context.year });
  const valueToday = replace && lifeYears ? ranged((w) => replace[w] * shareLeft(lifeYears[w], context.meanAge)) : null;
  return {
    money: {
      currency: settings.currency, clean: cleaningCost(size, settings.prices),
      cutDown: antique ? null : cutDownCost(size, settings.prices), replace, valueToday,
    },
    why: antique ? "An antique is valued by a valuer, never from photos." : null,
  };
}

/** The standard normal's 90th percentile. */
const Z90 = 1.2816;

/** Chance that cleaning costs more than the rug is worth today; only where the client said what was paid, else 0. */
export function chanceNotWorthIt(told: Told, money: Assessment["money"]): number {
  if (told.value("price-per-m2") === undefined || !money?.clean || !money.valueToday) return 0;
  const { low, median, high } = money.valueToday;
  const sd = Math.max(PAID_LOG_SD.value, Math.log(high / low) / (2 * Z90));
  return normalBelow(Math.log(money.clean.median / median) / sd);
}
