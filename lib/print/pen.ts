import "server-only";
import type PDFDocument from "pdfkit";
import { unbroken } from "../words/unbroken";
import { runsOf } from "./fonts";

/** Points. A4; sizes and leading by eye. */
export const MARGIN = 62;
export const BODY = 10.5;
export const SMALL = 8.5;
export const CELL = 9.5;
export const HEADING = { sizes: { 2: 13.5, 3: 11.5 }, above: 6, below: 5 } as const;
/** Below what is written: a paragraph, an entry of a list and the last of it, a table, a drawing and its caption; of a signature its lines and the room to sign in. */
export const BELOW = { paragraph: 6, entry: 3, list: 5, table: 8, drawing: 8, caption: 8, signed: 1, toSign: 26, signature: 8 } as const;
/** Between the lines of a text, and a list's dash and its words. */
const LEADING = 2;
export const LIST_INDENT = 14;
export const GRAPHITE = "#2b2e33", SLATE = "#5a6068", LINE = "#c9ccd1", LOST = "#8a8f98", KEPT = "#eef0f2";

// The types of this library leave out what opens an image before it is drawn.
export type Pdf = InstanceType<typeof PDFDocument> & { openImage(bytes: Buffer): { width: number; height: number } };
export type Structure = PDFKit.PDFStructureElement;

interface Pen { weight?: "plain" | "bold"; size?: number; colour?: string; gap?: number; x?: number; width?: number }

/** Text in the typefaces that can draw it, flowing as one paragraph, marked as one piece of the structure. */
export function write(pdf: Pdf, text: string, { weight = "plain", size = BODY, colour = GRAPHITE, gap = BELOW.paragraph, x, width }: Pen = {}): void {
  const runs = runsOf(text === "" ? " " : unbroken(text), weight);
  pdf.fontSize(size).fillColor(colour);
  if (x !== undefined) pdf.x = x;
  runs.forEach((run, i) => {
    pdf.font(run.font).text(run.text, { continued: i < runs.length - 1, lineGap: LEADING, ...(width !== undefined ? { width } : {}) });
  });
  pdf.y += gap;
  pdf.x = pdf.page.margins.left;
}

/** How high a text will stand, its gap apart. Measured in the first typeface that draws it. */
export function textHeight(pdf: Pdf, text: string, { weight = "plain", size = BODY, width = pdf.page.width - 2 * MARGIN }: Pick<Pen, "weight" | "size" | "width"> = {}): number {
  return pdf.font(weight).fontSize(size).heightOfString(unbroken(text), { width, lineGap: LEADING });
}

/** A piece of the structure and what is drawn for it. */
export const tagged = (pdf: Pdf, parent: Structure, tag: string, draw: () => void): void => { parent.add(pdf.struct(tag, {}, draw)); };
/** Drawn for the eye alone. */
export function artifact(pdf: Pdf, draw: () => void): void {
  pdf.markContent("Artifact", { type: "Layout" });
  draw();
  pdf.endMarkedContent();
}

/** Begins a new page where less than this is left of the old one; whether it did. */
export function keepTogether(pdf: Pdf, height: number): boolean {
  const isFull = pdf.y + height > pdf.page.height - pdf.page.margins.bottom;
  if (isFull) pdf.addPage();
  return isFull;
}
