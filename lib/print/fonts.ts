import "server-only";
import { readFileSync } from "node:fs";
import path from "node:path";
import { create, type Font, type Glyph, type GlyphRun } from "fontkit";
import { asTyped } from "../words/unbroken";
import { unpacked } from "./woff";

const own = (part: string, weight: number) => `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-${part}-${weight}-normal.woff`;
const sans = (part: string, weight = 400) => `@fontsource/noto-sans/files/noto-sans-${part}-${weight}-normal.woff`;

/** The typefaces shipped with the project; a document holds those that it is written in. Found from the folder that the server runs in. */
const FILES = {
  plain: own("latin", 400), plainExt: own("latin-ext", 400), bold: own("latin", 600), boldExt: own("latin-ext", 600),
  latin: sans("latin"), latinExt: sans("latin-ext"), vietnamese: sans("vietnamese"),
  boldLatin: sans("latin", 600), boldLatinExt: sans("latin-ext", 600), boldVietnamese: sans("vietnamese", 600),
  greek: sans("greek"), greekExt: sans("greek-ext"), cyrillic: sans("cyrillic"), cyrillicExt: sans("cyrillic-ext"), devanagari: sans("devanagari"),
  arabic: "@fontsource/vazirmatn/files/vazirmatn-arabic-400-normal.woff",
  hebrew: "@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff",
  emoji: "@fontsource/noto-emoji/files/noto-emoji-emoji-400-normal.woff",
} as const;
export type FontName = keyof typeof FILES;
export type Weight = "plain" | "bold";

/** The letters of one hand: a word is written in the first of these that has all of it. */
const HANDS: Readonly<Record<Weight, readonly (readonly FontName[])[]>> = {
  plain: [["plain", "plainExt"], ["latin", "latinExt", "vietnamese"]], bold: [["bold", "boldExt"], ["boldLatin", "boldLatinExt", "boldVietnamese"]],
};
const OTHERS: readonly FontName[] = ["greek", "greekExt", "cyrillic", "cyrillicExt", "arabic", "hebrew", "devanagari", "emoji"];
const everyFont = (weight: Weight): readonly FontName[] => [...HANDS[weight].flat(), ...OTHERS];

/** Given as the features of a text that runs from right to left. */
export const RIGHT_TO_LEFT: readonly string[] = [];

const loaded = new Map<FontName, Font>();
function load(name: FontName): Font {
  const known = loaded.get(name);
  if (known) return known;
  const font = create(unpacked(readFileSync(path.join(process.cwd(), "node_modules", FILES[name]))));
  loaded.set(name, asWritten(font));
  return font;
}

/**
 * A typeface that takes what holds a line together, whose work is done before glyphs are chosen, for the plain characters, so
 * that whoever searches or copies the text finds what was typed; and that can be told that a text runs from right to left.
 * Ligatures that letters may do without are left out there.
 */
function asWritten(font: Font): Font {
  const layout = font.layout.bind(font);
  font.layout = (text, features) => (features === RIGHT_TO_LEFT ? letterByLetter(font, layout(asTyped(text), { liga: false }, undefined, undefined, "rtl")) : layout(asTyped(text), features));
  return font;
}

const LAM = 0x644, BLANK = 0x200d;
/** Readers of a file turn what runs from right to left round letter by letter, so the one glyph of a lam and its alef says alef, and a blank beside it lam. */
function letterByLetter(font: Font, run: GlyphRun): GlyphRun {
  for (let i = run.glyphs.length - 1; i >= 0; i -= 1) {
    const glyph = run.glyphs[i] as Glyph;
    const [first, second, ...more] = glyph.codePoints;
    if (first !== LAM || second === undefined || more.length > 0) continue;
    const saying = (of: Glyph, code: number): Glyph => Object.create(of, { codePoints: { value: [code] } }) as Glyph;
    run.glyphs.splice(i, 1, saying(glyph, second), saying(font.glyphForCodePoint(BLANK), LAM));
    run.positions.splice(i + 1, 0, { xAdvance: 0, yAdvance: 0, xOffset: 0, yOffset: 0 });
  }
  return run;
}

