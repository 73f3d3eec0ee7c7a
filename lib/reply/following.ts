import { tellsAid, toldAid } from "./aid-told";
import { withAnswerPlace } from "./answer-place";
import { isTold, type Told } from "./changes";
import { inToneThatFits, partedBy, shortEnough, type ComposedDraft } from "./draft";
import { treatedIn, type Came, type HowMoved, type RugForDraft, type TopicId } from "./facts";
import { isAidDue, isGasTold, isHandsOff } from "./happened";
import { costSaid, isJudged, isSameJudgement, isYearsUntold, movedSince, speaksOf, standsWith, tellsNothingYet, TOPICS, type Feared } from "./moved";
import { PARAGRAPHS } from "./paragraphs";
import type { PlaceId } from "./paragraphs/row";
import { joinedParts } from "./parts";
import { blocks, piecesOf, type DraftInput, type Piece, type Pieces } from "./pieces";
import { answersIn } from "./questions-asked";
import { saidOnce } from "./said-once";
import { withToldBefore } from "./told-before";
import { heldBackBy } from "./told-by-letter";

/** What stands in every letter where there is something to say. First aid is never left to an earlier letter. */
const ALWAYS: readonly PlaceId[] = ["greeting", "first-aid", "own-aid", "first-aid-list", "thanks", "signature"];
/** Where one of `of` changed, `limits` stand again beside it, so that no judgement stands without its limits, nor a sentence without what it speaks of. Source: elicited. */
const BREATHS: readonly { readonly of: readonly PlaceId[]; readonly limits: readonly PlaceId[] }[] = [
  { of: ["fibre"], limits: ["evidence"] },
  { of: ["outlook"], limits: ["soil", "evidence", "care", "refuse", "worse"] },
  { of: ["cause", "safety"], limits: ["fibre", "evidence"] },
  { of: ["evidence"], limits: ["fibre"] },
  { of: ["paid"], limits: ["fibre", "evidence"] },
  { of: ["care"], limits: ["back-first", "refuse", "worse"] },
  { of: ["beyond", "repair"], limits: ["beyond", "repair"] },
];
/** Whatever says that we need to know more, or to hear from them, leans on what we ask. */
const SAY_NEED = Object.fromEntries(PARAGRAPHS.filter(({ when }) => when.is?.has?.includes("needs-more")).map(({ id }): [string, PlaceId] => [id, "asks"]));
/** Paragraphs that lean on what stands in another place of their rug, or of any rug where they speak of the whole letter ("all the same" on a doubt of its worth, that it is not worth it on why and how surely, or on little that comes back, "which" on what it may be, "the limits below", what we would not take on upon how much we can know): they never stand without it. */
const LEANS_ON: Readonly<Record<string, PlaceId>> = { "care-doubtful": "worth", "care-doubtful-wet": "worth", "care-little": "outlook", "care-little-wet": "outlook", "outlook-open": "fibre", "in-short-cleans": "care", "in-short-not-worth": "worth", "special-not-ours": "evidence", ...SAY_NEED };
/** Beside these, a change of what is said of a rug is a change of the answer. */
const NO_ANSWER: readonly PlaceId[] = ["heading", "asks", "safety"];

/** What of it a client has read: what was left out for length was never written. */
const saidOf = (told: Told): Told => ({ ...told, paragraphs: told.paragraphs.filter((p) => !p.unsaid) });
/** The same of the last letter alone: what it was silent on is told again. */
const lastOf = (told: Told): Told => ({ ...told, paragraphs: told.paragraphs.filter((p) => !p.earlier) });
/** Whether a piece says something else than what was told. */
const newBeside = (told: Told, readsToday: Pieces["readsToday"]) => (p: Piece): boolean => !isTold(p.used, told, readsToday) && !isSameJudgement(p, told, readsToday);
/** `isNew`: whether the client has not read it yet. `isNews`: whether the last letter, or what length took out of it, did not say it either. */
interface NewOf {
  readonly isNew: (piece: Piece) => boolean;
  readonly isNews: (piece: Piece) => boolean;
  /** Whether it answers what they have asked since: asked again, an answer stands again. */
  readonly isAnswer: (piece: Piece) => boolean;
  /** Had they asked nothing since, these would be called for: what only answers a question is no more than we could say before. */
  readonly unasked: readonly Piece[];
}

