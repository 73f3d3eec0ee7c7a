import "server-only";
import { faultsOf, overpromisesOf, paragraphReading } from "../reply/check-paragraph";
import { conditionLines } from "../reply/condition-words";
import { libraryOf, type OwnVersion } from "../reply/library";
import { database } from "../store/database";
import { readSettings } from "../workshop/settings";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { composeStored, LETTER_PARTS } from "./compose-stored";
import { readOwnVersions } from "./library";
import { wordingOf, type ParagraphInput } from "./paragraph-form";
import type { ParagraphPreview } from "./paragraph-views";

/** How many past enquiries a paragraph is tried on, and how many of those that would use it are shown. */
const TRIED = 40;
const SHOWN = 6;
/** Stands for a new paragraph until it is kept; no kept one has this id. */
const UNKEPT = "own-unkept";

/** What keeping a paragraph would do, without keeping it: what is wrong with it, and how letters to past enquiries would read. */
export async function previewParagraph(caller: Caller, { id, input }: { id: string | null; input: ParagraphInput }): Promise<Result<ParagraphPreview>> {
  const no = authorise(caller, "change-paragraphs");
  if (no) return no;
  const own = await readOwnVersions();
  const paragraphId = id ?? UNKEPT;
  const wording = wordingOf(input, paragraphId, libraryOf(own));
  const tried: OwnVersion = { language: "en", id: paragraphId, version: 0, wording };
  const { words, grade } = paragraphReading(wording.text);
  return ok({
    faults: faultsOf(paragraphId, wording), over: overpromisesOf(wording), words, grade, when: conditionLines(wording.when),
    ...await onPastEnquiries(own, [...own.filter((o) => o.id !== paragraphId), tried], paragraphId),
  });
}

/** Writes the letters of past enquiries with the library as it is and as it would be; nothing is stored. */
async function onPastEnquiries(own: readonly OwnVersion[], changed: readonly OwnVersion[], id: string): Promise<Pick<ParagraphPreview, "tried" | "used" | "letters">> {
  const [workshop, rows] = await Promise.all([
    readSettings(), database().enquiry.findMany({ orderBy: { submittedAt: "desc" }, take: TRIED, include: LETTER_PARTS }),
  ]);
  const [now, then] = [libraryOf(own), libraryOf(changed)];
  const letters = rows.flatMap((row) => {
    const after = composeStored(row, { workshop, library: then });
    const says = after?.paragraphs.filter((p) => p.id === id).flatMap(({ said }) => said ?? []) ?? [];
    if (!after || says.length === 0) return [];
    const isChanged = composeStored(row, { workshop, library: now })?.text !== after.text;
    return [{ enquiryId: row.id, reference: row.reference, title: row.title, client: row.client.name, after: after.text, says, isChanged }];
  });
  return { tried: rows.length, used: letters.length, letters: letters.slice(0, SHOWN) };
}
