import { readLabel } from "../triage/read-label";
import type { Told } from "./changes";
import type { HowMoved, TopicId } from "./facts";
import type { PlaceId } from "./paragraphs/row";
import type { Piece, Pieces, SaidParagraph } from "./pieces";
import type { SlotName } from "./slot-words";
import type { Treated } from "./treated-first";

/** `rows`: paragraphs at other places that judge it too. `figure`: what it comes down to, wherever a paragraph tells it. `beside`: a place that tells something of it too, which moves by itself and stands again with what replaces it. `caution`: the paragraphs that warn of it, and of what: in whichever words, any of them is that caution. */
interface Topic { readonly id: TopicId; readonly places: readonly PlaceId[]; readonly rows?: readonly string[]; readonly figure?: SlotName; readonly beside?: PlaceId; readonly caution?: { readonly of: Feared; readonly rows: readonly string[] } }
/** What may be in a rug that harms people or spreads. */
export type Feared = Treated | "flood" | "gas";
/** What a letter judges, in the order in which a later one takes it back, and the places that speak of it. Elicited. */
export const TOPICS: readonly Topic[] = [
  { id: "fibre", places: ["fibre"] },
  { id: "outlook", places: ["outlook", "soil"] },
  { id: "worth", places: ["worth", "beyond"], rows: ["special-not-ours"] },
  { id: "repair", places: ["cut-down", "repair"] },
  { id: "life", places: ["life"] },
  { id: "cause", places: ["cause"], beside: "safety" },
  { id: "flood", places: [], caution: { of: "flood", rows: ["cause-flood", "first-aid-flood", "first-aid-known-flood", "first-aid-said-flood"] } },
  { id: "gas", places: [], caution: { of: "gas", rows: ["first-aid-gas", "first-aid-known-gas", "first-aid-said-dry-gas"] } },
  { id: "mould", places: [], caution: { of: "mould", rows: ["cause-mould", "cause-mould-told", "cause-mould-unseen"] } },
  { id: "insects", places: [], caution: { of: "insects", rows: ["cause-insects", "cause-insects-later"] } },
  { id: "haste", places: ["haste"] },
  { id: "care", places: ["care", "back-first", "dye-test", "refuse", "worse"] },
  { id: "price", places: ["price"], figure: "clean" },
];

const isAmong = ({ places, rows = [] }: Topic, { id, place }: Pick<Said, "id" | "place">): boolean => places.includes(place) || rows.includes(id);
const isOfTopic = (topic: Topic, p: Pick<Said, "id" | "place" | "text">): boolean => isAmong(topic, p) || Boolean(topic.caution?.rows.includes(p.id)) || (topic.figure !== undefined && p.text.includes(`{${topic.figure}}`));
/** Whether a paragraph speaks of a topic: at one of its places, or by its figure at another. */
export const speaksOf = (id: TopicId, p: Pick<Said, "id" | "place" | "text">): boolean => topicsOf(p).includes(id);
const isBeside = ({ beside }: Topic, p: Pick<Said, "place">): boolean => p.place === beside;
/** Whether a paragraph stands again where a topic is replaced: it speaks of it, or beside it. */
export const standsWith = (id: TopicId, p: Pick<Said, "id" | "place" | "text">): boolean => TOPICS.some((topic) => topic.id === id && (isOfTopic(topic, p) || isBeside(topic, p)));
/** The topics that a paragraph speaks of. */
export const topicsOf = (p: Pick<Said, "id" | "place" | "text">): TopicId[] => TOPICS.filter((topic) => isOfTopic(topic, p)).map(({ id }) => id);

