/**
 * What a letter may not say when no more is known than it claims. Data: a pattern catches, the excuses let go. Elicited,
 * and held to tables of sentences in its tests. Patterns meet a clause in lower case, without what stands in quotation
 * marks; `FIBRE`, `RUG`, `NUMBER` and the like stand for lists in `vocabulary.ts`.
 */
export const RULE_IDS = ["certainty", "result", "safety", "number", "harm", "blame", "cover", "verdict", "sureness"] as const;
export type RuleId = (typeof RULE_IDS)[number];

/** What takes the edge off a clause: see `excuses.ts`. */
export type Excuse = "negated" | "denied" | "hedged" | "softened" | "undecided" | "reported" | "ranged" | "ours" | "warned" | "disowned";

export interface Pattern {
  /** A regular expression over one clause, written with the words of vocabulary.ts in capitals. */
  readonly catches: string;
  /** Excuses that hold for this pattern beside the rule's own. */
  readonly also?: readonly Excuse[];
  /** Excuses of the rule that do not hold: the pattern is a negation or a hedge itself. */
  readonly except?: readonly Excuse[];
  /** However careful its words weigh, the sentence is still caught: what it says is short and bare. */
  readonly despiteCare?: true;
  /** It shows that the sentence is sure, not of what: a rule that catches it too tells it better, and else what it speaks of (`naming.ts`). */
  readonly vague?: true;
  /** Where what its rule says of a breach does not fit what it catches. */
  readonly tells?: Telling;
}

/** How a breach is told. */
export interface Telling {
  readonly why: string;
  /** What to do, up to the colon before `instead`. */
  readonly advise: string;
  /** A whole sentence without gaps that can stand where the other stood, and that the check lets pass. */
  readonly instead: string;
}

export interface Rule extends Telling {
  readonly id: RuleId;
  /** In the middle of a sentence: "this sentence …". */
  readonly what: string;
  readonly excuses: readonly Excuse[];
  readonly patterns: readonly Pattern[];
}

export const p = (catches: string, rest: Omit<Pattern, "catches"> = {}): Pattern => ({ catches, ...rest });
/** The pattern denies something itself, so only a denial before it excuses. */
export const own = (catches: string, rest: Omit<Pattern, "catches" | "except"> = {}): Pattern => p(catches, { ...rest, except: ["negated"] });

