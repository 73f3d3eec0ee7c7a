import { LATEX_BACK_FROM, type MethodId } from "../trade/care";
import { WORTH_SAYING } from "../trade/damage";
import { BROUGHT_BACK } from "../trade/improvement";
import type { LetterSign } from "../trade/letter-signs";
import type { Assessment, Range } from "../triage/assessment";
import { KEPT_WHOLE, SPOILT_PHOTO, type Strength } from "../triage/finding";
import type { EnquiryAnswers, QuestionId, RugAnswers } from "../trade/questions";
import { isLatexNamed, latexBackChance } from "../triage/construction";
import { findingsFromAnswers } from "../triage/findings-from-answers";
import { handledAs } from "../triage/methods";
import { readTold } from "../triage/told";
import { speaksAgainstSilk } from "../triage/price-evidence";
import { cutKey, type CutKey } from "../words/judged";
import { asksOf, isSaidDry, isWetUnknown } from "./asks";
import { cameSaid } from "./came-said";
import type { Facts, NumberFact, WordFact } from "./condition";
import { isOnlySmellTold, unexplainedChanges } from "./damage-told";
import { isAidDue, isAidKnown, isAidOver, isFreshUrineTold, isGasTold, isMouldy, isNotHandled, isPotTold, isTroubleUnjudged, toldOfChange, wasCleanedAtHome, type Roomed } from "./happened";
import { HARDLY_WORTH, LITTLE, PERHAPS_NOT_WORTH } from "./paragraphs/troubles";
import { actionSeen, beyondSeen, foundBy, type PerhapsSeen } from "./inspected";
import { asksOfKind } from "./questions-asked";
import { isMixtureOnLabel, labelStands, namedFibres } from "./label-said";
import { isLifeMonthsOrYears, isLifeShort, isTellingPrice, lifeTold } from "./phrases";
import { isSilkAsked, wasCalledSilk } from "./called-silk";
import { treatedFirst, treatedOf, type Treated } from "./treated-first";
import { WATER_SHY } from "./viscose-like";

/** One rug as a draft sees it. */
export interface RugForDraft extends PerhapsSeen {
  title: string;
  answers: RugAnswers;
  /** First aid that the client's own words call for, which nobody has asked about yet; none where it was answered. */
  wetByWords?: LetterSign["firstAid"] | null;
  /** What the client's newest message that speaks of water says of it, where that is later than what was answered or says as that does that it is dry. */
  saidOfWater?: "wet" | "dry" | null;
  /** What the client wrote since they asked, oldest first; absent: nothing. */
  messages?: readonly string[];
  /** How many photos of it there are; absent: nobody counted. */
  photos?: number;
  /** Photos of any rug came since our last letter. */
  photosCame?: boolean; /** The rugs of its enquiry, itself among them; absent: it is the only one. */ among?: readonly Roomed[];
  /** The label was read to us on the telephone, and typed here. */
  labelHeard?: boolean;
  /** The label was read in a photo too, and says what was typed of it. */
  labelShown?: boolean;
}
/** What a letter judges: the fibre, how far it comes back, whether it is worth it, what happened, what is feared to be in it, how soon it is seen to, how it is cleaned, what could be done instead, the years, the price. */
export type TopicId = "fibre" | "outlook" | "worth" | "cause" | "flood" | "gas" | "mould" | "insects" | "haste" | "care" | "repair" | "life" | "price";
/** How what our last letter said moved: it reads otherwise today; it no longer holds, with nothing in its place; it was said of a dry rug, and nothing is said of it before we know whether the rug is wet. */
export type HowMoved = "changed" | "gone" | "waits";
/** What of our last letter moved, and how. `rugsOf`: of which rugs, counted from 0, where it is not so of all of them. */
export interface Moved extends Readonly<Record<HowMoved, readonly TopicId[]>> { readonly rugsOf?: Partial<Record<HowMoved, Partial<Record<TopicId, readonly number[]>>>> }

