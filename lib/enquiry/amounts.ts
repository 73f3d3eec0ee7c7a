import { CM_PER_INCH, INCHES_PER_FOOT } from "../words/measures";

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

/** Feet and inches in whole centimetres. */
export const cmFromFeet = (feet: number, inches: number): number => Math.round((feet * INCHES_PER_FOOT + inches) * CM_PER_INCH);

/** A unit that a number without one is taken to be in. */
export type LengthUnit = "cm" | "ft" | "in";
const toMillimetre = (cm: number) => Math.round(cm * 10) / 10;
const [METRES, FEET, INCHES] = ["m|mtrs?|met(?:re|er)s?", "ft|feet|foot|['’′]", "ins?|inch(?:es)?|[\"”″]|''|’’|′′"];
/** Each unit, as people write it, and what it makes of a figure. */
const UNITS: readonly { reads: RegExp; is: LengthUnit | null; cm: (figure: number) => number }[] = [
  { reads: /^(?:cms?|centimet(?:re|er)s?)$/i, is: "cm", cm: toMillimetre },
  { reads: /^(?:mm|millimet(?:re|er)s?)$/i, is: null, cm: (mm) => toMillimetre(mm / 10) },
  { reads: new RegExp(`^(?:${METRES})$`, "i"), is: null, cm: (m) => toMillimetre(m * 100) },
  { reads: new RegExp(`^(?:${FEET})$`, "i"), is: "ft", cm: (feet) => cmFromFeet(feet, 0) },
  { reads: new RegExp(`^(?:${INCHES})$`, "i"), is: "in", cm: (inches) => cmFromFeet(0, inches) },
];

/** A figure that may end in a half or quarters; a written fraction stands apart from what it follows. */
const FIGURE = String.raw`(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:\s*[½¼¾]|\s+(?:1/2|1/4|3/4))?`;
const FRACTIONS: Readonly<Record<string, number>> = { "½": 0.5, "¼": 0.25, "¾": 0.75, "1/2": 0.5, "1/4": 0.25, "3/4": 0.75 };
const [ONE_UNIT, FEET_AND_INCHES, METRES_AND_CM] = [
  new RegExp(`^(${FIGURE})\\s*(\\D*?)\\.?$`, "i"),
  new RegExp(`^(\\d+)\\s*(?:${FEET})\\.?\\s*(?:,|and\\s)?\\s*(${FIGURE})\\s*(?:${INCHES})?\\.?$`, "i"),
  new RegExp(`^(\\d+)\\s*(?:${METRES})\\.?\\s*(?:(\\d{2})|(\\d{1,2})\\s*cm\\.?)$`, "i"),
];
function figure(text: string): number {
  const [, whole = "", part] = /^([\d.,]+)\s*(.*)$/.exec(text) ?? [];
  return Number(whole.replace(",", ".")) + (part ? (FRACTIONS[part] ?? Number.NaN) : 0);
}

/**
 * A length as people write it, in centimetres: "170", "1.7 m", "1 m 70", "67 in", "5 ft 7 in", "8’2½"". `bare`: the unit
 * of a number without one. Feet and inches give whole centimetres, other units tenths. Null where it is no number, or its
 * unit is none of mm, cm, m, feet and inches: a unit is never dropped.
 */
export function parseLength(text: string, bare: LengthUnit): number | null {
  const given = text.trim();
  const feet = FEET_AND_INCHES.exec(given);
  if (feet) return cmFromFeet(Number(feet[1]), figure(feet[2] ?? ""));
  const metres = METRES_AND_CM.exec(given);
  if (metres) return Number(metres[1]) * 100 + Number(metres[2] ?? metres[3]);
  const [, amount = "", name = ""] = ONE_UNIT.exec(given) ?? [];
  const unit = UNITS.find(({ reads, is }) => (name === "" ? is === bare : reads.test(name)));
  return amount && unit ? unit.cm(figure(amount)) : null;
}
