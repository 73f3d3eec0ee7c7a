import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { drawPdf } from "../../../lib/print/draw-pdf";
import { boxedIn, runsOf } from "../../../lib/print/fonts";
import { lineOf, runsRightToLeft } from "../../../lib/print/lines";
import { MARGIN } from "../../../lib/print/pen";
import type { Block, PrintedDocument } from "../../../lib/reply/documents/blocks";
import { LOCALES } from "../../../lib/words/locales";
import { hasPrograms } from "../../programs";
import { allWordsOf, documentsIn } from "../reply/documents/made";

const folder = mkdtempSync(path.join(tmpdir(), "scripts-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const run = (program: string, ...args: string[]) => execFileSync(program, args, { encoding: "utf8" });

const documentOf = (...texts: string[]): PrintedDocument => ({ title: "Names", language: "en-GB", head: null, blocks: texts.map((text): Block => ({ kind: "paragraph", text })) });
const drawn = (document: PrintedDocument) => drawPdf(document, { photo: () => null, createdAt: new Date("2026-11-28T09:00:00Z") });
async function kept(document: PrintedDocument): Promise<string> {
  const at = path.join(folder, "names.pdf");
  writeFileSync(at, await drawn(document));
  return at;
}
/** What poppler reads, without the marks of direction it adds around what runs from right to left. */
const textOf = async (...texts: string[]) => run("pdftotext", "-layout", await kept(documentOf(...texts)), "-").replace(/[\u202a-\u202e]/gu, "");
/** The left and right end of each word on the page, in points. */
async function placesOf(...texts: string[]): Promise<{ word: string; left: number; right: number; top: number }[]> {
  const found = run("pdftotext", "-bbox", await kept(documentOf(...texts)), "-").matchAll(/xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="[\d.]+">(.*?)<\/word>/gu);
  return [...found].map(([, left, top, right, word]) => ({ word: (word ?? "").replace(/[\u202a-\u202e]/gu, ""), left: Number(left), right: Number(right), top: Number(top) }));
}
/** The width of A4, 210 mm, in points (ISO 216). */
const A4_WIDTH = (210 / 25.4) * 72;
const reversed = (word: string) => [...word].reverse().join("");

describe("runsOf", () => {
  it("writes a word in one hand where there is one that has all its letters", () => {
    const fonts = new Set(runsOf("Nguyễn", "plain").map((r) => r.font));
    expect([...fonts].every((font) => ["latin", "latinExt", "vietnamese"].includes(font))).toBe(true);
    expect(runsOf("Łukasz", "plain").every(({ font }) => font === "plain" || font === "plainExt")).toBe(true);
  });
  it("never parts what is one sign: a letter and its accent, a sign joined of several", () => {
    expect(runsOf("e\u0301", "plain")).toEqual([{ font: "plain", text: "é", typed: "é" }]);
    expect(runsOf("👩‍🔧❤️", "plain")).toEqual([{ font: "emoji", text: "👩‍🔧❤️", typed: "👩‍🔧❤️" }]);
  });
  it("draws nothing for what only steers the order of a text", () => expect(runsOf("\u2066a\u2069\u200f\u0007", "plain")).toEqual([{ font: "plain", text: "a", typed: "a" }]));
});

describe("boxedIn", () => {
  it("names each character that no typeface has once, in their order", () => {
    expect(boxedIn("王小明, 王 and 지수")).toEqual(["王", "小", "明", "지", "수"]);
    expect(boxedIn("ليلى الحداد, אנה, Иванова, Ωμέγα Ἀθῆναι, Nguyễn, Ṭabrīz, शर्मा, پته‌دوزی 🙂\n\t€1,200 ½ 17 °C – “x” ΔE m²")).toEqual([]);
    expect(boxedIn("")).toEqual([]);
  });
  it("finds none in what our own documents say, whatever the locale", () => {
    for (const locale of LOCALES) for (const { name, document } of documentsIn({ locale, areaUnit: "m2" })) expect(boxedIn(allWordsOf(document).join(" ").replace(/[⟦⟧]/gu, "")), name).toEqual([]);
  });
});

describe("lineOf", () => {
  // Unicode Standard Annex 9: a number keeps its order inside what runs from right to left, and brackets are mirrored there.
  it("stands from left to right as it is read from right to left, numbers and Latin words in their own order, brackets mirrored", () => {
    const said = lineOf("Client: ליאת 12 · C7-582", "plain");
    expect(said.isRightToLeft).toBe(false);
    expect(said.pieces.map((p) => p.text.trim()).filter((t) => t !== "")).toEqual(["Client:", "12", "ליאת", "· C7-582"]);
    const back = lineOf("ליאת (12) C7-582", "plain");
    expect(back.isRightToLeft).toBe(true);
    expect(back.pieces.map((p) => p.text.trim()).filter((t) => t !== "")).toEqual(["C7-582", "(", "12", ")", "ליאת"]);
  });
  it("knows what runs from right to left", () => {
    expect(["Client: ليلى", "ליאת"].map(runsRightToLeft)).toEqual([true, true]);
    expect(["Ana", "Иванова 12", "", "🙂 王"].map(runsRightToLeft)).toEqual([false, false, false, false]);
  });
});

describe.skipIf(!hasPrograms("pdftotext", "pdffonts", "qpdf"))("drawPdf", () => {
  it("gives every name as it was typed to whoever searches or copies it (poppler)", async () => {
    const names = ["ليلى الحداد", "عبد الله علاء سلام", "فاطمة الزهراء", "אנה לוי", "Nguyễn Thị Hương", "शर्मा क्षत्रिय", "王小明", "지수", "👩‍🔧"];
    const text = await textOf(...names.map((n, i) => `Client ${i}: ${n}`));
    for (const name of names) expect(text).toContain(name);
  });
  it("stands a name that runs from right to left in its place in a line that does not, its first word at the right", async () => {
    const at = await placesOf("Client: ليلى الحداد · C7-582");
    const left = (word: string) => at.find((w) => w.word === word || w.word === reversed(word))?.left ?? Number.NaN;
    expect(left("Client:")).toBeLessThan(left("الحداد"));
    expect(left("الحداد")).toBeLessThan(left("ليلى"));
    expect(left("ليلى")).toBeLessThan(left("C7-582"));
  });
  it("begins a paragraph that runs from right to left at the right, and goes on there in the next line", async () => {
    const at = (await placesOf("מלים ".repeat(39) + "סוף")).filter((w) => /[מס]/u.test(w.word));
    const tops = [...new Set(at.map((w) => w.top))].sort((a, b) => a - b);
    expect(tops.length).toBeGreaterThan(1);
    // A4 is 595.28 points wide, its margins 62.
    for (const top of tops) expect(Math.max(...at.filter((w) => w.top === top).map((w) => w.right))).toBeCloseTo(595.28 - 62, 0);
    const last = at.filter((w) => w.top === tops.at(-1));
    const end = last.find((w) => ["סוף", reversed("סוף")].includes(w.word));
    expect(end?.left).toBe(Math.min(...last.map((w) => w.left)));
    expect(end?.left).toBeGreaterThan(62 + 100);
  });
  it.each(["V", "W", "Ta", "لا"])("parts a word wider than a line so that no letter of it stands beyond the margin: %s", async (letters) => {
    const places = await placesOf(`a ${letters.repeat(200)} b`);
    expect(places.length).toBeGreaterThan(3);
    for (const { left, right } of places) {
      expect(left).toBeGreaterThan(MARGIN - 1);
      expect(right).toBeLessThan(A4_WIDTH - MARGIN + 1);
    }
  });
  it("joins Arabic letters: three joined take less room than three apart", async () => {
    const wide = async (text: string) => { const at = (await placesOf(text)).filter((w) => w.word.includes("ب")); return Math.max(...at.map((w) => w.right)) - Math.min(...at.map((w) => w.left)); };
    const joined = await wide("ببب");
    const apart = await wide("ب\u200cب\u200cب");
    expect(joined).toBeGreaterThan(0);
    expect(joined).toBeLessThan(apart * 0.95);
  });
  it("takes in only the typefaces a document is written in, all embedded", async () => {
    const facesOf = async (text: string) => run("pdffonts", await kept(documentOf(text))).split("\n").slice(2).filter((l) => l !== "");
    expect(await facesOf("Plain words.")).toHaveLength(2);
    const many = await facesOf("ليلى, אנה, Иванова, शर्मा, 🙂 王");
    expect(many.length).toBeGreaterThanOrEqual(7);
    for (const face of many) expect(face).toMatch(/\byes\s+yes\s+yes\s+\d+\s+\d+\s*$/u);
    expect((await drawn(documentOf("Plain words."))).length).toBeLessThan(12_000);
    expect(run("qpdf", "--check", path.join(folder, "names.pdf"))).toContain("No syntax or stream encoding errors found");
  });
  it("tells whoever listens what runs from right to left as it is read", async () => {
    const bytes = (await drawn(documentOf("Client: ליאת"))).toString("latin1");
    const told = Buffer.from("\ufeffClient: ליאת", "utf16le").swap16().toString("latin1").replace(/[\\()\n\r\t\b\f]/gu, (c) => `\\${c}`);
    expect(bytes).toContain(`/ActualText (${told})`);
    expect((await drawn(documentOf("Client: Ana"))).toString("latin1")).not.toContain("/ActualText");
  });
});
