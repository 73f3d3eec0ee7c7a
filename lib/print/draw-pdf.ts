import "server-only";
import PDFDocument from "pdfkit";
import type { Block, PrintedDocument } from "../reply/documents/blocks";
import { FONT_NAMES, fontBytes, runsOf } from "./fonts";

/** Points. A4; sizes and leading by eye. */
const MARGIN = 62;
const BODY = 10.5;
const SMALL = 8.5;
const SIZES = { 2: 13.5, 3: 11.5 } as const;
const GRAPHITE = "#2b2e33", SLATE = "#5a6068", LINE = "#c9ccd1", LOST = "#8a8f98";
const MOST_PHOTO_HEIGHT = 260;
const PLAN_SIDE = 220;
/** A heading keeps so much of what it heads on its own page. */
const HEADING_ROOM = 60;

// The types of this library leave out what opens an image before it is drawn.
type Pdf = PDFKit.PDFDocument & { openImage(bytes: Buffer): { width: number; height: number } };
type Structure = PDFKit.PDFStructureElement;

/** The JPEG bytes of a photo by its id, or null where it is gone. */
export type PhotoBytes = (photoId: string) => Buffer | null;

/**
 * Draws a document as a tagged PDF (PDF/UA-1: ISO 14289-1): title, language, headings, lists, tables and figures with their
 * alternatives in reading order, every typeface embedded, numbered pages. The same document gives the same pages; `createdAt`
 * is written into it.
 */
export async function drawPdf(document: PrintedDocument, { photo, createdAt }: { photo: PhotoBytes; createdAt: Date }): Promise<Buffer> {
  const pdf = new PDFDocument({
    // The types of this library do not know the subset yet.
    ...({ subset: "PDF/UA" } as object),
    size: "A4", margins: { top: MARGIN, bottom: MARGIN + 16, left: MARGIN, right: MARGIN }, bufferPages: true, pdfVersion: "1.7", tagged: true,
    lang: document.language, displayTitle: true, info: { Title: document.title, Author: document.head?.name ?? "", CreationDate: createdAt, ModDate: createdAt }, font: fontBytes("plain") as unknown as string,
  }) as Pdf;
  const done = new Promise<Buffer>((resolve, reject) => {
    const parts: Buffer[] = [];
    pdf.on("data", (part: Buffer) => parts.push(part));
    pdf.on("end", () => resolve(Buffer.concat(parts)));
    pdf.on("error", reject);
  });
  for (const name of FONT_NAMES) pdf.registerFont(name, fontBytes(name));
  const root = pdf.struct("Document");
  pdf.addStructure(root);
  drawHead(pdf, root, document);
  document.blocks.forEach((block, i) => {
    if (block.kind === "heading") keepTogether(pdf, HEADING_ROOM + heightOf(document.blocks[i + 1]));
    drawBlock(pdf, root, { block, photo });
  });
  root.end();
  numberPages(pdf, document.title);
  pdf.end();
  return done;
}

/** Text in the typefaces that can draw it, flowing as one paragraph, marked as one piece of the structure. */
function write(pdf: Pdf, text: string, { weight = "plain", size = BODY, colour = GRAPHITE, gap = 6, x, width }: { weight?: "plain" | "bold"; size?: number; colour?: string; gap?: number; x?: number; width?: number } = {}): void {
  const runs = runsOf(text === "" ? " " : text, weight);
  pdf.fontSize(size).fillColor(colour);
  if (x !== undefined) pdf.x = x;
  runs.forEach((run, i) => {
    pdf.font(run.font).text(run.text, { continued: i < runs.length - 1, lineGap: 2, ...(width !== undefined ? { width } : {}) });
  });
  pdf.y += gap;
  pdf.x = pdf.page.margins.left;
}

const tagged = (pdf: Pdf, parent: Structure, tag: string, draw: () => void): void => { parent.add(pdf.struct(tag, {}, draw)); };
/** Drawn for the eye alone. */
function artifact(pdf: Pdf, draw: () => void): void {
  pdf.markContent("Artifact", { type: "Layout" });
  draw();
  pdf.endMarkedContent();
}

