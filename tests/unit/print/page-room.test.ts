import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { drawPdf } from "../../../lib/print/draw-pdf";
import type { Block, PrintedDocument } from "../../../lib/reply/documents/blocks";
import { hasPrograms } from "../../programs";

const folder = mkdtempSync(path.join(tmpdir(), "pages-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const line = (n: number): Block => ({ kind: "paragraph", text: `Line ${n}.` });
/** The pages, as text, of blocks that begin after so many lines. */
async function pagesAfter(lines: number, blocks: readonly Block[], picture: Buffer | null = null): Promise<string[]> {
  const document: PrintedDocument = { title: "Pages", language: "en-GB", head: null, blocks: [...Array.from({ length: lines }, (_, n) => line(n)), ...blocks] };
  const file = path.join(folder, "pages.pdf");
  writeFileSync(file, await drawPdf(document, { photo: () => picture, createdAt: new Date("2026-11-28T09:00:00Z") }));
  return execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" }).split("\f");
}
const heading = (text: string): Block => ({ kind: "heading", level: 2, text });
const rows = (n: number) => Array.from({ length: n }, (_, i) => [`Row ${i}`, "80 in 100"]);
const plan: Block = { kind: "plan", widthCm: 200, lengthCm: 150, keep: [{ left: 0, top: 0, right: 100, bottom: 150 }], damaged: [], alternative: "The drawing.", sizes: { across: "200 cm", along: "150 cm", kept: ["100 × 150 cm"] } };

// A line more each time moves the end of the page, of some 33 lines, through everything that is drawn after them.
describe.skipIf(!hasPrograms("pdftotext"))("the end of a page (poppler)", { timeout: 120_000 }, () => {
  const together = async (blocks: readonly Block[], first: string, last: string, picture: Buffer | null = null) => {
    let parted = 0;
    for (let lines = 16; lines < 34; lines += 1) {
      const pages = await pagesAfter(lines, blocks, picture);
      const [at, end] = [pages.findIndex((p) => p.includes(first)), pages.findIndex((p) => p.includes(last))];
      expect(at, first).toBeGreaterThanOrEqual(0);
      expect(end, `${first} and ${last} after ${lines} lines`).toBe(at);
      if (at > 0) parted += 1;
    }
    // Some began on the first page, some on the next: the place was met.
    expect(parted).toBeGreaterThan(0);
    expect(parted).toBeLessThan(18);
  };
  it("never stands between a heading and what it heads, nor inside a short table or before its small print", () =>
    together([heading("Headed"), { kind: "table", caption: "Short", head: ["A", "B"], rows: rows(7) }, { kind: "small", text: "The small print." }], "Headed", "The small print."));
  it("never stands between what leads to a table and the table, be it several paragraphs or a table that is parted", async () => {
    await together([heading("Headed"), { kind: "paragraph", text: "The label says viscose." }, { kind: "paragraph", text: "A laboratory says so too." }, { kind: "table", caption: "Short", head: ["A", "B"], rows: rows(3) }], "Headed", "Row 2");
    await together([heading("Headed"), { kind: "paragraph", text: "What was weighed." }, { kind: "table", caption: "Long", head: ["A", "B"], rows: rows(40) }], "Headed", "Row 1");
  });
  it.each([5, 7, 8, 9, 10, 11, 13])("never leaves a heading alone, however long the table is that stands below it: %i rows", async (n) => {
    const table: Block = { kind: "table", caption: "Some", head: ["A", "B"], rows: rows(n) };
    await together([heading("Headed"), { kind: "paragraph", text: "What leads to it." }, table], "Headed", "Row 1");
    await together([heading("Headed"), { kind: "paragraph", text: "Before it." }, { kind: "paragraph", text: "What leads to it." }, table], "Headed", "Row 1");
    await together([heading("Headed"), table, { kind: "small", text: "The small print." }], "Headed", "Row 1");
  });
  it("never stands between a drawing, its heading and the list that explains it", () =>
    together([heading("Headed"), plan, { kind: "list", items: ["Remains.", "New edges.", "The cost."] }], "Headed", "The cost."));
  it("draws a row of photos smaller rather than leave the end of a page blank, and on the next page where it would be too small", async () => {
    const picture = await sharp({ create: { width: 800, height: 600, channels: 3, background: "#a0522d" } }).jpeg().toBuffer();
    const photos = [0, 1].map((n): Block => ({ kind: "photo", photoId: "p", alternative: `Photo ${n}`, caption: `Number ${n}.` }));
    const heights: number[] = [];
    for (let lines = 16; lines < 34; lines += 1) {
      const document: PrintedDocument = { title: "Pages", language: "en-GB", head: null, blocks: [...Array.from({ length: lines }, (_, n) => line(n)), ...photos] };
      const pdf = (await drawPdf(document, { photo: () => picture, createdAt: new Date("2026-11-28T09:00:00Z") })).toString("latin1");
      const [, , top, , bottom] = /\/BBox \[([\d.]+) ([\d.]+) ([\d.]+) ([\d.]+)\]/u.exec(pdf) ?? [];
      heights.push(Math.round(Number(bottom) - Number(top)));
    }
    const full = Math.max(...heights);
    expect(heights[0]).toBe(full);
    expect(heights.at(-1)).toBe(full);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(Math.floor(0.6 * full));
    expect(heights.filter((h) => h < full).length).toBeGreaterThan(1);
  });
  it("never stands between what is said of photos and the photos", async () => {
    const picture = await sharp({ create: { width: 800, height: 600, channels: 3, background: "#a0522d" } }).jpeg().toBuffer();
    const photos = [0, 1].map((n): Block => ({ kind: "photo", photoId: "p", alternative: `Photo ${n}`, caption: `Number ${n}.` }));
    await together([{ kind: "small", text: "Said of the photos." }, ...photos], "Said of the photos.", "Number 1.", picture);
  });
  it("never stands between a text that ends in a colon and its list", () =>
    together([{ kind: "paragraph", text: "Please let me have:" }, { kind: "list", items: ["The first.", "The second."] }], "Please let me have:", "The second."));
  it("never leaves a signature alone", () =>
    together([heading("At the close"), line(100), line(101), { kind: "small", text: "Small." }, { kind: "signature", lines: ["", "Ivo Castellane"] }], "At the close", "Ivo Castellane"));
  it("never leaves fewer than five lines on a last page", async () => {
    const end: Block[] = [heading("At the close"), { kind: "paragraph", text: "What it does not say. ".repeat(14) }, line(100), line(101), { kind: "small", text: "Small." }, { kind: "paragraph", text: "Made out." }, { kind: "signature", lines: ["", "Ivo Castellane", "Lantern Yard"] }];
    const last: number[] = [];
    for (let lines = 16; lines < 34; lines += 1) {
      const pages = (await pagesAfter(lines, end)).filter((p) => p.trim() !== "");
      // The number of the page is none of them.
      if (pages.length > 1) last.push((pages.at(-1) ?? "").split("\n").filter((l) => l.trim() !== "").length - 1);
    }
    expect(last.length).toBeGreaterThan(3);
    expect(Math.min(...last)).toBeGreaterThanOrEqual(5);
  });
  it("parts a long table between its rows, never inside one", async () => {
    const tall = Array.from({ length: 40 }, (_, i) => [`Begin ${i}`, `${"word ".repeat(30)}end ${i}.`]);
    const pages = await pagesAfter(3, [heading("Headed"), { kind: "table", caption: "Long", head: ["A", "B"], rows: tall }]);
    expect(pages.filter((p) => p.includes("Begin")).length).toBeGreaterThan(2);
    expect(pages[0]).toMatch(/Headed[\s\S]*Begin 0/);
    for (let i = 0; i < 40; i += 1) expect(pages.find((p) => new RegExp(`Begin ${i}\\b`).test(p)), `row ${i}`).toMatch(new RegExp(`end ${i}\\.`));
  });
});
