import type { Source } from "./fibres";

/** A word for a chance and the band of per cent it covers, both ends included. */
export interface ChanceWord { readonly words: string; readonly from: number; readonly to: number }

export const CHANCE_WORDS_SOURCE: Source = {
  how: "memory",
  source: "Mastrandrea et al. 2010, IPCC guidance note on consistent treatment of uncertainties, table 1",
};

/** In per cent. Bands overlap on purpose, as in the guidance note. */
export const CHANCE_WORDS: readonly ChanceWord[] = [
  { words: "virtually certain", from: 99, to: 100 },
  { words: "very likely", from: 90, to: 100 },
  { words: "likely", from: 66, to: 100 },
  { words: "about as likely as not", from: 33, to: 66 },
  { words: "unlikely", from: 0, to: 33 },
  { words: "very unlikely", from: 0, to: 10 },
];
