import { FIBRE_PHOTOS } from "../trade/questions-value";
import { PHOTO_KINDS, QUESTIONS, UNSAID_PHOTO, type PhotoKind, type QuestionId, type RugAnswers } from "../trade/questions";
import type { Assessment, MechanismId } from "../triage/assessment";
import { SPOILT_PHOTO } from "../triage/finding";
import { saidOfWater } from "../triage/letter-signs";
import { storyTells } from "../triage/story-tells";
import type { Words } from "../words/words";
import { isNothingSeen } from "./damage-told";
import type { RugForDraft } from "./facts";
import { isAidDue, isKeptOut } from "./happened";
import { labelStands } from "./label-said";

type Next = Assessment["nextQuestions"][number];
/** How many things of a kind, questions, photos or photos once more, a letter asks for at once. Elicited. */
const MOST_ASKS = 2;

/** Questions that only make sense on their page, worded for a letter. */
const IN_A_LETTER = ["household", "fringe", "fringeKind", "since", "treatedBy", "shine", "touch", "boughtWhere"] as const satisfies readonly QuestionId[];

/** Questions and photos for which the rug has to be handled: not while it is wet. */
const HANDS_ON: readonly string[] = ["label", "back", "pile", "touch", "footprints", "fringeKind"] satisfies (QuestionId | PhotoKind)[];
const LABEL = "label" satisfies PhotoKind;

/** What few can tell of a rug without a look at it. */
const LOOKED_AT = ["shine", "fringe"] as const satisfies readonly QuestionId[];
/** No photo is taken of it, nor is it felt or looked at, in a room that everybody is kept out of. */
const NOBODY_ENTERS: readonly string[] = [...HANDS_ON, ...Object.keys(PHOTO_KINDS), ...LOOKED_AT];

/** What whoever had it in hand has seen and felt: asked of nobody after an inspection of ours. */
const SEEN_IN_HAND: readonly string[] = [...NOBODY_ENTERS, "changes" satisfies QuestionId];

/** What photos show of which nobody has said yet what it is, more likely than anything else. Elicited. */
const LIKELY_SHOWN: readonly string[] = ["trouble", "whole"] satisfies PhotoKind[];
const hasUnsaid = ({ findings }: Assessment): boolean => findings.some((f) => f.what === "photo" && [f.value].flat().includes(UNSAID_PHOTO));

const WET = "wetNow" satisfies QuestionId;
/** Asked of everybody for safety or handling: they tell nothing of fibre or damage and do not stand among what would help most, but where words of the client speak of water. */
const FOR_CARE: readonly string[] = ["household", "age", WET] satisfies QuestionId[];

/**
 * What a letter asks for, in the assessment's order: questions and photos. No photo of the trouble where there is none or none to be seen,
 * nothing that means handling a wet rug or entering a room that everybody is kept out of, for flood water, mould or what may be gas, its own or, of a rug of which nobody has said what happened, that of another of its enquiry (`among`), nor what an inspection of ours has seen, and after one that found it beyond economic repair nothing at all, nor what photos that came since our last letter may show, not what they told in their own words, and not what they were asked and are not sure of; spoilt photos first. `likely`: what has probably happened. `listed`: all of it in the order of a letter, whether it is wet first, then photos. `one`: the one thing that would
 * tell most, the first of them; null where nothing left to ask would tell anything. `wetByWords`: by what the client
 * wrote, before anybody asked. A label that was read out to us and leaves nothing open is not asked for.
 */
export function asksOf(rug: AskedRug, likely: readonly MechanismId[]): { questions: Next[]; photos: Next[]; listed: Next[]; one: Next | null } {
  const { assessment: a } = rug;
  const fits = fitsALetter(rug, likely);
  const of = (all: readonly Next[], kind: Next["kind"]) => all.filter((q) => q.kind === kind && !isForCare(q, rug) && fits(q)).slice(0, MOST_ASKS);
  const spoilt = spoiltPhotos(a);
  const fresh = nextOf(rug).filter((q) => !spoilt.some((s) => s.id === q.id));
  const [questions, photos] = [of(fresh, "question"), [...of(spoilt, "photo"), ...of(fresh, "photo")]];
  const listed = [...questions.filter(isWet), ...photos, ...questions.filter((q) => !isWet(q))];
  return { questions, photos, listed, one: listed[0] ?? null };
}

/** They were asked just that, and are not sure: to ask it once more tells nothing. */
const isUnsure = (answers: RugAnswers, id: string): boolean => Object.entries(answers).some(([question, answer]) => question === id && [answer].flat().includes("unsure"));

/** What would tell most, in the assessment's order; of newer words that speak of water whether it is wet before all, though it was answered before them. */
const nextOf = ({ assessment: { nextQuestions }, wetByWords = null }: AskedRug): readonly Next[] =>
  (wetByWords === null || nextQuestions.some(isWet) ? nextQuestions : [{ id: WET, kind: "question", ask: QUESTIONS[WET].ask, why: "They write of water." }, ...nextQuestions]);

type AskedRug = Pick<RugForDraft, "assessment" | "answers" | "wetByWords" | "photosCame" | "labelHeard" | "messages" | "saidOfWater" | "inspection" | "among">;
const isForCare = ({ id }: Next, { wetByWords = null }: AskedRug): boolean => FOR_CARE.includes(id) && !(id === WET && wetByWords !== null);

