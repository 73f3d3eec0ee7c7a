import type { Source } from "../../trade/fibres";
import type { Tone } from "../../trade/tones";
import type { MechanismId } from "../../triage/assessment";
import type { Condition } from "../condition";

/** Where a paragraph stands. Within a place the rows are tried in order; the first `take` whose condition holds are used. */
export interface Place {
  readonly id: PlaceId;
  /** What stands there, for the page of paragraphs. */
  readonly name: string;
  /** `letter`: once; read against the first rug. `rug`: once a rug. */
  readonly of: "letter" | "rug";
  readonly take: number;
  /** Stands in the same block as what goes before it. */
  readonly joins: boolean;
  /** What it joins; after any other it begins a block. Absent: whatever stands before it. */
  readonly joinsOnly?: readonly PlaceId[];
  /** The rows are tried by the probability of the mechanism they speak of, not in their order. */
  readonly likeliestFirst?: true;
  /** Can wait where a letter grows too long: the rows from `from` on (counted from 0), those of the lowest rank first. `least`: where this holds, the first of a list of what we ask for stands all the same. */
  readonly spare?: { readonly rank: number; readonly from: number; readonly least?: Condition };
  /** It stands before another place of the same rug where this holds: the client asked just that. */
  readonly sooner?: { readonly before: PlaceId; readonly when: Condition };
  /** It stands only in a letter that follows one of ours. */
  readonly follows?: true;
  /** It leads what is said once of several rugs, and stands only where there is something such. */
  readonly leads?: true;
  /** Of each of several rugs it stands before the first is spoken of at length, all in one block. */
  readonly ahead?: true;
  /** The place stays empty unless this holds, whatever its paragraphs say. */
  readonly when?: Condition;
}
export type PlaceId =
  | "greeting" | "first-aid" | "own-aid" | "first-aid-list" | "thanks" | "trade-call" | "since" | "in-short" | "shared-first" | "heading" | "fibre" | "worth" | "cut-down" | "outlook" | "soil" | "evidence" | "paid" | "sold-as" | "safety" | "refer" | "cause" | "haste" | "care" | "back-first" | "dye-test"
  | "refuse" | "worse" | "beyond" | "repair" | "living" | "life" | "special" | "price" | "asks" | "shared" | "wet-unknown" | "next-step" | "claim" | "customer" | "notes" | "takes" | "visit" | "closing" | "signature";

/** What speaks against work on a rug: little comes back, it costs as much as the rug is worth, not enough comes back, few years are left, or what the rug is worth decides and is known only roughly. */
export type Against = "little" | "cost" | "gain" | "years" | "worth";

/**
 * One paragraph of the workshop's letters. Plain data, edited in a form; `version` goes up with every change of its text
 * or condition, and a draft records which version it used. `{slot}` names are listed in slot-words.ts.
 */
export interface ParagraphRow extends Source {
  readonly id: string;
  readonly version: number;
  readonly place: PlaceId;
  readonly when: Condition;
  /** The mechanism that the row, and its {chance}, speaks of. */
  readonly about?: MechanismId;
  /** Where this holds, one such row stands beside likelier ones of its place, and in a long letter too: what the client told is not left unsaid. */
  readonly told?: Condition;
  /** The one thing that it gives as speaking against the work; the desk gives the same. */
  readonly against?: Against;
  readonly text: string;
  /** The same in another tone; where one is missing, `text` stands. */
  readonly tones?: Partial<Record<Exclude<Tone, "plain">, string>>;
}
