import { capital } from "../words/capital";
import { size, type AreaUnit } from "../words/measures";
import type { Words } from "../words/words";
import { COLOUR_WORDS, type ColourWord } from "./colour-word";

/** Text of other people, safe to set into a letter: one line, no control characters, no braces. */
export const plain = (text: string): string => text.replace(/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069{}<>]+/gu, " ").replace(/\s+/g, " ").trim();

/** The colour that a rug's title begins with; null where it begins with none. */
export function colourIn(title: string): ColourWord | null {
  const first = plain(title).split(/[\s,]/)[0]?.toLowerCase() ?? "";
  return COLOUR_WORDS.find((word) => word === first) ?? null;
}

/** A colour in the words of a locale, to stand inside a sentence. */
export const colourName = (colour: ColourWord, words: Words): string => words.say(`colour.${colour}`);

const SIDES = /^(\d+) × (\d+)$/;
/** The size in a title, "170 × 240", in the unit that is set; anything else as it is. */
export function sidesIn(part: string, { locale }: Words, areaUnit: AreaUnit): string {
  const sides = SIDES.exec(part);
  return sides && areaUnit === "sqft" ? size(Number(sides[1]), Number(sides[2]), { locale, areaUnit }) : part;
}

/** A rug's own name, as it is kept, in a client's words and unit: "Grey, 170 × 240", "Grey, 5 ft 7 in × 7 ft 10 in". What is written otherwise stays as it is. */
export function titleIn(title: string, words: Words, areaUnit: AreaUnit): string {
  const colour = colourIn(title);
  const [head = "", ...rest] = title.split(", ");
  const sides = rest.join(", ");
  const named = colour && capital(colourName(colour, words));
  if (SIDES.test(sides)) {
    const told = sidesIn(sides, words, areaUnit);
    return named ? words.say("rug.colour-size", { colour: named, size: told }) : words.say("rug.size", { size: told });
  }
  if (rest.length > 0) return title;
  if (named && head.endsWith(" rug")) return words.say("rug.colour", { colour: named });
  return head === "A rug" ? words.say("rug.plain") : title;
}
