import "server-only";
import bidiFactory, { type EmbeddingLevels } from "bidi-js";
import LineBreaker from "linebreak";
import { unbroken } from "../words/unbroken";
import { inFont, RIGHT_TO_LEFT, runsOf, type FontName, type Run, type Weight } from "./fonts";

/** A stretch of a line in one typeface and one direction. */
interface Piece extends Run { readonly isRightToLeft: boolean }
/** A line as it stands on paper: its pieces from left to right, and which way its paragraph runs. */
export interface Line { readonly pieces: readonly Piece[]; readonly isRightToLeft: boolean }
interface Type { readonly weight: Weight; /** Points. */ readonly size: number }

/** Of a document, what was found for it, kept as long as it is: a text is asked for its height many times before it is drawn, and words come again. */
function keptOf<T extends Type & { width?: number }, V>(find: (pdf: PDFKit.PDFDocument, text: string, type: T) => V): typeof find {
  const documents = new WeakMap<PDFKit.PDFDocument, Map<string, V>>();
  return (pdf, text, type) => {
    const kept = documents.get(pdf) ?? new Map<string, V>();
    documents.set(pdf, kept);
    const key = `${type.weight} ${type.size} ${type.width} ${text}`;
    const found = kept.get(key) ?? find(pdf, text, type);
    kept.set(key, found);
    return found;
  };
}

const bidi = bidiFactory();
const clusters = new Intl.Segmenter("en", { granularity: "grapheme" });
const isOdd = (level: number) => level % 2 === 1;

/** Whether any of a text runs from right to left. */
export const runsRightToLeft = (text: string): boolean => bidi.getEmbeddingLevels(text, "auto").levels.some(isOdd);

/**
 * A text in lines of at most `width` points, each ordered by the Unicode bidirectional algorithm (Unicode Standard Annex 9). A
 * paragraph runs the way of its first letter that has one. Lines end where Unicode Standard Annex 14 lets them; a word wider
 * than a line is parted between letters.
 */
export const linesOf = keptOf((pdf, text, { width, ...type }: Type & { width: number }): readonly Line[] =>
  text.split(/\r\n?|[\n\u2028\u2029]/u).flatMap((paragraph) => {
    const whole = unbroken(paragraph);
    const levels = bidi.getEmbeddingLevels(whole, "auto");
    const isRightToLeft = isOdd(levels.paragraphs[0]?.level ?? 0);
    return brokenAt(pdf, whole, { width, ...type }).map(([from, to]) => ({ isRightToLeft, pieces: inOrder(whole, levels, { from, to, weight: type.weight }) }));
  }));

/** The one line of a text that is not broken. */
export function lineOf(text: string, weight: Weight): Line {
  const levels = bidi.getEmbeddingLevels(text, "auto");
  return { isRightToLeft: isOdd(levels.paragraphs[0]?.level ?? 0), pieces: inOrder(text, levels, { from: 0, to: text.length, weight }) };
}

const pieceWidth = (pdf: PDFKit.PDFDocument, { font, text }: Run, size: number): number => inFont(pdf, font).fontSize(size).widthOfString(text);
export const lineWidth = (pdf: PDFKit.PDFDocument, { pieces }: Line, size: number): number => pieces.reduce((sum, p) => sum + pieceWidth(pdf, p, size), 0);

/** Of what stands in a line, so much stays there when its last word goes down to one that would stand alone. By eye. */
const LEFT_ABOVE = 2;

/** Where the lines of a paragraph begin and end: no word stands alone in the last of several where the one before it can join it. */
function brokenAt(pdf: PDFKit.PDFDocument, text: string, type: Type & { width: number }): [number, number][] {
  const lines = filledLines(pdf, text, type);
  const [above, last] = lines.slice(-2);
  if (!above || !last) return lines;
  const starts = Array.from(placesIn(text), ([start]) => start);
  const inAbove = starts.filter((s) => s >= above[0] && s < above[1]);
  const from = inAbove.at(-1);
  const isAlone = !starts.some((s) => s > last[0]) && starts.includes(last[0]);
  if (!isAlone || from === undefined || inAbove.length <= LEFT_ABOVE || wide(pdf, text.slice(from), type) > type.width) return lines;
  return [...lines.slice(0, -2), [above[0], from], [from, last[1]]];
}

const wide = keptOf((pdf, part, { weight, size }: Type): number => runsOf(part, weight).reduce((sum, run) => sum + pieceWidth(pdf, run, size), 0));

