import type { MechanismId } from "../../trade/damage";
import type { Assessment } from "../../triage/assessment";
import { readTold } from "../../triage/told";
import { isWetUnknown } from "../asks";
import { likelyMechanisms } from "../facts";
import { isNotHandled } from "../happened";
import { CAUTION_WORDS } from "../paragraphs/causes";
import type { Beyond } from "./beyond";
import { offersCleaning } from "./must-say";
import { clausesOf } from "./sentences";

/** What is told of something that a letter leaves out. */
export interface LeftOut { readonly why: string; readonly suggestion: string }

/** A caution that an assessment calls for. Its expressions meet plain words in lower case: of a letter, of a clause those of `harms`. */
interface Caution extends LeftOut {
  readonly isDue: (assessment: Assessment, letter: string) => boolean;
  /** A letter says it where each of these is in it. */
  readonly needs: readonly RegExp[];
  /** Where it keeps everybody off altogether, no more need be said. */
  readonly unless?: RegExp;
  /** It stands in every letter; else one that the client had before is enough. */
  readonly isRepeated?: true;
  /** What a client is not to be told to do then, and why. */
  readonly harms?: { readonly acts: RegExp; readonly why: string };
}

const isLikely = (id: MechanismId) => (a: Assessment): boolean => likelyMechanisms(a).includes(id);
/** As in our own letters: it may be wet, or nobody is to handle it. */
const hasNoBagYet = (a: Assessment): boolean => isNotHandled(readTold(a.findings), a) || isWetUnknown(a);
const isFlooded = ({ findings }: Assessment): boolean => readTold(findings).has("incidents:flood");
const isWetRuledOut = ({ methods }: Assessment): boolean => methods.some((m) => m.method === "wet-hand-clean" && m.verdict === "ruled-out");

const UNTOUCHED = /\b(?:not|never|no|nobody|no one|nothing|nor|without)\b[^.!?]{0,40}\b(?:touch|handl|blot|mov|disturb)/u;
const KEPT_OFF = new RegExp(`\\bkeep\\b[^.!?]*\\b(?:off|out|away)\\b|${UNTOUCHED.source}`, "u");
/** That it can do people harm. */
const ILL = /\b(?:ill|sick|health|unhealthy|lungs?|asthma\w*|allerg\w*|infect\w*|germs|diseases?)\b/u;
const NOTHING_ON_IT = /\b(?:nothing (?:more |else )?on (?:it|the rug)|no (?:more |further |other )?(?:water|product|cleaner|soap))\b/u;

/** Before a word that tells somebody to do something. */
const TOLD_TO = "(?:^|, ?|\\b(?:and|then|or|please|just|simply|first|also|gently|lightly|carefully|regularly|only|you (?:can|could|may|might|should|must)(?: \\w+)?|(?:best|fine|safe|enough|free|idea|want|need|have|try|worth|helps?|welcome) to) )";
/** After it: what it is done to, or how. */
const TO_IT = "(?= (?:it|them|this|that|the|your|both|any|an?|off|out|over|up|down|with|every|once an?|twice|without|\\w+ly)\\b|$)";
const ADVISED = (acts: string): string => `\\b(?:recommend|suggest|advise|try|by) (?:\\w+ly )?(?:${acts})ing\\b`;
const DONE = (acts: string): string => `\\b(?:can|could|should|may|might|must|ought to|needs? to) (?:\\w+ )?be (?:\\w+ )?(?:${acts})\\b`;
/** Stirs up what grows or settled in a pile. */
const STIRS = [
  `${TOLD_TO}(?:vacuum|hoover|brush|beat|shake|sweep|dust|wipe|scrape|air)${TO_IT}`, ADVISED("vacuum|hoover|brush|beat|shak|sweep|dust|wip|air"), DONE("vacuumed|hoovered|brushed|beaten|shaken|swept|dusted|wiped|aired"),
  `\\b(?:an?|some|regular|weekly) (?:\\w+ )?(?:vacuum|vacuuming|hoover|hoovering|brushing|beating|airing)\\b`,
  `${TOLD_TO}(?:hang|put|lay|leave|take|let) (?:it|them|the rug|your rug)(?: \\w+){0,3} (?:outside|outdoors|in the (?:sun|garden|open air)|to air|air(?: out)?)\\b`,
].join("|");
const HANDLES = [`${TOLD_TO}(?:press|blot|dab|mop|pat|lift|roll|drag|carry|hang)${TO_IT}`, `${TOLD_TO}(?:lay|put|place|hold) (?:an? |the )?(?:\\w+ ){0,3}(?:cloth|towel)s?\\b`, ADVISED("press|blott|dabb|mopp|lift|roll"), DONE("pressed|blotted|dabbed|mopped|lifted|rolled|moved|carried")].join("|");
/** Before the words: denied, or done by us. In the clause: only once somebody else has seen to it, or repeated. */
const HELD_OFF_BEFORE = /\b(?:not|never|no|nobody|nor|neither|without|rather than|instead of|avoid\w*|against|whether|(?:we|i) (?!(?:\w+ ){0,2}(?:recommend|suggest|advise|ask)\b))\b/u;
const HELD_OFF = /\b(?:once(?! (?:an?|every|daily|weekly)\b)|after|you (?:wrote|told|said|say|asked|mentioned))\b/u;

