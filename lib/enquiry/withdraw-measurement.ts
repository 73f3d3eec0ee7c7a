import "server-only";
import { database } from "../store/database";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { clientActed } from "./client-acted";
import { CLIENT } from "./measurement-findings";
import { inOneStep } from "./one-step";
import { reconsider } from "./reconsider";
import { byOf, placeOf } from "./record-measurement";
import { wrong } from "./wrong";

/** A measurement that no longer counts: it stays to be seen. A client takes back only what a client marked. */
export async function withdrawMeasurement(caller: Caller, id: string, now: Date): Promise<Result<null>> {
  const row = await database().measurement.findUnique({ where: { id }, select: { photoId: true, kind: true, from: true, photo: { select: { intakeId: true, rug: { select: { enquiryId: true } } } } } });
  const no = authorise(caller, row?.kind === "plan" ? "plan-rug" : "measure-photo", { enquiryId: row?.photo.rug?.enquiryId ?? null, intakeId: row?.photo.intakeId ?? null });
  if (no) return no;
  if (!row || (caller.kind !== "staff" && row.from !== CLIENT)) return NOT_THERE;
  const { photoId, kind } = row;
  return inOneStep(async (tx) => {
    const place = await placeOf(tx, caller, photoId);
    if (!place.ok) return place;
    const withdrawn = await tx.measurement.updateMany({ where: { id, withdrawnAt: null }, data: { withdrawnAt: now, withdrawnById: byOf(caller) } });
    if (withdrawn.count !== 1) return refuse("changed-meanwhile", wrong("refusal.spots-gone"));
    const { rugId, enquiryId } = place.value;
    if (rugId === null || enquiryId === null) return ok(null);
    await audit(tx, caller, { action: "measurement-withdrawn", enquiryId, at: now, detail: { photoId, kind, measurementId: id } });
    if (caller.kind === "client") await clientActed(tx, { rugId, enquiryId, now });
    else await reconsider(tx, { rugId, enquiryId }, now);
    return ok(null);
  });
}
