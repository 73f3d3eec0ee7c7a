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
];

export interface PriceIndexRow { readonly year: number; readonly cpi: number; readonly usdPerGbp: number; readonly gbpPerEur: number }

export const PRICE_INDEX: readonly PriceIndexRow[] = [
  { year: 2000, cpi: 73.42, usdPerGbp: 1.5158, gbpPerEur: 0.609 },
  { year: 2001, cpi: 74.55, usdPerGbp: 1.44, gbpPerEur: 0.6218 },
  { year: 2002, cpi: 75.68, usdPerGbp: 1.5024, gbpPerEur: 0.6288 },
  { year: 2003, cpi: 76.72, usdPerGbp: 1.6348, gbpPerEur: 0.6921 },
  { year: 2004, cpi: 77.79, usdPerGbp: 1.8326, gbpPerEur: 0.6787 },
  { year: 2005, cpi: 79.41, usdPerGbp: 1.8199, gbpPerEur: 0.6838 },
  { year: 2006, cpi: 81.37, usdPerGbp: 1.8429, gbpPerEur: 0.6817 },
  { year: 2007, cpi: 83.31, usdPerGbp: 2.0017, gbpPerEur: 0.6847 },
  { year: 2008, cpi: 86.24, usdPerGbp: 1.8522, gbpPerEur: 0.7969 },
  { year: 2009, cpi: 87.93, usdPerGbp: 1.5652, gbpPerEur: 0.8908 },
  { year: 2010, cpi: 90.12, usdPerGbp: 1.5466, gbpPerEur: 0.8583 },
  { year: 2011, cpi: 93.6, usdPerGbp: 1.6036, gbpPerEur: 0.8679 },
  { year: 2012, cpi: 96.01, usdPerGbp: 1.5855, gbpPerEur: 0.8113 },
  { year: 2013, cpi: 98.21, usdPerGbp: 1.5648, gbpPerEur: 0.8492 },
  { year: 2014, cpi: 99.63, usdPerGbp: 1.6475, gbpPerEur: 0.8065 },
  { year: 2015, cpi: 100.0, usdPerGbp: 1.5285, gbpPerEur: 0.7263 },
  { year: 2016, cpi: 101.01, usdPerGbp: 1.3549, gbpPerEur: 0.8193 },
  { year: 2017, cpi: 103.59, usdPerGbp: 1.2892, gbpPerEur: 0.876 },
  { year: 2018, cpi: 105.97, usdPerGbp: 1.3357, gbpPerEur: 0.8847 },
  { year: 2019, cpi: 107.81, usdPerGbp: 1.2773, gbpPerEur: 0.8769 },
  { year: 2020, cpi: 108.88, usdPerGbp: 1.2837, gbpPerEur: 0.889 },
  { year: 2021, cpi: 111.62, usdPerGbp: 1.3761, gbpPerEur: 0.8599 },
  { year: 2022, cpi: 120.46, usdPerGbp: 1.2374, gbpPerEur: 0.8524 },
  { year: 2023, cpi: 128.64, usdPerGbp: 1.2439, gbpPerEur: 0.8698 },
  { year: 2024, cpi: 132.85, usdPerGbp: 1.2781, gbpPerEur: 0.8465 },
  { year: 2025, cpi: 138.03, usdPerGbp: 1.3185, gbpPerEur: 0.8567 },
];

export const PRICE_BASE_YEAR = 2024;
const BY_YEAR = new Map(PRICE_INDEX.map((row) => [row.year, row]));
const LATEST = PRICE_INDEX[PRICE_INDEX.length - 1] as PriceIndexRow;
const BASE = BY_YEAR.get(PRICE_BASE_YEAR) as PriceIndexRow;

/** Pounds for one unit of the currency, by a row of the table. */
const rate = (row: PriceIndexRow, currency: Currency): number => ({ GBP: 1, EUR: row.gbpPerEur, USD: 1 / row.usdPerGbp })[currency];

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
