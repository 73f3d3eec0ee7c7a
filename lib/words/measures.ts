import { figuresOf, type Locale } from "./locales";

/** What areas are told in; lengths go with it: centimetres and metres, or feet and inches. */
export const AREA_UNITS = ["m2", "sqft"] as const;
export type AreaUnit = (typeof AREA_UNITS)[number];

/** How figures are written to a client: by the workshop's locale, in its unit of area. */
export interface Figures { readonly locale: Locale; readonly areaUnit: AreaUnit }

/** Exact by definition: one foot is 0.3048 m, an inch a twelfth of it (International yard and pound agreement, 1959). */
export const M_PER_FOOT = 0.3048;
export const CM_PER_INCH = 2.54;
export const INCHES_PER_FOOT = 12;
/** Square metres of one square foot: 0.09290304, exact. */
export const M2_PER_SQFT = M_PER_FOOT ** 2;

const formats = new Map<string, Intl.NumberFormat>();
function numberFormat(locale: Locale, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale}/${JSON.stringify(options)}`;
  const format = formats.get(key) ?? new Intl.NumberFormat(figuresOf(locale), options);
  formats.set(key, format);
  return format;
}

/** A number with at most so many decimals, by locale: "1,234.5". */
export const number = (value: number, locale: Locale, decimals = 0): string => numberFormat(locale, { maximumFractionDigits: decimals }).format(value);

/** A number with exactly so many decimals, by locale: "5.0". */
export const decimal = (value: number, locale: Locale, decimals: number): string => numberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals }).format(value);

/** An amount: "£4,200", "€45.50". `currency` ISO 4217; whole amounts unless `decimals` says otherwise. */
export const money = (amount: number, currency: string, locale: Locale, decimals = 0): string =>
  numberFormat(locale, { style: "currency", currency, minimumFractionDigits: decimals, maximumFractionDigits: decimals }).format(amount);

/** An estimate must not look like a price list. Common practice, no published source. */
const ESTIMATE_FIGURES = 2;
/** An amount that nobody has quoted yet, rounded to two significant figures: "£120" for 123.40. `currency` ISO 4217. */
export const estimate = (amount: number, currency: string, locale: Locale): string => money(amount === 0 ? 0 : Number(amount.toPrecision(ESTIMATE_FIGURES)), currency, locale);

/** Steps of a decade that people round prices to, and what a step is of its amount at most. *elicited* */
const ROUGH_STEPS = [1, 2.5, 5] as const;
const ROUGH_SHARE = 0.1;
/** The least step of a rough amount, in whole units of the currency. *elicited* */
const LEAST_STEP = 5;
function roughStep(amount: number): number {
  const decade = 10 ** Math.floor(Math.log10(Math.max(amount, 1) * ROUGH_SHARE));
  return Math.max(LEAST_STEP, ...ROUGH_STEPS.map((step) => step * decade).filter((step) => step <= amount * ROUGH_SHARE));
}
/**
 * One end of an amount known only roughly, rounded outward so that the range never claims more than was worked out: the
 * lower end down, the upper one up, in steps of 5, 10, 25, 50, 100 … that are a tenth of it at most: "£90" and "£190" for 93 to 182.
 * `currency` ISO 4217; from 0.
 */
export function roughly(amount: number, end: "low" | "high", currency: string, locale: Locale): string {
  const step = roughStep(amount);
  return money((end === "low" ? Math.floor(amount / step) : Math.ceil(amount / step)) * step, currency, locale);
}

const unit = (value: number, name: "centimeter" | "meter" | "foot" | "inch", locale: Locale, decimals = 0) =>
  numberFormat(locale, { style: "unit", unit: name, unitDisplay: "short", maximumFractionDigits: decimals }).format(value);

/** Whole feet and whole inches, to the nearest inch: 12 inches never stand beside a foot. */
export function feetAndInches(cm: number): { feet: number; inches: number } {
  const all = Math.round(cm / CM_PER_INCH);
  return { feet: Math.floor(all / INCHES_PER_FOOT), inches: all % INCHES_PER_FOOT };
}

/** A length given in centimetres: "170 cm", or "5 ft 7 in". */
export function length(cm: number, { locale, areaUnit }: Figures): string {
  if (areaUnit === "m2") return unit(cm, "centimeter", locale, 1);
  const { feet, inches } = feetAndInches(cm);
  const parts = [feet > 0 && unit(feet, "foot", locale), (inches > 0 || feet === 0) && unit(inches, "inch", locale)];
  return parts.filter(Boolean).join(" ");
}

/** A rug's two sides: "170 × 240 cm", or "5 ft 7 in × 7 ft 10 in". Centimetres in. */
export function size(widthCm: number, lengthCm: number, figures: Figures): string {
  if (figures.areaUnit === "sqft") return `${length(widthCm, figures)} × ${length(lengthCm, figures)}`;
  return `${number(widthCm, figures.locale, 1)} × ${length(lengthCm, figures)}`;
}

/** A run of binding or edge, given in metres: "6.4 m", or "21 ft". To a tenth of a metre, or a foot. */
export const run = (m: number, { locale, areaUnit }: Figures): string =>
  areaUnit === "m2" ? numberFormat(locale, { style: "unit", unit: "meter", unitDisplay: "short", minimumFractionDigits: 1, maximumFractionDigits: 1 }).format(m) : unit(m / M_PER_FOOT, "foot", locale);

/** How a unit of area is written (CLDR, short form; `Intl` has no units of area), and how many decimals tell enough. */
const AREAS: Readonly<Record<AreaUnit, { m2: number; sign: string; decimals: number }>> = {
  m2: { m2: 1, sign: "m²", decimals: 2 },
  sqft: { m2: M2_PER_SQFT, sign: "sq ft", decimals: 1 },
};

/** An area given in square metres: "9.75 m²", or "104.9 sq ft". For reading: prices are worked out from square metres. */
export function area(m2: number, { locale, areaUnit }: Figures): string {
  const { m2: one, sign, decimals } = AREAS[areaUnit];
  return `${number(m2 / one, locale, decimals)} ${sign}`;
}

const CM2_PER_SQUARE_INCH = CM_PER_INCH ** 2;
/** What is outlined by hand is known to a few hundredths at best. *elicited* */
const AREA_FIGURES = 3;
/** Significant figures of a standard uncertainty (JCGM 100:2008, 7.2.6, from memory: at most two). */
export const DOUBT_FIGURES = 2;
/** A small area given in square centimetres, whole, to so many significant figures: "420 cm²", or "65 sq in"; "2,660 cm²" for 2,663. */
export function smallArea(cm2: number, { locale, areaUnit }: Figures, figures = AREA_FIGURES): string {
  const [amount, sign] = areaUnit === "m2" ? [cm2, "cm²"] : [cm2 / CM2_PER_SQUARE_INCH, "sq in"];
  return `${number(Number(amount.toPrecision(figures)), locale)} ${sign}`;
}

/** From this many units on an amount is told without its hundredths. */
const WHOLE_FROM = 100;
/** What a square metre cost as it is told: "£192 a square metre", or "£17.84 a square foot". Prices are worked out from the rate itself. */
export function ratePerArea(perM2: number, currency: string, { locale, areaUnit }: Figures): string {
  const amount = perM2 * AREAS[areaUnit].m2;
  return `${money(amount, currency, locale, amount < WHOLE_FROM ? 2 : 0)} a ${areaUnit === "m2" ? "square metre" : "square foot"}`;
}

/** A rate for a metre of binding as it is told: "£35.00 a metre", or "£10.67 a foot". */
export const ratePerLength = (perM: number, currency: string, { locale, areaUnit }: Figures): string =>
  (areaUnit === "m2" ? `${money(perM, currency, locale, 2)} a metre` : `${money(perM * M_PER_FOOT, currency, locale, 2)} a foot`);

/** A day at length, in the workshop's time zone: "28 November 2026", "November 28, 2026". */
export const longDate = (at: Date, { locale, timeZone }: { locale: Locale; timeZone: string }): string =>
  new Intl.DateTimeFormat(figuresOf(locale), { timeZone, day: "numeric", month: "long", year: "numeric" }).format(at);

/** The same with the hour: "28 November 2026 at 17:40", "November 28, 2026 at 5:40 PM". */
export const longDateAndHour = (at: Date, { locale, timeZone }: { locale: Locale; timeZone: string }): string =>
  new Intl.DateTimeFormat(figuresOf(locale), { timeZone, dateStyle: "long", timeStyle: "short" }).format(at);

/** The day of the week in the workshop's time zone: "Monday". */
export const weekday = (at: Date, { locale, timeZone }: { locale: Locale; timeZone: string }): string =>
  new Intl.DateTimeFormat(figuresOf(locale), { timeZone, weekday: "long" }).format(at);
