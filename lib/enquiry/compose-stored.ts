import "server-only";
import { composeDraft, type ComposedDraft } from "../reply/draft";
import type { LibraryRow } from "../reply/library";
import type { DraftInput } from "../reply/pieces";
import type { Prisma } from "../store/database";
import type { WorkshopSettings } from "../workshop/settings-schema";
import { draftInput } from "./assess-answers";
import { inspectedIn, STANDING_INSPECTIONS } from "./inspections";
import { isTypedLabelShown } from "./label-reading";
import { CLIENT } from "./measurement-findings";
import { assessmentOf, enquiryAnswersOf, messagesOf, rugAnswersOf } from "./stored";
import { urgenciesOfWords, WORDS_PARTS } from "./unread-letters";
import { saidSince, wetByWords } from "./wet-by-words";
import { CORRECTIONS, wetToldAt } from "./wet-told";

/** What a letter is written from: the client, every rug with its answers and its newest assessment, and which letters of ours have answered already. */
export const LETTER_PARTS = { client: true, audit: CORRECTIONS, ...WORDS_PARTS, rugs: { ...WORDS_PARTS.rugs, include: { ...WORDS_PARTS.rugs.include, photos: { select: { label: true } }, inspections: { ...STANDING_INSPECTIONS, take: 1 } } } } as const satisfies Prisma.EnquiryInclude;
type Row = Prisma.EnquiryGetPayload<{ include: typeof LETTER_PARTS }>;
interface Written { workshop: WorkshopSettings; library: readonly LibraryRow[] }

/** Whether the words of the label were read to us on the telephone: nobody has typed them since on the client's own page. */
const isLabelHeard = ({ channel, submittedAt }: Pick<Row, "channel" | "submittedAt">, answers: Row["rugs"][number]["answers"]): boolean =>
  channel === "telephone" && !answers.some(({ question, from, at }) => question === "labelText" && from === CLIENT && at > submittedAt);

/** What the next letter of an enquiry is written from; null where nothing was assessed yet. */
export function inputStored(row: Row, { workshop, library }: Written): DraftInput | null {
  const rugs = row.rugs.flatMap((r) => {
    const [newest] = r.assessments;
    const answers = rugAnswersOf(r.answers);
    return newest ? [{ title: r.title, photos: r.photos, inspection: inspectedIn(r, workshop.locale), labelHeard: isLabelHeard(row, r.answers), labelShown: isTypedLabelShown(answers.labelText, r.photos), messages: messagesOf(r.answers).map((m) => m.text), answers, assessment: assessmentOf(newest.result) }] : [];
  });
  if (rugs.length === 0) return null;
  const enquiry = enquiryAnswersOf(row.answers).answers;
  const water = { wetByWords: wetByWords(rugs.map((r) => r.assessment), urgenciesOfWords(row)), saidOfWater: saidSince(row.rugs.flatMap((r) => messagesOf(r.answers)), { isDry: enquiry.wetNow === "no", at: wetToldAt(row) }) };
  return draftInput({ client: row.client, workshop, library, enquiry, rugs, ...water }, rugs);
}

/** The whole letter that an enquiry's newest assessments call for; null where nothing was assessed yet. */
export function composeStored(row: Row, written: Written): ComposedDraft | null {
  const input = inputStored(row, written);
  return input && composeDraft(input);
}
