import type { Source } from "./fibres";
import type { UrgencyLevel } from "./urgency";

/**
 * Words that have a letter read before the others, since nobody has asked its writer anything yet. They judge nothing: they
 * only say what a person looks at first. English words alone; `*` stands for any ending. *elicited*: the words with which
 * people report what cannot wait.
 */
export interface LetterSign extends Source {
  readonly level: Exclude<UrgencyLevel, "can-wait">;
  /** What the words speak of. */
  readonly about: string;
  /** One of these is said… */
  readonly words: readonly string[];
  /** …and, where there are any, one of these beside it, in the same sentence or the next. */
  readonly beside?: readonly string[];
  /** A word before one of these does not count. */
  readonly notBefore?: readonly string[];
  /** First aid goes out with the acknowledgement: the whole set, or the one for what nobody may touch. */
  readonly firstAid?: "whole" | "hands-off";
  /** Whether it is over where the letter says that it is dry again, or that it was long ago. */
  readonly endsDry?: true;
  /** Once one of these is answered the letter says nothing more of it: an answer is better than words. */
  readonly unless: readonly string[];
}
const elicited: Source = { how: "elicited", source: "Elicited for this project: words with which people report what cannot wait" };

/** A word before one of these is the name of something else: “wet cleaning”. */
const METHODS_AND_LOOKS: readonly string[] = ["clean*", "wash*", "wipe*", "vac*", "mop*", "of colour", "of color", "of light"];

export const LETTER_SIGNS: readonly LetterSign[] = [
  {
    level: "hours", about: "flood or waste water now", words: ["flood*", "sewage", "sewer*", "waste water", "wastewater", "toilet overflow*", "overflowing toilet"],
    notBefore: METHODS_AND_LOOKS, firstAid: "hands-off", endsDry: true, unless: ["wetNow"], ...elicited,
  },
  {
    level: "hours", about: "water now",
    words: [
      "wet", "damp", "dampish", "clammy", "moist", "soak*", "sodden", "sopping", "drench*", "dripping", "under water", "underwater", "burst", "bursts", "leak*", "overflow*", "standing in water", "full of water", "not dry", "not yet dry", "still not dry", "isn't dry", "won't dry", "can't get it dry", "cannot get it dry",
    ],
    notBefore: METHODS_AND_LOOKS, firstAid: "whole", endsDry: true, unless: ["wetNow"], ...elicited,
  },
  {
    level: "two-days", about: "something that got on it today",
    words: ["today", "just now", "this morning", "this afternoon", "this evening", "tonight", "last night", "yesterday", "minutes ago", "an hour ago", "hours ago", "just happened", "a moment ago"],
    beside: [
      "spil*", "knocked", "tipped", "poured", "puddle*", "accident", "stain*", "wine", "coffee", "tea", "juice", "milk", "ink", "paint", "urine", "pee*", "wee*", "vomit*", "was sick", "been sick", "being sick", "is sick", "got sick", "threw up",
      "blood", "bled", "vinegar", "soap*", "washing-up liquid", "shampoo*", "cleaner", "scrubbed", "went over", "fell over",
    ],
    unless: ["since"], ...elicited,
  },
  {
    level: "two-days", about: "bleach, or a wash at home",
    words: ["have bleached", "i bleached", "we bleached", "he bleached", "she bleached", "they bleached", "cleaner bleached", "bleach on", "used bleach", "with bleach", "ammonia", "peroxide", "in the bath", "in the bathtub", "in the shower", "hosed", "pressure wash*", "in the washing machine"],
    endsDry: true, unless: ["treatments"], ...elicited,
  },
  {
    level: "two-days", about: "a smell",
    words: ["smell*", "stink*", "stank", "stench", "odour*", "odor*", "musty", "reek*"],
    unless: ["incidents", "changes"], ...elicited,
  },
  {
    level: "two-days", about: "insects that move",
    words: ["larva*", "maggot*", "grubs", "crawling", "live moth*", "moths are", "moths fly*", "moths flew", "moths came", "moths in", "moving insects", "insects moving", "insects are", "beetles are", "eating the rug", "eating my rug", "eating it"],
    unless: ["incidents"], ...elicited,
  },
  { level: "a-week", about: "insects", words: ["moth", "moths", "carpet beetle*", "woolly bear*", "silverfish"], unless: ["incidents"], ...elicited },
];

/** Before a sign's words, with nothing but fillers between: it is said not to be so. */
export const LETTER_NEGATIONS: readonly string[] = ["not", "no", "never", "without", "nor", "neither", "nothing", "nobody", "cannot", "can't", "isn't", "wasn't", "aren't", "don't", "doesn't", "didn't", "hasn't", "haven't", "hadn't", "weren't", "stopped"];
/** What may stand between; any other word begins something new: “cannot rescue the flooded rug”. */
export const NEGATION_FILLERS: readonly string[] = [
  "a", "any", "and", "or", "at", "all", "be", "been", "become", "ever", "got", "gotten", "getting", "is", "it", "very", "really", "particularly", "too", "actually", "longer", "more", "sign", "signs", "trace", "of",
  "notice", "noticed", "see", "seen", "found", "feel", "look", "seem", "damp", "wet", "smell", "smells", "leak", "leaks", "water", "has", "have", "was", "put", "used",
];
/** It is dry again, not “once it is”: what was said of water before is over. */
export const DRY_AGAIN = /(?<!\b(?:when|whenever|as soon as|till|before) (?:the |my |our )?)\b(?:it|rug|carpet|they|everything)(?:'s| is| are| has| have| feels)(?: (?:now|all|completely|quite|fully|again|already|long since|since|been|bone|thoroughly|perfectly)){0,3} (?:dry|dried)\b(?! clean)/gu;
/** Where one clause ends and the next begins. */
export const BETWEEN_CLAUSES = /[,:()–—]| but | though | although /u;
/** It goes on: what else is said of the past does not end it. */
export const GOES_ON = /\b(?:still|now|again|today|ever since)\b/u;
/** Told of what came before it was dry. */
export const BEFORE_THAT = /\b(?:got|was|were|had|happened)\b/u;
/** It was long ago. */
export const LONG_AGO = /\b(?:(?:weeks?|months?|years?) (?:ago|back)|last (?:week|month|year|spring|summer|autumn|fall|winter|christmas|january|february|march|april|may|june|july|august|september|october|november|december)|in (?:19|20)\d\d|long ago|used to)\b/u;
