import "server-only";
import { PLACES } from "../reply/paragraphs";
import { database } from "../store/database";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { readLibrary } from "./library";
import { saidOf } from "./said-paragraphs";

/** A paragraph that the draft was put together from. */
export interface UsedParagraphView {
  id: string;
  /** Where it stands in a letter; null where the paragraph is no longer there. */
  place: string | null;
  from: "shipped" | "workshop";
  version: number;
  /** Its words before anything was filled in; null of drafts from before they were kept. */
  text: string | null;
}
export interface UsedParagraphs { revision: number; paragraphs: UsedParagraphView[] }

/** What the newest draft that the program wrote was put together from, in its order; null where there is none. Later edits by hand are not in it. */
export async function readUsedParagraphs(caller: Caller, enquiryId: string): Promise<Result<UsedParagraphs | null>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const revision = await database().revision.findFirst({ where: { draft: { enquiryId }, authorId: null }, orderBy: { number: "desc" }, select: { number: true, paragraphs: true } });
  if (!revision?.paragraphs) return ok(null);
  const library = await readLibrary();
  const placeOf = (id: string) => library.find((row) => row.id === id)?.place;
  const paragraphs = saidOf(revision.paragraphs).filter((p) => p.stands)
    .map(({ language, id, version, from, text }) => ({ language, id, version, from, text: text || null, place: PLACES.find((place) => place.id === placeOf(id))?.name ?? null }));
  return ok({ revision: revision.number, paragraphs });
}
