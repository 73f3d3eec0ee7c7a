import "server-only";
import type { Area } from "../photo/area";
import { coversFrame, coversPoint, coversSpot } from "../photo/covered";
import { database, NO_JSON, type Measurement, type Prisma, type Tx } from "../store/database";
import { agreedBefore, cropSchema, type AgreedLabel } from "./label-reading";
import type { LabelState } from "./label-view";
import { CLIENT } from "./measurement-findings";
import { measuredIn, measureMarks, type Measured } from "./measurement-result";
import { readingDue } from "./read-photo-label";
import { toJson } from "./to-json";

interface Size { width: number; height: number }
/** What becomes of a measurement: measured anew, or, null, no longer measured. */
export type Remeasured = ReadonlyMap<string, Measured["result"] | null>;

export const WITHDRAWN_BY_BLUR = "Part of the photo where it was measured was blurred for good.";

/** Whether anything that was measured there was measured in what is blurred. */
export function isCovered({ kind, marks }: Measured, areas: readonly Area[], photo: Size): boolean {
  if (kind === "spots") return areas.some((area) => [marks.untouched, marks.affected].some((spot) => coversSpot(area, spot, photo)));
  return areas.some((area) => [...marks.corners, ...marks.damaged.flat()].some((point) => coversPoint(area, point)));
}

/** Measures anew, in the blurred picture, what was measured outside of its blurred parts. Writes nothing. */
export async function remeasured({ photoId, blurredId, areas, photo }: { photoId: string; blurredId: string; areas: readonly Area[]; photo: Size }): Promise<Remeasured> {
  const rows = await database().measurement.findMany({ where: { photoId, withdrawnAt: null } });
  return new Map(await Promise.all(rows.map(async (row): Promise<[string, Measured["result"] | null]> => [row.id, await resultOf(row, { blurredId, areas, photo })])));
}
async function resultOf(row: Measurement, { blurredId, areas, photo }: { blurredId: string; areas: readonly Area[]; photo: Size }): Promise<Measured["result"] | null> {
  const measured = measuredIn(row);
  if (!measured || isCovered(measured, areas, photo)) return null;
  const { kind, marks } = measured;
  const result = await measureMarks(blurredId, kind === "spots" ? { kind, marks } : { kind, marks });
  return typeof result === "string" ? null : result;
}

/** Keeps what was measured anew and withdraws the rest. The rows that were withdrawn; null where somebody measured meanwhile. */
export async function keepRemeasured(tx: Tx, results: Remeasured, { photoId, by, now }: { photoId: string; by: string; now: Date }): Promise<Measurement[] | null> {
  const rows = await tx.measurement.findMany({ where: { photoId, withdrawnAt: null } });
  if (rows.length !== results.size || rows.some((r) => !results.has(r.id))) return null;
  for (const { id } of rows) {
    const result = results.get(id);
    const data = result ? { result: toJson(result) } : { withdrawnAt: now, withdrawnById: by, withdrawnWhy: WITHDRAWN_BY_BLUR };
    await tx.measurement.update({ where: { id }, data });
  }
  return rows.filter((r) => results.get(r.id) === null);
}

/**
 * What was read of a label that is blurred now, even in part, is forgotten; so is what staff made of it, who saw the photo.
 * What a client wrote of the rug in front of them stays. A reading under way begins anew in the blurred picture.
 */
export async function forgetLabel(tx: Tx, photoId: string, areas: readonly Area[]): Promise<void> {
  const row = await tx.labelReading.findUnique({ where: { photoId } });
  if (!row) return;
  const crop = cropSchema.parse(row.crop);
  const state = row.state as LabelState;
  const agreed = agreedAfter(agreedBefore(row), areas);
  const isBlurred = areas.some((area) => coversFrame(area, crop));
  const own = state === "reading" ? readingDue(crop) : isBlurred ? { text: "", words: [], ...(isKept(row) ? {} : { state: "withdrawn" satisfies LabelState, corrected: null, answeredBy: null, answeredAt: null }) } : {};
  await tx.labelReading.update({ where: { photoId }, data: { ...own, ...agreed } });
}
const isTyped = ({ state, answeredBy }: { state: string; answeredBy: string | null }): boolean => state === "corrected" && answeredBy === CLIENT;
/** What says nothing of the words that stood there, or was never read from the photo. */
const isKept = (row: { state: string; answeredBy: string | null }): boolean => isTyped(row) || row.state === "unreadable" || row.state === "failed" || row.state === "refused";

/** What was agreed before another part was framed, by the same rule; empty where nothing of it changes. */
function agreedAfter(agreed: AgreedLabel | null, areas: readonly Area[]): Pick<Prisma.LabelReadingUpdateInput, "agreed"> {
  if (!agreed || !areas.some((area) => coversFrame(area, agreed.crop))) return {};
  return { agreed: isTyped(agreed) ? toJson({ ...agreed, text: "", words: [] }) : NO_JSON };
}