/** Paragraphs that say no more than that we cannot tell yet: nothing of them can be taken back. */
const TELLS_NOTHING_YET: readonly string[] = [
  "fibre-said-wet", "fibre-unknown-photos", "fibre-unknown-nothing", "fibre-unknown", "outlook-flood", "outlook-antique-wide", "outlook-wet-wide", "outlook-wide-unsure", "outlook-wide-seen", "outlook-wide", "outlook-none", "outlook-smell", "outlook-smell-antique", "soil-beside", "worth-asked-open", "worth-asked-open-several",
  "care-unknown", "life-unknown-wide", "life-wide", "replace-doubtful", "cause-told", "cause-told-bare", "cause-told-back", "cause-told-ran", "cause-told-ran-wet", "cause-told-shape", "cause-told-insects",
  "cause-told-bare-later", "cause-told-insects-later", "price-asked-unknown",
];

type Judging = Pick<Piece, "place" | "used">;
export const tellsNothingYet = ({ used }: Judging): boolean => TELLS_NOTHING_YET.includes(used.id);
/** Whether a piece says of the years left no more than that we cannot tell them: news to nobody, but in place of a number. */
export const isYearsUntold = (p: Judging): boolean => p.place.id === "life" && tellsNothingYet(p);
/** Whether a piece judges something of a rug: not where it says that we cannot tell yet, nor where it limits, asks or advises. */
export const isJudged = (p: Judging): boolean => TOPICS.some((topic) => isAmong(topic, p.used)) && !tellsNothingYet(p);

type Said = Pick<Piece["used"], "id" | "rug" | "place" | "said" | "text">;
/** Whether a paragraph that was told judged something, which a later letter can replace or take back. */
export const isTakeable = (p: Said): boolean => p.said !== null && !TELLS_NOTHING_YET.includes(p.id) && topicsOf(p).length > 0;

/** What a place judges, by the slots of its figure or of its chance: in whichever words, the same there is the same judgement. */
const JUDGED: Partial<Record<PlaceId, readonly SlotName[]>> = { outlook: ["improvement", "mends"], worth: ["beyond"], life: ["life"], price: ["clean"] };
const leavesOpen = ({ said, text }: Said, slot: SlotName): boolean => said !== null && text.includes(`{${slot}}`);
/** Whether a paragraph was said with `value` in a slot, whatever filled the others; null: without that slot. Slots may stand side by side, so that what was said does not tell where one ends: the value does. */
export function wasFilledWith(p: Said, slot: SlotName, value: string | null): boolean {
  if (!leavesOpen(p, slot) || value === null) return value === null && !leavesOpen(p, slot);
  const pattern = p.text.split(/(\{[\w-]+\})/).map((part) => (part.startsWith("{") && part !== `{${slot}}` ? ".+?" : (part === `{${slot}}` ? value : part).replace(/[.*+?^$()|[\]\\]/g, "\\$&")));
  return new RegExp(`^${pattern.join("")}$`, "s").test(p.said ?? "");
}
/** Ends of a range of improvement that moved by no more than this, and are said in the same words, are the same to a reader: nobody can work them out closer. Points of a hundred. Elicited. */
const SAME_TO_A_READER = 2;
const FIGURES = /\((?<low>\d+)(?:–(?<high>\d+))?\s%\)/gu;
const endsOf = ({ groups }: RegExpMatchArray): [number, number] => [Number(groups?.low), Number(groups?.high ?? groups?.low)];
type IsFilled = typeof wasFilledWith;
/** The same, or with a range that reads the same to whoever was told it. */
const wasFilledAbout: IsFilled = (p, slot, value) => {
  const [[was, ...others], [now]] = [[...(p.said ?? "").matchAll(FIGURES)], [...(value ?? "").matchAll(FIGURES)]];
  const isNear = was && now && others.length === 0 && endsOf(was).every((end, at) => Math.abs(end - (endsOf(now)[at] ?? NaN)) <= SAME_TO_A_READER);
  return wasFilledWith(p, slot, isNear && value !== null ? value.replace(now[0], was[0]) : value);
};
/** What a slot of a paragraph reads today; null where it has none. */
const today = (p: Said, slot: SlotName, readsToday: Pieces["readsToday"]): string | null => (leavesOpen(p, slot) ? readsToday({ ...p, text: `{${slot}}` }) : null);
/** What a paragraph of today says that cleaning costs; null where it says nothing of it. */
export const costSaid = (p: Said, readsToday: Pieces["readsToday"]): string | null => today(p, "clean", readsToday);
/** Whether a figure that was told still reads so; so where it was not told. */
const isSoStill = (told: Said, slot: SlotName, readsToday: Pieces["readsToday"], isFilled: IsFilled = wasFilledWith): boolean => {
  const value = today(told, slot, readsToday);
  return !leavesOpen(told, slot) || (value !== null && isFilled(told, slot, value));
};

