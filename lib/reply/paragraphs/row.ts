import type { Source } from "../../trade/fibres";
import type { MechanismId } from "../../triage/assessment";
import type { Condition } from "../condition";

/** Where a paragraph stands. Within a place the rows are tried in order; the first `take` whose condition holds are used. */
export interface Place {
  readonly id: PlaceId;
  /** `letter`: once; read against the first rug. `rug`: once a rug. */
  readonly of: "letter" | "rug";
  readonly take: number;
  /** Stands in the same block as what goes before it. */
  readonly joins: boolean;
  /** The rows are tried by the probability of the mechanism they speak of, not in their order. */
  readonly likeliestFirst?: true;
}
export type PlaceId =
  | "greeting" | "first-aid" | "trade-call" | "heading" | "fibre" | "outlook" | "evidence" | "sold-as" | "safety" | "cause" | "care"
  | "refuse" | "worse" | "beyond" | "repair" | "living" | "life" | "special" | "price" | "asks" | "next-step" | "claim" | "closing" | "signature";

/**
 * One paragraph of the workshop's letters. Plain data, edited in a form; `version` goes up with every change of its text
 * or condition, and a draft records which version it used. `{slot}` names are listed in slots.ts.
 */
export interface ParagraphRow extends Source {
  readonly id: string;
  readonly version: number;
  readonly place: PlaceId;
  readonly when: Condition;
  /** The mechanism that the row, and its {chance}, speaks of. */
  readonly about?: MechanismId;
  readonly text: string;
}
