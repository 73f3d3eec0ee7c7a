import { gasIn } from "../words/first-aid";
import type { Told } from "./changes";
import { isAidDue, isGasTold, isHandsOff } from "./happened";
import { speaksOf } from "./moved";
import { PARAGRAPHS } from "./paragraphs";
import type { DraftInput, SaidParagraph } from "./pieces";
import { mayTouchIn, wordsOf } from "./slots";
import { heldBackBy } from "./told-by-letter";

type Said = Pick<SaidParagraph, "id" | "place" | "stands">;
/** Paragraphs that only say that the first aid of a letter before still holds. */
const HOLDS_STILL = PARAGRAPHS.filter(({ place, when }) => place === "first-aid" && when.is?.has?.some((fact) => fact === "aid-known" || fact === "aid-said-dry")).map(({ id }) => id);
/** Whether a paragraph of a letter leaves first aid to what a letter before told. */
export const leavesAid = ({ id, place, stands }: Said): boolean => stands && place === "first-aid" && HOLDS_STILL.includes(id);
/** Whether a paragraph tells first aid itself: of the whole letter, or of one rug that has its own. */
export const tellsAid = ({ id, place }: Omit<Said, "stands">): boolean => place === "own-aid" || (place === "first-aid" && !HOLDS_STILL.includes(id));

/**
 * Whether first aid as it was last told, in the last letter or in one before that it was left to, is all that these rugs need: flood's own where one of them was
 * flooded, and the line of the gas where one may give it off; and it told nobody to press a cloth on what by now nobody may touch, nor to keep off for flood water where there was none.
 */
export function toldAid({ paragraphs }: Told, { assessments, workshop }: DraftInput): boolean {
  const words = wordsOf(workshop);
  const gas = assessments.some((rug) => isAidDue(rug) && isGasTold(rug.answers)) ? gasIn(words, workshop.emergencyNumber) : "";
  const isFlooded = assessments.some((rug) => heldBackBy(rug) === "flood");
  const handsOff = assessments.map((rug) => isAidDue(rug) && isHandsOff(rug));
  const letsTouch = ({ said }: SaidParagraph) => mayTouchIn(words).some((line) => said?.includes(line));
  const isUndone = paragraphs.some((p) => p.place === "own-aid" && p.rug !== null && handsOff[p.rug] && letsTouch(p));
  // What a letter says itself stands before what is kept of those before it, and that newest first.
  const newest = paragraphs.find((p) => p.place === "first-aid" && tellsAid(p));
  const isHeldOn = paragraphs.some((p) => p.place === "first-aid" && p.stands);
  return isHeldOn && !isUndone && newest !== undefined && speaksOf("flood", newest) === isFlooded && (gas === "" || newest.said?.includes(gas) === true) && !(handsOff.includes(true) && letsTouch(newest));
}
