import "server-only";
import { documentsOffered, type DocumentKind } from "../reply/documents/offered";
import type { Db, Prisma, Tx } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import { capital } from "../words/capital";
import { ok, refuse, type Result } from "./caller";
import { documentContent, type DocumentFacts } from "./document-content";
import { documentFacts } from "./document-facts";
import { DOCUMENT_FIELDS } from "./document-forms";
import { documentKindSchema } from "./document-view";
import { withDraftOf } from "./enclosures";
import { filledToday } from "./filled-today";
import { insteadOf } from "./instead-of-outdated";
import { isSameText } from "./stored-document";

/** A document that would say otherwise now, since its rug was judged anew; `judgedAt`: when that was last. `canMakeAnew`: false where its rug has no such document any more. */
export interface Outdated { id: string; title: string; kind: DocumentKind; version: number; judgedAt: Date; canMakeAnew: boolean }
/** A document that somebody sends as it is, and the judgement of its rug which they saw it beside. ISO 8601. */
export interface AsItIs { documentId: string; judgedAt: string }
/** What stands in the audit beside a letter that left with such documents. Empty where there were none. */
export interface SentOutdated { readonly outdated?: { documentId: string; document: DocumentKind; version: number; judgedAt: string }[] }

const PARTS = {
  id: true, enquiryId: true, rugId: true, kind: true, title: true, version: true, filled: true, content: true, createdAt: true, madeBy: { select: { name: true } },
  rug: { select: { assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1, select: { createdAt: true } } } },
} as const satisfies Prisma.DocumentSelect;
type Row = Prisma.DocumentGetPayload<{ select: typeof PARTS }> & { kind: DocumentKind };

/**
 * Of these documents those that would say otherwise now, since their rug was judged anew. One is written out again as on the day of its making, from what
 * is known now, a plan from the way that is chosen now: where every word of it is the same, nothing has overtaken it. No file is drawn for that.
 */
export async function outdatedOf(db: Db | Tx, where: Prisma.DocumentWhereInput): Promise<Outdated[]> {
  const rows = await db.document.findMany({ where, orderBy: OLDEST_FIRST.createdAt, select: PARTS });
  const overtaken: Outdated[] = [];
  for (const row of rows) {
    const judgedAt = row.rug.assessments[0]?.createdAt;
    if (!judgedAt || judgedAt <= row.createdAt) continue;
    const { id, title, version } = row;
    const kind = documentKindSchema.parse(row.kind);
    const today = await asOfToday(db, { ...row, kind });
    const isSame = today !== null && row.madeBy !== null && isSameText(row.content, documentContent(kind, today.facts, today.filled, row.madeBy.name));
    if (!isSame) overtaken.push({ id, title, kind, version, judgedAt, canMakeAnew: today !== null });
  }
  return overtaken;
}

/** What it would be written from if it were made today; null where it could not be. */
async function asOfToday(db: Db | Tx, row: Row): Promise<{ facts: DocumentFacts; filled: object } | null> {
  const facts = await documentFacts(row, row.createdAt, db);
  if (!facts || !documentsOffered(facts).includes(row.kind)) return null;
  const fields = DOCUMENT_FIELDS[row.kind].safeParse(await filledToday(db, row, facts));
  return fields.success ? { facts, filled: fields.data } : null;
}

/** Refuses a letter with a document that its rug's judgement has overtaken, until it is made anew, is taken out, or somebody says that it goes as it is. */
export async function unlessOutdated(tx: Tx, { enquiryId, asItIs }: { enquiryId: string; asItIs: readonly AsItIs[] }): Promise<Result<SentOutdated>> {
  const all = await outdatedOf(tx, withDraftOf(enquiryId));
  if (all.length === 0) return ok({});
  const open = all.filter((d) => !isSaid(d, asItIs));
  if (open.length === 0) return ok({ outdated: all.map(({ id, kind, version, judgedAt }) => ({ documentId: id, document: kind, version, judgedAt: judgedAt.toISOString() })) });
  const [first, ...more] = open;
  const todo = insteadOf({ canMakeAnew: open.some((d) => d.canMakeAnew) });
  const which = `“${first?.title ?? ""}”${more.length > 0 ? ` and ${more.length} more ${more.length === 1 ? "document" : "documents"} with this letter` : ""}`;
  const say = `${which} ${more.length > 0 ? "were" : "was"} made before the rug was judged anew, and would say otherwise now. Nothing was sent, and your words are kept: ${todo}.`;
  return refuse("changed-meanwhile", say, { asItIs: `${capital(todo)}.` });
}

const isSaid = ({ id, judgedAt }: Outdated, asItIs: readonly AsItIs[]): boolean => asItIs.some((d) => d.documentId === id && d.judgedAt === judgedAt.toISOString());
