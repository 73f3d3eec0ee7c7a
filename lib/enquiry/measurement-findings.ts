import "server-only";
import type { Measurement } from "../store/database";
import { KEPT_WHOLE, type Finding } from "../triage/finding";
import { measuredIn, type Measured, type PlanResult, type SpotResult } from "./measurement-result";
import type { PlanMarks } from "./mark-schema";
import { allRoundM, measurePlan } from "./measured-plan";

type Row = Pick<Measurement, "photoId" | "kind" | "marks" | "result" | "from" | "at" | "withdrawnAt">;
/** Who marked a photo, where it was not one of the workshop. */
export const CLIENT = "client";

/** Where a client touched is worth what a client says; where somebody trained did, it is a measurement. */
const strengthOf = (row: Row): Finding["strength"] => (row.from === CLIENT ? "told" : "photo");

function changeOf(row: Row, { deltaE, direction, uncertainty }: SpotResult): Finding {
  return { what: "colour-change", value: { deltaE, direction, uncertainty }, strength: strengthOf(row), from: `photo:${row.photoId}` };
}

/** Beside the edges of the chosen way as drawn, those all round what it keeps: what the letter and the desk give as the upper end of its price. */
function allRoundOf(marks: PlanMarks): { allRoundM: number } | null {
  const measured = measurePlan(marks);
  return typeof measured !== "string" && measured.chosen ? { allRoundM: allRoundM(measured.chosen) } : null;
}

function planFindings(row: Row, marks: PlanMarks, { damagedCm2, damagedSdCm2, share, chosen }: PlanResult): Finding[] {
  const { widthCm, lengthCm } = marks;
  const made = { strength: strengthOf(row), from: `photo:${row.photoId}` } as const;
  return [
    { what: "size", value: { widthCm, lengthCm, m2: (widthCm * lengthCm) / 10_000 }, ...made },
    ...(damagedCm2 > 0 ? [{ what: "damaged-area", value: { cm2: damagedCm2, uncertainty: damagedSdCm2, share }, ...made }] : []),
    ...(chosen ? [{ what: "cut-down", value: { ...chosen, ...allRoundOf(marks) }, ...made }] : []),
    ...(marks.chosen === KEPT_WHOLE ? [{ what: KEPT_WHOLE, value: true, ...made }] : []),
  ];
}

/** The same of a rug's photos, read with their measurements. */
export const measuredOf = (photos: readonly { measurements: readonly Row[] }[]): Finding[] => findingsOfMeasurements(photos.flatMap((p) => p.measurements));

/**
 * What the marks of a rug's photos say, as triage takes it; what was withdrawn says nothing. Of several pairs of spots by one
 * hand the largest change speaks, since it is the trouble that is asked about; of several plans the newest.
 */
export function findingsOfMeasurements(rows: readonly Row[]): Finding[] {
  const standing = rows.filter((r) => r.withdrawnAt === null)
    .flatMap((row) => { const measured = measuredIn(row); return measured ? [{ row, measured }] : []; });
  const spots = standing.flatMap(({ row, measured }) => (measured.kind === "spots" ? [{ row, result: measured.result }] : []));
  const largest = (["told", "photo"] as const).flatMap((strength) =>
    spots.filter(({ row }) => strengthOf(row) === strength).sort((a, b) => b.result.deltaE - a.result.deltaE).slice(0, 1));
  const plans = standing.filter((s): s is { row: Row; measured: Extract<Measured, { kind: "plan" }> } => s.measured.kind === "plan");
  const newest = plans.sort((a, b) => b.row.at.getTime() - a.row.at.getTime()).slice(0, 1);
  return [
    ...largest.map(({ row, result }) => changeOf(row, result)),
    ...newest.flatMap(({ row, measured }) => planFindings(row, measured.marks, measured.result)),
  ];
}