/** What came since a letter of ours. */
export interface Came {
  /** The client wrote, by mail or on their own page. `byOthers`: somebody did from an address of which nobody has said that it is the client's; absent: nobody. */
  message: boolean; byOthers?: boolean;
  /** How many times they did; absent: once. */
  times?: number;
  /** What they wrote, in their own words, oldest first; absent: nothing. */
  words?: readonly string[];
  /** The client answered questions. */
  answers: boolean;
  /** How many photos came. */
  photos: number;
  /** A bench test or a report was recorded. */
  tested: boolean;
  /** Whose inspection of ours the last letter did not know: which rug's, counted from 0; absent: none. */
  inspected?: number;
  /** A letter of ours has told them first aid. */
  aidTold?: boolean;
  /** Absent until the two letters were held against each other. */
  moved?: Moved;
  /** It changed nothing, and there is no more to say: all that our letters said still stands. Absent as long. */
  unchanged?: boolean;
}
export interface FactsInput {
  rug: RugForDraft;
  enquiry: EnquiryAnswers;
  isTrade: boolean;
  rugs: number;
  hasTelephone: boolean;
  hasName: boolean;
  /** They can open a page of their own. */
  hasPage: boolean;
  /** null in a first letter. */
  came: Came | null;
}

/** Strongest first. */
const STRENGTHS: readonly Strength[] = ["laboratory", "bench", "label-photo", "label-typed", "photo", "told"];

/**
 * The kinds of evidence a judgement of the fibre rests on, strongest first. A test or a report counts only where it says
 * something of the pile: one of a damp place or of the fringe does not.
 */
export const strengthsOf = (a: Assessment): Strength[] => STRENGTHS.filter((s) => a.findings.some((f) => f.strength === s && !isUnread(f) && (f.decibans !== 0 || isOfTheRug(f))));

/** Told or sent, and yet nothing of what the pile is or what happened to it: nobody goes by a size, or by a photo that is there to be looked at. */
const SAYS_LITTLE: readonly string[] = ["photo", SPOILT_PHOTO, KEPT_WHOLE, "size", "boughtYear", "price", "labelFound", ...(["wetNow", "reason", "room", "household", "matters"] satisfies QuestionId[])];
const isOfTheRug = ({ what, strength }: Assessment["findings"][number]): boolean => strength !== "bench" && strength !== "laboratory" && !SAYS_LITTLE.includes(what);

/** Whether photos that can be judged by are part of what an assessment rests on: something was seen in one, or they were there to be looked at. */
export const sawPhotos = (a: Assessment): boolean => a.findings.some((f) => f.strength === "photo" || f.what === "photo");

/** A label in whose words no fibre could be read: nothing goes by it. */
const isUnread = ({ what, value }: Assessment["findings"][number]): boolean =>
  what === "label" && typeof value === "object" && !Array.isArray(value) && "says" in value && value.says === null && "pile" in value && value.pile === null;

/** What stands on the label, as the judgement took it: by the strongest finding, at most 500 characters; null where none was found. */
export function labelTextOf({ findings }: Assessment): string | null {
  const labels = findings.filter((f) => f.what === "label").sort((a, b) => STRENGTHS.indexOf(a.strength) - STRENGTHS.indexOf(b.strength));
  const value = labels[0]?.value;
  return typeof value === "object" && "text" in value && typeof value.text === "string" ? value.text : null;
}

const isLittle = ({ improvement }: Assessment): boolean => improvement !== null && improvement.high < LITTLE.improvementHigh;

