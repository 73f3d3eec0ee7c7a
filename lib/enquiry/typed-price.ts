import { CURRENCIES, type Currency } from "../trade/questions";
import { parseAmount } from "./amounts";

/** What was typed for a price: the amount, and the currency where the words name one. `isDollars`: dollars, without saying whose. */
export interface TypedPrice { amount: number; currency: Currency | null; isDollars: boolean }

/** Words by which people say that a figure is rough, before it and behind it. */
export const ROUGHLY = /^(?:(?:about|approx(?:imately)?|around|ca?|circa|roughly|some|perhaps|maybe|i think|it was)(?![\p{L}$])\.?\s*|[~≈]\s*)+/iu;
const OR_SO = /[\s,]*(?:or so|or thereabouts|approx(?:imately)?\.?|roughly|about|i think|\?)$/iu;
/** Signs and names of currencies, each standing before or behind the amount. A sign alone that several share names none. */
const MONEY: readonly { reads: string; is: Currency | null }[] = [
  ...CURRENCIES.map((code) => ({ reads: code, is: code })),
  { reads: "(?:au|a)\\$", is: "AUD" }, { reads: "(?:ca|c)\\$", is: "CAD" }, { reads: "nz\\$", is: "NZD" }, { reads: "us\\$", is: "USD" },
  { reads: "£|pounds?(?: sterling)?|quid", is: "GBP" }, { reads: "€|euros?", is: "EUR" }, { reads: "\\$|dollars?", is: null },
];
const THOUSANDS = /^(.*\d)\s*(?:k|thousand)$/iu;

/** A text without what `reads` finds at its beginning or else at its end; null where it is at neither. */
function without(text: string, reads: string): string | null {
  const at = new RegExp(`^(?:${reads})(?![\\p{L}])\\s*|\\s*(?<![\\p{L}])(?:${reads})$`, "iu");
  return at.test(text) ? text.replace(at, "").trim() : null;
}

/** The amount in bare figures, thousands among them ("1.2k"); null where anything else stands there. */
function amountOf(text: string): number | null {
  const thousands = THOUSANDS.exec(text);
  const amount = /^[\d.,\s'’]+$/u.test(thousands?.[1] ?? text) ? parseAmount(thousands?.[1] ?? text) : null;
  return amount === null || !thousands ? amount : amount * 1000;
}

/**
 * A price as people write it: "950", "about £1,200", "1.200,00 €", "ca. 1.2k", "US$ 900 or so". Thousands are grouped as
 * `parseAmount` has it, in whatever place. Null where something stands there that is none of this.
 */
export function parsePrice(text: string): TypedPrice | null {
  const bare = text.trim().replace(ROUGHLY, "").replace(OR_SO, "").trim();
  for (const { reads, is } of MONEY) {
    const rest = without(bare, reads);
    const amount = rest === null ? null : amountOf(rest.replace(ROUGHLY, ""));
    if (amount !== null) return { amount, currency: is, isDollars: is === null };
  }
  const amount = amountOf(bare);
  return amount === null ? null : { amount, currency: null, isDollars: false };
}

const DOLLARS: readonly Currency[] = ["USD", "AUD", "CAD", "NZD"];
/** In which currency a price was paid: what was typed goes before what is chosen beside it. Null: dollars, and nobody said whose. */
export function currencyOf({ currency, isDollars }: TypedPrice, chosen: Currency | undefined): Currency | null | undefined {
  if (isDollars) return chosen && DOLLARS.includes(chosen) ? chosen : null;
  return currency ?? chosen;
}
