import "server-only";
import PDFDocument from "pdfkit";
import type { Block, PrintedDocument } from "../reply/documents/blocks";
import { unbroken } from "../words/unbroken";
import { wordsIn, type Words } from "../words/words";
import { drawPhotos, drawPlan, heightOf, type PhotoBytes } from "./draw-figures";
import { fontBytes, registerFonts, runsOf } from "./fonts";
import { artifact, BODY, keepTogether, LINE, MARGIN, SLATE, SMALL, tagged, write, type Pdf, type Structure } from "./pen";

const SIZES = { 2: 13.5, 3: 11.5 } as const;
/** A heading keeps so much of what it heads on its own page. */
const HEADING_ROOM = 60;
/** So much of a paragraph stays on one page, and of a table with its head. */
const MOST_KEPT = 60;
const TABLE_ROOM = 90;
const ROW_ROOM = 40;

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
  registerFonts(pdf);
  const words = wordsIn(document.language);
  const root = pdf.struct("Document");
  pdf.addStructure(root);
  drawHead(pdf, root, document);
  const parts = [{ title: document.title, from: 0 }];
  for (let i = 0; i < document.blocks.length; i += 1) {
    const block = document.blocks[i] as Block;
    if (block.kind === "photo") {
      const photos = photosFrom(document.blocks, i);
      drawPhotos(pdf, root, photos, { bytesOf: photo, words });
      i += photos.length - 1;
    } else {
      if (block.kind === "heading") keepTogether(pdf, HEADING_ROOM + heightOf(document.blocks[i + 1]));
      if (block.kind === "part") parts.push({ title: block.text, from: pdf.addPage().bufferedPageRange().count - 1 });
      drawBlock(pdf, root, block);
    }
  }
  root.end();
  numberPages(pdf, parts, words);
  pdf.end();
  return done;
}

/** The photos that stand one after the other from here on. */
function photosFrom(blocks: readonly Block[], from: number): Extract<Block, { kind: "photo" }>[] {
  const photos: Extract<Block, { kind: "photo" }>[] = [];
  for (const block of blocks.slice(from)) {
    if (block.kind !== "photo") break;
    photos.push(block);
  }
  return photos;
}

function drawHead(pdf: Pdf, root: Structure, { head, title, blocks }: PrintedDocument): void {
  if (head) {
    tagged(pdf, root, "P", () => write(pdf, [head.name, ...head.lines].join(" · "), { size: SMALL, colour: SLATE, gap: 4 }));
    artifact(pdf, () => { pdf.moveTo(MARGIN, pdf.y).lineTo(pdf.page.width - MARGIN, pdf.y).lineWidth(0.6).strokeColor(LINE).stroke(); });
    pdf.y += 16;
  }
  if (!blocks.some((b) => b.kind === "title")) tagged(pdf, root, "H1", () => write(pdf, title, { weight: "bold", size: 18, gap: 12 }));
}

function drawBlock(pdf: Pdf, root: Structure, block: Exclude<Block, { kind: "photo" }>): void {
  switch (block.kind) {
    case "title": return tagged(pdf, root, "H1", () => write(pdf, block.text, { weight: "bold", size: SIZES[2], gap: 8 }));
    case "part": return tagged(pdf, root, "H2", () => write(pdf, block.text, { weight: "bold", size: SIZES[2], gap: 8 }));
    case "heading": {
      pdf.y += 6;
      return tagged(pdf, root, `H${block.level}`, () => write(pdf, block.text, { weight: "bold", size: SIZES[block.level], gap: 5 }));
    }
    case "paragraph": return drawText(pdf, root, block.text, {});
    case "small": return drawText(pdf, root, block.text, { size: SMALL, colour: SLATE });
    case "list": return drawList(pdf, root, block.items);
    case "table": return drawTable(pdf, root, block);
    case "plan": return drawPlan(pdf, root, block);
    case "signature": {
      keepTogether(pdf, 20 * block.lines.length);
      tagged(pdf, root, "P", () => block.lines.forEach((line) => write(pdf, line, { gap: line === "" ? 26 : 1 })));
      pdf.y += 8;
    }
  }
}