/** By which of those figures a paragraph judges; undefined where it has none of them. */
const figureIn = (p: Said, slots = JUDGED[p.place] ?? []): SlotName | undefined => slots.find((slot) => leavesOpen(p, slot));
/** Whether what was told judges by the same figure as what is said now, and that read the same. */
function isSame(told: Said, now: Said, readsToday: Pieces["readsToday"], { slots, isFilled = wasFilledAbout }: { slots?: readonly SlotName[] | undefined; isFilled?: IsFilled } = {}): boolean {
  const slot = figureIn(now, slots);
  return slot !== undefined && slot === figureIn(told, slots) && isFilled(told, slot, today(now, slot, readsToday));
}

/** Paragraphs that offer the ways of cleaning which they name, at once or for when it needs it, and those that advise against it. */
const OFFERS = ["care", "care-later", "care-unasked"], ADVISES_AGAINST = ["care-reluctant", "care-repair", "care-doubtful", "care-little"];
/** Ways of cleaning, and a dye that has run, as they are told of a wet rug, and which say the same of it once it is dry: "once it is dry" is moot then, and no change. */
export const ONCE_DRY: Readonly<Record<string, readonly string[]>> = {
  "care-wet": OFFERS, "care-later-wet": OFFERS, "care-trade-wet": ["care-trade"],
  "care-reluctant-wet": ADVISES_AGAINST, "care-repair-wet": ADVISES_AGAINST, "care-doubtful-wet": ADVISES_AGAINST, "care-little-wet": ADVISES_AGAINST,
  "cause-dye-bleed-wet": ["cause-dye-bleed"],
};
/** Paragraphs that say more than others which judge the same: that it dries first, that somebody has to see it, that sooner is better, by what we go. What more they say may come or go; the judgement stands. */
export const SAYS_MORE: typeof ONCE_DRY = {
  ...ONCE_DRY, "outlook-repair": ["outlook-repair-seen"], "back-first-named": ["back-first"],
  "cause-browning-cleaning": ["cause-browning-cleaning-unhurried"], "cause-browning-cleaning-unseen": ["cause-browning-cleaning-unseen-unhurried"],
  "cause-urine-fresh": ["cause-urine-fresh-unhurried"], "cause-food-fresh": ["cause-food-fresh-unhurried"], "cause-food-set-or-not": ["cause-food-old"],
};
const SAME_SINCE: readonly SlotName[] = ["methods", "chance", "repair"];
const thingOf = (id: string): readonly string[] | undefined => SAYS_MORE[id] ?? Object.values(SAYS_MORE).find((ids) => ids.includes(id));
/** Whether two paragraphs judge the same, though one may say more. */
const isAlike = (told: Said, now: Said, readsToday: Pieces["readsToday"]): boolean => thingOf(told.id) !== undefined && thingOf(told.id) === thingOf(now.id) && SAME_SINCE.every((slot) => wasFilledWith(told, slot, today(now, slot, readsToday)));
/** Whether what was told says all that is said now. */
const isMoot = (told: Said, now: Said, readsToday: Pieces["readsToday"]): boolean => isAlike(told, now, readsToday) && (SAYS_MORE[now.id] === undefined || SAYS_MORE[told.id] !== undefined);

