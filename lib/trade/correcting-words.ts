import type { Source } from "./fibres";
import type { QuestionId } from "./questions";

/** An answer that can be corrected in words: one of a question, or what is typed of the label, the price, the year or the size. */
export type CorrectedId = QuestionId | "label" | "price" | "boughtYear" | "size";

/**
 * Words by which people name an answer again when they put it right. They judge nothing and change no answer: staff are shown which one a
 * message seems to correct. English words alone; `*` stands for any ending.
 */
export interface CorrectedRow extends Source {
  /** Of these the first that was answered is meant. */
  readonly of: readonly [CorrectedId, ...CorrectedId[]];
  /** Names of one answer each. */
  readonly names?: readonly (readonly string[])[];
  /** Instead of names: any figure that fits. */
  readonly figures?: RegExp;
  /** With these in the sentence a figure, or one name set against another, is of this. */
  readonly beside?: readonly string[];
  /** "It is not …" of what was answered corrects it by itself; `only`: and nothing else does. */
  readonly isByDenial?: true | "only";
  /** So does "it is …" of another: what was answered was true then, and is no more. The first name in what was answered is the answer. */
  readonly isByNow?: true;
  /** What was answered may be named in the correction too, as where two sides were swapped. */
  readonly isGivenAgain?: true;
}
const elicited: Source = { how: "elicited", source: "Elicited for this project: words with which people put right what they told of a rug" };

export const CORRECTED: readonly CorrectedRow[] = [
  {
    of: ["liquid"], isByDenial: true,
    names: [
      ["wine", "rosé", "champagne", "prosecco", "port", "sherry"], ["coffee", "tea", "espresso", "cappuccino", "latte"], ["juice", "cola", "coke", "beer", "lemonade", "squash", "smoothie", "cider"], ["milk", "cream", "sauce", "gravy", "yoghurt", "yogurt", "soup", "ketchup", "curry"],
      ["oil", "butter", "wax", "grease"], ["ink", "paint", "make-up", "makeup", "nail varnish", "nail polish", "lipstick"], ["urine", "pee", "wee"], ["vomit", "sick"], ["cleaning product", "detergent"], ["water"],
    ], ...elicited,
  },
  {
    of: ["label", "sellerSaid"], isByDenial: true,
    names: [
      ["silk"], ["art silk", "artificial silk", "bamboo silk", "banana silk", "faux silk", "vegan silk", "mock silk"], ["viscose", "rayon"], ["wool", "woollen", "woolen"], ["cotton"], ["linen", "flax", "hemp"], ["jute", "sisal", "coir"], ["bamboo"], ["lyocell", "modal", "cupro"], ["acetate"],
      ["polyester"], ["polypropylene"], ["nylon", "polyamide"], ["acrylic"], ["synthetic", "plastic"], ["cashmere"], ["mohair"],
    ], ...elicited,
  },
  {
    of: ["incidents"], isByDenial: true,
    names: [
      ["spill", "spilled", "spilt"], ["pet", "dog", "cat", "puppy", "kitten", "the baby", "toddler"], ["sick", "vomit"], ["leak", "vase", "rain", "burst pipe"], ["flood", "flooded", "sewage"], ["moth", "moths", "beetles"], ["sun", "sunlight"], ["wear", "worn"],
    ], ...elicited,
  },
  {
    of: ["treatments"],
    names: [
      ["bleach", "oxygen"], ["household cleaner", "carpet cleaner", "spray", "foam"], ["soap", "shampoo", "washing-up liquid", "washing up liquid"], ["vinegar", "salt", "soda water", "baking soda", "bicarbonate", "bicarb"], ["steam", "steamer", "hairdryer", "iron"], ["machine"],
      ["solvent", "white spirit", "acetone", "stain-remover fluid"], ["plain water", "just water", "only water"],
    ], ...elicited,
  },
  { of: ["treatedBy"], names: [["me", "myself", "i did", "us", "ourselves", "my husband", "my wife"], ["a cleaner", "the cleaner", "my cleaner", "our cleaner", "cleaners", "cleaning firm", "cleaning company"]], ...elicited },
  {
    of: ["since"], beside: ["happened", "occurred", "was", "spil*", "it's", "it"],
    names: [
      ["an hour ago", "just now"], ["today", "this morning", "this afternoon", "this evening"], ["yesterday", "last night", "two days ago"], ["this week", "last week", "days ago", "a week ago", "one week ago"], ["this month", "last month", "weeks ago", "two weeks ago", "three weeks ago"],
      ["longer ago", "months ago", "a year ago", "years ago", "last year", "long ago"],
    ], ...elicited,
  },
  {
    of: ["boughtWhere"], beside: ["bought", "purchased", "got it", "got this", "got the", "came from", "comes from", "it was"],
    names: [["online", "internet", "website"], ["auction", "antiques dealer"], ["rug shop", "carpet shop", "specialist"], ["furniture store", "furniture shop", "department store"], ["market", "bazaar"], ["second-hand", "second hand", "secondhand"], ["gift", "present", "inherited", "inheritance"]], ...elicited,
  },
  {
    of: ["changes"], isByDenial: "only",
    names: [
      ["dye run", "dye runs", "dye bleed", "dye bleeding", "colour run", "color run", "colour ran", "color ran", "colour bleed", "color bleed", "bleeding", "bleed", "run"], ["browner", "browning", "brown stain", "yellower", "yellowing"], ["ring", "tide mark", "tidemark", "water mark", "watermark"],
      ["paler", "bleached", "bleach mark"], ["faded", "fading"], ["stiff", "matted"], ["rough", "burst"], ["shading", "shadow", "lighter or darker"], ["smell", "smells", "smelly"], ["black spots", "mould", "mold", "mildew"], ["bare patch", "bare patches", "bare", "hole", "eaten"],
      ["worn", "pressed flat", "wear"], ["wavy", "shrunk"], ["coming off", "crumbling"], ["dirty", "dirt"],
    ], ...elicited,
  },
  { of: ["wetNow"], isByDenial: true, isByNow: true, names: [["wet", "soaking", "soaked", "sopping", "sodden"], ["damp", "moist", "clammy"], ["dry", "dried"]], ...elicited },
  { of: ["price"], figures: /(?<!\bin )\d[\d.,]*(?![\d.,]|\s*(?:%|cms?\b|mm\b|m\b|met(?:re|er)s?\b|ft\b|feet\b|foot\b|inch|years?\b|months?\b|weeks?\b|days?\b))/gu, beside: ["paid", "price", "cost", "costs", "£", "$", "€", "pounds", "euros", "dollars", "quid"], ...elicited },
  { of: ["boughtYear"], figures: /(?<![\d.,])(?:19|20)\d\d(?![\d.,]?\d)/gu, beside: ["bought", "purchased", "got it", "inherited", "was given", "year"], ...elicited },
  { of: ["size"], isGivenAgain: true, figures: /(?<![£$€\d])\d[\d.,]*/gu, beside: ["cm", "cms", "m", "metre*", "meter*", "ft", "feet", "foot", "inch*", "wide", "long", "x", "by", "measures", "size"], ...elicited },
];

