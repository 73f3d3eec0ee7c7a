import "server-only";
import type { PhotoMark } from "../reply/documents/blocks";
import { numberPlaces } from "../reply/documents/number-places";
import { lineOf, lineWidth, drawLine } from "./lines";
import { GRAPHITE, type Pdf } from "./pen";

/** Points, by eye: the dark edge and the white line of an outline, and the disc that its number stands in. */
const LINES = [["#141516", 2.4], ["#ffffff", 1]] as const;
const DISC = { radius: 6, size: 7.5 } as const;
/** Half the height of a figure, of the size of its letters. */
const HALF_FIGURE = 0.35;

interface Place { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

/** Outlines on a photo, white with a dark edge so that they are seen on any rug, each with its number beside it. */
export function drawMarks(pdf: Pdf, marks: readonly PhotoMark[], at: Place): void {
  const on = ({ x, y }: PhotoMark["outline"][number]): [number, number] => [at.left + x * at.width, at.top + y * at.height];
  pdf.save();
  pdf.rect(at.left, at.top, at.width, at.height).clip();
  for (const { outline } of marks) for (const [colour, width] of LINES) pdf.polygon(...outline.map(on)).lineWidth(width).lineJoin("round").strokeColor(colour).stroke();
  pdf.restore();
  const outlines = marks.map(({ outline }) => outline.map(({ x, y }) => ({ x: x * at.width, y: y * at.height })));
  numberPlaces(outlines, { ...at, radius: DISC.radius }).forEach(({ x, y }, i) => drawNumber(pdf, String(marks[i]?.n), [at.left + x, at.top + y]));
}

function drawNumber(pdf: Pdf, n: string, [x, y]: [number, number]): void {
  pdf.circle(x, y, DISC.radius).lineWidth(1).fillAndStroke(GRAPHITE, "#ffffff");
  const line = lineOf(n, "bold");
  drawLine(pdf.fillColor("#ffffff"), line, { x: x - lineWidth(pdf, line, DISC.size) / 2, y: y + HALF_FIGURE * DISC.size, size: DISC.size });
}
