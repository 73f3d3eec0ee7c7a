import type { FibreId } from "../trade/fibres";
import { fromPoundsOf2024 } from "../trade/price-index";
import { NOT_STATED } from "../trade/not-stated";
import type { Make } from "../trade/prices";
import { CURRENCIES, type Currency } from "../trade/questions";
import { CLEANING_SPREAD, CUT_DOWN } from "../trade/value";
import type { Assessment, Range, TriageSettings } from "./assessment";
import { normalBelow, readPrice } from "./price-evidence";
import type { Told } from "./told";
import { logNormalQuantile, pastTheTables, replacementParts, servingParts, valueParts, type LogNormal, type Valued } from "./value-today";

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

/** Metres of binding of the cut-down that was drawn on the rug's plan (finding `cut-down` { bindingM }), or null. */
function plannedBindingM(told: Told): number | null {
  const plan = told.value("cut-down");
  if (!plan || typeof plan !== "object" || Array.isArray(plan)) return null;
  const { bindingM } = plan as Record<string, unknown>;
  return typeof bindingM === "number" && Number.isFinite(bindingM) && bindingM > 0 ? bindingM : null;
}

/** Whether the place of the damage was drawn on the rug's plan. */
export const isPlanned = (told: Told): boolean => plannedBindingM(told) !== null;

/** Cost of new edges after a cut-down, in the workshop's currency: of the edges drawn on the plan, else from one end to all round. */
export function cutDownCost(size: Size, prices: TriageSettings["prices"], bindingM: number | null): Range {
  const [short, long] = [Math.min(size.widthCm, size.lengthCm), Math.max(size.widthCm, size.lengthCm)];
  const edges = { low: [short], median: [short, long], high: [short, short, long, long] };
  return ranged((w) => (bindingM ?? edges[w].reduce((metres, cm) => metres + (cm + CUT_DOWN.turnCm) / 100, 0)) * prices.bindingPerM);
}

/** The answers to `back` are the makes of the price table. */
const makeOf = (told: Told): Make | null => told.one("back") as Make | null;

/** The standard normal's 90th percentile. */
const Z90 = 1.2816;

/** Chance that cleaning, over the spread of its price, costs more than the rug is worth (both for the whole rug, in one currency). What costs nothing never does. */
function chanceNotWorthIt(clean: Range, value: readonly LogNormal[], scale: number): number {
  if (clean.low <= 0) return 0;
  const costSd = Math.log(clean.high / clean.low) / (2 * Z90);
  const total = value.reduce((sum, p) => sum + p.weight, 0);
  return value.reduce((sum, p) => sum + (p.weight / total) * normalBelow((Math.log(clean.median / scale) - p.logMedian) / Math.hypot(p.logSd, costSd)), 0);
}

/** From this chance a rug counts as past the published tables of depreciation. Elicited. */
const PAST_TABLES_FROM = 0.5;

export interface Money { readonly money: Assessment["money"]; readonly why: string | null; /** Chance that cleaning costs more than the service still in the rug is worth; 0 where either cannot be said. */ readonly notWorthIt: number }
export interface MoneyContext { readonly settings: TriageSettings; readonly year: number }

/** Replacement and value today, with the chance that cleaning costs more than the service the rug still has in it. */
function valued(v: Valued, { currency, size, clean }: { currency: Currency; size: Size; clean: Range }): { replace: Range; valueToday: Range | null; notWorthIt: number } {
  const scale = fromPoundsOf2024(areaM2(size), currency);
  const rangeOf = (parts: readonly LogNormal[]): Range => {
    const at = (chance: number) => logNormalQuantile(parts, chance) * scale;
    return { low: at(0.1), median: at(0.5), high: at(0.9) };
  };
  const replace = rangeOf(replacementParts(v));
  if (pastTheTables(v) >= PAST_TABLES_FROM) return { replace, valueToday: null, notWorthIt: 0 };
  return { replace, valueToday: rangeOf(valueParts(v)), notWorthIt: chanceNotWorthIt(clean, servingParts(v), scale) };
}

/** A cost that is told; null where a kept price is 0, which says that nobody has set it, and not that the work is free. */
const priced = (cost: Range): Range | null => (cost.high > 0 ? cost : null);

/** All sums in the workshop's currency; null with a sentence where they cannot be said. Antiques get no value and no replacement: a valuer does that. */
export function judgeMoney(told: Told, fibres: Fibres, { settings, year }: MoneyContext): Money {
  const size = sizeOf(told);
  if (!size) return { money: null, why: NOT_STATED.size, notWorthIt: 0 };
  const currency = CURRENCIES.find((c) => c === settings.currency);
  const clean = cleaningCost(size, settings.prices);
  const cutDown = priced(cutDownCost(size, settings.prices, plannedBindingM(told)));
  const plain = { currency: settings.currency, clean: priced(clean), replace: null, valueToday: null };
  if (told.has("age:antique")) return { money: { ...plain, cutDown: null }, why: NOT_STATED.antique, notWorthIt: 0 };
  if (!currency) return { money: { ...plain, cutDown }, why: NOT_STATED.currency, notWorthIt: 0 };
  const make = makeOf(told);
  const paid = readPrice(told.value("price-per-m2") ?? "", { currency, year, make });
  const { replace, valueToday, notWorthIt } = valued({ told, fibres, yearNow: year, make, paid }, { currency, size, clean });
  return { money: { ...plain, cutDown, replace, valueToday }, why: valueToday ? null : NOT_STATED.old, notWorthIt };
}
