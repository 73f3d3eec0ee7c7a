import { ANSWER_HERE } from "./open-places";
import type { PlaceId } from "./paragraphs/row";
import type { Line } from "./said-once";

/** The answer that a person writes stands right after this: what they asked comes before what we have to tell. */
const START: PlaceId = "thanks";
/** In a letter without that it stands before these. */
const ENDS: readonly PlaceId[] = ["takes", "next-step", "visit", "closing", "signature"];

/** The lines of a letter with a place for the answer to what the client wrote, which only a person can give. */
export function withAnswerPlace(lines: readonly Line[]): Pick<Line, "text" | "joins">[] {
  const start = lines.findIndex((p) => p.place.id === START);
  const at = start < 0 ? lines.findIndex((p) => ENDS.includes(p.place.id)) : start + 1;
  const end = at < 0 ? lines.length : at;
  const [after, ...rest] = lines.slice(end);
  return [...lines.slice(0, end), { text: ANSWER_HERE, joins: false }, ...(after ? [{ ...after, joins: false }] : []), ...rest];
}
