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

/** One thing that a letter would say otherwise today. `was` or `now` is null where it said, or would say, nothing. */
export interface Change { readonly place: string; readonly was: string | null; readonly now: string | null }

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
  const moved = all.filter(isNews).map((n) => ({ place: n.place, was: pair(n), now: n as SaidParagraph | null }));
  return [...moved, ...gone.map((was) => ({ place: was.place, was, now: null }))]
    .filter(({ was, now: n }) => was?.stands || n?.stands)
    .sort((a, b) => orderOf(a.place) - orderOf(b.place))
    .map(({ place, was, now: n }) => ({ place: nameOf(place), was: was?.said ?? null, now: n?.said ?? null }));
}
const orderOf = (id: PlaceId) => PLACES.findIndex((p) => p.id === id);

/** Whether a letter still reads as it did before a change: its new words are not in it, or the old ones are. */
export const isOpen = ({ was, now }: Change, text: string): boolean =>
  (now !== null && !text.includes(now)) || (was !== null && text.includes(was) && !now?.includes(was));

/** The letter with a change taken in: in place of the old words, or in a block of its own before the last one. */
export function takenIn({ was, now }: Change, text: string): string {
  if (was !== null && text.includes(was)) return tidied(text.replace(was, () => now ?? ""));
  if (now === null || text.includes(now)) return text;
  const all = text.trimEnd().split("\n\n");
  return [...all.slice(0, -1), now, ...all.slice(-1)].join("\n\n");
}
/** Without the gaps that something taken out leaves. */
const tidied = (text: string): string => text.replace(/ {2,}/g, " ").replace(/ *\n{3,}/g, "\n\n").replace(/\n\n +/g, "\n\n").trim();