/** The typeface of a document from here on; its file is taken into it once a letter of it is drawn. */
export const inFont = (pdf: PDFKit.PDFDocument, name: FontName): PDFKit.PDFDocument => pdf.registerFont(name, load(name) as unknown as PDFKit.Mixins.PDFFontSource).font(name);

/** How far a typeface stands above its baseline, as a share of its size. */
export function ascentOf(name: FontName): number {
  const { ascent, unitsPerEm } = load(name);
  return ascent / unitsPerEm;
}

/** What is never drawn by itself: joiners of letters, the choice between two looks of a sign. */
const JOINS = /[\u200c\u200d\ufe00-\ufe0f]/gu;
/** What only steers the order of a text, or nothing at all: its work is done before it is drawn. */
const UNSEEN = /[\u00ad\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]|(?!\t)\p{Cc}/gu;
/** What stands for a character that none of our typefaces has; drawn in the one that has it. */
const BOX = { text: "◻", font: "emoji" } as const satisfies { text: string; font: FontName };

const clusters = new Intl.Segmenter("en", { granularity: "grapheme" });
const clustersOf = (text: string): string[] => (ONE_BY_ONE.test(text) ? [...text] : Array.from(clusters.segment(text), (s) => s.segment));
/** Of these every one is drawn by itself, which needs no segmenter. */
const ONE_BY_ONE = /^[ -~]*$/u;
/** What of a cluster is drawn, as code points. */
const drawnOf = (cluster: string): number[] => Array.from(asTyped(cluster).replace(JOINS, ""), (c) => c.codePointAt(0) as number);
const hasAll = (name: FontName, codes: readonly number[]): boolean => codes.every((code) => load(name).hasGlyphForCodePoint(code));
function drawnBy(cluster: string, fonts: readonly FontName[]): FontName | undefined {
  const codes = drawnOf(cluster);
  return fonts.find((name) => hasAll(name, codes));
}

/** `typed`: what it stands for, where that is not what is drawn. */
export interface Run { readonly font: FontName; readonly text: string; readonly typed: string }

/** A space, and what only holds a line, keeps to the letters before it; signs are set too wide for that. */
const keepsTo = (font: FontName | undefined, cluster: string): font is FontName =>
  font !== undefined && font !== BOX.font && asTyped(cluster).trim() === "" && hasAll(font, drawnOf(cluster));

/** A text cut where the typeface has to change. A word keeps to one hand where there is one that has all its letters; what no typeface has is drawn as a box. */
export function runsOf(text: string, weight: Weight): Run[] {
  const runs: { font: FontName; text: string; typed: string }[] = [];
  for (const word of written(text).match(/\s+|\S+/gu) ?? []) {
    const parts = clustersOf(word);
    const hand = HANDS[weight].find((fonts) => parts.every((c) => drawnBy(c, fonts))) ?? everyFont(weight);
    for (const typed of parts) {
      const last = runs.at(-1);
      const font = keepsTo(last?.font, typed) ? last.font : drawnBy(typed, hand);
      const run = { font: font ?? BOX.font, text: font ? typed : BOX.text, typed };
      const goesOn = last?.font === run.font && (last.text === last.typed) === (run.text === typed);
      if (goesOn) { last.text += run.text; last.typed += typed; } else runs.push(run);
    }
  }
  return runs;
}
const written = (text: string): string => text.normalize("NFC").replace(UNSEEN, "").replaceAll("\t", " ");

/** The characters of a text that no typeface of ours has, each once, in their order. */
export const boxedIn = (text: string): string[] =>
  [...new Set(clustersOf(written(text)).filter((c) => c.trim() !== "" && drawnBy(c, everyFont("plain")) === undefined))];
