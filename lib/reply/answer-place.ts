import { ANSWER_HERE } from "./open-places";
import type { PlaceId } from "./paragraphs/row";
import type { Piece } from "./pieces";

/** Before these stands the answer that a person writes. */
const ENDS: readonly PlaceId[] = ["next-step", "visit", "closing", "signature"];

/** The lines of a letter with a place for the answer to what the client wrote, which only a person can give. */
export function withAnswerPlace(lines: readonly Piece[]): Pick<Piece, "text" | "joins">[] {
  const at = lines.findIndex((p) => ENDS.includes(p.place.id));
  const end = at < 0 ? lines.length : at;
  const [after, ...rest] = lines.slice(end);
  return [...lines.slice(0, end), { text: ANSWER_HERE, joins: false }, ...(after ? [{ ...after, joins: false }] : []), ...rest];
}
