import { EMERGENCY_NUMBERS } from "../trade/emergency-numbers";
import { exchanged, LATEST_RATE_YEAR } from "../trade/price-index";
import { money } from "../words/measures";
import { PRICE_FIELDS, shownPrice, type PriceField } from "./price-fields";
import { SETTING_NAMES, type WorkshopSettings } from "./settings-schema";

/** `says`: what was brought along, a sentence each; empty where nothing was. */
export interface Brought { settings: WorkshopSettings; says: string[] }

const CENTS = 100;
/** "cleaning per square metre US$52.74", in the unit in which the workshop tells areas. */
const toldPrice = (f: PriceField, { prices, currency, locale }: WorkshopSettings): string => `${SETTING_NAMES[f.field].toLowerCase().replace(",", "")} ${money(shownPrice(prices[f.of], f), currency, locale, 2)}`;

/** A price means an amount of money: where the currency changes and a figure stays as it stood, it is exchanged and not called by the new name. */
function withPrices(before: WorkshopSettings, after: WorkshopSettings): Brought {
  if (before.currency === after.currency) return { settings: after, says: [] };
  const left = PRICE_FIELDS[after.areaUnit].filter(({ of }) => after.prices[of] === before.prices[of] && before.prices[of] > 0);
  if (left.length === 0) return { settings: after, says: [] };
  const prices = { ...after.prices };
  for (const { of: p } of left) prices[p] = Math.round(exchanged(before.prices[p], before.currency, after.currency) * CENTS) / CENTS;
  const settings = { ...after, prices };
  const list = left.map((f) => toldPrice(f, settings)).join(", ");
  return { settings, says: [`Prices that you left as they stood were brought from ${before.currency} to ${after.currency} at the mean rate of ${LATEST_RATE_YEAR}: ${list}. Please look at them again.`] };
}

/** The usual number of one place is not called at another. A number of the workshop's own stays. */
function withEmergencyNumber(before: WorkshopSettings, after: WorkshopSettings): Brought {
  const [was, usual] = [EMERGENCY_NUMBERS[before.jurisdiction].number, EMERGENCY_NUMBERS[after.jurisdiction].number];
  const isLeft = after.emergencyNumber === before.emergencyNumber && before.emergencyNumber === was;
  if (!isLeft || was === usual) return { settings: after, says: [] };
  return { settings: { ...after, emergencyNumber: usual }, says: [`Where somebody is hurt, clients now read: call ${usual}.`] };
}

/** The settings as they are kept: what hangs on the currency or the place, and was left as it stood when these changed, is brought along. */
export function broughtAlong(before: WorkshopSettings, after: WorkshopSettings): Brought {
  const priced = withPrices(before, after);
  const { settings, says } = withEmergencyNumber(before, priced.settings);
  return { settings, says: [...priced.says, ...says] };
}
