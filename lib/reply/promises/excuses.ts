import type { Excuse } from "./rule";
import { list, verbs, words } from "./words";

const either = (...parts: string[]) => new RegExp(`\\b${list(parts)}\\b`, "u");

/** What denies: "we cannot promise", "I wish I could", "it would be wrong to". */
const DENIALS = words("not, never, no, nobody, none, nothing, neither, nor, cannot, without, rarely, seldom, hardly, scarcely, barely, rather than, instead of, avoid\\w*, refrain from, hold off, steer clear of, stay away from, resist, unable to, refuse to, refused, decline, declined, hesitate to, wary of, unfair to, unwise to, wrong to, wrong of (?:me|us) to, improper (?:of \\w+ )?to, foolish to, rash to, dishonest to, irresponsible to, premature to, misleading to, too early to, too soon to, far from, short of, (?:surpris\\w+|amazed|astonished|astounded)(?: \\w+){0,2} if (?:it|all|the|your|everything), (?:keep|kept) (?:it |them |the rug |that )?(?:out of|away from|off|well clear of), no longer, (?:would|should) (?:be )?(?:dearly )?(?:love|like|hate|glad|happy|pleased|delighted) to, i wish, we wish, wish (?:i|we) could, if only, would be (?:fibbing|lying|guessing|wrong|unfair|misleading|dishonest|foolish), (?:caution|counsel|advise|warn|recommend|urge|guard) (?:you )?(?:strongly )?against, fall outside, outside our, beyond our competence, doubt, doubts, doubtful");
/** What hedges. */
const HEDGES = words("prob, probs, probably, likely, unlikely, perhaps, maybe, (?<!not )(?<!cannot )possibly, possible, possibility, presumably, (?<!you )(?:(?<!\\b(?:in|since|early|late) )may|might|could), would hope, (?:we|i|would|can only) hope, (?:we|i) (?:do )?(?:think|believe|suspect|expect|assume|imagine|reckon|fancy|understand), (?:i|we) would (?:think|say|guess|suspect|expect|put(?! (?:\\w+ )?(?:money|name|house|shirt|reputation)\\b)), my guess, a guess, my hunch, hunch, guesswork, in (?:my|our) (?:view|opinion|experience), in all (?:likelihood|probability), seems?, appears?, appeared, looks? (?:to (?:me|us) )?(?:like(?! (?:brand[- ])?new\\b(?! (?:wool|silk|viscose|cotton|pile)\\b)| the day\\b| it (?:did|was)\\b)|as if|as though|to), suggests?, points? to, fits?(?! (?:for|as|all|like)), reminds?, usually, often, sometimes, ordinarily, typically, normally, as a rule, generally, frequently, occasionally, on occasion, in (?:most|some|many) cases, mostly, largely, some(?:thing|what)?, provisional(?:ly)?, preliminary, indicative, from photos it looks, by (?:your|the) (?:photos?|pictures?|account|description), as an estimate, estimated?, tends?, apt to, prone to, with (?:any )?luck, all being well, subject to, to be confirmed, fair chance, good chance, a chance, the chance (?:that|of), there is (?:a|some|always some) (?:small |slight |real )?(?:chance|risk|danger), there is (?:every )?(?:chance|risk|danger), should be able to, for all (?:i|we) know, as far as (?:i|we) can (?:see|tell), at best, if all goes well, reasonabl[ey], fairly, only (?:a )?(?:part|some|little|half|partly|partially), (?:a|in) part, partly, partially, rare, rarely");

/**
 * Words that take the edge off a clause. A denial, a hedge or a word of our doing it ourselves excuses what comes after it in the
 * clause; the others hold for the whole clause.
 */