type AllMoved = ReturnType<typeof movedSince>;
/** It speaks of what the letter replaces: that stands whole, and no length takes it out. */
const isReplaced = (p: Piece, moved: AllMoved): boolean => moved.some(({ rug, topic, how }) => how === "changed" && rug === p.rug && standsWith(topic, p.used));

const leansOn = (leaning: Piece, p: Piece): boolean => (leaning.rug === null || leaning.rug === p.rug) && Object.hasOwn(LEANS_ON, leaning.used.id) && LEANS_ON[leaning.used.id] === p.place.id;
/** What points to limits further down brings them along, as if they were new too. */
const withLimits = (pieces: readonly Piece[], changed: readonly Piece[]): Piece[] => pieces.filter((p) => changed.includes(p) || changed.some((c) => leansOn(c, p)));

/** It stands at length under the name of its rug. */
const isOfRug = ({ place }: Piece): boolean => place.of === "rug" && place.id !== "heading" && !place.ahead;
/** Of several rugs the answer in short stands of every one that the letter speaks of, where it stands of any: else one would be answered ahead of those before it. */
function withInShort(pieces: readonly Piece[], changed: readonly Piece[]): Piece[] {
  const isInShort = ({ place }: Piece) => place.id === "in-short";
  return changed.some(isInShort) ? pieces.filter((p) => changed.includes(p) || (isInShort(p) && changed.some((c) => c.rug === p.rug && isOfRug(c)))) : [...changed];
}

/** Which pieces stand in a letter to somebody who was told all the others. `isUnchanged`: nothing but that all of it still stands. */
function standingOf(pieces: readonly Piece[], { isNew, isNews, isAnswer, unasked }: NewOf, moved: AllMoved, isUnchanged = false): Piece[] {
  const others = pieces.filter((p) => ((isNew(p) && !isYearsUntold(p)) || isReplaced(p, moved) || isAnswer(p)) && !ALWAYS.includes(p.place.id) && !p.place.follows);
  const changed = withLimits(pieces, withInShort(pieces, others));
  const isChanged = (rug: number | null, places: readonly PlaceId[]) => changed.some((p) => p.rug === rug && places.includes(p.place.id));
  const isThere = (p: Piece): boolean => ALWAYS.includes(p.place.id) || changed.includes(p) || BREATHS.some(({ of, limits }) => limits.includes(p.place.id) && isChanged(p.rug, of));
  const there = pieces.filter(isThere);
  const stands = (p: Piece): boolean => there.includes(p) || there.some((l) => leansOn(l, p));
  const isMore = (p: Piece): boolean => isOfRug(p) && !NO_ANSWER.includes(p.place.id) && !tellsNothingYet(p) && isNews(p);
  return pieces.filter((p) => {
    if (p.place.id === "since") return isUnchanged || moved.length > 0 || (changed.some(isMore) && unasked.some(isMore) && pieces.some((o) => isJudged(o) && stands(o)));
    if (p.place.id === "heading") return pieces.some((o) => o.rug === p.rug && isOfRug(o) && stands(o));
    return stands(p);
  });
}

/** What cleaning costs is said once of a rug: beside a sentence on its worth that tells it, the price keeps what else it says; null where that is nothing. */
function besideCost(p: Piece, standing: readonly Piece[], readsToday: Pieces["readsToday"]): Piece | null {
  const cost = p.place.id === "price" ? costSaid(p.used, readsToday) : null;
  if (cost === null || !standing.some((o) => o.place !== p.place && o.rug === p.rug && costSaid(o.used, readsToday) === cost)) return p;
  const parts = p.parts.filter(({ text }) => !text.includes(cost));
  const text = joinedParts(parts);
  return parts.length > 0 ? { ...p, parts, text, used: { ...p.used, here: text } } : null;
}

