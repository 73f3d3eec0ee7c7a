import "server-only";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { labelAnswerSchema, type LabelAnswer } from "./label-answer-schema";
import { labelReadingView } from "./label-reading";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";
import type { LabelReadingView } from "./label-view";

const STATES = {
  right: { to: "confirmed", from: ["read", "refused", "corrected"], action: "label-confirmed" },
  corrected: { to: "corrected", from: ["read", "unreadable", "confirmed", "refused", "corrected"], action: "label-corrected" },
  "no-label": { to: "refused", from: ["read", "unreadable", "confirmed", "corrected"], action: "label-refused" },
} as const;

/**
 * A person says what stands on the label. From here on it is a finding, and a rug of an enquiry is judged anew; until then
 * nothing is believed of what was read. A client may not change what staff have settled.
 */
export async function answerLabelReading(caller: Caller, given: LabelAnswer, now: Date): Promise<Result<LabelReadingView>> {
  const parsed = labelAnswerSchema.safeParse(given);
  if (!parsed.success) {
    const say = parsed.error.issues[0]?.message ?? "";
    return refuse("invalid", say, { text: say });
  }
  const { photoId, answer, text } = parsed.data;
  return inOneStep(async (tx) => {
    const photo = await tx.photo.findUnique({ where: { id: photoId }, select: { width: true, height: true, intakeId: true, rugId: true, rug: { select: { enquiryId: true } } } });
    const no = authorise(caller, "read-label", { enquiryId: photo?.rug?.enquiryId ?? null, intakeId: photo?.intakeId ?? null });
    if (no) return no;
    if (!photo) return NOT_THERE;
    const { to, from, action } = STATES[answer];
    const by = caller.kind === "staff" ? caller.staffId : "client";
    const mine = caller.kind === "staff" ? {} : { OR: [{ answeredBy: null }, { answeredBy: by }] };
    const data = { state: to, corrected: answer === "corrected" ? text ?? null : null, answeredBy: by, answeredAt: now };
    const changed = await tx.labelReading.updateMany({ where: { photoId, state: { in: [...from] }, ...mine }, data });
    if (changed.count !== 1) return refuse("changed-meanwhile", "Somebody has settled this already.");
    const row = await tx.labelReading.findUnique({ where: { photoId } });
    if (!row) return NOT_THERE;
    if (photo.rugId && photo.rug) {
      await reconsider(tx, { rugId: photo.rugId, enquiryId: photo.rug.enquiryId }, now);
      await audit(tx, caller, { action, enquiryId: photo.rug.enquiryId, at: now, detail: { photoId } });
    }
    return ok(labelReadingView(row, photo));
  });
}