/** Whether a paragraph was told already, and of other evidence alone. */
const isOnOther = (told: Said, { used, besideEvidence }: Piece): boolean =>
  besideEvidence !== null && told.id === used.id && told.said !== null && told.said.startsWith(besideEvidence.before) && told.said.endsWith(besideEvidence.after);
/** Whether both judge the same by their figure or chance; of worth, what the rug may be worth today is part of it where it was told. */
const isJudgedSo = (told: Said, now: Said, readsToday: Pieces["readsToday"], isFilled?: IsFilled): boolean =>
  told.place === now.place && isSame(told, now, readsToday, isFilled ? { isFilled } : {}) && isSoStill(told, "worthToday", readsToday);

/** What a label says that a letter quotes, however it is spelled: the only words in quotation marks in what letters say of the fibre. Null where none is quoted. */
function labelIn(text: string | null): string | null {
  const quoted = /“([^”]*)”/u.exec(text ?? "")?.[1];
  return quoted === undefined ? null : JSON.stringify(readLabel(quoted).components);
}
/** Whether the label that was gone by says something else by now: that is told again, though the judgement is the same. */
function isOtherLabel(told: Said, { place, text }: Pick<Piece, "place" | "text">): boolean {
  if (place.id !== "fibre" || told.place !== "fibre") return false;
  const [was, now] = [labelIn(told.said), labelIn(text)];
  return was !== null && now !== null && was !== now;
}

/** Whether a judgement was told already, by other evidence, in other words, of the rug while it was wet, or before anybody here saw it. */
export const isSameJudgement = (p: Piece, { paragraphs }: Told, readsToday: Pieces["readsToday"]): boolean =>
  paragraphs.some((t) => t.rug === p.rug && !isOtherLabel(t, p) && (isOnOther(t, p) || isMoot(t, p.used, readsToday) || isJudgedSo(t, p.used, readsToday)));

/** What was proposed, and that the work is worth its cost, are for after first aid: nothing is said of them while that is due, and neither is taken back; that what they see is soil is neither, while that is as likely. */
const AFTER_AID: readonly PlaceId[] = ["cut-down"], AFTER_AID_ROWS: readonly string[] = ["likely-worth-it"], AFTER_AID_IF_SO: readonly string[] = ["cause-soil"];

/**
 * How one topic of one rug moved: something of it reads otherwise, nothing is said of it any more and it is no longer so, or nothing yet
 * (`waits`, by place); null where all of it stands as it was told, in whichever place or words, or nothing was told. What only comes to it moves nothing. `isTold`: something of it is told today, at its places or beside them.
 */
function movedOf({ figure, caution }: Topic, { all, now, isTold }: { all: readonly SaidParagraph[]; now: readonly Piece[]; isTold: boolean }, { waits, readsToday, tellsToday, isAidFirst, isKeepable, isFeared, isTimeSaid, isToldAnew }: Compare): HowMoved | null {
  const told = all.filter((t) => !waits(t));
  if (told.length === 0) return all.some((t) => !t.earlier) ? "waits" : null;
  if (caution) return now.length > 0 || told.some((t) => isFeared(t.rug, caution.of)) ? null : "gone";
  const slots = figure ? [figure] : undefined;
  const isFilled = told.some((t) => isToldAnew(t.rug)) ? wasFilledWith : wasFilledAbout;
  const isSaid = (t: SaidParagraph) => now.some((p) =>
    (t.said !== null && p.text.includes(t.said)) || (p.used.id === t.id && readsToday(t) === t.said) || isOnOther(t, p) || isAlike(t, p.used, readsToday)
    || (figure ? isSame(t, p.used, readsToday, { slots, isFilled }) : isJudgedSo(t, p.used, readsToday, isFilled)));
  // Of what it costs the figure is all; what the rug may be worth belongs to the other judgements.
  const isSoToday = (t: SaidParagraph) => { const was = figureIn(t, slots); return was !== undefined && [was, ...(figure ? [] : ["worthToday" as const])].every((slot) => isSoStill(t, slot, tellsToday, isFilled)); };
  const isForLater = (t: SaidParagraph) => AFTER_AID.includes(t.place) || AFTER_AID_ROWS.includes(t.id) || (AFTER_AID_IF_SO.includes(t.id) && readsToday(t) === t.said);
  const isLeft = (t: SaidParagraph) => (isAidFirst(t.rug) && isForLater(t)) || (t.place === "haste" && isTimeSaid(t.rug));
  // What the owner may do with it stays open to them: of that only what a new one costs can read otherwise.
  const isOpen = (t: SaidParagraph) => t.place === "repair" && isKeepable(t.rug) && isSoStill(t, "replace", tellsToday);
  if (told.every((t) => isSaid(t) || isOpen(t) || (now.length === 0 && (isSoToday(t) || isLeft(t))))) return null;
  return isTold ? "changed" : "gone";
}

