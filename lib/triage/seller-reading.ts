import { CLASS_OF_FINE } from "../trade/label-fibres";
import { readLabel } from "./read-label";

/**
 * What a seller's own words amount to, as an answer of the question `sellerSaid`; null where no fibre is in them. "Silk
 * touch" and "art silk" are words of their own and never silk. Reads the pile where a foundation is named as well.
 */
export function readSellerWords(words: string): string | null {
  const reading = readLabel(words);
  const shown = reading.components.find((c) => c.part === "pile") ?? reading.components[0];
  const named = new Set((shown?.fibres ?? []).map((f) => CLASS_OF_FINE[f.fibre]));
  if (named.has("art-silk") || reading.suggests.includes("art-silk")) return "art-silk";
  if (named.has("wool") && named.has("silk")) return "wool-and-silk";
  if (named.has("viscose")) return "viscose";
  if (reading.suggests.includes("silk-look")) return "silk-look";
  for (const fibre of ["silk", "wool", "cotton"] as const) if (named.has(fibre)) return fibre;
  return named.size > 0 ? "other" : null;
}
