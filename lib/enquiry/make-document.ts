import "server-only";
import type { PrintedDocument } from "../reply/documents/blocks";
import { DOCUMENTS, documentsOffered, type DocumentKind } from "../reply/documents/offered";
import { database } from "../store/database";
import { newRowId } from "../store/row-order";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { boxedOf, willBeBoxed } from "./boxed";
import { ok, refuse, type Caller, type Result } from "./caller";
import { documentContent } from "./document-content";
import { documentFacts } from "./document-facts";
import { DOCUMENT_FIELDS } from "./document-forms";
import { drawDocument, fileParts, photosIn, sha256Of } from "./draw-document";
import { inOneStepOfMany } from "./one-step";
import { isSameText } from "./stored-document";
import { toJson } from "./to-json";
import { unsettledFor } from "./unsettled-label";

export interface DocumentToMake {
  enquiryId: string;
  rugId: string;
  kind: DocumentKind;
  filled: object;
  /** Whether it is made where some of its characters can only be drawn as boxes. */
  mayBox?: boolean | undefined;
}

/**
 * Makes a document from what is known now and keeps it as it was made, text and file. What was made before stays as it is; the
 * same document asked for twice is made once. None quotes a label whose typed words and photo name different fibres, before somebody has said which are right.
 */
export async function makeDocument(caller: Caller, { enquiryId, rugId, kind, filled, mayBox = false }: DocumentToMake, now: Date): Promise<Result<{ documentId: string }>> {
  const no = authorise(caller, "make-document");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const fields = DOCUMENT_FIELDS[kind].safeParse(filled);
  if (!fields.success) return refuse("invalid", "Please look at this once more.", Object.fromEntries(fields.error.issues.map((i) => [String(i.path[0]), i.message])));
  const facts = await documentFacts({ enquiryId, rugId }, now);
  if (!facts) return NOT_THERE;
  if (!documentsOffered(facts).includes(kind)) return refuse("invalid", `No ${DOCUMENTS[kind].name.toLowerCase()} is made for this rug: it does not fit what is known of it.`);
  const open = unsettledFor(kind, facts);
  if (open) return refuse("changed-meanwhile", `${open.says} Nothing was made, and what you filled in is kept.`);
  const written = documentContent(kind, facts, fields.data, caller.name);
  const boxed = boxedOf(written);
  if (boxed.length > 0 && !mayBox) return refuse("invalid", "Please look at this once more.", { mayBox: `${willBeBoxed(boxed) ?? ""} Write them in other letters, or say that they may.` });
  const content = boxed.length > 0 ? { ...written, boxed } : written;
  const same = await madeAlready({ rugId, kind, content });
  if (same) return ok({ documentId: same });
  const pdf = await drawDocument(content, now);
  const photos = [...new Set(photosIn(content))];
  return inOneStepOfMany(async (tx) => {
    // One that was blurred meanwhile has another id, and the file would show it as it was.
    if ((await tx.photo.count({ where: { id: { in: photos } } })) !== photos.length) return refuse("changed-meanwhile", "A photo of this rug was changed meanwhile. Please make it once more.");
    const newest = await tx.document.findFirst({ where: { rugId, kind }, orderBy: { version: "desc" }, select: { version: true } });
    const documentId = newRowId();
    const version = (newest?.version ?? 0) + 1;
    await tx.document.create({
      data: {
        id: documentId, enquiryId, rugId, kind, version, title: content.title, filled: toJson(fields.data), content: toJson(content), ...fileParts(pdf), madeById: caller.staffId, createdAt: now,
      },
    });
    await audit(tx, caller, { action: "document-made", enquiryId, at: now, detail: { document: kind, version, documentId } });
    return ok({ documentId });
  });
}

/** The id of the newest version where it would come out the same now, photos included: drawn at its own time it has its own bytes. */
async function madeAlready({ rugId, kind, content }: { rugId: string; kind: DocumentKind; content: PrintedDocument }): Promise<string | null> {
  const newest = await database().document.findFirst({ where: { rugId, kind }, orderBy: { version: "desc" }, select: { id: true, content: true, sha256: true, createdAt: true } });
  if (!newest || !isSameText(newest.content, content)) return null;
  return sha256Of(await drawDocument(content, newest.createdAt)) === newest.sha256 ? newest.id : null;
}