/** More likely than not, less comes back than counts as brought back: what most speaks against the work. */
const fallsShort = ({ improvement }: Assessment): boolean => improvement !== null && improvement.median < BROUGHT_BACK.leastPerCent;
const isHardlyWorth = (rug: RugForDraft): boolean => (beyondSeen(rug) ?? 0) >= HARDLY_WORTH.beyondRepair;
/** Nobody is hurried: by what was told nothing is lost by waiting, or the work is likely not worth its cost. */
const hasNoHaste = (rug: RugForDraft): boolean => rug.assessment.urgency.level === "can-wait" || isHardlyWorth(rug);
/** From here on a stain that has probably set may yet be fresh: the lower end of "unlikely" (IPCC). */
const MAY_BE_FRESH = 0.1;
/** Whether the stain has set is open, and haste could help. */
const isSetOrNot = (rug: RugForDraft): boolean =>
  likelyMechanisms(rug.assessment).includes("food-old") && rug.assessment.mechanisms.some((m) => m.mechanism === "food-fresh" && m.probability >= MAY_BE_FRESH) && !isLittle(rug.assessment) && !hasNoHaste(rug);

/** Whether cleaning costs as much as the rug may be worth today, or where that is not known as much as a new one: middle against middle. Elicited. */
const costsMore = ({ money }: Assessment): boolean => {
  const worth = money?.valueToday ?? money?.replace;
  return Boolean(money?.clean && worth && money.clean.median >= worth.median);
};

/** Whether cleaning costs more than the rug may be worth today, range against range: the least of the one is over the most of the other. */
const costsClearlyMore = ({ money }: Assessment): boolean => Boolean(money?.clean && money.valueToday && money.clean.low > money.valueToday.high);

/** Whether there is a price for cleaning, and something to set it against: what the rug may be worth today or, where that is not known, what a new one costs. */
const isPriceBesideWorth = ({ money }: Assessment): boolean => Boolean(money?.clean && (money.valueToday ?? money.replace));

/** Whether cleaning may cost as much as the rug may be worth today, range against range: then what it is worth decides too. */
const isWorthOverlapping = ({ money }: Assessment): boolean => Boolean(money?.clean && money.valueToday && money.clean.high >= money.valueToday.low);

/** The methods that clean, in the order of the assessment: neither dusting, nor leaving it, nor what an owner does at home. */
const CLEANS_NOTHING: readonly MethodId[] = ["dusting", "none", "at-home"];
export const cleaning = (a: Assessment) => a.methods.filter((m) => !CLEANS_NOTHING.includes(m.method));

/** How well the fibre is known; "unknown" where nothing tells of it, or none with a name comes first. */
export function certainty(a: Assessment): "unknown" | "open" | "likely" | "firm" {
  const leading = a.fibres[0];
  if (a.findings.every((f) => f.decibans === 0) || !leading || leading.fibre === "other") return "unknown";
  if (leading.words === "virtually certain" || leading.words === "very likely") return "firm";
  return leading.words === "likely" ? "likely" : "open";
}

/** Whether the fibre is open: no other holds as likely, or nothing tells of it. */
export const isFibreOpen = (a: Assessment): boolean => ["unknown", "open"].includes(certainty(a));

/** Whether a letter gives the years left as a range: not where it tells nothing, and while the fibre is open only a narrow one. */
export const givesYears = (a: Assessment): boolean => {
  const told = a.lifeYears ? lifeTold(a.lifeYears) : "nothing";
  return told === "both" || (told !== "nothing" && !isFibreOpen(a));
};

/** What a new one costs, where the range is narrow enough to help anybody. */
export function replacePrice({ money }: Assessment): Range | null {
  const price = money?.replace;
  return price && typeof price !== "string" && isTellingPrice(price) ? price : null;
}

/** The way of cutting the rug down that was chosen on its plan; null where none was. */
export function plannedCut({ findings }: Assessment): CutKey | null {
  const value = findings.find((f) => f.what === "cut-down")?.value;
  return value && typeof value === "object" && "kind" in value ? cutKey(value.kind) : null;
}

/** The share of the rug that the way chosen on its plan keeps, 0 to 1; null where none was chosen, or nobody worked it out. */
export function keptByCut({ findings }: Assessment): number | null {
  const value = findings.find((f) => f.what === "cut-down")?.value;
  return value && typeof value === "object" && "shareKept" in value && typeof value.shareKept === "number" ? value.shareKept : null;
}

