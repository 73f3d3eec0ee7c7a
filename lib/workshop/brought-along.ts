import { EMERGENCY_NUMBERS } from "../trade/emergency-numbers";
import { exchanged, LATEST_RATE_YEAR } from "../trade/price-index";
import { money } from "../words/measures";
import type { WorkshopSettings } from "./settings-schema";

/** `says`: what was brought along, a sentence each; empty where nothing was. */
export interface Brought { settings: WorkshopSettings; says: string[] }

const CENTS = 100;
const PRICE_NAMES = { cleanPerM2: "cleaning per square metre", cleanMinimum: "cleaning at least", bindingPerM: "binding per metre" } as const satisfies Record<keyof WorkshopSettings["prices"], string>;

/** A price means an amount of money: where the currency changes and a figure stays as it stood, it is exchanged and not called by the new name. */
function withPrices(before: WorkshopSettings, after: WorkshopSettings): Brought {
  if (before.currency === after.currency) return { settings: after, says: [] };
  const left = (Object.keys(PRICE_NAMES) as (keyof typeof PRICE_NAMES)[]).filter((p) => after.prices[p] === before.prices[p] && before.prices[p] > 0);
  if (left.length === 0) return { settings: after, says: [] };
  const prices = { ...after.prices };
  for (const p of left) prices[p] = Math.round(exchanged(before.prices[p], before.currency, after.currency) * CENTS) / CENTS;
  const list = left.map((p) => `${PRICE_NAMES[p]} ${money(prices[p], after.currency, after.locale, 2)}`).join(", ");
  return { settings: { ...after, prices }, says: [`Prices that you left as they stood were brought from ${before.currency} to ${after.currency} at the mean rate of ${LATEST_RATE_YEAR}: ${list}. Please look at them again.`] };
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
