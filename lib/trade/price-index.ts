import type { Source } from "./fibres";
import type { Currency } from "./questions";

/**
 * What a price paid in some year is worth in pounds of 2024: exchanged at that year's mean rate, then carried by UK
 * consumer prices. Years outside the table are not guessed at.
 */
export const PRICE_INDEX_SOURCES: readonly Source[] = [
  { how: "computed", source: "UK consumer prices: World Bank FP.CPI.TOTL.ZG annual rates as collected in datasets/cpi (GitHub), chained, 2015 = 100; agrees with ONS CPIH" },
  { how: "memory", source: "UK consumer prices 2025: ONS CPIH bulletins, 3.9 %" },
  { how: "computed", source: "Federal Reserve H.10 as collected in datasets/exchange-rates (GitHub): annual means; pounds a euro as mean of monthly cross rates" },
  { how: "read", source: "Federal Reserve H.10 as collected in datasets/exchange-rates (GitHub): annual means of Australian, Canadian and New Zealand dollars a United States dollar; in pounds by way of that dollar" },
];

export interface PriceIndexRow { readonly year: number; readonly cpi: number; readonly usdPerGbp: number; readonly gbpPerEur: number; readonly audPerUsd: number; readonly cadPerUsd: number; readonly nzdPerUsd: number }

export const PRICE_INDEX: readonly PriceIndexRow[] = [
  { year: 2000, cpi: 73.42, usdPerGbp: 1.5158, gbpPerEur: 0.609, audPerUsd: 1.7197, cadPerUsd: 1.4855, nzdPerUsd: 2.1891 },
  { year: 2001, cpi: 74.55, usdPerGbp: 1.44, gbpPerEur: 0.6218, audPerUsd: 1.9346, cadPerUsd: 1.5487, nzdPerUsd: 2.3798 },
  { year: 2002, cpi: 75.68, usdPerGbp: 1.5024, gbpPerEur: 0.6288, audPerUsd: 1.8392, cadPerUsd: 1.5704, nzdPerUsd: 2.1529 },
  { year: 2003, cpi: 76.72, usdPerGbp: 1.6348, gbpPerEur: 0.6921, audPerUsd: 1.5328, cadPerUsd: 1.4008, nzdPerUsd: 1.7176 },
  { year: 2004, cpi: 77.79, usdPerGbp: 1.8326, gbpPerEur: 0.6787, audPerUsd: 1.3578, cadPerUsd: 1.3017, nzdPerUsd: 1.5053 },
  { year: 2005, cpi: 79.41, usdPerGbp: 1.8199, gbpPerEur: 0.6838, audPerUsd: 1.3111, cadPerUsd: 1.2115, nzdPerUsd: 1.4186 },
  { year: 2006, cpi: 81.37, usdPerGbp: 1.8429, gbpPerEur: 0.6817, audPerUsd: 1.3271, cadPerUsd: 1.134, nzdPerUsd: 1.5404 },
  { year: 2007, cpi: 83.31, usdPerGbp: 2.0017, gbpPerEur: 0.6847, audPerUsd: 1.1918, cadPerUsd: 1.0734, nzdPerUsd: 1.3578 },
  { year: 2008, cpi: 86.24, usdPerGbp: 1.8522, gbpPerEur: 0.7969, audPerUsd: 1.1714, cadPerUsd: 1.066, nzdPerUsd: 1.3984 },
  { year: 2009, cpi: 87.93, usdPerGbp: 1.5652, gbpPerEur: 0.8908, audPerUsd: 1.2615, cadPerUsd: 1.1412, nzdPerUsd: 1.5728 },
  { year: 2010, cpi: 90.12, usdPerGbp: 1.5466, gbpPerEur: 0.8583, audPerUsd: 1.087, cadPerUsd: 1.0298, nzdPerUsd: 1.3858 },
  { year: 2011, cpi: 93.6, usdPerGbp: 1.6036, gbpPerEur: 0.8679, audPerUsd: 0.9679, cadPerUsd: 0.9887, nzdPerUsd: 1.2626 },
  { year: 2012, cpi: 96.01, usdPerGbp: 1.5855, gbpPerEur: 0.8113, audPerUsd: 0.9653, cadPerUsd: 0.9995, nzdPerUsd: 1.2338 },
  { year: 2013, cpi: 98.21, usdPerGbp: 1.5648, gbpPerEur: 0.8492, audPerUsd: 1.0327, cadPerUsd: 1.03, nzdPerUsd: 1.2189 },
  { year: 2014, cpi: 99.63, usdPerGbp: 1.6475, gbpPerEur: 0.8065, audPerUsd: 1.1069, cadPerUsd: 1.1043, nzdPerUsd: 1.2029 },
  { year: 2015, cpi: 100.0, usdPerGbp: 1.5285, gbpPerEur: 0.7263, audPerUsd: 1.3294, cadPerUsd: 1.2791, nzdPerUsd: 1.4284 },
  { year: 2016, cpi: 101.01, usdPerGbp: 1.3549, gbpPerEur: 0.8193, audPerUsd: 1.3432, cadPerUsd: 1.3243, nzdPerUsd: 1.4335 },
  { year: 2017, cpi: 103.59, usdPerGbp: 1.2892, gbpPerEur: 0.876, audPerUsd: 1.3036, cadPerUsd: 1.2984, nzdPerUsd: 1.4063 },
  { year: 2018, cpi: 105.97, usdPerGbp: 1.3357, gbpPerEur: 0.8847, audPerUsd: 1.3367, cadPerUsd: 1.2957, nzdPerUsd: 1.4432 },
  { year: 2019, cpi: 107.81, usdPerGbp: 1.2773, gbpPerEur: 0.8769, audPerUsd: 1.4384, cadPerUsd: 1.3269, nzdPerUsd: 1.5172 },
  { year: 2020, cpi: 108.88, usdPerGbp: 1.2837, gbpPerEur: 0.889, audPerUsd: 1.4495, cadPerUsd: 1.3422, nzdPerUsd: 1.5389 },
  { year: 2021, cpi: 111.62, usdPerGbp: 1.3761, gbpPerEur: 0.8599, audPerUsd: 1.3307, cadPerUsd: 1.2533, nzdPerUsd: 1.4136 },
  { year: 2022, cpi: 120.46, usdPerGbp: 1.2374, gbpPerEur: 0.8524, audPerUsd: 1.4386, cadPerUsd: 1.3014, nzdPerUsd: 1.5721 },
  { year: 2023, cpi: 128.64, usdPerGbp: 1.2439, gbpPerEur: 0.8698, audPerUsd: 1.5051, cadPerUsd: 1.3494, nzdPerUsd: 1.6279 },
  { year: 2024, cpi: 132.85, usdPerGbp: 1.2781, gbpPerEur: 0.8465, audPerUsd: 1.5158, cadPerUsd: 1.3699, nzdPerUsd: 1.6529 },
  { year: 2025, cpi: 138.03, usdPerGbp: 1.3185, gbpPerEur: 0.8567, audPerUsd: 1.5504, cadPerUsd: 1.3973, nzdPerUsd: 1.7176 },
];

