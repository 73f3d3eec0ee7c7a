import { isTold, type Told } from "./changes";
import { partedBy, type ComposedDraft } from "./draft";
import type { Came } from "./facts";
import { mostWords, shortened } from "./length";
import { ANSWER_HERE } from "./open-places";
import type { PlaceId } from "./paragraphs/row";
import { blocks, piecesOf, type DraftInput, type Piece } from "./pieces";

/** What stands in every letter where there is something to say. First aid is never left to an earlier letter. */
const ALWAYS: readonly PlaceId[] = ["greeting", "first-aid", "thanks", "signature"];
/** The answer's first sentences, with what limits them. Source: elicited. */
const ANSWER: readonly PlaceId[] = ["fibre", "outlook", "evidence", "care", "refuse", "worse"];
/** A change in one of these is a change of the answer: its first sentences stand again, so that no judgement stands without its limits. Source: elicited. */
const JUDGES: readonly PlaceId[] = [...ANSWER, "paid", "sold-as", "safety", "cause", "beyond", "repair", "living", "life"];
/** Said in one breath: where one changed, both stand. */
const BREATH: readonly PlaceId[] = ["beyond", "repair"];
/** Beside these, a change of what is said of a rug is a change of the answer. */
const NO_ANSWER: readonly PlaceId[] = ["heading", "asks"];
/** Before these stands the answer that a person writes. */
const ENDS: readonly PlaceId[] = ["next-step", "visit", "closing", "signature"];

/** Which pieces stand in a letter to somebody who was told all the others. */
function standingOf(pieces: readonly Piece[], isNew: (piece: Piece) => boolean): Piece[] {
  const changed = pieces.filter((p) => isNew(p) && !ALWAYS.includes(p.place.id) && !p.place.follows);
  const isChanged = (rug: number | null, places: readonly PlaceId[]) => changed.some((p) => p.rug === rug && places.includes(p.place.id));
  const stands = (p: Piece): boolean =>
    ALWAYS.includes(p.place.id) || changed.includes(p)
    || (ANSWER.includes(p.place.id) && isChanged(p.rug, JUDGES)) || (BREATH.includes(p.place.id) && isChanged(p.rug, BREATH));
  const isOfRug = (p: Piece) => p.place.of === "rug" && p.place.id !== "heading";
  return pieces.filter((p) => {
    if (p.place.id === "since") return changed.some((c) => isOfRug(c) && !NO_ANSWER.includes(c.place.id));
    if (p.place.id === "heading") return pieces.some((o) => o.rug === p.rug && isOfRug(o) && stands(o));
    return stands(p);
  });
}

/** A piece joins the one before it only where that one stands too. */
const joined = (pieces: readonly Piece[], standing: readonly Piece[]): Piece[] =>
  standing.map((p) => ({ ...p, joins: p.joins && standing.includes(pieces[pieces.indexOf(p) - 1] as Piece) }));

/**
 * The letter that follows one that was sent: thanks for what came, what changed in the assessment since, a place for the
 * answer that only a person can write, and the closing. The same input gives the same letter.
 * @throws Error where there is no rug to write about.
 */
export function composeFollowing(input: DraftInput, { told, came }: { told: Told; came: Came }): ComposedDraft {
  const { subject, pieces, readsToday } = piecesOf(input, came);
  const standing = shortened(standingOf(pieces, (p) => !isTold(p.used, told, readsToday)), mostWords(input.assessments.length));
  const lines = joined(pieces, standing);
  const at = lines.findIndex((p) => ENDS.includes(p.place.id));
  const end = at < 0 ? lines.length : at;
  const text = blocks([...lines.slice(0, end), { text: ANSWER_HERE, joins: false }, ...lines.slice(end)]);
  return { subject, text, ...partedBy(pieces, standing) };
}