/** Each line as full as can be; its spaces at an end of a line need no room. */
function filledLines(pdf: PDFKit.PDFDocument, text: string, { width, ...type }: Type & { width: number }): [number, number][] {
  const widthOf = (part: string) => wide(pdf, part, type);
  const lines: [number, number][] = [];
  let [from, filled] = [0, 0];
  for (const [start, end] of placesIn(text)) {
    const part = text.slice(start, end);
    const isParted = widthOf(part.trimEnd()) > width;
    for (const [at, bit] of isParted ? lettersOf(part, start) : [[start, part] as const]) {
      // Letters are measured together, as they are set: some stand further apart beside each other than alone.
      const upTo = (letters: string) => (isParted ? widthOf(text.slice(from, at) + letters) : filled + widthOf(letters));
      if (at > from && upTo(bit.trimEnd()) > width) { lines.push([from, at]); [from, filled] = [at, 0]; }
      filled = upTo(bit);
    }
  }
  return [...lines, [from, text.length]];
}
const lettersOf = (part: string, start: number) => Array.from(clusters.segment(part), ({ index, segment }) => [start + index, segment] as const);

/** The parts of a text between which a line may end. */
function* placesIn(text: string): Generator<[number, number]> {
  const breaker = new LineBreaker(text);
  let from = 0;
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) { yield [from, next.position]; from = next.position; }
}

/** A line's stretches from left to right. What is mirrored where it runs from right to left is so already. */
function inOrder(text: string, levels: EmbeddingLevels, { from, to, weight }: { from: number; to: number; weight: Weight }): Piece[] {
  if (from === to) return [];
  const order = bidi.getReorderedIndices(text, levels, from, to - 1).slice(from, to);
  const mirrored = bidi.getMirroredCharactersMap(text, levels.levels, from, to - 1);
  return stretchesOf(order, levels.levels).flatMap(({ indices, isRightToLeft }) => {
    const first = Math.min(...indices);
    const drawn = Array.from({ length: indices.length }, (_, i) => mirrored.get(first + i) ?? text.charAt(first + i)).join("");
    const runs = runsOf(drawn, weight).map((run): Piece => ({ ...run, isRightToLeft }));
    return isRightToLeft ? runs.reverse() : runs;
  });
}

/** Indices that follow each other in one direction. */
function stretchesOf(order: readonly number[], levels: Uint8Array): { indices: number[]; isRightToLeft: boolean }[] {
  const stretches: { indices: number[]; isRightToLeft: boolean }[] = [];
  for (const index of order) {
    const isRightToLeft = isOdd(levels[index] ?? 0);
    const last = stretches.at(-1);
    const follows = last?.isRightToLeft === isRightToLeft && (last.indices.at(-1) as number) + (isRightToLeft ? -1 : 1) === index;
    if (follows) last.indices.push(index);
    else stretches.push({ indices: [index], isRightToLeft });
  }
  return stretches;
}

/** In these, glyphs stand in another order than the letters are typed in. */
const REORDERED: readonly FontName[] = ["devanagari"];

/** Draws a line; `x` is its left end and `y` its baseline, in points. */
export function drawLine(pdf: PDFKit.PDFDocument, { pieces }: Line, { x, y, size }: { x: number; y: number; size: number }): void {
  let at = x;
  for (const piece of pieces) {
    const wide = pieceWidth(pdf, piece, size);
    const draw = () => { pdf.text(piece.text, at, y, { lineBreak: false, baseline: "alphabetic", ...(piece.isRightToLeft ? { features: RIGHT_TO_LEFT as PDFKit.Mixins.OpenTypeFeatures[] } : {}) }); };
    if (piece.text !== piece.typed || REORDERED.includes(piece.font)) asTypedBeside(pdf, piece.typed, draw);
    else draw();
    at += wide;
  }
}

/** What cannot be told from its glyphs is kept beside them as it was typed (ISO 32000-1, 14.9.4): within the text object, where readers take its place from. */
function asTypedBeside(pdf: PDFKit.PDFDocument, typed: string, draw: () => void): void {
  const add = pdf.addContent;
  const mark = `/Span << /ActualText <${Buffer.from(`\ufeff${typed}`, "utf16le").swap16().toString("hex")}> >> BDC`;
  pdf.addContent = (content: string) => {
    if (content === "ET") add.call(pdf, "EMC");
    add.call(pdf, content);
    return content === "BT" ? add.call(pdf, mark) : pdf;
  };
  draw();
  pdf.addContent = add;
}
