import { METHODS, type MethodId } from "../../trade/care";
import type { Assessment, Range } from "../../triage/assessment";
import { harmFigures, improvementFigures } from "../phrases";
import { chancesBeyond, fibreIn } from "./against-chances";
import { sizeBeyond } from "./against-size";
import { worthBeyond } from "./against-worth";
import type { Beyond } from "./beyond";
import { againstCautions } from "./cautions";
import { clausesOf, plainOf } from "./sentences";

/** Slack of a stated range, for rounding: per cent, and shares of a number of years or of money, with a least slack for each. *elicited* */
const SLACK = { percent: 6, years: 0.25, leastYears: 0.5, money: 0.1, leastMoney: 10 } as const;

/** Everything in one sentence that the assessment does not carry. */
export function beyondAssessment(sentence: string, assessment: Assessment): Beyond[] {
  const plain = plainOf(sentence);
  return [
    ...methodsRuledOut(plain, assessment), ...chancesBeyond(plain, assessment), ...improvementBeyond(plain, assessment), ...yearsBeyond(plain, assessment),
    ...harmBelow(plain, assessment), ...priceBelow(plain, assessment), ...newOneBeyond(plain, assessment), ...sizeBeyond(sentence, assessment), ...worthBeyond(plain, assessment),
    ...againstCautions(plain, assessment),
  ];
}

/** What we say that we would do, or could be done, of our own will; what stands after a "not" is no offer. */
const OFFERED = /\b(?:we|i) (?:(?:also|then|simply|just|usually|happily) )?(?:would|will|can|could|shall|might|are going to|plan to|propose to|recommend|suggest)(?: \w+){0,4}? (?:wash\w*|clean\w*|steam\w*|soak\w*|bath\w*|rins\w*|immers\w*|shampoo\w*|treat\w*|use|using|try|give it)\b|\b(?:it|rug|pile) (?:can|could|should|will|would|may) (?:\w+ )?be (?:washed|steamed|soaked|bathed|rinsed|immersed|shampooed|cleaned)\b/u;
const NO_OFFER = /\b(?:not|never|no|nor|neither|cannot|without|rather than|instead of|refuse|avoid|whether|if|unless|only where|burst|ruin|harm|dry clean(?:er|ers) who)\b/u;
/** Words by which a letter names a way of cleaning. */
const NAMES: readonly (readonly [MethodId, RegExp])[] = [
  ["immersion-wash", /\b(?:wash(?:ed|es|ing)?|bath(?:ed|es|ing)?|immers\w+|submerg\w+|soak(?:ed|s|ing)?|rinse[ds]?|rinsing)\b/u],
  ["wet-hand-clean", /\b(?:steam\w*|shampoo\w*|hot water|wet clean\w*|(?:clean|treat)\w*\b[^.]*\bwith (?:\w+ )?water|water and)\b/u],
  ["solvent-dry", /\b(?:solvents?|dry clean\w*|white spirit)\b/u],
];

/** A way of cleaning that is offered although the assessment rules it out. */
function methodsRuledOut(plain: string, { methods }: Assessment): Beyond[] {
  const named = clausesOf(plain).filter((clause) => OFFERED.test(clause) && !NO_OFFER.test(clause)).flatMap((clause) => NAMES.filter(([, re]) => re.test(clause)).map(([id]) => id));
  const ruledOut = methods.find((m) => m.verdict === "ruled-out" && named.includes(m.method));
  if (!ruledOut) return [];
  const left = methods.filter((m) => m.verdict !== "ruled-out" && m.method !== "none").map((m) => METHODS[m.method].name);
  return [{ rule: "harm", why: `The assessment rules this out: ${METHODS[ruledOut.method].name}. ${ruledOut.why}`, suggestion: left.length > 0 ? `What the assessment leaves, tested first: ${left.join(", ")}.` : "Offer no cleaning." }];
}

