import type { EvidenceStrength } from "../trade/evidence-caps";

/**
 * The one currency between the rooms. An answer, a word on a label, a measured colour change, a bench test and a
 * laboratory report all become findings; triage reads nothing else.
 */
export type Strength = EvidenceStrength;

/** A value a finding may carry: an answer id, several, a number (unit fixed by `what`), or a small record. */
export type FindingValue = string | number | boolean | readonly string[] | Readonly<Record<string, string | number | boolean | null>>;

/**
 * What a test or a report speaks for. A pile may have two yarns, the field and an accent (a silky outline in a wool field);
 * `whole` is a sample that may hold both.
 */
export interface Sample {
  readonly part: "pile" | "ground" | "fringe";
  readonly yarn: "whole" | "field" | "accent";
}

/** The finding that photos came out too dark, light or blurred to judge by: `value` is their kinds. They say nothing of the fibre. */
export const SPOILT_PHOTO = "photo-spoilt";

/** The finding that a person of the workshop decided on the rug's plan not to cut it down; its plan keeps the decision by this name too. It is weighed for nothing. */
export const KEPT_WHOLE = "kept-whole";

/** Whether a rug was a gift or inherited: its owner bought it from nobody, and knows a seller's words only through others. */
export const isGift = (findings: readonly Pick<Finding, "what" | "value">[]): boolean => findings.some(({ what, value }) => what === "boughtWhere" && value === "gift");

export interface Finding {
  /** The kind of evidence: a row of the evidence table, e.g. `shine`, `label`, `price-per-m2`, `liquid`. */
  readonly what: string;
  readonly value: FindingValue;
  readonly strength: Strength;
  /** Who or what it came from: `client`, `staff`, `photo:<id>`, `bench:<id>`, `laboratory:<name>`. */
  readonly from: string;
  /** Set by tests and reports; absent: the pile as a whole. */
  readonly of?: Sample;
}
