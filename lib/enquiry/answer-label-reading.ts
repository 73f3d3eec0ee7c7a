import "server-only";
import { NO_JSON, type LabelReading, type Prisma } from "../store/database";
import { audit, type AuditAction } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { clientActed } from "./client-acted";
import { labelAnswerSchema, type LabelAnswer } from "./label-answer-schema";
import { agreedBefore, isOpenToClient, labelReadingView } from "./label-reading";
import { labelToldTo, WITH_TOLD_LABEL } from "./label-told";
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
} as const satisfies Record<Exclude<LabelAnswer["answer"], "kept" | "told">, { to: LabelState; from: readonly LabelState[]; action: AuditAction }>;

const SETTLED = refuse("changed-meanwhile", wrong("refusal.label-settled"));

interface Change { action: AuditAction; from: readonly LabelState[]; data: Prisma.LabelReadingUpdateManyMutationInput }

/** What an answer changes; null where words are to be kept or taken that nobody agreed to or typed. Who cannot tell leaves in force what was agreed before. */
function changeBy({ answer, text }: Pick<LabelAnswer, "answer" | "text">, before: LabelReading, { by, now, told }: { by: string; now: Date; told: string | null }): Change | null {
  if (answer === "told") return told === null ? null : changeBy({ answer: "corrected", text: told }, before, { by, now, told });
  if (answer !== "kept") {
    const { to, from, action } = STATES[answer];
    return { action, from, data: { state: to, corrected: answer === "corrected" ? text ?? null : null, answeredBy: by, answeredAt: now, ...(answer === "unsure" ? {} : { agreed: NO_JSON }) } };
  }
  const agreed = agreedBefore(before);
  return agreed && { action: "label-kept", from: LABEL_STATES, data: { ...agreed, agreed: NO_JSON } };
}

/**
 * A person says what stands on the label. From here on it is a finding, and a rug of an enquiry is judged anew; until then
 * nothing is believed of what was read. Where another part was framed since words were agreed, those can be kept as well. A
 * client may not change what staff have settled.
 */
export async function answerLabelReading(caller: Caller, given: LabelAnswer, now: Date): Promise<Result<LabelReadingView>> {
  const parsed = labelAnswerSchema.safeParse(given);
  if (!parsed.success) {
    const say = parsed.error.issues[0]?.message ?? "";
    return refuse("invalid", say, { text: say });
  }
  const { photoId, answer } = parsed.data;
  return inOneStep(async (tx) => {
    const photo = await tx.photo.findUnique({ where: { id: photoId }, include: { label: true, ...WITH_TOLD_LABEL } });
    const no = authorise(caller, "read-label", { enquiryId: photo?.rug?.enquiryId ?? null, intakeId: photo?.intakeId ?? null });
    if (no) return no;
    if (!photo) return NOT_THERE;
    const [before, told] = [photo.label, labelToldTo(caller, photo)];
    const change = before && (caller.kind === "staff" || isOpenToClient(before)) ? changeBy(parsed.data, before, { by: caller.kind === "staff" ? caller.staffId : "client", now, told }) : null;
    if (!before || !change) return SETTLED;
    // What holds no words cannot be right. A frame drawn meanwhile makes a row with an id of its own.
    const some = answer === "right" ? { text: { not: "" } } : {};
    const changed = await tx.labelReading.updateMany({ where: { id: before.id, answeredBy: before.answeredBy, state: { in: [...change.from] }, ...some }, data: change.data });
    if (changed.count !== 1) return SETTLED;
    const row = await tx.labelReading.findUnique({ where: { photoId } });
    if (!row) return NOT_THERE;
    if (photo.rugId && photo.rug) {
      const of = { rugId: photo.rugId, enquiryId: photo.rug.enquiryId };
      await audit(tx, caller, { action: change.action, enquiryId: of.enquiryId, at: now, detail: { photoId } });
      // Words that are kept counted all along.
      if (answer !== "kept") await (caller.kind === "client" ? clientActed(tx, { ...of, now }) : reconsider(tx, of, now));
    }
    return ok(labelReadingView(row, photo, told));
  });
}
