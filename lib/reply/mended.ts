import type { Assessment } from "../triage/assessment";
import type { Words } from "../words/words";
import { isOnlySoilTold, soilIn } from "./damage-told";
import { likelyMechanisms } from "./facts";
import { COLOUR_LOST, PILE_TROUBLE, REPAIRS } from "./paragraphs/troubles";
import { improvementPhrase } from "./phrases";

/** Of what a share may come back: plain soil, whatever is to be seen of what got on it (of what is wet once it is dry), the lie of the pile, its colour, what is left beside a repair, a mark, or nothing that stands out. */
export type Mended = "soil" | "dried" | "seen" | "pile" | "colour" | "rest" | "mark" | "trouble";

/** Of what an improvement is a share, by the most probable trouble; where none stands out, by whether anything but soil was told. */
export function mendedIn(a: Assessment): Mended {
  const [top] = likelyMechanisms(a);
  if (top === undefined) return isOnlySoilTold(a) ? "soil" : "trouble";
  if (top === "soil-only") return soilIn(a);
  return PILE_TROUBLE.includes(top) ? "pile" : COLOUR_LOST.includes(top) ? "colour" : REPAIRS.includes(top) ? "rest" : "mark";
}

/** {ofWhat}: "of the soil". */
export const shareOf = (a: Assessment, words: Words): string => words.say("letter.share-of", { of: mendedIn(a) });
/** {mends}: "take out between a third and a half (33–50 %) of the soil"; null where no improvement is stated. */
export const mendsPhrase = (a: Assessment, words: Words): string | null =>
  a.improvement && words.say("letter.mends", { of: mendedIn(a), improvement: improvementPhrase(a.improvement, words), share: shareOf(a, words) });
