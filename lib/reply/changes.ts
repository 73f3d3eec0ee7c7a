import type { ComposedDraft } from "./draft";
import { LEADS, PLACES } from "./paragraphs";
import type { PlaceId } from "./paragraphs/row";
import type { Pieces, SaidParagraph } from "./pieces";

/** What a letter of ours, or the draft of one, said: its words as the program wrote them, and every paragraph that the assessments then called for. */
export interface Told { readonly text: string; readonly paragraphs: readonly SaidParagraph[] }

type Said = Omit<SaidParagraph, "stands">;
const isOf = (a: Pick<Said, "id" | "rug">, b: Pick<Said, "id" | "rug">): boolean => a.id === b.id && a.rug === b.rug;

/** Whether a paragraph's words were said of the same rug, or of the whole letter: what was said of one of several rugs tells nothing of another. A lead only holds what its rugs have by themselves. */
export function isSaidIn(now: Said, { text, paragraphs }: Told): boolean {
  const { said, rug } = now;
  if (said === null) return false;
  const isFor = (p: Said) => p.rug === rug || (p.rug === null && !LEADS.includes(p.place));
  return rug === null ? text.includes(said) : paragraphs.some((p) => (p.said === null ? isOf(p, now) && text.includes(said) : isFor(p) && p.said.includes(said)));
}
/**
 * Whether something was said already of its rug: in the same words, or in others that would still say the same with the facts of today,
 * so that a paragraph which was only worded anew is no news.
 */
export const isTold = (now: Said, told: Told, readsToday: Pieces["readsToday"]): boolean =>
  now.said === null || isSaidIn(now, told) || told.paragraphs.some((p) => isOf(p, now) && p.said !== null && readsToday(p) === p.said);
/** The headings of rugs that stand in both drafts, by rug: under each it is found what is said of that rug, whatever is said of another in the same words. */
function headingsOf(was: readonly SaidParagraph[], now: readonly SaidParagraph[]): ReadonlyMap<number, string> {
  const stands = (p: SaidParagraph) => p.place === HEADING && p.stands;
  const kept = was.filter((w) => stands(w) && now.some((n) => stands(n) && isOf(n, w) && n.said === w.said));
  return new Map(kept.flatMap(({ rug, said }) => (rug === null || said === null ? [] : [[rug, said] as const])));
}
type IsOther = (a: Pick<Said, "rug">, b: Pick<Said, "rug">) => boolean;
/** Whether a draft holds the words, and not of another rug alone: what stands there is put in no second time. */
function isWrittenIn(now: Said, { text, paragraphs }: Told, isOfOther: IsOther): boolean {
  const { said } = now;
  if (said === null) return false;
  return paragraphs.some((p) => p.said === said && !isOfOther(p, now)) || (text.includes(said) && !paragraphs.some((p) => isOfOther(p, now) && p.said?.includes(said)));
}

/**
 * One thing that a letter would say otherwise today. `was` or `now` is null where it said, or would say, nothing. `wasOut`: what it was stood
 * in no draft of the program, only in a letter before or nowhere. `before`: what would stand after it, the nearest first.
 * `of`: set where its words are said of another rug too, which rug it is, counted from 0, under which heading it stands, and which come after that.
 */
export interface Change { readonly place: string; readonly was: string | null; readonly now: string | null; readonly wasOut?: boolean; readonly before?: readonly string[]; readonly of?: OfRug }
interface OfRug { readonly rug: number; readonly heading: string; readonly after: readonly string[] }

/**
 * Whether the workshop worded a paragraph anew, in words of its own, back to the shipped ones, or in another tone. A shipped
 * paragraph of another version is no news: it came with the program, and nobody here asked for it.
 */
const isReworded = (now: Said, was: Said): boolean =>
  isOf(now, was) && was.said !== null && now.said !== was.said && now.text !== was.text
  && (now.from === "workshop" || was.from === "workshop" || now.version === was.version);

/** What hangs on no assessment, or on what came since, or is made of other paragraphs. */
const NEVER: readonly PlaceId[] = ["greeting", "thanks", "since", "heading", "signature", ...LEADS];
const nameOf = (id: PlaceId) => PLACES.find((p) => p.id === id)?.name ?? id;

interface Pair { readonly place: PlaceId; readonly was: SaidParagraph | null; readonly now: SaidParagraph | null }

