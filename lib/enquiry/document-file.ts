import "server-only";
import { fileOf } from "../mail/enclosures";
import { database } from "../store/database";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { letGo } from "./let-go";

/** A document's file as it was made: for staff, and for the client once a letter has left with it. */
export async function documentFile(caller: Caller, documentId: string, now: Date): Promise<Result<{ bytes: Buffer; fileName: string; type: string }>> {
  const document = await database().document.findUnique({ where: { id: documentId } });
  const no = authorise(caller, "read-document", { enquiryId: document?.enquiryId ?? null, intakeId: null });
  if (no) return no;
  if (!document) return NOT_THERE;
  if (caller.kind === "client") {
    const letter = { automatic: false, state: { not: "taken_back" as const }, ...letGo(now) };
    if ((await database().enclosure.count({ where: { documentId, letter } })) === 0) return NOT_THERE;
  }
  return ok(fileOf(document));
}