export const PRICE_BASE_YEAR = 2024;
const BY_YEAR = new Map(PRICE_INDEX.map((row) => [row.year, row]));
const LATEST = PRICE_INDEX[PRICE_INDEX.length - 1] as PriceIndexRow;
const BASE = BY_YEAR.get(PRICE_BASE_YEAR) as PriceIndexRow;

/** Pounds for one unit of the currency, by a row of the table. */
function rate({ usdPerGbp, gbpPerEur, audPerUsd, cadPerUsd, nzdPerUsd }: PriceIndexRow, currency: Currency): number {
  const dollar = 1 / usdPerGbp;
  return { GBP: 1, EUR: gbpPerEur, USD: dollar, AUD: dollar / audPerUsd, CAD: dollar / cadPerUsd, NZD: dollar / nzdPerUsd }[currency];
}

/**
 * An amount of `currency` paid in `year`, in pounds of 2024. Years after the table's last count as its last. Null for
 * years before the table, where no rate is known to us.
 */
export function poundsOf2024(amount: number, currency: Currency, year: number): number | null {
  const row = year > LATEST.year ? LATEST : BY_YEAR.get(year);
  return row ? amount * rate(row, currency) * (BASE.cpi / row.cpi) : null;
}

/** The year whose mean rates the newest exchange goes by. */
export const LATEST_RATE_YEAR = LATEST.year;

/** An amount of one currency in another, at the mean rate of the table's last year. */
export const exchanged = (amount: number, from: Currency, to: Currency): number => (amount * rate(LATEST, from)) / rate(LATEST, to);

/** Pounds of 2024 in units of `currency` of the table's last year. */
export function fromPoundsOf2024(pounds: number, currency: Currency): number {
  return (pounds * (LATEST.cpi / BASE.cpi)) / rate(LATEST, currency);
}
