import "server-only";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { reasonSchema } from "./bench-test-schema";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";

/** A test or a report that was recorded in error: it stays to be seen, with the reason, and no longer counts. */
export async function withdrawBenchTest(caller: Caller, { id, reason }: { id: string; reason: string }, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "record-test");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const why = reasonSchema.safeParse(reason);
  if (!why.success) return refuse("invalid", why.error.issues[0]?.message ?? "", { reason: why.error.issues[0]?.message ?? "" });
  return inOneStep(async (tx) => {
    const test = await tx.benchTest.findUnique({ where: { id }, select: { rugId: true, test: true, rug: { select: { enquiryId: true } } } });
    if (!test) return NOT_THERE;
    const { rugId, rug: { enquiryId } } = test;
    const data = { withdrawnAt: now, withdrawnById: caller.staffId, withdrawnWhy: why.data };
    const withdrawn = await tx.benchTest.updateMany({ where: { id, withdrawnAt: null }, data });
    if (withdrawn.count !== 1) return refuse("changed-meanwhile", "Somebody has withdrawn this already.");
    await audit(tx, caller, { action: "test-withdrawn", enquiryId, at: now, detail: { rugId, test: test.test, benchTestId: id } });
    await reconsider(tx, { rugId, enquiryId }, now);
    return ok(null);
  });
}