/** What is said of insects, whenever the rug may go into a bag. */
const INSECTS = {
  needs: [/\b(?:no|not|never|nor|without|leave|rather than)\b[^.!?]{0,60}\b(?:insecticides?|pesticides?|poison|sprays?|powders?|moth ?balls?|moth killer)\b/u, /\b(?:apart|away|separate\w*|isolat\w*|quarantin\w*|(?:closed|sealed) bag)\b/u],
  unless: /\bnobody touch/u, why: "It is likely that insects have fed on it, and the letter leaves out to use no insecticide, or to keep the rug apart.",
} as const;

const CAUTIONS: readonly Caution[] = [
  {
    isDue: isFlooded, needs: [ILL, UNTOUCHED], why: "It was in flood or waste water, and the letter leaves out that this can make people ill and that nobody is to touch the rug.", suggestion: CAUTION_WORDS.flood,
    harms: { acts: new RegExp(`${STIRS}|${HANDLES}`, "u"), why: "It was in flood or waste water, which can make people ill: nobody is to touch the rug, not even to blot it." },
  },
  {
    isDue: isLikely("mould"), needs: [ILL, KEPT_OFF], why: "Mould is likely, and the letter leaves out that it can harm people’s health, or to keep off it.", suggestion: CAUTION_WORDS.mould,
    harms: { acts: new RegExp(`${STIRS}|${HANDLES}`, "u"), why: "Mould is likely: nobody is to touch the rug, not even to blot it, and what stirs it up spreads it in the room, where people breathe it in." },
  },
  { ...INSECTS, isDue: (a) => isLikely("insects")(a) && !hasNoBagYet(a), suggestion: CAUTION_WORDS.insects },
  { ...INSECTS, isDue: (a) => isLikely("insects")(a) && hasNoBagYet(a), suggestion: CAUTION_WORDS.insectsLater },
  {
    isDue: (a, letter) => isWetRuledOut(a) && offersCleaning(letter), needs: [/\b(?:not|nobody|never|no|keep)\b[^.!?]*\b(?:home|water|wash|wet)\b/u], isRepeated: true,
    why: "Wet cleaning is ruled out for what this pile may be, and the letter does not warn of water at home.", suggestion: "Please do not clean it at home and let nobody use water on it.",
  },
  {
    isDue: (a) => a.firstAid !== null, needs: [KEPT_OFF, /\bchildren\b/u, NOTHING_ON_IT], isRepeated: true,
    why: "Something is wet or fresh, and the letter leaves out the first aid, or some of it.", suggestion: "Put the first aid at the head of the letter: keep people, children and pets off it, and put nothing on it.",
  },
];

const says = (letter: string, { needs, unless }: Caution): boolean => needs.every((what) => what.test(letter)) || unless?.test(letter) === true;

/** Cautions that the assessment calls for, and neither the letter nor one before says. All in plain words. */
export const cautionsMissing = (letter: string, assessment: Assessment, before: readonly string[]): LeftOut[] =>
  CAUTIONS.filter((c) => c.isDue(assessment, letter) && !says(letter, c) && (c.isRepeated || !before.some((told) => says(told, c))));

function tellsTo(acts: RegExp, clause: string): boolean {
  const found = acts.exec(clause);
  return found !== null && !HELD_OFF_BEFORE.test(clause.slice(0, found.index + found[0].length)) && !HELD_OFF.test(clause);
}

/** What a sentence in plain words tells somebody to do against a caution of the assessment. */
export const againstCautions = (plain: string, assessment: Assessment): Beyond[] =>
  CAUTIONS.filter(({ harms, isDue }) => harms && clausesOf(plain).some((clause) => tellsTo(harms.acts, clause)) && isDue(assessment, plain))
    .slice(0, 1).map(({ harms, suggestion }) => ({ rule: "harm", why: harms?.why ?? "", suggestion }));
