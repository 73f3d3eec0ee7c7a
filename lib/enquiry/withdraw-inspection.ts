import "server-only";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { reasonSchema } from "./bench-test-schema";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";

/** An inspection that was recorded in error: it stays to be seen, with the reason, and no longer counts, in letters neither. */
export async function withdrawInspection(caller: Caller, { id, reason }: { id: string; reason: string }, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "record-inspection");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const why = reasonSchema.safeParse(reason);
  if (!why.success) return refuse("invalid", why.error.issues[0]?.message ?? "", { reason: why.error.issues[0]?.message ?? "" });
  return inOneStep(async (tx) => {
    const inspection = await tx.inspection.findUnique({ where: { id }, select: { rugId: true, rug: { select: { enquiryId: true } } } });
    if (!inspection) return NOT_THERE;
    const { rugId, rug: { enquiryId } } = inspection;
    const withdrawn = await tx.inspection.updateMany({ where: { id, withdrawnAt: null }, data: { withdrawnAt: now, withdrawnById: caller.staffId, withdrawnWhy: why.data } });
    if (withdrawn.count !== 1) return refuse("changed-meanwhile", "Somebody has withdrawn this already.");
    await audit(tx, caller, { action: "inspection-withdrawn", enquiryId, at: now, detail: { rugId, inspectionId: id } });
    await reconsider(tx, { rugId, enquiryId }, now);
    return ok(null);
  });
}
