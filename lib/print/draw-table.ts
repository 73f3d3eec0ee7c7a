import "server-only";
import type { Block } from "../reply/documents/blocks";
import { artifact, asRead, BELOW, CELL, keepTogether, LINE, MARGIN, say, SLATE, SMALL, textHeight, write, type Pdf, type Structure } from "./pen";

export type Table = Extract<Block, { kind: "table" }>;

/** Points, by eye. */
const GAPS = { caption: 4, cell: 3, line: 4, column: 10 } as const;

/** A row is never parted; where a table goes on, its head stands above it once more. */
export function drawTable(pdf: Pdf, root: Structure, { caption, head, rows }: Table): void {
  const table = pdf.struct("Table");
  root.add(table);
  say(pdf, table, "Caption", caption, { size: SMALL, colour: SLATE, gap: GAPS.caption });
  const widths = widthsOf(pdf, [head, ...rows]);
  drawRow(pdf, table, { cells: head, widths, isHead: true });
  for (const cells of rows) {
    // Drawn for the eye alone: whoever listens hears it once.
    if (keepTogether(pdf, rowHeight(pdf, { cells, widths, weight: "plain" }))) {
      artifact(pdf, () => drawCells(pdf, { cells: head, widths, weight: "bold" }, (draw) => draw()));
      ruleBelow(pdf);
    }
    drawRow(pdf, table, { cells, widths, isHead: false });
  }
  table.end();
  pdf.y += BELOW.table;
}

/** How high a table stands with so many of its rows. */
export function tableHeight(pdf: Pdf, { caption, head, rows }: Table, most = rows.length): number {
  const widths = widthsOf(pdf, [head, ...rows]);
  const top = textHeight(pdf, caption, { size: SMALL }) + GAPS.caption + rowHeight(pdf, { cells: head, widths, weight: "bold" });
  return rows.slice(0, most).reduce((sum, cells) => sum + rowHeight(pdf, { cells, widths, weight: "plain" }), top);
}

function widthsOf(pdf: Pdf, rows: readonly (readonly string[])[]): number[] {
  const [full, columns] = [pdf.page.width - 2 * MARGIN, rows[0]?.length ?? 1];
  const first = firstShare(rows) * full;
  return Array.from({ length: columns }, (_, i) => (i === 0 ? first : (full - first) / (columns - 1)));
}

const rowHeight = (pdf: Pdf, { cells, widths, weight }: Row & { weight: "bold" | "plain" }): number =>
  Math.max(...cells.map((cell, i) => textHeight(pdf, cell, { weight, size: CELL, width: (widths[i] as number) - GAPS.column }))) + GAPS.cell + GAPS.line;

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
    parent.add(pdf.struct(scope ? "TH" : "TD", { ...asRead(row.cells[i] ?? ""), ...(scope ? { scope } : {}) } as object, draw));
  });
  parent.end();
  ruleBelow(pdf);
}

function ruleBelow(pdf: Pdf): void {
  artifact(pdf, () => { pdf.moveTo(MARGIN, pdf.y).lineTo(pdf.page.width - MARGIN, pdf.y).lineWidth(0.5).strokeColor(LINE).stroke(); });
  pdf.y += GAPS.line;
}

/** Cells side by side, each by way of `put`; the next thing stands below the longest. */
function drawCells(pdf: Pdf, { cells, widths, weight }: Row & { weight: "bold" | "plain" }, put: (draw: () => void, column: number) => void): void {
  const top = pdf.y;
  let bottom = top;
  cells.forEach((cell, i) => {
    pdf.y = top;
    const x = MARGIN + widths.slice(0, i).reduce((a, b) => a + b, 0);
    put(() => write(pdf, cell, { weight, size: CELL, x, width: (widths[i] as number) - GAPS.column, gap: GAPS.cell, align: "left" }), i);
    bottom = Math.max(bottom, pdf.y);
  });
  pdf.y = bottom;
}
