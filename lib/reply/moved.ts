import type { Told } from "./changes";
import type { Moved, TopicId } from "./facts";
import type { PlaceId } from "./paragraphs/row";
import type { Piece, SaidParagraph } from "./pieces";
import type { SlotName } from "./slot-words";

/** `figure`: what it comes down to, wherever a paragraph tells it. */
interface Topic { readonly id: TopicId; readonly places: readonly PlaceId[]; readonly figure?: SlotName }
/** What a letter judges, in the order in which a later one takes it back, and the places that speak of it. Elicited. */
export const TOPICS: readonly Topic[] = [
  { id: "fibre", places: ["fibre"] },
  { id: "outlook", places: ["outlook", "soil"] },
  { id: "worth", places: ["worth", "beyond"] },
  { id: "repair", places: ["cut-down", "repair"] },
  { id: "life", places: ["life"] },
  { id: "cause", places: ["cause"] },
  { id: "care", places: ["care", "back-first", "dye-test", "refuse", "worse"] },
  { id: "price", places: ["price"], figure: "clean" },
];

const isOfTopic = ({ places, figure }: Topic, { place, text }: Pick<Said, "place" | "text">): boolean => places.includes(place) || (figure !== undefined && text.includes(`{${figure}}`));
/** Whether a paragraph speaks of a topic: at one of its places, or by its figure at another. */
export const speaksOf = (id: TopicId, p: Pick<Said, "place" | "text">): boolean => TOPICS.some((topic) => topic.id === id && isOfTopic(topic, p));

/** Paragraphs that say no more than that we cannot tell yet: nothing of them can be taken back. */
const TELLS_NOTHING_YET: readonly string[] = [
  "fibre-said-wet", "fibre-unknown-photos", "fibre-unknown-nothing", "fibre-unknown", "outlook-flood", "outlook-antique-wide", "outlook-wet-wide", "outlook-wide-unsure", "outlook-wide-seen", "outlook-wide", "outlook-none", "outlook-smell", "outlook-smell-antique", "soil-beside", "worth-asked-open", "worth-asked-open-several",
  "care-unknown", "life-unknown-wide", "life-wide",
];

type Judging = Pick<Piece, "place" | "used">;
export const tellsNothingYet = ({ used }: Judging): boolean => TELLS_NOTHING_YET.includes(used.id);
/** Whether a piece says of the years left no more than that we cannot tell them: news to nobody, but in place of a number. */
export const isYearsUntold = (p: Judging): boolean => p.place.id === "life" && tellsNothingYet(p);
/** What a paragraph says that cleaning costs, as it was said; null where it says nothing of it. */
export const costSaid = (p: Said): string | null => filledIn(p, "clean");
/** Whether a piece judges something of a rug: not where it says that we cannot tell yet, nor where it limits, asks or advises. */
export const isJudged = (p: Judging): boolean => TOPICS.some(({ places }) => places.includes(p.place.id)) && !tellsNothingYet(p);

type Said = Pick<Piece["used"], "id" | "rug" | "place" | "said" | "text">;

/** What a place judges, by the slot of its figure or of its chance: in whichever words, the same there is the same judgement. */
const JUDGED: Partial<Record<PlaceId, SlotName>> = { outlook: "improvement", worth: "beyond", life: "life", price: "clean" };
/** What fills a slot of a paragraph, as it was said; null where it has none. */
function filledIn({ text, said }: Said, slot: SlotName): string | null {
  if (said === null || !text.includes(`{${slot}}`)) return null;
  const pattern = text.split(/(\{[\w-]+\})/).map((part) => (part === `{${slot}}` ? "(.+?)" : part.startsWith("{") ? ".+?" : part.replace(/[.*+?^$()|[\]\\]/g, "\\$&")));
  return new RegExp(`^${pattern.join("")}$`, "s").exec(said)?.[1] ?? null;
}
/** What a paragraph judges, as it was said; null where it has none of those figures. */
function judged(p: Said, slot = JUDGED[p.place]): string | null {
  return slot ? filledIn(p, slot) : null;
}

