import { METHODS, type MethodId } from "../../trade/care";
import type { Assessment } from "../../triage/assessment";
import { harmFigures, lifePhrase } from "../phrases";
import { chancesBeyond, fibreIn } from "./against-chances";
import { improvementBeyond } from "./against-improvement";
import { newOneBeyond, priceBeyond } from "./against-price";
import { sizeBeyond } from "./against-size";
import { worthBeyond } from "./against-worth";
import type { Beyond } from "./beyond";
import { againstCautions } from "./cautions";
import { AT_MOST, figuresIn, outside, ratesIn, withFigures } from "./figures";
import { clausesOf, plainOf } from "./sentences";

/** Slack of a stated number of years, for rounding: a share of the upper end, and the least. *elicited* */
const SLACK = { years: 0.25, leastYears: 0.5 } as const;

/** Everything in one sentence that the assessment does not carry. `isInspected`: a named person has had the rug in hand. */
export function beyondAssessment(sentence: string, assessment: Assessment, isInspected: boolean): Beyond[] {
  const plain = plainOf(sentence);
  return [
    ...methodsRuledOut(plain, assessment), ...chancesBeyond(plain, assessment), ...improvementBeyond(plain, assessment), ...yearsBeyond(plain, assessment),
    ...harmBelow(plain, assessment), ...priceBeyond(plain, assessment, isInspected), ...newOneBeyond(plain, assessment), ...sizeBeyond(sentence, assessment), ...worthBeyond(plain, assessment),
    ...againstCautions(plain, assessment),
  ];
}

/** What we say that we would do, or could be done, of our own will; what stands after a "not" is no offer. */
const OFFERED = /\b(?:we|i) (?:(?:also|then|simply|just|usually|happily) )?(?:would|will|can|could|shall|might|are going to|plan to|propose to|recommend|suggest)(?: \w+){0,4}? (?:wash\w*|clean\w*|steam\w*|soak\w*|bath\w*|rins\w*|immers\w*|shampoo\w*|treat\w*|use|using|try|give it)\b|\b(?:it|rug|pile) (?:can|could|should|will|would|may) (?:\w+ )?be (?:washed|steamed|soaked|bathed|rinsed|immersed|shampooed|cleaned)\b|^(?:an? |the )?(?:dry[- ]?clean(?:ing)?|(?:solvent |wet |hand )?cleaning|wash(?:ing)?|bath|steaming)\b(?: \w+){0,5} (?:may|might|could|can|would|should)(?: \w+)? help\b/u;
const NO_OFFER = /\b(?:not|never|no|nor|neither|cannot|without|rather than|instead of|refuse|avoid|whether|if|unless|only where|burst|ruin|harm|dry clean(?:er|ers) who)\b/u;
/** Words by which a letter names a way of cleaning. */
const NAMES: readonly (readonly [MethodId, RegExp])[] = [
  ["immersion-wash", /\b(?:wash(?:ed|es|ing)?|bath(?:ed|es|ing)?|immers\w+|submerg\w+|soak(?:ed|s|ing)?|rinse[ds]?|rinsing)\b/u],
  ["wet-hand-clean", /\b(?:steam\w*|shampoo\w*|hot water|wet clean\w*|(?:clean|treat)\w*\b[^.]*\bwith (?:\w+ )?water|water and)\b/u],
  ["solvent-dry", /\b(?:solvents?|dry[- ]?clean\w*|white spirit)\b/u],
];

/** A way of cleaning that is offered although the assessment rules it out. */
function methodsRuledOut(plain: string, { methods }: Assessment): Beyond[] {
  const named = clausesOf(plain).filter((clause) => OFFERED.test(clause) && !NO_OFFER.test(clause)).flatMap((clause) => NAMES.filter(([, re]) => re.test(clause)).map(([id]) => id));
  const ruledOut = methods.find((m) => m.verdict === "ruled-out" && named.includes(m.method));
  if (!ruledOut) return [];
  const left = methods.filter((m) => m.verdict !== "ruled-out" && m.method !== "none").map((m) => METHODS[m.method].name);
  return [{ rule: "harm", why: `The assessment rules this out: ${METHODS[ruledOut.method].name}. ${ruledOut.why}`, suggestion: left.length > 0 ? `What the assessment leaves, tested first: ${left.join(", ")}.` : "Offer no cleaning." }];
}