const IMPROVES = /\b(?:improv\w*|comes? back|brings? back|bring \w+ back|gone|better|recover\w*|lighten\w*|fade[sd]?|may go|take[s]? out|of the (?:mark|stain|browning|trouble|colour))\b/u;
const numbersBefore = (plain: string, unit: string): number[] =>
  [...plain.matchAll(new RegExp(`([0-9]+(?:[.,][0-9]+)?)(½)?(?= ?(?:(?:–|-|to|and) ?[0-9]+(?:[.,][0-9]+)?½? ?)?(?:${unit}))`, "gu"))].map((m) => Number((m[1] as string).replace(",", ".")) + (m[2] ? 0.5 : 0));

/** Shares in words, each as the least per cent that it may mean. *elicited* */
const SHARES: readonly (readonly [RegExp, number])[] = [
  [/\b(?:nearly|almost|practically) (?:all|everything)\b/u, 90], [/\bnine tenths\b/u, 90], [/\bthree quarters\b/u, 75], [/\btwo thirds\b/u, 66], [/\b(?:most|the better part|the bulk) of (?:it|the|this|that|your)\b/u, 50], [/\bhalf (?:of )?(?:it|the|this|that|your)\b/u, 45],
  [/^(?!.*(?:%|\b(?:part|partly|some|only|half|most|thirds?|quarters?|tenths?|fifths?|twentieths?|per ?cent)\b)).*\b(?:mark|stain|spot|ring|browning|smell|it) will (?:probably|likely|very likely|most likely) (?:go|come out|disappear|vanish|lift out)\b/u, 95],
];
/** A share in words that promises more than the upper end. */
const sharesBeyond = (plain: string, high: number): boolean => SHARES.some(([re, least]) => re.test(plain) && least > high);

const outside = (said: readonly number[], low: number, high: number) => said.length > 0 && (Math.max(...said) > high || Math.min(...said) > Math.max(low, 0) + (high - low) * MOST_NARROWED);
/** The lower end of a stated range may stand so far into the range of the assessment. *elicited* */
const MOST_NARROWED = 0.25;

function improvementBeyond(plain: string, { improvement }: Assessment): Beyond[] {
  const inWords = improvement !== null && sharesBeyond(plain, improvement.high + SLACK.percent);
  if (!(inWords || IMPROVES.test(plain)) || /\bchance\b|\bin 100\b|\bnot\b/u.test(plain)) return [];
  const said = numbersBefore(plain, "%|per ?cent");
  if (said.length === 0 && !inWords) return [];
  if (!improvement) return [{ rule: "number", why: "The assessment gives no improvement for this rug.", suggestion: "Leave the number out." }];
  if (!inWords && !outside(said, improvement.low + SLACK.percent, improvement.high + SLACK.percent)) return [];
  return [{ rule: "number", why: "This promises more improvement than the assessment.", suggestion: `The range is ${improvementFigures(improvement)}.` }];
}

/** A stated chance of harm may be rounded down so far: to two thirds, or by three in a hundred. *elicited* */
const HARM_SLACK = { share: 2 / 3, least: 0.03 } as const;
const HARMS = /\b(?:makes? it worse|worse|harms? (?:it|the rug)|damages? (?:it|the rug))\b/u;
function harmBelow(plain: string, { worse }: Assessment): Beyond[] {
  if (worse === null || !HARMS.test(plain) || !/\b(?:chance|risk|in 100|in a hundred|per ?cent)\b|%/u.test(plain)) return [];
  const said = [...plain.matchAll(/([0-9]+(?:[.,][0-9]+)?) ?(?:%|per ?cent|in (?:100|a hundred))/gu)].map((m) => Number((m[1] as string).replace(",", ".")) / 100);
  if (said.length === 0 || Math.max(...said) >= Math.min(worse * HARM_SLACK.share, worse - HARM_SLACK.least)) return [];
  return [{ rule: "number", why: "This makes the chance of harm smaller than the assessment does.", suggestion: `The range is ${harmFigures(worse)}.` }];
}

