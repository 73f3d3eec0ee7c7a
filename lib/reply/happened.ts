import { FIRST_AID, type AnyAnswer, type ShortLine } from "../trade/first-aid";
import type { AnswerOf, EnquiryAnswers, QuestionId, RugAnswers } from "../trade/questions";
import type { Assessment, MechanismId } from "../triage/assessment";
import { findingsFromAnswers } from "../triage/findings-from-answers";
import { storyDetails, storyHasTrouble } from "../triage/story-tells";
import { readTold, type Told } from "../triage/told";
import { isFoul as isFoulIn, isGasNow as isGasNowIn, isGasTold as isGasIn, isMouldy as isMouldyIn, wasWet } from "../triage/urgency";
import type { Came, RugForDraft } from "./facts";

type Words<Q extends QuestionId> = readonly (readonly [AnswerOf<Q>, string])[];

/** Short words for the head of a slip, the gravest first: of several answers the first is told. Our own wording. */
const LIQUIDS: Words<"liquid"> = [
  ["wine", "wine"], ["coffee-tea", "coffee or tea"], ["juice", "a drink"], ["milk", "milk or sauce"], ["grease", "grease"], ["ink", "ink or paint"],
  ["urine", "urine"], ["vomit", "vomit"], ["cleaner", "a cleaning product"], ["water", "water"], ["other", "a spill"],
];
const INCIDENTS: Words<"incidents"> = [
  ["flood", "flood water"], ["pet-urine", "urine"], ["vomit", "vomit"], ["spill", "a spill"], ["water", "water"], ["insects", "moths or beetles"],
  ["washed-professional", "cleaned by a cleaner"], ["washed-home", "washed at home"], ["damp", "damp"], ["sun", "sun"], ["wear", "worn flat"],
  ["spotted", "spot treated at home"], ["stored", "long rolled up"], ["unknown", "nobody knows what happened"],
];
const TREATMENTS: Words<"treatments"> = [
  ["bleach", "bleach"], ["steam-heat", "heat"], ["machine", "a carpet machine"], ["professional-wet", "a wet clean"], ["household-cleaner", "household cleaner"],
  ["solvent", "a solvent"], ["vinegar-soda", "vinegar or soda"], ["soap", "soap"], ["professional-dry", "a dry clean"], ["rubbed", "rubbing"], ["plain-water", "plain water"],
];
const CHANGES: Words<"changes"> = [
  ["spots", "furry or black spots"], ["ran", "a colour ran"], ["browner", "turned browner"], ["paler", "paler"], ["stiff", "stiff"], ["rough", "rough pile"],
  ["ring", "a ring"], ["bare", "bare patches"], ["crumbles", "back crumbling"], ["wavy", "out of shape"], ["smell", "smells"], ["faded", "faded"],
  ["shaded", "shaded"], ["flat", "worn flat"], ["dirty", "dirty"],
];
const REASONS: Words<"reason"> = [
  ["trade", "needs advice"], ["after-cleaning", "changed after cleaning"], ["just-happened", "something just happened"], ["older-trouble", "a mark or damage"],
  ["mis-sold", "sold as something else?"], ["what-is-it", "what is it made of?"], ["routine", "wants a clean"],
];
const SOLD_AS: Words<"sellerSaid"> = [
  ["silk", "silk"], ["wool-and-silk", "wool and silk"], ["art-silk", "art silk"], ["viscose", "viscose"], ["silk-look", "“silk look”"], ["wool", "wool"], ["cotton", "cotton"],
];

type Answered = readonly string[] | string | undefined;
const told = (table: readonly (readonly [string, string])[], answer: Answered): string[] =>
  table.filter(([id]) => (Array.isArray(answer) ? answer.includes(id) : answer === id)).map(([, words]) => words);

/** What the seller called it, to stand after "sold as"; null where that says nothing. */
export const soldAsWords = (answers: RugAnswers): string | null => told(SOLD_AS, answers.sellerSaid)[0] ?? null;
/** The changes seen, the gravest first. */
export const changeWords = (answers: RugAnswers): string[] => told(CHANGES, answers.changes);

/** A cleaning that is itself what happened: how it was done would say it twice. */
const isCleaning = (incident: string) => incident.startsWith("cleaned") || incident.startsWith("washed");

/** "urine, then household cleaner"; null where nothing is told to have happened. */
export function happenedWords(answers: RugAnswers): string | null {
  const incidents = told(INCIDENTS, answers.incidents);
  const liquid = told(LIQUIDS, answers.liquid)[0];
  const first = liquid && (incidents.length === 0 || incidents[0] === "a spill") ? liquid : incidents[0];
  const then = told(TREATMENTS, answers.treatments)[0];
  if (!first) return then ?? null;
  return then && !isCleaning(first) ? `${first}, then ${then}` : first;
}
/** Whether one of these answers was given. */
const isAnswered = (answers: RugAnswers, any: AnyAnswer): boolean =>
  (Object.keys(any) as (keyof AnyAnswer)[]).some((q) => [answers[q] ?? []].flat().some((given) => (any[q] as readonly string[] | undefined)?.includes(given)));

