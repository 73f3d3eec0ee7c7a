import { clausesOf } from "./sentences";

/** A test waved away is none: what is left of a letter without such words. */
export const withoutDeniedTests = (letter: string): string =>
  letter.replace(/\b(?:no|without (?:an?|any)|skip (?:the|an?)|needs? no|not need (?:an?|any)) (?:\w+ )?test(?:s|ing)?\b|\btest(?:s|ing)? (?:is|are|would be) (?:not (?:needed|necessary)|unnecessary|pointless)\b/gu, "");

/** What a letter with a judgement must not leave out. `when` and `needs` meet the whole letter in lower case. */
export interface MustSay { readonly id: string; readonly when: (letter: string) => boolean; readonly needs: RegExp; readonly unless?: RegExp; readonly why: string; readonly suggestion: string }

/** What a name of the trade commonly stands for is no judgement of a rug. */
const withoutTradeNames = (letter: string): string => letter.replace(/\b(?:is|are) (?:likely|probably|most likely|very likely) (?:(?:an?|just|only|another|the) )*(?:\w+ )?(?:name|word)s? for\b/gu, "stands for");
const JUDGES = /\b(?:likely|probably|very likely|about as likely|we (?:think|believe)|fits?|going by)\b/u;
/** A judgement without any edge: what may not be said has its rule, and what is left out is told besides. */
const ASSERTS = /\b(?:it|this|that|your rug) is (?:\w+ ){0,2}(?:silk|viscose|wool|cotton|rayon|linen|jute)\b|\b(?:will (?:all )?(?:come out|come up|look like new)|as good as new|guarantee\w*)\b/u;
const OFFERS = /\b(?:we (?:would|can|could|will|shall|are going to) (?:clean|wash|try)|if it is cleaned|cleaning (?:should|would|may|might) (?!(?:still |well )*cost|be about (?:[^\s\d]{1,4}\s?)?\d|bring back too little))/u;

const CLEANED = "(?:wash|clean|shampoo|bathe|soak|steam)";
const ITS = "(?:it|them|the (?:rug|carpet|runner|pile|fringe)|your (?:rug|carpet|runner))";
const A_CLEAN = "(?:wash|clean|cleaning|bath|shampoo)";
/** A plan to clean told as what comes next: "we pick it up and wash it", "your rug is booked in for cleaning". */
const PLANS = new RegExp([
  `\\b(?:we|i)\\b.*\\b${CLEANED} ${ITS}\\b`, `\\b(?:we|i) (?:\\w+ )?(?:propose|plan|intend) to ${CLEANED}\\b`, `\\b(?:plan|next step) is\\b.*\\b(?:${CLEANED}|${A_CLEAN})\\b`,
  `\\b(?:it|rug|carpet|runner|pile) (?:will be|is to be|is|gets|goes to be)\\b(?: \\w+,?){0,4} (?:washed|cleaned|shampooed)\\b`, "\\b(?:goes|go|straight) (?:\\w+ )?in(?:to)? the (?:wash|bath)\\b",
  "\\bwe (?:\\w+ )?(?:start|begin) (?:on|next|this|today|tomorrow|straight|right|at once)\\b",
  `\\bgive ${ITS} an? (?:\\w+ )?${A_CLEAN}\\b`, `\\bbooked (?:it )?in for (?:an? )?(?:\\w+ )?${A_CLEAN}\\b`, `\\b(?:have|get) ${ITS} (?:washed|cleaned)\\b`, `\\bit (?:then |also )?gets an? (?:\\w+ )?${A_CLEAN}\\b`, `\\b${A_CLEAN} and return\\b`,
].join("|"), "u");
/** Denied, left open, or somebody else's washing. */
const NO_PLAN = /\b(?:not|never|no|nothing|nobody|whether|if|unless|without|rather|once it|you (?:asked|wrote|told|said|mentioned)|(?:some|other) \w+|neighbours?|who|was|were|has been|had|since|cost\w*)\b/u;
export const offersCleaning = (letter: string): boolean => OFFERS.test(letter) || clausesOf(letter).some((clause) => PLANS.test(clause) && !NO_PLAN.test(clause));

/** Words of a limit in the sentence that names it: "until Friday", an appointment for an inspection and a test already made are none. */
const LIMITS = new RegExp([
  "\\b(?:can|may|might|could|do|does) (?:still |also |easily )?mislead\\b", "\\b(?:guess(?:es|work)?|provisional|too little|not sure|speaks? for the sample)\\b", "\\bcannot (?:tell|promise|say|know|judge)\\b",
  "\\bonly (?:an? )?(?:inspect\\w*|test|look)", "\\b(?:inspections?|tests?|testing)\\b[^.!?]{0,60}\\b(?:decides?|settles?|tells?|shows?|says?|confirms?|first|before|needed|would|could|can)\\b",
  "\\b(?:until|before|once|unless|after|when|depends?|hangs?)\\b[^.!?]{0,60}\\b(?:seen|tests?|tested|inspect\\w*|looked|handled|in (?:our|my) hands)\\b", "\\b(?:would|should|must|can|will|need to|has to|have to) (?:\\w+ )?(?:be )?(?:test|inspect)\\w*\\b", "\\btest to go by\\b|\\bby (?:an?|the|our) (?:\\w+ )?test\\b",
].join("|"), "u");

export const MUST_SAYS: readonly MustSay[] = [
  { id: "testing", when: offersCleaning, needs: /\btest(?:s|ed|ing)?\b/u, unless: /\bno way of cleaning\b/u, why: "Nothing is cleaned before a test in a hidden corner, and the letter does not say so.", suggestion: "We clean nothing before a test in a hidden corner." },
  { id: "limits", when: (letter) => JUDGES.test(withoutTradeNames(letter)) || ASSERTS.test(letter), needs: LIMITS, why: "A judgement by words and photos has limits, and the letter names none.", suggestion: "Words and photos can mislead; an inspection and a test decide." },
];