/**
 * `waits`: whether nothing is said there before we know whether the rug is wet. `readsToday`: what the text of a paragraph that was told
 * would say now. `tellsToday`: the same; null where nothing of the kind is told of its rug. `isAidFirst`: whether first aid comes before anything that we would
 * propose. `isKeepable`: whether the owner may use it as it is: nothing in it has to be seen to or treated first.
 * `isFeared`: whether what a caution is of may be in it, or flood water or water that they wrote of comes before anybody could say that it is not. First aid keeps none up: it has them press a cloth on what nobody has to fear, which what is told of mould forbids. That nobody has said whether it is wet keeps no caution up: of such a rug a first letter warns of nothing either, and offers to clean it.
 */
interface Compare {
  readonly waits: (told: Pick<Said, "rug" | "place">) => boolean;
  readonly readsToday: Pieces["readsToday"];
  readonly tellsToday: Pieces["readsToday"];
  readonly isAidFirst: (rug: number | null) => boolean;
  readonly isKeepable: (rug: number | null) => boolean;
  readonly isFeared: (rug: number | null, what: Feared) => boolean;
  /** Whether how soon it is seen to is said otherwise than by a paragraph of haste: by first aid, or by who inspected it. */
  readonly isTimeSaid: (rug: number | null) => boolean;
  /** Whether the letter says anyway how far a rug may come back: there no other figure stands beside the one that was told without a word of it. */
  readonly isToldAnew: (rug: number | null) => boolean;
}

/**
 * Whether first aid, which warns in a letter's own name, warned of a rug: of those that a letter no older (`beside`) warned of by themselves; where it did so of none, of all but those that it gave
 * lines of their own, since they may be touched.
 */
function isWarnedOf(rug: number, warning: Said, beside: readonly Said[]): boolean {
  const named = beside.filter((p) => topicsOf(p).some((id) => topicsOf(warning).includes(id)));
  return named.length > 0 ? named.some((p) => p.rug === rug) : !beside.some((p) => p.rug === rug && leavesOpen(p, "ownAid"));
}

/** What the last letter, or one before it of which the last was silent, said that no longer stands, rug by rug. */
export function movedSince(pieces: readonly Piece[], { paragraphs }: Told, compare: Compare): { rug: number; topic: TopicId; how: HowMoved }[] {
  const rugs = [...new Set(pieces.flatMap(({ rug }) => (rug === null ? [] : [rug])))];
  return rugs.flatMap((rug) => TOPICS.flatMap((topic) => {
    const of = (p: Said) => (p.rug === rug || (p.rug === null && topic.caution !== undefined)) && isOfTopic(topic, p);
    const all = paragraphs.filter((p) => of(p) && isTakeable(p) && (p.rug !== null || isWarnedOf(rug, p, paragraphs.filter((o) => o.rug !== null && !(o.earlier && !p.earlier)))));
    const now = pieces.filter((p) => of(p.used));
    const how = movedOf(topic, { all, now, isTold: now.length > 0 || pieces.some((p) => p.rug === rug && isBeside(topic, p.used)) }, compare);
    return how ? [{ rug, topic: topic.id, how }] : [];
  }));
}
