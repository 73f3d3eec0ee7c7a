import "server-only";
import PDFDocument from "pdfkit";
import type { Block, PrintedDocument } from "../reply/documents/blocks";
import { paperOf } from "../words/locales";
import { wordsIn, type Words } from "../words/words";
import { drawPhotos, drawPlan, type PhotoBytes } from "./draw-figures";
import { drawList } from "./draw-list";
import { drawTable } from "./draw-table";
import { ascentOf } from "./fonts";
import { drawLine, lineOf } from "./lines";
import { leadingTo, roomFor } from "./page-room";
import { artifact, BELOW, HEADING, keepTogether, LINE, MARGIN, say, SLATE, SMALL, tagged, write, type Pdf, type Structure } from "./pen";

/**
 * Draws a document as a tagged PDF (PDF/UA-1: ISO 14289-1): title, language, headings, lists, tables and figures with their
 * alternatives in reading order, every typeface embedded, numbered pages of the paper that is usual there. The same document gives the same pages; `createdAt`
 * is written into it.
 */
export async function drawPdf(document: PrintedDocument, { photo, createdAt }: { photo: PhotoBytes; createdAt: Date }): Promise<Buffer> {
  const pdf = new PDFDocument({
    // The types of this library do not know the subset yet.
    ...({ subset: "PDF/UA" } as object),
    size: paperOf(document.language), margins: { top: MARGIN, bottom: MARGIN + 16, left: MARGIN, right: MARGIN }, bufferPages: true, pdfVersion: "1.7", tagged: true,
    lang: document.language, displayTitle: true, info: { Title: document.title, Author: document.head?.name ?? "", CreationDate: createdAt, ModDate: createdAt }, font: "",
  }) as Pdf;
  const done = new Promise<Buffer>((resolve, reject) => {
    const parts: Buffer[] = [];
    pdf.on("data", (part: Buffer) => parts.push(part));
    pdf.on("end", () => resolve(Buffer.concat(parts)));
    pdf.on("error", reject);
  });
  const words = wordsIn(document.language);
  const root = pdf.struct("Document");
  pdf.addStructure(root);
  drawHead(pdf, root, document);
  const parts = [{ title: [document.title, document.reference].filter(Boolean).join(" · "), from: 0 }];
  let left = document.blocks;
  let above: readonly Block[] = [];
  while (left.length > 0) {
    const [block] = left;
    if (block?.kind === "part") parts.push({ title: block.text, from: pdf.addPage().bufferedPageRange().count - 1 });
    left = left.slice(drawNext(pdf, root, left, { bytesOf: photo, words, above }));
    above = block ? leadingTo(above, block) : [];
  }
  root.end();
  numberPages(pdf, parts, words);
  pdf.end();
  return done;
}

/** Draws the first of these blocks with what stands beside it; how many that were. */
function drawNext(pdf: Pdf, root: Structure, blocks: readonly Block[], { bytesOf, words, above }: { bytesOf: PhotoBytes; words: Words; above: readonly Block[] }): number {
  const [block, next] = blocks as [Block, ...Block[]];
  if (block.kind === "photo") {
    const others = blocks.findIndex((b) => b.kind !== "photo");
    const photos = blocks.slice(0, others < 0 ? undefined : others).filter((b) => b.kind === "photo");
    drawPhotos(pdf, root, photos, { bytesOf, words });
    return photos.length;
  }
  keepTogether(pdf, roomFor(pdf, blocks, above));
  if (block.kind !== "plan") {
    drawBlock(pdf, root, block);
    return 1;
  }
  const beside = next?.kind === "list" ? next.items : [];
  drawPlan(pdf, root, block, beside);
  return beside.length > 0 ? 2 : 1;
}

function drawHead(pdf: Pdf, root: Structure, { head, title, reference, blocks }: PrintedDocument): void {
  if (head) {
    say(pdf, root, "P", [head.name, ...head.lines, ...(reference ? [reference] : [])].join(" · "), { size: SMALL, colour: SLATE, gap: 4 });
    artifact(pdf, () => { pdf.moveTo(MARGIN, pdf.y).lineTo(pdf.page.width - MARGIN, pdf.y).lineWidth(0.6).strokeColor(LINE).stroke(); });
    pdf.y += 16;
  }
  if (!blocks.some((b) => b.kind === "title")) say(pdf, root, "H1", title, { weight: "bold", size: 18, gap: 12 });
}

function drawBlock(pdf: Pdf, root: Structure, block: Exclude<Block, { kind: "photo" | "plan" }>): void {
  switch (block.kind) {
    case "title": return say(pdf, root, "H1", block.text, { weight: "bold", size: HEADING.sizes[2], gap: 8 });
    case "part": return say(pdf, root, "H2", block.text, { weight: "bold", size: HEADING.sizes[2], gap: 8 });
    case "heading": {
      pdf.y += HEADING.above;
      return say(pdf, root, `H${block.level}`, block.text, { weight: "bold", size: HEADING.sizes[block.level], gap: HEADING.below });
    }
    case "paragraph": return say(pdf, root, "P", block.text);
    case "small": return say(pdf, root, "P", block.text, { size: SMALL, colour: SLATE });
    case "list": return drawList(pdf, root, block.items);
    case "table": return drawTable(pdf, root, block);
    case "signature": {
      tagged(pdf, root, "P", () => block.lines.forEach((line) => write(pdf, line, { gap: line === "" ? BELOW.toSign : BELOW.signed, align: "left" })), block.lines.join("\n"));
      pdf.y += BELOW.signature;
    }
  }
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
      const foot = lineOf(words.say("print.page", { title, page: page - from + 1, pages: end - from }), "plain");
      artifact(pdf, () => drawLine(pdf.fillColor(SLATE), foot, { x: MARGIN, y: pdf.page.height - MARGIN + ascentOf("plain") * SMALL, size: SMALL }));
      pdf.page.margins.bottom = bottom;
    }
  });
}
