import { CM_PER_INCH, INCHES_PER_FOOT } from "./measures";

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