/** A short paragraph is not parted; a long one may run on. */
function drawText(pdf: Pdf, root: Structure, text: string, pen: { size?: number; colour?: string }): void {
  pdf.font("plain").fontSize(pen.size ?? BODY);
  keepTogether(pdf, Math.min(pdf.heightOfString(unbroken(text), { width: pdf.page.width - 2 * MARGIN, lineGap: 2 }), MOST_KEPT));
  tagged(pdf, root, "P", () => write(pdf, text, pen));
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
  keepTogether(pdf, TABLE_ROOM);
  tagged(pdf, table, "Caption", () => write(pdf, caption, { size: SMALL, colour: SLATE, gap: 4 }));
  const full = pdf.page.width - 2 * MARGIN;
  const first = firstShare([head, ...rows]) * full;
  const widths = head.map((_, i) => (i === 0 ? first : (full - first) / (head.length - 1)));
  drawRow(pdf, table, { cells: head, widths, isHead: true });
  for (const cells of rows) {
    // On a new page the head is drawn once more, for the eye alone.
    if (keepTogether(pdf, ROW_ROOM)) artifact(pdf, () => drawCells(pdf, { cells: head, widths, weight: "bold" }, (draw) => draw()));
    drawRow(pdf, table, { cells, widths, isHead: false });
  }
  table.end();
  pdf.y += 8;
}

/** Of the width of a table, what its first column gets: by the longest words of each column, within bounds by eye. */
function firstShare(rows: readonly (readonly string[])[]): number {
  const longest = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((cells) => cells[column]?.length ?? 0)));
  return Math.min(0.6, Math.max(0.28, (longest[0] ?? 1) / longest.reduce((sum, n) => sum + n, 0)));
}

interface Row { readonly cells: readonly string[]; readonly widths: readonly number[] }

function drawRow(pdf: Pdf, table: Structure, { isHead, ...row }: Row & { isHead: boolean }): void {
  const parent = pdf.struct("TR");
  table.add(parent);
  drawCells(pdf, { ...row, weight: isHead ? "bold" : "plain" }, (draw, i) => {
    const scope = isHead ? "Column" : i === 0 ? "Row" : null;
    parent.add(pdf.struct(scope ? "TH" : "TD", (scope ? { scope } : {}) as object, draw));
  });
  parent.end();
  artifact(pdf, () => { pdf.moveTo(MARGIN, pdf.y).lineTo(pdf.page.width - MARGIN, pdf.y).lineWidth(0.5).strokeColor(LINE).stroke(); });
  pdf.y += 4;
}

/** Cells side by side, each by way of `put`; the next thing stands below the longest. */
function drawCells(pdf: Pdf, { cells, widths, weight }: Row & { weight: "bold" | "plain" }, put: (draw: () => void, column: number) => void): void {
  const top = pdf.y;
  let bottom = top;
  cells.forEach((cell, i) => {
    pdf.y = top;
    const x = MARGIN + widths.slice(0, i).reduce((a, b) => a + b, 0);
    put(() => write(pdf, cell, { weight, size: 9.5, x, width: (widths[i] as number) - 10, gap: 3 }), i);
    bottom = Math.max(bottom, pdf.y);
  });
  pdf.y = bottom;
}

/** Numbers each part by itself, so that one can be sent without the other. */
function numberPages(pdf: Pdf, parts: readonly { title: string; from: number }[], words: Words): void {
  const { start, count } = pdf.bufferedPageRange();
  parts.forEach(({ title, from }, n) => {
    const end = parts[n + 1]?.from ?? count;
    for (let page = from; page < end; page += 1) {
      pdf.switchToPage(start + page);
      const { bottom } = pdf.page.margins;
      pdf.page.margins.bottom = 0;
      const foot = runsOf(words.say("print.page", { title, page: page - from + 1, pages: end - from }), "plain").map((r) => (r.font === "plain" ? r.text : "")).join("");
      artifact(pdf, () => { pdf.font("plain").fontSize(SMALL).fillColor(SLATE).text(foot, MARGIN, pdf.page.height - MARGIN, { lineBreak: false }); });
      pdf.page.margins.bottom = bottom;
    }
  });
}
