import type { Source } from "./fibres";
import type { QuestionId } from "./questions";

/**
 * Words with which people tell what happened to a rug, or how it changed, in a letter of their own. Where one is there, a
 * letter of ours does not ask for that once more as if nobody had read theirs; a person reads what they told. They judge
 * nothing. English words alone; `*` stands for any ending.
 */
export interface StoryWords extends Source {
  readonly tells: QuestionId;
  readonly words: readonly string[];
  /** Said of a wish as often as of what happened: no trouble is taken from them. */
  readonly isWish?: true;
}
const elicited: Source = { how: "elicited", source: "Elicited for this project: words with which people report what happened to a rug" };

export const STORY_WORDS: readonly StoryWords[] = [
  {
    tells: "incidents",
    words: [
      "spil*", "knocked over", "tipped", "poured", "dropped", "wine", "coffee", "tea", "juice", "milk", "beer", "ink", "paint", "grease", "candle*", "wax", "blood", "urin*", "pee*", "wee", "weed", "wees", "accident*", "vomit*", "was sick", "been sick", "threw up", "puppy", "flood*", "leak*", "burst",
      "soak*", "moth", "moths", "beetle*", "larva*", "bleach*", "faded", "fading", "sunlight", "damp", "mould*", "mold*", "burn*", "chewed", "went over", "fell over",
    ],
    ...elicited,
  },
  { tells: "incidents", isWish: true, words: ["washed", "cleaned", "shampooed", "steamed"], ...elicited },
  {
    tells: "changes",
    words: [
      "stain*", "a mark", "marks", "a spot", "spots", "a patch", "patches", "a ring", "rings", "faded", "fading", "yellow*", "brown*", "discolour*", "discolor*", "smell*", "stink*", "stiff", "matted", "bald", "bare", "hole", "holes", "eaten", "worn", "flattened", "dye ran", "colour ran", "colours ran", "color ran",
      "colors ran", "bled", "shrunk", "shrank", "wavy", "crumbl*", "frayed", "fraying", "torn", "a tear",
    ],
    ...elicited,
  },
];

/** What a letter of ours takes up of a client's own words while nobody has answered a question about it. */
export type StoryDetail = "washed-home" | "brown" | "stiff";
export interface DetailWords extends Source { readonly detail: StoryDetail; readonly words: readonly string[] }

/** Brown is also a rug's own colour: only a change to it counts. */
export const STORY_DETAILS: readonly DetailWords[] = [
  {
    detail: "washed-home",
    words: [
      "i washed", "we washed", "i've washed", "we've washed", "i have washed", "we have washed", "washed it myself", "washed it ourselves", "washed it at home", "i cleaned", "we cleaned", "i've cleaned", "we've cleaned", "i have cleaned", "we have cleaned",
      "cleaned it myself", "cleaned it ourselves", "cleaned it at home", "i shampooed", "we shampooed", "i scrubbed", "we scrubbed", "i steamed", "we steamed", "hosed it", "in the bath", "in the bathtub", "in the shower", "hired a machine", "hired a carpet",
    ],
    ...elicited,
  },
  {
    detail: "brown",
    words: [
      "browned", "browner", "browning", "turned brown", "turning brown", "turns brown", "went brown", "going brown", "goes brown", "gone brown", "dried brown", "come up brown", "came up brown", "came out brown", "came back brown", "now brown", "now it is brown", "now it's brown", "it's brown now", "is brown now",
      "stiff and brown", "hard and brown", "brown and stiff", "brown and hard", "brown mark*", "brown patch*", "brown stain*", "brown spot*", "brown ring*", "brown line*", "brown edge*", "brown tide*",
    ],
    ...elicited,
  },
  { detail: "stiff", words: ["stiff", "stiffer", "gone hard", "went hard", "dried hard", "hard and brown", "brown and hard", "crunchy"], ...elicited },
];
