import { gasIn } from "../words/first-aid";
import type { Told } from "./changes";
import { isAidDue, isGasTold, isHandsOff } from "./happened";
import { speaksOf } from "./moved";
import { PARAGRAPHS } from "./paragraphs";
import type { DraftInput, SaidParagraph } from "./pieces";
import type { SlotName } from "./slot-words";
import { mayTouchIn, wordsOf } from "./slots";
import { heldBackBy } from "./told-by-letter";

type Said = Pick<SaidParagraph, "id" | "place" | "stands">;
const KNOWN = ["aid-known", "aid-said-dry", "aid-known-gas", "aid-said-dry-gas"];
/** Paragraphs that only say that the first aid of a letter before still holds. */
const HOLDS_STILL = PARAGRAPHS.filter(({ place, when }) => place === "first-aid" && when.is?.has?.some((fact) => KNOWN.includes(fact))).map(({ id }) => id);
/** Whether a paragraph of a letter leaves first aid to what a letter before told. */
export const leavesAid = ({ id, place, stands }: Said): boolean => stands && place === "first-aid" && HOLDS_STILL.includes(id);
/** Whether a paragraph tells first aid itself: of the whole letter, or of one rug that has its own. */
export const tellsAid = ({ id, place }: Omit<Said, "stands">): boolean => place === "own-aid" || (place === "first-aid" && !HOLDS_STILL.includes(id));

/** What a paragraph opens for the lines that fit the rugs: it has that of the cloth exactly where all of them may be touched. */
const FITTED = "{firstAidInShort}" satisfies `{${SlotName}}`;

/**
 * Whether first aid as it was last told, in the last letter or in one before that it was left to, is what these rugs need: flood's own where one of them was flooded, the
 * line of the gas where one may give it off, the cloth where all may be touched; and none of these where that is not so, or not so any more.
 */
export function toldAid({ paragraphs }: Told, { assessments, workshop }: DraftInput): boolean {
  const words = wordsOf(workshop);
  const due = assessments.filter(isAidDue);
  const [isGas, isFlooded, isHeldOff] = [due.some(({ answers }) => isGasTold(answers)), assessments.some((rug) => heldBackBy(rug) === "flood"), due.some(isHandsOff)];
  const letsTouch = ({ said }: SaidParagraph) => mayTouchIn(words).some((line) => said?.includes(line));
  const isUndone = paragraphs.some((p) => p.place === "own-aid" && due.some((rug) => isHandsOff(rug) && assessments.indexOf(rug) === p.rug) && letsTouch(p));
  // What a letter says itself stands before what is kept of those before it, and that newest first.
  const newest = paragraphs.find((p) => p.place === "first-aid" && tellsAid(p));
  const isHeldOn = paragraphs.some((p) => p.place === "first-aid" && p.stands);
  if (!isHeldOn || isUndone || newest === undefined) return false;
  const hasGas = newest.said?.includes(gasIn(words, workshop.emergencyNumber)) === true;
  return speaksOf("flood", newest) === isFlooded && hasGas === isGas && (letsTouch(newest) ? !isHeldOff : isHeldOff || !newest.text.includes(FITTED));
}
