import "server-only";
import * as z from "zod/mini";
import { PLACES } from "../reply/paragraphs";
import { database } from "../store/database";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { readLibrary } from "./library";

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

const usedSchema = z.array(z.object({
  language: z._default(z.literal("en"), "en"), id: z.string(), version: z.number(), from: z._default(z.enum(["shipped", "workshop"]), "shipped"), text: z._default(z.nullable(z.string()), null),
}));

/** What the newest draft that the program wrote was put together from, in its order; null where there is none. Later edits by hand are not in it. */
export async function readUsedParagraphs(caller: Caller, enquiryId: string): Promise<Result<UsedParagraphs | null>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const revision = await database().revision.findFirst({ where: { draft: { enquiryId }, authorId: null }, orderBy: { number: "desc" }, select: { number: true, paragraphs: true } });
  if (!revision?.paragraphs) return ok(null);
  const library = await readLibrary();
  const placeOf = (id: string) => library.find((row) => row.id === id)?.place;
  const paragraphs = usedSchema.parse(revision.paragraphs).map((p) => ({ ...p, place: PLACES.find((place) => place.id === placeOf(p.id))?.name ?? null }));
  return ok({ revision: revision.number, paragraphs });
}