/** Nobody has said what happened. */
const isUntold = ({ incidents = [], liquid }: RugAnswers): boolean => liquid === undefined && incidents.every((id) => id === "unknown" || id === "unsure");

const TOLD = new WeakMap<RugAnswers, Told>();
/** What a rug's answers tell. Read once of each: a letter asks for it often, and reading a label takes its time. */
function toldBy(answers: RugAnswers): Told {
  const told = TOLD.get(answers) ?? readTold(findingsFromAnswers(answers, {}));
  TOLD.set(answers, told);
  return told;
}
/** The judgement's own rule of bleach and what it can give off gas with, of answers alone. */
export const isGasTold = (answers: RugAnswers): boolean => isGasIn(toldBy(answers));
/** Its own rule of when that may still rise. */
export const isGasNow = (answers: RugAnswers, enquiry: EnquiryAnswers): boolean => isGasNowIn(readTold(findingsFromAnswers(answers, enquiry)));

type Waters = Pick<RugForDraft, "assessment" | "saidOfWater">;
/** It was wet within the day, and by its judgement first aid for that is over. */
const isOverAsJudged = ({ firstAid, findings }: Assessment): boolean => firstAid === null && wasWet(readTold(findings));
/** First aid for what was wet is over, by the judgement and by all that they wrote since. */
export const isAidOver = ({ assessment, saidOfWater }: Waters): boolean => saidOfWater !== "wet" && isOverAsJudged(assessment);
/** First aid is due, by the judgement or by what they wrote since it was over. */
export const isAidDue = ({ assessment, saidOfWater }: Waters): boolean => assessment.firstAid !== null || (saidOfWater === "wet" && isOverAsJudged(assessment));

/** First aid was told by a letter of ours, or they have written that it is dry: a line of it is enough, unless their newest words speak of water again. */
export const isAidKnown = ({ saidOfWater }: Pick<RugForDraft, "saidOfWater">, came: Came | null): boolean => saidOfWater === "dry" || (saidOfWater !== "wet" && Boolean(came?.aidTold));

/** A rug that first aid is for, by its answers and by what has probably happened to it. */
export interface Aided { readonly answers: RugAnswers; readonly assessment: Pick<Assessment, "mechanisms"> }
const chanceIn = ({ mechanisms }: Aided["assessment"]) => (id: MechanismId): number => mechanisms.find(({ mechanism }) => mechanism === id)?.probability ?? 0;
const isFoulBy = (told: Told, a: Aided["assessment"]): boolean => isFoulIn(told, chanceIn(a));
/** The judgement's own rule of what nobody may touch. */
export const isFoul = ({ answers, assessment }: Aided): boolean => isFoulBy(toldBy(answers), assessment);
/** Its own rule of mould: seen by what was told, or likely enough to be warned of. */
export const isMouldy = ({ answers, assessment }: Aided): boolean => isMouldyIn(toldBy(answers), chanceIn(assessment));
/** The same of a judgement alone, for whoever has no answers beside it. */
export const isMouldyAsJudged = (a: Assessment): boolean => isMouldyIn(readTold(a.findings), chanceIn(a));
/** Nobody is to handle it yet, by what was told and judged: it is wet, first aid is due, or nobody may touch it. */
export const isNotHandled = (told: Told, a: Assessment): boolean =>
  a.firstAid !== null || told.has("wetNow:wet") || told.has("wetNow:damp") || isFoulBy(told, a);

/** A rug by what tells whether anybody may go into its room. */
export interface Roomed extends Waters, Pick<RugForDraft, "answers" | "wetByWords"> { }
/** Everybody is kept out of the room that it lies in: for flood water, mould, or what may be gas while first aid is due. */
const isRoomShut = (rug: Roomed): boolean =>
  rug.wetByWords === "hands-off" || isFoul(rug) || ((isAidDue(rug) || Boolean(rug.wetByWords)) && isGasTold(rug.answers));
/** Nobody is to go near it: its own room is shut or, where nobody has said what happened to it, that of another rug of its enquiry (`among`), for it may lie in there too. */
export const isKeptOut = (rug: Roomed, among: readonly Roomed[] = []): boolean => isRoomShut(rug) || (isUntold(rug.answers) && among.some(isRoomShut));

/** Whether a line fits one rug: what fits everywhere, and what was told; all but that of products where nothing was. */
function isFitting({ fits }: ShortLine, rug: Aided): boolean {
  const { answers } = rug;
  if (fits === "always") return true;
  if (fits === "may-stay") return !isGasTold(answers);
  if (fits === "may-touch") return !isGasTold(answers) && !isFoul(rug);
  return (fits === "foul" ? isFoul(rug) : isAnswered(answers, FIRST_AID.fits[fits])) || (fits !== "product" && isUntold(answers));
}
/** What may be done to each of several rugs has to be allowed of all; what any of them warns of holds beside all. */
const IS_ALLOWED: readonly ShortLine["fits"][] = ["may-touch", "may-stay"];
/** Which lines of first aid fit all of these rugs at once. */
export const aidFits = (rugs: readonly Aided[]): readonly ShortLine[] =>
  FIRST_AID.inShort.filter((line) => (IS_ALLOWED.includes(line.fits) ? rugs.every((r) => isFitting(line, r)) : rugs.some((r) => isFitting(line, r))));
