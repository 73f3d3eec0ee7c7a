import type { Assessment, Range } from "../../triage/assessment";
import { cutDownPrice } from "../cut-down-price";
import { AMOUNT_PHRASES } from "../phrases";
import type { Beyond } from "./beyond";
import { withFigures } from "./figures";
import { clausesOf } from "./sentences";

/** A stated amount may be off by so much of it, and at least by so much. *elicited* */
const SLACK = { share: 0.1, least: 10 } as const;

const MONEY = "(?:euros?|pounds?|dollars?|francs?|quid)\\b";
const AMOUNTS = new RegExp(`(?:€|£|\\$|eur|gbp|usd|chf) ?([0-9][0-9,]*)|([0-9][0-9,]*) ?${MONEY}`, "gu");
const amountsIn = (plain: string): number[] => [...withFigures(plain, MONEY).matchAll(AMOUNTS)].map((m) => Number((m[1] ?? m[2] ?? "").replace(/,/gu, "")));

const NEW_ONE = /\b(?:new (?:one|rug|carpet)|replac\w+)\b[^.]*\b(?:costs?|price\w*|is|be|for|around|about)\b/u;
/** What a new one costs, said otherwise than the assessment has it. */
export function newOneBeyond(plain: string, { money }: Assessment): Beyond[] {
  const said = NEW_ONE.test(plain) ? amountsIn(plain) : [];
  const price = money?.replace;
  if (said.length === 0 || !money || !price || (Math.max(...said) <= price.high * (1 + SLACK.share) && Math.min(...said) >= price.low * (1 - SLACK.share))) return [];
  return [{ rule: "number", why: "This is not what the assessment gives for a new one.", suggestion: `The range is ${AMOUNT_PHRASES.replace(price, money.currency)}.` }];
}

const CLEANING = "(?:clean(?:ing|ed)?|wash(?:ing|ed)?|bath(?:ing|ed)?|shampoo(?:ing|ed)?)";
const CUTTING = "(?:cut(?:ting)? (?:[a-z0-9-]+ ){0,5}?(?:down|off)|shorten(?:ing)?)";
/** Where a price is told for some work. `named`: an expression. */
const pricedAs = (named: string): RegExp => new RegExp(`\\b${named}\\b.*\\b(?:costs?|comes? to|sets? you back|is|be|for|charges?|pay|asks?)\\b|\\b(?:costs?|price|charges?|pay|bill|asks?|fee)\\b.*\\b${named}\\b`, "u");
const CLEANS = pricedAs(CLEANING), CUTS = pricedAs(CUTTING);
/** What is done beside, what a square metre costs, what somebody else paid; denied, asked, or left open. */
const OTHER_PRICE = /\b(?:inspections?|tests?|testing|visit|(?:collect|deliver|fetch)\w*(?! included)|laborator\w+|reports?|deposit|paid|last|a (?:square|metre|week)|per|an hour|replac\w+|new (?:one|rug|carpet)|worth|insur\w+)\b/u;
const HELD_OFF = /\b(?:not(?! more)|never|no(?! more)|nobody|cannot|more than (?:we|it|the|your|anyone)|whether|if|unless|you (?:asked|wrote|told|said))\b/u;
const TWO_ENDS = /[0-9] ?(?:–|-|to|and|or) ?[€£$]?[0-9]/u;

/** Only the lower end is told. */
const AT_LEAST = /\b(?:at least|upwards|no less than|(?<!\b(?:no|not) )more than|from [€£$]?[0-9]+\b(?! ?(?:–|-|to\b)))/u;
/** One figure, or the highest of two, has to reach so far into the range: its lowest end alone is heard as the price. *elicited* */
const LEAST_REACH = 0.25;

/** One price, or a highest one, for work: below the assessment's or at its lowest end, or where it gives none and nobody has had the rug in hand. */
export function priceBeyond(plain: string, assessment: Assessment, isInspected: boolean): Beyond[] {
  const { money } = assessment;
  const clauses = clausesOf(plain).filter((c) => amountsIn(c).length > 0 && !OTHER_PRICE.test(c) && !HELD_OFF.test(c) && !AT_LEAST.test(c));
  const told = [...clauses.filter((c) => CLEANS.test(c)).map((c) => [c, money?.clean ?? null] as const), ...clauses.filter((c) => CUTS.test(c) && !CLEANS.test(c)).map((c) => [c, cutDownPrice(assessment)] as const)];
  return told.flatMap(([clause, range]) => (range && money ? belowRange(Math.max(...amountsIn(clause)), range, money.currency, isInspected) : withoutRange(clause, isInspected))).slice(0, 1);
}

const withoutRange = (clause: string, isInspected: boolean): Beyond[] =>
  isInspected || TWO_ENDS.test(clause) ? [] : [{ rule: "number", why: "This is one price, and the assessment gives none for this rug.", suggestion: "Give the range, with what it hangs on, or leave the price until it has been inspected." }];

function belowRange(most: number, range: Range, currency: string, isInspected: boolean): Beyond[] {
  const { low, high } = range;
  const slack = Math.max(SLACK.least, SLACK.share * low);
  const isBelow = most < low - slack || (most === 0 && high >= 1);
  if (!isBelow && (isInspected || most >= low + LEAST_REACH * (high - low) - slack)) return [];
  return [{ rule: "number", why: isBelow ? "This price is below the workshop's own." : "This is the lowest end of what it may cost, told as if it were the price.", suggestion: `The range is ${AMOUNT_PHRASES.clean(range, currency)}.` }];
}
