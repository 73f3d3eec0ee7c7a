import type { Source } from "./fibres";
import type { QuestionId } from "./questions";

/**
 * Words with which people tell what happened to a rug, when, or how it changed, in a letter of their own. Where one is told as a fact
 * (lib/triage/sentences.ts), a letter of ours does not ask for that once more as if nobody had read theirs; a person reads what they told.
 * They judge nothing. English words alone; `*` stands for any ending.
 */
export interface StoryWords extends Source {
  readonly tells: QuestionId;
  readonly words: readonly string[];
  /** A word before one of these does not count. */
  readonly notBefore?: readonly string[];
  /** It counts only beside words that tell of one of these, in the same sentence or the next. */
  readonly beside?: readonly QuestionId[];
  /** Nor does it in a sentence with one of these. */
  readonly notWith?: readonly string[];
  /** Said of a wish as often as of what happened: no trouble is taken from them. */
  readonly isWish?: true;
}
const elicited: Source = { how: "elicited", source: "Elicited for this project: words with which people report what happened to a rug" };

/** Every one of these before every one of those. */
const each = (first: readonly string[], then: readonly string[]): string[] => first.flatMap((a) => then.map((b) => `${a} ${b}`));

/** How people name the look of a mark: “a pale ring”, “two dark patches”. A colour alone is the rug's own as often. */
const MARK_COLOURS = ["pale", "paler", "light", "lighter", "white", "whitish", "bleached", "brown", "brownish", "dark", "darker", "black", "yellow", "yellowish", "grey", "reddish", "rusty", "faint", "faded", "dull", "shiny", "round", "wet", "damp"];
const MARKS = ["ring", "rings", "patch", "patches", "mark", "marks", "spot", "spots", "stain*", "area", "areas", "circle", "circles", "line", "lines", "edge", "edges", "outline*", "halo", "tide*"];

const POTS = ["plant pot*", "plantpot*", "pot plant*", "potted plant*", "flower pot*", "flowerpot*", "planter*", "jardinière*", "jardiniere*"];

const DAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];
const MONTHS = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];
const SEASONS = ["spring", "summer", "autumn", "fall", "winter", "christmas", "easter"];
const SPANS = ["minute", "minutes", "hour", "hours", "day", "days", "night", "nights", "week", "weeks", "weekend", "month", "months", "year", "years"];
const LONG_SPANS = ["weeks", "months", "years", "a week", "a month", "a year", "a few weeks", "a few months", "a few years", "some weeks", "some months", "some years", "two weeks", "three weeks", "several weeks", "several months", "several years"];

export const STORY_WORDS: readonly StoryWords[] = [
  {
    tells: "incidents",
    words: [
      "spil*", "knocked over", "tipped", "poured", "dropped", "wine", "coffee", "tea", "juice", "milk", "beer", "ink", "paint", "grease", "candle*", "wax", "blood", "urin*", "pee*", "wee", "weed", "wees", "weeing", "weeed", "piddl*", "accident*", "vomit*", "was sick", "been sick", "threw up", "puppy", "flood*", "leak*", "burst", ...POTS,
      "soak*", "moth", "moths", "beetle*", "larva*", "bleach*", "faded", "fading", "sunlight", "damp", "mould*", "mold*", "burn*", "chewed", "went over", "fell over",
    ],
    ...elicited,
  },
  { tells: "incidents", isWish: true, words: ["washed", "cleaned", "shampooed", "steamed"], ...elicited },
  {
    tells: "changes",
    words: [
      "stain*", ...each(["a", "the"], ["mark", "spot", "patch", "ring"]), "marks", "spots", "patches", "rings", ...each(MARK_COLOURS, MARKS), "water mark*", "watermark*", "tide mark*", "tidemark*", "faded", "fading", "yellowed", "yellowing", "browned", "browner", "browning", ...each(["turned", "turning", "gone", "going", "went", "dried"], ["brown", "yellow", "pale", "dark", "white", "grey", "hard", "stiff"]),
      "discolour*", "discolor*", "smell*", "stink*", "stiff", "stiffer", "matted", "crunchy", "bald", "bare", "hole", "holes", "eaten", "worn", "flattened", "dye ran", "colour ran", "colours ran", "color ran", "colors ran", "bled", "bleeding", "dye is running", "dye is coming off", "dye came off", "colour is running", "colour is coming off", "color is coming off", ...each(["red", "blue", "green", "black", "brown", "dye", "colour", "color"], ["is coming off", "came off on", "comes off on", "is coming out", "has run", "ran into", "is running"]), "shrunk", "shrank", "wavy", "crumbl*", "frayed", "fraying", "torn", "a tear",
    ],
    notBefore: ["brush*", "price*", "letter*", "neck", "of colour", "of color"],
    ...elicited,
  },
  {
    tells: "since",
    words: [
      "today", "yesterday", "this morning", "this afternoon", "this evening", "last night", "overnight", "just now", "long ago", ...each(SPANS, ["ago", "back"]), ...each(["last", "this", "since last"], [...SPANS, ...DAYS, ...MONTHS, ...SEASONS]), ...each(["on", "since"], DAYS), ...each(["in", "since"], [...MONTHS, ...SEASONS]), "at christmas", "at easter",
      ...each(["for"], LONG_SPANS), ...each(["for about", "for over", "for almost"], LONG_SPANS),
    ],
    beside: ["incidents", "changes", "wetNow"], notWith: ["bought", "purchased", "inherited", "ordered", "owned", "had it for", "have had", "i've had", "we've had", "was given", "were given", "wrote", "rang", "called", "read your", "found your", "collect*", "hope*"],
    ...elicited,
  },
];