function given({ rug, rugs, enquiry, hasTelephone, hasName, hasPage, came }: FactsInput): string[] {
  const inTheirWords = toldOfChange(rug.answers);
  const { assessment: a, wetByWords } = rug;
  const aid = isAidDue(rug);
  const isFlooded = rug.answers.incidents?.includes("flood");
  const isWetOpen = isWetUnknown(a) && !a.firstAid && !wetByWords;
  const asks = asksOf(rug, likelyMechanisms(a));
  const stories = [rug.answers.story, ...(rug.messages ?? [])];
  const has = {
    improvement: a.improvement, "first-aid": aid && !isAidKnown(rug, came), "aid-known": aid && isAidKnown(rug, came), "aid-said-dry": aid && rug.saidOfWater === "dry", "first-aid-gas": aid && !isAidKnown(rug, came) && isGasTold(rug.answers), "aid-known-gas": aid && isAidKnown(rug, came) && isGasTold(rug.answers), "aid-said-dry-gas": aid && rug.saidOfWater === "dry" && isGasTold(rug.answers), "said-wet": wetByWords, "said-flood": wetByWords === "hands-off", "flood-unseen": isFlooded && !rug.inspection, "flood-seen": isFlooded && rug.inspection,
    "clean-price": a.money?.clean, "cut-down-price": a.money?.cutDown, "cut-down-way": a.money?.cutDown && plannedCut(a), "replace-price": replacePrice(a),
    "sent-photos": sawPhotos(a), photos: asks.photos.length, questions: asks.questions.length, "one-ask": asks.one, "lone-ask": asks.photos.length + asks.questions.length === 1, "needs-more": asks.one && (wetByWords || actionSeen(rug) === "ask-for-more" || (rugs > 1 && certainty(a) === "unknown" && actionSeen(rug) !== "not-our-work")),
    "costs-more": costsMore(a), "costs-clearly-more": costsClearlyMore(a), "price-beside-worth": isPriceBesideWorth(a), "worth-overlaps": isWorthOverlapping(a), "falls-short": fallsShort(a), "price-against-silk": speaksAgainstSilk(a), "wet-unknown": isWetOpen && !isSaidDry(rug), "dry-said": (isWetOpen || isAidOver(rug)) && isSaidDry(rug),
    referral: a.advice.referTo, telephone: hasTelephone, name: hasName, "no-page": !hasPage,
    ...cameSaid(came),
    "urine-told-fresh": isFreshUrineTold(rug.answers), "urine-told-little": isFreshUrineTold(rug.answers) && isLittle(a), "silk-said": wasCalledSilk(a), "silk-asked": isSilkAsked(rug), "latex-back": latexBackChance(readTold(a.findings)) >= LATEX_BACK_FROM, "latex-named": isLatexNamed(readTold(a.findings)), "label-mixture": isMixtureOnLabel(a),
    "asked-collecting": asksOfKind(stories, "collecting"), "asked-worth": asksOfKind(stories, "worth-it"), "asked-cost": asksOfKind(stories, "cost"), "asked-how-long": asksOfKind(stories, "how-long-it-takes"), "asked-remedy": asksOfKind(stories, "remedy"), "asked-flame": asksOfKind(stories, "flame"),
    "trouble-unjudged": isTroubleUnjudged(rug.answers, enquiry), "change-unexplained": unexplainedChanges(a, likelyMechanisms(a)).length, "cleaned-home": wasCleanedAtHome(rug.answers),
    "brown-washed-said": inTheirWords.includes("brown-washed"), "brown-said": inTheirWords.includes("brown"), "stiff-washed-said": inTheirWords.includes("stiff-washed"), "pot-said": isPotTold(rug) && !(aid && isGasTold(rug.answers)), "not-handled": aid || wetByWords || isNotHandled(readTold(findingsFromAnswers(rug.answers, enquiry)), a), "mould-and-insects": treatedFirst(treatedIn(rug)) === "both",
    "doubtful-worth": (beyondSeen(rug) ?? 0) >= PERHAPS_NOT_WORTH.beyondRepair, "hardly-worth": isHardlyWorth(rug), "no-haste": hasNoHaste(rug), "set-or-not": isSetOrNot(rug), "little-hope": isLittle(a), "only-smell": isOnlySmellTold(a), "short-life": a.lifeYears && givesYears(a) && isLifeShort(a.lifeYears), "months-or-years": a.lifeYears && givesYears(a) && isLifeMonthsOrYears(a.lifeYears),
  };
  return Object.entries(has).filter(([, value]) => Boolean(value)).map(([name]) => name);
}

