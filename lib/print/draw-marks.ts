import "server-only";
import type { PhotoMark } from "../reply/documents/blocks";
import { lineOf, lineWidth, drawLine } from "./lines";
import { GRAPHITE, type Pdf } from "./pen";

/** Points, by eye: the dark edge and the white line of an outline, and the disc that its number stands in. */
const LINES = [["#141516", 2.4], ["#ffffff", 1]] as const;
const DISC = { radius: 6, size: 7.5, beside: 7 } as const;
/** Half the height of a figure, of the size of its letters. */
const HALF_FIGURE = 0.35;

interface Place { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

/** Outlines on a photo, white with a dark edge so that they are seen on any rug, each with its number above it. */
export function drawMarks(pdf: Pdf, marks: readonly PhotoMark[], at: Place): void {
  const on = ({ x, y }: PhotoMark["outline"][number]): [number, number] => [at.left + x * at.width, at.top + y * at.height];
  pdf.save();
  pdf.rect(at.left, at.top, at.width, at.height).clip();
  for (const { outline } of marks) for (const [colour, width] of LINES) pdf.polygon(...outline.map(on)).lineWidth(width).lineJoin("round").strokeColor(colour).stroke();
  pdf.restore();
  for (const { n, outline } of marks) drawNumber(pdf, String(n), numberPlace(outline.map(on), at));
}

/** Above the highest corner of an outline, and always on the photo. */
function numberPlace(corners: readonly [number, number][], { left, top, width, height }: Place): [number, number] {
  const [x, y] = corners.reduce((highest, c) => (c[1] < highest[1] ? c : highest));
  const within = (value: number, from: number, room: number) => Math.min(Math.max(value, from + DISC.radius + 1), from + room - DISC.radius - 1);
  return [within(x, left, width), within(y - DISC.beside, top, height)];
}

function drawNumber(pdf: Pdf, n: string, [x, y]: [number, number]): void {
  pdf.circle(x, y, DISC.radius).lineWidth(1).fillAndStroke(GRAPHITE, "#ffffff");
  const line = lineOf(n, "bold");
  drawLine(pdf.fillColor("#ffffff"), line, { x: x - lineWidth(pdf, line, DISC.size) / 2, y: y + HALF_FIGURE * DISC.size, size: DISC.size });
}