const BEFORE: Readonly<Record<"negated" | "hedged", RegExp>> = { negated: either(DENIALS), hedged: either(HEDGES) };
const ANYWHERE: Readonly<Record<Exclude<Excuse, "negated" | "denied" | "hedged" | "disowned">, RegExp>> = {
  undecided: either(
    "whether", "if (?:it|the pile|the rug|this|they) (?:is|are|were|turns? out)(?! worth)", "whose fault", "can miss", "no (?:forecast|guide|promise|sign of what|guarantee)", "^how (?:long|much|many|far|well)", "hangs? on", "you may (?:decide|feel|want|wish|prefer|find|think|well)", "(?:(?:we|i) (?:cannot|could not|do not|would rather not)|(?:nobody|no one|anyone) can) (?:really |honestly )?(?:say|tell|know|judge|promise|guess)(?! you (?:from|that|now|here))", "if the test", "if (?:we|i|any(?:body|one)|some(?:body|one)|you|they|people) (?:promised?|says?|said|tells?|told|claim\\w*|are told|hears?)",
    "(?:any|some|no)(?:one|body) (?:who )?(?:tells?|told|says?|said|promis\\w+|claim\\w*|guarantee\\w*)", "once (?:it is |they are )?tested", "(?:when|once|after|until|till) (?:we|i|one of us|it|the rug|somebody|you) (?:have |has |had )?(?:been )?(?:seen?|inspect\\w*|tested|examined|looked?|handled|had a|had it|weighed|felt)", "until (?:then|(?:\\w+ ){0,5}(?:seen|tested|inspected|looked|examined|handled|been|know\\w*|results?|had|sees|looks|tests))", "not before", "(?<!\\bnot? )(?:has|have|needs?|want|like) to (?:see|look|test|inspect|check|handle|feel)", "before (?:it is firm|(?:we|i|anyone) (?:can|could|would|say|commit|quote|promise|decide))", "depends?", "depending", "ask(?:s|ed|ing)? (?:me |us )?(?:for|if|whether)", "only (?:your|the) (?:insurer|seller|court|judge)", "to be tested", "(?:once|when|until|if|unless) (?:a |the |our |any |these )?(?:\\w+ )?tests?", "after (?:a|the|any|we have|our) (?:\\w+ )?tests?", "unless", "before (?:we|i) can say",
    "only (?:an inspection|a test|a valuer)", "unlikely", "impossible", "hard to (?:say|tell|know)", "difficult to (?:say|tell|predict)", "remains to be seen", "out of the question", "too much to (?:hope|ask)", "more than (?:anyone|anybody|we|i) (?:can|could)", "promising too much",
    "(?:is|are) (?:a phrase|a word|a claim|not something|not one|something (?:i|we) would)", "lets? you", "would (?:be|have to be) (?:an? |only a |mere )?guess\\w*", "should you", "in the event", "(?<!\\b(?:receipt|label|years?|insured|told),? )or not(?: at all)?$", "and some(?:times)? not", "(?:run|runs|ran|ranged?|ranges|anything|anywhere|var(?:y|ies|ied)) from\\b.*\\bto\\b.*\\b(?:no|none|nothing|not|worse|hardly|still|as it came)",
    "(?:is|are|be) (?:for (?:them|him|her|the \\w+|your \\w+)|theirs|their business|their decision|up to (?:them|him|her|the \\w+|your \\w+))(?: (?:alone|only|to (?:say|decide|judge)))?$",
  ),
  softened: either(HEDGES),
  reported: either("you (?:wrote|told|said|say|mention(?:ed)?|describe|paid|used|ask(?:ed)?|note|report(?:ed)?|quote|were (?:told|sold))", "told (?:you|me|us|her|him|them)", "your (?:email|letter|message|note|form|answers?|card|receipt|label|seller|neighbour|neighbor|aunt|friend|mother)\\b.{0,40}\\b(?:says?|said|told|reads?|suggest\\w*|recommend\\w*|advice|tip|recipe|idea|advised)", "label (?:says|names|reads)", "seller (?:said|called)", "called it", "was sold as", "were sold", "by your account", "as you say", "is (?:your|his|her|their) (?:\\w+'s )?(?:\\w+ )?(?:opinion|view|belief|guess|words?)",
    "some people", "was used", "were used", "has been used", "the internet", "online tip", "(?:tip|recipe|advice|remark|suggestion|idea|request) (?:about|on|to|that|you)", "found online", "already (?:been )?(?:used|tried|put|applied|had)", "(?:used|tried|put|applied) (?:\\w+ ){1,3}already", "was put on", "note your"),
  ranged: /\b(?:between|from)\b.*\b(?:and|to)\b|[0-9] ?(?:–|-|to) ?[€£$]?[0-9]|\b(?:at least|at most|up to|no more than|less than|more than|about|around|roughly|approximately|or so|or more|ballpark|rough\w*|guide|estimate[ds]?|in the region of|somewhere|per square|a square|usual price)\b/u,
  ours: /\b(?:we|our (?:people|workshop|team|own)|this (?:office|firm|workshop)) (?:will|would|shall|use|can|do|work|clean|wash|never|always|have|test|ordinarily|usually)\b(?!.*\b(?:recommend|suggest|advise)\b)/u,
  warned: either(verbs("worsen, harm, damage, ruin, spoil, weaken, strip, eat, break, fray, felt, distort, disturb, destroy, attack, rot, scorch, loosen, frighten, worry, dissolve the, risk, mislead, avoid, resist, warn, hate, dread, caution, prevent, tempt, regret, discourage, drive, bond, yellow, discolour, discolor, spread, injure, (?<!open\\sa\\s)crack"),
    words("worse, (?:go|goes|went) wrong, set, sets, setting (?:the|in|it), permanent(?:ly)? (?:mark\\w*|stain\\w*|damage|change)?, fumes?, danger\\w*, hazard\\w*, poison\\w*, toxic, irritat\\w*, risky, risks?, wary, careful\\w*, against, last thing, wrong thing, a mistake, mistaken, inadvisable, unwise, irreversib\\w*, lasting, residues?, cannot, a no, no-no, cook\\w*, bad idea, enemy, (?:not|no) (?:\\w+ )?(?:idea|friend), away from it, well away, gives? off, (?:is|are) not (?:what|for|something|the thing), keep (?:both|them|it|all|any) (?:of (?:it|them) )?(?:well )?away, leave (?:\\w+ ){1,3}where (?:it is|they are), take the colou?r, takes the colou?r, unsuitable, too (?:harsh|strong|hot|rough|alkaline|risky), fragile, brittle, stiff, instead, rather, shrink\\w*, fade, fades, bleeds?, run, runs, move the, shift (?:\\w+ )?colou?rs?, (?:colou?r|dye) of, best left, (?:leave|keep|stays?|belongs?) (?:\\w+ ){0,4}(?:be|alone|in (?:its|the|a) (?:drawer|cupboard|cabinet|box|bottle|shed))")),
};

