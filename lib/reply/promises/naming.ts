import type { Pattern, Rule, RuleId, Telling } from "./rule";
import { expression } from "./vocabulary";

/** A pattern that caught a sentence, and the rule it stands in. */
export interface Caught { readonly rule: Rule; readonly pattern: Pattern }

/** What a sentence speaks of, for a pattern that shows only that it is sure: the first that fits, the narrower before the wider. Data, elicited. */
const SPEAKS_OF: readonly (readonly [RuleId, () => RegExp])[] = [
  ["cover", expression("\\b(?:insurers?|insurance|policy|underwriters?|assessors?|(?:loss )?adjusters?|tribunal|court|judge|ombudsman|magistrate|the law|legally|by law|small claims|trading standards|liable)\\b")],
  ["blame", expression("\\b(?:dealer|seller|shop|showroom|cleaners?|fitters?|movers?|firm|housekeeper|hotel|maid|(?:mr|mrs|ms) \\w+|some(?:body|one)|whoever)\\b.*\\b(?:MISDEED|lied|lie|knew|known|sold you|used|did this|done this|put|told you)\\b|\\bdishonest\\b|\\b(?:ought|has|have) to pay\\b")],
  ["number", expression("\\bAMOUNT|(?<!\\b(?:100|hundred) ?)(?:%|\\bper ?cent\\b)|\\b(?:NUMBER|several|another|many) (?:more |good |odd )?(?:years?|winters?|generations?)\\b(?! (?:at|in|on|with|behind) (?:this|the|my|our)\\b)|(?<!\\bthan .*)\\b(?:decades?|half (?:a )?century|grandchildren|generations?|rest of your life|lifetime)\\b|\\bNUMBER (?:and a half )?grand\\b")],
  ["result", expression("\\b(?:MUST|COMES|RESTORE|PERFECT|FORMER|gone|out|back|off|(?:as|like|brand)[- ]new|the day|result|success\\w*|satisf\\w+|save|saved|fix\\w*|job|done|clean\\w*|better|looks? (?:like|as)|looking)\\b")],
  ["certainty", expression("\\b(?:FIBRE|ORIGIN|caused|(?:made|woven|knotted|dyed) (?:of|from|in|by))\\b|\\bCAUSE\\b(?: \\w+){0,3} did\\b|\\b(?:is|means) (?:an? |the |old )?CAUSE\\b")],
  ["safety", expression("\\b(?:safe|harm\\w*|hurt|risk\\w*|danger\\w*|moths?|mould|baby|child|children|kids|sound)\\b|\\b(?:dyes?|colou?rs?|reds?|blues?|greens?)\\b.*\\b(?:stay\\w*|run\\w*|hold\\w*|bleed\\w*|fad\\w+)\\b|\\btouch\\w* the dye")],
  ["result", expression("\\b(?:TROUBLE|colou?rs?)\\b")],
];

/** The rule that tells best what vague patterns caught; none where what the sentence speaks of is not clear. A product is what is wrong wherever it stands, but in a tale of others. */
function speaksOf(caught: readonly Caught[], plain: string): RuleId {
  const [topic] = SPEAKS_OF.find(([, says]) => says().test(plain)) ?? ["sureness" as const];
  const namesProduct = caught.some(({ rule }) => rule.id === "harm");
  return namesProduct && topic !== "cover" && topic !== "blame" ? "harm" : topic;
}

/**
 * By which rules a sentence is told that was caught by these patterns: those that know what it says; where none does, what it
 * speaks of; and else only that it is too sure.
 */
export function namesOf(caught: readonly Caught[], plain: string): ReadonlySet<RuleId> {
  const clear = caught.filter(({ pattern }) => pattern.vague !== true);
  if (clear.length > 0 || caught.length === 0) return new Set(clear.map(({ rule }) => rule.id));
  return new Set([speaksOf(caught, plain)]);
}

/** How a rule tells what these patterns caught: in its own words, unless all of them that stand in it and know what the sentence says have others. */
export function tellingOf(rule: Rule, caught: readonly Caught[]): Telling {
  const told = caught.filter((c) => c.rule === rule && c.pattern.vague !== true).map(({ pattern }) => pattern.tells);
  const { why, advise, instead } = told.length > 0 && told.every((t) => t !== undefined) ? (told[0] ?? rule) : rule;
  return { why, advise, instead };
}
