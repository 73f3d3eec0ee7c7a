import { readFileSync } from "node:fs";
import path from "node:path";
import { create } from "fontkit";
import type { Outline } from "./ink";

/** As much of a typeface as drawing needs. */
interface Drawable {
  unitsPerEm: number;
  capHeight: number;
  hasGlyphForCodePoint(code: number): boolean;
  layout(text: string): { glyphs: { path: { commands: { command: string; args: number[] }[] } }[]; positions: { xAdvance: number }[] };
}
/** A typeface as labels carry it: the files that hold its letters, and how wide it is set. */
export interface Typeface { readonly name: string; readonly files: readonly string[]; readonly wide: number; readonly spaced: number }

const own = (name: string, family: string, style: string, { wide = 1, spaced = 0 } = {}): Typeface =>
  ({ name, wide, spaced, files: ["latin", "latin-ext"].map((set) => `@fontsource/${family}/files/${family}-${set}-${style}.woff`) });

/** Twelve: three families of the packages that are here, in weights, slants and widths that labels have. */
export const TYPEFACES: readonly Typeface[] = [
  own("plain", "atkinson-hyperlegible-next", "400-normal"), own("light", "atkinson-hyperlegible-next", "300-normal"), own("bold", "atkinson-hyperlegible-next", "700-normal"),
  own("slanted", "atkinson-hyperlegible-next", "400-italic"), own("narrow", "atkinson-hyperlegible-next", "500-normal", { wide: 0.74 }), own("wide", "atkinson-hyperlegible-next", "500-normal", { wide: 1.2, spaced: 0.06 }),
  own("serif", "literata", "400-normal"), own("serif bold", "literata", "700-normal"), own("serif italic", "literata", "400-italic"), own("serif light, spaced", "literata", "300-normal", { spaced: 0.08 }),
  { name: "grotesque", files: ["next/dist/next-devtools/server/font/geist-latin.woff2", "next/dist/next-devtools/server/font/geist-latin-ext.woff2"], wide: 1, spaced: 0 },
  { name: "typewriter", files: ["next/dist/next-devtools/server/font/geist-mono-latin.woff2", "next/dist/next-devtools/server/font/geist-mono-latin-ext.woff2"], wide: 1, spaced: 0 },
];

const open = new Map<string, Drawable>();
function drawable(file: string): Drawable {
  const known = open.get(file) ?? (create(readFileSync(path.join(process.cwd(), "node_modules", file))) as unknown as Drawable);
  open.set(file, known);
  return known;
}

/** Steps into which a curve is cut. */
const STEPS = 6;

/** The outlines of a line of text, its baseline from (0, 0), in pixels at `size` pixels an em; and how long the line is. */
export function lineOf(text: string, face: Typeface, size: number): { outlines: Outline[]; length: number } {
  const outlines: Outline[] = [];
  let at = 0;
  for (const letter of text) {
    const font = face.files.map(drawable).find((f) => f.hasGlyphForCodePoint(letter.codePointAt(0) as number));
    if (!font) throw new Error(`Expected a letter that ${face.name} has but received ${JSON.stringify(letter)}`);
    const scale = size / font.unitsPerEm;
    const { glyphs, positions } = font.layout(letter);
    outlines.push(...contours(glyphs[0]!.path.commands, (x, y) => [at + x * scale * face.wide, -y * scale]));
    at += positions[0]!.xAdvance * scale * face.wide + face.spaced * size;
  }
  return { outlines, length: at };
}

function contours(commands: readonly { command: string; args: number[] }[], place: (x: number, y: number) => [number, number]): Outline[] {
  const all: [number, number][][] = [];
  let from: [number, number] = [0, 0];
  for (const { command, args } of commands) {
    const points = Array.from({ length: args.length / 2 }, (_, i) => [args[2 * i]!, args[2 * i + 1]!] as [number, number]);
    if (command === "moveTo") all.push([]);
    const end = points.at(-1);
    if (!end) continue;
    const steps = points.length === 1 ? 1 : STEPS;
    for (let s = 1; s <= steps; s++) all.at(-1)!.push(place(...bezier([from, ...points], points.length === 1 ? 1 : s / steps)));
    from = end;
  }
  return all.filter((c) => c.length > 2);
}

/** A point of a Bézier curve of any degree (de Casteljau). */
function bezier(points: readonly [number, number][], t: number): [number, number] {
  if (points.length === 1) return points[0]!;
  return bezier(points.slice(1).map(([x, y], i) => [points[i]![0] + t * (x - points[i]![0]), points[i]![1] + t * (y - points[i]![1])]), t);
}
