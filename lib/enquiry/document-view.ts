import "server-only";
import * as z from "zod/mini";
import { DOCUMENT_KINDS, type DocumentKind } from "../reply/documents/offered";
import type { Prisma } from "../store/database";
import type { DocumentView } from "./views";

/** What is read of a document for people; its file is left where it is. */
export const DOCUMENT_PARTS = {
  id: true, rugId: true, kind: true, title: true, version: true, bytes: true, createdAt: true, alteredAt: true, alteredWhy: true, madeBy: { select: { name: true } },
  enclosures: { select: { draftId: true, letter: { select: { state: true } } } },
} as const satisfies Prisma.DocumentSelect;
type Row = Prisma.DocumentGetPayload<{ select: typeof DOCUMENT_PARTS }>;

export const documentKindSchema = z.enum(DOCUMENT_KINDS);

/** What rests on the judgement of a rug. A letter to a seller asks, and holds none; a plan rests on its marks, and says so itself where they no longer count. */
const RESTS_ON_JUDGEMENT: readonly string[] = ["condition-report", "care-card"] satisfies DocumentKind[];
const JUDGED_SINCE = "The rug was judged anew since: this may say otherwise than the letter. Make it anew, or leave it out.";
/** Since when a document may say otherwise than a letter that is written now; null where nothing was judged since. */
const outdated = ({ kind, createdAt }: Row, judgedAt: Date | null): DocumentView["altered"] =>
  judgedAt !== null && judgedAt > createdAt && RESTS_ON_JUDGEMENT.includes(kind) ? { at: judgedAt.toISOString(), why: JUDGED_SINCE } : null;

/** A document as a page shows it. `draftId`: the reply that is being written; `judgedAt`: when its rug was last judged. */
export function documentView(row: Row, draftId: string | null, judgedAt: Date | null): DocumentView {
  const { id, rugId, title, version } = row;
  return {
    id, rugId, title, version, kind: documentKindSchema.parse(row.kind), by: row.madeBy?.name ?? "Somebody who has left", at: row.createdAt.toISOString(), kilobytes: Math.ceil(row.bytes / 1024),
    isEnclosed: draftId !== null && row.enclosures.some((e) => e.draftId === draftId),
    altered: row.alteredAt ? { at: row.alteredAt.toISOString(), why: row.alteredWhy ?? "" } : outdated(row, judgedAt),
    letters: row.enclosures.filter((e) => e.letter !== null && e.letter.state !== "taken_back").length,
  };
}