function drawHead(pdf: Pdf, root: Structure, { head, title }: PrintedDocument): void {
  if (head) {
    tagged(pdf, root, "P", () => write(pdf, [head.name, ...head.lines].join(" · "), { size: SMALL, colour: SLATE, gap: 4 }));
    artifact(pdf, () => { pdf.moveTo(MARGIN, pdf.y).lineTo(pdf.page.width - MARGIN, pdf.y).lineWidth(0.6).strokeColor(LINE).stroke(); });
    pdf.y += 16;
  }
  tagged(pdf, root, "H1", () => write(pdf, title, { weight: "bold", size: 18, gap: 12 }));
}

function drawBlock(pdf: Pdf, root: Structure, { block, photo }: { block: Block; photo: PhotoBytes }): void {
  switch (block.kind) {
    case "heading": {
      pdf.y += 6;
      return tagged(pdf, root, `H${block.level}`, () => write(pdf, block.text, { weight: "bold", size: SIZES[block.level], gap: 5 }));
    }
    case "paragraph": return tagged(pdf, root, "P", () => write(pdf, block.text));
    case "small": return tagged(pdf, root, "P", () => write(pdf, block.text, { size: SMALL, colour: SLATE }));
    case "list": return drawList(pdf, root, block.items);
    case "table": return drawTable(pdf, root, block);
    case "photo": return drawPhoto(pdf, root, { ...block, bytes: photo(block.photoId) });
    case "plan": return drawPlan(pdf, root, block);
    case "signature": {
      keepTogether(pdf, 20 * block.lines.length);
      tagged(pdf, root, "P", () => block.lines.forEach((line) => write(pdf, line, { gap: line === "" ? 26 : 1 })));
      pdf.y += 8;
    }
  }
}

/** What a drawn block takes at once; 0 for text, which may break. */
const heightOf = (block: Block | undefined): number =>
  block?.kind === "photo" ? MOST_PHOTO_HEIGHT : block?.kind === "plan" ? (PLAN_SIDE * block.lengthCm) / Math.max(block.widthCm, block.lengthCm) : 0;

/** Begins a new page where less than this is left of the old one. */
function keepTogether(pdf: Pdf, height: number): void {
  if (pdf.y + height > pdf.page.height - pdf.page.margins.bottom) pdf.addPage();
}

function drawList(pdf: Pdf, root: Structure, items: readonly string[]): void {
  const list = pdf.struct("L");
  root.add(list);
  for (const item of items) {
    keepTogether(pdf, 30);
    const entry = pdf.struct("LI");
    list.add(entry);
    const top = pdf.y;
    tagged(pdf, entry, "Lbl", () => write(pdf, "–", { gap: 0 }));
    pdf.y = top;
    tagged(pdf, entry, "LBody", () => write(pdf, item, { x: MARGIN + 14, width: pdf.page.width - 2 * MARGIN - 14, gap: 3 }));
    entry.end();
  }
  list.end();
  pdf.y += 5;
}

function drawTable(pdf: Pdf, root: Structure, { caption, head, rows }: Extract<Block, { kind: "table" }>): void {
  const table = pdf.struct("Table");
  root.add(table);
  tagged(pdf, table, "Caption", () => write(pdf, caption, { size: SMALL, colour: SLATE, gap: 4 }));
  const full = pdf.page.width - 2 * MARGIN;
  const first = firstShare([head, ...rows]) * full;
  const widths = head.map((_, i) => (i === 0 ? first : (full - first) / (head.length - 1)));
  drawRow(pdf, table, { cells: head, widths, isHead: true });
  for (const cells of rows) drawRow(pdf, table, { cells, widths, isHead: false });
  table.end();
  pdf.y += 8;
}

/** Of the width of a table, what its first column gets: by the longest words of each column, within bounds by eye. */
function firstShare(rows: readonly (readonly string[])[]): number {
  const longest = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((cells) => cells[column]?.length ?? 0)));
  return Math.min(0.6, Math.max(0.28, (longest[0] ?? 1) / longest.reduce((sum, n) => sum + n, 0)));
}

