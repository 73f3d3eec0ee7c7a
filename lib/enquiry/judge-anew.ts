import "server-only";
import type { Tx } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import type { Assessment } from "../triage/assessment";
import { readSettings } from "../workshop/settings";
import { assessAnswers } from "./assess-answers";
import { findingsOfTests } from "./bench-findings";
import { holdOvertaken } from "./hold-overtaken";
import { findingsOfLabels } from "./label-reading";
import { measuredOf } from "./measurement-findings";
import { storedKinds } from "./photo-view";
import { storeAssessment } from "./store-enquiry";
import { enquiryAnswersOf, rugAnswersOf, seenOf } from "./stored";
import { urgenciesOfRugs, urgenciesOfWords, WORDS_PARTS } from "./unread-letters";
import { worstUrgency } from "./urgency";
import { CORRECTIONS, isWetToldDayLater, wetToldAt } from "./wet-told";

/**
 * Judges a rug from everything that is known as the transaction sees it, keeps the assessment beside the earlier ones and
 * sets the enquiry's urgency, by words of the client that nobody has read too. The rug must be there. Ages that were told ("within the last hour") count from when they
 * were told, however late it is judged again. A letter that was approved and has not left is held back where it would read otherwise now.
 */
export async function judgeAnew(tx: Tx, rugId: string, now: Date): Promise<Assessment> {
  const rug = await tx.rug.findUniqueOrThrow({
    where: { id: rugId },
    include: { answers: true, photos: { include: { measurements: true, label: true } }, benchTests: { orderBy: OLDEST_FIRST.at }, enquiry: { include: { client: true, audit: CORRECTIONS } } },
  });
  const { enquiry } = rug;
  const [assessed] = assessAnswers({
    channel: enquiry.channel,
    asOf: enquiry.submittedAt.toISOString(),
    enquiry: enquiryAnswersOf(enquiry.answers).answers, isWetToldLater: wetToldAt(enquiry) > enquiry.submittedAt, isWetToldDayLater: isWetToldDayLater(enquiry, rug.answers),
    client: enquiry.client,
    workshop: await readSettings(tx),
    rugs: [{
      answers: rugAnswersOf(rug.answers), colours: [], ...storedKinds(rug.photos),
      seen: seenOf(rug.answers), tests: [...findingsOfTests(rug.benchTests), ...findingsOfLabels(rug.photos)], measured: measuredOf(rug.photos),
    }],
  }).rugs;
  if (!assessed) throw new Error("Expected an assessment of the one rug given but received none");
  await storeAssessment(tx, rugId, assessed, now);
  const whole = await tx.enquiry.findUniqueOrThrow({ where: { id: enquiry.id }, include: WORDS_PARTS });
  const { urgency, why } = worstUrgency([...urgenciesOfRugs(whole.rugs), ...urgenciesOfWords(whole)]);
  await tx.enquiry.update({ where: { id: enquiry.id }, data: { urgency, urgencyWhy: why } });
  await holdOvertaken(tx, enquiry.id, now);
  return assessed.assessment;
}