/** Nobody may touch it, not even to blot it. */
export const isHandsOff = (rug: Aided): boolean => !aidFits([rug]).some(({ fits }) => fits === "may-touch");
/** Which of the rugs that first aid is due for have one of their own, since another of them may not be touched: those that may be, by what was told of them. */
export const ownAidOf = <R extends Aided>(due: readonly R[]): R[] =>
  (due.some(isHandsOff) ? due.filter((rug) => !isHandsOff(rug) && !isUntold(rug.answers)) : []);
/** Whether somebody may have to be called for: something told of one of them can hurt by itself, there is much water near what is electric, or nobody knows; first where it can hurt. */
export function emergencyStands(rugs: readonly RugAnswers[]): "first" | "last" | null {
  if (rugs.some((r) => isAnswered(r, FIRST_AID.harmful))) return "first";
  return rugs.some((r) => isUntold(r) || isAnswered(r, FIRST_AID.fits["much-water"])) ? "last" : null;
}
/** When they say it was, for as long as urine is fresh: within the week. *elicited* */
const FRESH_SINCE: readonly RugAnswers["since"][] = ["hour", "day", "two-days", "week"];
/** Whether they told us of urine that may still be fresh. */
export const isFreshUrineTold = ({ incidents = [], liquid, since }: RugAnswers): boolean => (incidents.includes("pet-urine") || liquid === "urine") && FRESH_SINCE.includes(since);

/** Whether nothing that says something was answered. */
const isOpen = (answer: readonly string[] | undefined): boolean => (answer ?? []).every((id) => id === "unsure" || id === "unknown");
/** They write because something is wrong with it. */
const TROUBLED: readonly EnquiryAnswers["reason"][] = ["just-happened", "after-cleaning", "older-trouble"];
/**
 * Whether trouble was told of which nothing could be judged: in the client's own words, or as the reason why they write, while neither what
 * happened nor how it changed was answered.
 */
export const isTroubleUnjudged = ({ incidents, changes, liquid, story = "" }: RugAnswers, { reason }: EnquiryAnswers): boolean =>
  isOpen(incidents) && isOpen(changes) && liquid === undefined && (TROUBLED.includes(reason) || storyHasTrouble(story));

/** What can set a mark when an owner uses it. */
const HOME_CLEANING: readonly AnswerOf<"treatments">[] = ["household-cleaner", "soap", "vinegar-soda", "bleach", "steam-heat", "machine", "solvent"];
/** Whether it was cleaned at home before, by the answers or in the client's own words. */
export const wasCleanedAtHome = ({ incidents = [], treatments = [], treatedBy, story = "" }: RugAnswers): boolean =>
  incidents.includes("washed-home") || incidents.includes("spotted") || (treatedBy === "owner" && treatments.some((t) => HOME_CLEANING.some((c) => c === t)))
  || (isOpen(incidents) && isOpen(treatments) && storyDetails(story).includes("washed-home"));

/** A brown or stiff place told in the client's own words, and of the brown whether it came after a wash; none where how it changed was answered. */
export function toldOfChange({ changes, incidents, story = "" }: RugAnswers): ("brown-washed" | "brown" | "stiff-washed")[] {
  const details = isOpen(changes) ? storyDetails(story) : [];
  const isWashed = details.includes("washed-home") || ["washed-home", "washed-professional"].some((id) => incidents?.some((told) => told === id));
  return [
    ...(details.includes("brown") ? [isWashed ? "brown-washed" as const : "brown" as const] : []),
    ...(details.includes("stiff") && isWashed ? ["stiff-washed" as const] : []),
  ];
}

/** Plant pots ticked beside the rug; or a trouble of damp, pots or pets, while the question that names the pots apart is open. */
const isPotTicked = ({ incidents = [], household }: RugAnswers): boolean =>
  household?.includes("pots") === true || (incidents.includes("damp") && isOpen(household));
/** Whether a plant pot may stand on it, by an answer of theirs or in their own words. */
export const isPotTold = ({ answers, messages = [] }: { answers: RugAnswers; messages?: readonly string[] }): boolean =>
  isPotTicked(answers) || [answers.story ?? "", ...messages].some((text) => storyDetails(text).includes("pot"));

/** Why they write, for want of anything that happened. */
export function reasonWords(enquiry: EnquiryAnswers, answers: RugAnswers): string | null {
  const sold = soldAsWords(answers);
  return enquiry.reason === "mis-sold" && sold ? `sold as ${sold}?` : told(REASONS, enquiry.reason)[0] ?? null;
}
