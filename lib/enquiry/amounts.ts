/**
 * Numbers as people write them. A text that is no number gives null, never 0.
 */

/** A count or a measure without a unit, with at most one decimal mark, point or comma: "170", "170,5". */
export function parseDecimal(text: string): number | null {
  const bare = text.trim();
  return /^\d+([.,]\d*)?$|^[.,]\d+$/.test(bare) ? Number(bare.replace(",", ".")) : null;
}

/**
 * An amount of money: "4,200", "4.200", "4 200,50", "£1,200.00", "950". A single mark followed by exactly three
 * digits groups thousands; the last mark otherwise is the decimal one.
 */
export function parseAmount(text: string): number | null {
  const bare = text.trim().replace(/^[^\d\-−]{1,4}\s*|\s*[^\d]{1,4}$/g, "").replace(/[\s'’]/g, "");
  if (/^\d+$/.test(bare)) return Number(bare);
  if (/^\d{1,3}([.,])\d{3}(\1\d{3})*$/.test(bare)) return Number(bare.replace(/[.,]/g, ""));
  const parts = /^(\d+|\d{1,3}(?:\.\d{3})+(?=,)|\d{1,3}(?:,\d{3})+(?=\.))[.,](\d{1,2})$/.exec(bare);
  return parts ? Number(`${(parts[1] ?? "").replace(/[.,]/g, "")}.${parts[2]}`) : null;
}

/** Whether a text says a number below zero, "-5" or "£ −5", which the readers above take for none. */
export const isBelowZero = (text: string): boolean => /^[^\d-−]{0,4}[-−]\s*[\d.,]*\d/.test(text.trim());

/** What a reader makes of a typed number, so that a rule can tell what is wrong with it: −1 for any below zero, NaN for none. */
export const typedNumber = (text: string, parse: (text: string) => number | null): number => parse(text) ?? (isBelowZero(text) ? -1 : Number.NaN);