/** A sentence that begins with one of these tells nothing: it only supposes. */
export const SUPPOSING: readonly string[] = ["if", "in case", "suppose", "supposing", "unless", "imagine"];
/** A sentence that begins with one of these asks, with a question mark or without. */
export const ASKING_VERBS: readonly string[] = ["is", "are", "was", "were", "can", "could", "do", "does", "did", "will", "would", "should", "shall", "may", "might", "has", "have", "how"];
/** So does a clause that begins with one of these, where its sentence ends with the mark. */
export const ASKING_WORDS: readonly string[] = ["what", "why", "when", "where", "who", "which", "whose", "any", "please", "or"];
/** Before a word in its clause: it is hoped, feared or supposed, and not told. */
export const ONLY_THOUGHT: readonly string[] = [
  "if", "whether", "in case", "unless", "until", "once", "think", "thought", "hope*", "hoping", "wonder*", "unsure", "sure", "may", "might", "could", "would", "will", "won't", "should", "perhaps", "maybe", "possibly", "probably", "worried", "worry", "fear*", "avoid*", "prevent*", "risk*", "imagine*", "used to", "read", "heard", "it'll", "i'd", "we'd",
];
/** Nor is it told of the rug that they write about. */
export const OF_ANOTHER_RUG: readonly string[] = ["other rug", "other rugs", "other one", "other carpet", "another rug", "another one", "another carpet", "neighbour's", "neighbor's", "friend's"];
/** In the same clause: it is the rug's own look. */
export const OF_ITS_PATTERN: readonly string[] = ["in the pattern", "of the pattern", "in the design", "of the design", "part of the pattern", "part of the design", "pattern of", "design of", "pattern has", "design has", "woven in", "patterned with"];
/** Where a clause begins that what stands before it does not bear on. */
export const NEW_CLAUSE = /[,:()–—]+\s*| (?:but|though|although|so|because|yet) | and (?=(?:it|it's|there|the|i|we|now|can|could|is|are|what|how|will|would|do|does|should|why|when|where)\b)/gu;

/** What a letter of ours takes up of a client's own words while nobody has answered a question about it. */
export type StoryDetail = "washed-home" | "brown" | "stiff" | "pot";
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
  // One that they moved away or knocked over stands there no more.
  {
    detail: "pot",
    words: [
      ...each(["under", "underneath", "beneath", "below"], [...POTS, ...each(["a", "the", "my", "our", "some", "two", "three", "several"], POTS)]),
      ...each(POTS, ["stand", "stands", "standing", "sit", "sits", "sitting", "still", "on it", "on the rug", "on top", "is on", "are on"]),
    ],
    ...elicited,
  },
  { detail: "stiff", words: ["stiff", "stiffer", "gone hard", "went hard", "dried hard", "hard and brown", "brown and hard", "crunchy"], ...elicited },
];
