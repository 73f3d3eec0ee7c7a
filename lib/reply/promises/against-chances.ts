import type { MechanismId } from "../../trade/damage";
import { FIBRES, shortNames, type FibreId } from "../../trade/fibres";
import type { Assessment } from "../../triage/assessment";
import { likelihood } from "../phrases";
import { VISCOSE_LIKE } from "../viscose-like";
import type { Beyond } from "./beyond";
import { clausesOf } from "./sentences";
import { expression } from "./vocabulary";

/** Words of chance with the least chance that lets a letter use them; of the IPCC's scale where it has them, "probably" and "in all likelihood" *elicited*. */
const AT_LEAST: readonly (readonly [RegExp, number])[] = [
  [/\b(?:likeliest|the most (?:likely|probable))\b/u, 0.33],
  [/\b(?:virtually|almost|practically) certain(?:ly)?\b/u, 0.99], [/\b(?:very|highly|most) likely\b|\bvery probably\b/u, 0.9], [/(?<!un)\blikely\b|\bin all (?:likelihood|probability)\b/u, 0.66], [/\bprobably\b/u, 0.5],
];
/** Words of doubt with the greatest chance that lets a letter use them; the same scale, "doubt" and "probably not" *elicited*. */
const AT_MOST: readonly (readonly [RegExp, number])[] = [
  [/\b(?:very|highly|most|extremely) (?:unlikely|improbable)\b/u, 0.1],
  [/\b(?:unlikely|improbable|doubtful|not (?:(?:think|believe|find|consider) it )?(?:very |at all )?likely|(?:little|small|slim|no|hardly (?:a|any)) (?:chance|likelihood))\b/u, 0.33],
  [/\b(?:not|no)\b.*\bin all (?:likelihood|probability)\b|\bin all (?:likelihood|probability)\b.*\b(?:not|no)\b/u, 0.33],
  [/\bdoubt\b|\bprobably (?:not|no)\b|\bnot probabl[ey]\b/u, 0.5],
];
/** A stated chance may be rounded so far. *elicited* */
const WORD_SLACK = 0.02;
/** No word of doubt: it denies one, or names even odds. */
const NO_DOUBT = /\bnot (?:very |at all )?(?:unlikely|improbable)\b|\b(?:not|never|no) (?:really )?doubt\b|\bas likely as not\b/u;

