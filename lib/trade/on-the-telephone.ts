import type { Source } from "./fibres";
import type { QuestionId } from "./questions";

/** What is asked on the telephone, in which order, and what is said before it. */
export interface TelephoneOrder extends Source {
  /** Asked before anything about the rug. */
  readonly first: readonly string[];
  /** Said to oneself. */
  readonly never: string;
  readonly always: string;
  readonly happened: readonly QuestionId[];
  readonly rug: readonly QuestionId[];
  readonly matters: readonly QuestionId[];
  /** Asked where the caller has patience for it. */
  readonly ifThereIsTime: readonly QuestionId[];
}

export const ON_THE_TELEPHONE: TelephoneOrder = {
  how: "common practice",
  source: "Common practice, no published source",
  first: [
    "Is anybody hurt, or has anybody swallowed something?",
    "Are children or pets near it?",
    "Is a plug, a socket, a cable or a heated floor wet?",
    "Is anything wet now?",
  ],
  never: "Never a promise on the telephone.",
  always: "Always ask for one photo of the label and one of the trouble.",
  happened: ["reason", "incidents", "liquid", "since", "treatments", "treatedBy", "changes"],
  rug: ["sellerSaid", "shine", "footprints", "age", "boughtWhere"],
  matters: ["matters"],
  ifThereIsTime: ["touch", "back", "fringe", "fringeKind", "room", "household"],
};