/** What takes back what stood before it, wherever in the sentence: "my father used to say so, and he was wrong". */
const DISOWNED = either("(?:was|were|am|been) (?:wrong|mistaken)(?! (?:to|with))", "are mistaken", "(?:is|are) (?:all )?(?:an? )?(?:myths?|old wives' tales?|nonsense|untrue)", "(?:is|are|was|would) not (?:be )?(?:quite |strictly |really )?(?:true|so)", "(?:learned|learnt|know|found) otherwise", "(?:cannot|could not|have not|no way of|unable to) check(?:ed|ing)?",
  "would not rely", "(?:neither|none of (?:it|them|this)|that|which) (?:is no|tells? (?:you )?(?:little|nothing)|as an?)", "neither as an?", "neither tells");

/** Before a catch: what it says is only supposed. */
const CONDITION = /\b(?:if|whether|unless|in case)(?: (?:the|your|its|any|an?|there (?:is|are|was|were)))? $/u;

/** Where a pattern caught something: from `start` to `end` of a clause of a sentence, all in plain words. */
export interface Catch { readonly sentence: string; readonly clause: string; readonly start: number; readonly end: number }

/** Whether an excuse holds for a catch. A warning holds for its whole sentence. */
export function excused(excuse: Excuse, { clause, start, end, sentence }: Catch): boolean {
  if (excuse === "disowned") return DISOWNED.test(sentence.slice(sentence.indexOf(clause) + end));
  if (excuse === "denied") return BEFORE.negated.test(clause.slice(0, start));
  if (excuse === "negated" || excuse === "hedged") return BEFORE[excuse].test(clause.slice(0, end));
  if (excuse === "undecided" && CONDITION.test(clause.slice(0, start))) return true;
  if (excuse === "ours") return ANYWHERE.ours.test(clause.slice(0, end));
  return ANYWHERE[excuse].test(excuse === "warned" ? sentence : clause);
}

/** For a pattern that denies by itself: a denial of somebody's saying so, before it. */
const NOT_SAID = /\b(?:cannot|could not|do not|does not|will not|would not|would never|nobody can|no one can|never|unable to|no \w+ (?:can|could)|hesitate to|wrong to|(?:like|love) to|wish) (?:\w+ ){0,3}?(?:say|promise|tell|guarantee|claim|think|mean|assure|pretend|be read|state|assume|conclude|rely)\b/u;
export const saysNotThat = (before: string): boolean => NOT_SAID.test(before);
