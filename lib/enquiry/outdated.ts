import "server-only";
import { documentsOffered, type DocumentKind } from "../reply/documents/offered";
import type { Db, Prisma, Tx } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import { ok, refuse, type Result } from "./caller";
import { documentContent } from "./document-content";
import { documentFacts } from "./document-facts";
import { documentKindSchema } from "./document-view";
import { withDraftOf } from "./enclosures";
import { filledOf, isSameText } from "./stored-document";

/** What rests on the judgement of a rug. A letter to a seller asks, and holds none; a plan rests on its marks, and says so itself where they no longer count. */
const RESTS_ON_JUDGEMENT: string[] = ["condition-report", "care-card"] satisfies DocumentKind[];

/** A document that would say otherwise now, since its rug was judged anew; `judgedAt`: when that was last. */
export interface Outdated { id: string; title: string; kind: DocumentKind; version: number; judgedAt: Date }
/** A document that somebody sends as it is, and the judgement of its rug which they saw it beside. ISO 8601. */
export interface AsItIs { documentId: string; judgedAt: string }
/** What stands in the audit beside a letter that left with such documents. Empty where there were none. */
export interface SentOutdated { readonly outdated?: { documentId: string; document: DocumentKind; version: number; judgedAt: string }[] }

const PARTS = {
  id: true, enquiryId: true, rugId: true, kind: true, title: true, version: true, filled: true, content: true, createdAt: true, madeBy: { select: { name: true } },
  rug: { select: { assessments: { orderBy: NEWEST_FIRST.createdAt, take: 1, select: { createdAt: true } } } },
} as const satisfies Prisma.DocumentSelect;
type Row = Prisma.DocumentGetPayload<{ select: typeof PARTS }>;

/**
 * Of these documents those that would say otherwise now, since their rug was judged anew. One is written out again as on the day of its making, from what
 * is known now: where every word of it is the same, nothing has overtaken it. No file is drawn for that.
 */
export async function outdatedOf(db: Db | Tx, where: Prisma.DocumentWhereInput): Promise<Outdated[]> {
  const rows = await db.document.findMany({ where: { ...where, kind: { in: RESTS_ON_JUDGEMENT } }, orderBy: OLDEST_FIRST.createdAt, select: PARTS });
  const overtaken: Outdated[] = [];
  for (const row of rows) {
    const judgedAt = row.rug.assessments[0]?.createdAt;
    if (judgedAt && judgedAt > row.createdAt && !(await saysTheSame(db, row))) overtaken.push({ id: row.id, title: row.title, kind: documentKindSchema.parse(row.kind), version: row.version, judgedAt });
  }
  return overtaken;
}

async function saysTheSame(db: Db | Tx, row: Row): Promise<boolean> {
  const kind = documentKindSchema.parse(row.kind);
  const facts = await documentFacts(row, row.createdAt, db);
  if (!facts || !row.madeBy || !documentsOffered(facts).includes(kind)) return false;
  return isSameText(row.content, documentContent(kind, facts, filledOf(row.filled) ?? {}, row.madeBy.name));
}

/** Refuses a letter with a document that its rug's judgement has overtaken, until it is made anew, is taken out, or somebody says that it goes as it is. */
export async function unlessOutdated(tx: Tx, { enquiryId, asItIs }: { enquiryId: string; asItIs: readonly AsItIs[] }): Promise<Result<SentOutdated>> {
  const all = await outdatedOf(tx, withDraftOf(enquiryId));
  if (all.length === 0) return ok({});
  const open = all.filter((d) => !isSaid(d, asItIs));
  if (open.length === 0) return ok({ outdated: all.map(({ id, kind, version, judgedAt }) => ({ documentId: id, document: kind, version, judgedAt: judgedAt.toISOString() })) });
  const [first, ...more] = open;
  const which = `“${first?.title ?? ""}”${more.length > 0 ? ` and ${more.length} more ${more.length === 1 ? "document" : "documents"} with this letter` : ""}`;
  const say = `${which} ${more.length > 0 ? "were" : "was"} made before the rug was judged anew, and would say otherwise now. Nothing was sent, and your words are kept: make it anew, leave it out, or say that it goes as it is.`;
  return refuse("changed-meanwhile", say, { asItIs: "Make it anew, leave it out, or say that it goes as it is." });
}

const isSaid = ({ id, judgedAt }: Outdated, asItIs: readonly AsItIs[]): boolean => asItIs.some((d) => d.documentId === id && d.judgedAt === judgedAt.toISOString());
