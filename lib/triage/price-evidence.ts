import { BACK } from "../trade/likelihoods-make";
import { LATEST_RATE_YEAR, PRICE_BASE_YEAR, poundsOf2024 } from "../trade/price-index";
import { CLASSES_WITH_SILK, LOOSE_LOG_SD, LOOSE_PLACES, PRICE_CLIP_DB, PRICE_STRENGTH, UNKNOWN_YEAR_LOG_SD, priceRow, type Make, type PriceRow } from "../trade/prices";
import type { NamedFibre } from "../trade/likelihood-table";
import { CURRENCIES, type Currency } from "../trade/questions";
import { NAMED, type NamedVector } from "./classes";
import type { Assessment } from "./assessment";
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

/** A log-normal price of some share of a class's rugs; the shares of a class sum to 1. */
interface PriceShare { readonly logMedian: number; readonly logSd: number; readonly share: number }

/** Prices of a class by its construction where the back was seen, else mixed over its constructions; those without a row of their own share one. */
function sharesOf(fibre: NamedFibre, make: Make | null): readonly PriceShare[] {
  const shares = new Map<PriceRow, number>();
  const makes = make === null ? BACK.answers.map((m, k) => [m as Make, BACK.rows[fibre][k] as number] as const) : [[make, 1] as const];
  for (const [m, share] of makes) shares.set(priceRow(fibre, m), (shares.get(priceRow(fibre, m)) ?? 0) + share);
  return [...shares].map(([row, share]) => ({ logMedian: Math.log(row.median), logSd: row.logSd, share }));
}
/** What is looked up for each class, by construction. `usual`: the logarithm of its usual price. */
interface Priced { readonly shares: readonly PriceShare[]; readonly usual: number; readonly withSilk: boolean }
const pricedFor = (make: Make | null): readonly Priced[] =>
  NAMED.map((f) => ({ shares: sharesOf(f, make), usual: Math.log(priceRow(f, make).median), withSilk: CLASSES_WITH_SILK.includes(f) }));
const PRICED = new Map<Make | null, readonly Priced[]>([null, ...(BACK.answers as readonly Make[])].map((m) => [m, pricedFor(m)]));

/** Density of a log price for one class, up to a common factor. `shift` moves its medians, in log-sds. */
function classDensity({ shares }: Priced, price: PriceEvidence, at: { logPounds: number; shift: number }): number {
  let sum = 0;
  for (const { logMedian, logSd, share } of shares) {
    const sd = spread(logSd, price);
    const z = (at.logPounds - logMedian - at.shift * logSd) / sd;
    sum += (share * Math.exp((-z * z) / 2)) / sd;
  }
  return sum;
}

const fromDb = (db: number) => 10 ** (db / 10);
const [LEAST, MOST, MOST_WITH_SILK] = [fromDb(PRICE_CLIP_DB.least), fromDb(PRICE_CLIP_DB.most), fromDb(PRICE_CLIP_DB.mostWithSilk)];
/** Density ratio of two classes, clipped; both densities 0 (far outside every row) says nothing. */
function clipped(own: number, viscose: number, withSilk: boolean): number {
  if (own <= 0 && viscose <= 0) return 1;
  return Math.min(withSilk ? MOST_WITH_SILK : MOST, Math.max(LEAST, own / viscose));
}

const VISCOSE = NAMED.indexOf("viscose");

/**
 * The weight of the price for every class against viscose, as a likelihood (viscose 1). A price above what silk usually
 * costs says no more than that usual price would: classes with silk see it cut there.
 */
export function priceLikelihood(price: PriceEvidence, random: Random | null = null): NamedVector {
  const classes = PRICED.get(price.make) as readonly Priced[];
  const shifts = classes.map(() => (random ? drawNormal(random) / Math.sqrt(PRICE_STRENGTH) : 0));
  const densityAt = (i: number, logPounds: number) => classDensity(classes[i] as Priced, price, { logPounds, shift: shifts[i] as number });
  const viscose = densityAt(VISCOSE, price.logPounds);
  return classes.map(({ usual, withSilk }, i) => {
    if (i === VISCOSE) return 1;
    if (!withSilk || price.logPounds <= usual) return clipped(densityAt(i, price.logPounds), viscose, withSilk);
    return clipped(densityAt(i, usual), densityAt(VISCOSE, usual), withSilk);
  });
}

/** From this many decibans against viscose on, a price speaks against silk clearly enough to say so. Elicited; the step of "clearly". */
const AGAINST_SILK_DB = -4;
const SILK = NAMED.indexOf("silk");

type OfPrice = Pick<Assessment, "findings" | "asOf" | "money">;
const toldPrice = ({ findings }: OfPrice): FindingValue => findings.find((f) => f.what === "price-per-m2")?.value ?? "";
const yearOf = ({ asOf }: OfPrice): number => Number(asOf.slice(0, 4));

/** The price in an assessment that was made, as it was read there. */
function priceIn(a: OfPrice): PriceEvidence | null {
  const back = a.findings.find((f) => f.what === "back")?.value;
  return readPrice(toldPrice(a), { currency: a.money?.currency ?? "", year: yearOf(a), make: typeof back === "string" ? back : null });
}

/** Whether the price that was paid speaks clearly against silk: it is far below what silk costs. False where none was told, or none that can be read. */
export function speaksAgainstSilk(a: OfPrice): boolean {
  const price = priceIn(a);
  return price !== null && 10 * Math.log10(priceLikelihood(price)[SILK] as number) <= AGAINST_SILK_DB;
}

/** What was paid for the whole rug, in whole or part units of `currency`. `year`: a calendar year, null where none was told; `rateYear`: the one whose rates it was exchanged at. */
export interface Paid { readonly amount: number; readonly currency: Currency; readonly year: number | null; readonly rateYear: number }

/** What was paid in a shop, by which a new rug is priced then; null where a new one is priced by its pile. */
export function paidInShop(a: OfPrice): Paid | null {
  const told = toldPrice(a);
  const price = priceIn(a);
  if (price === null || price.loosePlace || typeof told !== "object" || Array.isArray(told)) return null;
  const { priceTotal, currency, year } = told as Record<string, unknown>;
  const paidIn = isCurrency(currency) ? currency : a.money?.currency;
  if (typeof priceTotal !== "number" || !isCurrency(paidIn)) return null;
  const bought = price.yearKnown ? Number(year) : null;
  return { amount: priceTotal, currency: paidIn, year: bought, rateYear: Math.min(bought ?? yearOf(a), LATEST_RATE_YEAR) };
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
