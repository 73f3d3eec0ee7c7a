import { M2_PER_SQFT, M_PER_FOOT, type AreaUnit } from "../words/measures";
import { SETTING_NAMES, type WorkshopSettings } from "./settings-schema";

export type PriceId = keyof WorkshopSettings["prices"];
type FieldName = "cleanPerM2" | "cleanMinimum" | "bindingPerM" | "cleanPerSqft" | "bindingPerFt";
/** A price as it is typed and read in one unit. Its field is named by the unit, so that no figure is ever read in another. */
export interface PriceField {
  readonly of: PriceId;
  readonly field: FieldName;
  /** How many of the unit in which it is kept are one of the unit in which it is shown. */
  readonly per: number;
}

const MINIMUM: PriceField = { of: "cleanMinimum", field: "cleanMinimum", per: 1 };
/** The prices of the settings, by the unit in which the workshop tells areas. */
export const PRICE_FIELDS: Readonly<Record<AreaUnit, readonly PriceField[]>> = {
  m2: [{ of: "cleanPerM2", field: "cleanPerM2", per: 1 }, MINIMUM, { of: "bindingPerM", field: "bindingPerM", per: 1 }],
  sqft: [{ of: "cleanPerM2", field: "cleanPerSqft", per: M2_PER_SQFT }, MINIMUM, { of: "bindingPerM", field: "bindingPerFt", per: M_PER_FOOT }],
};
/** Every field that a price is typed in, each once. */
export const ALL_PRICE_FIELDS: readonly PriceField[] = [...PRICE_FIELDS.m2, ...PRICE_FIELDS.sqft.filter((f) => f !== MINIMUM)];

/** More than any workshop asks, in any of the currencies: above it a nought slipped in. Per square metre, per rug, per metre of edge; elicited. */
export const MOST_PRICE: Readonly<Record<PriceId, number>> = { cleanPerM2: 2_000, cleanMinimum: 10_000, bindingPerM: 1_000 };
/** The most that can be typed in a field, whole. */
export const mostIn = ({ of, per }: PriceField): number => Math.floor(MOST_PRICE[of] * per);
export const priceTooHigh = (f: PriceField): string => `${SETTING_NAMES[f.field]}: at most ${mostIn(f).toLocaleString("en")}. Has a nought slipped in?`;

/** What letters tell by a price that is never 0. A least charge of 0 is none. */
export const NEVER_FREE: Readonly<Partial<Record<PriceId, string>>> = { cleanPerM2: "cleaning costs", bindingPerM: "new edges cost" };
export const priceOfNothing = ({ field }: PriceField, tells: string): string => `${SETTING_NAMES[field]}: more than 0, since letters tell by it what ${tells}. It cannot stay empty.`;

/** A kept price in the unit of a field, to the hundredth. */
export const shownPrice = (kept: number, { per }: PriceField): number => Math.round(kept * per * 100) / 100;
/** What is kept of a price typed in a field. One that was left as it was shown stays to the last digit. */
export const keptPrice = (typed: number, before: number, f: PriceField): number => (typed === shownPrice(before, f) ? before : typed / f.per);
