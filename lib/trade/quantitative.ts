import type { Source } from "./fibres";
import type { SingleFibre } from "./single-fibres";
import tables from "./quantitative.json";

/** A fibre as a laboratory tells it apart, with what its dry mass is taken to gain in ordinary air. */
export interface AnalysedFibre {
  readonly fibre: string;
  /** In the middle of a sentence. */
  readonly name: string;
  /** Agreed allowance, per cent of clean dry mass. Regulation (EU) No 1007/2011, Annex IX. */
  readonly allowancePercent: number;
  /** Usual loss in pre-treatment, per cent of dry mass; only unbleached cotton has one. Annex VIII, ch. 3, worked example. */
  readonly pretreatmentLossPercent: number;
  /** The class of triage it belongs to. Our own partition, elicited. */
  readonly single: SingleFibre | "other";
}

/**
 * A published method that dissolves some fibres of a mixture and leaves others. Strengths, times and temperatures are in
 * the published text and in the laboratory's instruction, not here.
 */
export interface QuantitativeMethod extends Source {
  /** Its number in Annex VIII, chapter 2. */
  readonly method: number;
  readonly reagent: string;
  readonly dissolves: readonly string[];
  /** The fibres that stay, each with its correction factor d: what the residue is multiplied by for what it lost. */
  readonly residueFactor: Readonly<Record<string, number>>;
  /** 95 % confidence limits of a result, ± percentage points, as the method states them. */
  readonly limitPercent: number;
}

export const QUANTITATIVE_METHODS = tables.methods as unknown as readonly QuantitativeMethod[];
export const ANALYSED_FIBRES = tables.fibres as readonly AnalysedFibre[];
/** Where the allowances are read. */
export const ALLOWANCES_SOURCE = { how: "read", source: "Regulation (EU) No 1007/2011, Annex IX" } as const satisfies Source;

/**
 * The ways of Annex VIII to analyse a mixture. `removes`: which of the fibres (first, second, third) each weighing has
 * dissolved; `oneSpecimen`: the second weighing goes on with the residue of the first.
 */
export const SCHEMES = {
  binary: { name: "Two fibres: the first is dissolved", fibres: 2, removes: [[0]], oneSpecimen: true, how: "memory", source: "Annex VIII, ch. 2, I.8: the formula from memory, its symbols read in GOST ISO 1833-1-2011, 10.2" },
  "ternary-1": { name: "Three fibres, two specimens: the first dissolved from one, the second from the other", fibres: 3, removes: [[0], [1]], oneSpecimen: false, how: "read", source: "Annex VIII, ch. 3, variant 1, by its worked example" },
  "ternary-2": { name: "Three fibres, two specimens: the first dissolved from one, the first and second from the other", fibres: 3, removes: [[0], [0, 1]], oneSpecimen: false, how: "memory", source: "Annex VIII, ch. 3, variant 2, from memory; it is the balance of masses" },
  "ternary-3": { name: "Three fibres, two specimens: the first and second dissolved from one, the second and third from the other", fibres: 3, removes: [[0, 1], [1, 2]], oneSpecimen: false, how: "memory", source: "Annex VIII, ch. 3, variant 3, from memory; it is the balance of masses" },
  "ternary-4": { name: "Three fibres, one specimen: the first dissolved, then the second from what is left", fibres: 3, removes: [[0], [1]], oneSpecimen: true, how: "read", source: "Annex VIII, ch. 3, variant 4, by its worked example" },
} as const satisfies Record<string, Source & { name: string; fibres: 2 | 3; removes: readonly (readonly number[])[]; oneSpecimen: boolean }>;
export type SchemeId = keyof typeof SCHEMES;