const LIFE = /\b(?:last|lasts|left|life|live|serve|serves|good for|has|another|keep)\b/u;
const AT_MOST = /\b(?:up to|at (?:the )?most|no more than|no longer than)\b/u;
/** Years in words, as figures. */
const IN_WORDS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, twelve: 12, fifteen: 15, twenty: 20, thirty: 30, forty: 40, fifty: 50 };
const inYears = (months: string): string => (Number(months) / 12).toFixed(2);
const withFigures = (plain: string): string => plain.replace(/\bhalf a year\b/gu, "0.5 years").replace(/\b(?:a few|some|several) months\b/gu, "0.25 years").replace(/\b([0-9]+)(?: ?(?:–|-|to|and) ?([0-9]+))? months?\b/gu, (_, from: string, to: string = from) => `${inYears(from)} to ${inYears(to)} years`).replace(/\b[a-z]+(?= (?:(?:and|to|or) (?:[a-z]+|[0-9]+) )?(?:more |good |further )?years?\b)/gu, (word) => String(IN_WORDS[word] ?? word));
function yearsBeyond(plain: string, { lifeYears }: Assessment): Beyond[] {
  if (!LIFE.test(plain) || /\bold\b|\bago\b|\bbought\b|\baged?\b|\bdoubt\b|\bmore than\b/u.test(plain)) return [];
  const said = numbersBefore(withFigures(plain), "(?:more |good |further )?years?");
  if (said.length === 0) return [];
  if (!lifeYears) return [{ rule: "number", why: "The assessment gives no life for this rug.", suggestion: "Leave the number out: how long an antique lasts hangs on how it is kept." }];
  const slack = Math.max(SLACK.leastYears, SLACK.years * lifeYears.high);
  const isTooLong = Math.max(...said) > lifeYears.high + slack;
  if (!isTooLong && (AT_MOST.test(plain) || !outside(said, lifeYears.low + slack, lifeYears.high + slack))) return [];
  return [{ rule: "number", why: isTooLong ? "This promises a longer life than the assessment." : "This leaves out the lower end of what the assessment gives.", suggestion: `The range is ${ranged(lifeYears)} years in ordinary use.` }];
}

const amountsIn = (plain: string): number[] =>
  [...plain.matchAll(/(?:€|£|\$|eur|gbp|usd|chf) ?([0-9][0-9,]*)|([0-9][0-9,]*) ?(?:euros?|pounds?|dollars?|francs?)/gu)].map((m) => Number((m[1] ?? m[2] ?? "").replace(/,/g, "")));

const NEW_ONE = /\b(?:new (?:one|rug|carpet)|replac\w+)\b[^.]*\b(?:costs?|price\w*|is|be|for|around|about)\b/u;
/** What a new one costs, said otherwise than the assessment has it. */
function newOneBeyond(plain: string, { money }: Assessment): Beyond[] {
  const said = NEW_ONE.test(plain) ? amountsIn(plain) : [];
  const price = money?.replace;
  if (said.length === 0 || !money || !price || (Math.max(...said) <= price.high * (1 + SLACK.money) && Math.min(...said) >= price.low * (1 - SLACK.money))) return [];
  return [{ rule: "number", why: "This is not what the assessment gives for a new one.", suggestion: `The range is ${ranged(price)} ${money.currency}.` }];
}

const CLEANS = /\bclean(?:ing|ed)?\b/u;
function priceBelow(plain: string, { money }: Assessment): Beyond[] {
  if (!CLEANS.test(plain) || !/\bcosts?\b/u.test(plain) || !money?.clean) return [];
  const said = amountsIn(plain);
  if (said.length === 0 || Math.max(...said) >= money.clean.low - Math.max(SLACK.leastMoney, SLACK.money * money.clean.low)) return [];
  return [{ rule: "number", why: "This price is below the workshop's own.", suggestion: `The range is ${ranged(money.clean)} ${money.currency}.` }];
}

const ranged = ({ low, high }: Range) => `${Number(low.toPrecision(2))} to ${Number(high.toPrecision(2))}`;

/** From this chance on, and with a bench test or a laboratory behind it, a fibre may be named without a hedge. *elicited* */
const NAMED_FROM = 0.95;

/** True where the sentence names the fibre that a test has settled. */
export function isTested(sentence: string, { fibres, findings }: Assessment): boolean {
  const fibre = fibreIn(plainOf(sentence))?.fibre ?? null;
  const chance = fibres.find((f) => f.fibre === fibre)?.probability ?? 0;
  return chance >= NAMED_FROM && findings.some((f) => f.strength === "bench" || f.strength === "laboratory");
}
