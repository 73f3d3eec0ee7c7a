import type { ChangeRow } from "./damage";

/**
 * What tests of a place of the rug show of its trouble, beside the fibre tests: how a reading becomes a sign, and how
 * likely each sign is where a mechanism holds (`by`) and where nothing that explains it does (`none`). A sign that the
 * test would have shown and did not counts in full.
 */
export type SignId = "alkaline" | "acid" | "glows-yellow" | "glows-blue" | "dye-moved" | "still-wet";
export const SIGNS: Readonly<Record<SignId, ChangeRow>> = {
  alkaline: { none: 0.05, by: { "urine-old": 0.75, "browning-cleaning": 0.25, bleaching: 0.3, "pile-distortion": 0.1 }, how: "elicited",
    source: "Elicited for this project: urine hydrolyses within a few days (Udert et al., Water Research 37 (2003) 2571–2582) and ends near pH 9 (from memory); household cleaners and hypochlorite leave alkali" },
  acid: { none: 0.08, by: { "food-fresh": 0.35, "food-old": 0.3, "urine-fresh": 0.1 }, how: "elicited", source: "Elicited for this project: wine, juice, coffee and what is sick are acid; fresh urine hardly (pH 6 to 6.5 usual)" },
  "glows-yellow": { none: 0.05, by: { "urine-old": 0.75, "urine-fresh": 0.5, "food-old": 0.15, "food-fresh": 0.1, "browning-cleaning": 0.08 }, how: "elicited",
    source: "Elicited for this project: dried urine is looked for with a lamp; fats, milk and some drinks glow as well" },
  "glows-blue": { none: 0.1, by: { "browning-cleaning": 0.35, bleaching: 0.3, "pile-distortion": 0.15, "food-old": 0.05 }, how: "elicited",
    source: "Elicited for this project: optical brighteners of household cleaners glow blue-white" },
  "dye-moved": { none: 0.25, by: { "dye-bleed": 0.9 }, how: "elicited", source: "Elicited for this project: a dye that ran moves again; many that have not yet run move too (their frequency is not published)" },
  "still-wet": { none: 0.05, by: { "browning-cleaning": 0.2, "browning-use": 0.25, "water-mark": 0.25, mould: 0.3, "urine-fresh": 0.5, "food-fresh": 0.3 }, how: "elicited",
    source: "Elicited for this project: slow drying is what browns and moulds (Hutchins, JAIC 22 (1983) 57–61)" },
};
export const SIGN_IDS = Object.keys(SIGNS) as readonly SignId[];

/**
 * Where readings become signs. pH: a place counts as alkaline or acid from these values on, and only where it differs from
 * the untouched place, if that was read. Moisture in per cent of one meter: wetter than the untouched place by this
 * much, or, where that was not read, this much by itself.
 */
export const SIGN_LIMITS = {
  alkalineFrom: 8, acidUpTo: 4.5, differsBy: 1, wetterBy: 5, wetFrom: 20,
  how: "elicited", source: "Elicited for this project: fresh urine is pH 6 to 6.5, old about 9 (from memory); wool lies between 5 and 7; textile regain stays under 20 %",
} as const;
