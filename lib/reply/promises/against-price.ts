import type { Assessment } from "../../triage/assessment";
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
/** A price for cleaning it. */
const PRICED = new RegExp(`\\b${CLEANING}\\b.*\\b(?:costs?|comes? to|sets? you back|is|be|for)\\b|\\b(?:costs?|price|charges?|pay|bill|asks?|fee)\\b.*\\b${CLEANING}\\b|\\b${CLEANING}\\b.*\\b(?:charges?|pay|asks?)\\b`, "u");
/** What is done beside, what a square metre costs, what somebody else paid; denied, asked, or left open. */
const OTHER_PRICE = /\b(?:inspections?|tests?|testing|visit|(?:collect|deliver|fetch)\w*(?! included)|laborator\w+|reports?|deposit|paid|last|a (?:square|metre|week)|per|an hour|replac\w+|new (?:one|rug|carpet)|worth|insur\w+)\b/u;
const HELD_OFF = /\b(?:not(?! more)|never|no(?! more)|nobody|cannot|more than (?:we|it|the|your|anyone)|whether|if|unless|you (?:asked|wrote|told|said))\b/u;
const TWO_ENDS = /[0-9] ?(?:–|-|to|and|or) ?[€£$]?[0-9]/u;

/** One price, or a highest one, for cleaning: below the assessment's, or where it gives none and nobody has had the rug in hand. */
export function priceBeyond(plain: string, { money }: Assessment, isInspected: boolean): Beyond[] {
  const clause = clausesOf(plain).find((c) => PRICED.test(c) && amountsIn(c).length > 0 && !OTHER_PRICE.test(c) && !HELD_OFF.test(c));
  if (clause === undefined) return [];
  if (!money?.clean) return isInspected || TWO_ENDS.test(clause) ? [] : [{ rule: "number", why: "This is one price, and the assessment gives none for this rug.", suggestion: "Give the range, with what it hangs on, or leave the price until it has been inspected." }];
  const most = Math.max(...amountsIn(clause));
  if ((most > 0 || money.clean.high < 1) && most >= money.clean.low - Math.max(SLACK.least, SLACK.share * money.clean.low)) return [];
  return [{ rule: "number", why: "This price is below the workshop's own.", suggestion: `The range is ${AMOUNT_PHRASES.clean(money.clean, money.currency)}.` }];
}