const FIBRE = expression("FIBRE");
const namesOf = (f: (typeof FIBRES)[number]): readonly string[] => [f.name.replace(/ \(.*/, ""), ...shortNames(f)];
const ALIASES: Readonly<Record<string, FibreId>> = { rayon: "viscose", "art silk": "viscose", "artificial silk": "viscose", "bamboo silk": "viscose", "bamboo viscose": "viscose", "pure silk": "silk", "real silk": "silk", "pure wool": "wool", nylon: "polyamide" };
const fibreNamed = (name: string): FibreId | null => ALIASES[name] ?? FIBRES.find((f) => namesOf(f).includes(name))?.id ?? null;

/** The first fibre that plain words name, and by which name; null where they name none that is judged. */
export function fibreIn(plain: string): { fibre: FibreId; name: string } | null {
  const name = FIBRE().exec(plain)?.[0];
  const fibre = name ? fibreNamed(name) : null;
  return name && fibre ? { fibre, name } : null;
}
const chanceOf = ({ fibres }: Assessment, fibre: FibreId): number => fibres.find((f) => f.fibre === fibre)?.probability ?? 0;

function fibreTooSure(clause: string, assessment: Assessment): Beyond[] {
  const word = AT_LEAST.find(([re]) => re.test(clause));
  const named = word && fibreIn(clause.slice(clause.search(word[0])));
  if (!word || !named || /\bnot\b|\bunlikely\b|\bthan\b/u.test(clause)) return [];
  const chance = chanceOf(assessment, named.fibre);
  if (chance + WORD_SLACK >= word[1]) return [];
  return [{ rule: "certainty", why: `The assessment gives ${named.name} a chance of ${inHundred(chance)}, and this word says more.`, suggestion: `Write “${assessment.fibres.find((f) => f.fibre === named.fibre)?.words ?? "perhaps"}”, or leave the word out.` }];
}

/** That the pile is, or holds, the fibre: "to be viscose", "holds any viscose"; not "viscose bursts in water". */
const IS_FIBRE = expression("\\b(?:is|are|be|was|holds?|contains?|has|made (?:of|from))(?: (?:probably|likely|unlikely|not|no|any|some|pure|real|all|a|much))* (?=FIBRE\\b)");
function fibreTooDoubtful(clause: string, assessment: Assessment): Beyond[] {
  const word = AT_MOST.find(([re]) => re.test(clause));
  const at = word ? IS_FIBRE().exec(clause) : null;
  const named = at && fibreIn(clause.slice(at.index));
  if (!word || !named || OTHER_MATTER.test(clause)) return [];
  const holdsIt = named.fibre === "viscose" ? VISCOSE_LIKE : [named.fibre];
  const chance = holdsIt.reduce((sum, fibre) => sum + chanceOf(assessment, fibre), 0);
  if (chance - WORD_SLACK <= word[1]) return [];
  return [{ rule: "certainty", why: `The assessment gives ${named.name} a chance of ${inHundred(chance)}, and this word says less.`, suggestion: `Write “${likelihood(chance)}”, or leave the word out.` }];
}

/** What is named as having happened, and the mechanisms it can be. What is fresh and what is old of it are one. */
interface Cause { readonly said: string; readonly names: RegExp; readonly are: readonly MechanismId[] }
const CAUSES: readonly Cause[] = [
  { said: "urine", names: /\b(?:urine|wee|pee|pets?|dogs?|cats?|pups?|pupp(?:y|ies)|kittens?)\b/u, are: ["urine-fresh", "urine-old"] },
  { said: "insects", names: /\b(?:moths?|insects?|beetles?|larvae|grubs?)\b/u, are: ["insects"] },
  { said: "mould", names: /\b(?:mould|mold|mildew)\b/u, are: ["mould"] },
  { said: "a colour that ran", names: /\b(?:dyes?|colou?rs?) (?:\w+ )?(?:has|have|had)? ?(?:run|ran|bled)\b|\bdye (?:bleed|transfer)\b/u, are: ["dye-bleed"] },
  { said: "fading", names: /\b(?:faded|fading|sun|sunlight)\b/u, are: ["fading"] },
  { said: "bleaching", names: /\b(?:bleach|bleached|bleaching)\b/u, are: ["bleaching"] },
  { said: "browning", names: /\b(?:browned|browning)\b/u, are: ["browning-cleaning", "browning-use"] },
  { said: "a water mark", names: /\b(?:water|tide) ?(?:mark|line)s?\b/u, are: ["water-mark"] },
  { said: "food or drink", names: /\b(?:food|drink|coffee|tea|wine|juice|curry|milk|beer)\b/u, are: ["food-fresh", "food-old"] },
  { said: "shrinkage", names: /\b(?:shrunk|shrinkage)\b/u, are: ["shrinkage"] },
];
/** What will or would be, what is done about it, what somebody else thinks: no word on what has happened. */
const OTHER_MATTER = /\b(?:will|would|could|can|cannot|may|might|once|smells?|odours?|comes?|goes|go|went|lies|beside|(?:likely|probably) (?:old|fresh)|remov\w*|takes?|helps?|wash\w*|clean\w*|better|worse|more|again|you (?:think|thought|say|said|wrote|told|believe|asked|feel))\b|\blikely to (?!be\b|have\b)/u;

/** The chance that it is one of them; one at most, since what excludes each other adds up. */
const chanceOfCause = ({ mechanisms }: Assessment, { are }: Cause): number => Math.min(1, mechanisms.filter((m) => are.includes(m.mechanism)).reduce((sum, m) => sum + m.probability, 0));
const causesIn = (plain: string): Cause[] => CAUSES.filter(({ names }) => names.test(plain));

/** A likelier cause beside a less likely one: "more likely coffee than urine", "urine is likelier than wine". */
const COMPARED = /^(.*)\b(?:more likely|more probable|likelier)\b(.*) than (.*)$/u;
/** A comparison is wrong where the chances stand the other way round by so much. *elicited* */
const COMPARED_SLACK = 0.1;

function causeCompared(clause: string, assessment: Assessment): Beyond[] {
  const [, before = "", after = "", than = ""] = COMPARED.exec(clause) ?? [];
  const [likelier, other] = [causesIn(after)[0] ?? causesIn(before)[0], causesIn(than)[0]];
  if (!likelier || !other || chanceOfCause(assessment, likelier) + COMPARED_SLACK >= chanceOfCause(assessment, other)) return [];
  return [told(other, assessment, "less")];
}

function causeBeyond(clause: string, assessment: Assessment): Beyond[] {
  const [cause, ...more] = causesIn(clause);
  if (!cause || more.length > 0 || OTHER_MATTER.test(clause)) return [];
  const chance = chanceOfCause(assessment, cause);
  const doubt = AT_MOST.find(([re]) => re.test(clause));
  if (doubt) return chance - WORD_SLACK > doubt[1] ? [told(cause, assessment, "less")] : [];
  const word = AT_LEAST.find(([re]) => re.test(clause));
  return word && chance + WORD_SLACK < word[1] ? [told(cause, assessment, "more")] : [];
}

const inHundred = (chance: number): string => `${Math.round(chance * 100)} in 100`;
function told(cause: Cause, assessment: Assessment, says: "less" | "more"): Beyond {
  const chance = chanceOfCause(assessment, cause);
  return { rule: "certainty", why: `The assessment gives ${cause.said} a chance of ${inHundred(chance)}, and this sentence says ${says}.`, suggestion: `Write “${likelihood(chance)}”, or leave it out.` };
}

/** Words of chance that say more, or less, of a fibre or of what happened than the assessment. What hangs on an “if” claims nothing. */
export function chancesBeyond(plain: string, assessment: Assessment): Beyond[] {
  if (/\b(?:if|unless)\b|(?<!\b(?:doubt|doubtful) )\bwhether\b/u.test(plain)) return [];
  return clausesOf(plain).flatMap((clause) => [
    ...fibreTooSure(clause, assessment),
    ...(NO_DOUBT.test(clause) ? [] : [...fibreTooDoubtful(clause, assessment), ...(COMPARED.test(clause) ? causeCompared(clause, assessment) : causeBeyond(clause, assessment))]),
  ]);
}
