import "server-only";
import type { DocumentKind } from "../reply/documents/offered";
import { documentsOffered } from "../reply/documents/offered";
import { soldAsSentence } from "../reply/documents/letter-to-seller";
import { rugTitleOf } from "../reply/describe";
import { database } from "../store/database";
import { wordsIn } from "../words/words";
import { authorise, NOT_THERE } from "./authorise";
import { boxedInWords, boxedOf, willBeBoxed } from "./boxed";
import { ok, type Caller, type Result } from "./caller";
import { documentContent, filledAtFirst, type DocumentFacts } from "./document-content";
import { documentFacts } from "./document-facts";
import { DOCUMENT_FIELDS } from "./document-forms";
import { filledToday } from "./filled-today";
import { rugColours } from "./photo-view";
import { unsettledFor, type UnsettledLabel } from "./unsettled-label";

export interface DocumentFormView {
  reference: string;
  rug: string;
  /** What stands in the fields at first. */
  filled: Record<string, string>;
  /** The client's own words, and whether they are a cleaner's, which a report quotes only where somebody says so; null where they gave none. */
  account: { text: string; isTrade: boolean } | null;
  /** Who inspected the rug last, in a sentence; null where nobody did. */
  inspection: string | null;
  /** What the letter to a seller says where nobody gives the seller's words: a sentence from the client's answer; null for any other document, and where that names nothing. */
  soldAs: string | null;
  /** A label that it would quote and that has to be settled first; null where there is none. */
  unsettled: UnsettledLabel | null;
  /** Which characters of what is known and filled in no typeface has, in a sentence; null where all can be drawn. */
  boxed: string | null;
}

/** What stands in the form: what the last version was made with as far as that still holds, else what the enquiry knows. */
async function filledIn(kind: DocumentKind, rugId: string, facts: DocumentFacts): Promise<Record<string, string>> {
  const last = await database().document.findFirst({ where: { rugId, kind }, orderBy: { version: "desc" }, select: { filled: true, createdAt: true } });
  return { ...filledAtFirst(kind, facts), ...(last && (await filledToday(database(), { ...last, rugId, kind }, facts))) };
}

/** As far as the form can be written out: while something in it is still wanting, its own words and the client's name. */
function boxedSoFar(kind: DocumentKind, facts: DocumentFacts, { filled, by }: { filled: Record<string, string>; by: string }): string[] {
  const fields = DOCUMENT_FIELDS[kind].safeParse(filled);
  return fields.success ? boxedOf(documentContent(kind, facts, fields.data, by)) : boxedInWords([facts.client.name, ...Object.values(filled)]);
}

/** What the form of a document begins with; `kind` null for the form of an inspection. */
export async function readDocumentForm(caller: Caller, { enquiryId, rugId, kind }: { enquiryId: string; rugId: string; kind: DocumentKind | null }, now: Date): Promise<Result<DocumentFormView>> {
  const no = authorise(caller, "make-document");
  if (no) return no;
  const facts = await documentFacts({ enquiryId, rugId }, now);
  if (!facts || (kind && !documentsOffered(facts).includes(kind))) return NOT_THERE;
  const { reference, answers, photos, inspections, isTrade, settings } = facts;
  const filled = kind ? await filledIn(kind, rugId, facts) : {};
  return ok({
    reference, rug: rugTitleOf({ answers, colours: rugColours(photos) }), filled, account: answers.story === undefined ? null : { text: answers.story, isTrade },
    soldAs: kind === "letter-to-seller" ? soldAsSentence(answers.sellerSaid, wordsIn(settings.locale)) : null,
    unsettled: kind && unsettledFor(kind, facts),
    boxed: kind && willBeBoxed(boxedSoFar(kind, facts, { filled, by: caller.kind === "staff" ? caller.name : "" })),
    inspection: inspectionNote(inspections),
  });
}

/** Which inspection a report goes by, or why it goes by the newest no more; null where nobody inspected the rug. */
function inspectionNote({ counts, overtaken }: DocumentFacts["inspections"]): string | null {
  if (counts) return `It goes by the inspection of ${counts.by}.`;
  return overtaken && `Flood or waste water was told of only after the inspection of ${overtaken.by}, so the report says “provisional, not inspected since”.`;
}
