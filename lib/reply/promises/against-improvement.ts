import type { Assessment } from "../../triage/assessment";
import { improvementFigures } from "../phrases";
import type { Beyond } from "./beyond";
import { AT_MOST, figuresIn, outside, withFigures } from "./figures";
import { clausesOf } from "./sentences";
import { PER_CENT, shareThatGoes } from "./shares";

/** A stated per cent may be rounded so far. *elicited* */
const SLACK = 6;

const IMPROVES = /\b(?:improv\w*|comes? back|brings? back|bring \w+ back|gone|better|recover\w*|lighten\w*|fade[sd]?|may go|take[s]? out|of the (?:mark|stain|browning|trouble|colour))\b/u;
const goes = (share: string): RegExp => new RegExp(shareThatGoes(share), "u");
const NAMES_PER_CENT = new RegExp(PER_CENT, "u");
const PER_CENT_GOES = goes(`[0-9]+ ?${PER_CENT}`);

/** Shares with a name, each with the least per cent that it may mean. *elicited* */
const FRACTIONS: readonly (readonly [RegExp, number])[] = ([
  ["nine tenths", 90], ["four fifths", 80], ["three quarters", 75], ["two thirds", 66], ["three fifths", 60], ["(?:(?:a (?:good |full )?|one )?half)", 45], ["two fifths", 40],
  ["(?:a (?:good |full )?|one )third", 33], ["(?:a (?:good |full )?|one )quarter", 25], ["(?:a (?:good |full )?|one )fifth", 20], ["(?:a (?:good |full )?|one )tenth", 10],
] as const).map(([share, least]) => [goes(share), least]);
/** The same of what names no figure. *elicited* */
const WITHOUT_FIGURE: readonly (readonly [RegExp, number])[] = [
  [/\b(?:nearly|almost|practically) (?:all|everything)\b/u, 90], [/\b(?:most|the better part|the bulk) of (?:it|the|this|that|your)\b/u, 50],
  [/^(?!.*(?:%|\b(?:part|partly|some|only|half|most|thirds?|quarters?|tenths?|fifths?|twentieths?|per ?cent)\b)).*\b(?:mark|stain|spot|ring|browning|smell|it) will (?:probably|likely|very likely|most likely) (?:go|come out|disappear|vanish|lift out)\b/u, 95],
];
const leastOf = (shares: readonly (readonly [RegExp, number])[], clause: string): number[] => shares.filter(([re]) => re.test(clause)).map(([, least]) => least);

/** Denied, doubted, or somebody else's. */
const HELD_OFF = /\bnot\b(?! (?:all|more|everything|the whole)\b)|\b(?:never|no(?! more)|nobody|nothing|hardly|scarcely|barely|unlikely|doubt\w*|cannot|neither|whether|rather than|instead of|you (?:asked|wrote|told|said|hope[ds]?|were told))\b/u;

/** The per cent that a clause says of an improvement. */
function percentsIn(clause: string): number[] {
  if (!NAMES_PER_CENT.test(clause)) return [];
  const plain = withFigures(clause, PER_CENT);
  return IMPROVES.test(plain) || PER_CENT_GOES.test(plain) ? figuresIn(plain, PER_CENT) : [];
}

/** What a clause says of how much of the mark goes, beyond the assessment. */
function clauseBeyond(clause: string, { improvement }: Assessment): Beyond[] {
  const percents = percentsIn(clause);
  const fractions = leastOf(FRACTIONS, clause);
  if (!improvement) return percents.length + fractions.length === 0 ? [] : [{ rule: "number", why: "The assessment gives no improvement for this rug.", suggestion: "Leave the number out." }];
  const [low, high] = [improvement.low + SLACK, improvement.high + SLACK];
  const isWithin = AT_MOST.test(clause) ? percents.every((said) => said <= high) : !outside(percents, low, high);
  if (isWithin && [...fractions, ...leastOf(WITHOUT_FIGURE, clause)].every((least) => least <= high)) return [];
  return [{ rule: "number", why: "This promises more improvement than the assessment.", suggestion: `The range is ${improvementFigures(improvement)}.` }];
}

/** More of the mark said to go than the assessment gives, in per cent, as a share or in words. */
export function improvementBeyond(plain: string, assessment: Assessment): Beyond[] {
  if (/\bchance\b|\bin 100\b/u.test(plain)) return [];
  return clausesOf(plain).filter((clause) => !HELD_OFF.test(clause)).flatMap((clause) => clauseBeyond(clause, assessment)).slice(0, 1);
}
