import "server-only";
import type { Spot } from "../photo/spot";
import type { ReportMark, ReportPhoto } from "../reply/documents/report-seen";
import type { LabelReading, Measurement, Photo } from "../store/database";
import { inForce, isRead } from "./label-view";
import { measuredIn } from "./measurement-result";
import { photoView } from "./photo-view";

/** A photo with what was marked in it, oldest first, and what was read of its label. */
export type ReportedPhoto = Photo & { measurements: readonly Measurement[]; label: LabelReading | null };
interface Point { readonly x: number; readonly y: number }

/** So many corners make a round spot. By eye. */
const ROUND = 32;

/** A photo as a report shows it: a label upright, and what was marked in the photo outlined as it lies then. */
export function asReported(photo: ReportedPhoto): Pick<ReportPhoto, "shape" | "quarters" | "marks"> {
  const { width, height } = photo;
  const quarters = quartersOf(photo);
  return {
    shape: { width, height }, quarters,
    marks: photo.measurements.flatMap((row) => marksIn(row, photo)).map((mark) => ({ ...mark, outline: mark.outline.map((p) => turnedBack(p, quarters)) })),
  };
}

function quartersOf(photo: ReportedPhoto): number {
  const { kind, label } = photoView(photo);
  const counts = label && inForce(label);
  return kind === "label" && counts && isRead(counts.state) ? counts.quarters : 0;
}

/** Where a point lies once the photo is turned back by so many quarters, in shares of it as it is shown. */
export function turnedBack({ x, y }: Point, quarters: number): Point {
  switch (quarters) {
    case 1: return { x: y, y: 1 - x };
    case 2: return { x: 1 - x, y: 1 - y };
    case 3: return { x: 1 - y, y: x };
    default: return { x, y };
  }
}

function marksIn(row: Measurement, photo: Pick<Photo, "width" | "height">): ReportMark[] {
  const measured = measuredIn(row);
  if (measured?.kind === "spots") {
    const { untouched, affected } = measured.marks;
    return [{ what: "untouched", outline: outlineOf(untouched, photo) }, { what: "affected", deltaE: measured.result.deltaE, outline: outlineOf(affected, photo) }];
  }
  if (measured?.kind !== "plan") return [];
  return [{ what: "edges", outline: measured.marks.corners }, ...measured.marks.damaged.map((outline): ReportMark => ({ what: "damaged", outline }))];
}

/** A spot's edge, in shares of the photo; a circle's radius is one of the longer side. */
function outlineOf(spot: Spot, { width, height }: Pick<Photo, "width" | "height">): Point[] {
  if (spot.shape === "rectangle") {
    const [right, bottom] = [spot.x + spot.width, spot.y + spot.height];
    return [{ x: spot.x, y: spot.y }, { x: right, y: spot.y }, { x: right, y: bottom }, { x: spot.x, y: bottom }];
  }
  const long = spot.radius * Math.max(width, height);
  return Array.from({ length: ROUND }, (_, i) => {
    const turn = (2 * Math.PI * i) / ROUND;
    return { x: spot.x + (long * Math.cos(turn)) / width, y: spot.y + (long * Math.sin(turn)) / height };
  });
}
