import "server-only";
import { database } from "../store/database";
import type { Assessment } from "../triage/assessment";
import { readSettings } from "../workshop/settings";
import { assessAnswers } from "./assess-answers";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { kindsOf } from "./photo-view";
import { storeAssessment } from "./store-enquiry";
import { assessmentOf, enquiryAnswersOf, rugAnswersOf } from "./stored";
import { worstUrgency } from "./urgency";

/** Judges a rug anew from what is known now, keeps the assessment beside the earlier ones, and sets the enquiry's urgency. */
export async function assessRug(caller: Caller, rugId: string, now: Date): Promise<Result<Assessment>> {
  const no = authorise(caller, "assess-rug");
  if (no) return no;
  const rug = await database().rug.findUnique({ where: { id: rugId }, include: { answers: true, photos: true, enquiry: { include: { client: true } } } });
  if (!rug) return NOT_THERE;
  const { enquiry } = rug;
  const { answers } = enquiryAnswersOf(enquiry.answers);
  // Ages that were told ("within the last hour") count from when they were told, however late it is judged again.
  const [assessed] = assessAnswers({
    channel: enquiry.channel,
    asOf: enquiry.submittedAt.toISOString(),
    enquiry: answers,
    client: enquiry.client,
    workshop: await readSettings(),
    rugs: [{ answers: rugAnswersOf(rug.answers), colours: [], photos: kindsOf(rug.photos) }],
  }).rugs;
  if (!assessed) throw new Error("Expected an assessment of the one rug given but received none");
  return inOneStep(async (tx) => {
    if ((await tx.answer.count({ where: { rugId } })) !== rug.answers.length)
      return refuse("changed-meanwhile", "An answer came in meanwhile. Please try again.");
    await storeAssessment(tx, rugId, assessed, now);
    const rugs = await tx.rug.findMany({ where: { enquiryId: enquiry.id }, include: { assessments: { orderBy: { createdAt: "desc" }, take: 1 } } });
    const { urgency, why } = worstUrgency(rugs.flatMap((r) => (r.assessments[0] ? [assessmentOf(r.assessments[0].result).urgency] : [])));
    await tx.enquiry.update({ where: { id: enquiry.id }, data: { urgency, urgencyWhy: why } });
    await audit(tx, caller, { action: "assessed", enquiryId: enquiry.id, at: now, detail: { rugId } });
    return ok(assessed.assessment);
  });
}
