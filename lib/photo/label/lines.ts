import { shrunk, type Grey } from "./grey";

/** How the lines of print lie in a picture of print (0 cloth, 1 print). Numbers elicited on drawn labels. */

/** Degrees each way that are looked for, first by the step, then around the best by the fine step. */
const MOST_DEGREES = 9, STEP = 1, FINE = 0.25;
/** Pixels of the long side at which the lie of lines is looked for: enough for letters some five pixels high. */
const LIE_SIDE = 420;
/** Print counts as such from here; what is fainter than FAINT says nothing of how lines lie. */
const INK = 0.5, FAINT = 0.25;
/** Letters higher than this share of the picture are none; as pixels, lower is noise. */
const HIGHEST = 0.45, LOWEST = 5;

/** The angle by which lines of print lie turned clockwise, −9 to 9 degrees, and how clearly: lines apart give a high contrast of rows. */
export function lieOf(print: Grey): { degrees: number; clear: number } {
  const small = shrunk(print, Math.max(1, Math.round(Math.max(print.width, print.height) / LIE_SIDE)));
  const ink = inkOf(small);
  const tried = new Map<number, number>();
  const clearAt = (degrees: number) => {
    const known = tried.get(degrees) ?? rowContrast(ink, small, degrees);
    tried.set(degrees, known);
    return known;
  };
  const around = (middle: number, reach: number, step: number) => {
    let best = middle;
    for (let d = middle - reach; d <= middle + reach + 1e-9; d += step) if (clearAt(d) > clearAt(best)) best = d;
    return best;
  };
  const degrees = around(around(0, MOST_DEGREES, STEP), STEP, FINE);
  return { degrees, clear: clearAt(degrees) };
}

/** Places of print and how dark each is: three numbers in a row for each. */
function inkOf({ data, width }: Grey): Float32Array {
  const ink = new Float32Array(3 * data.reduce((count, v) => count + (v > FAINT ? 1 : 0), 0));
  let at = 0;
  for (let i = 0; i < data.length; i++) {
    if (data[i]! <= FAINT) continue;
    ink[at++] = i % width;
    ink[at++] = Math.floor(i / width);
    ink[at++] = data[i]!;
  }
  return ink;
}

/** Sum of squared steps between neighbouring rows of print, by the print there is. */
function rowContrast(ink: Float32Array, { width, height }: Grey, degrees: number): number {
  const angle = (degrees * Math.PI) / 180, cos = Math.cos(angle), sin = Math.sin(angle);
  const rows = new Float32Array(height + 2 * width);
  let all = 0;
  for (let i = 0; i < ink.length; i += 3) {
    const v = ink[i + 2]!, at = ink[i + 1]! * cos - ink[i]! * sin + width, row = at | 0, rest = at - row;
    rows[row]! += v * (1 - rest);
    rows[row + 1]! += v * rest;
    all += v;
  }
  let steps = 0;
  for (let i = 1; i < rows.length; i++) steps += (rows[i]! - rows[i - 1]!) ** 2;
  return all === 0 ? 0 : steps / all ** 2 * rows.length;
}

/** The middle height of what hangs together in the print, in pixels: between that of small letters and of capitals. Null where nothing looks like letters. */
export function letterHeight(print: Grey): number | null {
  const heights = blobsOf(print).filter(({ width: w, height: h, count }) => h >= LOWEST && h <= HIGHEST * print.height && w <= 6 * h && w >= h / 12 && count >= 0.12 * w * h).map((b) => b.height);
  if (heights.length < 4) return null;
  heights.sort((a, b) => a - b);
  // The small ones are dots, accents and pieces of the weave.
  const high = heights.slice(Math.floor(heights.length * 0.3));
  return high[Math.floor(high.length / 2)] ?? null;
}

/** What hangs together in the print, also over corners: its sides and how many pixels it has. */
function blobsOf({ data, width, height }: Grey): { width: number; height: number; count: number }[] {
  const open = new Uint8Array(data.length), blob = new Int32Array(data.length);
  for (let i = 0; i < data.length; i++) open[i] = data[i]! > INK ? 1 : 0;
  const blobs = [];
  for (let start = 0; start < open.length; start++) {
    if (!open[start]) continue;
    open[start] = 0;
    blob[0] = start;
    let count = 1, left = width, right = 0, top = height, bottom = 0;
    for (let n = 0; n < count; n++) {
      const i = blob[n]!, x = i % width, y = (i - x) / width;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
      for (let ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++)
        for (let nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
          const j = ny * width + nx;
          if (!open[j]) continue;
          open[j] = 0;
          blob[count++] = j;
        }
    }
    blobs.push({ width: right - left + 1, height: bottom - top + 1, count });
  }
  return blobs;
}