/** A piece joins the one before it where that one stands too, or where what is left out between them belongs into the same block. */
function joined(pieces: readonly Piece[], standing: readonly Piece[]): Piece[] {
  const joins = (p: Piece | undefined): boolean => {
    if (!p?.joins) return false;
    const before = pieces[pieces.indexOf(p) - 1];
    return before !== undefined && (standing.includes(before) || joins(before));
  };
  return standing.map((p) => ({ ...p, joins: joins(p) }));
}

/** What the letter before said, and what came since. */
interface Since { told: Told; came: Came }
/** They, or somebody from another address, wrote in words of their own, which only a person can answer. */
const haveWritten = ({ message, words = [], byOthers = false }: Came): boolean => message || words.length > 0 || byOthers;
/** They sent something, which a person may want to answer where it is all told once more. */
const haveSent = (came: Came): boolean => haveWritten(came) || came.answers || came.photos > 0;
/** As if they had not written these words. */
const without = (words: readonly string[], input: DraftInput): DraftInput =>
  ({ ...input, assessments: input.assessments.map((rug) => ({ ...rug, messages: (rug.messages ?? []).filter((text) => !words.includes(text)) })) });
/** These speak of a change, and a letter that is whole changes nothing: it is read by itself. */
const OF_CHANGES: readonly PlaceId[] = ["since"];

/**
 * The whole letter once more, for somebody who has had one: thanks for what came, no first aid that they were told, and where
 * they sent anything a place for the answer that only a person can write.
 * @throws Error where there is no rug to write about.
 */
export const composeWholeAgain = (asked: DraftInput, { told, came }: Since): ComposedDraft => inToneThatFits(asked, (input) => {
  const { subject, pieces, readsToday, ...leads } = piecesOf(input, { ...came, aidTold: toldAid(told, input) });
  const whole = pieces.filter((p) => !OF_CHANGES.includes(p.place.id));
  const standing = shortEnough(whole, input.assessments.length, leads);
  const laid = saidOnce(standing, leads);
  return { subject, text: blocks(haveSent(came) ? withAnswerPlace(laid.lines) : laid.lines), ...withToldBefore(partedBy(whole, standing, { laid, isNew: newBeside(lastOf(saidOf(told)), readsToday) }), told, (rug, topic) => standing.some((p) => p.rug === rug && speaksOf(topic, p.used))) };
});

/**
 * The letter that follows one that was sent: thanks for what came, where they wrote a place for the answer that only a person can write, what of the
 * last letter no longer holds, what we think now of that, and the closing. The same input gives the same letter.
 * @throws Error where there is no rug to write about.
 */
