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
    const known = tried.get(degrees) ?? rowContrast(ink, degrees);
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

/** Of each row of pixels, one entry more than it has: the print before each place, and each print by how far along it stands, summed up. */
interface Ink { readonly print: Float64Array; readonly along: Float64Array; readonly width: number; readonly height: number }

function inkOf({ data, width, height }: Grey): Ink {
  const print = new Float64Array((width + 1) * height), along = new Float64Array(print.length);
  for (let y = 0, i = 0, at = 0; y < height; y++, at++)
    for (let x = 0; x < width; x++, i++, at++) {
      const v = data[i]! > FAINT ? data[i]! : 0;
      print[at + 1] = print[at]! + v;
      along[at + 1] = along[at]! + v * x;
    }
  return { print, along, width, height };
}

/**
 * Sum of squared steps between neighbouring rows of print, by the print there is, where rows lie turned. Print between two
 * rows counts to both, by how near it is; what lies between the same two along a row of pixels is one difference of sums.
 */
function rowContrast({ print, along, width, height }: Ink, degrees: number): number {
  const angle = (degrees * Math.PI) / 180, cos = Math.cos(angle), sin = Math.sin(angle);
  const rows = new Float64Array(height + 2 * width);
  let all = 0;
  for (let y = 0; y < height; y++) {
    const first = y * (width + 1), down = y * cos + width;
    all += print[first + width]!;
    for (let x = 0; x < width;) {
      const row = Math.floor(down - x * sin), crossing = sin === 0 ? width : (down - (sin > 0 ? row : row + 1)) / sin;
      const next = Math.min(width, Math.max(x, Math.floor(crossing)) + 1);
      const v = print[first + next]! - print[first + x]!, further = (down - row) * v - sin * (along[first + next]! - along[first + x]!);
      rows[row]! += v - further;
      rows[row + 1]! += further;
      x = next;
    }
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
