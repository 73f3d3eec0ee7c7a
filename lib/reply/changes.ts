import type { ComposedDraft } from "./draft";
import { PLACES } from "./paragraphs";
import type { PlaceId } from "./paragraphs/row";
import type { Pieces, SaidParagraph } from "./pieces";

/** What a letter of ours, or the draft of one, said: its words as the program wrote them, and every paragraph that the assessments then called for. */
export interface Told { readonly text: string; readonly paragraphs: readonly SaidParagraph[] }

type Said = Omit<SaidParagraph, "stands">;
const isOf = (a: Pick<Said, "id" | "rug">, b: Pick<Said, "id" | "rug">): boolean => a.id === b.id && a.rug === b.rug;

/**
 * Whether something was said already: in the same words, or in others that would still say the same with the facts of today,
 * so that a paragraph which was only worded anew is no news.
 */
export const isTold = (now: Said, { text, paragraphs }: Told, readsToday: Pieces["readsToday"]): boolean =>
  now.said === null || text.includes(now.said)
  || paragraphs.some((p) => p.said === now.said || (isOf(p, now) && p.said !== null && readsToday(p) === p.said));

/**
 * One thing that a letter would say otherwise today. `was` or `now` is null where it said, or would say, nothing. `wasOut`: what it was stood
 * in no draft of the program, only in a letter before or nowhere. `before`: what would stand after it, the nearest first.
 */
export interface Change { readonly place: string; readonly was: string | null; readonly now: string | null; readonly wasOut?: boolean; readonly before?: readonly string[] }

/**
 * Whether the workshop worded a paragraph anew, in words of its own, back to the shipped ones, or in another tone. A shipped
 * paragraph of another version is no news: it came with the program, and nobody here asked for it.
 */
const isReworded = (now: Said, was: Said): boolean =>
  isOf(now, was) && was.said !== null && now.said !== was.said && now.text !== was.text
  && (now.from === "workshop" || was.from === "workshop" || now.version === was.version);

/** What hangs on no assessment, or on what came since. */
const NEVER: readonly PlaceId[] = ["greeting", "thanks", "since", "heading", "signature"];
const nameOf = (id: PlaceId) => PLACES.find((p) => p.id === id)?.name ?? id;

/** What a draft would say otherwise today, by the assessment or by the paragraphs, in the order of a letter. `before`: what the program wrote it from; `now`: what it would write. */
export function changesBetween(before: Told, now: Pick<ComposedDraft, "paragraphs" | "leftOut">, readsToday: Pieces["readsToday"]): Change[] {
  const counts = (p: SaidParagraph) => !NEVER.includes(p.place);
  const all = [...now.paragraphs, ...now.leftOut];
  const today = all.filter(counts);
  const gone = before.paragraphs.filter((p) => counts(p) && p.said !== null && !today.some((n) => isOf(n, p) || n.said === p.said));
  const pair = (n: SaidParagraph): SaidParagraph | null => {
    const same = before.paragraphs.find((p) => isOf(p, n));
    const at = gone.findIndex((p) => p.place === n.place && p.rug === n.rug);
    return same ?? (at < 0 ? null : (gone.splice(at, 1)[0] ?? null));
  };
  const isNews = (n: SaidParagraph) => before.paragraphs.some((p) => isReworded(n, p)) || (counts(n) && !isTold(n, before, readsToday));
  const moved = all.filter((n) => n.place !== SINCE && isNews(n)).map((n) => ({ place: n.place, was: pair(n), now: n as SaidParagraph | null }));
  const open = [...moved, ...gone.map((was) => ({ place: was.place, was, now: null }))].filter(({ was, now: n }) => was?.stands || n?.stands);
  const since = { was: sinceIn(before.paragraphs), now: sinceIn(now.paragraphs) };
  const isSinceNews = since.was?.said !== since.now?.said && (open.length > 0 || all.some((n) => n.place === SINCE && isNews(n)));
  return [...(isSinceNews ? [{ place: SINCE, ...since }] : []), ...open]
    .sort((a, b) => orderOf(a.place) - orderOf(b.place))
    .map(({ place, was, now: n }) => ({ place: nameOf(place), was: was?.said ?? null, now: n?.said ?? null, ...(was?.stands === false ? { wasOut: true } : {}), ...standAfter(n, now.paragraphs) }));
}
const orderOf = (id: PlaceId) => PLACES.findIndex((p) => p.id === id);

/** What a letter says of the change, in one: its sentences name what moved, and are right only together. */
const SINCE: PlaceId = "since";
function sinceIn(paragraphs: readonly SaidParagraph[]): SaidParagraph | null {
  const [first, ...more] = paragraphs.filter((p) => p.place === SINCE && p.stands);
  return first ? { ...first, said: [first, ...more].map((p) => p.said).join(" ") } : null;
}

/** What stands after a paragraph in a letter. */
function standAfter(n: SaidParagraph | null, standing: readonly SaidParagraph[]): Pick<Change, "before"> {
  const at = standing.findLastIndex((p) => p.place === n?.place && p.rug === n.rug);
  const before = at < 0 ? [] : standing.slice(at + 1).flatMap(({ said }) => said ?? []);
  return before.length > 0 ? { before } : {};
}

/** Whether a letter still reads as it did before a change: its new words are not in it, or the old ones are. `beside`: the letter without what it took in. */
export const isOpen = ({ was, now }: Change, text: string, beside = text): boolean =>
  (now !== null && !text.includes(now)) || (was !== null && beside.includes(was) && !now?.includes(was));

/** Those of the changes that a letter has not taken in. Old words that are part of some new ones are not the old ones any more. */
export function openIn(changes: readonly Change[], text: string): Change[] {
  const beside = changes.reduce((rest, { now }) => (now === null ? rest : rest.replaceAll(now, "")), text);
  return changes.filter((c) => isOpen(c, text, beside));
}

/** What a draft says of a change: nothing, where only a letter before it did. */
export const wasIn = ({ was, wasOut }: Change, text: string): string | null => (wasOut && was !== null && !text.includes(was) ? null : was);

/** The letter with a change taken in: in place of the old words; else before what stands after it; else in a block of its own before the last one. */
export function takenIn({ was, now, before = [] }: Change, text: string): string {
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
  if (begins || !words.includes("\n")) return `${head}${words}${begins ? "\n\n" : " "}${text.slice(at)}`;
  return `${head.trimEnd()}\n\n${words}\n\n${text.slice(at)}`;
}
/** Without the gaps that something taken out leaves. */
const tidied = (text: string): string => text.replace(/ {2,}/g, " ").replace(/ *\n{3,}/g, "\n\n").replace(/\n\n +/g, "\n\n").trim();
