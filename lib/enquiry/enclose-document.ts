import "server-only";
import { randomUUID } from "node:crypto";
import type { Tx } from "../store/database";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { NOT_WAITING } from "./save-draft";
import { isWaitingForUs } from "./states";

/**
 * Puts a document with the reply that is being written, or takes it out again. Either ends the waiting for a second person,
 * who must see what goes out. Asked for what is so already, it changes nothing.
 */
export async function encloseDocument(caller: Caller, { documentId, isEnclosed }: { documentId: string; isEnclosed: boolean }, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "edit-draft");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  return inOneStep(async (tx) => {
    const document = await tx.document.findUnique({ where: { id: documentId }, select: { enquiryId: true, kind: true, version: true, enquiry: { select: { state: true, draft: { select: { id: true } } } } } });
    if (!document) return NOT_THERE;
    const { enquiryId, kind, version, enquiry: { state, draft } } = document;
    if (!draft || !isWaitingForUs(state)) return refuse("changed-meanwhile", "No letter is being written here that it could go with.");
    const changed = await (isEnclosed ? putIn(tx, { documentId, draftId: draft.id, now }) : tx.enclosure.deleteMany({ where: { documentId, draftId: draft.id } }).then((d) => d.count));
    if (changed === 0) return ok(null);
    await tx.draft.update({ where: { id: draft.id }, data: NOT_WAITING });
    await audit(tx, caller, { action: isEnclosed ? "document-enclosed" : "document-taken-out", enquiryId, at: now, detail: { documentId, document: kind, version } });
    return ok(null);
  });
}

/** How many were put in: a document of the same kind and rug that lay there already gives way, so that only one version goes. */
async function putIn(tx: Tx, { documentId, draftId, now }: { documentId: string; draftId: string; now: Date }): Promise<number> {
  if ((await tx.enclosure.count({ where: { documentId, draftId } })) > 0) return 0;
  const { rugId, kind } = await tx.document.findUniqueOrThrow({ where: { id: documentId }, select: { rugId: true, kind: true } });
  await tx.enclosure.deleteMany({ where: { draftId, document: { rugId, kind } } });
  await tx.enclosure.create({ data: { id: randomUUID(), documentId, draftId, at: now } });
  return 1;
}
