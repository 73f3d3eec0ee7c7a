import "server-only";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { reasonSchema } from "./bench-test-schema";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inOneStep } from "./one-step";

/** Lets letters go to an address again that had refused for good. The reason stays in the history of each of its enquiries. */
export async function liftSuppression(caller: Caller, { address, reason }: { address: string; reason: string }, now: Date): Promise<Result<null>> {
  const no = authorise(caller, "lift-suppression");
  if (no) return no;
  const why = reasonSchema.safeParse(reason);
  if (!why.success) return refuse("invalid", why.error.issues[0]?.message ?? "", { reason: why.error.issues[0]?.message ?? "" });
  return inOneStep(async (tx) => {
    const enquiries = await tx.enquiry.findMany({ where: { client: { email: address, suppressedAt: { not: null } } }, select: { id: true } });
    const lifted = await tx.client.updateMany({ where: { email: address, suppressedAt: { not: null } }, data: { suppressedAt: null, suppressedWhy: null } });
    if (lifted.count === 0) return NOT_THERE;
    for (const { id } of enquiries) await audit(tx, caller, { action: "address-lifted", enquiryId: id, at: now, detail: { reason: why.data } });
    return ok(null);
  });
}