const one = (value: string | null | undefined) => (value && value !== "unsure" ? [value] : []);
/** What has probably happened, most probable first. */
export const likelyMechanisms = (a: Assessment) => a.mechanisms.filter((m) => m.probability >= WORTH_SAYING).map((m) => m.mechanism);
/** What somebody treats before any work on a rug, by its answers and its judgement. */
export const treatedIn = ({ answers, assessment }: Pick<RugForDraft, "answers" | "assessment">): readonly Treated[] => treatedOf({ isMouldy: isMouldy({ answers, assessment }), likely: likelyMechanisms(assessment) });

/** What the paragraphs' conditions are read against, for one rug of an enquiry. */
export function factsOf(input: FactsInput): Facts {
  const { rug, rug: { assessment: a, answers }, enquiry, isTrade, rugs } = input;
  const [leading, rival] = namedFibres(a);
  const numbers = {
    beyondRepair: beyondSeen(rug), worse: a.worse, improvementHigh: a.improvement?.high, improvementWidth: a.improvement ? a.improvement.high - a.improvement.low : null,
    waterShy: a.fibres.filter((f) => WATER_SHY.includes(f.fibre)).reduce((sum, f) => sum + f.probability, 0),
  };
  return {
    words: {
      leading: one(leading), rival: one(rival), label: [labelStands(a)], certainty: [certainty(a)],
      strongest: one(strengthsOf(a)[0]),
      soldAs: one(answers.sellerSaid), cameFrom: one(answers.boughtWhere), reason: one(enquiry.reason), wet: one(enquiry.wetNow),
      who: [isTrade || enquiry.reason === "trade" ? "trade" : "owner"],
      advice: [actionSeen(rug)], inspection: [foundBy(rug)], urgency: [a.urgency.level],
      mechanisms: likelyMechanisms(a), handled: [...new Set([...likelyMechanisms(a), ...handledAs(readTold(a.findings))])], top: one(likelyMechanisms(a)[0]), treated: treatedIn(rug),
      offered: cleaning(a).filter((m) => m.verdict !== "ruled-out").map((m) => m.method),
      ruledOut: a.methods.filter((m) => m.verdict === "ruled-out").map((m) => m.method),
      incidents: answers.incidents ?? [], changes: answers.changes ?? [], matters: answers.matters ?? [], age: one(answers.age),
      life: a.lifeYears ? [lifeTold(a.lifeYears)] : [], has: given(input), rugs: [rugs > 1 ? "several" : "one"],
    },
    numbers: Object.fromEntries(Object.entries(numbers).filter(([, v]) => typeof v === "number")) as Facts["numbers"],
  };
}

/** The facts of a whole letter: what holds for any of its rugs; of numbers the largest. */
export function mergedFacts(facts: readonly Facts[]): Facts {
  const words = {} as Record<WordFact, string[]>;
  const numbers: Facts["numbers"] = {};
  for (const fact of facts) {
    for (const [name, values] of Object.entries(fact.words) as [WordFact, string[]][])
      words[name] = [...new Set([...(words[name] ?? []), ...values])];
    for (const [name, value] of Object.entries(fact.numbers) as [NumberFact, number][])
      numbers[name] = Math.max(numbers[name] ?? -Infinity, value);
  }
  return { words, numbers };
}
