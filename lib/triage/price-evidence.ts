import { BACK } from "../trade/likelihoods-make";
import { PRICE_BASE_YEAR, poundsOf2024 } from "../trade/price-index";
import { CLASSES_WITH_SILK, LOOSE_LOG_SD, LOOSE_PLACES, PRICE_CLIP_DB, PRICE_STRENGTH, UNKNOWN_YEAR_LOG_SD, priceRow, type Make } from "../trade/prices";
import type { NamedFibre } from "../trade/likelihood-table";
import { CURRENCIES, type Currency } from "../trade/questions";
import { NAMED, type NamedVector } from "./classes";
import type { Finding, FindingValue } from "./finding";
import { drawNormal, type Random } from "./random";

/** What a price can say, once it is a sum per square metre in known money. */
export interface PriceEvidence {
  /** Natural logarithm of pounds of 2024 per m². */
  readonly logPounds: number;
  readonly loosePlace: boolean;
  readonly yearKnown: boolean;
  readonly make: Make | null;
}

const isCurrency = (x: unknown): x is Currency => (CURRENCIES as readonly unknown[]).includes(x);
const isMake = (x: unknown): x is Make => BACK.answers.includes(x as string);

/**
 * Reads the finding `price-per-m2` ({ amount, currency, year, place }). Null where it is not a price to go by: nothing
 * paid, a year before our table or one that has not come yet, not finite. An unknown currency counts as the workshop's, an
 * unknown year as this one.
 */
export function readPrice(value: FindingValue, context: { currency: string; year: number; make: string | null }): PriceEvidence | null {
  if (typeof value !== "object" || Array.isArray(value)) return null;
  const { amount, currency, year, place } = value as Record<string, unknown>;
  const money = isCurrency(currency) ? currency : context.currency;
  if (typeof amount !== "number" || !(amount > 0) || !Number.isFinite(amount) || !isCurrency(money)) return null;
  const bought = typeof year === "number" && Number.isFinite(year) ? year : null;
  if (bought !== null && bought > context.year) return null;
  const pounds = poundsOf2024(amount, money, bought ?? context.year);
  if (pounds === null) return null;
  const loosePlace = typeof place === "string" && LOOSE_PLACES.includes(place);
  return { logPounds: Math.log(pounds), loosePlace, yearKnown: bought !== null, make: isMake(context.make) ? context.make : null };
}

/** The spread of a row's log price for this purchase. */
function spread(logSd: number, price: PriceEvidence): number {
  const base = price.loosePlace ? Math.max(logSd, LOOSE_LOG_SD) : logSd;
  return price.yearKnown ? base : Math.hypot(base, UNKNOWN_YEAR_LOG_SD);
}

const density = (z: number, sd: number) => Math.exp((-z * z) / 2) / sd;

/** Density of a price for one class: of its construction where the back was seen, else mixed over its constructions. `shift` moves its medians, in log-sds. */
function classDensity(fibre: NamedFibre, price: PriceEvidence, shift: number): number {
  const at = (make: Make) => {
    const row = priceRow(fibre, make);
    const sd = spread(row.logSd, price);
    return density((price.logPounds - Math.log(row.median) - shift * row.logSd) / sd, sd);
  };
  if (price.make) return at(price.make);
  return BACK.answers.reduce((sum, make, k) => sum + (BACK.rows[fibre][k] as number) * at(make as Make), 0);
}

/** A price above what silk usually costs says no more than that usual price would: classes with silk see it cut there. */
function asSeenBy(fibre: NamedFibre, price: PriceEvidence): PriceEvidence {
  const usual = Math.log(priceRow(fibre, price.make).median);
  return CLASSES_WITH_SILK.includes(fibre) && price.logPounds > usual ? { ...price, logPounds: usual } : price;
}

/** Density ratio of two classes as decibans, clipped; both densities 0 (far outside every row) says nothing. */
function clipped(fibre: NamedFibre, own: number, viscose: number): number {
  const most = CLASSES_WITH_SILK.includes(fibre) ? PRICE_CLIP_DB.mostWithSilk : PRICE_CLIP_DB.most;
  if (own <= 0 && viscose <= 0) return 0;
  const db = 10 * Math.log10(own / viscose);
  return Math.min(most, Math.max(PRICE_CLIP_DB.least, db));
}

const VISCOSE = NAMED.indexOf("viscose");

/** The weight of the price for every class against viscose, as a likelihood (viscose 1). */
export function priceLikelihood(price: PriceEvidence, random: Random | null = null): NamedVector {
  const shifts = NAMED.map(() => (random ? drawNormal(random) / Math.sqrt(PRICE_STRENGTH) : 0));
  return NAMED.map((fibre, i) => {
    if (i === VISCOSE) return 1;
    const seen = asSeenBy(fibre, price);
    const own = classDensity(fibre, seen, shifts[i] as number);
    return 10 ** (clipped(fibre, own, classDensity("viscose", seen, shifts[VISCOSE] as number)) / 10);
  });
}

/** Sums per m² (pounds of 2024) that stand for five bands of price, and where the bands meet. Elicited. */
const BANDS = [{ amount: 35, to: 60 }, { amount: 110, to: 180 }, { amount: 300, to: 500 }, { amount: 850, to: 1500 }, { amount: 2600, to: Infinity }] as const;

/** The prices a client might name, with the chance of each band for every class, as findings to try out. */
export function pricesToExpect(): { finding: Finding; column: NamedVector }[] {
  return BANDS.map(({ amount, to }, k) => {
    const from = k === 0 ? 0 : (BANDS[k - 1] as (typeof BANDS)[number]).to;
    const column = NAMED.map((fibre) => {
      const row = priceRow(fibre, null);
      const below = (pounds: number) => (pounds === Infinity ? 1 : pounds === 0 ? 0 : normalBelow((Math.log(pounds) - Math.log(row.median)) / row.logSd));
      return below(to) - below(from);
    });
    const value = { amount, currency: "GBP", year: PRICE_BASE_YEAR, place: null, priceTotal: null };
    return { finding: { what: "price-per-m2", value, strength: "told", from: "client" }, column };
  });
}

/** P(Z < z) of the standard normal, within 1e-7 (Abramowitz and Stegun 26.2.17, from memory). */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * t
    * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}
