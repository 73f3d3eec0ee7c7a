import "server-only";
import type PDFDocument from "pdfkit";
import { unbroken } from "../words/unbroken";
import { runsOf } from "./fonts";

/** Points. A4; sizes and leading by eye. */
export const MARGIN = 62;
export const BODY = 10.5;
export const SMALL = 8.5;
export const GRAPHITE = "#2b2e33", SLATE = "#5a6068", LINE = "#c9ccd1", LOST = "#8a8f98", KEPT = "#eef0f2";

// The types of this library leave out what opens an image before it is drawn.
export type Pdf = InstanceType<typeof PDFDocument> & { openImage(bytes: Buffer): { width: number; height: number } };
export type Structure = PDFKit.PDFStructureElement;

interface Pen { weight?: "plain" | "bold"; size?: number; colour?: string; gap?: number; x?: number; width?: number }

/** Text in the typefaces that can draw it, flowing as one paragraph, marked as one piece of the structure. */
export function write(pdf: Pdf, text: string, { weight = "plain", size = BODY, colour = GRAPHITE, gap = 6, x, width }: Pen = {}): void {
  const runs = runsOf(text === "" ? " " : unbroken(text), weight);
  pdf.fontSize(size).fillColor(colour);
  if (x !== undefined) pdf.x = x;
  runs.forEach((run, i) => {
    pdf.font(run.font).text(run.text, { continued: i < runs.length - 1, lineGap: 2, ...(width !== undefined ? { width } : {}) });
  });
  pdf.y += gap;
  pdf.x = pdf.page.margins.left;
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
