import type { ResponseVotes, Vote } from "./bench-responses-rule";
import type { Source } from "./fibres";
import type { SingleFibre } from "./single-fibres";

/** Wet strength over dry strength as published, from the lowest to the highest figure given. */
export interface WetStrength extends Source { readonly fibre: SingleFibre; readonly least: number; readonly most: number }

const THINK: Source = { how: "read", source: "The Textile Think Tank, Important Properties of Viscose Rayon Fibers: may fall by as much as 70 %" };
const LEARN: Source = { how: "read", source: "mytextilenotes.blogspot.com, Learning about Viscose, Modal and Tencel (2012)" };
const RAJIV: Source = { how: "read", source: "rajiv.blog (2018): loses 50 to 70 %" };
const ROPE: Source = { how: "read", source: "lionrope.com, rope breaking strength (its figure for viscose contradicts all others and is kept)" };
const TEXTBOOKS: Source = { how: "memory", source: "textbook ranges of wet over dry strength (Morton and Hearle, Kadolph)" };
const TRADE: Source = { how: "common practice", source: "viscose rugs lose at least half" };

export const WET_STRENGTHS: readonly WetStrength[] = [
  { fibre: "viscose", least: 0.3, most: 0.5, ...THINK }, { fibre: "viscose", least: 0.5, most: 0.5, ...LEARN }, { fibre: "viscose", least: 0.3, most: 0.5, ...RAJIV },
  { fibre: "viscose", least: 0.85, most: 1, ...ROPE }, { fibre: "viscose", least: 0.45, most: 0.6, ...TEXTBOOKS }, { fibre: "viscose", least: 0.3, most: 0.5, ...TRADE },
  { fibre: "lyocell", least: 0.55, most: 0.75, ...TEXTBOOKS }, { fibre: "lyocell", least: 0.8, most: 0.9, ...TEXTBOOKS },
  { fibre: "silk", least: 0.75, most: 0.95, ...TEXTBOOKS }, { fibre: "wool", least: 0.7, most: 0.9, ...TEXTBOOKS },
  { fibre: "cotton", least: 1.14, most: 1.14, ...LEARN }, { fibre: "cotton", least: 1, most: 1.2, ...TEXTBOOKS },
  { fibre: "bast", least: 1.1, most: 1.2, ...TEXTBOOKS }, { fibre: "hard-fibre", least: 1, most: 1, ...TEXTBOOKS },
  { fibre: "acetate", least: 0.55, most: 0.7, ...TEXTBOOKS },
  { fibre: "polyamide", least: 0.85, most: 0.9, ...ROPE }, { fibre: "polyamide", least: 0.8, most: 0.9, ...TEXTBOOKS },
  { fibre: "polyester", least: 1, most: 1, ...ROPE }, { fibre: "polyester", least: 1, most: 1, ...TEXTBOOKS },
  { fibre: "polypropylene", least: 1, most: 1, ...TEXTBOOKS }, { fibre: "acrylic", least: 0.8, most: 0.95, ...TEXTBOOKS },
];

/** The answers and the ratios of wet to dry strength they stand for. Bands elicited. */
export const WET_BANDS = [
  { answer: "much-weaker", from: 0, to: 0.67 }, { answer: "little-weaker", from: 0.67, to: 0.95 }, { answer: "as-strong", from: 0.95, to: 9 },
] as const;

/** The share of a published range that lies in each band; a single figure lies in one. */
export function bandShares({ least, most }: Pick<WetStrength, "least" | "most">): Record<string, number> {
  const inside = (from: number, to: number) => (most > least ? Math.max(0, Math.min(most, to) - Math.max(least, from)) / (most - least) : Number(least >= from && least < to));
  return Object.fromEntries(WET_BANDS.map(({ answer, from, to }) => [answer, inside(from, to)]));
}

/** By hand, without a meter: one pull in five is misjudged, mostly by a band. Elicited. */
export const WET_STRENGTH: ResponseVotes = {
  test: "wet-strength", reading: "wet", answers: WET_BANDS.map((b) => b.answer), kin: { "mercerised-cotton": "cotton" }, error: 0.2, strays: [0.25, 0.5, 0.25], mixed: "either",
  votes: WET_STRENGTHS.map((s): Vote => ({ how: s.how, source: s.source, fibres: [s.fibre], says: bandShares(s) })),
  source: { how: "elicited", source: "Misjudged pulls by hand: a judgement of this project" },
};
