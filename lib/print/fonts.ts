import "server-only";
import { readFileSync } from "node:fs";
import path from "node:path";
import { create, type Font } from "fontkit";
import { asTyped } from "../words/unbroken";

/** The typefaces shipped with the project, embedded in every document. Found from the folder that the server runs in. */
const FILES = {
  plain: "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff",
  plainExt: "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff",
  bold: "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-600-normal.woff",
  boldExt: "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-600-normal.woff",
  greek: "@fontsource/literata/files/literata-greek-400-normal.woff",
  cyrillic: "@fontsource/literata/files/literata-cyrillic-400-normal.woff",
} as const;
export type FontName = keyof typeof FILES;
export const FONT_NAMES = Object.keys(FILES) as FontName[];

const ORDER: Readonly<Record<"plain" | "bold", readonly FontName[]>> = { plain: ["plain", "plainExt", "greek", "cyrillic"], bold: ["bold", "boldExt", "greek", "cyrillic"] };

const loaded = new Map<FontName, { bytes: Buffer; font: Font }>();
function load(name: FontName): { bytes: Buffer; font: Font } {
  const known = loaded.get(name);
  if (known) return known;
  const bytes = readFileSync(path.join(process.cwd(), "node_modules", FILES[name]));
  const font = create(bytes);
  loaded.set(name, { bytes, font });
  return { bytes, font };
}
export const fontBytes = (name: FontName): Buffer => load(name).bytes;

export interface Run { readonly font: FontName; readonly text: string }

/** What no typeface of ours can draw. */
const MISSING = "?";

/** A text cut where the typeface has to change; what none of them has is drawn as a question mark. */
export function runsOf(text: string, weight: "plain" | "bold"): Run[] {
  const runs: { font: FontName; text: string }[] = [];
  for (const character of text) {
    const code = character.codePointAt(0) as number;
    const last = runs[runs.length - 1];
    // What only breaks or holds a line is drawn by none, so it never changes the typeface.
    if (last && asTyped(character) === "") { last.text += character; continue; }
    const font = ORDER[weight].find((name) => load(name).font.hasGlyphForCodePoint(code));
    const name = font ?? ORDER[weight][0] as FontName;
    const drawn = font ? character : MISSING;
    if (last?.font === name) last.text += drawn;
    else runs.push({ font: name, text: drawn });
  }
  return runs;
}

/** A typeface of a document, as far as it is reached here: what turns text into glyphs, once its lines are broken. */
interface Drawn { layoutRun(text: string, features?: unknown): unknown }

/**
 * Takes every typeface into a document. What holds a line together has done its work before glyphs are chosen: it is drawn as
 * the plain characters, so that whoever searches or copies the text finds what was typed.
 */
export function registerFonts(pdf: PDFKit.PDFDocument): void {
  for (const name of FONT_NAMES) {
    const drawn = (pdf.registerFont(name, fontBytes(name)).font(name) as unknown as { _font: Drawn })._font;
    const layoutRun = drawn.layoutRun.bind(drawn);
    drawn.layoutRun = (text, features) => layoutRun(asTyped(text), features);
  }
}
