import type { Source } from "./fibres";
import type { QuestionId } from "./questions";

/**
 * Words with which people tell what happened to a rug, or how it changed, in a letter of their own. Where one is there, a
 * letter of ours does not ask for that once more as if nobody had read theirs; a person reads what they told. They judge
 * nothing. English words alone; `*` stands for any ending.
 */
export interface StoryWords extends Source { readonly tells: QuestionId; readonly words: readonly string[] }
const elicited: Source = { how: "elicited", source: "Elicited for this project: words with which people report what happened to a rug" };

export const STORY_WORDS: readonly StoryWords[] = [
  {
    tells: "incidents",
    words: [
      "spil*", "knocked over", "tipped", "poured", "dropped", "wine", "coffee", "tea", "juice", "milk", "beer", "ink", "paint", "grease", "candle*", "wax", "blood", "urin*", "pee*", "wee", "weed", "wees", "accident*", "vomit*", "was sick", "been sick", "threw up", "puppy", "flood*", "leak*", "burst",
      "soak*", "washed", "cleaned", "shampooed", "steamed", "moth", "moths", "beetle*", "larva*", "bleach*", "faded", "fading", "sunlight", "damp", "mould*", "mold*", "burn*", "chewed", "went over", "fell over",
    ],
    ...elicited,
  },
  {
    tells: "changes",
    words: [
      "stain*", "a mark", "marks", "a spot", "spots", "a patch", "patches", "a ring", "rings", "faded", "fading", "yellow*", "brown*", "discolour*", "discolor*", "smell*", "stink*", "stiff", "matted", "bald", "bare", "hole", "holes", "eaten", "worn", "flattened", "dye ran", "colour ran", "colours ran", "color ran",
      "colors ran", "bled", "shrunk", "shrank", "wavy", "crumbl*", "frayed", "fraying", "torn", "a tear",
    ],
    ...elicited,
  },
];
