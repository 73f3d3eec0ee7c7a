import "server-only";
import { wrongWithFound } from "../reply/check-found";
import { newRowId } from "../store/row-order";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { inspectionSchema, type InspectionEntry } from "./document-forms";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";

/**
 * Keeps what a named person saw of a rug. The newest counts: what letters and the desk say of the rug follows from it, and a letter that has not
 * left is held back where it would read otherwise. Blame, cover and promises are no findings, and are refused. Documents that were made before stay as they are.
 */
export async function recordInspection(caller: Caller, given: { enquiryId: string; rugId: string } & InspectionEntry, now: Date): Promise<Result<{ inspectionId: string }>> {
  const no = authorise(caller, "record-inspection");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const parsed = inspectionSchema.safeParse(given);
  if (!parsed.success) return refuse("invalid", "Please look at this once more.", Object.fromEntries(parsed.error.issues.map((i) => [String(i.path[0]), i.message])));
  const { by, day, found, beyondRepair } = parsed.data;
  const wrong = wrongWithFound(found);
  if (wrong) return refuse("invalid", "Please look at this once more.", { found: wrong });
  const { enquiryId, rugId } = given;
  return inOneStep(async (tx) => {
    if ((await tx.rug.count({ where: { id: rugId, enquiryId } })) !== 1) return NOT_THERE;
    const inspectionId = newRowId();
    await tx.inspection.create({ data: { id: inspectionId, rugId, by, day, found, isBeyondRepair: beyondRepair === "yes", recordedById: caller.staffId, at: now } });
    await audit(tx, caller, { action: "inspection-recorded", enquiryId, at: now, detail: { rugId, inspectionId } });
    await reconsider(tx, { rugId, enquiryId }, now);
    return ok({ inspectionId });
  });
}