/** What a draft would say otherwise today, by the assessment or by the paragraphs, in the order of a letter. `before`: what the program wrote it from; `now`: what it would write. */
export function changesBetween({ text, paragraphs }: Told, now: Pick<ComposedDraft, "paragraphs" | "leftOut">, readsToday: Pieces["readsToday"]): Change[] {
  const counts = (p: SaidParagraph) => !NEVER.includes(p.place);
  // Of what only a letter before said neither draft says anything.
  const isOfDraft = (p: SaidParagraph) => !p.earlier;
  const before: Told = { text, paragraphs: paragraphs.filter(isOfDraft) };
  const all = [...now.paragraphs, ...now.leftOut].filter(isOfDraft);
  const today = all.filter(counts);
  const headings = headingsOf(before.paragraphs, now.paragraphs);
  const isOfOther: IsOther = (a, b) => a.rug !== b.rug && [a, b].every(({ rug }) => rug !== null && headings.has(rug));
  const gone = before.paragraphs.filter((p) => counts(p) && p.said !== null && !today.some((n) => isOf(n, p) || (n.said === p.said && !isOfOther(n, p))));
  const pair = (n: SaidParagraph): SaidParagraph | null => {
    const same = before.paragraphs.find((p) => isOf(p, n));
    const at = gone.findIndex((p) => p.place === n.place && p.rug === n.rug);
    return same ?? (at < 0 ? null : (gone.splice(at, 1)[0] ?? null));
  };
  const isNews = (n: SaidParagraph) => before.paragraphs.some((p) => isReworded(n, p) || isLaidOtherwise(n, p)) || (counts(n) && !isWrittenIn(n, before, isOfOther) && !isTold(n, before, readsToday));
  const moved = all.filter((n) => n.place !== SINCE && !LEADS.includes(n.place) && isNews(n)).map((n): Pair => ({ place: n.place, was: pair(n), now: n }));
  const open = [...moved, ...gone.map((was): Pair => ({ place: was.place, was, now: null }))].filter(({ was, now: n }) => was?.stands || n?.stands);
  const isLead = ({ place }: SaidParagraph) => LEADS.includes(place);
  const leads = leadsBetween(before.paragraphs.filter(isLead), now.paragraphs.filter(isLead), open);
  const named = leads.length > 0 || open.length > 0 ? headingsBetween(before.paragraphs, now.paragraphs) : [];
  const since = { was: sinceIn(before.paragraphs), now: sinceIn(now.paragraphs) };
  const isSinceNews = since.was?.said !== since.now?.said && (open.length > 0 || all.some((n) => n.place === SINCE && isNews(n)));
  const ofRug = (pair: Pair) => ofOneRug(pair, [...before.paragraphs, ...now.paragraphs], headings);
  return [...(isSinceNews ? [{ place: SINCE, ...since }] : []), ...named, ...leads, ...open]
    .sort((a, b) => orderOf(a) - orderOf(b))
    .map((pair) => ({ ...pair, of: ofRug(pair) }))
    .map(({ place, was, now: n, of }) => ({ ...of, place: nameOf(place), was: was && standsAs(was), now: n && standsAs(n), ...(was?.stands === false ? { wasOut: true } : {}), ...standAfter(n, now.paragraphs) }))
    .filter((c) => c.was !== c.now);
}
/** In the order of a letter; leads after what comes under them and before what leaves them, so that whichever change is taken in finds its words once. */
const orderOf = ({ place, was }: Pair): number => {
  const leaves = was !== null && standsAs(was) === null;
  return PLACES.findIndex((p) => p.id === (leaves || LEADS.includes(place) ? "shared" : place)) + (leaves ? 0.5 : 0);
};

/** Of which rug a change is, where its words do not tell: something that stands of another rug has them too. */
function ofOneRug({ was, now }: Pair, said: readonly SaidParagraph[], headings: ReadonlyMap<number, string>): Pick<Change, "of"> {
  const rug = (now ?? was)?.rug ?? null;
  const heading = rug === null ? undefined : headings.get(rug);
  if (rug === null || heading === undefined) return {};
  const words = [was && standsAs(was), now && standsAs(now)];
  const isOfAnother = said.some((p) => p.stands && p.rug !== null && p.rug !== rug && words.some((w) => w && standsAs(p)?.includes(w)));
  return isOfAnother ? { of: { rug, heading, after: [...headings].flatMap(([at, other]) => (at > rug ? [other] : [])) } } : {};
}

/** What of a paragraph stands at its own place; null where it is said under a lead of several rugs. */
const standsAs = (p: Said): string | null => (p.here === undefined ? p.said : p.here);
/** It says the same, but was said once of several rugs and is not, or the other way round. */
const isLaidOtherwise = (now: SaidParagraph, was: SaidParagraph): boolean => isOf(now, was) && now.stands && was.stands && now.said === was.said && standsAs(now) !== standsAs(was);

/** What stands under each lead, in one: its heading is right only over just that. A lead is news where what stands under it is, or which rugs it names. */
function leadsBetween(was: readonly SaidParagraph[], now: readonly SaidParagraph[], open: readonly Pair[]): Pair[] {
  const headingOf = (p: SaidParagraph) => `${p.place}:${p.said?.split("\n\n")[0]}`;
  const isNews = was.length !== now.length || now.some((n) => !was.some((w) => headingOf(w) === headingOf(n)))
    || open.some(({ was: w, now: n }) => w?.here !== undefined || n?.here !== undefined);
  if (!isNews) return [];
  const kept = now.map((n): Pair => ({ place: n.place, was: was.find((w) => headingOf(w) === headingOf(n)) ?? null, now: n }));
  return [...was.filter((w) => !kept.some((k) => k.was === w)).map((w): Pair => ({ place: w.place, was: w, now: null })), ...kept];
}

