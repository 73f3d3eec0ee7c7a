import "server-only";
import type PDFDocument from "pdfkit";
import { ascentOf, inFont, type Weight } from "./fonts";
import { drawLine, linesOf, lineWidth, runsRightToLeft } from "./lines";

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

// The types of this library leave out what opens an image before it is drawn, and what goes on with a piece of the structure on the next page.
export type Pdf = InstanceType<typeof PDFDocument> & { openImage(bytes: Buffer): { width: number; height: number }; continueOnNewPage(): void };
export type Structure = PDFKit.PDFStructureElement;

/** `align`: a paragraph stands where it begins, at the right where it runs from there; `left` keeps every one at the left. */
interface Pen { weight?: Weight; size?: number; colour?: string; gap?: number; x?: number; width?: number; align?: "start" | "left" }

const lineHeight = (pdf: Pdf, weight: Weight, size: number): number => inFont(pdf, weight).fontSize(size).currentLineHeight(true) + LEADING;

/** Text in the typefaces that can draw it, in lines ordered as they are read, marked as one piece of the structure. */
export function write(pdf: Pdf, text: string, { weight = "plain", size = BODY, colour = GRAPHITE, gap = BELOW.paragraph, x = pdf.page.margins.left, width = pdf.page.width - pdf.page.margins.right - x, align = "start" }: Pen = {}): void {
  const height = lineHeight(pdf, weight, size);
  for (const line of linesOf(pdf, text, { weight, size, width })) {
    if (pdf.y + height > pdf.page.maxY()) pdf.continueOnNewPage();
    pdf.fillColor(colour);
    const top = pdf.y;
    const left = line.isRightToLeft && align === "start" ? x + width - lineWidth(pdf, line, size) : x;
    drawLine(pdf, line, { x: left, y: top + ascentOf(weight) * size, size });
    pdf.y = top + height;
  }
  pdf.y += gap;
  pdf.x = pdf.page.margins.left;
}

/** How high a text will stand, its gap apart. */
export const textHeight = (pdf: Pdf, text: string, { weight = "plain", size = BODY, width = pdf.page.width - 2 * MARGIN }: Pick<Pen, "weight" | "size" | "width"> = {}): number =>
  linesOf(pdf, text, { weight, size, width }).length * lineHeight(pdf, weight, size);

/** A text that runs from right to left is drawn from the left, so it is kept beside that as it is read (ISO 32000-1, 14.9.4). */
export const asRead = (text: string): { actual?: string } => (runsRightToLeft(text) ? { actual: text } : {});

/** A piece of the structure and what is drawn for it; `text` where it is words. */
export const tagged = (pdf: Pdf, parent: Structure, tag: string, draw: () => void, text = ""): void => { parent.add(pdf.struct(tag, asRead(text), draw)); };
/** Drawn for the eye alone. */
export function artifact(pdf: Pdf, draw: () => void): void {
  pdf.markContent("Artifact", { type: "Layout" });
  draw();
  pdf.endMarkedContent();
}
/** A text as a piece of the structure. */
export const say = (pdf: Pdf, parent: Structure, tag: string, text: string, pen: Pen = {}): void => tagged(pdf, parent, tag, () => write(pdf, text, pen), text);

/** Begins a new page where less than this is left of the old one; whether it did. */
export function keepTogether(pdf: Pdf, height: number): boolean {
  const isFull = pdf.y + height > pdf.page.height - pdf.page.margins.bottom;
  if (isFull) pdf.addPage();
  return isFull;
}
