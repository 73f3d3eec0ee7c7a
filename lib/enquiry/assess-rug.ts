import "server-only";
import type { Assessment } from "../triage/assessment";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { judgeAnew } from "./judge-anew";
import { inOneStep } from "./one-step";

/** Judges a rug anew from what is known now. The draft is left as it is. */
export async function assessRug(caller: Caller, rugId: string, now: Date): Promise<Result<Assessment>> {
  const no = authorise(caller, "assess-rug");
  if (no) return no;
  return inOneStep(async (tx) => {
    const rug = await tx.rug.findUnique({ where: { id: rugId }, select: { enquiryId: true } });
    if (!rug) return NOT_THERE;
    const assessment = await judgeAnew(tx, rugId, now);
    await audit(tx, caller, { action: "assessed", enquiryId: rug.enquiryId, at: now, detail: { rugId } });
    return ok(assessment);
  });
}
