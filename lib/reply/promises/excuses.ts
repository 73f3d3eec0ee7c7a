import type { Excuse } from "./rule";

/**
 * Words that take the edge off a clause. A denial or a hedge excuses what comes after it in the clause; the others hold
 * for the whole clause.
 */
const BEFORE: Readonly<Record<"negated" | "hedged", RegExp>> = {
  negated: /\b(?:not|never|no|nobody|none|nothing|neither|nor|cannot|without|rarely|seldom|hardly|scarcely|rather than|instead of|avoid|refrain from|hold off|steer clear of|stay away from|resist|unable to|refuse to|hesitate to|wary of|unfair to|too early to|too soon to|far from|keep (?:it |them |the rug )?(?:out of|away from)|no longer)\b|n't\b/u,
  hedged: /\b(?:probably|likely|unlikely|perhaps|maybe|possibly|presumably|may|might|could|would hope|we hope|we (?:do )?(?:think|believe|suspect|expect|assume)|in our (?:view|opinion)|seems?|appears?|looks? (?:like|as if|to)|suggests?|points? to|fits?|usually|often|sometimes|as a rule|generally|in most cases|mostly|some(?:thing)?|provisional(?:ly)?|from photos it looks|as an estimate|estimated|tend|with (?:any )?luck|all being well)\b/u,
};
const ANYWHERE: Readonly<Record<"undecided" | "reported" | "ranged" | "ours", RegExp>> = {
  undecided: /\b(?:whether|if (?:it|the pile|the rug|this|they) (?:is|are|were|turns? out)|if the test|if (?:we|i|any(?:body|one)|some(?:body|one)) (?:promised|said|told you|claimed)|once (?:it is |they are )?tested|until (?:it is|they are|we have)|depends?|ask(?:s|ed|ing)? (?:me |us )?(?:for|if|whether)|to be tested|unless|before we can say|only (?:an inspection|a test|a valuer))\b/u,
  reported: /\b(?:you (?:wrote|told|said|mention(?:ed)?|describe|paid|used)|label (?:says|names|reads)|seller (?:said|called)|called it|was sold as|were sold|by your account|as you say|was used|were used)\b/u,
  ranged: /\b(?:between|from)\b.*\b(?:and|to)\b|[0-9] ?(?:–|-|to) ?[0-9]|\b(?:at least|at most|up to|no more than|less than|more than|about|around|roughly|or more|per square|a square|usual price)\b/u,
  ours: /\b(?:we|our (?:people|workshop|team)) (?:will|would|shall|use|can|do|work|clean|wash|never|always|have|test)\b(?!.*\b(?:recommend|suggest|advise)\b)/u,
};

/** Whether an excuse holds for a catch that ends at `end` of the clause. */
export function excused(excuse: Excuse, clause: string, end: number): boolean {
  if (excuse === "negated" || excuse === "hedged") {
    return BEFORE[excuse].test(clause.slice(0, end));
  }
  return ANYWHERE[excuse].test(clause);
}

/** For a pattern that denies by itself: a denial of somebody's saying so, before it. */
export const saysNotThat = (before: string): boolean => /\b(?:cannot|can't|could not|do not|don't|will not|would not|nobody can|no one can|never) (?:say|promise|tell|guarantee|claim|think|mean)\b/u.test(before);