/** Whether a client may be asked for it at all, as things stand. */
function fitsALetter({ assessment: a, answers, wetByWords = null, photosCame = false, labelHeard = false, messages = [], saidOfWater: newest, inspection = null, among = [] }: AskedRug, likely: readonly MechanismId[]): (q: Next) => boolean {
  const trouble = likely.some((m) => m !== "soil-only") && !isNothingSeen(a);
  const handsOff = isAidDue({ assessment: a, saidOfWater: newest ?? null }) || wetByWords !== null;
  const barred = [...(isKeptOut({ assessment: a, answers, wetByWords, saidOfWater: newest ?? null }, among) ? NOBODY_ENTERS : handsOff ? HANDS_ON : []), ...(photosCame && hasUnsaid(a) ? LIKELY_SHOWN : []), ...(labelHeard && labelStands(a) === "agrees" ? [LABEL] : []), ...(inspection ? SEEN_IN_HAND : [])];
  const isDry = isSaidDry({ answers, ...(newest === undefined ? {} : { saidOfWater: newest }) });
  const inTheirWords: readonly string[] = [answers.story ?? "", ...messages].flatMap(storyTells);
  const isJudged = (id: string) => inspection?.isBeyondRepair === true && id !== WET;
  return ({ id, kind }) => !isJudged(id) && (id !== "trouble" || trouble) && !(kind === "question" && isUnsure(answers, id)) && !barred.includes(id) && !(id === WET && isDry) && !isTold(a, id) && !inTheirWords.includes(id);
}

/**
 * What would help most, as the desk reads it: what a letter asks for, in its order and whether it is wet before all, then the rest in the
 * assessment's order, tests on the bench among them; nothing that a client may not be asked for.
 */
export function asksAtDesk(rug: AskedRug, likely: readonly MechanismId[]): Next[] {
  const fits = fitsALetter(rug, likely);
  const all = nextOf(rug).filter((q) => q.kind === "bench-test" || fits(q));
  const ordered = [...all.filter(isWet), ...asksOf(rug, likely).listed, ...all];
  return ordered.filter((q, at) => ordered.findIndex(({ id }) => id === q.id) === at);
}

/** Why a photo is asked for once more, at the desk. */
const SPOILT = "What came is too dark, too light or too blurred to judge by.";
/** The photos that came too dark, light or blurred to judge by: they were worth taking once, and are asked for again. */
const spoiltPhotos = ({ findings }: Assessment): Next[] =>
  findings.filter((f) => f.what === SPOILT_PHOTO).flatMap((f) => [f.value].flat()).filter((kind) => Object.hasOwn(PHOTO_KINDS, String(kind))).map((kind) => ({ kind: "photo", id: String(kind), ask: `Photo once more: ${PHOTO_KINDS[String(kind) as PhotoKind].ask.toLowerCase()}`, why: SPOILT }));

/** A photo of what the client has told in words already: a letter does not ask for it again. A label is: its photo weighs more. */
const isTold = ({ findings }: Assessment, id: string): boolean => {
  const answers = FIBRE_PHOTOS[id as PhotoKind];
  return answers !== undefined && id !== LABEL && findings.some((f) => f.what === answers);
};

const isWet = ({ id }: Next): boolean => id === WET;
/** Whether nobody has said yet if any of it is wet: asked in a sentence of its own, for safety. */
export const isWetUnknown = (a: Assessment): boolean => a.nextQuestions.some(isWet);

/** Whether their own words say that it is dry, by the newest that speak of water. */
export const isSaidDry = ({ answers, saidOfWater: newest }: Pick<RugForDraft, "answers" | "saidOfWater">): boolean => (newest ?? saidOfWater(answers.story ?? "")) === "dry";

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** How a photo is asked for: once more where it was spoilt, and of a label that was told us in words with what a photo of it still helps to. */
function photoAsked(kind: PhotoKind, a: Assessment) {
  if (spoiltPhotos(a).some((s) => s.id === kind)) return "letter.photo-asked-again";
  return kind === LABEL && a.findings.some((f) => f.what === "label" && f.strength === "label-typed") ? "letter.photo-asked-to-read" : "letter.photo-asked";
}

/** One line of a letter's list. `hasPage`: photos can be added on a page of their own, or to a mail; else they come by post or by hand. */
export function askLine(q: Next, a: Assessment, { words, hasPage }: { words: Words; hasPage: boolean }): string {
  if (q.kind === "photo" && q.id in PHOTO_KINDS) {
    const kind = q.id as PhotoKind;
    return `– ${words.say(photoAsked(kind, a), { what: lower(words.table(`photo.${kind}.ask`)), way: hasPage ? "page" : "post", hint: words.table(`photo.${kind}.hint`) })}`;
  }
  const own = IN_A_LETTER.find((id) => id === q.id);
  if (own) return `– ${words.say(`ask.${own}`)}`;
  return `– ${q.kind === "question" && q.id in QUESTIONS ? words.table(`question.${q.id as QuestionId}.ask`) : q.ask}`;
}
