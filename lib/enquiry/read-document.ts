import "server-only";
import type { PrintedDocument } from "../reply/documents/blocks";
import { forbids } from "../staff/deeds";
import { database } from "../store/database";
import { authorise, NOT_THERE } from "./authorise";
import { wasBoxed } from "./boxed";
import { ok, type Caller, type Result } from "./caller";
import { DOCUMENT_PARTS, documentView } from "./document-view";
import { outdatedOf } from "./outdated";
import { isWaitingForUs } from "./states";
import { contentOf } from "./stored-document";
import type { DocumentView } from "./views";

const ENQUIRY = { select: { reference: true, state: true, draft: { select: { id: true, number: true, approvedNumber: true } } } } as const;

/** A made document, to be read at the desk. `newerId`: the newest version, where this is not it. */
export async function readDocument(caller: Caller, { enquiryId, documentId }: { enquiryId: string; documentId: string }): Promise<Result<{
  document: DocumentView; content: PrintedDocument; reference: string; newerId: string | null; mayEnclose: boolean;
  /** Which characters stand as boxes in its file, in a sentence; null where none do. */
  boxed: string | null;
}>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const row = await database().document.findFirst({ where: { id: documentId, enquiryId }, select: { ...DOCUMENT_PARTS, content: true, enquiry: ENQUIRY} });
  if (!row) return NOT_THERE;
  const { reference, state, draft } = row.enquiry;
  const newer = await database().document.findFirst({ where: { rugId: row.rugId, kind: row.kind, version: { gt: row.version } }, orderBy: { version: "desc" }, select: { id: true } });
  const isOpen = isWaitingForUs(state) && draft !== null && draft.approvedNumber !== draft.number;
  const content = contentOf(row.content);
  return ok({
    document: documentView(row, draft?.id ?? null, await outdatedOf(database(), { id: documentId })), content, boxed: wasBoxed(content.boxed ?? []), reference, newerId: newer?.id ?? null, mayEnclose: isOpen && forbids(caller, "edit-draft") === null,
  });
}