export function composeFollowing(input: DraftInput, { told, came: since }: Since): ComposedDraft {
  const came = { ...since, aidTold: toldAid(told, input) };
  const { readsToday, waits, pieces: unjudged } = piecesOf(input, came);
  // Of what was found beyond economic repair nobody waits for the years.
  const isFitting = (p: Piece) => !isYearsUntold(p) || p.rug === null || !input.assessments[p.rug]?.inspection?.isBeyondRepair;
  const unmoved = unjudged.filter(isFitting);
  const said = saidOf(told);
  const [isNew, isNews] = [newBeside(lastOf(said), readsToday), newBeside(lastOf(told), readsToday)];
  const isRug = (is: (rug: RugForDraft) => boolean) => (rug: number | null) => { const of = input.assessments[rug ?? -1]; return of !== undefined && is(of); };
  const isSoOf = (rug: RugForDraft, what: Feared) => (what === "gas" ? isAidDue(rug) && isGasTold(rug.answers) : what === "flood" ? isAidDue(rug) && isHandsOff(rug) : treatedIn(rug).includes(what));
  const isFeared = (what: Feared) => isRug((rug) => heldBackBy(rug) !== null || isSoOf(rug, what));
  const isFlooded = isRug((rug) => heldBackBy(rug) === "flood");
  const movedWhere = (isToldAnew: (rug: number | null) => boolean) => movedSince(unmoved, said, {
    waits, readsToday, tellsToday: (t) => (isFlooded(t.rug) ? null : readsToday(t)),
    isAidFirst: isRug(({ assessment }) => assessment.advice.action === "first-aid"),
    isKeepable: isRug((rug) => heldBackBy(rug) === null && treatedIn(rug).length === 0),
    isFeared: (rug, what) => (rug === null ? input.assessments.some((_, at) => isFeared(what)(at)) : isFeared(what)(rug)),
    isTimeSaid: isRug((rug) => isAidDue(rug) || rug.assessment.urgency.level === "hours" || Boolean(rug.inspection)), isToldAnew,
  });
  const words = since.words ?? [];
  const isAsked = answersIn(words);
  const unasked = words.length > 0 ? piecesOf(without(words, input), came).pieces.filter(isFitting) : unmoved;
  const newOf: NewOf = { isNew, isNews, isAnswer: ({ used }) => isAsked(used), unasked };
  const about = standingOf(unmoved, newOf, movedWhere(() => false));
  const moved = movedWhere((rug) => about.some((p) => p.rug === rug && p.place.id === "outlook"));
  // What a person writes may be a change; first aid told anew is one, and so is that it is over.
  const hasAid = (all: readonly { readonly place: string }[]) => all.some(({ place }) => place === "first-aid");
  const isSilent = about.every((p) => ALWAYS.includes(p.place.id) && !tellsAid(p.used)) && (hasAid(about.map((p) => p.used)) || !hasAid(lastOf(said).paragraphs));
  const unchanged = haveSent(since) && !haveWritten(since) && moved.length === 0 && isSilent;
  const of = (how: HowMoved) => TOPICS.map(({ id }) => id).filter((id) => moved.some((m) => m.how === how && m.topic === id));
  const rugsOf = (how: HowMoved) => Object.fromEntries(of(how).map((id) => [id, moved.flatMap((m) => (m.how === how && m.topic === id ? [m.rug] : []))] as const).filter(([, rugs]) => rugs.length < input.assessments.length));
  const inspected = unmoved.find((p) => p.place.id === "worth" && p.rug !== null && input.assessments[p.rug]?.inspection && isNews(p))?.rug ?? undefined;
  const { subject, pieces: all, ...leads } = piecesOf(input, { ...came, unchanged, ...(inspected === undefined ? {} : { inspected }), moved: { changed: of("changed"), gone: of("gone"), waits: of("waits"), rugsOf: { changed: rugsOf("changed"), gone: rugsOf("gone"), waits: rugsOf("waits") } } });
  const pieces = all.filter(isFitting).map((p) => (isReplaced(p, moved) ? { ...p, spare: null } : p));
  const calledFor = standingOf(pieces, newOf, moved, unchanged);
  const standing = shortEnough(calledFor.filter((p) => besideCost(p, calledFor, readsToday) !== null), input.assessments.length, leads);
  const laid = saidOnce(joined(pieces, standing).flatMap((p) => besideCost(p, standing, readsToday) ?? []), leads);
  const parted = partedBy(pieces, standing, { laid, isNew: (p) => isNew(p) && !isYearsUntold(p) && besideCost(p, calledFor, readsToday) !== null });
  const isOver = (rug: number | null, topic: TopicId) => moved.some((m) => m.how !== "waits" && m.topic === topic && (rug === null || m.rug === rug));
  return { subject, text: blocks(haveWritten(since) ? withAnswerPlace(laid.lines) : laid.lines), ...withToldBefore(parted, told, isOver) };
}
