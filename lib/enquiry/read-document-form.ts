import "server-only";
import type { DocumentKind } from "../reply/documents/offered";
import { documentsOffered } from "../reply/documents/offered";
import { rugTitleOf } from "../reply/describe";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { filledAtFirst } from "./document-content";
import { documentFacts } from "./document-facts";
import { rugColours } from "./photo-view";

export interface DocumentFormView {
  reference: string;
  rug: string;
  /** What stands in the fields at first. */
  filled: Record<string, string>;
  /** Who inspected the rug last, in a sentence; null where nobody did. */
  inspection: string | null;
}

/** What the form of a document begins with; `kind` null for the form of an inspection. */
export async function readDocumentForm(caller: Caller, { enquiryId, rugId, kind }: { enquiryId: string; rugId: string; kind: DocumentKind | null }, now: Date): Promise<Result<DocumentFormView>> {
  const no = authorise(caller, "make-document");
  if (no) return no;
  const facts = await documentFacts({ enquiryId, rugId }, now);
  if (!facts || (kind && !documentsOffered(facts).includes(kind))) return NOT_THERE;
  const { reference, answers, photos, inspection } = facts;
  return ok({
    reference, rug: rugTitleOf({ answers, colours: rugColours(photos) }), filled: kind ? filledAtFirst(kind, facts) : {},
    inspection: inspection && `It goes by the inspection of ${inspection.by}.`,
  });
}