function drawRow(pdf: Pdf, table: Structure, { cells, widths, isHead }: { cells: readonly string[]; widths: readonly number[]; isHead: boolean }): void {
  keepTogether(pdf, 40);
  const row = pdf.struct("TR");
  table.add(row);
  const top = pdf.y;
  let bottom = top;
  cells.forEach((cell, i) => {
    pdf.y = top;
    const x = MARGIN + widths.slice(0, i).reduce((a, b) => a + b, 0);
    tagged(pdf, row, isHead ? "TH" : "TD", () => write(pdf, cell, { weight: isHead ? "bold" : "plain", size: 9.5, x, width: (widths[i] as number) - 10, gap: 3 }));
    bottom = Math.max(bottom, pdf.y);
  });
  row.end();
  pdf.y = bottom;
  artifact(pdf, () => { pdf.moveTo(MARGIN, pdf.y).lineTo(pdf.page.width - MARGIN, pdf.y).lineWidth(0.5).strokeColor(LINE).stroke(); });
  pdf.y += 4;
}

function drawPhoto(pdf: Pdf, root: Structure, { alternative, caption, bytes }: { alternative: string; caption: string; bytes: Buffer | null }): void {
  if (!bytes) return tagged(pdf, root, "P", () => write(pdf, `${caption} (The photo is no longer there.)`, { size: SMALL, colour: SLATE }));
  keepTogether(pdf, MOST_PHOTO_HEIGHT + 30);
  const { width, height } = pdf.openImage(bytes);
  const scale = Math.min((pdf.page.width - 2 * MARGIN) / width, MOST_PHOTO_HEIGHT / height);
  const top = pdf.y;
  root.add(pdf.struct("Figure", { alt: alternative }, () => { pdf.image(bytes, MARGIN, top, { width: width * scale, height: height * scale }); }));
  pdf.y = top + height * scale + 6;
  tagged(pdf, root, "Caption", () => write(pdf, caption, { size: SMALL, colour: SLATE, gap: 10 }));
}

/** The rug from above, to scale: what remains is outlined, what goes is hatched by its own outline, the damage is filled. */
function drawPlan(pdf: Pdf, root: Structure, { widthCm, lengthCm, keep, damaged, alternative }: Extract<Block, { kind: "plan" }>): void {
  const scale = PLAN_SIDE / Math.max(widthCm, lengthCm);
  keepTogether(pdf, lengthCm * scale + 30);
  const [left, top] = [MARGIN, pdf.y];
  const at = (x: number, y: number): [number, number] => [left + x * scale, top + y * scale];
  const figure = pdf.struct("Figure", { alt: alternative }, () => {
    pdf.rect(left, top, widthCm * scale, lengthCm * scale).lineWidth(0.6).dash(3, { space: 3 }).strokeColor(LOST).stroke().undash();
    for (const outline of damaged) {
      outline.forEach((p, i) => { const [x, y] = at(p.x, p.y); if (i === 0) pdf.moveTo(x, y); else pdf.lineTo(x, y); });
      pdf.closePath().fillColor(LOST).fill();
    }
    for (const r of keep) pdf.rect(...at(r.left, r.top), (r.right - r.left) * scale, (r.bottom - r.top) * scale).lineWidth(1.4).strokeColor(GRAPHITE).stroke();
  });
  root.add(figure);
  pdf.y = top + lengthCm * scale + 8;
  tagged(pdf, root, "Caption", () => write(pdf, alternative, { size: SMALL, colour: SLATE, gap: 8 }));
}

function numberPages(pdf: Pdf, title: string): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let i = start; i < start + count; i += 1) {
    pdf.switchToPage(i);
    const { bottom } = pdf.page.margins;
    pdf.page.margins.bottom = 0;
    artifact(pdf, () => {
      pdf.font("plain").fontSize(SMALL).fillColor(SLATE).text(`${runsOf(title, "plain").map((r) => (r.font === "plain" ? r.text : "")).join("")}, page ${i + 1} of ${count}`, MARGIN, pdf.page.height - MARGIN, { lineBreak: false });
    });
    pdf.page.margins.bottom = bottom;
  }
}