/** A stated chance of harm may be rounded down so far: to two thirds, or by three in a hundred. *elicited* */
const HARM_SLACK = { share: 2 / 3, least: 0.03 } as const;
const HARMS = /\b(?:worse|harms?|harmed|damages? (?:it|the rug)|damaged)\b/u;
/** Somebody else's figure, one denied or left open, and one that is only a lowest. */
const NO_CHANCE = /\b(?:you (?:wrote|told|said|asked)|nobody|no one|cannot|never|not (?!more)|whether|if|unless|(?<!\b(?:no|not) )(?:more|greater|higher) than|at least|or more)\b/u;
function harmBelow(plain: string, { worse }: Assessment): Beyond[] {
  if (worse === null || !HARMS.test(plain) || NO_CHANCE.test(plain)) return [];
  const said = ratesIn(plain);
  if (said.length === 0 || Math.max(...said) >= Math.min(worse * HARM_SLACK.share, worse - HARM_SLACK.least)) return [];
  return [{ rule: "number", why: "This makes the chance of harm smaller than the assessment does.", suggestion: `The range is ${harmFigures(worse)}.` }];
}

const LIFE = /\b(?:last|lasts|left|life|live|serve|serves|good for|has|another|keep)\b/u;
const inYears = (months: string): string => (Number(months) / 12).toFixed(2);
/** Months and years in words as figures of years. */
const inFigures = (plain: string): string => withFigures(plain.replace(/\bhalf a year\b/gu, "0.5 years").replace(/\b(?:a few|some|several) months\b/gu, "0.25 years").replace(/\b([0-9]+)(?: ?(?:–|-|to|and) ?([0-9]+))? months?\b/gu, (_, from: string, to: string = from) => `${inYears(from)} to ${inYears(to)} years`), "(?:more |good |further )?years?\\b");
function yearsBeyond(plain: string, { lifeYears }: Assessment): Beyond[] {
  if (!LIFE.test(plain) || /\bold\b|\bago\b|\bbought\b|\baged?\b|\bdoubt\b|\bmore than\b/u.test(plain)) return [];
  const said = figuresIn(inFigures(plain), "(?:more |good |further )?years?");
  if (said.length === 0) return [];
  if (!lifeYears) return [{ rule: "number", why: "The assessment gives no life for this rug.", suggestion: "Leave the number out: how long an antique lasts hangs on how it is kept." }];
  const slack = Math.max(SLACK.leastYears, SLACK.years * lifeYears.high);
  const isTooLong = Math.max(...said) > lifeYears.high + slack;
  if (!isTooLong && (AT_MOST.test(plain) || !outside(said, lifeYears.low + slack, lifeYears.high + slack))) return [];
  return [{ rule: "number", why: isTooLong ? "This promises a longer life than the assessment." : "This leaves out the lower end of what the assessment gives.", suggestion: `It is ${lifePhrase(lifeYears)} in ordinary use.` }];
}

/** From this chance on, and with a bench test or a laboratory behind it, a fibre may be named without a hedge. *elicited* */
const NAMED_FROM = 0.95;

/** True where the sentence names the fibre that a test has settled. */
export function isTested(sentence: string, { fibres, findings }: Assessment): boolean {
  const fibre = fibreIn(plainOf(sentence))?.fibre ?? null;
  const chance = fibres.find((f) => f.fibre === fibre)?.probability ?? 0;
  return chance >= NAMED_FROM && findings.some((f) => f.strength === "bench" || f.strength === "laboratory");
}
