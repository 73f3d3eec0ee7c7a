import "server-only";
import type { ComposedDraft } from "../reply/draft";
import type { LibraryRow } from "../reply/library";
import type { Prisma } from "../store/database";
import type { WorkshopSettings } from "../workshop/settings-schema";
import { draftFor } from "./assess-answers";
import { assessmentOf, enquiryAnswersOf, rugAnswersOf } from "./stored";
import { urgenciesOfWords, WORDS_PARTS } from "./unread-letters";
import { wetByWords } from "./wet-by-words";

/** What a letter is written from: the client, every rug with its answers and its newest assessment, and which letters of ours have answered already. */
export const LETTER_PARTS = { client: true, ...WORDS_PARTS } as const satisfies Prisma.EnquiryInclude;
type Row = Prisma.EnquiryGetPayload<{ include: typeof LETTER_PARTS }>;

/** The letter that an enquiry's newest assessments call for; null where nothing was assessed yet. */
export function composeStored(row: Row, { workshop, library }: { workshop: WorkshopSettings; library: readonly LibraryRow[] }): ComposedDraft | null {
  const rugs = row.rugs.flatMap((r) => (r.assessments[0] ? [{ title: r.title, answers: rugAnswersOf(r.answers), assessment: assessmentOf(r.assessments[0].result) }] : []));
  if (rugs.length === 0) return null;
  return draftFor({ client: row.client, workshop, library, enquiry: enquiryAnswersOf(row.answers).answers, rugs, wetByWords: wetByWords(rugs.map((r) => r.assessment), urgenciesOfWords(row)) }, rugs);
}
