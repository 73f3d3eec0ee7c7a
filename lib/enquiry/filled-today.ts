import "server-only";
import type { DocumentKind } from "../reply/documents/offered";
import type { Db, Document, Tx } from "../store/database";
import { NEWEST_FIRST } from "../store/row-order";
import { filledAtFirst, type DocumentFacts } from "./document-content";
import { assessmentOf, rugAnswersOf } from "./stored";
import { filledOf } from "./stored-document";

type Made = Pick<Document, "rugId" | "filled" | "createdAt"> & { kind: DocumentKind };

/**
 * What was filled in for a document, as it would be filled in today: a place whose words the enquiry knows otherwise than when it was made, such as those of a
 * label that was corrected, takes them as they are known now. One that was left empty though its words were known stays empty.
 */
export async function filledToday(db: Db | Tx, { rugId, kind, filled, createdAt }: Made, facts: DocumentFacts): Promise<Record<string, string>> {
  const was = filledOf(filled) ?? {};
  const then = await db.rug.findUniqueOrThrow({
    where: { id: rugId },
    select: { answers: { where: { at: { lte: createdAt } } }, assessments: { where: { createdAt: { lte: createdAt } }, orderBy: NEWEST_FIRST.createdAt, take: 1, select: { result: true } } },
  });
  const [judged] = then.assessments;
  if (!judged) return was;
  const known = filledAtFirst(kind, facts);
  const knownThen = filledAtFirst(kind, { ...facts, answers: rugAnswersOf(then.answers), assessment: assessmentOf(judged.result) });
  const isKept = (place: string, words: string) => known[place] === knownThen[place] || (words === "" && knownThen[place] !== "");
  return Object.fromEntries(Object.entries(was).map(([place, words]) => [place, isKept(place, words) ? words : known[place] ?? words]));
}
