import "server-only";
import { database, type Tx } from "../store/database";
import { audit } from "./audit";
import { authorise, NOT_THERE } from "./authorise";
import { ok, refuse, type Caller, type Result } from "./caller";
import { clientActed } from "./client-acted";
import { formIdSchema } from "./keep-test";
import { MARK_LIMITS, type MeasurementKind } from "./mark-schema";
import { CLIENT } from "./measurement-findings";
import { marksIn, measureMarks } from "./measurement-result";
import { inOneStepOfMany } from "./one-step";
import { reconsider } from "./reconsider";
import { toJson } from "./to-json";
import { wrong } from "./wrong";

/** `id` is the form's own, so that it is kept once; `replaces`: the measurement that was moved. `marked` is parsed here. */
export interface NewMeasurement { id: string; photoId: string; marked: unknown; replaces: string | null }

/** How often one client may mark one photo anew. Elicited. */
const CLIENT_MARKS = 60;
const MOVED = refuse("changed-meanwhile", wrong("refusal.spots-moved"));

/**
 * Keeps where a photo was marked and what is measured there, on the server from the stored copy, and judges the rug anew.
 * A moved mark is a new row in place of the old one. Of a client only the latest pair of spots of a photo stands; a plan is drawn here.
 */
export async function recordMeasurement(caller: Caller, { id, photoId, marked: input, replaces }: NewMeasurement, now: Date): Promise<Result<{ id: string }>> {
  const marked = marksIn(input);
  const photo = await database().photo.findUnique({ where: { id: photoId }, select: { intakeId: true, rug: { select: { enquiryId: true } } } });
  const no = authorise(caller, typeof marked === "object" && marked.kind === "plan" ? "plan-rug" : "measure-photo", { enquiryId: photo?.rug?.enquiryId ?? null, intakeId: photo?.intakeId ?? null });
  if (no) return no;
  if (!photo || !formIdSchema.safeParse(id).success) return NOT_THERE;
  if (typeof marked === "string") return refuse("invalid", marked);
  const result = await measureMarks(photoId, marked);
  if (typeof result === "string") return refuse("invalid", result);
  return inOneStepOfMany(async (tx) => {
    if (await tx.measurement.findFirst({ where: { id, photoId } })) return ok({ id });
    const by = byOf(caller);
    const place = await placeOf(tx, caller, photoId);
    if (!place.ok) return place;
    const replaced = by === CLIENT ? await standingOfClient(tx, photoId) : replaces;
    const full = await makeRoom(tx, { id, photoId, kind: marked.kind, replaced, by, now });
    if (full) return full;
    await tx.measurement.create({ data: { id, photoId, kind: marked.kind, marks: toJson(marked.marks), result: toJson(result), from: by, at: now } });
    const { rugId, enquiryId } = place.value;
    if (rugId === null || enquiryId === null) return ok({ id });
    await audit(tx, caller, { action: replaced === null ? "photo-measured" : "measurement-moved", enquiryId, at: now, detail: { photoId, kind: marked.kind, measurementId: id } });
    if (caller.kind === "client") await clientActed(tx, { rugId, enquiryId, now });
    else await reconsider(tx, { rugId, enquiryId }, now);
    return ok({ id });
  });
}

/** Whose mark it is: the client's, on whichever device, or that of a person here. */
export const byOf = (caller: Caller): string => (caller.kind === "staff" ? caller.staffId : CLIENT);

/** The rug a photo belongs to; none while its questionnaire is being filled in, and no longer open to that once it was sent. */
export async function placeOf(tx: Tx, caller: Caller, photoId: string): Promise<Result<{ rugId: string | null; enquiryId: string | null }>> {
  const photo = await tx.photo.findUnique({ where: { id: photoId }, select: { rugId: true, rug: { select: { enquiryId: true } } } });
  if (!photo) return NOT_THERE;
  if (caller.kind === "intake" && photo.rugId !== null) return refuse("changed-meanwhile", wrong("refusal.sent-already"));
  return ok({ rugId: photo.rugId, enquiryId: photo.rug?.enquiryId ?? null });
}

const standingOfClient = async (tx: Tx, photoId: string): Promise<string | null> =>
  (await tx.measurement.findFirst({ where: { photoId, from: CLIENT, withdrawnAt: null }, select: { id: true } }))?.id ?? null;

/** Takes the measurement that is replaced out of account; null where there is room for the new one. */
async function makeRoom(tx: Tx, { id, photoId, kind, replaced, by, now }: { id: string; photoId: string; kind: MeasurementKind; replaced: string | null; by: string; now: Date }) {
  if (by === CLIENT && (await tx.measurement.count({ where: { photoId, from: CLIENT } })) >= CLIENT_MARKS) return refuse("too-many", wrong("refusal.spots-often"));
  if (replaced !== null) {
    const gone = await tx.measurement.updateMany({ where: { id: replaced, photoId, kind, withdrawnAt: null }, data: { withdrawnAt: now, withdrawnById: by, replacedById: id } });
    return gone.count === 1 ? null : MOVED;
  }
  const standing = await tx.measurement.count({ where: { photoId, kind, withdrawnAt: null } });
  if (kind === "plan") return standing === 0 ? null : MOVED;
  if (standing < MARK_LIMITS.spotPairs) return null;
  return refuse("too-many", by === CLIENT ? wrong("refusal.spots-often") : `A photo carries ${MARK_LIMITS.spotPairs} pairs of spots at most. Take one away first.`);
}
