import type { Rule } from "./rule";
import { plainOf } from "./sentences";
import { SURENESS_MARKS } from "./sureness-marks";
import { expression } from "./vocabulary";
import { SURENESS_START, SURENESS_WEIGHTS } from "./sureness-weights";

/** What is said of a sentence that breaks no rule and still speaks too surely. */
export const TOO_SURE: Pick<Rule, "id" | "what" | "why" | "suggest"> = {
  id: "sureness", what: "speaks more surely than words and photos allow",
  why: "Nothing in it holds back, and its words are those of a promise.",
  suggest: "Say what it rests on and what is open: “By what you told us …, and a test would tell.”",
};

/** How surely a sentence speaks. `words`: those that weigh most towards too sure, the heaviest first. */
export interface Sureness { readonly decibans: number; /** In words. */ readonly length: number; /** Is advice, told by the client, or said of many rugs. */ readonly advises: boolean; /** Speaks of when, where and whom, or of nothing that a rug, a party or a product is named by. */ readonly ofTheHouse: boolean; readonly words: readonly string[] }

/** The sum of the marks of a sentence, in decibans: above 0 it is more like those that promise too much. */
export function surenessOf(sentence: string): Sureness {
  const plain = plainOf(sentence);
  const marks = SURENESS_MARKS.map((mark) => ({ mark, weight: SURENESS_WEIGHTS[mark.id] ?? 0 })).filter(({ mark, weight }) => weight !== 0 && mark.holds(plain));
  const shown = marks.filter(({ weight }) => weight > 0).sort((a, b) => b.weight - a.weight).flatMap(({ mark }) => mark.shows(plain) ?? []);
  return { advises: ADVICE().test(plain), ofTheHouse: (HOUSE().test(plain) && !OF_A_RUG().test(plain)) || !CLAIMS_SOMETHING().test(plain), length: (plain.match(/[a-z]+/gu) ?? []).length, decibans: marks.reduce((sum, { weight }) => sum + weight, SURENESS_START), words: [...new Set(shown)].slice(0, MOST_WORDS) };
}
/** So many words are shown. *elicited* */
const MOST_WORDS = 3;

/**
 * From more than this on a sentence that breaks no rule is shown all the same. Chosen by leaving each table of sentences
 * out in turn: some 2 in 3 of the statements that promise too much lie above it, and 1 in 16 of the honest ones.
 */
const TOO_SURE_DECIBANS = 3;
/** By itself more like what promises too much than like what is honest. */
export const isBeyondCare = ({ decibans }: Pick<Sureness, "decibans">): boolean => decibans > 0;
/** Down to here a sentence is so full of care that only harmful advice is still looked for in it: some 1 in 90 that promise too much lie below. */
const CAREFUL_DECIBANS = -10;
export const speaksWithCare = ({ decibans }: Pick<Sureness, "decibans">): boolean => decibans <= CAREFUL_DECIBANS;
/** Advice to do something claims nothing: whether it harms, the rules know. Nor does what the client told, or what holds of many rugs. */
const ADVICE = expression("^(?:–\\s*)?LEADIN(?:ACT|HARMACT|never|change|draw|press|blot|keep|turn|vacuum|roll|wait|fold|turning|airing|vacuuming|rotating|an? (?:\\w+ )?underlay|bring|read|ask|send|call)\\b|\\byou (?:wrote|typed|told (?:us|me)|said|bought)\\b|\\bkeep off\\b|^(?:most|many|some|certain|few|household)\\b(?!.*\\b(?:you|yours?|we|our|us|i|my)\\b)");
const HOUSE = expression("\\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)days?|tomorrow|morning|afternoon|evening|noon|o'clock|miles?|opposite|parking|ramp|door|lane|street|slot|booking|deposit|invoice|phone|email|post|coffee|collection|driver|van|appointment|open|report)\\b|\\b(?:we|i) (?:will|shall|would|always|can)(?: SURELY| \\w+ly| always| also| first)* (?:ring|call|phone|write|ask|tell|let you|email|send|explain|discuss|talk|look|meet|help you|listen|answer|reply)\\b|\\byou (?:will|shall|can|may)(?: \\w+ly| always| then)* (?:hear|receive|get an? (?:call|letter|note|answer|message)|be asked|be told|say no|stop|cancel|change your mind)\\b");
/** What a sentence about the house would have to leave alone. */
const OF_A_RUG = expression("\\b(?:(?<!\\b(?:will|to|would|and) )TROUBLE|PARTY|PERFECT|FORMER|IDIOM|OATH|FIBRE|ORIGIN|MISDEED|LEGAL|CURRENCY|gone|clean|new|saved|safe|fixed|better|ready|handed|pile|colou?rs?|disappear\\w*|vanish\\w*)\\b");
/** Without one of these a sentence claims nothing of a rug, of what was done to it, or of who answers for it. */
const CLAIMS_SOMETHING = expression("\\b(?:RUGPART|(?!tea\\b|coffee\\b)TROUBLE|FIBRE|PROCESS|PARTY|PERFECT|FORMER|IDIOM|OATH|ORIGIN|MISDEED|LEGAL|CURRENCY|AGENT|HEAT|covered|clean|gone|as new|years|customers|clients|the case|value|worth|thousands?|thousand|auction|all of (?:it|them)|(?:been|was) at it|one of the|test\\w*|inspect\\w*|certain)\\b");
/** Fewer words are a heading or a name. *elicited* */
const LEAST_WORDS = 6;
export const speaksTooSurely = ({ decibans, length, advises, ofTheHouse }: Pick<Sureness, "decibans" | "length" | "advises" | "ofTheHouse">): boolean => decibans > TOO_SURE_DECIBANS && length >= LEAST_WORDS && !advises && !ofTheHouse;
