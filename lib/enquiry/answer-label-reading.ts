import "server-only";
import { audit, type AuditAction } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { clientActed } from "./client-acted";
import { labelAnswerSchema, type LabelAnswer } from "./label-answer-schema";
import { labelReadingView } from "./label-reading";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";
import { wrong } from "./wrong";
import { LABEL_STATES, type LabelReadingView, type LabelState } from "./label-view";

const STATES = {
  right: { to: "confirmed", from: ["read", "refused", "corrected", "unsure"], action: "label-confirmed" },
  // Whoever knows what it says need not wait until it is read.
  corrected: { to: "corrected", from: LABEL_STATES, action: "label-corrected" },
  unsure: { to: "unsure", from: ["read", "unreadable", "failed", "confirmed", "corrected", "refused"], action: "label-unsure" },
  "no-label": { to: "refused", from: ["read", "unreadable", "failed", "confirmed", "corrected", "unsure", "withdrawn"], action: "label-refused" },
} as const satisfies Record<LabelAnswer["answer"], { to: LabelState; from: readonly LabelState[]; action: AuditAction }>;

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
    // What holds no words cannot be right.
    const some = answer === "right" ? { text: { not: "" } } : {};
    const data = { state: to, corrected: answer === "corrected" ? text ?? null : null, answeredBy: by, answeredAt: now };
    const changed = await tx.labelReading.updateMany({ where: { photoId, state: { in: [...from] }, ...mine, ...some }, data });
    if (changed.count !== 1) return refuse("changed-meanwhile", wrong("refusal.label-settled"));
    const row = await tx.labelReading.findUnique({ where: { photoId } });
    if (!row) return NOT_THERE;
    if (photo.rugId && photo.rug) {
      const of = { rugId: photo.rugId, enquiryId: photo.rug.enquiryId };
      if (caller.kind === "client") await clientActed(tx, { ...of, now });
      else await reconsider(tx, of, now);
      await audit(tx, caller, { action, enquiryId: photo.rug.enquiryId, at: now, detail: { photoId } });
    }
    return ok(labelReadingView(row, photo));
  });
}
