import { CM_PER_INCH, INCHES_PER_FOOT } from "../words/measures";

/**
 * Numbers as people write them. A text that is no number gives null, never 0.
 */

/** A length or a count with at most one decimal mark, point or comma: "170", "170,5", "240 cm" gives 240. */
export function parseDecimal(text: string): number | null {
  const bare = text.trim().replace(/\s*(cm|centimetres?|ft|feet|in|inch(es)?|'|"|′|″)\.?$/i, "");
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

/** A length in centimetres: "170", "170,5 cm", "1.7 m", "1 m 70". A bare number is centimetres. */
export function parseCm(text: string): number | null {
  const metres = /^(\d+(?:[.,]\d+)?)\s*m(?:et(?:re|er)s?)?\.?$/i.exec(text.trim());
  if (metres) return Math.round(Number((metres[1] as string).replace(",", ".")) * 1_000) / 10;
  const both = /^(\d+)\s*m\s*(\d{1,2})(?:\s*cm)?$/i.exec(text.trim());
  return both ? Number(both[1]) * 100 + Number(both[2]) : parseDecimal(text);
}

/** Feet and inches written in one: "5 ft 7 in", "5'7", "5′ 7½″"; null where it is not both. */
export function parseFeetAndInches(text: string): { feet: number; inches: number } | null {
  const both = /^(\d+)\s*(?:ft|feet|foot|'|’|′)\.?\s*(\d{1,2})(?:([.,]\d+)|\s*(½))?\s*(?:in|inch(?:es)?|"|”|″|'')?\.?$/i.exec(text.trim());
  return both ? { feet: Number(both[1]), inches: Number(both[2]) + (both[4] ? 0.5 : Number((both[3] ?? "0").replace(",", "."))) } : null;
}

/** Feet and inches in whole centimetres. */
export const cmFromFeet = (feet: number, inches: number): number => Math.round((feet * INCHES_PER_FOOT + inches) * CM_PER_INCH);
