import { leavesAid, tellsAid } from "./aid-told";
import { isSaidIn, type Told } from "./changes";
import type { ComposedDraft } from "./draft";
import type { TopicId } from "./facts";
import { isTakeable, topicsOf } from "./moved";
import type { SaidParagraph } from "./pieces";

type Kept = Pick<ComposedDraft, "paragraphs" | "leftOut">;

const isOfOne = (a: SaidParagraph, b: SaidParagraph): boolean => a.rug === b.rug && topicsOf(a).some((id) => topicsOf(b).includes(id));
const saysSame = (a: SaidParagraph, b: SaidParagraph): boolean => a.rug === b.rug && a.said === b.said;

/**
 * What is kept with a letter, so that a later one replaces and takes back what the client read, in whichever letter, and nothing else: where
 * a judgement stands as it was told, in the words in which it was told, not in those that today would have for it, whose other figures nobody read; and where
 * this letter is silent on it, since first aid comes first or it waits, that too; and the first aid that this letter only says still holds. `isOver`: whether this letter replaces or takes back what was told of a topic of a rug, or tells it anew.
 */
export function withToldBefore({ paragraphs, leftOut }: Kept, { text, paragraphs: before }: Told, isOver: (rug: number | null, topic: TopicId) => boolean): Kept {
  const isRead = (p: SaidParagraph): boolean => !p.unsaid;
  const read = [...paragraphs, ...leftOut].filter(isRead);
  const isLeft = (t: SaidParagraph): boolean => tellsAid(t) && paragraphs.some(leavesAid);
  const standsStill = before.filter((t) => isRead(t) && (isLeft(t) || (isTakeable(t) && !topicsOf(t).some((id) => isOver(t.rug, id)))) && !read.some((p) => saysSame(p, t)));
  const inOtherWords = (p: SaidParagraph): boolean => isRead(p) && p.said !== null && !isSaidIn(p, { text, paragraphs: before.filter(isRead) });
  const kept = leftOut.filter((p) => !inOtherWords(p) || !standsStill.some((t) => !t.earlier && isOfOne(t, p)));
  const isSilent = (t: SaidParagraph): boolean => Boolean(t.earlier) || !read.some((p) => isOfOne(t, p));
  return { paragraphs, leftOut: [...kept, ...standsStill.map(({ here: _, ...t }): SaidParagraph => ({ ...t, stands: false, ...(isSilent(t) ? { earlier: true } : {}) }))] };
}