/** Headings that come or go with what stands under them. */
function headingsBetween(was: readonly SaidParagraph[], now: readonly SaidParagraph[]): Pair[] {
  const of = (all: readonly SaidParagraph[]) => all.filter((p) => p.place === HEADING && p.stands);
  const missing = (all: readonly SaidParagraph[], from: readonly SaidParagraph[]) => of(all).filter((p) => !of(from).some((o) => o.rug === p.rug));
  return [...missing(was, now).map((w): Pair => ({ place: HEADING, was: w, now: null })), ...missing(now, was).map((n): Pair => ({ place: HEADING, was: null, now: n }))];
}
const HEADING: PlaceId = "heading";


/** What a letter says of the change, in one: its sentences name what moved, and are right only together. */
const SINCE: PlaceId = "since";
function sinceIn(paragraphs: readonly SaidParagraph[]): SaidParagraph | null {
  const [first, ...more] = paragraphs.filter((p) => p.place === SINCE && p.stands);
  return first ? { ...first, said: [first, ...more].map((p) => p.said).join(" ") } : null;
}

/** What stands after a paragraph in a letter. */
function standAfter(n: SaidParagraph | null, standing: readonly SaidParagraph[]): Pick<Change, "before"> {
  const at = standing.findLastIndex((p) => p.place === n?.place && p.rug === n.rug);
  const before = at < 0 ? [] : standing.slice(at + 1).flatMap((p) => standsAs(p) ?? []);
  return before.length > 0 ? { before } : {};
}

/** Where in a letter what is said of the rug of a change stands; all of it where its words tell which, or where somebody took the heading out. */
function placeOf({ of }: Change, text: string): [from: number, to: number] {
  const from = of ? text.indexOf(of.heading) : -1;
  if (from < 0) return [0, text.length];
  const ends = (of?.after ?? []).map((said) => text.indexOf(said, from)).filter((at) => at > from);
  return [from, ends.length > 0 ? text.slice(0, Math.min(...ends)).trimEnd().length : text.length];
}
const partOf = (change: Change, text: string): string => text.slice(...placeOf(change, text));

/** Whether a letter still reads as it did before a change: its new words are not in it, or the old ones are. `beside`: the letter without what it took in. */
export function isOpen(change: Change, text: string, beside = text): boolean {
  const { was, now } = change;
  return (now !== null && !partOf(change, text).includes(now)) || (was !== null && partOf(change, beside).includes(was) && !now?.includes(was));
}

/** Those of the changes that a letter has not taken in. Old words that are part of some new ones are not the old ones any more. */
export function openIn(changes: readonly Change[], text: string): Change[] {
  const beside = ({ was }: Change) => changes.reduce((rest, { now }) => (now === null || was === null || !now.includes(was) ? rest : rest.replaceAll(now, "")), text);
  return changes.filter((c) => isOpen(c, text, beside(c)));
}

/** What a draft says of a change: nothing, where only a letter before it did. */
export const wasIn = (change: Change, text: string): string | null => (change.wasOut && change.was !== null && !partOf(change, text).includes(change.was) ? null : change.was);

/** The letter with a change taken in: in place of the old words; else before what stands after it; else in a block of its own before the last one. */
export function takenIn(change: Change, text: string): string {
  const [from, to] = placeOf(change, text);
  const part = text.slice(from, to);
  const { now, before = [] } = change;
  // What stands after it, or the last block, belongs to another rug: it ends what is said of its own.
  const isAtEnd = to < text.length && now !== null && !part.includes(now) && !(change.was !== null && part.includes(change.was)) && !before.some((said) => part.includes(said));
  return text.slice(0, from) + (isAtEnd ? `${part}\n\n${now}` : takenInto(part, change)) + text.slice(to);
}
function takenInto(text: string, { was, now, before = [] }: Change): string {
  // Words that were taken in and hold the old ones stand before those: first aid does, of a caution that it replaces.
  const at = was === null ? -1 : text.lastIndexOf(was);
  if (was !== null && at >= 0) return tidied(text.slice(0, at) + (now ?? "") + text.slice(at + was.length));
  if (now === null || text.includes(now)) return text;
  const next = before.find((said) => text.includes(said));
  if (next !== undefined) return putBefore(text.indexOf(next), now, text);
  const all = text.trimEnd().split("\n\n");
  return [...all.slice(0, -1), now, ...all.slice(-1)].join("\n\n");
}
/** Words put in at a place: as a block of their own where a block begins there or they have lines of their own, else in the midst of it. */
function putBefore(at: number, words: string, text: string): string {
  const head = text.slice(0, at);
  const begins = head === "" || head.endsWith("\n\n");
  // Several blocks are put between two.
  if (!begins && words.includes("\n\n")) return putBefore(head.lastIndexOf("\n\n") + (head.includes("\n\n") ? 2 : 1), words, text);
  if (begins || !words.includes("\n")) return `${head}${words}${begins ? "\n\n" : " "}${text.slice(at)}`;
  return `${head.trimEnd()}\n\n${words}\n\n${text.slice(at)}`;
}
/** Without the gaps that something taken out leaves. */
const tidied = (text: string): string => text.replace(/ {2,}/g, " ").replace(/ *\n{3,}/g, "\n\n").replace(/\n\n +/g, "\n\n").trim();
