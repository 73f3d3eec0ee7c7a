import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { afterAll, describe, expect, it } from "vitest";
import { drawPdf } from "../../../lib/print/draw-pdf";
import { runsOf } from "../../../lib/print/fonts";
import type { PrintedDocument } from "../../../lib/reply/documents/blocks";
import { cutDownPlan } from "../../../lib/reply/documents/cut-down-plan";
import { hasPrograms } from "../../programs";
import { range } from "../reply/make";

const folder = mkdtempSync(path.join(tmpdir(), "print-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const run = (program: string, ...args: string[]) => execFileSync(program, args, { encoding: "utf8" });

const photo = await sharp({ create: { width: 300, height: 200, channels: 3, background: "#a0522d" } }).jpeg().toBuffer();
const DOCUMENT: PrintedDocument = {
  title: "Condition report K7-204", language: "en-GB", head: { name: "Lantern Yard Rug Workshop", lines: ["3 Lantern Yard, Harrowmere"] },
  blocks: [
    { kind: "paragraph", text: "First paragraph, owned by Ána Łukasz Ωμέγα Иванова." },
    { kind: "heading", level: 2, text: "What was seen" },
    { kind: "list", items: ["The affected spot is browner (ΔE00 5.1 to 8.0).", "A second item."] },
    { kind: "table", caption: "Fibre of the pile", head: ["Fibre", "Chance"], rows: [["Viscose", "80 in 100"], ["Silk", "6 in 100"]] },
    { kind: "photo", photoId: "p1", alternative: "Photo: the whole rug", caption: "The whole rug." },
    { kind: "photo", photoId: "gone", alternative: "Photo: the label", caption: "The label." },
    { kind: "small", text: "The very last words." },
    { kind: "signature", lines: ["", "Ivo Castellane"] },
  ],
};
const drawn = (document: PrintedDocument) => drawPdf(document, { photo: (id) => (id === "p1" ? photo : null), createdAt: new Date("2026-11-28T09:00:00Z") });
const kept = async (document: PrintedDocument, name: string) => { const at = path.join(folder, name); writeFileSync(at, await drawn(document)); return at; };

describe("runsOf", () => {
  it("changes the typeface only where it must, and marks what none can draw", () => {
    expect(runsOf("ΔE of Иванова", "plain").map((r) => r.font)).toEqual(["greek", "plain", "cyrillic"]);
    expect(runsOf("plain", "plain")).toEqual([{ font: "plain", text: "plain", typed: "plain" }]);
    expect(runsOf("地", "plain")).toEqual([{ font: "emoji", text: "◻", typed: "地" }]);
  });
});

describe("drawPdf", () => {
  it("is tagged, titled, in a language, and says which standard it follows", async () => {
    const bytes = (await drawn(DOCUMENT)).toString("latin1");
    for (const mark of ["/MarkInfo", "/Marked true", "/Lang (en-GB)", "/DisplayDocTitle true", "pdfuaid:part", "/Alt (Photo: the whole rug)"]) expect(bytes.includes(mark), mark).toBe(true);
  });
  it("gives the same bytes for the same document", async () => expect((await drawn(DOCUMENT)).equals(await drawn(DOCUMENT))).toBe(true));

  it.skipIf(!hasPrograms("pdftotext"))("reads in order, a list entry before the table, the last words last (poppler)", async () => {
    const text = run("pdftotext", "-layout", await kept(DOCUMENT, "text.pdf"), "-");
    const at = ["First paragraph", "Łukasz", "Ωμέγα", "Иванова", "What was seen", "ΔE00 5.1 to 8.0", "A second item.", "Fibre of the pile", "80 in 100", "The whole rug.", "no longer there", "The very last words.", "Ivo Castellane", "page 1 of"].map((w) => text.indexOf(w));
    expect(at.every((i) => i >= 0), text).toBe(true);
    expect([...at].sort((a, b) => a - b)).toEqual(at);
  });
  it.skipIf(!hasPrograms("pdfinfo"))("has a tree of headings, lists, tables and figures (poppler)", async () => {
    const tree = run("pdfinfo", "-struct", await kept(DOCUMENT, "tree.pdf"));
    for (const tag of ["Document", "H1", "H2", "LI", "LBody", "Table", "TH", "TD", "Figure"]) expect(tree).toMatch(new RegExp(`^\\s*${tag}\\b`, "m"));
  });
  it.skipIf(!hasPrograms("pdffonts"))("embeds every typeface (poppler)", async () => {
    const rows = run("pdffonts", await kept(DOCUMENT, "fonts.pdf")).split("\n").slice(2).filter((l) => l.trim() !== "");
    expect(rows.length).toBeGreaterThanOrEqual(3);
    for (const row of rows) expect(row).toMatch(/\byes\s+yes\s+(?:yes|no)\s+\d+\s+\d+\s*$/);
  });
  it.skipIf(!hasPrograms("qpdf"))("is a sound file (qpdf)", async () => expect(run("qpdf", "--check", await kept(DOCUMENT, "sound.pdf"))).toContain("No syntax or stream encoding errors found"));

  it.skipIf(!hasPrograms("qpdf"))("meets what a machine can check of ISO 14289-1: language, title, tab order, alternatives and boxes of figures, scopes of heads, metadata (qpdf)", async () => {
    const { qpdf } = JSON.parse(run("qpdf", "--json", await kept(DOCUMENT, "ua.pdf"))) as { qpdf: [unknown, Record<string, { value?: unknown; stream?: { dict: Record<string, unknown> } }>] };
    const dictionaries = Object.values(qpdf[1]).map((o) => (o.stream ? o.stream.dict : o.value)).filter((v): v is Record<string, unknown> => typeof v === "object" && v !== null && !Array.isArray(v));
    const ofType = (type: string) => dictionaries.filter((d) => d["/Type"] === type);
    const tagged = (tag: string) => dictionaries.filter((d) => d["/S"] === tag);
    const [catalogue] = ofType("/Catalog");
    expect(catalogue).toMatchObject({ "/Lang": "u:en-GB", "/StructTreeRoot": expect.any(String) as string, "/Metadata": expect.any(String) as string });
    expect(ofType("/Page").every((p) => p["/Tabs"] === "/S" && typeof p["/StructParents"] === "number")).toBe(true);
    expect(tagged("/Figure").map((f) => f["/Alt"])).toEqual(["u:Photo: the whole rug"]);
    expect(tagged("/Figure")[0]?.["/A"]).toMatchObject({ "/O": "/Layout", "/BBox": [expect.any(Number), expect.any(Number), expect.any(Number), expect.any(Number)] });
    expect(tagged("/TH").map((h) => (h["/A"] as Record<string, unknown>)["/Scope"])).toEqual(["/Column", "/Column", "/Row", "/Row"]);
    expect(ofType("/Font").filter((f) => f["/Subtype"] === "/Type0").every((f) => typeof f["/ToUnicode"] === "string")).toBe(true);
  });
  it.skipIf(!hasPrograms("qpdf"))("marks everything that is drawn, as a piece of the structure or as no part of it (qpdf)", async () => {
    const file = await kept(DOCUMENT, "marked.pdf");
    const plain = path.join(folder, "plain.pdf");
    run("qpdf", "--qdf", "--object-streams=disable", file, plain);
    const drawing = /^(?:\[.*\] TJ|.* Tj|\/I\d+ Do|S|f|B)$/u;
    let depth = 0;
    const [loose, marked] = [[] as string[], [] as string[]];
    for (const line of readFileSync(plain, "latin1").split("\n")) {
      if (/ B(?:DC|MC)$/u.test(line)) depth += 1;
      if (line === "EMC") depth -= 1;
      if (drawing.test(line)) (depth > 0 ? marked : loose).push(line);
    }
    expect(marked.length).toBeGreaterThan(15);
    expect(loose).toEqual([]);
  });
  it.skipIf(!hasPrograms("pdftotext"))("says at the foot of every page which enquiry it belongs to", async () => {
    const long = { ...DOCUMENT, title: "Cutting down a grey rug", reference: "K7-204", blocks: Array.from({ length: 60 }, () => ({ kind: "paragraph" as const, text: "A line." })) };
    const pages = run("pdftotext", "-layout", await kept(long, "foot.pdf"), "-").split("\f").filter((p) => p.trim() !== "");
    expect(pages.length).toBeGreaterThan(1);
    pages.forEach((page, n) => expect(page).toContain(`Cutting down a grey rug · K7-204, page ${n + 1} of ${pages.length}`));
  });
  it.skipIf(!hasPrograms("pdftoppm"))("draws what was marked on a photo: its outline where it lies, and nothing elsewhere (poppler)", async () => {
    const outline = [{ x: 0.4, y: 0.4 }, { x: 0.6, y: 0.4 }, { x: 0.6, y: 0.6 }, { x: 0.4, y: 0.6 }];
    const shown = async (marks: { n: number; outline: typeof outline }[]) => {
      const file = await kept({ ...DOCUMENT, head: null, blocks: [{ kind: "photo", photoId: "p1", alternative: "Photo", caption: "Photo.", shape: { width: 300, height: 200 }, marks }] }, "marks.pdf");
      run("pdftoppm", "-png", "-r", "144", "-singlefile", file, path.join(folder, "marks"));
      return sharp(path.join(folder, "marks.png")).removeAlpha().raw().toBuffer({ resolveWithObject: true });
    };
    const [marked, bare] = [await shown([{ n: 1, outline }]), await shown([])];
    const { width, height } = marked.info;
    const changed: [number, number][] = [];
    for (let y = 0; y < height; y += 1) for (let x = 0; x < width; x += 1) if (Math.abs((marked.data[(y * width + x) * 3] as number) - (bare.data[(y * width + x) * 3] as number)) > 40) changed.push([x, y]);
    // Brown is the photo: its box on the page.
    const brown: [number, number][] = [];
    for (let y = 0; y < height; y += 1) for (let x = 0; x < width; x += 1) { const [r, g] = [bare.data[(y * width + x) * 3] as number, bare.data[(y * width + x) * 3 + 1] as number]; if (r > 140 && g < 110) brown.push([x, y]); }
    const ends = (points: [number, number][], axis: 0 | 1) => points.reduce(([low, high], p) => [Math.min(low, p[axis]), Math.max(high, p[axis])], [Infinity, -Infinity]);
    for (const axis of [0, 1] as const) {
      const [low, high] = ends(brown, axis) as [number, number];
      const [from, to] = ends(changed, axis) as [number, number];
      // Half a line of 2.4 points is 2.4 pixels here; the disc of the number stands above the outline.
      expect((to - low) / (high - low)).toBeCloseTo(0.6, 1);
      if (axis === 0) expect((from - low) / (high - low)).toBeGreaterThan(0.35);
      expect(from).toBeGreaterThan(low);
    }
  });
  it("stands photos that follow each other two abreast, so that six of them take one page", async () => {
    const six = { ...DOCUMENT, blocks: Array.from({ length: 6 }, (_, n) => ({ kind: "photo" as const, photoId: "p1", alternative: `Photo ${n}`, caption: `Number ${n}.` })) };
    const bytes = (await drawn(six)).toString("latin1");
    expect(bytes.match(/\/Type \/Page\b/g)).toHaveLength(1);
    for (let n = 0; n < 6; n += 1) expect(bytes).toContain(`/Alt (Photo ${n})`);
  });
  it.skipIf(!hasPrograms("pdftotext"))("begins a part on a page of its own, numbered by itself", async () => {
    const parted = { ...DOCUMENT, blocks: [...DOCUMENT.blocks, { kind: "part" as const, text: "For your own information" }, { kind: "paragraph" as const, text: "Left out or kept." }] };
    const pages = run("pdftotext", "-layout", await kept(parted, "parted.pdf"), "-").split("\f");
    const at = pages.findIndex((p) => p.includes("Left out or kept."));
    expect(pages[at]).toMatch(/^\s*For your own information\n[\s\S]*For your own information, page 1 of 1/);
    expect(pages[at - 1]).toContain(`Condition report K7-204, page ${at} of ${at}`);
  });
  it.skipIf(!hasPrograms("pdftotext"))("draws the head of a table once more where it goes on, and says it once to whoever listens (poppler)", async () => {
    const rows = Array.from({ length: 60 }, (_, n) => [`Row ${n}`, "80 in 100"]);
    const file = await kept({ ...DOCUMENT, blocks: [{ kind: "table", caption: "Long", head: ["Fibre", "Chance"], rows }] }, "table.pdf");
    const pages = run("pdftotext", "-layout", file, "-").split("\f").filter((p) => p.includes("Row"));
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(page).toMatch(/Fibre\s+Chance/);
    expect(run("pdfinfo", "-struct-text", file).match(/"Chance"/gu)).toHaveLength(1);
  });

  it("numbers as many pages as a long document takes", async () => {
    const long = { ...DOCUMENT, blocks: Array.from({ length: 120 }, (_, i) => ({ kind: "paragraph" as const, text: `Paragraph ${i}. `.repeat(12) })) };
    const pages = (await drawn(long)).toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(3);
    if (hasPrograms("pdftotext")) expect(run("pdftotext", await kept(long, "long.pdf"), "-")).toContain(`page ${pages} of ${pages}`);
  });
  it.skipIf(!hasPrograms("pdfinfo"))("is as large as the paper that is usual there: US Letter in the United States and Canada, else A4 (poppler)", async () => {
    const sizeIn = async (language: PrintedDocument["language"]) => /Page size:\s+([\d.]+) x ([\d.]+)/u.exec(run("pdfinfo", await kept({ ...DOCUMENT, language }, "paper.pdf")))?.slice(1).map(Number);
    // 8.5 × 11 in; 210 × 297 mm (ISO 216).
    for (const language of ["en-US", "en-CA"] as const) expect(await sizeIn(language)).toEqual([612, 792]);
    for (const language of ["en-GB", "en-IE", "en-AU", "en-NZ"] as const) {
      const [width = 0, height = 0] = (await sizeIn(language)) ?? [];
      expect((width / 72) * 25.4).toBeCloseTo(210, 1);
      expect((height / 72) * 25.4).toBeCloseTo(297, 1);
    }
  });
  it.skipIf(!hasPrograms("pdftotext"))("leaves no word alone in the last line of a paragraph, nor in a cell of a table, and loses none (poppler)", async () => {
    const said = (n: number) => `${"word ".repeat(n)}end${n}.`;
    const paragraphs = Array.from({ length: 80 }, (_, n) => ({ kind: "paragraph" as const, text: said(n) }));
    const lines = run("pdftotext", "-raw", await kept({ ...DOCUMENT, blocks: paragraphs }, "alone.pdf"), "-").split("\n").map((line) => line.trim());
    for (let n = 1; n < 80; n += 1) expect(lines.find((line) => new RegExp(`\\bend${n}\\.$`, "u").test(line)), `${n} words`).toMatch(/^word /u);
    expect(lines.join(" ").match(/\bword\b/gu)).toHaveLength((79 * 80) / 2);
    const cells = { kind: "table" as const, caption: "Narrow", head: ["A", "B"], rows: Array.from({ length: 30 }, (_, n) => ["x", said(n)]) };
    const inCells = run("pdftotext", "-raw", await kept({ ...DOCUMENT, blocks: [cells] }, "cells.pdf"), "-").split("\n").map((line) => line.trim());
    for (let n = 1; n < 30; n += 1) expect(inCells.find((line) => new RegExp(`\\bend${n}\\.$`, "u").test(line)), `${n} words`).toMatch(/word end/u);
  });
  it.skipIf(!hasPrograms("pdftotext"))("ends no line inside a range or before its unit, however wide the text before it, and is found as it is typed (poppler)", async () => {
    // One letter more in each paragraph, and a narrow column of a table: somewhere every place of the sentence meets the margin.
    const said = "between 20–35 % and 3–6 years of it, 170 × 240 cm or 5 ft 7 in, 70 in 100";
    const paragraphs = Array.from({ length: 90 }, (_, n) => ({ kind: "paragraph" as const, text: `${"m".repeat(n)} ${said}.` }));
    const table = { kind: "table" as const, caption: "Narrow", head: ["A", "B", "C", "D", "E"], rows: Array.from({ length: 12 }, (_, n) => Array.from({ length: 5 }, (_, m) => `${"n".repeat(n + m)} 20–35 % or 3–6 years`)) };
    const file = await kept({ ...DOCUMENT, blocks: [...paragraphs, table] }, "ranges.pdf");
    const inOrder = run("pdftotext", "-raw", file, "-");
    const ends = inOrder.split("\n").map((line) => line.trimEnd());
    expect(ends.filter((line) => /\d–$|(?:20–35|3–6|240|\bft|\bft 7|100)$/u.test(line) && !/70 in 100$/u.test(line))).toEqual([]);
    expect(ends.some((line) => /\bbetween$/u.test(line)) && ends.some((line) => / or$/u.test(line))).toBe(true);
    expect(inOrder.match(/20–35 %/gu)).toHaveLength(150);
    expect(inOrder.match(/3–6 years/gu)).toHaveLength(150);
    expect(inOrder).not.toMatch(/[\u00a0\u2060?]/u);
  });
  it("draws a cut-down plan with its alternative in words", async () => {
    const plan = cutDownPlan({ asker: { name: "Ana Example", as: "owner", customer: null }, reference: "K7-204", rug: "a grey rug", size: { widthCm: 200, lengthCm: 300 }, photoTop: "left", damaged: [[{ x: 0, y: 0 }, { x: 200, y: 0 }, { x: 200, y: 30 }]], isTufted: false, isProposed: true, inspected: "no", figures: { locale: "en-GB", areaUnit: "m2" }, workshop: { name: "Lantern Yard", lines: [] },
      ways: [{ kind: "edge-off", pieces: [{ left: 0, top: 30, right: 200, bottom: 300 }], shareKept: 0.9, bindingM: 2.02, cost: { range: range(60, 70, 90), currency: "EUR" } }] });
    expect((await drawn(plan)).toString("latin1")).toMatch(/\/Alt/);
    if (!hasPrograms("pdftotext") || !hasPrograms("pdfinfo")) return;
    const file = await kept(plan, "plan.pdf");
    const words = [...run("pdftotext", "-bbox", file, "-").matchAll(/xMin="([\d.]+)" yMin="([\d.]+)".*?>(.*?)<\/word>/gu)].map(([, x, y, word]) => ({ x: Number(x), y: Number(y), word }));
    const at = (word: string) => words.find((w) => w.word === word) ?? { x: Number.NaN, y: Number.NaN };
    // What is said of the drawing stands beside it, its caption below both, and is read after that.
    expect(at("Remains:").x).toBeGreaterThan(62 + 100);
    expect(at("Plan").x).toBeCloseTo(62, 0);
    expect(at("Plan").y).toBeGreaterThan(at("Remains:").y);
    expect(run("pdfinfo", "-struct", file)).toMatch(/Figure[\s\S]*?Caption[\s\S]*?\bL\b/u);
  });
});
