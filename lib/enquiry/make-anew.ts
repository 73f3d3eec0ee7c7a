import "server-only";
import { database } from "../store/database";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { documentFacts } from "./document-facts";
import { documentKindSchema } from "./document-view";
import { isEnclosedWith } from "./enclosures";
import { filledToday } from "./filled-today";
import { makeDocument } from "./make-document";
import { inOneStep } from "./one-step";
import { NOT_WAITING } from "./save-draft";
import { contentOf } from "./stored-document";

/**
 * Makes a document anew that lies with the draft of a reply, with what was filled in for it as far as that still holds, and puts the new version in its place. That ends the waiting for a
 * second person, who must see what goes out. Where somebody took it out meanwhile, the new version is kept and lies with no letter.
 */
export async function makeAnew(caller: Caller, documentId: string, now: Date): Promise<Result<{ documentId: string; version: number }>> {
  const no = authorise(caller, "make-document") ?? authorise(caller, "edit-draft");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const was = await database().document.findUnique({ where: { id: documentId }, select: { enquiryId: true, rugId: true, kind: true, filled: true, content: true, createdAt: true } });
  if (!was) return NOT_THERE;
  const { enquiryId, rugId } = was;
  if ((await database().enclosure.count({ where: isEnclosedWith({ enquiryId, documentId }) })) === 0) return refuse("changed-meanwhile", "This document no longer goes with the letter.");
  const facts = await documentFacts(was, now);
  if (!facts) return NOT_THERE;
  const kind = documentKindSchema.parse(was.kind);
  const made = await makeDocument(caller, { enquiryId, rugId, kind, filled: await filledToday(database(), { ...was, kind }, facts), mayBox: (contentOf(was.content).boxed ?? []).length > 0 }, now);
  if (!made.ok) return made.fields?.["mayBox"] ? refuse("invalid", made.fields["mayBox"]) : made;
  const newId = made.value.documentId;
  const { version } = await database().document.findUniqueOrThrow({ where: { id: newId }, select: { version: true } });
  if (newId === documentId) return ok({ documentId, version });
  return inOneStep(async (tx) => {
    const swapped = await tx.enclosure.updateMany({ where: isEnclosedWith({ enquiryId, documentId }), data: { documentId: newId, at: now } });
    if (swapped.count !== 1) return refuse("changed-meanwhile", "It is made anew, but somebody changed meanwhile what goes with the letter. Look at the documents.");
    await tx.draft.update({ where: { enquiryId }, data: NOT_WAITING });
    await audit(tx, caller, { action: "document-enclosed", enquiryId, at: now, detail: { documentId: newId, document: kind, version, insteadOf: documentId } });
    return ok({ documentId: newId, version });
  });
}