/** Paragraphs that offer the ways of cleaning which they name, at once or for when it needs it, and those that advise against it. */
const OFFERS = ["care", "care-later", "care-unasked"], ADVISES_AGAINST = ["care-reluctant", "care-repair", "care-doubtful", "care-little"];
/** Ways of cleaning, and a dye that has run, as they are told of a wet rug, and which say the same of it once it is dry: "once it is dry" is moot then, and no change. */
export const ONCE_DRY: Readonly<Record<string, readonly string[]>> = {
  "care-wet": OFFERS, "care-later-wet": OFFERS, "care-trade-wet": ["care-trade"],
  "care-reluctant-wet": ADVISES_AGAINST, "care-repair-wet": ADVISES_AGAINST, "care-doubtful-wet": ADVISES_AGAINST, "care-little-wet": ADVISES_AGAINST,
  "cause-dye-bleed-wet": ["cause-dye-bleed"],
};
/** What waited for somebody to see it says the same without that once somebody has. */
const ONCE_SEEN: typeof ONCE_DRY = { "outlook-repair": ["outlook-repair-seen"] };
const SAME_SINCE: readonly SlotName[] = ["methods", "chance", "repair"];
const isMoot = (told: Said, now: Said): boolean => [ONCE_DRY, ONCE_SEEN].some((once) => once[told.id]?.includes(now.id)) && SAME_SINCE.every((slot) => filledIn(told, slot) === filledIn(now, slot));

/** Whether a judgement was told already, by other evidence, in other words, of the rug while it was wet, or before anybody here saw it. */
export function isSameJudgement({ used, besideEvidence }: Piece, { paragraphs }: Told): boolean {
  const now = judged(used);
  const isOnOther = (p: Said) => besideEvidence !== null && p.id === used.id && p.said !== null && p.said.startsWith(besideEvidence.before) && p.said.endsWith(besideEvidence.after);
  return paragraphs.some((p) => p.rug === used.rug && (isOnOther(p) || isMoot(p, used) || (now !== null && p.place === used.place && judged(p) === now)));
}

/**
 * How one topic of one rug moved: it reads otherwise, nothing is said of it any more and it is no longer so, or nothing yet (`waits`, by
 * place); null where it stands as it was told, in whichever place, or nothing was told.
 */
function movedOf({ figure }: Topic, { all, now }: { all: readonly SaidParagraph[]; now: readonly Piece[] }, { isNew, waits, readsToday }: Compare): keyof Moved | null {
  const told = all.filter((t) => !waits(t));
  if (told.length === 0) return all.length > 0 ? "waits" : null;
  const isSame = (a: Said, b: Said) => judged(a, figure) !== null && judged(a, figure) === judged(b, figure);
  const isSoToday = (t: SaidParagraph) => {
    const slot = figure ?? JUDGED[t.place];
    return slot !== undefined && judged(t, slot) !== null && judged(t, slot) === readsToday({ ...t, text: `{${slot}}` });
  };
  if (now.length === 0) return told.every(isSoToday) ? null : "gone";
  const isSaidToday = (t: Said) => now.some(({ used }) => used.id === t.id || used.said === t.said || isMoot(t, used) || isSame(t, used));
  const isNewOf = (p: Piece) => (figure && judged(p.used, figure) !== null ? !told.some((t) => isSame(t, p.used)) : isNew(p));
  return now.some(isNewOf) || !told.every(isSaidToday) ? "changed" : null;
}

/**
 * `isNew`: whether a piece was not told yet. `waits`: whether nothing is said there before we know whether the rug is wet. `readsToday`: what the
 * text of a paragraph that was told would say now; null where nothing of the kind is said of its rug.
 */
interface Compare {
  readonly isNew: (piece: Piece) => boolean;
  readonly waits: (told: Pick<Said, "rug" | "place">) => boolean;
  readonly readsToday: (told: SaidParagraph) => string | null;
}

/** What the last letter said that no longer stands, rug by rug. */
export function movedSince(pieces: readonly Piece[], { paragraphs }: Told, compare: Compare): { rug: number; topic: TopicId; how: keyof Moved }[] {
  const rugs = [...new Set(pieces.flatMap(({ rug }) => (rug === null ? [] : [rug])))];
  return rugs.flatMap((rug) => TOPICS.flatMap((topic) => {
    const of = (p: Said) => p.rug === rug && isOfTopic(topic, p);
    const all = paragraphs.filter((p) => of(p) && p.said !== null && !TELLS_NOTHING_YET.includes(p.id));
    const how = movedOf(topic, { all, now: pieces.filter((p) => of(p.used)) }, compare);
    return how ? [{ rug, topic: topic.id, how }] : [];
  }));
}
