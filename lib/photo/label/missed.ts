import type { LabelLines, Seen, SeenLine, SeenWord } from "./seen";

/** Print that a reading has no word for. Numbers elicited on drawn labels; lengths in heights of the line. */

/** 0 ink to 255 paper: darker than this is print. */
const PRINT = 128;
/** A column is print where this share of its height is; less is weave. */
const LEAST_OF_COLUMN = 0.15;
/** So much of print side by side is a word; less is a seam, an edge or a full stop. */
const LEAST_WIDTH = 0.8;
/** What lies further from the word than this is something else. */
const MOST_SPACE = 1.5;
/** Words reach a little beyond the boxes that the reader draws around them. */
const BESIDE = 0.1;

export interface Sheet { readonly data: Uint8Array; readonly width: number; readonly height: number }

/** A reading whose words say where print stands straight before them, on their line, that it holds no word for. `seen`: the same words with their places. */
export const withMissed = (lines: LabelLines, seen: Seen, sheet: Sheet): LabelLines =>
  lines.map((line, n) => line.map((word, k) => (isPrintBefore(seen[n] as SeenLine, k, sheet) ? { ...word, missed: true } : word)));

function isPrintBefore(line: SeenLine, at: number, { data, width, height }: Sheet): boolean {
  const word = line[at] as SeenWord;
  const [top, bottom] = [Math.max(0, Math.floor(word.top * height)), Math.min(height, Math.ceil(word.bottom * height))];
  const high = bottom - top;
  const from = Math.floor(word.left * width - BESIDE * high), to = Math.max(0, Math.ceil((line[at - 1]?.right ?? 0) * width + BESIDE * high));
  let printed = 0, blank = 0;
  for (let x = from; x >= to && blank <= MOST_SPACE * high; x--) {
    let dark = 0;
    for (let y = top; y < bottom; y++) if (data[y * width + x]! < PRINT) dark++;
    if (dark >= LEAST_OF_COLUMN * high) { printed++; blank = 0; } else blank++;
  }
  return high > 0 && printed >= LEAST_WIDTH * high;
}