/** Between two names: the first takes the place of the second. */
export const INSTEAD_OF = /^(?! (?:is|are|was|were)(?: not|n't))[^?]*(?:\bnot|\binstead of|\brather than|\bnever)(?: (?:a|an|as|the|my|from|of|in|on|at|by|for|with|about|was|is|it|bought|any|real|pure|just|only|cold|hot|red|white|black|with)){0,4}[ £$€%\d]*$/u;
/** Before a name it says that the next one takes its place; so does a name that is denied. */
export const DENIED_BEFORE = /(?:\bnot|n't)(?: (?:a|an|as|the|my|from|of|in|on|at|by|any|real|really|pure|actually|made|red|white|black|buy|bought|get|got|use|used|it|this))* [£$€]?$/u;
export const BUT_THIS = /^[^?]*?(?:\bbut\b|[,:–—] (?:it|that|this|they)(?:'s| is| was))/u;
/** "Change … to …", around the first name. */
export const CHANGE = /\b(?:change|correct|amend|alter)(?: (?:it|this|that|the|my|from|answer))* $/u;
export const INTO = /^ (?:to|into)(?: (?:a|an|the|red|white))* [£$€]?$/u;
/** "It is not", before a name. */
export const IT_IS_NOT = /\b(?:it|that|this|rug|carpet|pile|stain|mark|liquid)(?:(?:'s| is| was) (?:actually |really |in fact )?not| isn't| wasn't)(?: (?:a|an|the|real|really|pure|actually|made|of|from|any|even))* $/u;
/** What is said of a name that was denied, so that it is not the name that is: "It is not the ring that worries me". */
export const OF_WHICH = /^,? (?:that|which|who)\b/u;

const PART = "(?:it|that|this|everything|all of it|(?:rug|carpet|pile|patch|spot|place|part|corner|edge|end|side|back|front|underside|middle|stain|mark)s?)";
const HOW = "(?:now|still|all|a|bit|little|slightly|somewhat|quite|rather|very|completely|fully|totally|entirely|again|already|also|since|long|been|bone|thoroughly|perfectly|finally|actually|really|just|pretty|both)";
/** Before a name: how it is by now, in its clause. */
export const IT_IS_NOW: readonly RegExp[] = [new RegExp(`\\b${PART}(?: underneath| below)?(?:'s| is| are| has| have| feels?| seems?)(?: ${HOW})* $`, "u"), /^\W*(?:(?:sorry|yes|no)\W+)?still(?: a bit| a little| slightly| quite| very)? $/u];
/** The same in one word, with its name: "it dried", and not "keep it dry". */
export const IT_DRIED = /^\W*(?:it|the rug|the carpet)(?: finally| all| completely| fully)? dried$/u;
/** In its clause: it is not so yet, or nobody says so. */
export const NOT_YET = /\b(?:when|whenever|once|until|till|as soon as|as long as|before|after|while|by the time|make sure|ensure|check)\b/u;
/** After a name: it is said of something else, or of a way of cleaning. */
export const NOT_OF_RUG = /^(?:[ -]clean| (?:weather|season|outside|out there|climate|place to)\b| in (?:here|(?:the|this|that|our|my) (?:\w+ )?(?:room|house|hall|cellar|basement|flat|garage|loft|shed|kitchen|bathroom))\b)/u;

/** Farthest apart that two names, or a slip that is owned to and a name, are read together, in characters. Elicited. */
export const TOGETHER_CHARS = 60;
/** A slip that is owned to: what else is named in this sentence or the next is what is right. */
export const OWNED_TO: readonly RegExp[] = [
  /\b(?:made|was|is) (?:a|my|an) (?:mistake|slip|error)\b|\bmy (?:mistake|error)\b|\bby mistake\b/u,
  /\b(?:i|we)(?: have|'ve)? (?:got|had|have|put|gave|given|ticked|chose|wrote|entered|typed|told)(?: \w+){0,3} wrong\b|\b(?:i|we) (?:was|were) (?:mistaken|wrong)\b(?! to\b)/u,
  /\b(?:price|size|year|date|answer|label|material|liquid)\b[^?]*\b(?:is|was) wrong\b|\bwrong (?:price|size|year|date|answer|material|liquid|amount|figure|box)\b/u,
  /\b(?:correct (?:myself|something|that|this|one thing|an answer|my answer|what i)|(?:just to|let me) correct|stand corrected|zeros? too (?:many|few)|slip of the (?:finger|pen))\b/u,
  /\b(?:accidentally|mistakenly|wrongly) (?:said|told|wrote|put|ticked|chose|entered|typed|pressed|clicked|gave)\b/u,
  /\b(?:checked|looked|measured|read|asked)(?: \w+){0,4} again\b|\b(?:re-?checked|double-?checked|re-?measured)\b/u,
  /\b(?:i|we) (?:meant|should have (?:said|written|put|ticked|chosen|typed|told you)|misread|misremembered|mixed up|muddled)\b|\bmixed (?:it|them|that) up\b/u,
  /\b(?:typo|correction|on second thoughts|turns out|turned out)\b/u,
  /\b(?:i|we)(?: have|'ve| had|'d)? (?:said|told you|wrote|written|put|ticked|chose|answered|entered|typed|thought)\b[^?]*\bbut\b/u,
];
/** What was said before: where that is named, and right after it "it was …" another, the other is what is right. */
export const SAID_BEFORE = /\b(?:i|we)(?: have|'ve| had|'d)? (?:said|told you|wrote|written|put|ticked|chose|chosen|answered|entered|typed)\b/u;
export const IT_IS = /\b(?:it|that|this)(?:'s| is| was)(?: (?:a|an|the|only|just|really|red|white))* [£$€]?$/u;
/** "Sorry, it was …": what is named after it is what is right. */
export const PUTS_RIGHT = /\b(?:sorry|actually|in fact|oops|apologies)\b[,:.!–—-]* *(?:but |and |that )?(?:(?:it|that|this|they)(?:'s| is| was| were)|(?:i|we) (?:paid|bought|got|used))\b|\b(?:it|that|this)(?:'s| is| was) (?:actually|in fact)\b|\b(?:actually|in fact) (?:says|reads|is|was)\b/gu;

/** With one of these in a sentence it is wished, asked, feared or supposed, or said of us. */
export const NO_CORRECTION: readonly string[] = [
  ...["sister", "brother", "mother", "friend", "neighbour", "neighbor", "daughter", "son", "parents", "mum", "friend of mine"].flatMap((who) => [`${who} has`, `${who} have`, `${who}'s`]), "if", "whether", "would", "i'd", "we'd", "want", "wants", "wanted", "prefer*", "hope*", "hoping", "wish*", "wonder*", "could", "might", "may", "looking for", "next time", "worried", "afraid", "can pay", "afford", "budget",
  "you said", "you say", "you tell", "you told", "you wrote", "you write", "you think", "you call", "you quoted", "according to you", "your letter", "your report", "your price", "your quote",
];
/** Politeness before what is said: it wishes nothing. */
export const POLITE = /\b(?:i|we)(?:'d| would)?(?: just)? (?:like|want|wanted|need) to (?=correct|tell|say|add|mention|let|put|point|change)/gu;
/** The same behind it: it fears nothing. */
export const POLITE_END = /,? i(?: am|'m) afraid(?=\W*$)/u;
/** A question that follows a statement and turns it into one. */
export const ASKS_BACK = /,\s*(?:is|was|isn't|wasn't|are|were|do|does|did|don't|doesn't|didn't|right|no|or not)(?: (?:it|that|this|they|i|we))?(?: not)?\s*[?？]+\W*$/u;
